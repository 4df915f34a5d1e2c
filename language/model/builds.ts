// The builds of a unit: one of each line of variants, with and without each option, each reading that may fail, each optional
// block, each free choice. All combinations up to a limit, beyond it every pair of choices.

import type { Project } from "../names/project.ts";
import { proceduresSeen } from "./procedures-seen.ts";
import { accept, cursorOf, linesIn, takeName, takeString, wordOf, type Line } from "./cursor.ts";
import { typesSeen } from "./declared-thing.ts";
import type { BuildChoice, Condition, Entry } from "./model.ts";
import { readCondition } from "./read-entries.ts";

export interface Build {
  /** As a finding names it, `late-62 with heater`; "" where the unit has one build only. */
  readonly name: string;
  /** What the name is made of, for those who say it in another language; empty for the plain build and where there is one only. */
  readonly choices: readonly BuildChoice[];
  readonly chosen: ReadonlySet<string>;
}

/** Up to this many builds every combination is performed. */
export const mostCombinations = 64;

/** One decision: its alternatives, the plain one first. `key` "" chooses nothing; without a choice it is not named. */
interface Dimension {
  readonly alternatives: readonly { readonly key: string; readonly choice: BuildChoice | undefined }[];
}

/** The plain build first. `file` sees the unit and its procedures. */
export function buildsOf(project: Project, file: string, unit: string): Build[] {
  const line = typesSeen(project, file, "unit", unit);
  if (!line || !branches(project, file)) return [{ name: "", choices: [], chosen: new Set() }];
  const dimensions = dimensionsOf(project, file, unit, line);
  if (dimensions.length === 0) return [{ name: "", choices: [], chosen: new Set() }];
  const rows = combinations(dimensions.map((d) => d.alternatives.length));
  return rows.map((row) => {
    const picked = row.map((k, i) => dimensions[i]!.alternatives[k]!);
    const choices = picked.flatMap(({ key, choice }, i) =>
      choice && (dimensions[i]!.alternatives[0]!.key !== "" || key !== "") ? [choice] : [],
    );
    return {
      name: nameOf(choices.map(choiceName)),
      choices,
      chosen: new Set(picked.map((p) => p.key).filter((key) => key !== "")),
    };
  });
}

const procedureItem = (project: Project, file: string, id: string): Line["item"] | undefined =>
  project
    .seen(file)
    .get(id)
    ?.find((d) => d.word === "procedure")?.item;

/** Does this file, or any that it uses, hold a choice at all? */
function branches(project: Project, path: string): boolean {
  const reached = new Set<string>([path]);
  for (const one of reached) {
    const file = project.files.get(one);
    if (file?.branches) return true;
    for (const use of file?.uses ?? []) reached.add(use.path);
  }
  return false;
}

const nameOf = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? "plain") : `${names[0]} with ${names.slice(1).join(" and ")}`;

function choiceName(choice: BuildChoice): string {
  switch (choice.is) {
    case "named":
      return choice.name;
    case "fails":
      return `${choice.name} failing`;
    case "reading-before-fails":
      return "the reading before failing";
    case "optional":
      return choice.title || "the optional part";
    case "choice":
      return `choice ${choice.number}`;
  }
}

function dimensionsOf(project: Project, file: string, unit: string, line: Line): Dimension[] {
  const dimensions: Dimension[] = [],
    optional = new Map<string, BuildChoice>(),
    units = new Map<string, Line>();
  collectUnits(project, unit, line, units);
  // A built unit passes its variants to the units inside it: a line that shares a name with one already read is decided by that one.
  const isPassedDown = (alternatives: Dimension["alternatives"]): boolean =>
    dimensions.some((other) => alternatives.some((one) => other.alternatives.some(({ key }) => key === one.key)));
  for (const one of units.values())
    for (const l of linesIn(one)) {
      if (wordOf(l) === "variants") {
        const c = cursorOf(l),
          alternatives: { key: string; choice: BuildChoice }[] = [];
        for (let name = takeName(c); name; name = takeName(c)) {
          takeString(c);
          alternatives.push({ key: name.text, choice: { is: "named", name: name.text } });
          if (!accept(c, ",")) break;
        }
        if (alternatives.length > 0 && !isPassedDown(alternatives)) dimensions.push({ alternatives });
      } else if (wordOf(l) === "option") {
        const name = takeName(cursorOf(l));
        if (name) optional.set(name.text, { is: "named", name: name.text });
      }
      walkConditions(l, (condition) => failing(condition, optional));
    }
  for (const procedure of proceduresSeen(project, file).values()) {
    if (!units.has(procedure.unit)) continue;
    if (procedure.conditional)
      for (const l of linesIn({
        item: procedureItem(project, file, procedure.id)!,
        source: project.files.get(procedure.at.file)!,
      }))
        walkConditions(l, (condition) => failing(condition, optional));
    for (const list of [procedure.body, procedure.refit, procedure.finish]) walkEntries(list, optional, dimensions);
  }
  for (const [key, choice] of optional)
    dimensions.push({
      alternatives: [
        { key: "", choice: undefined },
        { key, choice },
      ],
    });
  return dimensions;
}

function collectUnits(project: Project, unit: string, line: Line, into: Map<string, Line>): void {
  if (into.has(unit)) return;
  into.set(unit, line);
  const visit = (lines: readonly Line[]): void => {
    for (const l of lines) {
      const word = wordOf(l);
      if (word === "is") {
        const c = cursorOf(l);
        accept(c, "unit");
        const name = takeName(c)?.text,
          inner = name === undefined ? undefined : typesSeen(project, l.source.path, "unit", name);
        if (inner) collectUnits(project, name!, inner, into);
      } else if (word === "part" || word === "if" || word === "unless") visit(linesIn(l));
    }
  };
  visit(linesIn(line));
}

function walkConditions(line: Line, visit: (condition: Condition) => void): void {
  const word = wordOf(line);
  if (word === "if" || word === "unless") visit(readCondition(line));
  for (const inner of linesIn(line)) walkConditions(inner, visit);
}

function failing(condition: Condition, optional: Map<string, BuildChoice>): void {
  for (const { name, state } of condition.states)
    if (state === "fails") optional.set(`${name.text} fails`, { is: "fails", name: name.text });
}

function walkEntries(entries: readonly Entry[], optional: Map<string, BuildChoice>, dimensions: Dimension[]): void {
  for (const entry of entries) {
    if (entry.is === "act") continue;
    if (entry.condition) failing(entry.condition, optional);
    if (entry.kind === "otherwise" && !entry.condition) optional.set(entry.key, { is: "reading-before-fails" });
    if (entry.kind === "optional") optional.set(entry.key, { is: "optional", title: entry.title });
    if (entry.kind === "either")
      dimensions.push({
        alternatives: entry.body.flatMap((c, i) =>
          c.is === "block"
            ? [{ key: c.key, choice: i === 0 ? undefined : { is: "choice" as const, number: i + 1 } }]
            : [],
        ),
      });
    walkEntries(entry.body, optional, dimensions);
  }
}

/** Rows of one alternative for each dimension: all of them, or so many that every pair of alternatives occurs. Row 0 is all plain. */
export function combinations(sizes: readonly number[]): number[][] {
  let count = 1;
  for (const size of sizes) count *= size;
  if (count <= mostCombinations) {
    let rows: number[][] = [[]];
    for (const size of sizes) rows = rows.flatMap((row) => Array.from({ length: size }, (_, k) => [...row, k]));
    return rows;
  }
  return pairwise(sizes);
}

/** Greedy and in a fixed order: each new row takes, dimension by dimension, the alternative that covers most of what is still missing. */
function pairwise(sizes: readonly number[]): number[][] {
  const key = (i: number, a: number, j: number, b: number): string => `${i}.${a}.${j}.${b}`,
    missing = new Set<string>();
  for (let i = 0; i < sizes.length; i++)
    for (let j = i + 1; j < sizes.length; j++)
      for (let a = 0; a < sizes[i]!; a++) for (let b = 0; b < sizes[j]!; b++) missing.add(key(i, a, j, b));
  const rows: number[][] = [],
    add = (row: number[]): void => {
      for (let i = 0; i < row.length; i++)
        for (let j = i + 1; j < row.length; j++) missing.delete(key(i, row[i]!, j, row[j]!));
      rows.push(row);
    };
  add(sizes.map(() => 0));
  while (missing.size > 0) {
    const [i, a, j, b] = missing.values().next().value!.split(".").map(Number) as [number, number, number, number];
    const row: number[] = new Array<number>(sizes.length).fill(-1);
    row[i] = a;
    row[j] = b;
    for (let k = 0; k < sizes.length; k++) {
      if (row[k] !== -1) continue;
      let best = 0,
        most = -1;
      for (let x = 0; x < sizes[k]!; x++) {
        let covers = 0;
        row.forEach((y, m) => {
          if (y !== -1 && missing.has(m < k ? key(m, y, k, x) : key(k, x, m, y))) covers++;
        });
        if (covers > most) {
          most = covers;
          best = x;
        }
      }
      row[k] = best;
    }
    add(row);
  }
  return rows;
}
