// Figures on lifting by hand: the guideline for a load and a team, and the weights of the filter for a first look.

import {
  argument,
  listIn,
  numberIn,
  plain,
  quantityIn,
  result,
  step,
  textIn,
  type Figure,
  type FigureInputs,
  wordIn,
} from "./figure.ts";
import {
  FILTER_ROWS,
  ISO_REFERENCE_MASS,
  PUSH_PULL,
  filterWeight,
  repetitionReduction,
  twistReduction,
} from "./handling-filter.ts";
import { hazardFigure, highest, highestIn, shown } from "./hazard-figure.ts";
import { liftLimit, teamLimit, TEAM_SOURCE, type LiftSituation } from "./lift-limit.ts";
import { NIOSH_NOT_FOR, NIOSH_SOURCE, liftingIndex } from "./niosh-lift.ts";
import { couplings, liftDurations, type NioshConstants } from "./niosh-multipliers.ts";
import { STANDARD_GRAVITY } from "./stored-energy.ts";
import { si } from "../quantities/quantity.ts";

/** The situation at the start, and at the end where the author gave one. */
function situations(inputs: FigureInputs): {
  readonly origin: LiftSituation;
  readonly destination: LiftSituation | undefined;
} {
  const [height, toHeight, reach, toReach] = ["height", "to-height", "reach", "to-reach"].map((name) =>
    highestIn(inputs, name),
  );
  const travel =
    highestIn(inputs, "travel") ??
    (height !== undefined && toHeight !== undefined ? Math.abs(toHeight - height) : undefined);
  const shared = given({
    travel,
    twist: highestIn(inputs, "twist"),
    perMinute: numberIn(inputs, "rate"),
    duration: wordIn(inputs, "duration", liftDurations),
    coupling: wordIn(inputs, "grip", couplings),
  });
  const origin = { ...shared, ...given({ reach, height }) };
  if (toHeight === undefined && toReach === undefined) return { origin, destination: undefined };
  return {
    origin,
    destination: { ...shared, ...given({ reach: toReach ?? reach, height: toHeight ?? height, originHeight: height }) },
  };
}

/** Only what is defined, so that the exact types hold. */
function given(all: { readonly [K in keyof LiftSituation]: LiftSituation[K] | undefined }): LiftSituation {
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined));
}

/** The lifting guideline for a load. */
export const lift: Figure = hazardFigure({
  name: "lift",
  title: "Lifting guideline",
  topic: "lifting",
  arguments: [
    argument("mass", "mass", "mass of the part as it hangs then"),
    argument("people", "number", "people who lift together", { optional: true, default: "1", whole: true }),
    argument("reach", "length", "ankles to hands", { optional: true, default: "close to the body" }),
    argument("height", "length", "floor to hands at the start", { optional: true, default: "waist height" }),
    argument("to-height", "length", "floor to hands at the end", {
      optional: true,
      default: "the start alone is reckoned",
    }),
    argument("to-reach", "length", "ankles to hands at the end", { optional: true, default: "as at the start" }),
    argument("travel", "length", "vertical travel", {
      optional: true,
      default: "from height to to-height, else short",
    }),
    argument("twist", "angle", "twist of the body", { optional: true, default: "none" }),
    argument("rate", "number", "lifts a minute", { optional: true, default: "now and then" }),
    argument("duration", "word", "short up to 1 h, moderate up to 2 h, long up to 8 h", {
      words: liftDurations,
      optional: true,
      default: "short",
    }),
    argument("grip", "word", "quality of the grip; in doubt the worse", {
      words: couplings,
      optional: true,
      default: "good",
    }),
    argument("constants", "word", "set of constants of the equation", {
      words: ["metric", "us"],
      optional: true,
      default: "metric",
    }),
  ],
  validity: `two hands, standing, smooth; no result for: ${NIOSH_NOT_FOR.join(", ")}`,
  source: `${NIOSH_SOURCE}; ${TEAM_SOURCE}`,
  examples: ["26 kg", "18 kg 2 reach 63 cm", "20 kg reach 45 cm height 40 cm to-height 90 cm grip fair"],
  answer(inputs) {
    const mass = highest(inputs, "mass");
    const people = numberIn(inputs, "people") ?? 1;
    const constants: NioshConstants = textIn(inputs, "constants") === "us" ? "us" : "metric";
    const { origin, destination } = situations(inputs);
    const atStart = liftLimit(people, origin, constants);
    const atEnd = destination === undefined ? undefined : liftLimit(people, destination, constants);
    const limit = atEnd !== undefined && atEnd.kilograms < atStart.kilograms ? atEnd : atStart;
    const index = liftingIndex(mass, limit.kilograms);
    const steps = [];
    if (atEnd === undefined) steps.push(...atStart.steps.map((text) => step(text)));
    else {
      steps.push(
        ...atStart.steps.map((text) => step(`At the start: ${text}`)),
        ...atEnd.steps.map((text) => step(`At the end: ${text}`)),
      );
      steps.push(step(`The lower decides: ${limit === atEnd ? "the end" : "the start"}`));
    }
    if (index === undefined) steps.push(step("A multiplier is 0: the equation recommends no load at all here"));
    if (people === 1 && mass > ISO_REFERENCE_MASS.ideal) {
      steps.push(
        step(`Over the reference mass of ISO 11228-1 too, ${ISO_REFERENCE_MASS.ideal} kg under ideal conditions`),
      );
    }
    if (mass > limit.kilograms)
      steps.push(step(`${shown(mass)} kg is over the guideline by ${shown(mass - limit.kilograms)} kg`));
    return {
      values: [
        result("guideline", limit.kilograms, "kg"),
        ...(mass > limit.kilograms ? [plain("finding", "over the guideline")] : []),
        ...(index === undefined
          ? []
          : [plain(people === 1 ? "lifting index" : "load over the guideline of the team", index)]),
        result("guideline for one person", limit.eachAlone, "kg"),
      ],
      formula: limit.formula,
      steps,
      assumptions: [limit.basis, ...(constants === "metric" ? ["metric constants"] : ["US constants"])],
      source: limit.source,
    };
  },
});

/** What a team may be asked to lift by the published shares. */
export const team: Figure = hazardFigure({
  name: "team",
  title: "Team lift",
  topic: "lifting",
  arguments: [
    argument("people", "number", "people who lift together", { whole: true }),
    argument("each", "mass", "what each could be asked to lift alone", {
      optional: true,
      many: true,
      default: "23 kg under the best conditions",
    }),
  ],
  validity: "up to three people of like build who can all reach the load; more are reckoned as three",
  source: TEAM_SOURCE,
  examples: ["2", "2 20 kg", "3 23 kg 23 kg 18 kg"],
  answer(inputs) {
    const people = numberIn(inputs, "people")!;
    const each = listIn(inputs, "each").flatMap((value) =>
      typeof value === "object" && "dimension" in value ? [si(value).low] : [],
    );
    if (each.length > 1 && each.length !== people) {
      return {
        says: `team: ${people} people are asked for and ${each.length} weights given: give one weight for all or one for each`,
      };
    }
    const limit = each.length > 1 ? teamLimit(people, each) : teamLimit(people, each[0]);
    const share = limit.counted === 1 ? "1" : limit.counted === 2 ? "2/3" : "1/2";
    return {
      values: [result("guideline", limit.kilograms, "kg"), plain("people reckoned", limit.counted)],
      formula: "limit = share x sum; share 2/3 for two, 1/2 for three",
      steps: [step(`${shown(limit.kilograms / limit.share)} kg x ${share} = ${shown(limit.kilograms)} kg`)],
      assumptions: [limit.basis],
    };
  },
});

/** Weight of the filter for a first look. */
export const liftFilter: Figure = hazardFigure({
  name: "lift-filter",
  title: "Handling filter for a first look",
  topic: "lifting",
  arguments: [
    argument("hands", "word", "height of the hands; of several zones the lowest weight counts", {
      words: FILTER_ROWS.map((row) => row.height),
    }),
    argument("arms", "word", "close to the body or extended", { words: ["close", "extended"] }),
    argument("rate", "number", "lifts a minute", { optional: true, default: "up to 30 an hour" }),
    argument("twist", "angle", "twist of the body", { optional: true, default: "none" }),
    argument("mass", "mass", "mass of the part", { optional: true, default: "no comparison" }),
  ],
  validity: "a first look: over the weight an assessment is asked for",
  source:
    "HSE manual handling guide, pp. 59 and 65, and filter drawing (read through copies); that both reductions multiply is our reading",
  examples: ["knuckle to elbow extended", "elbow to shoulder close 1.5 mass 18 kg"],
  answer(inputs) {
    const height = textIn(inputs, "hands");
    const arms = textIn(inputs, "arms") === "extended" ? "extended" : "close";
    const row = FILTER_ROWS.find((one) => one.height === height)!;
    const [rate, twist] = [numberIn(inputs, "rate") ?? 0, highestIn(inputs, "twist") ?? 0];
    const [men, women] = [filterWeight(row.men[arms], rate, twist), filterWeight(row.women[arms], rate, twist)];
    const mass = quantityIn(inputs, "mass") === undefined ? undefined : highest(inputs, "mass");
    const steps = [step(`${height}, ${arms}: men ${row.men[arms]} kg, women ${row.women[arms]} kg`)];
    if (rate > 0 || twist > 0)
      steps.push(step(`x (1 - ${repetitionReduction(rate)}) x (1 - ${twistReduction(twist)})`));
    if (mass !== undefined && mass > women)
      steps.push(step(`${shown(mass)} kg is over the guideline for ${mass > men ? "men and women" : "women"}`));
    return {
      values: [result("weight for women", women, "kg"), result("weight for men", men, "kg")],
      formula: "weight = box x (1 - repetition) x (1 - twist)",
      steps,
    };
  },
});

/** Force for pushing or pulling by hand. */
export const pushPull: Figure = hazardFigure({
  name: "push-pull",
  title: "Pushing and pulling by hand",
  topic: "lifting",
  arguments: [
    argument("motion", "word", "starting and stopping, or keeping it moving", {
      words: ["start or stop", "keep moving"],
    }),
    argument("force", "force", "force measured at the hands", { optional: true, default: "no comparison" }),
  ],
  validity: `a first look: up to ${PUSH_PULL.distanceWithoutRest} m without a rest; over the force an assessment is asked for`,
  source: "HSE manual handling guide, p. 65; HSE research report 228, 2004 (read through copies)",
  examples: ["start or stop", "keep moving 120 N"],
  answer(inputs) {
    const row = textIn(inputs, "motion") === "keep moving" ? PUSH_PULL.keepMoving : PUSH_PULL.startOrStop;
    const [women, men] = [row.women * STANDARD_GRAVITY, row.men * STANDARD_GRAVITY];
    const force = highestIn(inputs, "force");
    const steps = [step(`men ${row.men} kgf, women ${row.women} kgf`)];
    if (force !== undefined && force > women)
      steps.push(step(`${shown(force)} N is over the guideline for ${force > men ? "men and women" : "women"}`));
    return {
      values: [result("force for women", women, "N"), result("force for men", men, "N")],
      formula: "row of the guide",
      steps,
    };
  },
});
