// The lifting guideline that the checks, hovers and the manual ask: how much one person, or a team, is asked to lift at most.
// It gives the figure and says when a load is over it; it never says that a load may be lifted.

import { NIOSH_SOURCE, liftMultipliers, weightLimitFrom, type Lift, type LiftMultipliers } from "./niosh-lift.ts";
import { loadConstant, type NioshConstants } from "./niosh-multipliers.ts";

/**
 * Share of the sum of what each could lift alone: 2 persons 2/3, 3 persons 1/2. Source: guidance to the Manual Handling Operations Regulations 1992
 * as quoted in two pages (read).
 */
export const TEAM_SHARES: Readonly<Record<1 | 2 | 3, number>> = { 1: 1, 2: 2 / 3, 3: 1 / 2 };

/** Where the team shares come from, as printed. */
export const TEAM_SOURCE =
  "Team handling: guidance to the Manual Handling Operations Regulations 1992 (HSE L23), read as quoted: 2 persons 2/3, 3 persons 1/2 of the sum";

/** The most that one person is asked to lift under the best conditions, kg: the NIOSH load constant. */
export const ONE_PERSON_BEST = 23;

/** Said wherever the one-person figure rests on no reach, height or grip of the author's. */
const ONE_PERSON_BASIS = "close to the body, at waist height, without twisting, now and then, with a good grip";

/** How the lift is done, as far as known; what is left out is taken at its best, so the real limit can only be lower. */
export type LiftSituation = Partial<Lift>;

/** The limit and how it came about. */
export interface LiftLimit {
  /** Limit for all the people together, kg. */
  readonly kilograms: number;
  /** Limit for one of them, kg. */
  readonly eachAlone: number;
  /** Number of people asked for, and the number that the published rule counts (at most three). */
  readonly people: number;
  readonly counted: 1 | 2 | 3;
  /** Share of the sum of the single limits. */
  readonly share: number;
  readonly multipliers: LiftMultipliers;
  readonly basis: string;
  readonly formula: string;
  readonly steps: readonly string[];
  readonly source: string;
}

/**
 * What a team of people may be asked to lift at most, each of them being asked for no more than `each` alone: sum x 2/3 for two, sum x 1/2 for three.
 * The rule ends at three: more people are reckoned as three, since no factor is published for them.
 *
 * Units: 1, kg -> kg. Throws RangeError unless people is a whole number from 1. Source: {@link TEAM_SOURCE}.
 */
export function teamLimit(
  people: number,
  each: number | readonly number[] = ONE_PERSON_BEST,
): {
  readonly kilograms: number;
  readonly counted: 1 | 2 | 3;
  readonly share: number;
  readonly basis: string;
  readonly source: string;
} {
  if (!Number.isInteger(people) || people < 1)
    throw new RangeError(`people must be a whole number from 1, got ${people}`);
  const counted = Math.min(people, 3) as 1 | 2 | 3;
  const single =
    typeof each === "number"
      ? Array.from({ length: counted }, () => each)
      : [...each].sort((a, b) => a - b).slice(0, counted);
  const share = TEAM_SHARES[counted];
  const sum = single.reduce((total, one) => total + one, 0);
  const basis =
    people > 3
      ? "no factor is published for more than three people: reckoned as three, and lifting gear is the better way"
      : typeof each === "number" && each === ONE_PERSON_BEST
        ? `each at most ${ONE_PERSON_BEST} kg alone: ${ONE_PERSON_BASIS}`
        : "each at most the limit for one person alone";
  return { kilograms: sum * share, counted, share, basis, source: TEAM_SOURCE };
}

/**
 * The lifting guideline for a number of people: the NIOSH limit of one person, times the team share.
 *
 * Formula: RWL = 23 kg HM VM DM AM FM CM for each, times 1, 2 x 2/3 or 3 x 1/2. What the author did not give counts at its best value (multiplier 1).
 * Units: SI -> kg. Throws RangeError for a negative figure or a number of people below 1. Not valid for what {@link NIOSH_NOT_FOR} lists.
 * Source: {@link NIOSH_SOURCE}; {@link TEAM_SOURCE}. The HSE factors were published with the HSE base; with the lower NIOSH base the result is the
 * stricter one.
 */
export function liftLimit(
  people: number,
  situation: LiftSituation = {},
  constants: NioshConstants = "metric",
): LiftLimit {
  const best: Lift =
    constants === "metric"
      ? { reach: 0.25, height: 0.75, travel: 0.25, twist: 0, perMinute: 0.2, duration: "short", coupling: "good" }
      : { reach: 0.254, height: 0.762, travel: 0.254, twist: 0, perMinute: 0.2, duration: "short", coupling: "good" };
  const given = (Object.keys(best) as (keyof Lift)[]).filter((key) => situation[key] !== undefined);
  const multipliers = liftMultipliers({ ...best, ...defined(situation) }, constants);
  const eachAlone = weightLimitFrom(multipliers, constants);
  const team = teamLimit(people, eachAlone);
  const m = multipliers;
  const product = [m.horizontal, m.vertical, m.distance, m.asymmetry, m.frequency, m.coupling].map(round).join(" x ");
  const steps = [
    `One person: ${round(loadConstant(constants))} kg x ${product} (HM VM DM AM FM CM) = ${round(eachAlone)} kg`,
  ];
  if (team.counted > 1) {
    const who = people > 3 ? `${people} people, reckoned as 3` : `${people} people`;
    steps.push(
      `${who}: ${team.counted} x ${round(eachAlone)} kg x ${team.counted === 2 ? "2/3" : "1/2"} = ${round(team.kilograms)} kg`,
    );
  }
  const atBest = "taken at its best, so that the true guideline can only be lower";
  const assumed =
    given.length === 0
      ? `${atBest}: ${ONE_PERSON_BASIS}`
      : given.length < Object.keys(best).length
        ? `what is not given is ${atBest}`
        : "as given";
  return {
    kilograms: team.kilograms,
    eachAlone,
    people,
    counted: team.counted,
    share: team.share,
    multipliers,
    basis: people > 3 ? `${assumed}; ${team.basis}` : assumed,
    formula: team.counted === 1 ? "RWL = LC HM VM DM AM FM CM" : "limit = n x share x RWL, RWL = LC HM VM DM AM FM CM",
    steps,
    source: team.counted === 1 ? NIOSH_SOURCE : `${NIOSH_SOURCE}; ${TEAM_SOURCE}`,
  };
}

/** Leaves out what is undefined, so that it cannot stand over a default. */
function defined(situation: LiftSituation): LiftSituation {
  return Object.fromEntries(Object.entries(situation).filter(([, value]) => value !== undefined));
}

function round(value: number): string {
  return String(Number(value.toPrecision(4)));
}
