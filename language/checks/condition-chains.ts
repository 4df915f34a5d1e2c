// Conditions that stand inside each other or beside each other: is there a build in which all of them hold?

import { kept } from "../model/kept.ts";
import { linesIn, wordOf, type Line } from "../model/cursor.ts";
import type { Condition } from "../model/model.ts";
import { readCondition } from "../model/read-entries.ts";
import type { Project } from "../names/project.ts";

/** A line with the conditions that it stands under, the outermost first. */
export interface UnderConditions {
  readonly line: Line;
  readonly chain: readonly Condition[];
}

/** The lines of a block, those inside its conditions among them. */
export function linesUnder(line: Line, chain: readonly Condition[] = []): UnderConditions[] {
  return linesIn(line).flatMap((one) =>
    isCondition(one) ? linesUnder(one, [...chain, readCondition(one)]) : [{ line: one, chain }],
  );
}

export const isCondition = (line: Line): boolean => wordOf(line) === "if" || wordOf(line) === "unless";

/** The variants of each unit; units that share a name have one choice between them. */
export const variantsOf = (project: Project): readonly ReadonlySet<string>[] => groups(project, () => gather(project));
const groups = kept<Project, readonly ReadonlySet<string>[]>();

function gather(project: Project): readonly ReadonlySet<string>[] {
  const found: Set<string>[] = [];
  for (const source of project.files.values())
    for (const item of source.tree.items) {
      if (item.entry?.word !== "unit" || item.broken) continue;
      const names = new Set(
        linesIn({ item, source })
          .filter((line) => wordOf(line) === "variants")
          .flatMap((line) => line.item.arguments.filter((one) => one.declares))
          .map((one) => source.tree.scan.tokens[one.first]!.text),
      );
      if (names.size === 0) continue;
      const same = found.find((group) => !group.isDisjointFrom(names));
      if (same) for (const name of names) same.add(name);
      else found.push(names);
    }
  return found;
}

const MOST = 4096;

/** Some build, with readings that come out some way, in which each of them holds; yes where there are too many to try. */
export function canHold(chain: readonly Condition[], variants: readonly ReadonlySet<string>[]): boolean {
  const keys = [...new Set(chain.flatMap(({ states }) => states.map(keyOf)))];
  const exclusive = variants
    .map((group) => ({ group, named: keys.filter((key) => group.has(key)) }))
    .filter(({ named }) => named.length > 0);
  const free = keys.filter((key) => !exclusive.some(({ named }) => named.includes(key)));
  // Where the conditions leave a variant of the group unnamed, it may be the one chosen: then none of the named ones holds.
  const choices: (readonly (readonly string[])[])[] = [
    ...exclusive.map(({ group, named }) => [
      ...named.map((name) => [name]),
      ...(named.length < group.size ? [[]] : []),
    ]),
    ...free.map((key) => [[key], []]),
  ];
  if (choices.reduce((product, { length }) => product * length, 1) > MOST) return true;
  const tryFrom = (at: number, chosen: ReadonlySet<string>): boolean =>
    at === choices.length
      ? chain.every((condition) => holds(condition, chosen))
      : choices[at]!.some((names) => tryFrom(at + 1, chosen.union(new Set(names))));
  return tryFrom(0, new Set());
}

const keyOf = ({ name, state }: Condition["states"][number]): string =>
  state === "" ? name.text : `${name.text} ${state}`;

function holds({ states, any, unless }: Condition, chosen: ReadonlySet<string>): boolean {
  const one = (state: Condition["states"][number]): boolean => chosen.has(keyOf(state));
  return (any ? states.some(one) : states.every(one)) !== unless;
}
