// Every row of worked-examples-times.csv: measured strips (T30, T56), worksheets (T31, T32), motions (T33), EU and French indices (T40 to T42, T54), step
// counts (T47), critical paths (T52, T53); sources in tests/reference/sources-times.md, rules in tests/reference/disassembly-scores.md.

import { expect } from "vitest";
import { criticalPath, type PathTask } from "../../language/figures/critical-path.ts";
import {
  EU_PART_WEIGHTS,
  FRENCH_COEFFICIENTS,
  countSteps,
  depthPoints,
  euClass,
  euIndex,
  frenchCriterion,
  weightedPoints,
  type CountedAct,
} from "../../language/figures/disassembly-scores.ts";
import {
  MOTIONS,
  MOVE,
  REACH,
  TMU_SECONDS,
  TURN,
  TURN_DEGREES,
  motionTime,
  moveWithWeight,
} from "../../language/figures/motion-times.ts";
import {
  assemblyEfficiency,
  assemblyTime,
  busyShare,
  lineTime,
  spread,
  workCost,
} from "../../language/figures/work-time.ts";
import { compare, halfUp, referenceRows, si, tally, type Json } from "./reference-rows.ts";

type Inputs = { readonly [key: string]: Json };
const sum = (values: readonly number[]): number => values.reduce((total, one) => total + one, 0);
const entries = (value: Json | undefined): readonly (readonly [string, Json])[] => Object.entries(value as Inputs);
const list = (value: Json | undefined): readonly Inputs[] => value as readonly Inputs[];
const steps = (value: Json | undefined): readonly string[] => value as readonly string[];
/** A total of work done one after the other, by the critical path of a chain, so that the planning sum is tried and not the test's own. */
const chain = (times: readonly number[]): number =>
  criticalPath(
    times.map((time, at) => ({
      name: String(at),
      time,
      after: at === 0 ? [] : [String(at - 1)],
    })),
  )!.total;

const line = (of: Inputs) => ({
  count: si(of["n"]),
  toolSeconds: si(of["tool_s"]),
  removeSeconds: si(of["remove_s"]),
  setAsideSeconds: si(of["set_aside_s"]),
});
const part = (of: Inputs) => ({
  count: si(of["n"]),
  handlingSeconds: si(of["handling_s"]),
  insertionSeconds: si(of["insertion_s"]),
});
const motion = (action: string): number => MOTIONS.find((one) => one.action === action)!.tmu;

/** Words of the two step-counting examples as acts. */
function act(words: string): CountedAct {
  if (words.startsWith("pull the mains")) return "isolate mains";
  if (words.startsWith("take")) return "take first tool";
  if (words.startsWith("change")) return "change tool";
  if (words.startsWith("undo")) return "fastener out";
  if (words.startsWith("unplug")) return "unplug";
  return words.startsWith("lay") ? "lay tool down" : "part off";
}

const byId: Readonly<Record<string, (of: Inputs, expected: Inputs) => object>> = {
  "lf-02-util": (of) => {
    const shares = (of["busy_s"] as readonly number[]).map((busy) => 100 * busyShare(busy, si(of["shift_min"]) * 60));
    return { percent: shares, mean_percent: spread(shares).mean };
  },
  "lf-strategies": (of) => {
    const times = (tool: string): object =>
      Object.fromEntries(
        entries(of["aims"]).map(([aim, names]) => [
          aim,
          chain(steps(names).map((name) => si((of[tool] as Inputs)[name]))),
        ]),
      );
    return { hand_s: times("mean_s_hand"), cordless_s: times("mean_s_cordless") };
  },
  "dfs-total": (of) => {
    const total = sum(list(of["rows"]).map((row) => lineTime(line(row))));
    return { total_s: total, total_cents: workCost(total, si(of["rate_per_h"])) };
  },
  "dfa-iron-A": (of) => {
    const total = sum(list(of["parts"]).map((one) => assemblyTime(part(one))));
    // The paper prints 204.14 s; its rows are 3.00 s short in two places: a misprint.
    expect(halfUp(total - 204.14, 2)).toBe(3);
    return { total_s: total, efficiency: assemblyEfficiency(si(of["least_parts"]), total) };
  },
  "dfa-piston": (of) => {
    const rows = list(of["parts"]).map((one) => assemblyTime(part(one)));
    const rate = si(of["cents_per_s"]) * 36;
    return {
      row_s: rows,
      row_cents: rows.map((one) => workCost(one, rate)),
      total_s: sum(rows),
      total_cents: workCost(sum(rows), rate),
    };
  },
  "mtm-units": () => ({ s: TMU_SECONDS, min: TMU_SECONDS / 60, h: TMU_SECONDS / 3600 }),
  "mtm-get-put": () => {
    const tmu = motionTime(REACH[1]!, 10)! + motion("grasp G1A") + motionTime(MOVE[1]!, 10)! + motion("release RL1");
    return { TMU: tmu, s: tmu * TMU_SECONDS };
  },
  "mtm-turn-screw": (of) => {
    const half = TURN[0]!.tmu[TURN_DEGREES.indexOf(180)]!;
    const tmu = si(of["turns"]) * (half + motion("grasp G1A") + half + motion("release RL1"));
    return { TMU: tmu, s: tmu * TMU_SECONDS };
  },
  "mtm-weight": () => ({ TMU: moveWithWeight(motionTime(MOVE[2]!, 20)!, 12)!.tmu }),
  "eu-index-1": (of) => {
    const index = euIndex({
      depth: si(of["DD"]),
      fasteners: si(of["F"]),
      tools: si(of["T"]),
      spareParts: 5,
      softwareUpdates: 1,
      information: 5,
    });
    return { R_printed: index, class: euClass(index) };
  },
  "eu-class": (of) => ({ class: (of["R"] as readonly number[]).map(euClass) }),
  "eu-depth-points": (of) => ({ points: (of["steps"] as readonly number[]).map(depthPoints) }),
  "eu-depth-score": (of) => {
    expect(EU_PART_WEIGHTS).toEqual(of["weights"]);
    return {
      DD: weightedPoints(
        entries(of["steps"]).map(([name, count]) => ({
          weight: EU_PART_WEIGHTS[name]!,
          points: depthPoints(si(count)),
        })),
      ),
    };
  },
  "steps-1": (of) => ({ steps: countSteps(steps(of["actions"]).map(act)) }),
  "steps-2": (of) => ({ steps: countSteps(steps(of["actions"]).map(act)) }),
  "cpm-truck": (of) => {
    const path = criticalPath(
      entries(of["task_time_after"]).map(([name, value]): PathTask => ({
        name,
        time: si((value as readonly Json[])[0]),
        after: (value as readonly Json[])[1] as readonly string[],
      })),
    )!;
    // Slack was computed for the source page from the published times.
    expect(Object.fromEntries(["D", "F", "I", "K", "N", "O"].map((name) => [name, path.slack.get(name)]))).toEqual({
      D: 7,
      F: 8,
      I: 7,
      K: 14,
      N: 14,
      O: 18,
    });
    return { total: path.total, critical: path.critical, early_finish: Object.fromEntries(path.earlyFinish) };
  },
  "cpm-small": (of) => {
    const arrows = of["arrows_from_to_time"] as readonly (readonly [number, number, number])[];
    const path = criticalPath(
      arrows.map(([from, to, time], at) => ({
        name: String(at),
        time,
        after: arrows.flatMap(([, end], other) => (end === from ? [String(other)] : [])),
        to,
      })),
    )!;
    const critical = arrows.filter((_, at) => path.slack.get(String(at)) === 0);
    return {
      total: path.total,
      critical: [...critical.map(([from]) => from), critical.at(-1)![1]],
      slack: arrows.map((_, at) => path.slack.get(String(at))!),
    };
  },
  "fr-index-1": (of, expected) => {
    const third = of["criterion_3"] as Inputs;
    const pairs = (criterion: string): readonly (readonly [number, number])[] =>
      of[criterion] as readonly (readonly [number, number])[];
    expect(pairs("criterion_1").map(([, weight]) => weight)).toEqual(FRENCH_COEFFICIENTS.documentation);
    expect(pairs("criterion_2").map(([, weight]) => weight)).toEqual(FRENCH_COEFFICIENTS.disassembly);
    const known = ["3.1", "3.2", "3.3"].map((name) => si((third[name] as readonly Json[])[0]));
    const withBack = frenchCriterion([...known, si(expected["sub_score_3.4"])], FRENCH_COEFFICIENTS.spareParts);
    expect(withBack).toBeCloseTo(si(third["printed"]), 1);
    const without = frenchCriterion([...known, 0], FRENCH_COEFFICIENTS.spareParts);
    return {
      criterion_1: frenchCriterion([7.7], FRENCH_COEFFICIENTS.documentation),
      criterion_2: frenchCriterion([7.8, 10, 10], FRENCH_COEFFICIENTS.disassembly),
      "sub_score_3.4": (si(third["printed"]) - without) / FRENCH_COEFFICIENTS.spareParts[3],
    };
  },
  "lf-two-persons": (of) => {
    const of2 = (tool: string): { one: number; two: number; slack: number } => {
      const tasks = entries(of[tool]).map(([name, time]): PathTask => ({
        name,
        time: si(time),
        after: steps((of["after"] as Inputs)[name]),
      }));
      const path = criticalPath(tasks)!;
      return { one: chain(tasks.map((task) => task.time)), two: path.total, slack: path.slack.get("S6")! };
    };
    const [hand, cordless] = [of2("hand_s"), of2("cordless_s")];
    return {
      hand_one_person_s: hand.one,
      hand_two_persons_s: hand.two,
      hand_slack_S6_s: hand.slack,
      cordless_one_person_s: cordless.one,
      cordless_two_persons_s: cordless.two,
      cordless_slack_S6_s: cordless.slack,
    };
  },
};

const file = "worked-examples-times.csv";
const rows = referenceRows(file);
const count = tally(file, rows.length);
for (const row of rows) {
  const id = row["id"]!;
  const expected = JSON.parse(row["expected_json"]!) as Inputs;
  const inputs = JSON.parse(row["inputs_json"]!) as Inputs;
  if (id === "lf-reach") {
    count.leave(id, "not a published answer: read off four strategies, for planning");
    continue;
  }
  count.row(id, () => {
    const own = byId[id];
    if (own !== undefined)
      return compare(own(inputs, expected), expected, row["tolerance"] === "exact" ? "0" : row["tolerance"]!, id);
    if (inputs["steps_s"] !== undefined) {
      const total = chain(entries(inputs["steps_s"]).map(([, time]) => si(time)));
      compare({ total_s: total }, expected, row["tolerance"]!, id);
      // This order sums to 607 s and is printed 606, one second low: a slip of rounding in the source.
      return id === "lf-02-po05" ? expect(total).toBe(607) : expect(total).toBe(si(expected["total_s"]));
    }
    if (inputs["times_s"] !== undefined) {
      const { mean, deviation } = spread(inputs["times_s"] as readonly number[]);
      return compare({ mean_s: mean, sd_s: deviation }, expected, row["tolerance"]!, id);
    }
    if (id.startsWith("dfs-")) {
      const seconds = lineTime(line(inputs));
      compare(seconds, expected["time_s"]!, "0.05", `${id}.time_s`);
      return compare(workCost(seconds, si(inputs["rate_per_h"])), expected["cents"]!, "0.01", `${id}.cents`);
    }
    throw new Error(`no check for ${id}`);
  });
}
