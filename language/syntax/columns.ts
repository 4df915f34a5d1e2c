// Columns: what an author has set one under the other in lines that follow each other. The formatter closes up stray blanks, but a
// table of parts or of reasons is read down its columns, so it keeps those, at two blanks behind the longest.

/** A token or a comment with the blanks that the formatter wants before it. */
export interface Placed {
  readonly start: number;
  readonly end: number;
  readonly line: number;
  readonly endLine: number;
  readonly image: string;
  readonly isComment: boolean;
  gap: string;
}

interface Line {
  readonly pieces: readonly Placed[];
  /** Those with two blanks or more before them where one would do: each may stand in a column. Next of them to look at. */
  readonly wide: readonly number[];
  next: number;
}

/**
 * Widens the gaps of what stands in columns. A column is, in lines that follow each other and begin with the same word, what stands
 * wider than it must and, in two of them, at the same place: the others were set there too, until a name grew. Comments behind lines
 * that follow each other are a column always.
 */
export function setColumns(pieces: readonly Placed[]): void {
  const lines = linesOf(pieces);
  for (const run of runs(lines, (a, b) => a.pieces[0]!.image === b.pieces[0]!.image)) columnsIn(run);
  const commented = lines.map((line) =>
    line !== undefined && line.pieces.at(-1)!.isComment && line.pieces.length > 1 ? line : undefined,
  );
  for (const run of runs(commented, () => true)) align(run, (line) => line.pieces.length - 1);
}

/** Every line of its own pieces; undefined where it breaks a run: an empty one, one that will be cut, one that a text block runs into. */
function linesOf(pieces: readonly Placed[]): (Line | undefined)[] {
  const lines: (Line | undefined)[] = [];
  for (let from = 0; from < pieces.length;) {
    const first = pieces[from]!;
    let to = from + 1;
    while (to < pieces.length && pieces[to]!.line === pieces[to - 1]!.endLine) to++;
    const own = pieces.slice(from, to),
      whole = own.every((piece, k) => piece.line === piece.endLine && (k === 0 || !/[\r\n]/.test(piece.gap)));
    if (from > 0 && first.line > pieces[from - 1]!.endLine + 1) lines.push(undefined);
    lines.push(whole ? { pieces: own, wide: wideOf(own), next: 0 } : undefined);
    from = to;
  }
  return lines;
}

const wideOf = (pieces: readonly Placed[]): number[] =>
  pieces.flatMap(({ start, gap, isComment }, k) =>
    k > 0 && gap === " " && !isComment && start - pieces[k - 1]!.end > 1 ? [k] : [],
  );

/** The longest stretches of lines that follow each other and belong together. */
function* runs<Of>(lines: readonly (Of | undefined)[], together: (a: Of, b: Of) => boolean): Generator<Of[]> {
  let run: Of[] = [];
  for (const line of lines) {
    if (line !== undefined && run.length > 0 && together(run.at(-1)!, line)) {
      run.push(line);
      continue;
    }
    if (run.length > 1) yield run;
    run = line === undefined ? [] : [line];
  }
  if (run.length > 1) yield run;
}

/** Column by column from the left: where lines have none left, the run falls into those above and those below. */
function columnsIn(lines: readonly Line[]): void {
  const more = lines.map((line) => (line.next < line.wide.length ? line : undefined));
  for (const run of runs(more, () => true)) {
    const places = run.map((line) => placeInLine(line, line.wide[line.next]!, "source"));
    if (new Set(places).size < places.length) align(run, (line) => line.wide[line.next]!);
    for (const line of run) line.next++;
    columnsIn(run);
  }
}

function align(run: readonly Line[], which: (line: Line) => number): void {
  const ends = run.map((line) => placeInLine(line, which(line), "set")),
    column = Math.max(...ends) + 2;
  run.forEach((line, k) => (line.pieces[which(line)]!.gap = " ".repeat(column - ends[k]!)));
}

/** Where a piece stands: in the source, or, without the gap before it, as the gaps are set so far. */
function placeInLine({ pieces }: Line, which: number, as: "source" | "set"): number {
  const first = pieces[0]!;
  if (as === "source") return pieces[which]!.start - first.start;
  let place = first.gap.length - Math.max(first.gap.lastIndexOf("\n"), first.gap.lastIndexOf("\r")) - 1;
  for (let k = 0; k < which; k++) place += (k > 0 ? pieces[k]!.gap.length : 0) + pieces[k]!.end - pieces[k]!.start;
  return place;
}
