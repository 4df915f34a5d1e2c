// What a file says in figures: with a unit, as a count, as the size of a thread. Read once for all checks that judge them. The model
// leaves out what cannot be read; here it is kept with the reason.

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

/** Something that an item says in figures. */
export interface Said {
  readonly item: Item;
  readonly argument: Argument;
}

export interface FigureSaid extends Said {
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

interface AllSaid {
  /** With a unit. */
  readonly figures: readonly FigureSaid[];
  readonly counts: readonly Said[];
  readonly threads: readonly Said[];
}
const known = kept<SourceFile, AllSaid>();
const saidIn = (file: SourceFile): AllSaid => known(file, () => read(file));

export const figuresIn = (file: SourceFile): readonly FigureSaid[] => saidIn(file).figures;
/** How many there are, or how often something is gone over. */
export const countsIn = (file: SourceFile): readonly Said[] => saidIn(file).counts;
/** Sizes of threads, or what stands in place of one. */
export const threadsIn = (file: SourceFile): readonly Said[] => saidIn(file).threads;

/** One walk for all of them, by index: most arguments are none, and what walks a list by its iterator makes an object a step. */
function read(file: SourceFile): AllSaid {
  const figures: FigureSaid[] = [],
    counts: Said[] = [],
    threads: Said[] = [],
    items = itemsOf(file);
  for (let i = 0; i < items.length; i++) {
    const item = items[i]!,
      given = item.arguments;
    if (!item.entry || item.broken) continue;
    for (let k = 0; k < given.length; k++) {
      const argument = given[k]!,
        { slot } = argument;
      if (slot === "name" || slot === "string") continue;
      if (slot === "count" || slot === "passes") counts.push({ item, argument });
      else if (slot === "thread") threads.push({ item, argument });
      else {
        const due = dueBySlot.get(slot);
        if (due) figures.push(figureSaid(file, item, argument, due));
      }
    }
  }
  return { figures, counts, threads };
}

function figureSaid(file: SourceFile, item: Item, argument: Argument, due: readonly Dimension[]): FigureSaid {
  const at = spanOf(file, argument),
    text = file.text.slice(at.start, at.end),
    { made, dimension } = figureOf(text, file, argument);
  return { item, argument, due, made, dimension, text, at };
}

export function spanOf({ path, tree }: SourceFile, { first, last }: Argument): Span {
  const { tokens } = tree.scan;
  return { file: path, start: tokens[first]!.startOffset, end: tokens[last]!.endOffset! + 1 };
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
