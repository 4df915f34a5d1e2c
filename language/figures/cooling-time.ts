// Cooling of a hot part in still surroundings by Newton's law.
// It gives an expected time; only a reading shows the temperature of the part.

/**
 * Time for a part to cool: t = ln((T0 - Ta)/(T1 - Ta)) / k, 0 where it starts at or below the wanted temperature.
 *
 * Units: temperatures all in the same scale (K or °C), rate 1/s -> s. Throws RangeError unless T1 lies above Ta and k is positive.
 * Valid for a part of even temperature in surroundings that stay the same. Source: Newton's law of cooling, textbook.
 */
export function coolingTime(from: number, to: number, surroundings: number, rate: number): number {
  if (!(rate > 0)) throw new RangeError(`cooling rate must be above zero, got ${rate}`);
  if (!(to > surroundings)) throw new RangeError("the wanted temperature must lie above that of the surroundings");
  return from <= to ? 0 : Math.log((from - surroundings) / (to - surroundings)) / rate;
}

/**
 * Cooling rate from two readings: k = ln((T0 - Ta)/(T1 - Ta)) / t1.
 * Units: temperatures in the same scale, s -> 1/s. Throws RangeError unless T0 > T1 > Ta and the time between them is positive. Source: Newton's law
 * of cooling.
 */
export function coolingRate(first: number, second: number, surroundings: number, seconds: number): number {
  if (!(first > second && second > surroundings)) {
    throw new RangeError("the second reading must lie below the first, and both above the surroundings");
  }
  if (!(seconds > 0)) throw new RangeError(`the time between the readings must be above zero, got ${seconds}`);
  return Math.log((first - surroundings) / (second - surroundings)) / seconds;
}
