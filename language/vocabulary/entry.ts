// What is said of one word in one place, and how the rows of the table become such entries. Parses nothing.

import { synonyms } from "../tables/synonyms.ts";
import type { UnitGroup } from "../quantities/units.ts";
import { unitWords } from "../quantities/units.ts";
import { macros } from "./macros.ts";
import { printedForm } from "./printed.ts";

/** A word of the language at one place. The same word may stand in several places, each with its own shape and meaning. */
export type Entry = {
  readonly word: string;
  /** The kind of block it stands in: `file`, `unit`, `part`, …, `step`, `refit`, `finish`. */
  readonly place: string;
  /** Its arguments; see macros.ts for the notation. */
  readonly shape: string;
  /** The kind of block that it opens, "" for none. */
  readonly block: string;
  readonly blockNeeded: boolean;
  /** One item on the same line will do instead of the block: `if` and `unless` only. */
  readonly itemWillDo: boolean;
  /** One sentence for hover, completion and the reference page. */
  readonly meaning: string;
  /** How it is called in printed outputs. */
  readonly prints: string;
  /** What a hand in the trade may write instead; only `word` compiles. */
  readonly synonyms: readonly string[];
  /** One line that parses in this place. */
  readonly example: string;
  /** Needed for a first procedure; the rest is for real machines. */
  readonly core: boolean;
  /** The dimensions that its figures take, in the order of its shape. */
  readonly dimensions: readonly UnitGroup[];
};

/** One row: word, shape, meaning, example, block. A block `step` is a must, `part?` may be missing, `same` is of the kind it stands in, `same|item` that or one item on its line. */
export type Row = readonly [word: string, shape: string, meaning: string, example: string, block?: string];

/** Rows of words that a first procedure needs, for each of these places. */
export const core = (places: string, rows: readonly Row[]): Entry[] => entries(places, rows, true);

/** Rows of words that only published manuals of real machines needed, for each of these places. */
export const real = (places: string, rows: readonly Row[]): Entry[] => entries(places, rows, false);

const synonymsOf = Map.groupBy(
  synonyms.filter((one) => one.of === "word"),
  (one) => one.is,
);

function entries(places: string, rows: readonly Row[], isCore: boolean): Entry[] {
  return places.split(" ").flatMap((place) =>
    rows.map(([word, shape, meaning, example, block = ""]): Entry => {
      const [kind = "", ...more] = block.split(/[?|]/);
      return {
        word,
        place,
        shape,
        block: kind === "same" ? place : kind,
        blockNeeded: block !== "" && !block.includes("?"),
        itemWillDo: more.includes("item"),
        meaning,
        prints: printedForm(word),
        synonyms: (synonymsOf.get(word) ?? []).map((one) => one.says),
        example,
        core: isCore,
        dimensions: dimensionsIn(shape),
      };
    }),
  );
}

/** The dimensions named in a shape, through its macros. */
function dimensionsIn(shape: string): UnitGroup[] {
  const found = new Set<UnitGroup>();
  for (const [, name = "", detail = ""] of shape.matchAll(/<(\w+)(?::(\w+))?>/g)) {
    const group = macros[name] !== undefined ? undefined : name === "unit" ? detail : (aliases[name] ?? name);
    if (group !== undefined && Object.hasOwn(unitWords, group)) found.add(group as UnitGroup);
    if (macros[name] !== undefined) for (const inner of dimensionsIn(macros[name])) found.add(inner);
  }
  return [...found];
}

/** Arguments of several tokens whose unit is not in their name. */
const aliases: Readonly<Record<string, UnitGroup>> = {
  plane: "length",
  spanner: "length",
  thread: "length",
  pack: "shelf",
  passes: "share",
};
