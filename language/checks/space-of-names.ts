// The names of one unit, in all its builds, and what is named in the procedures for it: what a reference to a name is held against.

import type { Project, SourceFile } from "../names/project.ts";
import { accept, cursorOf, takeName } from "../model/cursor.ts";
import { kept } from "../model/kept.ts";
import { readCount } from "../model/read-tie.ts";
import { readSpan } from "../model/read-entries.ts";
import type { Item } from "../syntax/index.ts";
import { eachItem } from "../syntax/index.ts";

export interface Named {
  readonly id: string;
  readonly word: string;
  readonly item: Item;
  readonly source: SourceFile;
  readonly start: number;
  readonly end: number;
  /** Conditions around it, outermost first, as items: two declarations under different ones are never in one build for sure. */
  readonly under: readonly Item[];
}

export interface UnitNames {
  readonly item: Item;
  readonly source: SourceFile;
  /** Parts, fasteners, joints, fluids, hazards, in declared order; a name may be declared for several builds. */
  readonly things: ReadonlyMap<string, readonly Named[]>;
  /** Those of them that share a name. */
  readonly repeated: readonly (readonly Named[])[];
  readonly positions: ReadonlySet<string>;
  /** Variants and options. */
  readonly choices: ReadonlySet<string>;
  readonly temporaries: ReadonlySet<string>;
  /** Words of heads that could not be read: a name among them may have been meant for a declaration. */
  readonly doubtful: ReadonlySet<string>;
}

/** What procedures name: of one unit, wherever they stand. */
export interface ProcedureNames {
  readonly readings: ReadonlySet<string>;
  readonly steps: ReadonlySet<string>;
}

const thingWords: ReadonlySet<string> = new Set(["part", "fastener", "joint", "fluid", "hazard"]);

/** The name that an item declares, with its place. */
export function declaredName(
  source: SourceFile,
  item: Item,
): { readonly text: string; readonly start: number; readonly end: number } | undefined {
  const argument = item.arguments.find((one) => one.declares),
    token = argument && source.tree.scan.tokens[argument.first];
  return token && { text: token.text, start: token.startOffset, end: token.endOffset! + 1 };
}

const units = kept<Item, UnitNames>();

/** The names that a unit declares, those under conditions too. */
export function unitNames(source: SourceFile, item: Item): UnitNames {
  return units(item, () => readUnit(source, item));
}

function readUnit(source: SourceFile, item: Item): UnitNames {
  const { tokens } = source.tree.scan,
    things = new Map<string, Named[]>(),
    repeated: Named[][] = [],
    positions = new Set<string>(),
    choices = new Set<string>(),
    temporaries = new Set<string>(),
    doubtful = new Set<string>();
  const visit = (items: readonly Item[], under: readonly Item[]): void => {
    for (const one of items) {
      const word = one.entry?.word;
      if (word === undefined || one.broken)
        for (let i = one.first; i <= (one.block ? one.block.first - 1 : one.last); i++) doubtful.add(tokens[i]!.text);
      if (word === undefined) {
        if (one.block)
          eachItem(one.block.items, (inner) => {
            for (let i = inner.first; i <= inner.last; i++) doubtful.add(tokens[i]!.text);
          });
        continue;
      }
      if (word === "if" || word === "unless") {
        if (one.block) visit(one.block.items, [...under, one]);
        continue;
      }
      for (const argument of one.arguments) {
        if (!argument.declares) continue;
        const token = tokens[argument.first]!,
          id = token.text;
        if (word === "positions") positions.add(id);
        else if (word === "variants" || word === "option") choices.add(id);
        else if (word === "temporary") temporaries.add(id);
        else if (thingWords.has(word)) {
          const named = { id, word, item: one, source, start: token.startOffset, end: token.endOffset! + 1, under },
            list = things.get(id);
          if (list) {
            if (list.length === 1) repeated.push(list);
            list.push(named);
          } else things.set(id, [named]);
        }
      }
    }
  };
  visit(item.block?.items ?? [], []);
  return { item, source, things, repeated, positions, choices, temporaries, doubtful };
}

/** The labels of a thing's pieces; undefined where they cannot be told from its own block. */
export function piecesOf(names: UnitNames, id: string, asked: readonly string[] = []): ReadonlySet<string> | undefined {
  const labels = new Set<string>();
  if (asked.includes(id)) return undefined;
  for (const named of names.things.get(id) ?? []) {
    let known = true;
    eachItem(named.item.block?.items ?? [], (one) => {
      const word = one.entry?.word,
        line = { item: one, source: named.source };
      if (word === "like") known = false;
      else if (word === "pieces") for (const label of readSpan(cursorOf(line))) labels.add(label);
      else if (word === "count") {
        const { per } = readCount(line),
          of = per === undefined ? undefined : piecesOf(names, per, [...asked, id]);
        if (per !== undefined && of === undefined) known = false;
        for (const label of of ?? []) labels.add(label);
      }
    });
    if (!known) return undefined;
  }
  return labels;
}

/** One name of a path: where it stands in the text of the path, and what it is. */
export interface PathName {
  readonly text: string;
  readonly from: number;
  readonly things: readonly Named[];
  /** The unit that it is looked up in. */
  readonly names: UnitNames;
  readonly unit: string;
}

/** A name with points in it, from left to right: things, each with the piece that may follow it passed over. */
export interface Path {
  readonly found: readonly PathName[];
  /** The first name that is neither a piece nor a thing inside, with what there is. Undefined where all are known, or nobody can tell. */
  readonly lost:
    | {
        /** What stands before it in the text, without the point. */
        readonly before: string;
        readonly pieces: readonly string[];
        readonly inside: readonly string[];
        readonly unit: string;
      }
    | undefined;
}

/** `cap.3`, `gearbox.lid`, `gearbox.left.cap.3`, as the unit that it is written in sees it. */
export function pathOf(project: Project, names: UnitNames, unit: string, text: string): Path {
  const found: PathName[] = [],
    segments = text.split(".");
  let here = names,
    hereId = unit,
    from = 0,
    open: { names: UnitNames; id: string } | undefined | "unknown",
    labels: ReadonlySet<string> | undefined;
  for (const [k, segment] of segments.entries()) {
    const start = from;
    from += segment.length + 1;
    if (k > 0 && labels?.has(segment)) {
      labels = undefined;
      continue;
    }
    if (k > 0) {
      const isInside = open !== undefined && open !== "unknown" && open.names.things.has(segment);
      // Pieces and units that come by `like` are not told here.
      if (open === "unknown" || (!isInside && labels === undefined && k === 1)) return { found, lost: undefined };
      if (!open || !isInside)
        return {
          found,
          lost: {
            before: text.slice(0, start - 1),
            pieces: [...(labels ?? [])],
            inside: [...(open?.names.things.keys() ?? [])],
            unit: open?.id ?? hereId,
          },
        };
      here = open.names;
      hereId = open.id;
    }
    const things = here.things.get(segment);
    if (!things) return { found, lost: undefined };
    found.push({ text: segment, from: start, things, names: here, unit: hereId });
    labels = piecesOf(here, segment);
    open = unitInside(project, things);
  }
  return { found, lost: undefined };
}

/** The unit that a part is; "unknown" where it may have that from elsewhere (`like`). */
function unitInside(
  project: Project,
  things: readonly Named[],
): { readonly names: UnitNames; readonly id: string } | undefined | "unknown" {
  for (const { item, source } of things) {
    let id: string | undefined,
      isUnknown = false;
    eachItem(item.block?.items ?? [], (one) => {
      if (one.entry?.word === "like") isUnknown = true;
      if (one.entry?.word === "is") id = takeName(after({ item: one, source }, "unit"))?.text;
    });
    const declaration =
      id === undefined
        ? undefined
        : project
            .seen(source.path)
            .get(id)
            ?.find((one) => one.word === "unit");
    const inner = declaration && project.files.get(declaration.file);
    if (declaration && inner) return { names: unitNames(inner, declaration.item), id: declaration.id };
    if (isUnknown || id !== undefined) return "unknown";
  }
  return undefined;
}

/** Things inside the parts that are units, as they are named from here: `gearbox.lid`; of several, `gearbox.left.lid` as well. */
export function namesInside(
  project: Project,
  names: UnitNames,
): readonly { readonly path: string; readonly list: readonly Named[] }[] {
  return [...names.things].flatMap(([part, things]) => {
    const inner = unitInside(project, things);
    if (inner === undefined || inner === "unknown") return [];
    return [part, ...[...(piecesOf(names, part) ?? [])].map((piece) => `${part}.${piece}`)].flatMap((outer) =>
      [...inner.names.things].map(([id, list]) => ({ path: `${outer}.${id}`, list })),
    );
  });
}

const after = (
  line: { readonly item: Item; readonly source: SourceFile },
  word: string,
): ReturnType<typeof cursorOf> => {
  const cursor = cursorOf(line);
  accept(cursor, word);
  return cursor;
};

const procedures = kept<Project, Map<string, ProcedureNames>>();
const none: ProcedureNames = { readings: new Set(), steps: new Set() };

/** Readings and steps of all procedures for a unit. */
export function procedureNames(project: Project, unit: string): ProcedureNames {
  return procedures(project, () => readProcedures(project)).get(unit) ?? none;
}

function readProcedures(project: Project): Map<string, ProcedureNames> {
  const all = new Map<string, { readings: Set<string>; steps: Set<string> }>();
  for (const source of project.files.values()) {
    for (const declaration of source.declarations) {
      if (declaration.word !== "procedure") continue;
      const unit = unitOfProcedure(source, declaration.item) ?? "";
      let names = all.get(unit);
      if (!names) all.set(unit, (names = { readings: new Set(), steps: new Set() }));
      const { readings, steps } = names;
      eachItem(declaration.item.block?.items ?? [], (item) => {
        const word = item.entry?.word;
        if (word === "step" || word === "task") {
          const name = declaredName(source, item);
          if (name) steps.add(name.text);
        } else if (word === "measure" || word === "test") {
          const name = declaredName(source, item);
          if (name) readings.add(name.text);
        } else if (word === "inspect") {
          const name = takeName(cursorOf({ item, source }));
          if (name) readings.add(name.text);
        }
      });
    }
  }
  return all;
}

/** The unit that a procedure is for, as written. */
export function unitOfProcedure(source: SourceFile, item: Item): string | undefined {
  const argument = item.arguments.findLast((one) => one.slot === "name" && !one.declares);
  return argument && source.tree.scan.tokens[argument.first]!.text;
}
