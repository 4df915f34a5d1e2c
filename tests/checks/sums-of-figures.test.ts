// What stands behind a finding of a figure: its name, its sum, what it rests on, its source; and figures that cannot be meant are never reckoned with.

import { expect, test } from "vitest";
import { modelsIn } from "../../language/assist/models.ts";
import { waitOf } from "../../language/bench/placement.ts";
import { checks } from "../../language/checks/registry.ts";
import { defaultSettings } from "../../language/world/settings.ts";
import { unmarked } from "../support/marked.ts";
import { checkText } from "../support/check-text.ts";

const box = (inside: string): string => `unit box "Box" {
  base foot
  part foot "Foot"
  part lid "Lid" { rests on foot }
  ${inside}
}
`;
const findings = (text: string, settings = defaultSettings) => checkText(text, settings).checked.findings;

test.each([
  ["fastener/torque-over-yield", /^torque at the yield share: FM = /],
  ["fastener/torque-too-low", /^torque at the yield share: FM = /],
  ["fastener/length-implausible", /^length of a screw/],
  ["figure/squeeze", /^squeeze of an O-ring: squeeze = /],
  ["hazard/wait-too-short", /^wait after isolation: t = max/],
  ["lift/over-guideline", /^recommended weight limit: RWL = /],
  ["lift/capacity", /^load on the lifting gear: /],
  ["tool/wrench-range", /^range of a torque wrench: /],
])("%s names its formula and its source, and shows the figure and the limit", (code, formula) => {
  const check = checks.find((each) => each.code === code)!,
    found = findings(unmarked(check.fails)).find((finding) => finding.code === code)!,
    because = (found.because ?? []).map(({ says }) => says);
  expect(
    because.some((says) => formula.test(says)),
    because.join("\n"),
  ).toBe(true);
  expect(because.some((says) => says.startsWith("source: "))).toBe(true);
  expect(found.says.match(/\d/g)!.length).toBeGreaterThan(0);
});

test("a coefficient of friction that no joint has is asked about, and no torque is reckoned with it", () => {
  for (const friction of ["0", "99", "0.03", "0.41"]) {
    const found = findings(
      box(
        `fastener screws screw "Screws" { count 4  size M6x20  class 8.8  friction ${friction}  torque 24 N·m  joins lid to foot }`,
      ),
    ).map((finding) => finding.code);
    expect(found, friction).toContain("figure/implausible");
    expect(found, friction).not.toContain("fastener/torque-over-yield");
  }
});

test("friction of a fastener is used for inch threads, too", () => {
  const codes = (friction: string): readonly string[] =>
    findings(
      box(
        `fastener screws screw "Screws" { count 4  size 3/8-16 UNC x 1 in  grade 5  ${friction}  torque 48 N·m  joins lid to foot }`,
      ),
    ).map((finding) => finding.code);
  expect(codes("friction 0.15")).not.toContain("fastener/torque-over-yield");
  expect(codes("friction 0.08")).toContain("fastener/torque-over-yield");
});

test("a share of low torques that the project sets is the share that is printed", () => {
  const text = box(
    `fastener screws screw "Screws" { count 4  size M12x40  class 8.8  torque 20 N·m  joins lid to foot }`,
  );
  const low = (assumptions: Record<string, number | string>) =>
    findings(text, { ...defaultSettings, assumptions }).find((finding) => finding.code === "fastener/torque-too-low");
  expect(low({})).toBeUndefined();
  expect(low({ "least-torque-share": 0.3 })!.says).toContain("30 % of what");
  expect(low({ "least-torque-share": 0.3, joint: "soft" })).toBeUndefined();
});

test("a charge of no volts, no capacitance or no bleeder is asked about: it would silence the wait", () => {
  const found = findings(
    box(`hazard charge electrical danger "Capacitors" {
    on lid  source capacitor  voltage 0 V dc  capacitance 0 uF  bleeder 0 ohm
    precaution isolate "Open."
    precaution lock-out "Lock it." wait 1 min
    precaution prove-dead "Test." at most 50 V dc
  }`),
  ).filter((finding) => finding.code === "figure/implausible");
  expect(found.map((finding) => finding.says.replace(/ cannot be meant.*/, ""))).toEqual(["0 V dc", "0 uF", "0 ohm"]);
});

test("a charge below every limit is told no wait of 0 s", () => {
  const { checked } = checkText(
    box(`hazard charge electrical danger "Capacitors" {
    on lid  source capacitor  voltage 24 V dc  capacitance 100 uF  bleeder 10 kohm
    precaution isolate "Open."
    precaution lock-out "Lock it." wait 0 s
    precaution prove-dead "Test." at most 50 V dc
  }`),
  );
  const hazards = modelsIn(checked, [...checked.project.files.keys()][0]!).flatMap((model) => model.hazards);
  expect(hazards.length).toBeGreaterThan(0);
  for (const hazard of hazards)
    for (const precaution of hazard.precautions) expect(waitOf(hazard, precaution)).toBeUndefined();
});

test("a groove given as a range is asked about at both of its ends", () => {
  const says = (groove: string): string | undefined =>
    findings(box(`part ring o-ring "Ring" { size 183.82 x 2.62 mm  groove ${groove}  between lid and foot }`)).find(
      (finding) => finding.code === "figure/squeeze",
    )?.says;
  expect(says("1.0..2.0 mm")).toContain("more than the usual");
  expect(says("2.0..2.6 mm")).toContain("less than the usual");
  expect(says("1.95..2.05 mm")).toBeUndefined();
});
