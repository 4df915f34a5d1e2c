// The notation of every test that shows a text with what is said about it: `#- NAME` starts another file, `#   ^^^ text` marks the
// line above, `#   | because: text` goes on with the mark before it, `<|>` is the cursor, `<|…|>` a selection.

/** A mark under a line. Lines and columns count from 0; `end` is the first column after. */
export interface Mark {
  readonly file: string;
  readonly line: number;
  readonly start: number;
  readonly end: number;
  /** What it says, without the severity and code that may stand before it. */
  readonly says: string;
  readonly severity: string | undefined;
  readonly code: string | undefined;
  /** The `| because: …` lines below it; empty where none are written. */
  readonly because: readonly string[];
}

export interface Marked {
  /** Text by name, without its mark lines. The first file without a heading is `main.strip`. */
  readonly files: ReadonlyMap<string, string>;
  readonly marks: readonly Mark[];
  /** The cursor or selection, taken out of the text. */
  readonly cursor: { readonly file: string; readonly start: number; readonly end: number } | undefined;
}

// `#<^^` marks from the column of the # itself, one place for the `<` and one for each `^`: a mark at the very start of a line cannot be written otherwise.
const markLine = /^(\s*)#(<?)(\s*)(\^*)(?: (.*))?$/;
const goesOn = /^\s*#\s+\| because: (.*)$/;
// `#... 8000000 more` stands for a comment of so many characters.
const andSoOn = /^#\.\.\. (\d+) more/;
const heading = /^#- (.*\S)$/;
const head = /^(error|warning|question|hint) ([a-z][a-z-]*\/[a-z][a-z-]*): (.*)$/;

export const isMarkLine = (line: string): boolean =>
  goesOn.test(line) || (markLine.exec(line)?.[4] ?? "") !== "" || /^\s*#<(?: |$)/.test(line);

/** Reads the notation. The text may be indented as a whole. */
export function marked(text: string): Marked {
  const files = new Map<string, string[]>(),
    marks: Mark[] = [];
  let file = "main.strip",
    lines: string[] = [];
  let cursor: Marked["cursor"];
  files.set(file, lines);
  for (let line of dedent(text).split("\n")) {
    const more = andSoOn.exec(line);
    if (more) line = `#${".".repeat(Number(more[1]))}`;
    const next = heading.exec(line);
    if (next) {
      if (lines.every((one) => one.trim() === "") && file === "main.strip") files.delete(file);
      files.set((file = next[1]!), (lines = []));
      continue;
    }
    const open = line.indexOf("<|");
    if (open >= 0) {
      const before = lines.reduce((sum, one) => sum + one.length + 1, 0),
        single = line.startsWith("<|>", open);
      line = line.slice(0, open) + line.slice(open + (single ? 3 : 2));
      const close = single ? open : line.indexOf("|>", open);
      if (close < 0) throw new Error(`a selection <| is not closed in: ${line}`);
      if (!single) line = line.slice(0, close) + line.slice(close + 2);
      cursor = { file, start: before + open, end: before + close };
    }
    if (isMarkLine(line)) marks.push(readMark(line, file, lines.length - 1, marks));
    else lines.push(line);
  }
  return { files: new Map([...files].map(([name, all]) => [name, all.join("\n")])), marks, cursor };
}

/** The mark of a line; a line of `because` goes on with the mark before it, which is then taken back. */
function readMark(line: string, file: string, above: number, marks: Mark[]): Mark {
  const because = goesOn.exec(line);
  if (because) {
    const last = marks.pop();
    if (!last) throw new Error(`nothing stands before: ${line}`);
    return { ...last, because: [...last.because, because[1]!] };
  }
  const [, indent = "", fromHash = "", blank = "", carets = "", text = ""] = markLine.exec(line)!;
  const start = fromHash === "" ? indent.length + 1 + blank.length : indent.length,
    end = fromHash === "" ? start + carets.length : start + 1 + carets.length;
  const said = head.exec(text.trim());
  return {
    file,
    line: above,
    start,
    end,
    says: said?.[3] ?? text.trim(),
    severity: said?.[1],
    code: said?.[2],
    because: [],
  };
}

/** The text without its mark lines. */
export function unmarked(text: string): string {
  return text
    .split("\n")
    .filter((line) => !isMarkLine(line))
    .join("\n");
}

/** Common indentation and the blank lines around it taken away. */
export function dedent(text: string): string {
  const lines = text.split("\n");
  while (lines.length > 0 && lines[0]!.trim() === "") lines.shift();
  while (lines.length > 0 && lines[lines.length - 1]!.trim() === "") lines.pop();
  const indent = Math.min(
    ...lines.filter((line) => line.trim() !== "").map((line) => line.length - line.trimStart().length),
  );
  return `${lines.map((line) => line.slice(indent)).join("\n")}\n`;
}
