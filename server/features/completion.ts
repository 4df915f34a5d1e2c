// What can stand here: words of the block at the start of an item; behind a verb the things that it can be done to at this line, as the
// bench stands after the line above.

import { CompletionItemKind, InsertTextFormat, type CompletionItem, type Position } from "vscode-languageserver";
import { ON_BASE, left, lumpOf, placeNames, wordsIn, type Block, type Checked, type Item, type Model, type Performance, type SourceFile, type State, type Thing } from "../../language/index.ts";
import { offsetOf } from "../places.ts";

export function completion(checked: Checked, path: string, position: Position): CompletionItem[] {
  const file = checked.project.files.get(path);
  if (!file) return [];
  const offset = offsetOf(checked, path, position), line = file.text.slice(file.text.lastIndexOf("\n", offset - 1) + 1, offset), before = line.replace(/[\p{L}\p{N}.-]*$/u, "").trim();
  const place = placeAt(file, offset), words = before.split(/\s+/), verb = words[words.length - 1] === "" ? "" : words.find((word) => wordsIn(place).has(word)) ?? "";
  if (before === "" || before.endsWith("{") || before.endsWith("}")) return wordItems(place);
  const at = momentAt(checked, path, offset), last = words[words.length - 1]!;
  if (last === "with" || last === "into") return libraryItems(at?.performance.model ?? modelOf(checked, path));
  const model = at?.performance.model ?? modelOf(checked, path);
  if (!model) return [];
  if (verb === "turn") return model.positions.map((name) => ({ label: name, kind: CompletionItemKind.EnumMember, detail: "position" }));
  if (verb === "do" || verb === "needs") return [...model.procedures.values()].map((p) => ({ label: p.id, kind: CompletionItemKind.Function, detail: p.title }));
  return model.things.filter((thing) => fits(model, thing, verb, at?.state)).map((thing) => thingItem(model, thing, at?.state));
}

function wordItems(place: string): CompletionItem[] {
  return [...wordsIn(place).values()].map((entry, i) => ({
    label: entry.word, kind: CompletionItemKind.Keyword, detail: entry.meaning, documentation: { kind: "markdown", value: `\`${entry.example}\`` }, sortText: `${entry.core ? "0" : "1"}${String(i).padStart(3, "0")}`,
    filterText: [entry.word, ...entry.synonyms].join(" "), labelDetails: { description: placeNames[place] ?? place },
    ...(entry.block !== "" && entry.blockNeeded ? { insertText: `${entry.word} $1 {\n\t$0\n}`, insertTextFormat: InsertTextFormat.Snippet } : {}),
  }));
}

function libraryItems(model: Model | undefined): CompletionItem[] {
  return model ? [...model.library.tools.values()].map((tool) => ({ label: tool.id, kind: CompletionItemKind.Constant, detail: tool.name })) : [];
}

function fits(model: Model, thing: Thing, verb: string, state: State | undefined): boolean {
  switch (verb) {
    case "undo": case "loosen": case "back-out": return thing.is === "tie" && (!state || left(model, state, thing.index) > 0);
    case "remove": case "lift": case "slide": case "swing": case "open": case "support": return thing.is === "part" && !model.base.includes(thing.index) && (!state || lumpOf(state, thing.index) === ON_BASE);
    case "drain": case "recover": case "fill": case "bleed": return thing.is === "fluid";
    case "tighten": return thing.is === "tie";
    case "fit": return thing.is === "part" || thing.is === "tie";
    default: return verb !== "" && (model.hazards.some((h) => h.precautions.some((p) => p.kind === verb)) || verb === "restore" ? thing.is === "hazard" : thing.is === "part" || thing.is === "tie");
  }
}

function thingItem(model: Model, thing: Thing, state: State | undefined): CompletionItem {
  const label = thing.piece === "" ? thing.declared : `${thing.declared}.${thing.piece}`;
  const detail = thing.is === "tie" ? `${thing.name}${state && thing.count > 1 ? `: ${left(model, state, thing.index)} of ${thing.count} in` : ""}${thing.size ? `, ${thing.size.designation}` : ""}` : thing.name;
  return { label, kind: thing.is === "part" ? CompletionItemKind.Field : thing.is === "tie" ? CompletionItemKind.Property : CompletionItemKind.Variable, detail };
}

/** The kind of the innermost block that holds the offset. */
function placeAt(file: SourceFile, offset: number): string {
  const { tokens } = file.tree.scan;
  let place = "file", items: readonly Item[] = file.tree.items;
  for (;;) {
    const block: Block | undefined = items.find((item) => item.block && tokens[item.block.first]!.startOffset < offset && offset <= tokens[item.block.last]!.startOffset)?.block;
    if (!block) return place;
    place = block.place;
    items = block.items;
  }
}

/** The bench before the act at an offset: after the last act of the strip that ends before it. */
export function momentAt(checked: Checked, path: string, offset: number): { performance: Performance; state: State; act: number } | undefined {
  for (const performance of checked.performances) {
    const { whole } = performance.procedure;
    if (whole.file !== path || offset < whole.start || offset > whole.end) continue;
    let act = -1;
    performance.strip.forEach((one, i) => { if (one.act.at.file === path && one.act.at.end < offset) act = Math.max(act, i); });
    return { performance, state: act < 0 ? performance.start : performance.strip[act]!.after, act };
  }
  return undefined;
}

function modelOf(checked: Checked, path: string): Model | undefined {
  return (checked.performances.find((p) => p.procedure.at.file === path) ?? checked.performances.find((p) => p.model.at.file === path) ?? checked.performances[0])?.model;
}
