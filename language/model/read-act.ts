// An act from its line: the same shape for every verb.

import { bareAct, type Act, type Consequence, type Limits, type Name } from "./act.ts";
import { isProblem, makeQuantity, type Quantity } from "../quantities/index.ts";
import {
  accept,
  cursorOf,
  headSpan,
  isName,
  isNumber,
  isString,
  linesIn,
  peek,
  peekText,
  takeLabel,
  takeName,
  takeNames,
  takeNumber,
  takeQuantity,
  takeString,
  takeTime,
  wordEnd,
  wordOf,
  type Cursor,
  type Line,
} from "./cursor.ts";

type Draft = { -readonly [K in keyof Act]: Act[K] };

/** What may stand between the word of an act and the names that it is about: of every other one the next word is a name. */
const beforeNames: Readonly<Record<string, string>> = { turn: "to", repeat: "from" };
/** Of these `as` gives labels, of a reading it says `as found`. */
const labels = new Set(["mark", "tag"]);

export function readAct(line: Line): Act {
  const c = cursorOf(line),
    verb = wordOf(line);
  const act: Draft = bareAct(verb, headSpan(line), wordEnd(line));
  if (!special(act, verb, c, line)) head(act, verb, c);
  while (c.at < c.stop) {
    const before = c.at;
    tail(act, c);
    if (c.at === before) c.at++;
  }
  return act;
}

/** Verbs whose arguments have a form of their own. True where all was read. */
function special(act: Draft, verb: string, c: Cursor, line: Line): boolean {
  switch (verb) {
    case "photo":
      act.text = takeString(c) ?? "";
      act.text2 = takeString(c) ?? "";
      act.points = linesIn(line).flatMap((point) => readPoint(point));
      return true;
    case "video":
      act.text = takeString(c) ?? "";
      if (accept(c, "from")) act.from = takeTime(c);
      if (accept(c, "to")) act.to = takeTime(c);
      return true;
    case "people":
      act.people = takeNumber(c);
      return true;
    case "time":
    case "wait":
      act.amount = takeQuantity(c);
      return true;
    case "repeat":
      if (accept(c, "from")) act.names = takeNames(c);
      return true;
    case "turn":
      accept(c, "to");
      act.on = takeNames(c).slice(0, 1);
      return true;
    case "measure":
    case "test":
    case "inspect":
      readingHead(act, verb, c);
      return true;
    default:
      return false;
  }
}

export function readPoint(line: Line): { name: Name; across: number; down: number }[] {
  const c = cursorOf(line),
    name = takeName(c),
    across = takeQuantity(c),
    down = takeQuantity(c);
  return name && across && down ? [{ name, across: across.low, down: down.low }] : [];
}

/** `measure [id] [on X] "what"`, `inspect X[, Y] "good state"`, `inspect id on X "…"`. */
function readingHead(act: Draft, verb: string, c: Cursor): void {
  const names =
    peekText(c) === "on" && !isString(peek(c)) && c.tokens[c.at + 1] !== undefined && isName(c.tokens[c.at + 1])
      ? []
      : takeNames(c);
  if (accept(c, "on")) {
    act.id = names[0];
    act.on = takeNames(c);
    act.names = act.on;
  } else if (verb === "inspect" && names.length > 0) {
    act.names = names;
    act.on = names;
    act.id = names.length === 1 ? names[0] : undefined;
  } else act.id = names[0];
  act.text = takeString(c) ?? "";
  if (isNumber(peek(c))) limit(act, "value", takeQuantity(c));
}

function limit(act: Draft, which: keyof Limits, value: Quantity | undefined): void {
  if (value) act.limits = { ...act.limits, [which]: value };
}

function head(act: Draft, verb: string, c: Cursor): void {
  if (isNumber(peek(c)) && peekText(c, 1) === "of") {
    act.count = takeNumber(c);
    c.at++;
  } else if (peekText(c) === "rest" && peekText(c, 1) === "of") {
    act.rest = true;
    c.at += 2;
  }
  const before = beforeNames[verb];
  if (before !== undefined) accept(c, before);
  act.names = takeNames(c);
  if (verb === "set" && isString(peek(c))) act.text = takeString(c)!;
  if (isNumber(peek(c))) {
    const value = takeQuantity(c);
    if (verb === "set") limit(act, "value", value);
    else act.amount = value;
  }
}

/** `with crane with slings`: all of them are told, judged and listed. */
function further(act: Draft, tool: Name | undefined): void {
  if (tool) act.tools = [...act.tools, tool];
}

function tail(act: Draft, c: Cursor): void {
  const token = peek(c)!;
  if (isString(token)) {
    const text = takeString(c)!;
    act.text = act.text === "" ? text : `${act.text} ${text}`;
    return;
  }
  if (isNumber(token)) {
    const value = takeQuantity(c);
    if (value) limit(act, "value", value);
    return;
  }
  c.at++;
  switch (token.text) {
    case "with":
      further(act, takeName(c));
      return;
    case "into":
      if (accept(c, "tray")) act.into = { kind: "tray", label: takeLabel(c) ?? "" };
      else if (accept(c, "bag")) act.into = { kind: "bag", label: takeLabel(c) ?? "" };
      else {
        const name = takeName(c);
        if (name) act.into = { kind: "container", label: name.text };
      }
      return;
    case "passes":
      act.passes = takeNumber(c);
      return;
    case "by":
      act.people = takeNumber(c);
      accept(c, "people");
      return;
    case "together":
      act.together = true;
      return;
    case "back":
      act.back = true;
      return;
    case "finger-tight":
      act.fingerTight = true;
      return;
    case "facing":
      act.facing = takeLabel(c);
      return;
    case "first":
      act.first = true;
      return;
    case "last":
      act.last = true;
      return;
    case "after":
      act.after = takeNames(c);
      return;
    case "before":
      act.before = takeNames(c);
      return;
    case "as":
      if (!labels.has(act.verb) && accept(c, "found")) act.asFound = true;
      else {
        const list: string[] = [];
        for (let one = takeLabel(c); one !== undefined; one = takeLabel(c)) {
          list.push(one);
          if (!accept(c, ",")) break;
        }
        act.labels = list;
      }
      return;
    case "to":
    case "on":
    case "onto":
      if (act.verb === "tighten" && accept(c, "stage")) act.stage = takeNumber(c);
      else if (isNumber(peek(c))) act.amount = takeQuantity(c);
      else act.on = takeNames(c);
      return;
    case "at": {
      const which = accept(c, "least") ? "atLeast" : accept(c, "most") ? "atMost" : "at";
      return limit(act, which, takeQuantity(c));
    }
    case "else": {
      const one = consequence(c);
      if (one) act.consequences = [...act.consequences, one];
      return;
    }
    default:
  }
}

function consequence(c: Cursor): Consequence | undefined {
  const text = takeString(c);
  if (text !== undefined) return { is: "words", text };
  if (accept(c, "renew")) return { is: "renew", names: takeNames(c) };
  if (accept(c, "scrap")) return { is: "scrap", names: takeNames(c) };
  if (accept(c, "repeat")) {
    accept(c, "from");
    return { is: "repeat", names: takeNames(c) };
  }
  if (!accept(c, "choose")) return undefined;
  const names = takeNames(c),
    from: (Name | Quantity | number)[] = [];
  /** Figures without a unit of their own: they have that of the next one, `from 0.10, 0.20, 0.30 mm`. */
  let bare: { readonly place: number; readonly text: string }[] = [];
  if (accept(c, "from"))
    do {
      const at = c.at,
        quantity = takeQuantity(c),
        text = c.tokens[at]?.image ?? "";
      if (quantity) {
        for (const { place, text: first } of bare) {
          const made = makeQuantity({ first, form: "single", unit: quantity.unit });
          if (!isProblem(made)) from[place] = made;
        }
        bare = [];
        from.push(quantity);
        continue;
      }
      c.at = at;
      const one = takeName(c) ?? takeNumber(c);
      if (one === undefined) break;
      if (typeof one === "number") bare.push({ place: from.length, text });
      from.push(one);
    } while (accept(c, ","));
  return { is: "choose", names, from };
}
