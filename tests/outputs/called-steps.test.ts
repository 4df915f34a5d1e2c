// The steps of a procedure that is done on a part say which part, in both halves and in every list that names a step.

import { expect, test } from "vitest";
import { labels } from "../../language/outputs/labels/labels.ts";
import { linesOf } from "../../language/outputs/lines/groups.ts";
import { write } from "../../language/outputs/output.ts";
import { refit } from "../../language/outputs/refit/refit.ts";
import { compiledText, options } from "./outputs-of.ts";

const machine = (calls: string, box = "pieces left, right  is unit gear"): string => `
unit gear "Gear" {
  base case
  part case "Case" { }
  part lid "Lid" { }
  fastener screws screw "Screws" { count 2  joins lid to case }
}
unit stand "Stand" {
  base rail
  part rail "Rail" { }
  part box "Gearbox" { ${box}  rests on rail }
}
procedure open-it "Open the gear" for gear {
  aim lid off
  step "Lid off" { undo screws into bag A  remove lid }
}
procedure both "Open both" for stand { aim none  ${calls} }
`;
const performanceOf = (text: string) => {
  const input = compiledText(text);
  return { input, performance: input.performances.find(({ procedure }) => procedure.id === "both")! };
};

test("a step of a called procedure says the part, with its piece once", () => {
  for (const calls of [
    "do open-it on box.left  do open-it on box.right",
    "repeat for left, right { do open-it on box }",
  ]) {
    const { strip, refit: back } = linesOf(performanceOf(machine(calls)).performance, options);
    expect(
      strip.map(({ title }) => title),
      calls,
    ).toEqual(["Open the gear: Lid off (Gearbox left)", "Open the gear: Lid off (Gearbox right)"]);
    expect(
      back.map(({ title }) => title),
      calls,
    ).toEqual([
      "Refit of step 2: Open the gear: Lid off (Gearbox right)",
      "Refit of step 1: Open the gear: Lid off (Gearbox left)",
    ]);
  }
});

test("a part that is there once is named as well; a procedure on the whole unit names none", () => {
  const once = linesOf(performanceOf(machine("do open-it on box", "is unit gear")).performance, options);
  expect(once.strip.map(({ title }) => title)).toEqual(["Open the gear: Lid off (Gearbox)"]);
  const own = linesOf(performanceOf(machine('step "Look" { inspect box "Clean" }')).performance, options);
  expect(own.strip.map(({ title }) => title)).toEqual(["Look"]);
});

test("labels and JSON say it too", () => {
  const { input, performance } = performanceOf(machine("do open-it on box.left"));
  const one = { ...input, performances: [performance] };
  expect(JSON.stringify(labels.data(one, options))).toContain("Lid off (Gearbox left)");
  expect(JSON.stringify(refit.data(one, options))).toContain('"title":"Lid off","on":"box.left"');
});

test("what a procedure that is done leaves is printed where its caller ends, with the part that it was done on", () => {
  const { input } = performanceOf(
    machine("do open-it on box.left").replace(
      "aim lid off",
      'aim lid off  leaves off lid  leaves out 2 of screws "For the fitter."',
    ),
  );
  const text = write(
    refit,
    "text",
    { ...input, performances: input.performances.filter(({ procedure }) => procedure.id === "both") },
    options,
  );
  expect(text).toContain("Left at the end: the lid (Gearbox left) off.");
  // Nothing goes back, and that is no way back that could not be worked out.
  expect(text).not.toContain("could not be worked out");
  expect(text).toContain("For the fitter.");
});

test("a step that only does another procedure takes no number of its own", () => {
  const numbered = (calls: string): string[] => {
    const { strip, refit: back } = linesOf(performanceOf(machine(calls, "is unit gear")).performance, options);
    return [...strip, ...back].map(({ number, title }) => `${number} ${title}`);
  };
  const look = 'step "Look" { inspect box "Clean" }';
  expect(numbered(`${look} step "Open" { do open-it on box } step "Again" { inspect box "Dry" }`)).toEqual([
    "1 Look",
    "2 Open the gear: Lid off (Gearbox)",
    "3 Again",
    "R1 Refit of step 2: Open the gear: Lid off (Gearbox)",
  ]);
  expect(numbered(`${look} step "Open" { note "Mind the lid."  do open-it on box }`).slice(0, 3)).toEqual([
    "1 Look",
    "2 Open",
    "3 Open the gear: Lid off (Gearbox)",
  ]);
});
