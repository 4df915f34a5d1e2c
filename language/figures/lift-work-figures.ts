// Figures on lifting as a job: duration class of a pattern of work, rate with breaks, reach from the width of a box, composite index of several tasks.

import {
  argument,
  listIn,
  numberIn,
  plain,
  result,
  step,
  textIn,
  type Figure,
  type FigureInputs,
  wordIn,
} from "./figure.ts";
import { hazardFigure, highest, highestIn, shown } from "./hazard-figure.ts";
import { GOOD_HANDLE, gripCoupling } from "./niosh-coupling.ts";
import { NIOSH_SOURCE, compositeLiftingIndex, estimatedReach, liftDuration, type WorkStretch } from "./niosh-lift.ts";
import { adjustedFrequency, liftDurations } from "./niosh-multipliers.ts";
import { si } from "../quantities/quantity.ts";

const holds = ["good", "fingers flexed", "fingers not flexed"] as const;

/** Upper ends in SI of an argument that may stand several times. */
const highs = (inputs: FigureInputs, name: string): readonly number[] =>
  listIn(inputs, name).flatMap((value) =>
    typeof value === "object" && "dimension" in value ? [si(value).high] : typeof value === "number" ? [value] : [],
  );

/** Duration class of a pattern of work and recovery. */
export const liftDurationFigure: Figure = hazardFigure({
  name: "lift-duration",
  title: "Duration class of lifting work",
  topic: "lifting",
  arguments: [
    argument("work", "time", "a stretch of lifting", { many: true }),
    argument("recovery", "time", "light work or rest behind it", { many: true, optional: true, default: "none" }),
  ],
  validity: "first stretch of work, its recovery, second stretch, and so on; up to 8 h of lifting",
  source: `${NIOSH_SOURCE}, pp. 13-14`,
  examples: ["work 30 min recovery 10 min work 45 min"],
  answer(inputs) {
    const [work, recovery] = [highs(inputs, "work"), highs(inputs, "recovery")];
    const pattern = work.flatMap((seconds, at): WorkStretch[] => [
      { kind: "work", seconds },
      ...(recovery[at] === undefined ? [] : [{ kind: "recovery" as const, seconds: recovery[at] }]),
    ]);
    const found = liftDuration(pattern);
    if (found === undefined) return { says: "lift-duration: more than 8 h of lifting is beyond the equation" };
    return {
      values: [plain("duration", found)],
      formula: "short: work to 1 h, then recovery of 1.0 x work; moderate: to 2 h, then 0.3 x work; else long",
      steps: [
        step(pattern.map((one) => `${shown(one.seconds / 60)} min ${one.kind}`).join(", ")),
        step("Work on both sides of a recovery that is too short is added"),
      ],
    };
  },
});

/** Rate that counts where lifting is not continuous. */
export const liftRate: Figure = hazardFigure({
  name: "lift-rate",
  title: "Lifting rate with breaks",
  topic: "lifting",
  arguments: [
    argument("rate", "number", "lifts a minute while lifting"),
    argument("worked", "time", "time worked in each 15 min"),
  ],
  validity: "work that comes and goes in each quarter of an hour",
  source: `${NIOSH_SOURCE}, section 1.3.5.5`,
  examples: ["10 8 min"],
  answer(inputs) {
    const [rate, minutes] = [numberIn(inputs, "rate")!, highest(inputs, "worked") / 60];
    const counted = adjustedFrequency(rate, minutes);
    return {
      values: [plain("rate that counts", counted, "lifts/min")],
      formula: "F = rate x minutes / 15",
      steps: [step(`${shown(rate)} x ${shown(minutes)} / 15 = ${shown(counted)}`)],
    };
  },
});

/** Reach from the width of a box. */
export const liftReach: Figure = hazardFigure({
  name: "lift-reach",
  title: "Reach from the width of a box",
  topic: "lifting",
  arguments: [
    argument("width", "length", "width of the box, away from the body"),
    argument("height", "length", "floor to hands"),
  ],
  validity: "where the reach cannot be measured; box held at its middle",
  source: `${NIOSH_SOURCE}, section 1.3.1`,
  examples: ["40 cm 60 cm"],
  answer(inputs) {
    const [width, height] = [highest(inputs, "width"), highest(inputs, "height")];
    const reach = estimatedReach(width, height);
    return {
      values: [result("reach", reach, "cm")],
      formula: "H = 20 cm + W/2, or 25 cm + W/2 with the hands below 25 cm",
      steps: [step(`${shown((reach - width / 2) * 100)} cm + ${shown(width * 100)} cm / 2 = ${shown(reach * 100)} cm`)],
    };
  },
});

/** Quality of a grip by the decision tree. */
export const liftGrip: Figure = hazardFigure({
  name: "lift-grip",
  title: "Quality of the grip",
  topic: "lifting",
  arguments: [
    argument("object", "word", "what is gripped; a bulky one is hard to hold round", {
      words: ["container", "loose object", "bulky object"],
    }),
    argument("hold", "word", "good handles or a hand right round, fingers bent 90° under it, or neither", {
      words: holds,
    }),
    argument("length", "length", "length of a container along the body", { optional: true, default: "up to 40 cm" }),
    argument("height", "length", "height of a container", { optional: true, default: "up to 30 cm" }),
  ],
  validity:
    `two hands; a good handle is ${shown(GOOD_HANDLE.diameterLeast * 100)} to ${shown(GOOD_HANDLE.diameterMost * 100)} cm thick, ` +
    `${shown(GOOD_HANDLE.lengthLeast * 100)} cm long, ${shown(GOOD_HANDLE.clearanceLeast * 100)} cm clear; in doubt the worse`,
  source: `${NIOSH_SOURCE}, decision tree, p. 18`,
  examples: ["container good", "container fingers flexed length 60 cm", "loose object fingers not flexed"],
  answer(inputs) {
    const object = textIn(inputs, "object");
    const said = wordIn(inputs, "hold", holds)!,
      hold = said === "fingers flexed" ? "fingers flexed 90°" : said;
    const [length, height] = [highestIn(inputs, "length"), highestIn(inputs, "height")];
    const grip = gripCoupling({
      object: object === "container" ? "container" : "loose object",
      hold,
      bulky: object === "bulky object",
      ...(length === undefined ? {} : { length }),
      ...(height === undefined ? {} : { height }),
    });
    return {
      values: [plain("grip", grip)],
      formula: "decision tree",
      steps: [
        step(`${object}, ${hold}${length === undefined && height === undefined ? "" : ", size as given"}: ${grip}`),
      ],
    };
  },
});

/** Composite lifting index of several tasks done in turn. */
export const liftJobs: Figure = hazardFigure({
  name: "lift-jobs",
  title: "Composite lifting index",
  topic: "lifting",
  arguments: [
    argument("load", "mass", "load of a task", { many: true }),
    argument("rate", "number", "lifts a minute of that task", { many: true }),
    argument("limit", "mass", "its limit without the frequency multiplier", { many: true }),
    argument("duration", "word", "short up to 1 h, moderate up to 2 h, long up to 8 h", {
      words: liftDurations,
      optional: true,
      default: "short",
    }),
  ],
  validity: "tasks done in turn by one person, hands from 75 cm up at the start of each lift",
  source: `${NIOSH_SOURCE}, section 2.4`,
  examples: ["load 30 lb rate 1 limit 20 lb load 20 lb rate 2 limit 20 lb"],
  answer(inputs) {
    const [loads, rates, limits] = [highs(inputs, "load"), highs(inputs, "rate"), highs(inputs, "limit")];
    if (loads.length !== rates.length || loads.length !== limits.length) {
      return {
        says: `lift-jobs: every task needs a load, a rate and a limit; given are ${loads.length}, ${rates.length} and ${limits.length}`,
      };
    }
    if (limits.some((limit) => !(limit > 0)))
      return { says: "lift-jobs: a limit of zero has no index: no load is recommended there at all" };
    const tasks = loads.map((load, at) => ({
      name: String(at + 1),
      load,
      perMinute: rates[at]!,
      frequencyIndependentLimit: limits[at]!,
    }));
    const { index, order } = compositeLiftingIndex(tasks, wordIn(inputs, "duration", liftDurations) ?? "short");
    if (index === undefined)
      return { says: "lift-jobs: the rates together are above the table: no load is recommended at that pace" };
    return {
      values: [plain("composite lifting index", index), plain("tasks from the heaviest", order)],
      formula: "CLI = STLI1 + sum of FILIi (1/FM(F1 + … + Fi) - 1/FM(F1 + … + Fi-1))",
      steps: [step(`Tasks in falling order of L/(limit x FM): ${order.join(", ")}`), step(`CLI = ${shown(index)}`)],
      assumptions: inputs["duration"] === undefined ? ["short: up to 1 h"] : [],
    };
  },
});
