// Questions that a workshop asks, as typed, each against a figure that a person works out by hand beside a handbook: the sum stands in the row, in
// plain arithmetic and apart from the code, with the published page that it follows or the value that a handbook prints.

import { expect, test } from "vitest";
import { answerWords, isAnswer } from "../../language/calc/answer.ts";

const { PI, sqrt, log, exp, sin } = Math;
const rad = PI / 180;
const g = 9.80665;

/** VDI 2230 by hand: preload in N and torque in N·m; lengths mm, stress MPa, one coefficient of friction. */
function vdi(d: number, P: number, stress: number, dw: number, dh: number, mu: number): [number, number] {
  const d2 = d - 0.649519 * P,
    d3 = d - 1.226869 * P,
    d0 = (d2 + d3) / 2,
    lever = (3 / 2) * (d2 / d0) * (P / (PI * d2) + 1.155 * mu);
  const force = (0.9 * stress * (PI / 4) * d0 ** 2) / sqrt(1 + 3 * lever ** 2);
  return [force, (force * (0.159155 * P + 0.577 * d2 * mu + ((dw + dh) / 4) * mu)) / 1000];
}
/** Link of a drive at its upper limits: C in F, R in ohm. */
const slow = (C: number, R: number): number => C * 1.2 * R * 1.05;
const at02 = (C: number): number => sqrt(0.4 / (C * 1.2));

type Row = readonly [question: string, name: string, value: number, share: number, source: string];
const rows: readonly Row[] = [
  [
    "torque M5 A2-70",
    "torque at the yield share",
    vdi(5, 0.8, 450, 6.88, 5.5, 0.12)[1],
    0.005,
    "VDI 2230-1, ISO 3506-1: 450 MPa",
  ],
  ["torque M8 8.8", "torque at the yield share", 24.6, 0.01, "VDI 2230-1 Table A1, prints 24.6 N·m at 0.12"],
  ["torque M10 8.8", "torque at the yield share", 48, 0.012, "VDI 2230-1 Table A1, prints 48 N·m at 0.12"],
  [
    "torque M12 10.9",
    "torque at the yield share",
    123,
    0.01,
    "VDI 2230-1 Table A1, prints 123 N·m at 0.12 (from memory)",
  ],
  [
    "torque M10 10.9 head socket-cap",
    "preload",
    vdi(10, 1.5, 940, 15.33, 11, 0.12)[0] / 1000,
    0.003,
    "VDI 2230-1, ISO 4762",
  ],
  [
    "torque M8 8.8 surface dry",
    "torque at the yield share",
    vdi(8, 1.25, 640, 11.63, 9, 0.15)[1],
    0.005,
    "VDI 2230-1 at 0.15",
  ],
  [
    "torque-by-nut-factor 1/4-20 5 surface dry",
    "torque",
    (0.2 * 0.75 * 85000 * 0.0318 * 0.25) / 12,
    0.005,
    "SAE J429 85 ksi, At 0.0318 in², K 0.20: 8.4 lbf·ft; inch tables print 8",
  ],
  [
    "torque-by-nut-factor 1/2-13 8 nut-factor 0.15",
    "torque",
    (0.15 * 0.75 * 120000 * 0.1419 * 0.5) / 12,
    0.005,
    "SAE J429 120 ksi, At 0.1419 in²; inch tables print 80",
  ],
  ["bolt-load M16 8.8", "proof load", 91, 0.002, "ISO 898-1 Table 5, prints 91 000 N"],
  ["bolt-load M20 8.8", "proof load", 147, 0.002, "ISO 898-1 Table 5, prints 147 000 N: the step above M16"],
  ["bolt-load 3/4-10 8", "proof load", 40100, 0.002, "SAE J429 Table 1, prints 40 100 lbf"],
  ["thread M12x1.25", "stress area", 92.1, 0.001, "ISO 898-1 Table 6, prints 92.1 mm²"],
  ["thread 1/2-13", "stress area", 0.1419 * 645.16, 0.001, "ASME B1.1, prints 0.1419 in²"],
  [
    "torque-angle M12 40 kN 60 mm",
    "angle from snug",
    ((40000 * 60) / (205000 * 84.3) / 1.75) * 360,
    0.001,
    "textbook: F L / (E A), 360° a pitch",
  ],
  [
    "torque-angle M10 29.6 kN 40 mm plate-give 0.4",
    "angle from snug",
    26.7,
    0.005,
    "row angle-2 of worked-examples-fasteners.csv: plates that give 0.4 µm a kN",
  ],
  ["adapter 100 N·m 450 mm 60 mm", "setting", (100 * 450) / 510, 1e-9, "TM 9-254: wanted L / (L + E)"],
  ["convert 75 lb-ft to N·m", "value", 75 * 0.3048 * 4.4482216152605, 1e-9, "NIST SP 811: 1 lbf·ft is 1.355 818 N·m"],
  ["convert 12 kgf-m to N·m", "value", 117.6798, 1e-9, "NIST SP 811: 9.806 65 N·m"],
  ["convert 30 psi to bar", "value", 2.0684, 1e-4, "NIST SP 811: 6.894 757 kPa"],
  [
    "sling 500 kg 2 60 deg from horizontal",
    "tension in each leg",
    (500 * g) / 2 / sin(60 * rad) / 1000,
    1e-9,
    "cargo sling tips: factor 1.155",
  ],
  ["sling 500 kg 2 30 deg from horizontal", "as a mass on the leg", 500, 1e-9, "cargo sling tips: factor 2 at 30°"],
  ["sling-limit chain 10 mm 2 45 deg from vertical", "rated limit", 4.25, 1e-9, "EN 818-4: 10 mm, two legs to 45°"],
  ["eyebolt M16 45 deg", "rated load", 500, 1e-9, "DIN 580: M16 700 kg in line, 500 kg at 45°"],
  ["pick-points 800 kg 300 mm 500 mm", "load near a", (800 * 500) / 800, 1e-9, "moments about b"],
  [
    "wait 400 V ac 470 uF 33 kohm",
    "to 60 V dc",
    slow(470e-6, 33e3) * log((400 * sqrt(2)) / 60),
    1e-6,
    "three-phase link, crest 566 V: R C ln(V0/60 V)",
  ],
  ["wait 400 V ac 470 uF 33 kohm", "wait", 60, 1e-9, "to 0.2 J, whole seconds upwards: 59.7 s"],
  [
    "wait 400 V ac 470 uF 33 kohm",
    "to 0.2 J",
    slow(470e-6, 33e3) * log((400 * sqrt(2)) / at02(470e-6)),
    1e-6,
    "R C ln(V0/sqrt(2 x 0.2 J/C))",
  ],
  [
    "voltage-left 400 V 470 uF 33 kohm 30 s",
    "voltage left",
    400 * exp(-30 / slow(470e-6, 33e3)),
    1e-6,
    "V0 exp(-t/RC), parts at their upper limits",
  ],
  [
    "bleeder 350 V 480 uF 5 s",
    "resistance at most",
    5 / (480e-6 * 1.26 * log(350 / 60)),
    1e-6,
    "IEC 60204-1: 60 V in 5 s, parts at their upper limits",
  ],
  ["capacitor-energy 650 V 1500 uF", "energy", (1500e-6 * 650 ** 2) / 2, 1e-9, "textbook: C V²/2"],
  ["lift 25 kg 2", "guideline", 46 * (2 / 3), 1e-9, "HSE guidance on teams: two thirds of the sum"],
  ["lift 18 kg 1 reach 50 cm", "guideline", 23 * 0.5, 1e-9, "NIOSH 94-110 Table 1: HM 0.50 at 50 cm"],
  ["noise 94", "time to a full dose", 1, 1e-9, "NIOSH: 85 dB(A) for 8 h, 3 dB halves it"],
  ["magnet-pull 400 mT 20 mm", "pull", (0.4 ** 2 * PI * 0.01 ** 2) / (2 * 4e-7 * PI), 1e-6, "textbook: B² A / (2 mu0)"],
  ["spring 800 N 60 mm", "energy", 24, 1e-9, "textbook: F s / 2"],
  ["fall 45 kg 1.5 m", "energy", 45 * g * 1.5, 1e-9, "textbook: m g h"],
  [
    "cooling 95 °C 80 °C 10 min 40 °C 22 °C",
    "time from the first reading",
    (10 * log(73 / 18)) / log(73 / 58),
    1e-9,
    "Newton's law of cooling",
  ],
  ["bead 4 mm 1200 mm waste 0 %", "volume in the joint", (PI / 4) * 0.16 * 10 * 12, 1e-9, "geometry: pi/4 d² l"],
  ["thread-locker M8 count 40 dose 0.3 ml pack 10 ml", "packs", 2, 1e-9, "12 ml in packs of 10 ml"],
  [
    "o-ring-squeeze 3.53 mm 2.9 mm",
    "squeeze",
    ((3.53 - 2.9) / 3.53) * 100,
    1e-9,
    "seal design guides: (section - depth) / section",
  ],
];

test.each(rows)("%s: %s", (question, name, value, share, source) => {
  const [figure, ...words] = question.split(" "),
    answer = answerWords(figure!, words);
  if (!isAnswer(answer)) throw new Error(answer.error.says);
  const found = answer.values.find((one) => one.name === name)?.value;
  expect(typeof found, `${name} of ${answer.values.map((one) => one.name).join(", ")}`).toBe("number");
  expect(Math.abs((found as number) / value - 1), `${String(found)}, by hand ${value} (${source})`).toBeLessThanOrEqual(
    share,
  );
});

test.each([
  ["spanner M12", "18 mm", /ISO 4014/, "ISO 272: 18; DIN 931 has 19"],
  ["spanner M12", "15 mm", /flange bolt, small series/, "ISO 15071: 15 on the small flange head"],
  ["spanner 3/8-16", "9/16 in", /hex cap screw/, "ASME B18.2.1: 9/16"],
  ["thread-from-spanner 17 mm", "M10", /DIN 931/, "DIN 931: 17 on M10"],
  ["o-ring 24.99 mm 3.53 mm", "-214", /24\.99 x 3\.53/, "AS568: -214 is 0.984 x 0.139 in"],
  ["small-hardware shaft-circlip 25 mm", "groove diameter", /23\.9/, "DIN 471: 25 x 1.2, groove 23.9"],
  ["small-hardware key 30 mm", "key", /8x7/, "DIN 6885-1: 8x7 over 22 to 30"],
  [
    "tightening 6 rows 2",
    "order",
    /2,1,3,5,4,6/,
    "common practice after AISC FAQ 6.6.4: row by row from the middle out",
  ],
  ["tightening 8", "order", /1,5,3,7,2,6,4,8/, "ASME PCC-1: 1-5-3-7-2-6-4-8"],
])("%s: %s", (question, name, value, source) => {
  const [figure, ...words] = question.split(" "),
    answer = answerWords(figure!, words);
  if (!isAnswer(answer)) throw new Error(answer.error.says);
  expect(String(answer.values.find((one) => one.name === name)?.value), source).toMatch(value);
});

test("thread-locker packs are not counted by the gap, which is the least", () => {
  expect(isAnswer(answerWords("thread-locker", ["M8 count 40 pack 10 ml"]))).toBe(false);
});

test("an engagement for two materials of one strength is not shown for a softer one", () => {
  const names = (words: string): readonly string[] => {
    const answer = answerWords("engagement", [words]);
    return isAnswer(answer) ? answer.values.map((one) => one.name) : [];
  };
  expect(names("M10 25 mm aluminium")).not.toContain("equal-strength engagement");
  expect(names("M10 25 mm")).toContain("equal-strength engagement");
});
