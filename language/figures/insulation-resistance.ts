// Least insulation resistances: high-voltage circuits of vehicles and machines, installations, machine windings; and the polarisation index.
// A reading above a minimum shows no more than that; it is no proof of absence of voltage.

/** Which sides of a circuit are joined while the resistance is measured; "combined" is direct and alternating joined by a converter. */
export type IsolationKind = (typeof isolationKinds)[number];
export const isolationKinds = ["dc", "ac", "combined"] as const;

/**
 * Least isolation resistance per volt of the highest working voltage, ohm/V. Source: UN R100 cl. 5.1.3 as quoted in contracts; ISO 6469-4:2015
 * extract (read).
 */
export const ISOLATION_PER_VOLT = { dc: 100, ac: 500, combined: 500, combinedDoublyProtected: 100 } as const;

/**
 * Least isolation resistance of a high-voltage circuit: 100 ohm/V for dc, 500 ohm/V for ac and for combined circuits,
 * 100 ohm/V for a combined circuit with double or robust protection.
 *
 * Units: V -> ohm. Throws RangeError for a negative voltage. Source: UN R100 cl. 5.1.3 (as quoted).
 */
export function isolationMinimum(volts: number, kind: IsolationKind, doublyProtected = false): number {
  if (!(volts >= 0)) throw new RangeError(`voltage must not be negative, got ${volts}`);
  return (
    volts *
    (kind === "combined" && doublyProtected ? ISOLATION_PER_VOLT.combinedDoublyProtected : ISOLATION_PER_VOLT[kind])
  );
}

/** Test voltage, V dc, and least resistance, ohm, of one row of the installation table. */
export interface InsulationTest {
  readonly testVoltage: number;
  readonly minimum: number;
}

/** Insulation test of installations. Source: IEC 60364-6 as printed by a railway authority (its first row is headed "up to 50 V"; read). */
export const INSTALLATION_INSULATION: {
  readonly extraLow: InsulationTest;
  readonly to500: InsulationTest;
  readonly over500: InsulationTest;
} = {
  extraLow: { testVoltage: 250, minimum: 0.5e6 },
  to500: { testVoltage: 500, minimum: 1e6 },
  over500: { testVoltage: 1000, minimum: 1e6 },
};

/** Machine wiring against the protective bonding: 500 V dc (read), 1 Mohm (from memory). Source: IEC 60204-1 cl. 18.3. */
export const MACHINE_INSULATION: InsulationTest = { testVoltage: 500, minimum: 1e6 };

/**
 * Row of the installation table for a nominal voltage. `extraLow` asks for the row of SELV and PELV, which rests on the kind of supply and not on the
 * voltage alone.
 * Units: V -> V dc, ohm. Throws RangeError for a negative voltage. Source: IEC 60364-6 as printed by a railway authority.
 */
export function installationInsulation(volts: number, extraLow = false): InsulationTest {
  if (!(volts >= 0)) throw new RangeError(`voltage must not be negative, got ${volts}`);
  if (extraLow && volts <= 50) return INSTALLATION_INSULATION.extraLow;
  return volts <= 500 ? INSTALLATION_INSULATION.to500 : INSTALLATION_INSULATION.over500;
}

/** Kind of winding in the IEEE 43 table of least resistances. */
export type WindingKind = (typeof windingKinds)[number];
export const windingKinds = ["before-1970", "form-wound", "random-wound"] as const;

/**
 * Least insulation resistance of a machine winding after one minute, corrected to 40 °C: kV + 1 Mohm for windings made before about 1970,
 * 100 Mohm for form-wound, 5 Mohm for random-wound and for machines below 1 kV.
 *
 * Units: V (rated, line to line) -> ohm. Throws RangeError for a negative voltage. Source: IEEE 43 through a field testing page (read).
 */
export function windingMinimum(volts: number, winding: WindingKind): number {
  if (!(volts >= 0)) throw new RangeError(`voltage must not be negative, got ${volts}`);
  switch (winding) {
    case "before-1970":
      return (volts / 1000 + 1) * 1e6;
    case "form-wound":
      return 100e6;
    case "random-wound":
      return 5e6;
  }
}

/** Range of direct test voltage for one band of rated voltage, V. */
export interface TestVoltageBand {
  /** Up to and including this rated voltage, V; undefined is without an upper end. */
  readonly upTo: number | undefined;
  readonly least: number;
  readonly most: number;
}

/**
 * Direct test voltages for windings, by rated voltage; one minute. The first band ends below 1000 V. Source: IEEE 43-2000 Table 1 (read through a
 * tester's guide).
 */
export const WINDING_TEST_VOLTAGES: readonly TestVoltageBand[] = [
  { upTo: 999, least: 500, most: 500 },
  { upTo: 2500, least: 500, most: 1000 },
  { upTo: 5000, least: 1000, most: 2500 },
  { upTo: 12000, least: 2500, most: 5000 },
  { upTo: undefined, least: 5000, most: 10000 },
];

/** Test voltage band of a rated voltage. Units: V. Throws RangeError for a negative voltage. Source: IEEE 43-2000 Table 1. */
export function windingTestVoltage(volts: number): TestVoltageBand {
  if (!(volts >= 0)) throw new RangeError(`voltage must not be negative, got ${volts}`);
  if (volts < 1000) return WINDING_TEST_VOLTAGES[0]!;
  return WINDING_TEST_VOLTAGES.slice(1).find((band) => band.upTo === undefined || volts <= band.upTo)!;
}

/** Thermal class of the insulation, for the least polarisation index. */
export type InsulationClass = (typeof insulationClasses)[number];
export const insulationClasses = ["A", "B", "F", "H"] as const;

/**
 * Least polarisation index by insulation class, and the resistance after one minute above which the index says nothing, ohm. Source: IEEE 43 (read
 * through two pages).
 */
export const POLARISATION_INDEX_MINIMUM: Readonly<Record<InsulationClass, number>> = { A: 1.5, B: 2, F: 2, H: 2 };
export const POLARISATION_INDEX_VALID_TO = 5000e6;

/**
 * Polarisation index: resistance after ten minutes over that after one minute. Units: ohm, ohm -> 1. Throws RangeError unless R1 is positive. Source:
 * IEEE 43.
 */
export function polarisationIndex(afterOneMinute: number, afterTenMinutes: number): number {
  if (!(afterOneMinute > 0)) throw new RangeError(`resistance must be above zero, got ${afterOneMinute}`);
  return afterTenMinutes / afterOneMinute;
}
