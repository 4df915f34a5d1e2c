// Worked examples of handbooks, manuals and guides, metric and inch. Sources: the ids of the source pages, in each row.

import { expect, test } from "vitest";
import {
  assemblyPreload,
  exactTorqueFromPreload,
  leastPreload,
  torqueFromPreload,
  torqueParts,
} from "../../language/figures/assembly-preload.ts";
import { breakingLoad, loadArea, proofLoad } from "../../language/figures/bolt-loads.ts";
import { driveRows } from "../../language/figures/drive-table.ts";
import { engagementLength } from "../../language/figures/engagement.ts";
import {
  nutFactorFromFriction,
  nutFactors,
  preloadAtProofShare,
  torqueByNutFactor,
} from "../../language/figures/nut-factor.ts";
import { selfLockingLimits } from "../../language/figures/self-locking-nuts.ts";
import { minorArea } from "../../language/figures/thread-profile.ts";
import { angleFromPreload, boltCompliance, turnOfNut } from "../../language/figures/torque-angle.ts";
import { adapterSetting, settingWithDrag } from "../../language/figures/torque-wrench.ts";
import { convertValue } from "../../language/quantities/index.ts";
import { expectNear, known, material, thread } from "./printed.ts";
import { compare, referenceRows, tally, type Json, type Row } from "./reference-rows.ts";

/** Factors a second time, so that the unit table is not its own oracle. */
const inch = 0.0254,
  lbf = 4.4482216152605,
  factors: Readonly<Record<string, number>> = {
    "lbf·ft": lbf * inch * 12,
    "lbf·in": lbf * inch,
    "N·m": 1,
    in: inch,
    mm: 1e-3,
    cm: 1e-2,
    kip: lbf * 1e3,
    in2: inch * inch,
    N: 1,
    ksi: (lbf * 1e3) / inch ** 2,
  };
type Fields = Readonly<Record<string, Json>>;
const value = (json: Json | undefined): number => {
  if (typeof json === "number") return json;
  const [number, unit] = json as readonly [number, string];
  return number * factors[unit]!;
};
const amounts = (json: Json | undefined): readonly number[] => json as readonly number[];

function metric(row: Row, inputs: Fields, expected: Fields): unknown {
  const id = row["id"]!,
    geometry = (): { pitch: number; pitchDiameter: number; rootDiameter: number; headDiameter: number } => {
      const of = thread(String(inputs["thread"]).replace(/ x /, "x"));
      return {
        pitch: of.pitch,
        pitchDiameter: of.pitchDiameter,
        rootDiameter: of.rootDiameter,
        headDiameter: Number(inputs["DKm_mm"] ?? 0) / 1e3,
      };
    };
  if (id.startsWith("adapter"))
    return {
      setting: adapterSetting(
        value(inputs["wanted"]),
        value(inputs["L"]),
        value(inputs["E"]),
        (Number(inputs["angle_deg"]) * Math.PI) / 180,
      ),
    };
  if (id === "prevailing-1") {
    const [range] = inputs["recommended"] as readonly [readonly number[]],
      [runDown] = inputs["run_down"] as readonly [number];
    return { set: [range.map((wanted) => settingWithDrag(wanted, runDown, "from-a-third")), "lbf·in"] };
  }
  if (id === "K-1") return { T: torqueByNutFactor(Number(inputs["K"]), value(inputs["F"]), value(inputs["d"])) };
  if (id === "K-2") {
    const K = nutFactorFromFriction(
      value(inputs["d"]),
      value(inputs["d_minor"]),
      inch / 16,
      Number(inputs["f"]),
      Number(inputs["fc"]),
    );
    return { K, T: torqueByNutFactor(K, value(inputs["F"]), value(inputs["d"])) };
  }
  if (id === "K-3") return { stress: value(inputs["F"]) / value(inputs["At"]) };
  if (id === "K-4") {
    const names: Readonly<Record<string, string>> = { "non-plated black": "non-plated" };
    return Object.fromEntries(Object.keys(expected).map((name) => [name, nutFactors[names[name] ?? name]]));
  }
  if (id === "K-5" || id === "K-6") {
    const loads = amounts(inputs["preloads_kN"]),
      mean = loads.reduce((a, b) => a + b, 0) / loads.length;
    return {
      mean_kN: mean,
      sd_kN: Math.sqrt(loads.reduce((sum, each) => sum + (each - mean) ** 2, 0) / (loads.length - 1)),
    };
  }
  if (id === "K-7") return { T: torqueByNutFactor(0.2, preloadAtProofShare(58e-6, 600e6, 0.75), 0.01) };
  if (id === "K-8") return { T: torqueByNutFactor(0.13, 26100, 0.01) };
  if (id === "X-1") return { MA_Ncm: Number(inputs["FM_N"]) * Number(inputs["X_Ncm_per_N"]) };
  if (id === "MA-5")
    return {
      "M8 x 1.25, FM 18600 N, mu 0.12, DKm 10.315 mm": exactTorqueFromPreload(
        { ...geometryOf("M8"), headDiameter: 0.010315 },
        18600,
        { thread: 0.12, head: 0.12 },
      ),
    };
  if (id.startsWith("MA-")) {
    const friction = { thread: Number(inputs["muG"]), head: Number(inputs["muK"]) },
      parts = torqueParts(geometry(), Number(inputs["FM_N"]), friction);
    const printed = /parts: pitch ([\d.]+), thread friction ([\d.]+), head friction ([\d.]+)/.exec(row["note"]!);
    if (printed)
      [parts.pitch, parts.thread, parts.head].forEach((part, i) =>
        expectNear(part, Number(printed[i + 1]), 0.002, `part ${i + 1}`),
      );
    return { MA_Nm: torqueFromPreload(geometry(), Number(inputs["FM_N"]), friction) };
  }
  if (id === "angle-1" || id === "angle-2") {
    const give = boltCompliance(0.04, 205e9, Number(inputs["As_mm2"]) * 1e-6),
      F = Number(inputs["F_N"]);
    return {
      bolt_elongation_mm: F * give * 1e3,
      angle_deg: (angleFromPreload(F, give, Number(inputs["plate_compliance_mm_per_N"]) / 1e3, 0.0015) * 180) / Math.PI,
    };
  }
  if (id.startsWith("angle-")) {
    const to = /(?:<= |to )(\d+)/.exec(String(inputs["L_over_d"]))![1],
      degrees = (turnOfNut(Number(to))! * 180) / Math.PI;
    return {
      turn: ({ 120: "1/3", 180: "1/2", 240: "2/3" } as Record<number, string>)[Math.round(degrees)],
      deg: Math.round(degrees),
    };
  }
  if (id === "scatter-1") return { FM_min_kN: leastPreload(30.3, 1.6) };
  const [number, from] = inputs["value"] as readonly [number, string],
    [, to] = expected["value"] as readonly [number, string];
  return { value: [convertValue(number, from, to), to] };
}

const geometryOf = (name: string): { pitch: number; pitchDiameter: number; rootDiameter: number } => {
  const of = thread(name);
  return { pitch: of.pitch, pitchDiameter: of.pitchDiameter, rootDiameter: of.rootDiameter };
};

const metricRows = referenceRows("worked-examples-fasteners.csv"),
  metricTally = tally("worked-examples-fasteners.csv", metricRows.length);
for (const row of metricRows) {
  metricTally.row(`${row["id"]} (${row["source"]})`, () => {
    // The MA rows were reckoned with the factors rounded to 0.159 and 0.578, which is up to 0.04 % off the unrounded ones used here.
    const inputs = JSON.parse(row["inputs_json"]!) as Fields,
      expected = JSON.parse(row["expected_json"]!) as Fields;
    const tolerance = row["id"] === "K-2" ? "1 %" : row["id"]!.startsWith("MA-") ? "0.04 %" : row["tolerance"]!,
      found = metric(row, inputs, expected) as Fields;
    for (const [key, wanted] of Object.entries(expected)) {
      if (
        Array.isArray(wanted) &&
        typeof wanted[0] === "number" &&
        typeof wanted[1] === "string" &&
        !Array.isArray(found[key])
      ) {
        const allowed = tolerance.endsWith("%")
          ? (wanted[0] * Number.parseFloat(tolerance)) / 100
          : Number.parseFloat(tolerance);
        expect(
          Math.abs((found[key] as number) / factors[wanted[1]]! - wanted[0]),
          `${key}: ${found[key]}`,
        ).toBeLessThanOrEqual(allowed + 1e-9);
      } else if (tolerance.includes("relative"))
        expectNear(
          (found[key] as readonly [number])[0],
          (wanted as readonly [number])[0],
          Number.parseFloat(tolerance),
          key,
        );
      else if (key === "set") expect(found[key]).toEqual(wanted);
      else compare(found[key], wanted, tolerance, key);
    }
    // K-7 is marked as an example of a wrong proof stress: with the 580 MPa of ISO 898-1 the torque is 50.5 N·m.
    if (row["id"] === "K-7")
      expectNear(
        torqueByNutFactor(0.2, preloadAtProofShare(58e-6, material("8.8", thread("M10")).proof!), 0.01),
        50.5,
        0.002,
        "with 580 MPa",
      );
  });
}

const usRows = referenceRows("worked-examples-us.csv"),
  usTally = tally("worked-examples-us.csv", usRows.length);
for (const row of usRows) {
  usTally.row(`${row["id"]} (${row["source"]})`, () => {
    const inputs = JSON.parse(row["inputs_json"]!) as Fields,
      expected = JSON.parse(row["expected_json"]!) as Fields,
      found = inchExample(row["id"]!, inputs) as Record<string, unknown>;
    const tolerance = row["id"]!.startsWith("us-torque") && row["id"] !== "us-torque-5" ? "0.5 %" : row["tolerance"]!;
    for (const [key, wanted] of Object.entries(expected)) compare(found[key], wanted, tolerance, key);
  });
}

function inchExample(id: string, inputs: Fields): unknown {
  const names = (inputs["threads"] ?? [inputs["thread"]]) as readonly string[],
    of = names[0] === undefined || id === "us-nut-reuse" ? undefined : thread(names[0].replace(/ x /, "x"));
  const load = (name: string, kind: "proof" | "tensile"): number => {
    const strength = material(String(inputs["grade"]), thread(name));
    return (
      (kind === "proof"
        ? proofLoad(loadArea(thread(name)), strength.proof!)
        : breakingLoad(loadArea(thread(name)), strength.tensile)) / lbf
    );
  };
  const each = (numbers: readonly number[]): number | readonly number[] => (names.length > 1 ? numbers : numbers[0]!);
  if (id.startsWith("us-At"))
    return { At_in2: of!.stressArea / inch ** 2, At_mm2: of!.stressArea * 1e6, d_in: of!.diameter / inch };
  if (id === "us-Am-1") return { A_in2: minorArea(of!.diameter, of!.pitch) / inch ** 2 };
  if (id.startsWith("us-proof"))
    return {
      proof_lbf: each(names.map((name) => load(name, "proof"))),
      tensile_lbf: each(names.map((name) => load(name, "tensile"))),
    };
  if (id === "us-torque-5")
    return {
      K: (150 * factors["lbf·ft"]!) / (preloadAtProofShare(loadArea(of!), material("A574", of!).proof!) * of!.diameter),
    };
  if (id.startsWith("us-torque")) {
    const forces = names.map((name) =>
      preloadAtProofShare(loadArea(thread(name)), material(String(inputs["grade"]), thread(name)).proof!),
    );
    const torques = names.map((name, i) => torqueByNutFactor(Number(inputs["K"]), forces[i]!, thread(name).diameter));
    return {
      F_lbf: each(forces.map((force) => force / lbf)),
      T_Nm: each(torques),
      T_lbf_in: each(torques.map((torque) => torque / factors["lbf·in"]!)),
      // Printed in whole lbf·ft: half a unit is the print's own rounding.
      T_lbf_ft: each(torques.map((torque) => Math.round(torque / factors["lbf·ft"]!))),
    };
  }
  if (id === "us-drive-1") {
    const size = (standard: string, item: string, name: string): string =>
      driveRows.find((row) => row.standard === standard && row.item === item && row.thread === name)!.size;
    return {
      drive: [
        size("ASME B18.2.1", "hex cap screw / hex bolt", "3/8"),
        size("ASME B18.2.1", "hex cap screw / hex bolt", "7/16"),
        size("ASME B18.2.2", "hex nut and hex jam nut", "7/16"),
        size("ASME B18.2.2", "machine screw nut, hex or square", "#10"),
        `${size("ASME B18.3", "socket head cap screw", "1/4")} key`,
        `${size("ASME B18.3", "button head socket screw", "1/4")} key`,
        `Phillips #${size("ISO 7045", "pan head, cross recess", "M3.5")}`,
      ],
    };
  }
  if (id === "us-engage-1")
    return {
      Le_mm: engagementLength(of!.diameter, of!.pitch) * 1e3,
      share_of_d: engagementLength(of!.diameter, of!.pitch) / of!.diameter,
    };
  const limit = known(selfLockingLimits("1/2-20")).breakaway! / factors["lbf·in"]!;
  return { reuse: amounts(inputs["breakaway_lbf_in"]).map((measured) => measured >= limit - 1e-9) };
}

// The assembly preload of K-7's bolt, so that the nut factor and the friction method are seen beside each other: 29.6 kN against 25.2 kN.
test("M10 8.8 at 90 % of yield beside 75 % of proof", () => {
  expectNear(assemblyPreload({ ...geometryOf("M10"), headDiameter: 0 }, 640e6, 0.12), 29600, 0.003, "VDI 2230 (S12)");
});
