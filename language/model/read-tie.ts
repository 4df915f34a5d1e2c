// The facts of a fastener or joint that need no other thing: sizes, torques, stages, patterns.

import { si, type Quantity, type ThreadSize } from "../quantities/index.ts";
import type { Library, RenewRule, Tie, Torque } from "./model.ts";
import {
  accept,
  cursorOf,
  headSpan,
  isNumber,
  peek,
  peekText,
  takeLabel,
  takeName,
  takeNames,
  takeNumber,
  takeOf,
  takePlane,
  takeQuantity,
  takeString,
  takeThread,
  type Cursor,
  type Line,
} from "./cursor.ts";

export function readTorque(line: Line): Torque {
  const c = cursorOf(line);
  let is: Torque["is"] = "none",
    value: Quantity | undefined,
    table: string | undefined,
    words: string | undefined;
  if (accept(c, "none")) is = "none";
  else if (accept(c, "standard")) {
    is = "standard";
    table = takeName(c)?.text ?? takeString(c);
  } else if (isNumber(peek(c))) {
    value = takeOf("torque")(c);
    is = value ? "value" : "none";
  } else {
    words = takeString(c);
    is = "words";
  }
  let forCount: Torque["forCount"];
  if (accept(c, "for")) forCount = accept(c, "rest") ? "rest" : takeNumber(c);
  return {
    is,
    value,
    table,
    words,
    forCount,
    while: accept(c, "while") ? takeString(c) : undefined,
    at: headSpan(line),
  };
}

/** A torque from a standard table, by the size of the thread. */
export function fromTable(torque: Torque, size: ThreadSize | undefined, library: Library): Torque {
  if (torque.is !== "standard" || torque.table === undefined || !size) return torque;
  const row = library.torqueTables.get(torque.table)?.rows.find((r) => r.size.designation === size.designation);
  return row ? { ...torque, value: row.torque } : torque;
}

export function readDrive(line: Line): Tie["drive"] {
  const c = cursorOf(line),
    kind = takeLabel(c) ?? "";
  if (!isNumber(peek(c))) return { kind, size: undefined, at: headSpan(line) };
  return { kind, size: takeOf("length")(c) ?? bareMillimetres(c), at: headSpan(line) };
}

/** A bare figure after a drive is mm (of a hexalobular or cross drive, its number). */
function bareMillimetres(c: Cursor): Quantity | undefined {
  const token = peek(c),
    value = takeNumber(c);
  if (!token || value === undefined) return undefined;
  const digits = token.image.includes(".") ? token.image.length - token.image.indexOf(".") - 1 : 0;
  return {
    dimension: "length",
    unit: "mm",
    low: value,
    high: value,
    nominal: value,
    form: "single",
    pair: undefined,
    written: `${token.image} mm`,
    digits,
    step: 10 ** -digits,
    significant: token.image.replace(".", "").length,
  };
}

export function readPasses(line: Line): Tie["passes"] {
  const c = cursorOf(line),
    shares: number[] = [],
    at = c.at;
  for (let share = takeQuantity(c); share; share = takeQuantity(c)) {
    shares.push(si(share).high);
    if (!accept(c, ",")) break;
  }
  if (shares.length > 0) return { count: shares.length, shares };
  c.at = at;
  const count = takeNumber(c);
  return count === undefined ? undefined : { count, shares: [] };
}

export function readSequence(line: Line): Tie["sequence"] {
  const c = cursorOf(line),
    words = takeString(c),
    at = headSpan(line);
  if (words !== undefined) return { kind: "words", listed: [], words, at };
  if (!accept(c, "listed")) return { kind: takeLabel(c) ?? "", listed: [], words: undefined, at };
  const listed: number[] = [];
  for (let one = takeNumber(c); one !== undefined; one = takeNumber(c)) {
    listed.push(one);
    if (!accept(c, ",")) break;
  }
  return { kind: "listed", listed, words: undefined, at };
}

export function readPattern(line: Line): Tie["pattern"] {
  const c = cursorOf(line);
  if (accept(c, "circle")) {
    const diameter = takeOf("length")(c);
    return diameter && { is: "circle", diameter };
  }
  if (accept(c, "rectangle")) return { is: "rectangle", sides: takePlane(c) };
  accept(c, "at");
  const points: Quantity[][] = [];
  for (let point = takePlane(c); point.length > 0; point = takePlane(c)) {
    points.push(point);
    if (!accept(c, ",")) break;
  }
  return { is: "at", points };
}

export function readStages(line: Line): Quantity[] {
  const c = cursorOf(line),
    stages: Quantity[] = [];
  for (let stage = takeQuantity(c); stage; stage = takeQuantity(c)) {
    stages.push(stage);
    if (!accept(c, ",")) break;
  }
  return stages;
}

export function readBackOut(line: Line): Tie["backOut"] {
  const c = cursorOf(line),
    angle = takeQuantity(c);
  return angle && { angle, until: accept(c, "until") ? takeString(c) : undefined };
}

export function readBead(line: Line): Tie["bead"] {
  const c = cursorOf(line),
    width = takeOf("length")(c);
  if (!width) return undefined;
  return { width, length: accept(c, "×") ? takeOf("length")(c) : undefined };
}

/** `renew when worn by pairs`, in one line or in several; of two answers to one question the first. */
export function readRenew(lines: readonly Line[]): RenewRule | undefined {
  let when: RenewRule["when"], together: RenewRule["together"], strips: number | undefined;
  for (const line of lines)
    for (const c = cursorOf(line); peekText(c) !== undefined;) {
      if (accept(c, "always")) when ??= "always";
      else if (accept(c, "when")) {
        const found = accept(c, "worn") ? "worn" : accept(c, "damaged") ? "damaged" : undefined;
        when ??= found;
      } else if (accept(c, "as-a-set")) together ??= "as-a-set";
      else if (accept(c, "by") && accept(c, "pairs")) together ??= "by-pairs";
      else if (accept(c, "every")) {
        const count = takeNumber(c);
        accept(c, "strips");
        if (when === undefined) [when, strips] = ["every", count];
      } else break;
    }
  return when === undefined && together === undefined
    ? undefined
    : { when, together, strips, said: true, at: headSpan(lines[0]!) };
}

/** `count 4`, `count 2 per cap`, `count unknown`. */
export function readCount(line: Line): { count: number; per: string | undefined; unknown: boolean } {
  const c = cursorOf(line);
  if (accept(c, "unknown")) return { count: 1, per: undefined, unknown: true };
  const count = takeNumber(c) ?? 1;
  return {
    count: Math.max(1, Math.floor(count)),
    per: accept(c, "per") ? takeName(c)?.text : undefined,
    unknown: false,
  };
}

/** `joins [each of] A, B to C, D` */
export function readJoins(line: Line): { each: boolean; lowers: string[]; uppers: string[] } {
  const c = cursorOf(line),
    each = peekText(c) === "each" && peekText(c, 1) === "of";
  if (each) c.at += 2;
  const lowers = takeNames(c).map((n) => n.text);
  accept(c, "to");
  return { each, lowers, uppers: takeNames(c).map((n) => n.text) };
}

/** `with [N] WASHER` */
export function readWasher(line: Line): { count: number | undefined; name: string } {
  const c = cursorOf(line),
    count = takeNumber(c);
  return { count, name: takeName(c)?.text ?? "" };
}

export function readSize(line: Line): ThreadSize | Quantity[] | undefined {
  const c = cursorOf(line);
  return isNumber(peek(c)) && peek(c)!.tokenType.name === "Num" ? takePlane(c) : takeThread(c);
}
