// A declaration of a unit as lines that hold in one build: conditions decided, what it is like laid under its own statements.

import type { Declaration, Project, SourceFile } from "../names/project.ts";
import type { Item } from "../syntax/index.ts";
import { textOf } from "../names/strings.ts";
import type { Message } from "./model.ts";
import type { Span } from "../findings/finding.ts";
import { signalNames } from "../tables/signals.ts";
import { cursorOf, linesIn, takeName, takeString, wholeSpan, wordOf, type Line } from "./cursor.ts";
import { holdingLines, type Choice } from "./conditions.ts";
import { readMessages } from "./read-procedure.ts";

/** A part, fastener, joint, fluid or hazard as declared, ready to be read. */
export interface DeclaredThing {
  readonly word: string;
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  readonly signal: string;
  readonly at: Span;
  readonly whole: Span;
  readonly about: string;
  readonly messages: readonly Message[];
  /** Its lines by word: its own, and under them those of what it is like. */
  readonly lines: ReadonlyMap<string, readonly Line[]>;
  /** Of one piece alone, by its label. */
  readonly pieces: ReadonlyMap<string, ReadonlyMap<string, readonly Line[]>>;
}

const none: readonly Line[] = [];

/** The lines of this word: those of the piece go before those of the whole. */
export function linesOf(thing: DeclaredThing, word: string, piece: string): readonly Line[] {
  if (piece !== "" && thing.pieces.size > 0) {
    const own = thing.pieces.get(piece)?.get(word);
    if (own) return own;
  }
  return thing.lines.get(word) ?? none;
}

export interface TypeFinder {
  /** The declaration that `like NAME` speaks of: in the unit, else a type at the top of a file that is seen. */
  find(word: string, name: string): Line | undefined;
}

export function declareThing(line: Line, choice: Choice, types: TypeFinder): DeclaredThing {
  const { item, source } = line,
    { tokens } = source.tree.scan,
    first = item.arguments[0]!,
    token = tokens[first.first]!;
  const word = item.entry!.word,
    pieces = new Map<string, Map<string, readonly Line[]>>(),
    lines = linesByWord(line, choice, types, pieces, [item]);
  const about = lines.get("about")?.[0],
    like = lines.get("like")?.[0],
    orOfType = (slot: string): string => headSays(line, slot, like, choice, types);
  return {
    word,
    id: token.text,
    // A type of fastener is a kind of screw, and where these screws sit is another thing; a type of hazard is that danger.
    name: word === "hazard" ? orOfType("string") : (argumentOf(line, "string") ?? ""),
    kind: orOfType(kindSlots.get(word) ?? ""),
    signal: orOfType("kind:signal"),
    at: { file: source.path, start: token.startOffset, end: token.endOffset! + 1 },
    whole: wholeSpan(line),
    about: (about && takeString(cursorOf(about))) ?? "",
    messages: messagesOf(lines),
    lines,
    pieces,
  };
}

/** What is said to the reader on one piece only. */
export const messagesOfPiece = ({ pieces }: DeclaredThing, piece: string): readonly Message[] => {
  const lines = piece === "" ? undefined : pieces.get(piece);
  return lines ? messagesOf(lines) : [];
};

function messagesOf(lines: ReadonlyMap<string, readonly Line[]>): readonly Message[] {
  const all: Message[] = [];
  for (const signal of signalNames) {
    const said = lines.get(signal);
    if (said) all.push(...readMessages(said));
  }
  return all;
}

function argumentOf({ item, source }: Line, slot: string): string | undefined {
  for (const one of item.arguments) if (one.slot === slot) return textOf(source.tree.scan.tokens[one.first]!);
  return undefined;
}

/** What its head says in that slot, else what the head of the type says that it is like. */
function headSays(
  line: Line,
  slot: string,
  like: Line | undefined,
  choice: Choice,
  types: TypeFinder,
  before: readonly Item[] = [],
): string {
  const own = argumentOf(line, slot);
  if (own !== undefined || !like) return own ?? "";
  const type = typeOf(like, line.item.entry!.word, types),
    seen = [...before, line.item];
  return type && !seen.includes(type.item) ? headSays(type, slot, likeIn(type, choice), choice, types, seen) : "";
}

const kindSlots: ReadonlyMap<string, string> = new Map(
  ["part", "fastener", "joint", "fluid", "hazard"].map((word) => [word, `kind:${word}`]),
);
const likeIn = (line: Line, choice: Choice): Line | undefined =>
  holdingLines(linesIn(line), choice).find((l) => wordOf(l) === "like");

function typeOf(like: Line, word: string, types: TypeFinder): Line | undefined {
  const name = takeName(cursorOf(like));
  return name && types.find(word, name.text);
}

/** The lines of a declaration over those of what it is like: a word said again replaces what the type said with it. Fills `pieces`. */
function linesByWord(
  line: Line,
  choice: Choice,
  types: TypeFinder,
  pieces: Map<string, Map<string, readonly Line[]>>,
  seen: readonly Item[],
): Map<string, readonly Line[]> {
  const own = new Map<string, Line[]>();
  for (const one of holdingLines(linesIn(line), choice)) {
    const word = wordOf(one);
    if (word === "piece") {
      const label = one.item.arguments[0],
        text = label && one.source.tree.scan.tokens[label.first]!.text;
      if (text === undefined) continue;
      const its = pieces.get(text) ?? new Map<string, readonly Line[]>();
      for (const inner of holdingLines(linesIn(one), choice))
        its.set(wordOf(inner), [...(its.get(wordOf(inner)) ?? []), inner]);
      pieces.set(text, its);
      continue;
    }
    const list = own.get(word);
    if (list) list.push(one);
    else own.set(word, [one]);
  }
  const like = own.get("like")?.[0],
    type = like && typeOf(like, line.item.entry!.word, types);
  if (!type || seen.includes(type.item)) return own;
  const lines = linesByWord(type, choice, types, pieces, [...seen, type.item]);
  for (const [word, list] of own) lines.set(word, list);
  return lines;
}

/** Types at the top of the files that are seen from one. */
export function typesSeen(project: Project, file: string, word: string, name: string): Line | undefined {
  const found = project
    .seen(file)
    .get(name)
    ?.find((d) => d.word === word);
  const source = found && project.files.get(found.file);
  return source && { item: found.item, source };
}

export const lineOf = (declaration: Declaration, source: SourceFile): Line => ({ item: declaration.item, source });
