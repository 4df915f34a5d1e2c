// Figures on charge left after isolation: the wait, the energy, the voltage left, the bleeder that a given time would take.

import { argument, plain, quantityIn, result, step, type Figure } from "./figure.ts";
import {
  LIMIT_ENERGY,
  LIMIT_VOLTAGE_DC,
  bleederForTime,
  capacitanceAtEnergy,
  capacitorCharge,
  capacitorEnergy,
  dischargeTime,
  energyAboveLimitVoltage,
  voltageAfter,
  voltageAtEnergy,
} from "./capacitor-discharge.ts";
import { hazardFigure, highest, highestIn, lowest, shown, writtenKind } from "./hazard-figure.ts";
import { WAIT_MARGINS, WAIT_SOURCE, requiredWait } from "./required-wait.ts";
import { crestVoltage } from "./voltage-limits.ts";

const voltage = argument("voltage", "voltage", "highest working voltage; V ac is taken at its crest");
const capacitance = argument("capacitance", "capacitance", "capacitance of the link");
const bleeder = argument("bleeder", "resistance", "resistor that the charge runs down through");

/** Wait after isolation: the longest of the maker's, to 60 V dc and to 0.2 J. */
export const wait: Figure = hazardFigure({
  name: "wait",
  title: "Wait after isolation",
  topic: "electrical",
  arguments: [
    voltage,
    capacitance,
    bleeder,
    argument("maker-wait", "time", "the maker's wait", { optional: true, default: "none: the computed times alone" }),
  ],
  validity:
    "one capacitor bank on a known bleeder, every source isolated; no wait stands for a proof, and a battery has none",
  source: WAIT_SOURCE,
  examples: ["560 V 1200 uF 22 kohm", "400 V ac 470 uF 47 kohm maker-wait 5 min"],
  answer(inputs) {
    const kind = writtenKind(quantityIn(inputs, "voltage"));
    const makerWait = highestIn(inputs, "maker-wait");
    if (highest(inputs, "voltage") <= 0) return { says: "wait: the highest working voltage is above 0 V" };
    const sum = requiredWait({
      voltage: highest(inputs, "voltage"),
      capacitance: highest(inputs, "capacitance"),
      bleeder: highest(inputs, "bleeder"),
      ...(kind === undefined ? {} : { kind }),
      ...(makerWait === undefined ? {} : { makerWait }),
    });
    // Whole seconds, always upwards: a printed wait is never shorter than the sum. A sum of nothing is no wait of nothing: it says so in words.
    const values = [
      sum.seconds! > 0
        ? result("wait", Math.ceil(sum.seconds! - 1e-9), "s")
        : plain("wait", "none comes of these figures; other sources and other parts of the circuit are not in them"),
    ];
    for (const part of sum.parts) {
      values.push(result(part.name, part.seconds, "s"));
      if (part.of !== "maker") values.push(result(`${part.name} at nominal values`, part.nominalSeconds, "s"));
    }
    values.push(result("energy at the start, C +20 %", sum.energy!, "J"));
    return {
      values,
      formula: sum.formula,
      steps: sum.steps.map((text) => step(text)),
      assumptions: ["capacitance +20 %, resistance +5 %", ...(kind === undefined ? ["voltage taken as direct"] : [])],
    };
  },
});

/** Energy and charge in a capacitor. */
export const capacitorEnergyFigure: Figure = hazardFigure({
  name: "capacitor-energy",
  title: "Energy in a capacitor",
  topic: "electrical",
  arguments: [voltage, capacitance],
  validity: "one capacitor or a bank with its total capacitance",
  source:
    "Textbook: E = C V²/2, Q = C V; 0.2 J: ISO 6469-4:2015 (read in an extract); energy above 60 V: UN R94 annex, formula from memory",
  examples: ["350 V 480 uF"],
  answer(inputs) {
    const volts = crestVoltage(highest(inputs, "voltage"), writtenKind(quantityIn(inputs, "voltage")) ?? "dc");
    const farads = highest(inputs, "capacitance");
    const low = voltageAtEnergy(farads, LIMIT_ENERGY);
    return {
      values: [
        result("energy", capacitorEnergy(farads, volts), "J"),
        plain("charge", capacitorCharge(farads, volts) * 1000, "mC"),
        result("voltage at 0.2 J", low, "V"),
        result("energy above the 60 V level", energyAboveLimitVoltage(farads, volts), "J"),
      ],
      formula: "E = C V² / 2, Q = C V",
      steps: [
        step(`${shown(farads * 1e6)} µF x (${shown(volts)} V)² / 2 = ${shown(capacitorEnergy(farads, volts))} J`),
        step(`0.2 J is left at sqrt(2 x 0.2 J / C) = ${shown(low)} V`),
        step(
          `Above ${shown(capacitanceAtEnergy(LIMIT_VOLTAGE_DC, LIMIT_ENERGY) * 1e6)} µF the limit of 0.2 J is the stricter, below it that of 60 V`,
        ),
      ],
    };
  },
});

/** Voltage left after a time on the bleeder. */
export const voltageLeft: Figure = hazardFigure({
  name: "voltage-left",
  title: "Voltage left after a time",
  topic: "electrical",
  arguments: [voltage, capacitance, bleeder, argument("after", "time", "time since the source was isolated")],
  validity: "the upper limits of the parts, as a wait is reckoned with them; a figure for planning, not a reading",
  source: "Textbook: v = V0 exp(-t/RC)",
  examples: ["350 V 480 uF 22 kohm 18 s"],
  answer(inputs) {
    const volts = crestVoltage(highest(inputs, "voltage"), writtenKind(quantityIn(inputs, "voltage")) ?? "dc");
    const [farads, ohms, seconds] = [
      highest(inputs, "capacitance"),
      highest(inputs, "bleeder"),
      lowest(inputs, "after"),
    ];
    const nominal = voltageAfter(volts, ohms, farads, seconds);
    const [most, slowest] = [farads * WAIT_MARGINS.capacitance, ohms * WAIT_MARGINS.resistance];
    const left = voltageAfter(volts, slowest, most, seconds);
    const steps = [
      step(`R C = ${shown(slowest * most)} s with C x 1.2 and R x 1.05, ${shown(ohms * farads)} s at nominal values`),
      step(`${shown(volts)} V x exp(-${shown(seconds)} / ${shown(slowest * most)}) = ${shown(left)} V`),
    ];
    if (left > LIMIT_VOLTAGE_DC) steps.push(step("Over 60 V dc"));
    if (capacitorEnergy(most, left) >= LIMIT_ENERGY)
      steps.push(step(`${shown(capacitorEnergy(most, left))} J left: over 0.2 J`));
    return {
      values: [
        result("voltage left", left, "V"),
        result("energy left", capacitorEnergy(most, left), "J"),
        result("voltage left at nominal values", nominal, "V"),
        result("time constant at nominal values", ohms * farads, "s"),
      ],
      formula: "v = V0 exp(-t / (R C))",
      steps,
      assumptions: ["capacitance +20 %, resistance +5 %"],
    };
  },
});

/** Bleeder for a discharge time. */
export const bleederFigure: Figure = hazardFigure({
  name: "bleeder",
  title: "Bleeder for a discharge time",
  topic: "electrical",
  arguments: [
    voltage,
    capacitance,
    argument("discharge-time", "time", "time the discharge may take"),
    argument("to", "voltage", "voltage to come down to", { optional: true, default: "60 V" }),
  ],
  validity: "one resistor on one bank; the resistor must bear the full voltage for as long as the source is on",
  source: "Textbook discharge formula solved for R; 60 V in 5 s: IEC 60204-1 cl. 6.2.4 (read through summaries)",
  examples: ["350 V 480 uF 5 s"],
  answer(inputs) {
    const volts = crestVoltage(highest(inputs, "voltage"), writtenKind(quantityIn(inputs, "voltage")) ?? "dc");
    const to = highestIn(inputs, "to") ?? LIMIT_VOLTAGE_DC;
    const [farads, seconds] = [highest(inputs, "capacitance"), lowest(inputs, "discharge-time")];
    const sum = bleederForTime(volts, to, farads, seconds);
    // A capacitor at its upper limit and a resistor at its upper limit still keep to the time.
    const most = sum.resistance / (WAIT_MARGINS.capacitance * WAIT_MARGINS.resistance);
    return {
      values: [
        result("resistance at most", most, "ohm"),
        result("heat at the full voltage", (volts * volts) / most, "W"),
        result("resistance at nominal values", sum.resistance, "ohm"),
      ],
      formula: "R = t / (C ln(V0 / V1)), P = V0² / R",
      steps: [
        step(
          `${shown(seconds)} s / (${shown(farads * 1e6)} µF x ln(${shown(volts)} / ${shown(to)})) = ${shown(sum.resistance)} Ω`,
        ),
        step(`(${shown(volts)} V)² / ${shown(sum.resistance)} Ω = ${shown(sum.power)} W`),
        step(`Back: ${shown(dischargeTime(volts, to, sum.resistance, farads))} s`),
      ],
      assumptions: ["nominal capacitance and resistance", ...(inputs["to"] === undefined ? ["down to 60 V dc"] : [])],
    };
  },
});
