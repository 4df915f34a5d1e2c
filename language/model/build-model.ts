// The model of one unit in one build, from its declaration. Two passes: first every thing gets its name and number, then its facts
// are read, since they speak of each other. Never fails: what cannot be read or found is left out; the checks say so.

import type { Project } from "../names/project.ts";
import type { Build } from "./builds.ts";
import type { Choice } from "./conditions.ts";
import {
  accept,
  cursorOf,
  firstOf,
  headSpan,
  linesByWord,
  takeLabel,
  takeName,
  takeNames,
  takeOf,
  takeString,
  wordOf,
} from "./cursor.ts";
import type { Cursor, Line } from "./cursor.ts";
import { draftThings, indexesOf } from "./draft.ts";
import type { UnitDraft } from "./draft.ts";
import { readPlate } from "./instructions.ts";
import type { Frame, Model, Precaution, Procedure, Scope, Thing, ThingIndex } from "./model.ts";
import { proceduresSeen } from "./procedures-seen.ts";
import { readLibrary } from "./read-library.ts";
import { readProcedure } from "./read-procedure.ts";
import { readStatement, standingMessages, temporariesOf } from "./read-statement.ts";
import { readFluid, readHazard, readPart, readTie } from "./read-thing.ts";
import type { Reading } from "./read-thing.ts";

/** Undefined where the file sees no such unit. */
export function buildModel(project: Project, file: string, unitId: string, build: Build): Model | undefined {
  const declaration = project
    .seen(file)
    .get(unitId)
    ?.find((d) => d.word === "unit");
  if (!declaration) return undefined;
  const unitLine = { item: declaration.item, source: project.files.get(declaration.file)! };
  const { top, units, drafts } = draftThings(project, unitLine, build.chosen);

  const library = readLibrary(project, file),
    precautions: Precaution[] = [],
    standing = standingMessages(project, file, units);
  const reading: Reading = { drafts, units, library, standing, precautions };
  const parts = drafts.part.map((draft) => readPart(reading, draft)),
    ties = drafts.tie.map((draft) => readTie(reading, draft)),
    fluids = drafts.fluid.map((draft) => readFluid(reading, draft)),
    hazards = drafts.hazard.map((draft) => readHazard(reading, draft));
  const things: Thing[] = [...parts, ...ties, ...fluids, ...hazards];
  const of = linesByWord(top.lines),
    first = <T>(word: string, take: (c: Cursor) => T | undefined): T | undefined => firstOf(of(word), take);
  return {
    unit: unitId,
    title: declaration.name,
    at: declaration.at,
    build: build.name,
    choices: build.choices,
    chosen: build.chosen,
    choiceTitles: choicesOf(units),
    things,
    parts,
    ties,
    fluids,
    hazards,
    precautions,
    base: of("base")
      .flatMap((l) => takeNames(cursorOf(l)))
      .flatMap((name) => indexesOf(top, name.text, ""))
      .filter((index) => things[index]?.is === "part"), // anything else is told as a wrong name
    positions: of("positions").flatMap(positionsOf),
    frames: framesOf(units),
    mass: first("mass", takeOf("mass")),
    revision: first("revision", takeLabel),
    plate: readPlate(of),
    about: first("about", takeString) ?? "",
    temporaries: temporariesOf(project, file, units),
    orders: of("order").map(readStatement),
    scopes: new Map(units.map((unit): [string, Scope] => [unit.prefix, scopeOf(unit)])),
    absent: new Map(units.filter((unit) => unit.absent.size > 0).map((unit) => [unit.prefix, unit.absent])),
    dismissed: new Map(
      of("no").map((l) => {
        const c = cursorOf(l),
          kind = takeLabel(c) ?? "";
        return [kind, { why: takeString(c) ?? "", at: headSpan(l) }];
      }),
    ),
    standingMessages: standing.map((s) => s.message),
    torqueStandard: top.torqueStandard,
    procedures: proceduresIn(project, file, { chosen: build.chosen, variant: "" }),
    library,
  };
}

/** A model of the same declarations with the procedures as the file sees them now. */
export const withProcedures = (model: Model, project: Project, file: string): Model => ({
  ...model,
  procedures: proceduresIn(project, file, { chosen: model.chosen, variant: "" }),
});

const positionsOf = (line: Line): string[] => takeNames(cursorOf(line)).map((name) => name.text);

/** The units inside parts that can be turned by themselves. */
function framesOf(units: readonly UnitDraft[]): ReadonlyMap<string, Frame> {
  const frames = new Map<string, Frame>();
  for (const { prefix, host, lines } of units) {
    if (!host) continue;
    const positions = lines.filter((line) => wordOf(line) === "positions").flatMap(positionsOf);
    if (positions.length > 0) frames.set(prefix, { host: host.index, positions });
  }
  return frames;
}

function choicesOf(units: readonly UnitDraft[]): ReadonlyMap<string, string> {
  const titles = new Map<string, string>();
  for (const { lines } of units)
    for (const line of lines) {
      const word = wordOf(line);
      if (word !== "variants" && word !== "option") continue;
      const c = cursorOf(line);
      for (let name = takeName(c); name; name = takeName(c)) {
        const title = takeString(c);
        if (title !== undefined && !titles.has(name.text)) titles.set(name.text, title);
        if (!accept(c, ",")) break;
      }
    }
  return titles;
}

function scopeOf(unit: UnitDraft): Scope {
  const scope = new Map<string, ThingIndex[]>();
  for (const [name, drafts] of unit.names)
    scope.set(
      name,
      drafts.map((draft) => draft.index),
    );
  return scope;
}

/** The procedures as they stand in one build: those whose head depends on a condition are read for it. */
function proceduresIn(project: Project, file: string, choice: Choice): ReadonlyMap<string, Procedure> {
  const all = proceduresSeen(project, file);
  if (![...all.values()].some((procedure) => procedure.conditional)) return all;
  const inBuild = new Map<string, Procedure>();
  for (const list of project.seen(file).values()) {
    const declaration = list.find((d) => d.word === "procedure");
    if (declaration)
      inBuild.set(declaration.id, readProcedure(declaration, project.files.get(declaration.file)!, choice));
  }
  return inBuild;
}
