// Sums of work times: operations of a service worksheet, refit by handling and insertion, repeated measurements, share of a shift.
// Worksheet times are skilled bench work and measured ones first attempts; the basis is printed with every sum.

/** One line of a service worksheet, s: time = tool + n (remove + set aside). */
export interface WorksheetLine {
  readonly count: number;
  readonly toolSeconds: number;
  readonly removeSeconds: number;
  readonly setAsideSeconds: number;
}

/**
 * Time of one worksheet line: tool + n (remove + set aside). Units: s. Throws RangeError for a negative figure. Source: design-for-service worksheet,
 * p. 374 (read).
 */
export function lineTime(line: WorksheetLine): number {
  for (const [name, value] of Object.entries(line))
    if (!(value >= 0)) throw new RangeError(`${name} must not be negative, got ${value}`);
  return line.toolSeconds + line.count * (line.removeSeconds + line.setAsideSeconds);
}

/**
 * Cost of work in hundredths of the money of the rate: time x rate / 36. Units: s, money an hour -> hundredths. Source: design-for-service worksheet
 * (read).
 */
export function workCost(seconds: number, ratePerHour: number): number {
  return (seconds * ratePerHour) / 36;
}

/** One part of an assembly table: n (handling + insertion), s. */
export interface AssemblyLine {
  readonly count: number;
  readonly handlingSeconds: number;
  readonly insertionSeconds: number;
}

/** Time to fit a line of parts: n (handling + insertion). Units: s. Source: Open Mechanical Engineering Journal 10, p. 173 (rows read). */
export function assemblyTime(line: AssemblyLine): number {
  return line.count * (line.handlingSeconds + line.insertionSeconds);
}

/** Efficiency of an assembly: 3 s x least number of parts / time. Units: 1, s -> 1. Throws RangeError unless the time is positive. Source: as above. */
export function assemblyEfficiency(leastParts: number, seconds: number): number {
  if (!(seconds > 0)) throw new RangeError(`time must be above zero, got ${seconds}`);
  return (3 * leastParts) / seconds;
}

/** Mean and sample standard deviation (n - 1) of repeated times. Units: any, the same. Throws RangeError for fewer than two. Source: textbook. */
export function spread(times: readonly number[]): { readonly mean: number; readonly deviation: number } {
  if (times.length < 2) throw new RangeError("a spread needs at least two times");
  const mean = times.reduce((sum, one) => sum + one, 0) / times.length;
  return { mean, deviation: Math.sqrt(times.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (times.length - 1)) };
}

/**
 * Share of a shift that a bench is busy. Units: s, s -> 1. Throws RangeError unless the shift is positive. Source: DASCEN-LF data, utilisation of
 * benches (read).
 */
export function busyShare(busySeconds: number, shiftSeconds: number): number {
  if (!(shiftSeconds > 0)) throw new RangeError(`shift must be above zero, got ${shiftSeconds}`);
  return busySeconds / shiftSeconds;
}
