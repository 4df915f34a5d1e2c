// Who is meant by a name: every mention of a file with the declaration that it speaks of. Mentions that stand for nothing are left out.

import { eachName, type FullDue, type NameVisitor } from "../checks/each-name.ts";
import {
  declaredName,
  pathOf,
  unitNames,
  unitOfProcedure,
  type Named,
  type UnitNames,
} from "../checks/space-of-names.ts";
import { kept } from "../model/kept.ts";
import type { Declaration, Project, SourceFile } from "../names/project.ts";
import { eachItem, type Item, type Token } from "../syntax/index.ts";

/** `undone` and `remade`: an act of the strip, of the refit, changes it. */
export type Role = "declared" | "named" | "undone" | "remade";

export interface Mention {
  readonly file: string;
  readonly start: number;
  readonly end: number;
  /** The same for all mentions of one declared thing, wherever it is declared. */
  readonly symbol: string;
  readonly id: string;
  /** The word of its declaration: part, fastener, procedure, step, position … */
  readonly word: string;
  readonly role: Role;
  /** The unit whose names hold where it stands: its file and id; "" where there is none. */
  readonly home: string;
  readonly unit: string;
  /** The item that it stands in. */
  readonly item: Item;
  readonly token: Token;
}

const mentions = kept<Project, Map<string, readonly Mention[]>>();
const mentionsByFile = (project: Project): Map<string, readonly Mention[]> => mentions(project, () => new Map());

/** The mentions of a file in the order of its text. */
export function mentionsIn(project: Project, file: SourceFile): readonly Mention[] {
  const byFile = mentionsByFile(project);
  let found = byFile.get(file.path);
  if (!found) byFile.set(file.path, (found = read(project, file)));
  return found;
}

/** The mention that an offset touches; where the whole file was not asked for yet, only what is around it is looked through. */
export function mentionAt(project: Project, file: SourceFile, offset: number): Mention | undefined {
  const near = mentionsByFile(project).get(file.path) ?? read(project, file, offset);
  return near.find((mention) => mention.start <= offset && offset <= mention.end);
}

/** Where the thing is declared that a mention speaks of; undefined for what is no thing of a unit, such as a step or a tool. */
export function thingNamed(project: Project, { symbol, home, unit, id }: Mention): Named | undefined {
  if (symbol !== `${home}#${unit}/${id}`) return undefined;
  const source = project.files.get(home),
    declaration = source?.declarations.find((one) => one.word === "unit" && one.id === unit);
  return source && declaration && unitNames(source, declaration.item).things.get(id)?.[0];
}

/** All mentions of a symbol, declarations first in each file. */
export function mentionsOf(project: Project, symbol: string): Mention[] {
  return [...project.files.values()].flatMap((file) =>
    mentionsIn(project, file).filter((mention) => mention.symbol === symbol),
  );
}

const undoing: ReadonlySet<string> = new Set([
  "undo",
  "loosen",
  "back-out",
  "remove",
  "lift",
  "slide",
  "swing",
  "open",
  "drain",
  "recover",
  "scrap",
]);
const remaking: ReadonlySet<string> = new Set(["fit", "tighten", "press", "fill", "align"]);
const inProcedures: ReadonlySet<string> = new Set(["step", "task", "measure", "test", "inspect"]);

function read(project: Project, file: SourceFile, around?: number): readonly Mention[] {
  const found: Mention[] = [],
    seen = project.seen(file.path);
  let unit: UnitNames | undefined,
    unitId = "";
  const unitKey = (): string => (unit ? `${unit.source.path}#${unitId}` : "");
  const add = (token: Token, symbol: string, word: string, role: Role, item: Item): void => {
    const dot = token.text.indexOf("."),
      id = dot < 0 ? token.text : token.text.slice(0, dot);
    // A piece is named behind a point: the name itself ends before it.
    const length = dot < 0 ? token.endOffset! + 1 - token.startOffset : token.image.indexOf(".");
    found.push({
      file: file.path,
      start: token.startOffset,
      end: token.startOffset + length,
      symbol,
      id,
      word,
      role,
      home: unit?.source.path ?? "",
      unit: unitId,
      item,
      token,
    });
  };
  const top = (words: readonly Declaration["word"][], id: string): Declaration | undefined =>
    seen.get(id)?.find((one) => words.includes(one.word));
  const topKey = (one: Declaration): string => `${one.file}#${one.word} ${one.id}`;

  const visitor: NameVisitor = {
    enter(names, id) {
      unit = names;
      unitId = id ?? "";
    },
    declares(token, item) {
      const { word, place } = item.entry!;
      if (place === "file") return add(token, `${file.path}#${word} ${token.text}`, word, "declared", item);
      if (word === "positions") return add(token, `${unitKey()} position ${token.text}`, "position", "declared", item);
      if (word === "variants" || word === "option")
        return add(
          token,
          `${unitKey()} choice ${token.text}`,
          word === "option" ? "option" : "variant",
          "declared",
          item,
        );
      if (word === "temporary") return add(token, `${unitKey()} temporary ${token.text}`, word, "declared", item);
      if (inProcedures.has(word))
        return add(
          token,
          `${unitKey()} ${word === "step" || word === "task" ? "step" : "reading"} ${token.text}`,
          word === "step" || word === "task" ? word : "reading",
          "declared",
          item,
        );
      add(token, `${unitKey()}/${token.text}`, word, "declared", item);
    },
    name(token, due, item) {
      const path = unit && token.text.includes(".") ? pathOf(project, unit, unitId, token.text).found : [];
      const target = resolve(token.text.split(".")[0]!, path.length > 1 ? "thing" : due);
      if (!target) return;
      const { word } = item.entry!,
        acts = item.entry!.place === "step" || item.entry!.place === "refit" || item.entry!.place === "finish";
      const role: Role = acts && undoing.has(word) ? "undone" : acts && remaking.has(word) ? "remade" : "named";
      add(token, target.symbol, target.word, path.length > 1 ? "named" : role, item);
      // Things inside the part that the name goes through are named as well, each where it stands.
      path.slice(1).forEach((inner, k) => {
        found.push({
          file: file.path,
          start: token.startOffset + inner.from,
          end: token.startOffset + inner.from + inner.text.length,
          symbol: `${inner.names.source.path}#${inner.unit}/${inner.text}`,
          id: inner.text,
          word: inner.things[0]!.word,
          role: k === path.length - 2 ? role : "named",
          home: inner.names.source.path,
          unit: inner.unit,
          item,
          token,
        });
      });
    },
  };
  eachName(project, file, visitor, around);
  return found.sort((a, b) => a.start - b.start);

  function resolve(id: string, due: FullDue): { symbol: string; word: string } | undefined {
    const thing = unit?.things.get(id)?.[0],
      own = thing && { symbol: `${unitKey()}/${id}`, word: thing.word };
    const library = (...words: Declaration["word"][]): { symbol: string; word: string } | undefined => {
      const one = top(words, id);
      return one && { symbol: topKey(one), word: one.word };
    };
    const inUnit = (kind: string, word = kind): { symbol: string; word: string } => ({
      symbol: `${unitKey()} ${kind} ${id}`,
      word,
    });
    const step = (): { symbol: string; word: string } | undefined =>
      stepsOf(project, unitId).has(id) ? inUnit("step") : undefined;
    const temporary = (): { symbol: string; word: string } | undefined =>
      unit?.temporaries.has(id) ? inUnit("temporary") : library("temporary");
    switch (due) {
      case "part":
      case "thing":
      case "fluid":
      case "hazard":
        return own;
      case "position":
        return unit?.positions.has(id) ? inUnit("position") : undefined;
      case "step":
        return step();
      case "step or thing":
        return own ?? step();
      case "procedure":
        return library("procedure");
      case "procedure or step":
        return step() ?? library("procedure");
      case "unit":
        return library("unit");
      case "role":
        return library("role");
      case "table":
        return library("torque-table");
      case "hazard type":
        return library("hazard");
      case "temporary":
        return temporary();
      case "tool":
        return own ?? temporary() ?? library("tool", "consumable");
      case "stores":
      case "washer":
        return own ?? library("consumable");
      case "kind or thing":
        return own;
      case "like":
        return own ?? library("fastener", "hazard");
      case "reading":
        return inUnit("reading");
      case "condition":
      case "choice":
        return unit?.choices.has(id) ? inUnit("choice", "option") : undefined;
      case "kind":
      case "any":
        return undefined;
    }
  }
}

const steps = kept<Project, Map<string, ReadonlySet<string>>>();

/** Ids of the steps and tasks of every procedure for a unit. */
function stepsOf(project: Project, unit: string): ReadonlySet<string> {
  const byUnit = steps(project, () => {
    const all = new Map<string, Set<string>>();
    for (const file of project.files.values())
      for (const { word, item } of file.declarations) {
        if (word !== "procedure") continue;
        const of = unitOfProcedure(file, item) ?? "",
          ids = all.get(of) ?? new Set<string>();
        all.set(of, ids);
        eachItem(item.block?.items ?? [], (one) => {
          if (one.entry?.word !== "step" && one.entry?.word !== "task") return;
          const name = declaredName(file, one);
          if (name) ids.add(name.text);
        });
      }
    return all;
  });
  return byUnit.get(unit) ?? none;
}
const none: ReadonlySet<string> = new Set();
