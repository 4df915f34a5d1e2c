// What the workshop has, from the declarations that a file sees: tools, consumables, roles, torque tables.

import type { Declaration, Project } from "../names/project.ts";
import type { Quantity, ThreadSize } from "../quantities/index.ts";
import type { Consumable, Library, Tool } from "./model.ts";
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

function read(project: Project, file: string): Library {
  const tools = new Map<string, Tool>(),
    consumables = new Map<string, Consumable>(),
    roles: [string, { name: string; at: Declaration["at"] }][] = [];
  const tables: [string, Library["torqueTables"] extends ReadonlyMap<string, infer V> ? V : never][] = [];
  for (const list of project.seen(file).values())
    for (const declaration of list) {
      const source = project.files.get(declaration.file)!,
        lines = linesIn({ item: declaration.item, source });
      if (declaration.word === "tool") tools.set(declaration.id, readTool(declaration, lines));
      else if (declaration.word === "consumable") consumables.set(declaration.id, readConsumable(declaration, lines));
      else if (declaration.word === "role")
        roles.push([declaration.id, { name: declaration.name, at: declaration.at }]);
      else if (declaration.word === "torque-table")
        tables.push([declaration.id, { name: declaration.name, rows: lines.flatMap(readRow), at: declaration.at }]);
    }
  const hazards = new Map(
    [...project.seen(file).values()]
      .flat()
      .filter(({ word }) => word === "hazard")
      .map((declaration) => [declaration.id, readHazardType(project, file, declaration)] as const),
  );
  return { hazards, tools, consumables, roles: new Map(roles), torqueTables: new Map(tables) };
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
