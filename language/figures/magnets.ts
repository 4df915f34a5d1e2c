// Pull of a permanent magnet on iron, and the distance out to which its field may trouble an implant.
// Both are upper bounds for planning; neither says that a person with an implant may come nearer.

/** Permeability of free space, H/m: 4 pi x 1e-7, as the formulas were published with. */
const MU_0 = 4e-7 * Math.PI;

/**
 * Static field limits, T. Implants 0.5 mT: ICNIRP guideline as quoted (read), also the action level of 2013/35/EU.
 * Flying objects 3 mT near fields above 100 mT, head and trunk 2 T, limbs 8 T: from memory.
 */
export const STATIC_FIELD_LIMITS = { implant: 0.5e-3, flyingObject: 3e-3, headAndTrunk: 2, limbs: 8 } as const;

/**
 * Pull of a magnet in full contact with iron: F = B² A / (2 mu0). An upper bound: any gap, paint or thin iron makes it less.
 * Units: T, m² -> N. Throws RangeError for negative figures, and above 2.5 T, which no iron carries into a joint (it saturates near 2.2 T, textbook).
 * Source: magnet pull pages (read).
 */
export function magnetPull(fluxDensity: number, area: number): number {
  if (!(fluxDensity >= 0 && area >= 0)) throw new RangeError("flux density and area must not be negative");
  if (fluxDensity > 2.5)
    throw new RangeError(`${fluxDensity} T is more than iron carries (about 2.2 T): is the figure in mT?`);
  return (fluxDensity * fluxDensity * area) / (2 * MU_0);
}

/**
 * Distance from the nearest face of a magnet beyond which its field is below a limit: d = (Br V / (2 pi B))^(1/3).
 *
 * Every bit of the magnet is a dipole at least d away, and a dipole's field is nowhere above mu0 m / (2 pi d³), so the sum is an upper bound for a
 * magnet of any shape in free air.
 * Units: T (remanence), m³ (volume of magnet material), T (limit) -> m. Throws RangeError unless all are positive.
 * Not valid with iron yokes or coils, which can carry the field farther. Source: dipole field, textbook; limit: ICNIRP.
 */
export function magnetKeepOut(remanence: number, volume: number, limit: number = STATIC_FIELD_LIMITS.implant): number {
  if (!(remanence > 0 && volume > 0 && limit > 0))
    throw new RangeError("remanence, volume and field limit must be above zero");
  return Math.cbrt((remanence * volume) / (2 * Math.PI * limit));
}
