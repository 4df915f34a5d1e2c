// The builds that a finding holds in, in the fewest words: "with heater", "with lift and without guard".

import type { Build } from "../model/builds.ts";
import { listed } from "./bench-check.ts";

/** The fewest choices under which it is always found; the name of a whole build where fewer do not say it. */
export function smallestCondition(all: readonly Build[], found: ReadonlySet<string | undefined>): string {
  const keys = [...new Set(all.flatMap((b) => [...b.chosen]))];
  const varies = ({ key, is }: { key: string; is: boolean }): boolean =>
    all.some((b) => b.chosen.has(key) === is) && all.some((b) => b.chosen.has(key) !== is);
  const literals = keys
    .flatMap((key) => [
      { key, is: true },
      { key, is: false },
    ])
    .filter(varies);
  const holds = (set: readonly { key: string; is: boolean }[]): boolean => {
    const those = all.filter((b) => set.every(({ key, is }) => b.chosen.has(key) === is));
    return those.length > 0 && those.every((b) => found.has(b.name));
  };
  // What is fitted is easier to check at the machine than what is not, so that conditions without a "without" come first.
  const pairs = literals.flatMap((a, i) => literals.slice(i + 1).map((b) => [a, b])),
    sets = [...literals.map((one) => [one]), ...pairs];
  const negatives = (set: readonly { is: boolean }[]): number => set.filter(({ is }) => !is).length;
  const smallest = sets.filter(holds).sort((a, b) => a.length - b.length || negatives(a) - negatives(b))[0];
  if (!smallest) return all.find((b) => found.has(b.name))?.name ?? "";
  const named = (is: boolean, word: string): string[] => {
    const keys = smallest.filter((one) => one.is === is).map(({ key }) => readable(key));
    return keys.length === 0 ? [] : [`${word} ${listed(keys)}`];
  };
  return [...named(true, "with"), ...named(false, "without")].join(" and ");
}

/** Keys of optional blocks and choices hold a place; the reader sees what they are. */
const readable = (key: string): string =>
  key.startsWith("optional ")
    ? "the optional part"
    : key.startsWith("either ") || key.startsWith("or ")
      ? "the other choice"
      : key;
