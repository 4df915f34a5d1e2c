// The wait that checks, hovers and the manual ask. Formulas: IEC 60204-1 cl. 6.2.4 (60 V), ISO 6469-4:2015 (0.2 J); rc-design rows of
// tests/reference/hazards-electrical.csv for 350 V, 480 µF, 22 kΩ.

import fc from "fast-check";
import { expect, test } from "vitest";
import { capacitorEnergy, voltageAfter } from "../../language/figures/capacitor-discharge.ts";
import { requiredWait, type WaitPart, type WaitQuestion } from "../../language/figures/required-wait.ts";

const part = (question: WaitQuestion, of: WaitPart["of"]): WaitPart =>
  requiredWait(question).parts.find((one) => one.of === of)!;
const link: WaitQuestion = { voltage: 560, kind: "dc", capacitance: 1200e-6, bleeder: 22e3 };
const settings = { seed: 20261125, numRuns: 300 };
const links = fc.record({
  voltage: fc.double({ min: 1, max: 2000, noNaN: true }),
  kind: fc.constantFrom("dc" as const, "ac" as const),
  capacitance: fc.double({ min: 1e-7, max: 0.1, noNaN: true }),
  bleeder: fc.double({ min: 10, max: 1e7, noNaN: true }),
});

test("560 V on 1200 µF through 22 kΩ: 59 s to 60 V at nominal values, 74 s with the margins, 117 s to 0.2 J", () => {
  expect(Math.round(part(link, "to-60-V").nominalSeconds)).toBe(59);
  expect(Math.round(part(link, "to-60-V").seconds)).toBe(74);
  expect(Math.round(part(link, "to-0.2-J").seconds)).toBe(117);
  expect(requiredWait(link).decidedBy?.of).toBe("to-0.2-J");
});

test("350 V on 480 µF through 22 kΩ reproduces the rows of the reference file", () => {
  const design: WaitQuestion = { voltage: 350, capacitance: 480e-6, bleeder: 22e3 };
  expect(part(design, "to-60-V").nominalSeconds).toBeCloseTo(18.6235, 3);
  expect(part(design, "to-60-V").seconds).toBeCloseTo(23.4656, 3);
  expect(part(design, "to-0.2-J").nominalSeconds).toBeCloseTo(26.3495, 3);
});

test("after the wait the capacitor at its upper limits is at or below both limits", () => {
  fc.assert(
    fc.property(links, (question) => {
      const { seconds, startVoltage } = requiredWait(question);
      const left = voltageAfter(startVoltage!, question.bleeder * 1.05, question.capacitance * 1.2, seconds!);
      expect(left).toBeLessThanOrEqual(60 * (1 + 1e-9));
      expect(capacitorEnergy(question.capacitance * 1.2, left)).toBeLessThanOrEqual(0.2 * (1 + 1e-9));
    }),
    settings,
  );
});

test("a wait only ever lengthens: with the maker's, with voltage, capacitance and bleeder", () => {
  fc.assert(
    fc.property(
      links,
      fc.double({ min: 0, max: 1e5, noNaN: true }),
      fc.double({ min: 1, max: 10, noNaN: true }),
      (question, makerWait, more) => {
        const alone = requiredWait(question).seconds!;
        const withMaker = requiredWait({ ...question, makerWait }).seconds!;
        expect(withMaker).toBe(Math.max(alone, makerWait));
        for (const name of ["voltage", "capacitance", "bleeder"] as const) {
          expect(requiredWait({ ...question, [name]: question[name] * more }).seconds!).toBeGreaterThanOrEqual(
            alone * (1 - 1e-9),
          );
        }
        for (const one of requiredWait(question).parts) expect(one.seconds).toBeGreaterThanOrEqual(one.nominalSeconds);
      },
    ),
    settings,
  );
});

test("an alternating voltage is taken at its crest", () => {
  expect(requiredWait({ ...link, kind: "ac" }).startVoltage).toBeCloseTo(560 * Math.SQRT2, 9);
  expect(requiredWait({ ...link, kind: "ac" }).seconds!).toBeGreaterThan(requiredWait(link).seconds!);
});

test("with half of the figures only what is known is said", () => {
  expect(requiredWait({}).seconds).toBeUndefined();
  expect(requiredWait({ voltage: 560, capacitance: 1e-3 })).toMatchObject({
    seconds: undefined,
    energy: expect.closeTo(0.5 * 1.2e-3 * 560 ** 2, 9),
  });
  expect(requiredWait({ makerWait: 300, voltage: 560 })).toMatchObject({ seconds: 300, parts: [{ of: "maker" }] });
});

test("below 60 V the energy still asks for a wait", () => {
  const low = requiredWait({ voltage: 48, kind: "dc", capacitance: 10e-3, bleeder: 22e3 });
  expect(low.parts.find((one) => one.of === "to-60-V")!.seconds).toBe(0);
  expect(low.decidedBy?.of).toBe("to-0.2-J");
  expect(low.seconds).toBeGreaterThan(500);
});

test("figures that make no sense are refused", () => {
  for (const wrong of [
    { ...link, bleeder: 0 },
    { ...link, capacitance: -1 },
    { ...link, voltage: Number.NaN },
    { makerWait: -5 },
    { capacitance: -1, voltage: 5 },
    { bleeder: 0 },
    { makerWait: Number.POSITIVE_INFINITY },
  ]) {
    expect(() => requiredWait(wrong)).toThrow(RangeError);
  }
});
