// What the workshop has, from the declarations that a file sees: tools, consumables, roles, torque tables.

import type { Declaration, Project } from "../names/project.ts";
import type { Quantity, ThreadSize } from "../quantities/index.ts";
import type { Consumable, HazardType, Library, Tool } from "./model.ts";
import { readHazardType } from "./read-hazard-type.ts";
import { kept } from "./kept.ts";
import {
  accept,
  cursorOf,
  linesIn,
  takeLabel,
  takeName,
  takeNumber,
  takeQuantity,
  takeString,
  takeThread,
  wordOf,
  type Cursor,
  type Line,
} from "./cursor.ts";

const libraries = kept<Project, Map<string, Library>>();

export function readLibrary(project: Project, file: string): Library {
  const byFile = libraries(project, () => new Map());
  let library = byFile.get(file);
  if (!library) byFile.set(file, (library = read(project, file)));
  return library;
}

type TorqueTable = Library["torqueTables"] extends ReadonlyMap<string, infer Table> ? Table : never;

// Whatever file sees it, a declaration says the same: of a library that many files use each is read once.
const toolOf = kept<Declaration, Tool>(),
  consumableOf = kept<Declaration, Consumable>(),
  tableOf = kept<Declaration, TorqueTable>();

function read(project: Project, file: string): Library {
  const hazards = new Map<string, HazardType>(),
    tools = new Map<string, Tool>(),
    consumables = new Map<string, Consumable>(),
    roles = new Map<string, { name: string; at: Declaration["at"] }>(),
    torqueTables = new Map<string, TorqueTable>();
  for (const list of project.seen(file).values())
    for (const declaration of list) {
      const { id, item, name, at } = declaration,
        lines = (): readonly Line[] => linesIn({ item, source: project.files.get(declaration.file)! });
      switch (declaration.word) {
        case "hazard":
          hazards.set(id, readHazardType(project, file, declaration));
          break;
        case "tool":
          tools.set(
            id,
            toolOf(declaration, () => readTool(declaration, lines())),
          );
          break;
        case "consumable":
          consumables.set(
            id,
            consumableOf(declaration, () => readConsumable(declaration, lines())),
          );
          break;
        case "role":
          roles.set(id, { name, at });
          break;
        case "torque-table":
          torqueTables.set(
            id,
            tableOf(declaration, () => ({ name, rows: lines().flatMap(readRow), at })),
          );
      }
    }
  return { hazards, tools, consumables, roles, torqueTables };
}

/** The value of the first line with this word. */
function first<T>(lines: readonly Line[], word: string, take: (c: Cursor) => T | undefined): T | undefined {
  const line = lines.find((l) => wordOf(l) === word);
  return line && take(cursorOf(line));
}

function readTool(declaration: Declaration, lines: readonly Line[]): Tool {
  const accuracy = first(lines, "accuracy", (c) => {
    accept(c, "±");
    return takeQuantity(c);
  });
  return {
    id: declaration.id,
    name: declaration.name,
    kind: first(lines, "kind", takeLabel),
    range: first(lines, "range", takeQuantity),
    capacity: first(lines, "capacity", takeQuantity),
    accuracy: accuracy?.high,
    count: first(lines, "count", takeNumber),
    calibration: first(lines, "calibration", takeString),
    legs: first(lines, "legs", takeNumber),
    angle: first(lines, "angle", takeQuantity),
    about: first(lines, "about", takeString) ?? "",
    at: declaration.at,
  };
}

function readConsumable(declaration: Declaration, lines: readonly Line[]): Consumable {
  return {
    id: declaration.id,
    name: declaration.name,
    pack: first(lines, "pack", takePack),
    shelfLife: first(lines, "shelf-life", takeQuantity),
    lead: first(lines, "lead", takeQuantity),
    hazard: first(lines, "hazard", takeName),
    partNo: first(lines, "part-no", takeString),
    standard: first(lines, "standard", takeString),
    about: first(lines, "about", takeString) ?? "",
    at: declaration.at,
  };
}

function takePack(c: Cursor): Quantity | { pieces: number } | undefined {
  const at = c.at,
    pieces = takeNumber(c);
  if (pieces !== undefined && accept(c, "pieces")) return { pieces };
  c.at = at;
  return takeQuantity(c);
}

function readRow(line: Line): { size: ThreadSize; torque: Quantity }[] {
  const c = cursorOf(line),
    size = takeThread(c),
    torque = takeQuantity(c);
  return size && torque ? [{ size, torque }] : [];
}
