// Figures on hot surfaces, cooling and noise.

import { argument, numberIn, plain, result, step, textIn, type Figure } from "./figure.ts";
import { coolingRate, coolingTime } from "./cooling-time.ts";
import { hazardFigure, highest, highestIn, lowest, shown } from "./hazard-figure.ts";
import { NOISE_RULES, noiseDose, noiseTime } from "./noise-dose.ts";
import { TOUCH_LIMITS, touchLimit, type TouchMaterial } from "./touch-temperature.ts";

const ZERO_CELSIUS = 273.15;

/** Limit of surface temperature for a time of contact. */
export const touch: Figure = hazardFigure({
  name: "touch",
  title: "Limit of surface temperature by contact time",
  topic: "heat",
  arguments: [
    argument("contact", "time", "how long the surface is touched"),
    argument("material", "word", "material of the surface", { words: Object.keys(TOUCH_LIMITS) }),
    argument("surface", "temperature", "temperature of the surface", { optional: true, default: "no comparison" }),
  ],
  validity:
    "brief deliberate touch at 25 °C surroundings; at a class limit the class of the longer time up to it holds",
  source: "IEC 62368-1 touch table, class TS1, after ISO 13732-1:2006, as quoted from a laboratory's brief (read)",
  examples: ["5 s bare metal", "5 s bare metal 72 °C"],
  answer(inputs) {
    const seconds = highest(inputs, "contact");
    const material = textIn(inputs, "material") as TouchMaterial;
    const limit = touchLimit(seconds, material);
    const steps = [step(`${material}, ${shown(seconds)} s: the row has ${limit} °C`)];
    const surface = highestIn(inputs, "surface");
    const over = surface !== undefined && surface - ZERO_CELSIUS > limit + 1e-9;
    if (over)
      steps.push(
        step(`${shown(surface - ZERO_CELSIUS)} °C is over the limit by ${shown(surface - ZERO_CELSIUS - limit)} K`),
      );
    return {
      values: [plain("limit", limit, "°C"), ...(over ? [plain("finding", "over the limit")] : [])],
      formula: "row of the table",
      steps,
    };
  },
});

/** Time for a part to cool, from two readings. */
export const cooling: Figure = hazardFigure({
  name: "cooling",
  title: "Cooling time from two readings",
  topic: "heat",
  arguments: [
    argument("first", "temperature", "first reading"),
    argument("second", "temperature", "second reading"),
    argument("between", "time", "time between the readings"),
    argument("down-to", "temperature", "temperature wanted"),
    argument("surroundings", "temperature", "temperature of the surroundings"),
  ],
  validity: "Newton's law: still surroundings, one part of even temperature; a figure for planning, not a reading",
  source: "Newton's law of cooling, textbook; worked example (read)",
  examples: ["90 °C 70 °C 10 min 48 °C 20 °C"],
  answer(inputs) {
    const [first, second, seconds, to, surroundings] = [
      highest(inputs, "first"),
      highest(inputs, "second"),
      highest(inputs, "between"),
      lowest(inputs, "down-to"),
      highest(inputs, "surroundings"),
    ];
    const rate = coolingRate(first, second, surroundings, seconds);
    const time = coolingTime(first, to, surroundings, rate);
    return {
      values: [
        result("time from the first reading", time, "min"),
        result("time from the second reading", Math.max(0, time - seconds), "min"),
        plain("cooling rate", rate * 60, "1/min"),
      ],
      formula: "t = ln((T0 - Ta)/(T - Ta)) / k, k = ln((T0 - Ta)/(T1 - Ta)) / t1",
      steps: [
        step(
          `k = ln(${shown(first - surroundings)} K / ${shown(second - surroundings)} K) / ${shown(seconds / 60)} min = ${shown(rate * 60)} 1/min`,
        ),
        step(`t = ln(${shown(first - surroundings)} K / ${shown(to - surroundings)} K) / k = ${shown(time / 60)} min`),
      ],
    };
  },
});

/** Time that makes a full dose at a noise level, and the dose of a stay. */
export const noise: Figure = hazardFigure({
  name: "noise",
  title: "Noise dose",
  topic: "noise",
  arguments: [
    argument("level", "number", "level in dB(A)"),
    argument("stay", "time", "time in the noise", { optional: true, default: "8 h" }),
    argument("rule", "word", "whose rule", {
      words: ["osha", "niosh"],
      optional: true,
      default: "niosh, the stricter",
    }),
  ],
  validity: "steady noise",
  source: "29 CFR 1910.95 appendix A; NIOSH criterion (read through pages)",
  examples: ["92 8 h osha"],
  answer(inputs) {
    const level = numberIn(inputs, "level")!;
    const rule = NOISE_RULES[textIn(inputs, "rule") === "osha" ? "osha" : "niosh"];
    const stay = highestIn(inputs, "stay") ?? 8 * 3600;
    const dose = noiseDose(level, stay, rule);
    const steps = [
      step(
        `T = 8 h / 2^((${shown(level)} - ${rule.criterion}) / ${rule.exchange}) = ${shown(noiseTime(level, rule) / 3600)} h`,
      ),
      step(`100 x ${shown(stay / 3600)} h / T = ${shown(dose)} %`),
    ];
    if (dose > 100) steps.push(step("Over the full dose of the rule"));
    return {
      values: [plain("dose", dose, "%"), result("time to a full dose", noiseTime(level, rule), "h")],
      formula: "T = 8 h / 2^((L - Lc)/q), dose = 100 t / T",
      steps,
      assumptions: [
        ...(inputs["stay"] === undefined ? ["8 h in the noise"] : []),
        ...(inputs["rule"] === undefined ? ["NIOSH criterion: 85 dB(A), 3 dB"] : []),
      ],
    };
  },
});
