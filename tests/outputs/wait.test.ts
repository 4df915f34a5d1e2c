// The wait that is printed: never shorter than the author's, than the time to 60 V dc, or than the time to 0.2 J.

import { expect, test } from "vitest";
import { waitOf } from "../../language/bench/placement.ts";
import { compiledText } from "./outputs-of.ts";

const waits = (figures: string, precautions: string): (readonly [string, number, string] | undefined)[] => {
  const [performance] = compiledText(`
unit u "U" {
  base a  part a "A"  part b "B"  fastener f screw "Screws" { joins b to a }
  hazard charge electrical danger "Charge" { on b  ${figures}  ${precautions} }
}
procedure p "P" for u { aim b off  step "S" { undo f  remove b } }`).performances;
  const [hazard] = performance!.model.hazards;
  return hazard!.precautions.map((precaution) => {
    const wait = waitOf(hazard!, precaution);
    return wait?.seconds === undefined
      ? undefined
      : ([precaution.kind, Number(wait.seconds.toPrecision(4)), wait.decidedBy!.of] as const);
  });
};

const three = `precaution isolate "I."  precaution discharge "D." wait 1 min  precaution prove-dead "P."`;

// R C with +5 % and +20 %: 47e3 x 1.05 x 2200e-6 x 1.2 = 130.284 s; to 60 V from 400 V: x ln(400/60) = 247.2 s; to 0.2 J: the voltage left is
// sqrt(0.4 / 2640e-6) = 12.309 V, x ln(400/12.309) = 453.5 s. Computed by hand from v = V0 exp(-t/RC); limits of IEC 60204-1 and ISO 6469-4.
test("the computed wait stands at the discharge where it is longer", () => {
  expect(waits("voltage 400 V dc  capacitance 2200 uF  bleeder 47 kohm", three)).toEqual([
    undefined,
    ["discharge", 453.5, "to-0.2-J"],
    undefined,
  ]);
});

test("the author's wait stands where it is longer, at its own precaution", () => {
  expect(waits("voltage 400 V dc  capacitance 2200 uF  bleeder 47 kohm", three.replace("1 min", "10 min"))).toEqual([
    undefined,
    ["discharge", 600, "maker"],
    undefined,
  ]);
  expect(waits("", `precaution isolate "I." wait 3 min  precaution prove-dead "P."`)).toEqual([
    ["isolate", 180, "maker"],
    undefined,
  ]);
});

test("of a range of waits the longer end counts", () => {
  expect(waits("", `precaution isolate "I." wait 3..5 min  precaution prove-dead "P."`)).toEqual([
    ["isolate", 300, "maker"],
    undefined,
  ]);
});

// The crest is 1.414 times the alternating voltage: 130.284 x ln(400 x 1.41421 / 12.309) = 498.7 s.
test("an alternating voltage counts by its crest, also where only the source says so", () => {
  expect(waits("voltage 400 V ac  capacitance 2200 uF  bleeder 47 kohm", three)[1]).toEqual([
    "discharge",
    498.7,
    "to-0.2-J",
  ]);
  expect(waits("source mains  voltage 400 V  capacitance 2200 uF  bleeder 47 kohm", three)[1]).toEqual([
    "discharge",
    498.7,
    "to-0.2-J",
  ]);
});

test("without a discharge it stands at the first wait, else at the proof", () => {
  expect(
    waits(
      "voltage 400 V dc  capacitance 2200 uF  bleeder 47 kohm",
      `precaution lock-out "L." wait 1 min  precaution prove-dead "P."`,
    ),
  ).toEqual([["lock-out", 453.5, "to-0.2-J"], undefined]);
  expect(
    waits(
      "voltage 400 V dc  capacitance 2200 uF  bleeder 47 kohm",
      `precaution isolate "I."  precaution prove-dead "P."`,
    ),
  ).toEqual([undefined, ["prove-dead", 453.5, "to-0.2-J"]]);
});

test("senseless figures give no computed wait and no exception", () => {
  expect(waits("voltage 400 V dc  capacitance 0 uF  bleeder 47 kohm", three)).toEqual([
    undefined,
    ["discharge", 60, "maker"],
    undefined,
  ]);
  expect(waits("voltage 400 V dc  capacitance 2200 uF  bleeder 0 kohm", three)).toEqual([
    undefined,
    ["discharge", 60, "maker"],
    undefined,
  ]);
});
