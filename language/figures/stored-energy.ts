// Energy held by springs, raised parts and compressed gas.
// Three gas models are given by name, since they differ by nearly two; none of them says what a vessel can bear.

/** Standard gravity, m/s², exact. Source: ISO 80000-3 / CGPM 1901. */
export const STANDARD_GRAVITY = 9.80665;

/** Specific gas constant of dry air, J/(kg K), as used in the worked example for availability. */
const AIR_GAS_CONSTANT = 287;

/** Stored energy above which one university's rule calls a gas vessel highly hazardous, J (100 kJ). Source: UC Berkeley EH&S (read). */
export const GAS_ENERGY_NOTICE = 100e3;

/** Energy of the explosive that gas energies are compared with, J/kg (4.62 kJ/g). Source: UC Berkeley EH&S (read). */
export const TNT_ENERGY = 4.62e6;

/** Energy of a spring between two deflections from free: E = k (x2² - x1²)/2. Units: N/m, m, m -> J. For a straight characteristic. Source: textbook. */
export function springEnergy(rate: number, deflection: number, from = 0): number {
  return (rate * (deflection * deflection - from * from)) / 2;
}

/** Energy of a raised part: E = m g h. Units: kg, m -> J. Source: textbook. */
export function heightEnergy(mass: number, height: number): number {
  return mass * STANDARD_GRAVITY * height;
}

/** Ways to reckon the energy of a compressed gas. */
export type GasModel = "isentropic" | "brode" | "isothermal";

/**
 * Energy that a compressed gas gives up in falling to the pressure outside.
 *
 * Formulas: isentropic p1 V/(k-1) [1 - (p2/p1)^((k-1)/k)]; Brode (p1 - p2) V/(k-1) (from memory); isothermal p1 V ln(p1/p2).
 * Units: Pa absolute, Pa absolute, m³, 1 -> J. Throws RangeError unless p1 >= p2 > 0, V > 0 and k > 1. Valid for ideal gases only.
 * Source: two pneumatic test pages (isentropic and isothermal, read).
 */
export function gasEnergy(model: GasModel, pressure: number, outside: number, volume: number, heatRatio = 1.4): number {
  if (!(outside > 0 && pressure >= outside))
    throw new RangeError(`absolute pressure ${pressure} Pa must not lie below the outside pressure ${outside} Pa`);
  if (!(volume > 0)) throw new RangeError(`volume must be above zero, got ${volume}`);
  if (!(heatRatio > 1)) throw new RangeError(`heat ratio must lie above 1, got ${heatRatio}`);
  switch (model) {
    case "isentropic":
      return ((pressure * volume) / (heatRatio - 1)) * (1 - (outside / pressure) ** ((heatRatio - 1) / heatRatio));
    case "brode":
      return ((pressure - outside) * volume) / (heatRatio - 1);
    case "isothermal":
      return pressure * volume * Math.log(pressure / outside);
  }
}

/**
 * Availability of compressed air per kilogram at the temperature of the surroundings: e = R T (p0/p1 - 1 + ln(p1/p0)).
 * Units: K, 1 (p1/p0) -> J/kg. Throws RangeError unless both are positive. Source: worked example, engineering forum 163620 (read).
 */
export function gasAvailability(temperature: number, pressureRatio: number): number {
  if (!(temperature > 0 && pressureRatio > 0))
    throw new RangeError("temperature and pressure ratio must be above zero");
  return AIR_GAS_CONSTANT * temperature * (1 / pressureRatio - 1 + Math.log(pressureRatio));
}
