// Every worked example of lifting-examples.csv: NIOSH 94-110 (H01), CCOHS pages (H11), a solved exercise (H12), team handling (H04), HSE guide (H05);
// sources in tests/reference/sources-hazards.md. Worksheet fields are compared with rounded multipliers, as the worksheets have them.

import { expect } from "vitest";
import { filterWeight } from "../../language/figures/handling-filter.ts";
import { teamLimit } from "../../language/figures/lift-limit.ts";
import {
  compositeLiftingIndex,
  liftDuration,
  liftMultipliers,
  liftingIndex,
  recommendedWeightLimit,
  weightLimitFrom,
  type LiftMultipliers,
} from "../../language/figures/niosh-lift.ts";
import {
  adjustedFrequency,
  frequencyMultiplier,
  type Coupling,
  type LiftDuration,
  type NioshConstants,
} from "../../language/figures/niosh-multipliers.ts";
import { compare, halfUp, referenceRows, si, tally, type Json } from "./reference-rows.ts";

type Inputs = { readonly [key: string]: Json };
const setOf = (value: Json | undefined): NioshConstants =>
  JSON.stringify(value).includes('"in"') || JSON.stringify(value).includes('"lb"') ? "us" : "metric";

/** The multipliers of the equation under the names of the worksheets. */
const fields = {
  HM: "horizontal",
  VM: "vertical",
  DM: "distance",
  AM: "asymmetry",
  FM: "frequency",
  CM: "coupling",
} as const;

/** Table values of the manual that are not its rounded formula: H 23 in is printed .44 (sources-hazards.md, disagreement 1). */
const misprint = (name: string, reach: Json | undefined): boolean =>
  name === "HM" && JSON.stringify(reach) === '[23,"in"]';

function niosh(of: Inputs, expected: Inputs, tolerance: string, id: string): void {
  const set = setOf(of["H"]);
  const lift = {
    reach: si(of["H"]),
    height: si(of["V"]),
    travel: si(of["D"]),
    twist: si(of["A"]),
    perMinute: si(of["F_per_min"]),
    duration: of["duration"] as LiftDuration,
    coupling: of["coupling"] as Coupling,
    ...(of["V_origin"] === undefined ? {} : { originHeight: si(of["V_origin"]) }),
  };
  const multipliers = liftMultipliers(lift, set);
  const limit = recommendedWeightLimit(lift, set);
  const printed: Record<string, number> = { ...multipliers };
  for (const [name, field] of Object.entries(fields)) {
    const value = expected[name];
    if (value === undefined) continue;
    printed[field] = si(value);
    if (misprint(name, of["H"])) expect(halfUp(multipliers[field], 2)).not.toBe(value);
    else expect(halfUp(multipliers[field], 2), `${id}.${name}`).toBe(value);
  }
  for (const name of ["RWL", "LI"] as const) {
    if (expected[name] !== undefined)
      compare(name === "RWL" ? limit : liftingIndex(si(of["L"]), limit), expected[name], tolerance, `${id}.${name}`);
  }
  // The worksheets multiply rounded multipliers and print one place: half a unit of that place.
  const worksheet = weightLimitFrom(printed as unknown as LiftMultipliers, set);
  if (expected["RWL_worksheet"] !== undefined)
    compare(worksheet, expected["RWL_worksheet"], "0.05", `${id}.RWL_worksheet`);
  if (expected["LI_worksheet"] !== undefined)
    compare(liftingIndex(si(of["L"]), worksheet), expected["LI_worksheet"], "0.05", `${id}.LI_worksheet`);
  if (limit === 0) expect(liftingIndex(10, limit)).toBeUndefined();
}

const relations: Readonly<Record<string, (inputs: Inputs) => object>> = {
  "niosh-from-multipliers": (of) => {
    const m = Object.fromEntries(
      Object.entries(fields).map(([name, field]) => [field, si(of[name])]),
    ) as unknown as LiftMultipliers;
    return { RWL: weightLimitFrom(m, setOf(of["unit"])) };
  },
  "niosh-cli": (of) => {
    const tasks = of["tasks"] as readonly Inputs[];
    const { index, order } = compositeLiftingIndex(
      tasks.map((task) => ({
        name: String(task["id"]),
        load: si([si(task["L"]), "lb"]),
        perMinute: si(task["F"]),
        frequencyIndependentLimit: si([si(task["FIRWL"]), "lb"]),
      })),
      of["duration"] as LiftDuration,
      "us",
    );
    return { CLI: index, order: order.map((name) => (typeof tasks[0]!["id"] === "number" ? Number(name) : name)) };
  },
  "niosh-frequency-adjustment": (of) => ({ F: adjustedFrequency(si(of["rate_per_min"]), si(of["work_min_in_15"])) }),
  "niosh-frequency-multiplier": (of) => ({
    FM: frequencyMultiplier(si(of["F_per_min"]), of["duration"] as LiftDuration, si(of["V"]), setOf(of["V"])),
  }),
  "niosh-duration": (of) => ({
    duration: liftDuration(
      (of["pattern"] as readonly (readonly Json[])[]).map(([kind, value, unit]) => ({
        kind: kind as "work" | "recovery",
        seconds: si([value!, unit!]),
      })),
    ),
  }),
  "team-lift": (of) => {
    const each = of["individual_kg"] as readonly number[];
    return { capacity: teamLimit(each.length, each).kilograms };
  },
  "hse-lift-filter": (of) => ({
    limit: filterWeight(si(of["base_kg"]), si(of["per_min"]), (si(of["twist_deg"]) * Math.PI) / 180),
  }),
};

/** The four rules of the duration row, each tried at its edge. */
function durationRules(): void {
  const h = 3600;
  const pattern = (...parts: readonly (readonly ["work" | "recovery", number])[]) =>
    liftDuration(parts.map(([kind, hours]) => ({ kind, seconds: hours * h })));
  expect(pattern(["work", 1], ["recovery", 1], ["work", 1])).toBe("short");
  expect(pattern(["work", 1], ["recovery", 0.99], ["work", 1])).toBe("moderate");
  expect(pattern(["work", 2], ["recovery", 0.6], ["work", 2])).toBe("moderate");
  expect(pattern(["work", 2], ["recovery", 0.59], ["work", 2])).toBe("long");
  expect(pattern(["work", 8])).toBe("long");
  expect(pattern(["work", 8.1])).toBeUndefined();
}

const file = "lifting-examples.csv";
const rows = referenceRows(file);
const count = tally(file, rows.length);
for (const row of rows) {
  const id = row["id"]!;
  const expected = JSON.parse(row["expected_json"]!) as Inputs;
  const inputs = JSON.parse(row["inputs_json"]!) as Inputs;
  count.row(id, () => {
    if (row["relation"] === "niosh") return niosh(inputs, expected, row["tolerance"]!, id);
    if (row["relation"] === "niosh-duration-rule") return durationRules();
    const relation = relations[row["relation"]!];
    if (relation === undefined) throw new Error(`no check for ${row["relation"]}`);
    compare(relation(inputs), expected, row["tolerance"]!, id);
    // Page 16 of the manual prints 3.4 for 10 x 5 / 15: a misprint.
    if (id === "niosh-freq-adjust-2") expect(halfUp(adjustedFrequency(10, 5), 1)).not.toBe(3.4);
  });
}
