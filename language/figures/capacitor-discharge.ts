// Charge left in a capacitor that empties through a resistor: voltage, time and energy.
// It gives times and energies, never a statement that a capacitor may be touched; only a proof at the terminals shows that.

/** Voltage that the waits run down to, V dc. Source: IEC 60204-1 cl. 6.2.4 (read through two summaries); ISO 6469-4:2015. */
export const LIMIT_VOLTAGE_DC = 60;

/** Energy that the waits run down to, J. Source: ISO 6469-4:2015 (read in an extract), "less than 0.2 J". */
export const LIMIT_ENERGY = 0.2;

/** Charge below which IEC 60204-1 cl. 6.2.4 asks for no discharge, C (60 µC; read through a summary). */
export const EXEMPT_CHARGE = 60e-6;

/**
 * Voltage of a capacitor after a time on its bleeder: v = V0 exp(-t / (R C)).
 *
 * Units: V, ohm, F, s -> V. Valid for a constant resistance and no other source. Throws RangeError unless resistance and capacitance are positive
 * and voltage and time are not negative. Source: textbook; IEC 60204-1 examples.
 */
export function voltageAfter(voltage: number, resistance: number, capacitance: number, seconds: number): number {
  requirePositive("resistance", resistance);
  requirePositive("capacitance", capacitance);
  requireNotNegative("voltage", voltage);
  requireNotNegative("time", seconds);
  return voltage * Math.exp(-seconds / (resistance * capacitance));
}

/**
 * Time for a capacitor to fall from one voltage to another through its bleeder: t = R C ln(V0 / V1), 0 where V0 is not above V1.
 *
 * Units: V, V, ohm, F -> s. Throws RangeError unless V1, R and C are positive and V0 is not negative. Source: textbook, exponential discharge.
 */
export function dischargeTime(from: number, to: number, resistance: number, capacitance: number): number {
  requireNotNegative("starting voltage", from);
  requirePositive("final voltage", to);
  requirePositive("resistance", resistance);
  requirePositive("capacitance", capacitance);
  return from <= to ? 0 : resistance * capacitance * Math.log(from / to);
}

/**
 * Time until a given fraction of the first voltage is left: t = -R C ln(fraction).
 *
 * Units: 1 (0 < fraction <= 1), ohm, F -> s. Throws RangeError outside that. Source: textbook, exponential discharge.
 */
export function timeToFraction(fraction: number, resistance: number, capacitance: number): number {
  if (!(fraction > 0 && fraction <= 1)) throw new RangeError(`fraction must lie above 0 and up to 1, got ${fraction}`);
  return dischargeTime(1, fraction, resistance, capacitance);
}

/** Energy stored in a capacitor: E = C V² / 2. Units: F, V -> J. Source: textbook. */
export function capacitorEnergy(capacitance: number, voltage: number): number {
  return (capacitance * voltage * voltage) / 2;
}

/** Charge in a capacitor: Q = C V. Units: F, V -> C. Source: textbook. */
export function capacitorCharge(capacitance: number, voltage: number): number {
  return capacitance * voltage;
}

/**
 * Voltage at which a capacitor holds a given energy: V = sqrt(2 E / C). Units: F, J -> V. Throws RangeError unless
 * both are positive. Source: textbook.
 */
export function voltageAtEnergy(capacitance: number, energy: number): number {
  requirePositive("capacitance", capacitance);
  requirePositive("energy", energy);
  return Math.sqrt((2 * energy) / capacitance);
}

/**
 * Capacitance that holds a given energy at a given voltage: C = 2 E / V². Units: V, J -> F. Throws RangeError unless
 * both are positive. Source: textbook.
 */
export function capacitanceAtEnergy(voltage: number, energy: number): number {
  requirePositive("voltage", voltage);
  requirePositive("energy", energy);
  return (2 * energy) / (voltage * voltage);
}

/**
 * Energy above the 60 V level: TE = C (V² - 60²) / 2, 0 below 60 V.
 * Units: F, V -> J. Source: UN R94 annex 11 (formula from memory, not seen in the original).
 */
export function energyAboveLimitVoltage(capacitance: number, voltage: number): number {
  return Math.max(0, (capacitance * (voltage * voltage - LIMIT_VOLTAGE_DC * LIMIT_VOLTAGE_DC)) / 2);
}

/**
 * Bleeder that brings a capacitor down in a given time: R = t / (C ln(V0 / V1)), and the heat it makes at the full voltage, P = V0² / R.
 *
 * Units: V, V, F, s -> ohm, W. Throws RangeError unless V0 > V1 > 0, C > 0 and t > 0. Source: the discharge formula, solved for R.
 */
export function bleederForTime(
  from: number,
  to: number,
  capacitance: number,
  seconds: number,
): { readonly resistance: number; readonly power: number } {
  requirePositive("final voltage", to);
  requirePositive("capacitance", capacitance);
  requirePositive("time", seconds);
  if (!(from > to)) throw new RangeError(`the starting voltage ${from} V must lie above the final voltage ${to} V`);
  const resistance = seconds / (capacitance * Math.log(from / to));
  return { resistance, power: (from * from) / resistance };
}

function requirePositive(name: string, value: number): void {
  if (!(value > 0 && Number.isFinite(value))) throw new RangeError(`${name} must be above zero, got ${value}`);
}

function requireNotNegative(name: string, value: number): void {
  if (!(value >= 0 && Number.isFinite(value))) throw new RangeError(`${name} must not be negative, got ${value}`);
}
