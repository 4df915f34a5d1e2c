// Figures that may stand by themselves and do not go with what they are said of, on both sides of their limits: burns from 43 °C on
// (ISO 13732-1:2006, from memory), steel 7850 kg/m³ (handbook), the rest common practice. Nothing is said of what lies on the other side.

import { expect, test } from "vitest";
import { check, stage } from "../bench/refit/stage.ts";

const found = (facts: string, code: string, steps = "step { remove lid }"): string[] =>
  check(stage(`part lid "Lid" { rests on b }\n ${facts}`, steps, "aim none"))
    .findings.filter((one) => one.code === code)
    .map(({ severity, says }) => `${severity}: ${says}`);
const scale = (facts: string): string[] => found(facts, "figure/out-of-scale");

test("a hot surface that is given as cold, and a cold one that is given as hot, are asked about their unit", () => {
  const surface = (kind: string, temperature: string): string[] =>
    scale(`hazard h ${kind} caution "Block" { on lid  temperature ${temperature}  precaution other "Gloves." }`);
  for (const temperature of ["43 °C", "110 °F", "90 °C", "60..90 °C"])
    expect(surface("hot", temperature), temperature).toEqual([]);
  expect(surface("hot", "90 °F")).toEqual(["question: Block is a hot surface, and 90 °F is 32 °C: look at the unit"]);
  expect(surface("hot", "42 °C")).toHaveLength(1);
  for (const temperature of ["-190 °C", "20 °C", "-40 °F"])
    expect(surface("cold", temperature), temperature).toEqual([]);
  expect(surface("cold", "90 °C")).toEqual([
    "question: Block is a cold surface, and 90 °C is given: look at the unit and the sign",
  ]);
});

test("shanks that weigh three times what they hold are asked about, and what is not known is not", () => {
  const drum = (mass: string, size = "M20x80"): string[] =>
    scale(
      `part drum "Drum" { ${mass} }\n fastener bolts bolt "Bolts" { count 8  size ${size}  torque 300 N·m  joins drum to b }`,
    );
  // 8 x pi/4 x (20 mm)² x 80 mm x 7850 kg/m³ = 1.578 kg, a third of which is 0.526 kg.
  expect(drum("mass 520 g")).toEqual([
    "question: Drum weighs 520 g, and the shanks of the Bolts that hold it weigh 1.58 kg: look at the unit",
  ]);
  for (const mass of ["mass 530 g", "mass 285 kg", ""]) expect(drum(mass), mass).toEqual([]);
  expect(drum("mass 285 g", "M20")).toEqual([]);
});

test("a cord and a side that no shop meets are asked about", () => {
  const ring = (kind: string, size: string): string[] => scale(`part ring ${kind} "Ring" { size ${size}  rests on b }`);
  for (const size of ["100 x 3 mm", "2000 x 8 mm", "4 x 1/8 in"]) expect(ring("o-ring", size), size).toEqual([]);
  expect(ring("o-ring", "100 x 3 m")).toHaveLength(1);
  expect(ring("o-ring", "101.19 x 353 mm")).toHaveLength(1);
  expect(ring("seal", "35 x 52 x 7 mm")).toEqual([]);
  expect(ring("seal", "35 x 52 x 7 m")).toHaveLength(1);
  expect(ring("", "35 m")).toHaveLength(1);
  for (const [kind, size] of [
    ["chain", "30 m"],
    ["cable", "60 m"],
    ["belt", "45000 x 800 x 12 mm"],
    ["", "120000 x 18 mm"],
  ])
    // prettier-ignore
    expect(ring(kind!, size!), size).toEqual([]);
});

test("heated beyond what such parts are mostly given is a question about the maker's figure", () => {
  const heated = (kind: string, temperature: string): string[] =>
    found(
      `part race ${kind} "Race" { rests on b }\n no hot "Tongs."`,
      "figure/heat-limit",
      `step { heat race to ${temperature} }`,
    );
  for (const temperature of ["80 °C", "110..125 °C", "250 °F"]) expect(heated("bearing", temperature)).toEqual([]);
  expect(heated("bearing", "800 °C")).toEqual([
    "question: Race is heated to 800 °C: parts of its kind are mostly given 125 °C at most; ask the maker's data",
  ]);
  expect(heated("bearing", "126 °C")).toHaveLength(1);
  expect(heated("o-ring", "110 °C")).toHaveLength(1);
  expect(heated("", "220 °C")).toEqual([]);
  expect(heated("", "400 °C")).toHaveLength(1);
});

test("an electrical proof is asked for its instrument, at the precaution or at the act", () => {
  const proved = (declared: string, act: string): string[] =>
    found(
      `hazard bus electrical danger "Bus" { on lid  precaution lock-out "Lock."  precaution prove-dead "Test." ${declared} }`,
      "hazard/no-tester",
      `step { lock-out bus  prove-dead bus ${act}  remove lid }`,
    );
  expect(proved("", "")).toEqual([
    "question: Bus: nothing says what prove-dead is done with; write prove-dead … with a voltage tester of the shop",
  ]);
  expect(proved("with tester", "")).toEqual([]);
  expect(proved("", "with tester")).toEqual([]);
});

test("rows and a centre are no order for a circle", () => {
  const bolts = (sequence: string, pattern: string): string[] =>
    found(
      `part hood "Hood"\n fastener bolts bolt "Bolts" { count 8  size M8x30  torque 20 N·m  ${pattern}  sequence ${sequence}  joins hood to b }`,
      "fastener/sequence-pattern",
    );
  for (const sequence of ["rows", "centre-out"]) expect(bolts(sequence, "pattern circle 210 mm")).toHaveLength(1);
  for (const sequence of ["star", "circle", "listed 1, 5, 3, 7, 2, 6, 4, 8"])
    expect(bolts(sequence, "pattern circle 210 mm")).toEqual([]);
  expect(bolts("rows", "pattern rectangle 300 x 120 mm")).toEqual([]);
});

test("several containers hold it together, and a plug does not stop for a change", () => {
  const drained = (capacity: string): string[] =>
    check(
      `tool pan "Pan" { ${capacity} }\n${stage(
        `fastener plug plug "Plug" { into b }\n fluid oil oil "Oil" { volume 5 L  drains at plug  fills at plug }`,
        "step { drain oil into pan }",
        "aim none",
      )}`,
    )
      .findings.filter(({ code }) => code === "tool/container-small")
      .map(({ severity, says }) => `${severity}: ${says}`);
  expect(drained("capacity 5 L")).toEqual([]);
  expect(drained("capacity 2 L")).toEqual(["warning: 5 L of Oil do not go into Pan, which holds 2 L"]);
  expect(drained("capacity 2 L  count 2")).toEqual([
    "warning: 5 L of Oil do not go into 2 of Pan, which holds 2 L each",
  ]);
  expect(drained("capacity 2 L  count 3")).toEqual([
    "hint: 5 L of Oil fill 3 of Pan, which are changed while it runs: a plug does not stop for that",
  ]);
});
