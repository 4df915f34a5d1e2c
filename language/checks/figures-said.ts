// Every figure with a unit that a file states, read once: what the checks of the family `figure` judge. The model leaves out what
// cannot be read; here it is kept with the reason.

import type { SourceFile } from "../names/project.ts";
import type { Span } from "../findings/finding.ts";
import { bySpelling, kept } from "../model/kept.ts";
import {
  dimensions,
  findUnit,
  isProblem,
  makeQuantity,
  type Dimension,
  type Quantity,
  type QuantityProblem,
} from "../quantities/index.ts";
import type { Argument, Item } from "../syntax/index.ts";
import { itemsOf } from "./items-of.ts";

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
  for (const item of itemsOf(file)) {
    if (!item.entry || item.broken) continue;
    for (const argument of item.arguments) {
      const due = dueBySlot.get(argument.slot);
      if (!due) continue;
      const start = tokens[argument.first]!.startOffset,
        end = tokens[argument.last]!.endOffset! + 1;
      const text = file.text.slice(start, end);
      const { made, dimension } = figureOf(text, file, argument);
      found.push({ item, argument, due, made, dimension, text, at: { file: file.path, start, end } });
    }
  }
  return found;
}

const figureOf = bySpelling((_, file: SourceFile, argument: Argument): Pick<FigureSaid, "made" | "dimension"> => {
  const { made, unit } = figureFrom(file, argument);
  return { made, dimension: findUnit(unit)?.dimension };
});

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
