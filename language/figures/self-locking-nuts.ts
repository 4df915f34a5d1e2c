// Least drag of used self-locking nuts, from two published sets that differ by almost a half. Torques in N·m. It never says that a nut is good.

import type { FigureError } from "./figure.ts";

const lbfIn = 0.1129848290276167;

/** Least breakaway torque in lbf·in. Source: TM 1-1500-204-23-6 Table 2-8, US Army. */
const breakaway: Readonly<Record<string, number>> = {
  "#10-32": 2,
  "1/4-28": 3.5,
  "5/16-24": 6.5,
  "3/8-24": 9.5,
  "7/16-20": 14,
  "1/2-20": 18,
  "5/8-18": 32,
  "3/4-16": 50,
  "7/8-14": 70,
  "1-12": 90,
  "1-1/8-12": 117,
  "1-1/4-12": 143,
  "1-3/8-12": 180,
  "1-1/2-12": 210,
  "5/16-18": 7.5,
  "3/8-16": 12,
  "7/16-14": 16.5,
  "1/2-13": 24,
  "5/8-11": 40,
  "3/4-10": 60,
  "7/8-9": 82,
  "1-8": 110,
  "1-1/8-7": 137,
  "1-1/4-7": 165,
  "1-3/8-6": 200,
  "1-1/2-6": 230,
};

/** Least prevailing torque in lbf·in. Source: AC 43.13-1B Table 7-2, US FAA. */
const prevailing: Readonly<Record<string, number>> = {
  "7/16-20": 8,
  "1/2-20": 10,
  "5/8-18": 18,
  "3/4-16": 27,
  "7/8-14": 40,
  "1-14": 55,
  "1-1/8-12": 73,
  "1-1/4-12": 94,
  "7/16-14": 8,
  "1/2-13": 10,
  "9/16-12": 14,
  "5/8-11": 20,
  "3/4-10": 27,
  "7/8-9": 40,
  "1-8": 51,
  "1-1/8-8": 68,
  "1-1/4-8": 88,
};

/**
 * Least drag of a used nut by size and threads per inch (`1/2-20`), N·m. Error: a size that neither table has.
 * Source: the army and civil aviation tables above.
 */
export function selfLockingLimits(
  name: string,
): { readonly breakaway: number | undefined; readonly prevailing: number | undefined } | FigureError {
  const army = breakaway[name],
    civil = prevailing[name];
  if (army === undefined && civil === undefined) {
    const size = name.replace(/-\d+$/, ""),
      known = [...new Set([...Object.keys(breakaway), ...Object.keys(prevailing)])];
    return {
      says: `no limit is tabled for a ${name} nut`,
      nearest: known.filter((each) => each.replace(/-\d+$/, "") === size),
    };
  }
  return {
    breakaway: army === undefined ? undefined : army * lbfIn,
    prevailing: civil === undefined ? undefined : civil * lbfIn,
  };
}
