// Figures on energy stored in springs, raised parts and gas, and on magnets.

import { argument, numberIn, plain, result, step, type Figure } from "./figure.ts";
import { hazardFigure, highest, highestIn, lowest, shown } from "./hazard-figure.ts";
import { STATIC_FIELD_LIMITS, magnetKeepOut, magnetPull } from "./magnets.ts";
import {
  GAS_ENERGY_NOTICE,
  STANDARD_GRAVITY,
  TNT_ENERGY,
  gasEnergy,
  heightEnergy,
  springEnergy,
} from "./stored-energy.ts";

/** Pressure of the surroundings that gauge pressures count from, Pa. */
const ATMOSPHERE = 101325;

/** Energy of a spring. */
export const spring: Figure = hazardFigure({
  name: "spring",
  title: "Energy of a spring",
  topic: "stored-energy",
  arguments: [
    argument("force", "force", "force of the spring at that deflection"),
    argument("deflection", "length", "deflection from free, at the force given"),
    argument("until", "length", "deflection at which it lets go of the energy", {
      optional: true,
      default: "0 mm: let out fully",
    }),
  ],
  validity: "springs with a straight characteristic; not disc springs or gas springs",
  source: "Textbook: E = k (x2² - x1²)/2",
  examples: ["3750 N 150 mm", "3750 N 150 mm until 100 mm"],
  answer(inputs) {
    const [force, x2, x1] = [highest(inputs, "force"), highest(inputs, "deflection"), highestIn(inputs, "until") ?? 0];
    if (!(x2 > 0)) return { says: "spring: deflection must be above zero" };
    if (x1 > x2) return { says: "spring: until must not lie above the deflection" };
    const rate = force / x2;
    const energy = springEnergy(rate, x2, x1);
    return {
      values: [
        result("energy", energy, "J"),
        plain("spring rate", rate / 1000, "N/mm"),
        result("same as 1 kg falling", energy / STANDARD_GRAVITY, "m"),
      ],
      formula: "E = k (x2² - x1²) / 2, k = F / x2",
      steps: [
        step(`k = ${shown(force)} N / ${shown(x2 * 1000)} mm = ${shown(rate / 1000)} N/mm`),
        step(`E = ${shown(rate)} N/m x ((${shown(x2)} m)² - (${shown(x1)} m)²) / 2 = ${shown(energy)} J`),
      ],
      ...(inputs["until"] === undefined ? { assumptions: ["let out fully"] } : {}),
    };
  },
});

/** Energy of a raised part. */
export const fall: Figure = hazardFigure({
  name: "fall",
  title: "Energy of a raised part",
  topic: "stored-energy",
  arguments: [argument("mass", "mass", "mass of the part"), argument("height", "length", "height that it can fall")],
  validity: "free fall",
  source: "Textbook: E = m g h, g 9.80665 m/s²",
  examples: ["9.5 kg 1.2 m"],
  answer(inputs) {
    const [mass, height] = [highest(inputs, "mass"), highest(inputs, "height")];
    const energy = heightEnergy(mass, height);
    return {
      values: [
        result("energy", energy, "J"),
        plain("speed at the floor", Math.sqrt(2 * STANDARD_GRAVITY * height), "m/s"),
      ],
      formula: "E = m g h",
      steps: [step(`${shown(mass)} kg x 9.80665 m/s² x ${shown(height)} m = ${shown(energy)} J`)],
    };
  },
});

/** Energy of a compressed gas. */
export const gas: Figure = hazardFigure({
  name: "gas",
  title: "Energy of a compressed gas",
  topic: "stored-energy",
  arguments: [
    argument("pressure", "pressure", "gauge pressure"),
    argument("volume", "volume", "volume of the gas"),
    argument("heat-ratio", "number", "ratio of the specific heats, above 1", {
      optional: true,
      default: "1.4 (air, nitrogen)",
    }),
  ],
  validity:
    "ideal gas above an atmosphere of 1.01325 bar; the three models differ by nearly two, so the one used is named",
  source:
    "Isentropic and isothermal: two pneumatic test pages (read); Brode from memory; 100 kJ and 4.62 kJ/g: UC Berkeley EH&S (read)",
  examples: ["8 bar 50 L"],
  answer(inputs) {
    const pressure = highest(inputs, "pressure") + ATMOSPHERE;
    const volume = highest(inputs, "volume");
    const ratio = numberIn(inputs, "heat-ratio") ?? 1.4;
    const of = (model: "isentropic" | "brode" | "isothermal"): number =>
      gasEnergy(model, pressure, ATMOSPHERE, volume, ratio);
    const most = Math.max(of("isentropic"), of("brode"), of("isothermal"));
    const steps = [
      step(
        `p1 = ${shown(pressure / 1e5)} bar absolute, p2 = 1.013 bar, V = ${shown(volume * 1000)} L, k = ${shown(ratio)}`,
      ),
    ];
    if (most > GAS_ENERGY_NOTICE) steps.push(step("Over 100 kJ: called highly hazardous by the rule cited"));
    return {
      values: [
        result("largest of the models", most, "kJ"),
        result("isentropic", of("isentropic"), "kJ"),
        result("Brode", of("brode"), "kJ"),
        result("isothermal", of("isothermal"), "kJ"),
        result("same as TNT", most / TNT_ENERGY, "g"),
      ],
      formula: "isentropic p1 V/(k-1) [1 - (p2/p1)^((k-1)/k)]; Brode (p1 - p2) V/(k-1); isothermal p1 V ln(p1/p2)",
      steps,
      assumptions: inputs["heat-ratio"] === undefined ? ["heat ratio 1.4 (air, nitrogen)"] : [],
    };
  },
});

/** Pull of a magnet in contact with iron. */
export const magnetPullFigure: Figure = hazardFigure({
  name: "magnet-pull",
  title: "Pull of a magnet on iron",
  topic: "magnets",
  arguments: [
    argument("flux-density", "flux", "flux density at the face"),
    argument("across", "length", "diameter of the face, or its first side"),
    argument("by", "length", "second side of a rectangular face", { optional: true, default: "a round face" }),
  ],
  validity: "an upper bound: full contact with thick iron, no gap",
  source: "F = B² A / (2 µ0), magnet pull pages (read)",
  examples: ["500 mT 17.84 mm", "800 mT 55 mm by 50 mm"],
  answer(inputs) {
    const [flux, across, by] = [highest(inputs, "flux-density"), highest(inputs, "across"), highestIn(inputs, "by")];
    const area = by === undefined ? (Math.PI / 4) * across * across : across * by;
    const force = magnetPull(flux, area);
    return {
      values: [result("pull", force, "N"), result("as the weight of", force / STANDARD_GRAVITY, "kg")],
      formula: "F = B² A / (2 µ0)",
      steps: [
        step(`A = ${shown(area * 1e4)} cm²`),
        step(`(${shown(flux)} T)² x ${shown(area)} m² / (2 x 1.257e-6 H/m) = ${shown(force)} N`),
      ],
    };
  },
});

/** Distance out to which a magnet's field may reach a limit. */
export const magnetDistance: Figure = hazardFigure({
  name: "magnet-distance",
  title: "Keep-out distance of a magnet",
  topic: "magnets",
  arguments: [
    argument("remanence", "flux", "remanence of the magnet material, about 1.2 to 1.4 T for sintered neodymium"),
    argument("volume", "volume", "volume of magnet material"),
    argument("limit", "flux", "field to stay below", { optional: true, default: "0.5 mT, people with an implant" }),
  ],
  validity: "from the nearest face, in free air; iron yokes and coils can carry the field farther",
  source: "Upper bound from the dipole field, textbook; 0.5 mT: ICNIRP static field guideline as quoted (read)",
  examples: ["1300 mT 20 cm3"],
  answer(inputs) {
    const [remanence, volume, limit] = [
      highest(inputs, "remanence"),
      highest(inputs, "volume"),
      inputs["limit"] === undefined ? STATIC_FIELD_LIMITS.implant : lowest(inputs, "limit"),
    ];
    const distance = magnetKeepOut(remanence, volume, limit);
    return {
      values: [result("keep out to", Math.ceil(distance * 100 - 1e-9) / 100, "cm")],
      formula: "d = (Br V / (2 pi B))^(1/3), from the nearest face",
      steps: [
        step(
          `(${shown(remanence)} T x ${shown(volume * 1e6)} cm³ / (2 pi x ${shown(limit * 1000)} mT))^(1/3) = ${shown(distance * 100)} cm, rounded up`,
        ),
      ],
      assumptions: inputs["limit"] === undefined ? ["limit 0.5 mT, people with an implant"] : [],
    };
  },
});
