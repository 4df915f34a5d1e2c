// Builds the model of a small text, for the tests of this folder.

import { buildModel } from "../../language/model/build-model.ts";
import { buildsOf, type Build } from "../../language/model/builds.ts";
import type { Model, Part, ThingIndex, Tie } from "../../language/model/model.ts";
import { loadProject } from "../../language/names/load.ts";
import { memoryWorld } from "../support/memory-world.ts";

export interface Built {
  readonly model: Model;
  readonly builds: readonly Build[];
  part(id: string): Part;
  tie(id: string): Tie;
  /** Ids of things by their numbers. */
  ids(things: readonly ThingIndex[]): string[];
}

/** The unit in the build of that name; the plain one if none is named. */
export function built(text: string, unit = "u", build?: string, more: Readonly<Record<string, string>> = {}): Built {
  const files = new Map([
    ["/p/main.strip", text],
    ...Object.entries(more).map(([name, body]): [string, string] => [`/p/${name}`, body]),
  ]);
  const project = loadProject(memoryWorld(files), ["/p/main.strip"]),
    builds = buildsOf(project, "/p/main.strip", unit);
  const chosen = build === undefined ? builds[0] : builds.find((one) => one.name === build);
  if (!chosen) throw new Error(`no build ${build}: ${builds.map((one) => one.name).join("; ")}`);
  const model = buildModel(project, "/p/main.strip", unit, chosen);
  if (!model) throw new Error(`no unit ${unit}`);
  const find = <T extends { readonly id: string }>(list: readonly T[], id: string): T => {
    const one = list.find((each) => each.id === id);
    if (!one) throw new Error(`nothing is called ${id}: ${list.map((each) => each.id).join(", ")}`);
    return one;
  };
  return {
    model,
    builds,
    part: (id) => find(model.parts, id),
    tie: (id) => find(model.ties, id),
    ids: (things) => things.map((index) => model.things[index]!.id),
  };
}

/** A unit `u` with a base `b` and these lines. */
export const unit = (lines: string): string => `unit u "U" {\n  base b\n  part b "Base"\n${lines}\n}\n`;
