// Limits that set which voltages count as high, and the crest of an alternating voltage.
// Below a limit is not a statement that a voltage may be touched; a lower class still asks for the maker's precautions.

/** Whether a voltage is direct or alternating; alternating voltages are given as rms. */
export type SupplyKind = "dc" | "ac";

/** Voltage class of ISO 6469 and UN R100: A up to the limit, B above it, "beyond" above the scope of class B. */
export type VoltageClass = "A" | "B" | "beyond";

/** Class limits in volt, rms for ac. Source: ISO 6469-4:2015, 49 CFR 571.305 (60 and 30, read); UN R100 (1500 and 1000, from memory). */
export const VOLTAGE_CLASS_LIMITS = { a: { dc: 60, ac: 30 }, b: { dc: 1500, ac: 1000 } } as const;

/** Extra-low voltage and low voltage of the IEC, V (ac rms; dc ripple-free). Source: IEC terms 3.55 (read). Another limit than the 60 V of machines. */
export const IEC_VOLTAGE_BANDS = { extraLow: { ac: 50, dc: 120 }, low: { ac: 1000, dc: 1500 } } as const;

/** Residual voltage rule of IEC 60204-1 cl. 6.2.4: to 60 V within 5 s, plug pins within 1 s, 60 µC exempt (read through two summaries). */
export const RESIDUAL_VOLTAGE_RULE = { volts: 60, seconds: 5, plugSeconds: 1, exemptCharge: 60e-6 } as const;

/**
 * Voltage class of a circuit.
 *
 * Units: V (rms for ac). Throws RangeError for a negative voltage. Valid for the working voltage, not for a reading after isolation. Source: ISO
 * 6469-4:2015, 49 CFR 571.305.
 */
export function voltageClass(volts: number, kind: SupplyKind): VoltageClass {
  if (!(volts >= 0)) throw new RangeError(`voltage must not be negative, got ${volts}`);
  if (volts <= VOLTAGE_CLASS_LIMITS.a[kind]) return "A";
  return volts <= VOLTAGE_CLASS_LIMITS.b[kind] ? "B" : "beyond";
}

/**
 * Highest voltage that a capacitor on this supply can be charged to: the crest V sqrt(2) of a sinusoidal alternating voltage, the voltage itself for direct.
 * Units: V (rms for ac) -> V. Valid for a sine without a voltage doubler. Source: textbook.
 */
export function crestVoltage(volts: number, kind: SupplyKind): number {
  return kind === "ac" ? volts * Math.SQRT2 : volts;
}
