// The body of a procedure, step or refit block as entries. Conditions and choices stay: they are decided while performing.

import type { BlockEntry, Condition, Entry } from "./model.ts";
import type { Name } from "./act.ts";
import {
  accept,
  cursorOf,
  headSpan,
  isNumber,
  linesIn,
  peek,
  takeName,
  takeNames,
  takeNumber,
  takeString,
  wholeSpan,
  wordOf,
  type Cursor,
  type Line,
} from "./cursor.ts";
import type { Item } from "../syntax/index.ts";
import { kept } from "./kept.ts";
import { readAct } from "./read-act.ts";

/** A step that an edit left where it was is the same item, and then the same entry: nobody has to compare the two line by line. */
const steps = kept<Item, BlockEntry>();

function readStep(line: Line): BlockEntry {
  const c = cursorOf(line),
    name = takeName(c);
  return block(line, "step", {
    name: name?.text ?? "",
    title: takeString(c) ?? "",
    body: entriesIn(line),
  });
}

const entriesIn = (line: Line): Entry[] => readEntries(linesIn(line));

export function readEntries(lines: readonly Line[]): Entry[] {
  const entries: Entry[] = [];
  for (let i = 0; i < lines.length; i++) {
    const line = lines[i]!,
      word = wordOf(line);
    switch (word) {
      case "if":
      case "unless":
        entries.push(block(line, "if", { condition: readCondition(line), body: entriesIn(line) }));
        break;
      case "optional":
        entries.push(
          block(line, "optional", { title: takeString(cursorOf(line)) ?? "", key: keyOf(line), body: entriesIn(line) }),
        );
        break;
      case "either": {
        const choices = [line];
        while (i + 1 < lines.length && wordOf(lines[i + 1]!) === "or") choices.push(lines[++i]!);
        entries.push(
          block(line, "either", {
            body: choices.map((choice) => block(choice, "choice", { key: keyOf(choice), body: entriesIn(choice) })),
          }),
        );
        break;
      }
      case "or":
        break; // without its `either`: the syntax says so
      case "step":
        entries.push(steps(line.item, () => readStep(line)));
        break;
      case "repeat":
        if (line.item.block)
          entries.push(
            block(line, "repeat", { over: [...new Set(readSpan(after(line, "for")))], body: entriesIn(line) }),
          );
        else entries.push({ is: "act", act: readAct(line) });
        break;
      case "refit": {
        const c = cursorOf(line),
          by = accept(c, "by") ? takeName(c) : undefined;
        entries.push(block(line, "refit", { name: by?.text ?? "", body: entriesIn(line) }));
        break;
      }
      case "instead":
        entries.push(block(line, "instead", { body: entriesIn(line) }));
        break;
      case "otherwise":
        entries.push(
          block(line, "otherwise", { key: keyOf(line), condition: failingBefore(entries), body: entriesIn(line) }),
        );
        break;
      // Head of a procedure, inside a condition: read with the procedure itself.
      case "aim":
      case "crew":
      case "needs":
      case "starts":
      case "leaves":
      case "task":
      case "role":
      case "revision":
      case "about":
      case "author":
      case "date":
      case "original":
      case "translated":
      case "prepared":
      case "checked":
      case "approved":
      case "mishap":
      case "waste":
        break;
      default:
        entries.push({ is: "act", act: readAct(line) });
    }
  }
  return entries;
}

/** The failing of the reading before, where that has a name. */
function failingBefore(entries: readonly Entry[]): Condition | undefined {
  const before = entries[entries.length - 1];
  const id =
    before?.is === "act"
      ? before.act.id
      : before?.is === "block" && before.kind === "otherwise"
        ? before.condition?.states[0]?.name
        : undefined;
  return id && { states: [{ name: id, state: "fails" }], any: false, unless: false };
}

function block(line: Line, kind: BlockEntry["kind"], of: Partial<BlockEntry>): BlockEntry {
  return {
    is: "block",
    kind,
    name: "",
    title: "",
    over: [],
    body: [],
    condition: undefined,
    key: "",
    at: headSpan(line),
    whole: wholeSpan(line),
    ...of,
  };
}

/** What `Model.chosen` calls an optional block or one of several choices. */
export function keyOf(line: Line): string {
  const at = headSpan(line);
  return `${wordOf(line)} ${at.file} ${at.start}`;
}

export function readCondition(line: Line): Condition {
  const c = cursorOf(line),
    states: { name: Name; state: "" | "fails" | "removed" }[] = [];
  let any = false;
  for (let name = takeName(c); name; name = takeName(c)) {
    const state = accept(c, "fails") ? "fails" : accept(c, "removed") ? "removed" : "";
    states.push({ name, state });
    if (accept(c, "or")) any = true;
    else if (!accept(c, "and")) break;
  }
  return { states, any, unless: wordOf(line) === "unless" };
}

function after(line: Line, word: string): Cursor {
  const c = cursorOf(line);
  accept(c, word);
  return c;
}

/** `1..5`, `1, 3`, `left, right`. */
export function readSpan(c: Cursor): string[] {
  if (!isNumber(peek(c))) return takeNames(c).map((name) => name.text);
  const from = takeNumber(c)!;
  if (accept(c, "..")) {
    const to = takeNumber(c) ?? from;
    return Array.from({ length: Math.max(0, Math.min(to - from + 1, 1000)) }, (_, i) => String(from + i));
  }
  const list = [String(from)];
  while (accept(c, ",")) {
    const next = takeNumber(c);
    if (next === undefined) break;
    list.push(String(next));
  }
  return list;
}
