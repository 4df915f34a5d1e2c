// Quality of the grip by the decision tree of the NIOSH manual. In doubt it takes the worse.

import type { Coupling } from "./niosh-multipliers.ts";

/** What is known of the thing to be gripped; lengths in m. */
export interface Grip {
  readonly object: "container" | "loose object";
  /** Handles or cut-outs of good design on a container, or a loose object that the hand wraps round. */
  readonly hold: "good" | "fingers flexed 90°" | "fingers not flexed";
  /** Length of a container along the body, and its height. */
  readonly length?: number;
  readonly height?: number;
  /** A loose object that is bulky or hard to hold. */
  readonly bulky?: boolean;
}

/** Sizes of a container that is optimal, and of a handle of good design, m. Source: NIOSH 94-110, pp. 17-18, through a page-by-page specification (read). */
export const OPTIMAL_CONTAINER = { lengthMost: 0.4, heightMost: 0.3 } as const;
export const GOOD_HANDLE = {
  diameterLeast: 0.019,
  diameterMost: 0.038,
  lengthLeast: 0.115,
  clearanceLeast: 0.05,
} as const;

/**
 * Grip by the decision tree: a container longer than 40 cm or higher than 30 cm and a bulky loose object are poor; else good, fair with the fingers
 * flexed 90°, or poor.
 *
 * Units: m. Throws RangeError for a negative length. Source: NIOSH 94-110, decision tree, p. 18 (read).
 */
export function gripCoupling({ object, hold, length = 0, height = 0, bulky = false }: Grip): Coupling {
  if (!(length >= 0 && height >= 0)) throw new RangeError("length and height must not be negative");
  const optimal =
    object === "container"
      ? length <= OPTIMAL_CONTAINER.lengthMost + 1e-9 && height <= OPTIMAL_CONTAINER.heightMost + 1e-9
      : !bulky;
  if (!optimal) return "poor";
  switch (hold) {
    case "good":
      return "good";
    case "fingers flexed 90°":
      return "fair";
    case "fingers not flexed":
      return "poor";
  }
}
