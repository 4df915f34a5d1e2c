// Orders of removal tried on the bench: a procedure text with these removals, and whether the bench takes each as it comes.

import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { performProcedure } from "../../language/bench/perform-procedure.ts";
import type { Performance } from "../../language/bench/trace.ts";
import { buildModel } from "../../language/model/build-model.ts";
import { buildsOf } from "../../language/model/builds.ts";
import { loadProject } from "../../language/names/load.ts";
import { worldWith } from "../mutation/scenes.ts";

const here = fileURLToPath(new URL("./", import.meta.url));
export const unitText = (name: string): string => {
  const text = readFileSync(`${here}${name}.strip`, "utf8");
  return text.slice(text.indexOf("\nunit "), text.indexOf("\nprocedure "));
};

/** Performs a procedure of these acts, each in a step of its own, on the unit of that file. */
export function performActs(unit: string, id: string, acts: readonly string[], aim = "none"): Performance {
  const text = `${unit}\nprocedure tried for ${id} {\n  aim ${aim}\n${acts.map((act) => `  step { ${act} }`).join("\n")}\n}\n`;
  const project = loadProject(worldWith(new Map([["tried.strip", text]])), ["tried.strip"]),
    build = buildsOf(project, "tried.strip", id)[0]!;
  return performProcedure(buildModel(project, "tried.strip", id, build)!, "tried");
}

/** Index of the first act that is refused, or -1. */
export const refusedAt = (performance: Performance): number => performance.strip.findIndex(({ refused }) => refused);
export const isAccepted = (performance: Performance): boolean => performance.problems.length === 0;
