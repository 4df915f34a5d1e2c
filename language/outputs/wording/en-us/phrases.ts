// Counts with their names as American English says them.

import { inside, looksPlural, the } from "../en-gb/phrases.ts";

/** "the 8 casing nuts", "2 of the 8 casing nuts", "the guard screw (qty 4)", "the impeller nut". */
export function some(
  name: string,
  numbered: boolean,
  count: number | undefined,
  total: number,
  rest: boolean,
  unknown: boolean,
): string {
  const plain = inside(name),
    several = looksPlural(name);
  if (unknown) return `all of ${the(name, numbered)} (count not given: count them)`;
  if (total <= 1) return the(name, numbered);
  if (count !== undefined && count < total) {
    const last = rest ? "the last " : "";
    return several ? `${last}${count} of the ${total} ${plain}` : `${the(name, numbered)}, ${last}${count} of ${total}`;
  }
  return several && !numbered ? `the ${total} ${plain}` : `${the(name, numbered)} (qty ${total})`;
}
