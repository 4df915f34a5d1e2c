// The wait after isolation: the longest of the maker's, the time to 60 V dc and the time to 0.2 J.
// The one function that checks, hovers and the manual ask. It only ever lengthens a wait, and no wait stands for a proof.

import {
  LIMIT_ENERGY,
  LIMIT_VOLTAGE_DC,
  capacitorEnergy,
  dischargeTime,
  voltageAtEnergy,
} from "./capacitor-discharge.ts";
import { crestVoltage, type SupplyKind } from "./voltage-limits.ts";

/**
 * Upper limits of the parts that the wait is reckoned with: capacitors +20 %, resistors +5 % (common practice for electrolytic capacitors and E24
 * resistors).
 */
export const WAIT_MARGINS = { capacitance: 1.2, resistance: 1.05 } as const;

/** What is known of a stored charge, SI. A property that the author did not give is left out; then only what remains is reckoned. */
export interface WaitQuestion {
  /** The maker's wait, s. */
  readonly makerWait?: number;
  /** Highest working voltage, V (rms for ac). */
  readonly voltage?: number;
  /** Direct or alternating; alternating with a capacitance is taken at its crest. Direct if left out, with the voltage as given. */
  readonly kind?: SupplyKind;
  /** Nominal capacitance, F. */
  readonly capacitance?: number;
  /** Nominal resistance of the bleeder, ohm. */
  readonly bleeder?: number;
}

/** One of the waits that the longest is taken of. */
export interface WaitPart {
  readonly of: "maker" | "to-60-V" | "to-0.2-J";
  /** As printed: "the maker's wait", "to 60 V dc", "to 0.2 J". */
  readonly name: string;
  /** With the margins on capacitance and resistance, s. */
  readonly seconds: number;
  /** Without them, s; the maker's wait as given. */
  readonly nominalSeconds: number;
}

/** The wait and how it came about. */
export interface RequiredWait {
  /** The longest part, s; undefined where neither a maker's wait nor the figures for a computed one are given. */
  readonly seconds: number | undefined;
  /** The part that decides. */
  readonly decidedBy: WaitPart | undefined;
  readonly parts: readonly WaitPart[];
  /** Voltage that the reckoning starts from, V (crest for ac). */
  readonly startVoltage: number | undefined;
  /** Energy at that voltage with the capacitance at its upper limit, J. */
  readonly energy: number | undefined;
  readonly formula: string;
  readonly steps: readonly string[];
  readonly source: string;
}

/** Where the wait comes from, as printed. */
export const WAIT_SOURCE =
  "60 V dc: IEC 60204-1 cl. 6.2.4 and ISO 6469-4:2015; 0.2 J: ISO 6469-4:2015 (both read through extracts); " +
  "v = V0 exp(-t/RC); margins C +20 %, R +5 %: common practice";

/**
 * The least wait after isolation for a stored charge.
 *
 * Formula: the longest of the maker's wait, R C ln(V0/60 V) and R C ln(V0/sqrt(2 x 0.2 J/C)), with C x 1.2, R x 1.05 and V0 the highest voltage, V
 * sqrt(2) for ac.
 * Units: s, V, F, ohm -> s. Throws RangeError for a negative or endless figure and for a capacitance or bleeder of zero.
 * Valid for a discharge through a known constant resistor with no source left on the capacitor; a battery has no wait. Source: {@link WAIT_SOURCE}.
 */
export function requiredWait(question: WaitQuestion): RequiredWait {
  const { makerWait, voltage, capacitance, bleeder } = question;
  requireSense(question);
  const kind = question.kind ?? "dc";
  const parts: WaitPart[] = [];
  const steps: string[] = [];
  const startVoltage = voltage === undefined ? undefined : crestVoltage(voltage, kind);
  if (voltage !== undefined && startVoltage !== undefined && kind === "ac") {
    steps.push(`V0 = ${figure(voltage)} V x sqrt(2) = ${figure(startVoltage)} V, the crest of the alternating voltage`);
  }
  if (voltage !== undefined && question.kind === undefined) {
    steps.push(
      `V0 = ${figure(voltage)} V, taken as direct; an alternating voltage charges to its crest, 1.414 times as much: write V ac`,
    );
  }
  if (makerWait !== undefined) {
    parts.push({ of: "maker", name: "the maker's wait", seconds: makerWait, nominalSeconds: makerWait });
    steps.push(`The maker's wait: ${figure(makerWait)} s`);
  }
  let energy: number | undefined;
  if (startVoltage !== undefined && capacitance !== undefined) {
    energy = capacitorEnergy(capacitance * WAIT_MARGINS.capacitance, startVoltage);
  }
  if (startVoltage !== undefined && capacitance !== undefined && bleeder !== undefined) {
    const c = capacitance * WAIT_MARGINS.capacitance;
    const r = bleeder * WAIT_MARGINS.resistance;
    const [cText, rText, rc] = [`${figure(c * 1e6)} µF`, `${figure(r / 1e3)} kΩ`, `${figure(r * c)} s`];
    steps.push(
      `C = ${figure(capacitance * 1e6)} µF x 1.2 = ${cText}, R = ${figure(bleeder / 1e3)} kΩ x 1.05 = ${rText}, R C = ${rc}`,
    );
    const toVoltage: WaitPart = {
      of: "to-60-V",
      name: "to 60 V dc",
      seconds: dischargeTime(startVoltage, LIMIT_VOLTAGE_DC, r, c),
      nominalSeconds: dischargeTime(startVoltage, LIMIT_VOLTAGE_DC, bleeder, capacitance),
    };
    const low = voltageAtEnergy(c, LIMIT_ENERGY);
    const toEnergy: WaitPart = {
      of: "to-0.2-J",
      name: "to 0.2 J",
      seconds: dischargeTime(startVoltage, low, r, c),
      nominalSeconds: dischargeTime(startVoltage, voltageAtEnergy(capacitance, LIMIT_ENERGY), bleeder, capacitance),
    };
    parts.push(toVoltage, toEnergy);
    const times = (part: WaitPart): string =>
      `${figure(part.seconds)} s (${figure(part.nominalSeconds)} s at nominal values)`;
    steps.push(`To 60 V dc: ${rc} x ln(${figure(startVoltage)} / 60) = ${times(toVoltage)}`);
    steps.push(`0.2 J is left at sqrt(2 x 0.2 J / ${cText}) = ${figure(low)} V`);
    steps.push(`To 0.2 J: ${rc} x ln(${figure(startVoltage)} / ${figure(low)}) = ${times(toEnergy)}`);
  }
  const decidedBy = parts.reduce<WaitPart | undefined>(
    (longest, part) => (longest === undefined || part.seconds > longest.seconds ? part : longest),
    undefined,
  );
  if (decidedBy !== undefined && parts.length > 1) {
    steps.push(
      `The longest is the wait ${decidedBy.of === "maker" ? "of the maker" : decidedBy.name}: ${figure(decidedBy.seconds)} s`,
    );
  }
  return {
    seconds: decidedBy?.seconds,
    decidedBy,
    parts,
    startVoltage,
    energy,
    formula: "t = max(maker's wait, R C ln(V0 / 60 V), R C ln(V0 / sqrt(2 x 0.2 J / C)))",
    steps,
    source: WAIT_SOURCE,
  };
}

/** Refuses what no machine has: negative or endless figures, and a capacitance or bleeder of zero. */
function requireSense({ makerWait, voltage, capacitance, bleeder }: WaitQuestion): void {
  const refuse = (name: string, value: number | undefined, fits: (value: number) => boolean): void => {
    if (value !== undefined && !(Number.isFinite(value) && fits(value)))
      throw new RangeError(`${name} cannot be ${value}`);
  };
  refuse("the maker's wait", makerWait, (value) => value >= 0);
  refuse("voltage", voltage, (value) => value >= 0);
  refuse("capacitance", capacitance, (value) => value > 0);
  refuse("bleeder", bleeder, (value) => value > 0);
}

/** Four significant digits without an exponent for the sizes that occur here. */
function figure(value: number): string {
  return String(Number(value.toPrecision(4)));
}
