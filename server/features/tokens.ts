// Semantic tokens: what the colouring grammar cannot know: hazards, lifting, things that must be new.

import { SemanticTokensBuilder, type SemanticTokens } from "vscode-languageserver";
import { eachItem, wordsIn, type Checked } from "../../language/index.ts";
import { positionOf } from "../places.ts";
import { occurrencesIn } from "../symbols.ts";

export const tokenTypes = ["keyword", "class", "property", "variable", "event", "function"];
export const tokenModifiers = ["declaration"];

export function semanticTokens(checked: Checked, path: string): SemanticTokens {
  const file = checked.project.files.get(path), builder = new SemanticTokensBuilder(), marks: { start: number; length: number; type: number; declares: boolean }[] = [];
  if (!file) return builder.build();
  const { tokens } = file.tree.scan, kinds = new Map<string, number>();
  for (const { model } of checked.performances) for (const thing of model.things) kinds.set(`${thing.at.file} ${thing.at.start}`, thing.is === "hazard" ? 4 : thing.is === "part" ? 1 : thing.is === "tie" ? 2 : 3);
  eachItem(file.tree.items, (item) => { const token = tokens[item.first]!; if (item.entry && wordsIn(item.entry.place).has(token.text)) marks.push({ start: token.startOffset, length: token.image.length, type: 0, declares: false }); });
  for (const one of occurrencesIn(checked, path)) { const type = kinds.get(one.symbol); if (type !== undefined) marks.push({ start: one.span.start, length: one.span.end - one.span.start, type, declares: one.declares }); }
  marks.sort((a, b) => a.start - b.start);
  let last = -1;
  for (const mark of marks) {
    if (mark.start < last) continue;
    last = mark.start + mark.length;
    const { line, character } = positionOf(checked, path, mark.start);
    builder.push(line, character, mark.length, mark.type, mark.declares ? 1 : 0);
  }
  return builder.build();
}
