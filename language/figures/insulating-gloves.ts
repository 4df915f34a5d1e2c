// Classes of rubber insulating gloves and the voltage each is made for.
// A class is no permission to work live; gloves are chosen by a qualified person, tested in date and looked over before each use.

import type { SupplyKind } from "./voltage-limits.ts";

/** One glove class: greatest use voltages and alternating proof voltage, V, and the colour of its label. */
export interface GloveClass {
  readonly name: "00" | "0" | "1" | "2" | "3" | "4";
  readonly ac: number;
  readonly dc: number;
  readonly proofAc: number;
  readonly label: string;
}

/** Table of glove classes. Source: ASTM D120 / IEC 60903 through three rated-voltage pages (read); dc is 1.5 times ac in every row. */
export const GLOVE_CLASSES: readonly GloveClass[] = [
  { name: "00", ac: 500, dc: 750, proofAc: 2500, label: "beige" },
  { name: "0", ac: 1000, dc: 1500, proofAc: 5000, label: "red" },
  { name: "1", ac: 7500, dc: 11250, proofAc: 10000, label: "white" },
  { name: "2", ac: 17000, dc: 25500, proofAc: 20000, label: "yellow" },
  { name: "3", ac: 26500, dc: 39750, proofAc: 30000, label: "green" },
  { name: "4", ac: 36000, dc: 54000, proofAc: 40000, label: "orange" },
];

/** Electrical retest of gloves: every 6 months, and tested within the last 12 months before they go into service. Source: a glove page quoting OSHA (read). */
export const GLOVE_RETEST = { everyMonths: 6, intoServiceMonths: 12 } as const;

/**
 * Lowest glove class whose use voltage is not exceeded; undefined above the table.
 * Units: V (rms for ac). Throws RangeError for a negative voltage. Source: ASTM D120 table as above.
 */
export function gloveClass(volts: number, kind: SupplyKind): GloveClass | undefined {
  if (!(volts >= 0)) throw new RangeError(`voltage must not be negative, got ${volts}`);
  return GLOVE_CLASSES.find((row) => volts <= row[kind]);
}
