// An act with several tools, a precaution with several: each is printed, listed, judged and, where it is used up, bought.

import { expect, test } from "vitest";
import { billOf } from "../../language/bill/bill.ts";
import { linesOf } from "../../language/outputs/lines/groups.ts";
import { toolsOf } from "../../language/outputs/manual/tools.ts";
import { check } from "../bench/refit/stage.ts";
import { compiledText, options } from "./outputs-of.ts";

const text = (acts: string, asks = ""): string => `tool crane "Crane" { kind hoist  capacity 500 kg }
tool sling "Sling" { capacity 100 kg }
tool pin "Locking pin"
tool block-hoist "Chain block" { capacity 500 kg }
consumable rag "Rag" { pack 1 kg }
unit box "Box" {
  base foot
  no pressure "Open."
  part foot "Foot" { mass 90 kg }
  part lid "Lid" { mass 250 kg  rests on foot  ${asks} }
  hazard weight crushing danger "Weight" { on lid  precaution block "Raise it." "Put the pin in." with block-hoist with pin back "Lower it." }
}
procedure p "P" for box {
  aim lid off
  step { block weight ${acts} }
}
`;
const printed = (acts: string, asks = ""): string => {
  const { performances } = compiledText(text(acts, asks)),
    { strip, refit } = linesOf(performances[0]!, options);
  return [strip, refit]
    .flat()
    .flatMap((group) => group.lines)
    .map((line) => JSON.stringify(line))
    .join("\n");
};

test("every tool of a line is printed, in the strip and where the part is lowered in again", () => {
  const all = printed("lift lid with crane with sling");
  for (const name of ["crane", "sling"])
    expect(all.match(new RegExp(`\\b${name}\\b`, "gi"))!.length).toBeGreaterThan(1);
  expect(all).toMatch(/chain block/i);
  expect(all).toMatch(/locking pin/i);
  expect(all).toContain("Raise it. Put the pin in.");
});

test("every tool of a line stands in the list of tools", () => {
  const { performances } = compiledText(text("lift lid with crane with sling")),
    all = JSON.stringify(
      toolsOf(
        performances.map((performance) => ({ performance, lines: linesOf(performance, options) })),
        options,
      ),
    );
  for (const name of ["Crane", "Sling", "Locking pin", "Chain block"]) expect(all).toContain(name);
});

test("hoist and sling each carry all of the load, whichever is named first", () => {
  for (const gear of ["with crane with sling", "with sling with crane"]) {
    const found = check(text(`lift lid ${gear}`)).findings.filter(({ code }) => code === "lift/capacity");
    expect(found.map(({ says }) => says)).toEqual(["Lid weighs 250 kg, over the 100 kg of Sling"]);
  }
  expect(check(text("lift lid with crane")).findings.filter(({ code }) => code === "lift/capacity")).toEqual([]);
});

test("what is used up as a further tool is bought", () => {
  const { performances } = compiledText(text("lift lid with crane clean foot with pin with rag"));
  expect(JSON.stringify(billOf(performances, { units: 1, beadWaste: 0.1 }))).toContain("Rag");
});

test("all the gear that a part asks for carries it: printed where it is lowered in, and judged where the line names none", () => {
  for (const gear of ["lift with crane with sling", "lift with sling with crane"]) {
    const all = printed("lift lid", gear);
    for (const name of ["crane", "sling"]) expect(all, gear).toMatch(new RegExp(`\\b${name}\\b`, "i"));
    const over = (acts: string): string[] =>
      check(text(acts, gear))
        .findings.filter(({ code }) => code === "lift/capacity")
        .map(({ says }) => says);
    expect(over("lift lid")).toEqual(["Lid weighs 250 kg, over the 100 kg of Sling"]);
    expect(over("lift lid with crane")).toEqual([]);
  }
});

test("what carries a part stands in the sentence of both halves, in the list of tools, and leaves nothing to the hands", () => {
  for (const [acts, strip, refit] of [
    [
      "lift lid",
      "Lift off the lid with the crane and the sling.",
      "Lower the lid into place with the crane and the sling.",
    ],
    ["remove lid", "Remove the lid with the crane and the sling.", "Fit the lid with the crane and the sling."],
  ] as const) {
    const gear = "lift with crane with sling",
      { performances } = compiledText(text(acts, gear)),
      all = printed(acts, gear);
    expect(all).toContain(strip);
    expect(all).toContain(refit);
    const listed = JSON.stringify(
      toolsOf(
        performances.map((performance) => ({ performance, lines: linesOf(performance, options) })),
        options,
      ),
    );
    for (const name of ["Crane", "Sling"]) expect(listed).toContain(name);
    expect(check(text(acts, gear)).findings.map(({ code }) => code)).not.toContain("lift/over-guideline");
  }
  // What drew it off does not go back on it, and people in the line go before the gear of the part.
  expect(printed("remove lid with pin")).toContain("Fit the lid.");
  expect(printed("lift lid by 4 people", "lift with crane")).toContain("Lower the lid into place, 4 people.");
});
