// The declared names that may stand at a place, by what is due there. No opinion on which of them would be right.

import type { FullDue } from "../checks/each-name.ts";
import {
  namesInside,
  piecesOf,
  unitNames,
  unitOfProcedure,
  procedureNames,
  type UnitNames,
} from "../checks/space-of-names.ts";
import { textOf } from "../names/strings.ts";
import type { Declaration, Project, SourceFile } from "../names/project.ts";
import { fastenerKinds, fluidKinds, hazardKinds, jointKinds, partKinds } from "../tables/index.ts";
import type { Item } from "../syntax/index.ts";

export interface Candidate {
  readonly id: string;
  /** Its display name, "" where it has none. */
  readonly name: string;
  readonly word: string;
  /** The file to `use`, for a name that this file does not see yet. */
  readonly from?: string;
}

/** The unit whose names hold at a place, by the items around it. */
export function unitAround(
  project: Project,
  file: SourceFile,
  path: readonly Item[],
): { names: UnitNames; id: string } | undefined {
  const top = path[0];
  if (top?.entry?.word === "unit") {
    const id = top.arguments[0];
    return id && { names: unitNames(file, top), id: file.tree.scan.tokens[id.first]!.text };
  }
  if (top?.entry?.word !== "procedure") return undefined;
  const id = unitOfProcedure(file, top),
    declared =
      id === undefined
        ? undefined
        : project
            .seen(file.path)
            .get(id)
            ?.find((one) => one.word === "unit");
  return declared && { names: unitNames(project.files.get(declared.file)!, declared.item), id: declared.id };
}

export function candidatesFor(
  project: Project,
  file: SourceFile,
  due: FullDue,
  path: readonly Item[],
  place: string,
): Candidate[] {
  const around = unitAround(project, file, path),
    unit = around?.names;
  const things = (...words: string[]): Candidate[] =>
    [
      ...(unit?.things ?? []),
      ...(unit ? namesInside(project, unit).map(({ path: id, list }) => [id, list] as const) : []),
    ].flatMap(([id, list]): Candidate[] => {
      const one = list.find((named) => words.length === 0 || words.includes(named.word));
      return one ? [{ id, name: titleOf(one.source, one.item), word: one.word }] : [];
    });
  const plain = (ids: Iterable<string>, word: string): Candidate[] => [...ids].map((id) => ({ id, name: "", word }));
  const library = (...words: Declaration["word"][]): Candidate[] => libraryNames(project, file, words);
  const named = (): ReturnType<typeof procedureNames> => procedureNames(project, around?.id ?? "");
  switch (due) {
    case "part":
      return things("part");
    case "thing":
      return things();
    case "fluid":
      return things("fluid");
    case "hazard":
      return things("hazard");
    case "washer":
      return [...things("part"), ...library("consumable")];
    case "position":
      return plain(unit?.positions ?? [], "position");
    case "step":
      return plain(named().steps, "step");
    case "step or thing":
      return [...plain(named().steps, "step"), ...things()];
    case "procedure":
      return library("procedure");
    case "procedure or step":
      return [...library("procedure"), ...plain(named().steps, "step")];
    case "unit":
      return library("unit");
    case "role":
      return library("role");
    case "table":
      return library("torque-table");
    case "hazard type":
      return library("hazard");
    case "temporary":
      return [...plain(unit?.temporaries ?? [], "temporary"), ...library("temporary")];
    case "tool":
      return [...library("tool"), ...plain(unit?.temporaries ?? [], "temporary"), ...library("consumable")];
    case "stores":
      return library("consumable");
    case "kind":
      return kindNames();
    case "kind or thing":
      return [...things(), ...kindNames()];
    case "like":
      return [...things(place), ...(place === "fastener" || place === "hazard" ? library(place) : [])];
    case "reading":
      return plain(named().readings, "reading");
    case "condition":
    case "choice":
      return [...plain(unit?.choices ?? [], "option"), ...plain(named().readings, "reading"), ...things("part")];
    case "piece":
      return plain(
        new Set([...(unit?.things.keys() ?? [])].flatMap((id) => [...(piecesOf(unit!, id) ?? [])])),
        "piece",
      );
    case "any":
      return [];
  }
}

const kindNames = (): Candidate[] =>
  [partKinds, fastenerKinds, jointKinds, fluidKinds, hazardKinds].flatMap((table) =>
    Object.entries(table).map(([id, { title }]) => ({ id, name: title, word: "kind" })),
  );

/** Names at the top of what the file sees, then those of other files of the project, which a `use` would bring in. */
function libraryNames(project: Project, file: SourceFile, words: readonly Declaration["word"][]): Candidate[] {
  const found: Candidate[] = [],
    ids = new Set<string>();
  for (const [id, list] of project.seen(file.path)) {
    const one = list.find((declaration) => words.includes(declaration.word));
    if (one && id !== "") {
      ids.add(id);
      found.push({ id, name: one.name === id ? "" : one.name, word: one.word });
    }
  }
  for (const other of project.files.values()) {
    // Procedures and units are brought in on purpose, by hand; what lies in a library comes along by its name.
    if (other.path === file.path || other.declarations.some((one) => one.word === "procedure" || one.word === "unit"))
      continue;
    for (const one of other.declarations) {
      if (one.id === "" || ids.has(one.id) || !words.includes(one.word)) continue;
      ids.add(one.id);
      found.push({ id: one.id, name: one.name === one.id ? "" : one.name, word: one.word, from: other.path });
    }
  }
  return found;
}

/** The display name in the head of a declaration, "" where the author gave none. */
export function titleOf(source: SourceFile, item: Item): string {
  const title = item.arguments.find((argument) => argument.slot === "string");
  return title ? textOf(source.tree.scan.tokens[title.first]!) : "";
}
