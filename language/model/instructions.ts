// What instructions for use have to hold beside the work itself: who made the machine and who wrote this, who answers for it, what the
// machine is for, what to do when it goes wrong, where waste goes. The bench reads none of it.

import type { Span } from "../findings/finding.ts";
import { accept, cursorOf, headSpan, takeLabel, takeString, type Line, type LinesByWord } from "./cursor.ts";

/** Two texts that belong together: name and address, what happens and what to do, what it is and where it goes. */
export interface Pair {
  readonly what: string;
  readonly then: string;
  readonly at: Span;
}

/** A name under the text, with the date. */
export interface Signed {
  readonly who: string;
  readonly when: string;
  /** The revision that was signed; undefined where none is named. */
  readonly revision: string | undefined;
  readonly at: Span;
}

/** Of a unit. */
export interface Plate {
  readonly maker: Pair | undefined;
  readonly serial: string | undefined;
  readonly intendedUse: readonly string[];
  readonly wrongUse: readonly string[];
  readonly mishaps: readonly Pair[];
  readonly waste: readonly Pair[];
}

/** Of a procedure. */
export interface Issue {
  readonly author: Pair | undefined;
  readonly date: string | undefined;
  /** "" for original instructions; else what they are translated from; undefined where the author says neither. */
  readonly translatedFrom: string | undefined;
  readonly prepared: Signed | undefined;
  readonly checked: Signed | undefined;
  readonly approved: Signed | undefined;
  readonly mishaps: readonly Pair[];
  readonly waste: readonly Pair[];
}

export const issueWords = [
  "author",
  "date",
  "original",
  "translated",
  "prepared",
  "checked",
  "approved",
  "mishap",
  "waste",
] as const;

function pair(line: Line): Pair {
  const c = cursorOf(line);
  return { what: takeString(c) ?? "", then: takeString(c) ?? "", at: headSpan(line) };
}

const text = (line: Line | undefined): string | undefined => line && takeString(cursorOf(line));
const texts = (lines: readonly Line[]): string[] => lines.flatMap((line) => text(line) ?? []);

/** `of`: the lines of the unit by their word. */
export function readPlate(of: LinesByWord): Plate {
  const [maker] = of("maker");
  return {
    maker: maker && pair(maker),
    serial: text(of("serial")[0]),
    intendedUse: texts(of("intended-use")),
    wrongUse: texts(of("wrong-use")),
    mishaps: of("mishap").map(pair),
    waste: of("waste").map(pair),
  };
}

/** `of`: the lines of the head of the procedure by their word. */
export function readIssue(of: LinesByWord): Issue {
  const [author] = of("author"),
    [translated] = of("translated");
  return {
    author: author && pair(author),
    date: text(of("date")[0]),
    translatedFrom: translated ? (from(translated) ?? "") : of("original").length > 0 ? "" : undefined,
    prepared: signed(of("prepared")[0]),
    checked: signed(of("checked")[0]),
    approved: signed(of("approved")[0]),
    mishaps: of("mishap").map(pair),
    waste: of("waste").map(pair),
  };
}

function from(line: Line): string | undefined {
  const c = cursorOf(line);
  accept(c, "from");
  return takeString(c);
}

function signed(line: Line | undefined): Signed | undefined {
  if (!line) return undefined;
  const c = cursorOf(line),
    who = takeString(c) ?? "",
    when = takeString(c) ?? "";
  return { who, when, revision: accept(c, "of") ? takeLabel(c) : undefined, at: headSpan(line) };
}

/** Somebody has signed this very revision: a name and a date stand there, and the revision is the one that the text has now. */
export const isSigned = (by: Signed | undefined, revision: string | undefined): boolean =>
  by !== undefined && by.who.trim() !== "" && by.when.trim() !== "" && by.revision === revision;
