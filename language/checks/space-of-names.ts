// The names of one unit, in all its builds, and what is named in the procedures for it: what a reference to a name is held against.

import type { Project, SourceFile } from "../names/project.ts";
import { cursorOf, takeName } from "../model/cursor.ts";
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
          if (list) list.push(named);
          else things.set(id, [named]);
        }
      }
    }
  };
  visit(item.block?.items ?? [], []);
  return { item, source, things, positions, choices, temporaries, doubtful };
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
