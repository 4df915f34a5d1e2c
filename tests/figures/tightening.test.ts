// Preload and torque against published tables of the same method, and the laws that the relation must keep. Sources: S09 to S16, T07 to T25.

import fc from "fast-check";
import { expect, test } from "vitest";
import {
  assemblyPreload,
  preloadFromTorque,
  torqueFromPreload,
  yieldUtilisation,
  type TighteningGeometry,
} from "../../language/figures/assembly-preload.ts";
import { assumptionsFrom, assumptionEntries, defaultAssumptions } from "../../language/figures/assumptions.ts";
import { loadArea } from "../../language/figures/bolt-loads.ts";
import { bearingArea, bearingOf, bearingPressure } from "../../language/figures/head-geometry.ts";
import {
  nutFactorFromFriction,
  nutFactors,
  preloadAtProofShare,
  preloadByNutFactor,
  torqueByNutFactor,
} from "../../language/figures/nut-factor.ts";
import { isFigureError } from "../../language/figures/figure.ts";
import { assessTorque, tighteningCase, torqueAtYieldShare } from "../../language/figures/tightening.ts";
import { coarsePitches } from "../../language/figures/thread-tables.ts";
import { expectNear, halfPlace, known, material, sizeOf, thread } from "./printed.ts";
import { referenceRows, tally } from "./reference-rows.ts";

const published = referenceRows("tightening-torque-published.csv"),
  metricTally = tally("tightening-torque-published.csv", published.length);

published.forEach((row, i) => {
  const name = `${row["thread"]} ${row["class"]} mu ${row["mu_total"]} ${row["edition"]!.slice(0, 24)}, row ${i + 2}`;
  if (row["edition"]!.startsWith("OLDER") || row["class"] === "4.8") {
    // Not check values of the method: an older handbook 4 to 7 % lower, and a page whose 4.8 column does not fit the 320 MPa that it states.
    // The gap to this method, at the page's own 320 MPa, is held to the one on record.
    metricTally.row(`${name} (disagreement)`, () => {
      const off = (Number(row["MA_Nm"]) / reckoned(row, row["class"] === "4.8" ? 320e6 : undefined).torque - 1) * 100;
      expect(Math.abs(off - Number(row["MA_dev_pct"])), `${off} %, on record ${row["MA_dev_pct"]} %`).toBeLessThan(0.3);
    });
    return;
  }
  metricTally.row(name, () => {
    const { preload, torque } = reckoned(row),
      isStainless = row["class"]!.startsWith("A-");
    // Published rows round twice (preload, then torque), some to tool settings: coarse FM 0.8 %, fine 0.3 %, MA 2 %, and the print's own rounding;
    // stainless 2.1 %, and prints of S10 that are cut off rather than rounded (3.6 for 3.68, 2.6 for 2.66).
    if (row["FM_kN"] !== "")
      withinPrint(
        preload / 1e3,
        row["FM_kN"]!,
        isStainless ? 0.021 : row["edition"]!.includes("fine") ? 0.004 : 0.009,
        `preload (${row["FM_status"]} ${row["FM_source"]})`,
      );
    if (row["MA_Nm"] === "") return;
    // Two prints cut off instead of rounding: 1.6 for 1.69 and 39 for 39.86 (another source gives 1.72 and 40).
    if (row["note"]!.includes("looks truncated"))
      expect(Math.floor(torque * (row["MA_Nm"]!.includes(".") ? 10 : 1)) / (row["MA_Nm"]!.includes(".") ? 10 : 1)).toBe(
        Number(row["MA_Nm"]),
      );
    else
      withinPrint(
        torque,
        row["MA_Nm"]!,
        isStainless ? 0.021 : 0.017,
        `torque (${row["MA_status"]} ${row["MA_source"]})`,
      );
  });
});

function reckoned(
  row: Readonly<Record<string, string>>,
  yieldStress?: number,
): { readonly preload: number; readonly torque: number } {
  const mu = Number(row["mu_total"]),
    className = row["class"]!.startsWith("A-") ? row["class"]!.replace("A-", "A2-") : row["class"]!;
  const bolt = known(
    tighteningCase(
      { size: sizeOf(row["thread"]!), className, frictionThread: mu, frictionHead: mu },
      defaultAssumptions,
    ),
  );
  return torqueAtYieldShare(yieldStress === undefined ? bolt : { ...bolt, yieldStress }, defaultAssumptions);
}

function withinPrint(value: number, print: string, share: number, what: string): void {
  const off = Math.abs(value - Number(print)),
    cut = what.includes("S10") && value > Number(print) ? 2 : 1,
    allowed = Math.max(cut * halfPlace(print), share * Number(print));
  expect(off, `${what}: ${value}, printed ${print}`).toBeLessThanOrEqual(allowed * (1 + 1e-9));
}

const us = referenceRows("tightening-torque-us.csv"),
  usTally = tally("tightening-torque-us.csv", us.length),
  lbf = 4.4482216152605,
  inch = 0.0254;
us.forEach((row, i) => {
  const name = `${row["thread"]} grade ${row["grade"]} K ${row["K"]} ${row["source"]}, row ${i + 2}`,
    note = row["note"]!;
  if (row["preload_basis"] === "none stated")
    return usTally.leave(name, "no basis is stated, so that no formula answers to it");
  const toSi = row["unit"] === "lbf·ft" ? lbf * inch * 12 : lbf * inch;
  usTally.row(name, () => {
    // Socket screws printed under 1-12 with the area of 1-14 (T14).
    const size = note.includes("value fits the 1-14 area") ? "1-14" : row["thread"]!,
      of = thread(size),
      strength = material(row["grade"]!, of);
    const stress = /yield \((\d+) ksi\)/.exec(row["preload_basis"]!)?.[1],
      base = stress === undefined ? strength.proof! * 0.75 : Number(stress) * 6.894757293168361e6;
    const preload = stress === undefined ? preloadAtProofShare(loadArea(of), strength.proof!) : loadArea(of) * base;
    if (row["clamp_lbf_published"] !== "")
      expectNear(preload / lbf, Number(row["clamp_lbf_published"]), 0.006, "clamp load");
    if (row["K"] === "") {
      const implied = Number(/implied K at 75 % of proof load: ([\d.]+)/.exec(note)![1]);
      return expectNear(
        (Number(row["torque_published"]) * toSi) / (preload * of.diameter),
        implied,
        0.006,
        "implied K",
      );
    }
    const torque = torqueByNutFactor(Number(row["K"]), preload, of.diameter) / toSi,
      print = row["torque_published"]!;
    if (print.includes("..")) {
      const [low, high] = print.split("..").map(Number) as [number, number];
      return expect(torque >= low && torque <= high, `${torque} in ${print}`).toBe(true);
    }
    if (note.includes("misprint: 395")) return expect(torque).toBeCloseTo(297.2, 0);
    // Rows of an older basis, 2 to 11 % below K = 0.20 (T13): a disagreement between sources. The gap is held to the one on record.
    if (row["source"] === "T13" && Math.abs(Number(row["torque_dev_pct"])) > 1.5) {
      expect(Math.abs((Number(print) / torque - 1) * 100 - Number(row["torque_dev_pct"]))).toBeLessThan(0.1);
      return;
    }
    // Whole lbf·ft times twelve (T14), whole lbf·ft of small screws (T11): the print's own rounding, up to one unit where it was cut off or up.
    const unit =
      row["source"] === "T14" && row["unit"] === "lbf·in"
        ? 12
        : row["source"] === "T11" && Number(print) >= 100
          ? 5
          : 1;
    const allowed = Math.max(
      halfPlace(print) * unit * (row["source"] === "T11" ? 1.06 : 1),
      (row["source"] === "T13" ? 0.0125 : 0.011) * Number(print),
      row["source"] === "T07" ? 0.3 : 0,
    );
    expect(Math.abs(torque - Number(print)), `torque ${torque}, printed ${print} ${row["unit"]}`).toBeLessThanOrEqual(
      allowed * (1 + 1e-6),
    );
  });
});

const anySize = fc.constantFrom(
  ...[...coarsePitches.keys()].filter((d) => d >= 1.6 && d <= 36 && ![1.8, 33].includes(d)).map((d) => `M${d}`),
  "M8x1",
  "M10x1.25",
  "M12x1.25",
  "M24x2",
);
const anyClass = fc.constantFrom("4.6", "5.8", "8.8", "10.9", "12.9"),
  anyFriction = fc.double({ min: 0.04, max: 0.4, noNaN: true });
const runs = { seed: 20, numRuns: 300 } as const;
const geometryOf = (size: string): TighteningGeometry => {
  const of = thread(size);
  return {
    pitch: of.pitch,
    pitchDiameter: of.pitchDiameter,
    rootDiameter: of.rootDiameter,
    headDiameter: bearingOf(of, "hex")!.mean,
  };
};

test("torque to preload to torque comes back", () => {
  fc.assert(
    fc.property(
      anySize,
      anyFriction,
      anyFriction,
      fc.double({ min: 0.1, max: 2000, noNaN: true }),
      (size, muThread, muHead, torque) => {
        const geometry = geometryOf(size),
          friction = { thread: muThread, head: muHead };
        expectNear(
          torqueFromPreload(geometry, preloadFromTorque(geometry, torque, friction), friction),
          torque,
          1e-12,
          "torque",
        );
        expectNear(
          torqueByNutFactor(0.2, preloadByNutFactor(0.2, torque, 0.01), 0.01),
          torque,
          1e-12,
          "torque by nut factor",
        );
      },
    ),
    runs,
  );
});

test("the preload at a share of yield uses that share", () => {
  fc.assert(
    fc.property(anySize, anyFriction, fc.double({ min: 0.3, max: 1, noNaN: true }), (size, mu, share) => {
      const geometry = geometryOf(size);
      expectNear(
        yieldUtilisation(geometry, assemblyPreload(geometry, 640e6, mu, share), 640e6, mu),
        share,
        1e-12,
        "utilisation",
      );
    }),
    runs,
  );
});

test("more friction: more torque for a preload, less preload for a torque, less preload at yield", () => {
  fc.assert(
    fc.property(anySize, anyFriction, fc.double({ min: 0.001, max: 0.2, noNaN: true }), (size, mu, more) => {
      const geometry = geometryOf(size),
        less = { thread: mu, head: mu },
        higher = { thread: mu + more, head: mu + more };
      expect(torqueFromPreload(geometry, 1e4, higher)).toBeGreaterThan(torqueFromPreload(geometry, 1e4, less));
      expect(preloadFromTorque(geometry, 50, higher)).toBeLessThan(preloadFromTorque(geometry, 50, less));
      expect(assemblyPreload(geometry, 640e6, mu + more)).toBeLessThan(assemblyPreload(geometry, 640e6, mu));
    }),
    runs,
  );
});

test("a stronger class takes more torque", () => {
  fc.assert(
    fc.property(anySize, (size) => {
      const limits = ["4.6", "8.8", "10.9", "12.9"].map(
        (className) =>
          torqueAtYieldShare(
            known(tighteningCase({ size: sizeOf(size), className }, defaultAssumptions)),
            defaultAssumptions,
          ).torque,
      );
      expect(limits).toEqual([...limits].sort((a, b) => a - b));
    }),
    runs,
  );
});

test("a torque is judged: over, low, or nothing said", () => {
  const judged = (size: string, className: string, torque: number): unknown =>
    known(assessTorque(torque, { size: sizeOf(size), className }, defaultAssumptions)).verdict;
  expect(judged("M6", "8.8", 24)).toBe("over");
  expect(judged("M6", "8.8", 9)).toBeUndefined();
  expect(judged("M10", "A2-70", 30)).toBeUndefined();
  expect(judged("M10", "8.8", 5)).toBe("low");
  expect(judged("3/8-16 UNC", "5", 80)).toBe("over");
  expect(judged("3/8-16 UNC", "5", 40)).toBeUndefined();
  fc.assert(
    fc.property(anySize, anyClass, fc.double({ min: 1.0001, max: 9, noNaN: true }), (size, className, times) => {
      const { limit } = known(assessTorque(1, { size: sizeOf(size), className }, defaultAssumptions));
      const found = known(assessTorque(limit * times, { size: sizeOf(size), className }, defaultAssumptions));
      expect(found.verdict).toBe("over");
      expect(found.utilisation).toBeGreaterThan(0.9);
      expect(found.assumptions.join(" ")).toContain("friction-thread 0.12");
    }),
    runs,
  );
});

test("the surface decides friction and nut factor unless they are set: Shigley, K 0.20 dry and 0.18 lubricated (Table 8-15)", () => {
  const dry = assumptionsFrom({ surface: "dry" }).assumptions,
    oiled = assumptionsFrom({ surface: "oiled" }).assumptions;
  expect(oiled).toEqual(defaultAssumptions);
  expect([dry["nut-factor"], oiled["nut-factor"]]).toEqual([nutFactors["zinc-plated"], nutFactors["lubricated"]]);
  expect(assumptionsFrom({ surface: "dry", "friction-head": 0.1 }).assumptions).toMatchObject({
    "friction-thread": 0.15,
    "friction-head": 0.1,
  });
  // Shigley's text: K is about 0.20 whenever both coefficients are 0.15, for any size; fine threads come out 5 % lower, at 0.190.
  for (const size of ["1/4-20", "3/8-24", "1/2-13", "3/4-16", "1-8"]) {
    const of = thread(size);
    const factor = nutFactorFromFriction(
      of.diameter,
      of.rootDiameter,
      of.pitch,
      dry["friction-thread"],
      dry["friction-head"],
    );
    expectNear(factor, 0.2, 0.055, size);
  }
  // A dry thread takes more torque to the same preload: by K for inch threads, by friction for metric ones.
  for (const [size, className, share] of [
    ["3/8-16 UNC", "5", 0.2 / 0.18],
    ["M8", "8.8", 1.16],
  ] as const) {
    const limit = (assumptions: typeof dry): number =>
      known(assessTorque(10, { size: sizeOf(size), className }, assumptions)).limit;
    expectNear(limit(dry) / limit(oiled), share, 0.02, size);
  }
  const said = known(assessTorque(10, { size: sizeOf("M8"), className: "8.8" }, dry)).assumptions.join("; ");
  expect(said).toContain("friction-thread 0.15");
  expect(said).toContain("surface dry");
});

test("friction that a fastener states holds for inch threads too: the nut factor behind it (Shigley, Eq. 8-26)", () => {
  const judged = (friction: number): { limit: number; assumptions: readonly string[] } =>
    known(
      assessTorque(
        20,
        { size: sizeOf("3/8-16 UNC"), className: "5", frictionThread: friction, frictionHead: friction },
        defaultAssumptions,
      ),
    );
  const of = thread("3/8-16"),
    load = loadArea(of) * material("5", of).proof!;
  expectNear(judged(0.15).limit, 0.2 * load * of.diameter, 0.03, "K 0.20 at 0.15");
  expect(judged(0.1).limit).toBeLessThan(judged(0.15).limit);
  expect(judged(0.1).assumptions.join(" ")).toContain("from the friction that is given");
});

test("in a soft joint no torque is called low, but one over the limit is asked about", () => {
  const soft = assumptionsFrom({ joint: "soft" }).assumptions;
  const verdict = (torque: number): unknown =>
    known(assessTorque(torque, { size: sizeOf("M10"), className: "8.8" }, soft)).verdict;
  expect(verdict(5)).toBeUndefined();
  expect(verdict(90)).toBe("over");
});

test("a grade without proof stress or a size without bearing is an error, not a number", () => {
  expect(isFigureError(assessTorque(10, { size: sizeOf("3/8-16 UNC"), className: "B7" }, defaultAssumptions))).toBe(
    true,
  );
  expect(isFigureError(assessTorque(10, { size: sizeOf("M64"), className: "8.8" }, defaultAssumptions))).toBe(true);
});

test("pressure under the head: p Ap gives back the preload that a published table stands on (S12)", () => {
  const found = bearingOf(thread("M10"), "hex")!;
  expectNear(
    bearingPressure(29600, found.outer, found.hole) * bearingArea(found.outer, found.hole),
    29600,
    1e-12,
    "preload",
  );
});

test("assumptions come from the settings, and wrong ones are reported while the default stands", () => {
  const { assumptions, problems } = assumptionsFrom({
    "friction-thread": 0.1,
    "yield-share": 3,
    surface: "wet",
    colour: "red",
    joint: "soft",
  });
  expect(assumptions["friction-thread"]).toBe(0.1);
  expect(assumptions["yield-share"]).toBe(0.9);
  expect(assumptions.joint).toBe("soft");
  expect(problems.map((problem) => problem.name)).toEqual(["yield-share", "surface", "colour"]);
  expect(assumptionEntries.map((entry) => entry.name).sort()).toEqual(Object.keys(defaultAssumptions).sort());
});
