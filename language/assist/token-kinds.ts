// What each token is, for colours beyond the grammar's: declared or named, hazards and precautions, lifting, parts that are used once.

import { kept } from "../model/kept.ts";
import { isKindOf, kindIn, partKinds, precautions, signals } from "../tables/index.ts";
import { eachItem, type Item } from "../syntax/index.ts";
import { Num, Str, Unit } from "../syntax/tokens.ts";
import type { Project, SourceFile } from "../names/project.ts";
import { mentionsIn } from "./symbols.ts";

export const tokenTypes = [
  "keyword",
  "part",
  "fastener",
  "joint",
  "fluid",
  "hazard",
  "procedure",
  "step",
  "tool",
  "consumable",
  "position",
  "kind",
  "number",
  "unit",
  "string",
  "comment",
] as const;
export type TokenType = (typeof tokenTypes)[number];
export const tokenModifiers = ["declaration", "undone", "remade", "hazard", "lifting", "oneTime"] as const;
export type TokenModifier = (typeof tokenModifiers)[number];

export interface ColouredToken {
  readonly start: number;
  readonly end: number;
  readonly type: TokenType;
  readonly modifiers: readonly TokenModifier[];
}

const ofWord: Readonly<Record<string, TokenType>> = {
  part: "part",
  fastener: "fastener",
  joint: "joint",
  fluid: "fluid",
  hazard: "hazard",
  procedure: "procedure",
  step: "step",
  task: "step",
  tool: "tool",
  consumable: "consumable",
  temporary: "tool",
  position: "position",
  unit: "part",
  role: "tool",
  "torque-table": "consumable",
  reading: "step",
  option: "position",
  variant: "position",
};
const lifting: ReadonlySet<string> = new Set(["lift", "support", "release"]);
/** Lines and texts that speak of a danger. */
const warning = (word: string): boolean =>
  isKindOf(precautions, word) || isKindOf(signals, word) || word === "hazard" || word === "precaution";

/** Every token that has a colour, in order; between `from` and `to` only. */
export function colouredTokens(project: Project, file: SourceFile, from = 0, to = file.text.length): ColouredToken[] {
  const { tokens } = file.tree.scan,
    found: ColouredToken[] = [],
    taken = new Set<number>(),
    oneTime = oneTimeParts(file);
  const add = (index: number, type: TokenType, modifiers: readonly TokenModifier[], end?: number): void => {
    const token = tokens[index]!;
    if (taken.has(index) || token.endLine !== token.line || token.invented) return;
    taken.add(index);
    if (token.startOffset <= to && token.endOffset! + 1 >= from)
      found.push({ start: token.startOffset, end: end ?? token.endOffset! + 1, type, modifiers });
  };
  for (const mention of mentionsIn(project, file)) {
    const type = ofWord[mention.word],
      modifiers: TokenModifier[] = [];
    if (!type) continue;
    if (mention.role === "declared") modifiers.push("declaration");
    if (mention.role === "undone") modifiers.push("undone");
    if (mention.role === "remade") modifiers.push("remade");
    if (mention.word === "part" && oneTime.has(mention.id)) modifiers.push("oneTime");
    add(mention.token.index, type, modifiers, mention.end);
  }
  eachItem(file.tree.items, (item) => {
    if (!item.entry) return;
    const { word } = item.entry,
      modifiers: TokenModifier[] = [];
    if (warning(word)) modifiers.push("hazard");
    if (lifting.has(word)) modifiers.push("lifting");
    add(item.first, "keyword", modifiers);
    for (const argument of item.arguments)
      for (let i = argument.first; i <= argument.last; i++) {
        const token = tokens[i]!;
        if (argument.slot.startsWith("kind:")) add(i, "kind", []);
        else if (token.tokenType === Num) add(i, "number", []);
        else if (token.tokenType === Unit) add(i, "unit", []);
        else if (token.tokenType === Str) add(i, "string", warning(word) ? ["hazard"] : []);
      }
  });
  return found.sort((a, b) => a.start - b.start);
}

const known = kept<SourceFile["tree"], ReadonlySet<string>>();

/** Ids of the parts of this file that are used once by their kind, or that it says are always renewed. */
const oneTimeParts = ({ tree }: SourceFile): ReadonlySet<string> =>
  known(tree, () => {
    const all = new Set<string>(),
      { tokens } = tree.scan;
    eachItem(tree.items, (item: Item) => {
      if (item.entry?.word !== "part") return;
      const name = item.arguments.find((one) => one.declares),
        kind = item.arguments.find((one) => one.slot === "kind:part");
      const once =
        (kind && kindIn(partKinds, tokens[kind.first]!.text)?.oneTime) ||
        item.block?.items.some((one) => one.entry?.word === "renew" && tokens[one.first + 1]?.text === "always");
      if (name && once) all.add(tokens[name.first]!.text);
    });
    return all;
  });
