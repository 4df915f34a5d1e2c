// One name that lines speak of and that nothing declares, in any file: a part or fastener of the unit that may be what its other things
// hang on.

import type { Span } from "../findings/finding.ts";
import { kept } from "../model/kept.ts";
import type { Model } from "../model/model.ts";
import type { Project } from "../names/project.ts";
import type { Due } from "./due-names.ts";
import { surveyOf } from "./survey-of-names.ts";

const thingDue: ReadonlySet<Due> = new Set<Due>(["part", "thing", "washer"]);
const known = kept<Project, Map<string, Span | undefined>>();

/** Where it is first spoken of; undefined where there is none, or more than one. */
export function lostThing(project: Project, model: Model): Span | undefined {
  const byUnit = known(project, () => new Map());
  if (!byUnit.has(model.title)) byUnit.set(model.title, find(project, model.title));
  return byUnit.get(model.title);
}

function find(project: Project, title: string): Span | undefined {
  const lost = [...project.files.values()].flatMap((file) =>
    surveyOf(project, file)
      .unknown.filter(({ due, is, unit }) => thingDue.has(due) && is === undefined && unit === title)
      .map(({ text, start, end }) => ({ text, at: { file: file.path, start, end } })),
  );
  return new Set(lost.map(({ text }) => text)).size === 1 ? lost[0]!.at : undefined;
}
