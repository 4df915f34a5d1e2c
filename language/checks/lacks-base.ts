// A unit that is taken apart, of which nothing says what stays on the stand.

import type { Model } from "../model/model.ts";
import type { Project } from "../names/project.ts";
import { surveyOf } from "./survey-of-names.ts";

export function lacksBase(project: Project, model: Model): boolean {
  if (model.base.length > 0 || model.parts.length < 2 || model.procedures.size === 0) return false;
  const source = project.files.get(model.at.file);
  // A misspelt name may be the base: that is said there.
  return source !== undefined && source.tree.errors.length === 0 && surveyOf(project, source).unknown.length === 0;
}
