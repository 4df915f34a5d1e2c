// What syntax messages call things: what is due at a place of a shape, which units a figure takes. Words of the trade, no token names.

import { dimensionNames, usualUnits, type Dimension, type UnitGroup } from "../quantities/index.ts";
import { kindListNames, kinds, type KindList } from "../vocabulary/kinds.ts";
import type { Leaf } from "./shapes.ts";
import { Str } from "./tokens.ts";
import type { Token } from "./tree.ts";

/** A token as a message shows it: words and figures bare, signs in quotes, texts not at all. */
export function shown(token: Token): string {
  if (token.tokenType === Str) return "this text";
  if (token.text === "") return "the end";
  const text = token.text.length > 40 ? `${token.text.slice(0, 39)}…` : token.text;
  return /^[\p{L}\p{N}]/u.test(text) ? text : `"${text}"`;
}

/** What is due at one place of a shape. */
export function named(leaf: Leaf): string {
  switch (leaf.is) {
    case "word":
      return `"${leaf.text}"`;
    case "sign":
      return leaf.text === "," ? "a comma" : `"${leaf.text}"`;
    case "unit":
      return `a unit (${unitsOf(leaf.text as UnitGroup)})`;
    case "kind":
      return `a ${kindListNames[leaf.text as KindList]} such as ${oneOf([...kinds[leaf.text as KindList]].slice(0, 3))}`;
    case "string":
      return 'a text in quotes "…"';
    case "timecode":
      return "a time of the recording such as 12:04";
    case "thread":
      return "a size such as M8x35";
    case "number":
      return leaf.slot === "count" ? "how many" : "a figure";
    case "label":
      return "a name or a figure";
    case "item":
    case "name":
      return "a name";
    case "start":
      return "";
  }
}

/** What is due after this place of a shape, the most telling first; signs that only prolong a figure are left out. */
export function expected(state: Leaf): string {
  const telling = state.follow.filter((leaf) => leaf.is !== "sign" || leaf.text === ",");
  return oneOf([...new Set((telling.length > 0 ? telling : state.follow).map(named))]);
}

/** The unit that must come after this figure, if one must. */
export function unitDue(state: Leaf): Leaf | undefined {
  return state.is === "number" && !state.ends ? state.follow.find((leaf) => leaf.is === "unit") : undefined;
}

/** The usual units of an argument, as in "g, kg, lb or oz". */
export function unitsOf(group: UnitGroup): string {
  switch (group) {
    case "any":
      return "such as mm, bar or V";
    case "shelf":
      return oneOf(["ml", "L", "g", "kg", "mm", "m"]);
    case "stage":
      return oneOf([...usualUnits("torque"), ...usualUnits("angle")]);
    default:
      return oneOf(usualUnits(group));
  }
}

/** What the figure measures, "" where it may be anything. */
export function measureOf(group: UnitGroup): string {
  switch (group) {
    case "any":
    case "shelf":
      return "";
    case "stage":
      return "torque or angle";
    default:
      return dimensionNames[group].title;
  }
}

/** Units that a fix may propose for a bare figure. No torque, force, pressure, voltage, time or temperature: a wrong guess there can hurt. */
export const likelyUnits: Readonly<Partial<Record<UnitGroup, string>>> = {
  mass: "kg",
  length: "mm",
  volume: "L",
  share: "%",
  flow: "L/min",
} satisfies Partial<Record<Dimension, string>>;

/** "a, b or c" */
export function oneOf(all: readonly string[]): string {
  return all.length < 2 ? all.join("") : `${all.slice(0, -1).join(", ")} or ${all[all.length - 1]}`;
}
