// Time allowed at a noise level and the dose of a stay, by named rules. It gives the figure of the rule, never leave to go without ear protection.

/** A noise rule: criterion level, dB(A), exchange rate, dB, for a day of `hours`. */
export interface NoiseRule {
  readonly criterion: number;
  readonly exchange: number;
  readonly hours: number;
}

/** Rules by name. Source: 29 CFR 1910.95 (read through two pages); NIOSH (read through one). */
export const NOISE_RULES = {
  osha: { criterion: 90, exchange: 5, hours: 8 },
  niosh: { criterion: 85, exchange: 3, hours: 8 },
} as const satisfies Record<string, NoiseRule>;

/**
 * Time at a level that makes a full dose: T = 8 h / 2^((L - Lc)/q). Units: dB(A) -> s. Throws RangeError unless the level lies from 0 to
 * 140 dB(A): above that no rule counts a stay. Source: 29 CFR 1910.95 appendix A; the 140 dB of impulses, 1910.95(b)(2), from memory.
 */
export function noiseTime(level: number, rule: NoiseRule): number {
  if (!(level >= 0 && level <= 140))
    throw new RangeError(`${level} dB(A) lies outside 0 to 140: above 140 dB no rule counts a stay`);
  return (rule.hours * 3600) / 2 ** ((level - rule.criterion) / rule.exchange);
}

/** Noise dose of a stay: 100 t / T. Units: dB(A), s -> %. Throws RangeError for a negative time. Source: 29 CFR 1910.95 appendix A. */
export function noiseDose(level: number, seconds: number, rule: NoiseRule): number {
  if (!(seconds >= 0)) throw new RangeError(`time must not be negative, got ${seconds}`);
  return (100 * seconds) / noiseTime(level, rule);
}
