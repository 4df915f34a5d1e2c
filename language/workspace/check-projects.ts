// Several projects checked in one run, each by itself: under its own settings, and nothing of one taken for a repetition of what the
// other has.

import type { Surveyed } from "../findings/surveyed.ts";
import type { Settings } from "../world/settings.ts";
import type { World } from "../world/world.ts";
import { checkMany, type ManyOptions } from "./check-many.ts";
import { byPlace } from "./check-project.ts";

/** The files asked for of one project. */
export interface Asked {
  readonly world: World;
  readonly roots: readonly string[];
  readonly settings: Settings;
}

/** A file that several of them use is judged once: in the project that it was asked for with, else in the first that uses it. */
export function checkProjects(
  projects: readonly Asked[],
  { between, unknowns }: Pick<ManyOptions, "between" | "unknowns"> = {},
): Surveyed {
  const judged = new Set(projects.flatMap(({ roots }) => roots)),
    all: Surveyed[] = [];
  let before = 0,
    after = judged.size;
  for (const { world, roots, settings } of projects) {
    after -= roots.length;
    const checked = checkMany(world, roots, {
      settings,
      unknowns: unknowns === true,
      elsewhere: judged.difference(new Set(roots)),
      ...(between ? { between: (done, of) => between(before + done, before + of + after) } : {}),
    });
    for (const path of checked.texts.keys()) judged.add(path);
    before += checked.texts.size;
    all.push(checked);
  }
  return {
    findings: all.flatMap(({ findings }) => findings).sort(byPlace),
    allows: all.flatMap(({ allows }) => allows),
    units: all.flatMap(({ units }) => units),
    unreadable: all.flatMap(({ unreadable }) => unreadable),
    texts: new Map(all.flatMap(({ texts }) => [...texts])),
    procedures: all.reduce((sum, { procedures }) => sum + procedures, 0),
    ...(unknowns === true ? { unknowns: all.flatMap((one) => one.unknowns ?? []) } : {}),
  };
}
