// The plain build of each unit of a project, for what is asked of a unit that no procedure is performed on.

import { buildModel } from "../model/build-model.ts";
import { buildsOf } from "../model/builds.ts";
import { kept } from "../model/kept.ts";
import type { Model } from "../model/model.ts";
import type { Project } from "../names/project.ts";
import type { Acted } from "../workspace/check-project.ts";

const known = kept<Project, Map<string, Model | undefined>>();

/** The model of a unit as its own file sees it; undefined where it cannot be built. */
export function plainModel({ project, performances }: Acted, file: string, unit: string): Model | undefined {
  const performed = performances.find(({ model }) => model.unit === unit && model.at.file === file);
  if (performed) return performed.model;
  const models = known(project, () => new Map()),
    key = `${file}\n${unit}`;
  if (!models.has(key)) models.set(key, buildModel(project, file, unit, buildsOf(project, file, unit)[0]!));
  return models.get(key);
}

/** Of every unit that a file declares. */
export const modelsIn = (checked: Acted, file: string): Model[] =>
  (checked.project.files.get(file)?.declarations ?? []).flatMap((one) => {
    const model = one.word === "unit" ? plainModel(checked, file, one.id) : undefined;
    return model ? [model] : [];
  });
