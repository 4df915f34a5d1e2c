// The volume of a bead of sealant as it is laid, as a quantity of the bill. The geometry is the figures'.

import { beadSection, beadVolume as volumeOf } from "../figures/bead.ts";
import { quantityOf, si, type Quantity } from "../quantities/index.ts";

/**
 * Volume in ml of a round bead, with what stays in the nozzle and the pack. Of a range of width or length the upper end counts.
 * @param waste share of the bead, 0 or more.
 * @returns undefined without a length: nothing is guessed.
 */
export function beadAmount(width: Quantity, length: Quantity | undefined, waste: number): Quantity | undefined {
  if (!length) return undefined;
  return quantityOf(volumeOf(beadSection("round", si(width).high), si(length).high) * (1 + waste) * 1e6, "ml", 3);
}
