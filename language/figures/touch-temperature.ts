// Surface temperature limits by the time that a surface is touched.
// A surface below its limit can still be uncomfortable; the limits are for brief and deliberate touch by healthy adults.

/** Materials of the touch table. */
export type TouchMaterial = "bare metal" | "plastic or rubber";

/** Limits, °C, by contact time: below 1 s, 1 to 10 s, over 10 to 60 s, over 60 s. */
export interface TouchLimits {
  readonly under1s: number;
  readonly to10s: number;
  readonly to60s: number;
  readonly over60s: number;
}

/** Touch limits of class TS1 at 25 °C surroundings. Source: IEC 62368-1, which takes up ISO 13732-1:2006, as quoted from a laboratory's brief (read). */
export const TOUCH_LIMITS: Readonly<Record<TouchMaterial, TouchLimits>> = {
  "bare metal": { under1s: 70, to10s: 60, to60s: 51, over60s: 48 },
  "plastic or rubber": { under1s: 94, to10s: 77, to60s: 60, over60s: 48 },
};

/**
 * Limit temperature for a contact time; exactly 1, 10 or 60 s takes the lower temperature of the two classes that meet there only where the table
 * leaves it open:
 * 1 s and 10 s belong to 1 to 10 s, 60 s to 10 to 60 s (our reading).
 *
 * Units: s -> °C. Throws RangeError for a negative time. Valid at 25 °C surroundings, dry and clean. Source: IEC 62368-1 touch table as quoted.
 */
export function touchLimit(seconds: number, material: TouchMaterial): number {
  if (!(seconds >= 0)) throw new RangeError(`contact time must not be negative, got ${seconds}`);
  const row = TOUCH_LIMITS[material];
  if (seconds < 1) return row.under1s;
  if (seconds <= 10) return row.to10s;
  return seconds <= 60 ? row.to60s : row.over60s;
}
