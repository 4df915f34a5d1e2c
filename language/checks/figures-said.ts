// Every figure with a unit that a file states, read once: what the checks of the family `figure` judge. The model leaves out what
// cannot be read; here it is kept with the reason.

import type { SourceFile } from "../names/project.ts";
import type { Span } from "../findings/finding.ts";
import { kept } from "../model/kept.ts";
import {
  dimensions,
  findUnit,
  isProblem,
  makeQuantity,
  type Dimension,
  type Quantity,
  type QuantityProblem,
} from "../quantities/index.ts";
import { eachItem, type Argument, type Item } from "../syntax/index.ts";

export interface FigureSaid {
  readonly item: Item;
  readonly argument: Argument;
  /** What is due here; empty where any unit will do. */
  readonly due: readonly Dimension[];
  readonly made: Quantity | QuantityProblem;
  /** What the unit measures, if there is such a unit. */
  readonly dimension: Dimension | undefined;
  readonly text: string;
  readonly at: Span;
}

const dueBySlot = new Map<string, readonly Dimension[]>([
  ...dimensions.map((one): [string, readonly Dimension[]] => [one, [one]]),
  ["any", []],
  ["stage", ["torque", "angle"]],
]);
const known = kept<SourceFile, readonly FigureSaid[]>();

export function figuresIn(file: SourceFile): readonly FigureSaid[] {
  return known(file, () => read(file));
}

function read(file: SourceFile): FigureSaid[] {
  const found: FigureSaid[] = [],
    { tokens } = file.tree.scan;
  eachItem(file.tree.items, (item) => {
    if (!item.entry || item.broken) return;
    for (const argument of item.arguments) {
      const due = dueBySlot.get(argument.slot);
      if (!due) continue;
      const start = tokens[argument.first]!.startOffset,
        end = tokens[argument.last]!.endOffset! + 1;
      const text = file.text.slice(start, end);
      found.push({ item, argument, due, ...figureOf(file, argument, text), text, at: { file: file.path, start, end } });
    }
  });
  return found;
}

type Read = Pick<FigureSaid, "made" | "dimension">;

// The same figures stand all over a set of files, and a figure never changes: each spelling is read once. What is kept is bounded.
const spellings = new Map<string, Read>();
const mostKept = 20_000;

function figureOf(file: SourceFile, argument: Argument, text: string): Read {
  let read = spellings.get(text);
  if (!read) {
    const { made, unit } = figureFrom(file, argument);
    if (spellings.size >= mostKept) spellings.clear();
    spellings.set(text, (read = { made, dimension: findUnit(unit)?.dimension }));
  }
  return read;
}

/** The figure as written, whatever it measures. */
function figureFrom(
  file: SourceFile,
  argument: Argument,
): { readonly made: Quantity | QuantityProblem; readonly unit: string } {
  const { tokens } = file.tree.scan;
  let at = argument.first,
    unit = "";
  const one = (): Quantity | QuantityProblem => {
    const first = tokens[at++]!.image,
      sign = at <= argument.last ? tokens[at]!.text : "";
    let second: string | undefined;
    if (sign === ".." || sign === "±") {
      second = tokens[at + 1]?.image;
      at += 2;
    }
    const own = at <= argument.last ? tokens[at++]!.image : "";
    if (unit === "") unit = own;
    return makeQuantity({
      first,
      second,
      form: sign === ".." ? "range" : sign === "±" ? "plus-minus" : "single",
      unit: own,
    });
  };
  const main = one();
  if (isProblem(main) || at > argument.last || tokens[at]!.text !== "(") return { made: main, unit };
  at++;
  const bracket = one();
  return { made: isProblem(bracket) ? main : { ...main, pair: bracket }, unit };
}
