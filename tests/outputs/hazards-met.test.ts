// Lists of what one procedure asks for hold what it meets; what else is on the unit is told apart, and nobody is told that it is gone.
// ISO 12100:2010, 6.4.5.1: information for use covers the tasks that it is for (from memory).

import { expect, test } from "vitest";
import { linesOf } from "../../language/outputs/lines/groups.ts";
import { toolsOf } from "../../language/outputs/manual/tools.ts";
import { preparationSheet } from "../../language/outputs/sheet/preparation.ts";
import { write } from "../../language/outputs/output.ts";
import { compiledText, options } from "./outputs-of.ts";

const machine = (steps: string, more = ""): string => `
role electrician "Electrician"
consumable paste "Paste" { hazard paste-harm }
hazard paste-harm chemical caution "Paste on the skin" { wear nitrile-gloves }
unit rig "Rig" {
  base frame
  part frame "Frame" { }
  part lid "Lid" { mass 40 kg }
  part box "Box" { }
  part ram "Ram" { behind lid }
  fastener lid-screws screw "Lid screws" { joins lid to frame }
  fastener box-screws screw "Box screws" { joins box to frame }
  fastener ram-screws screw "Ram screws" { joins ram to frame }
  hazard mains electrical danger "Mains" { on box-screws  wear insulating-gloves  role electrician
    precaution lock-out "Lock it." back "Lock off."  precaution prove-dead "Test." behind lid }
  hazard load heavy warning "Heavy lid" { on lid  wear boots  precaution other "By two." }
  hazard heat hot caution "Hot ram" { on ram  wear heat-gloves  precaution cool "Let it cool." }
  hazard air dust caution "Dust everywhere" { wear mask  precaution other "Mask on." }
}
procedure p "P" for rig { aim none  ${more}  ${steps} }
`;
function sheetOf(
  steps: string,
  more?: string,
): { met: string; others: string; people: string; manual: readonly string[] } {
  const input = compiledText(machine(steps, more)),
    performance = input.performances.find(({ procedure }) => procedure.id === "p")!,
    text = write(preparationSheet, "text", { ...input, performances: [performance] }, options).replaceAll(/\s+/g, " ");
  return {
    met: /(?<!for these kinds of )Hazards: (.*?)\./.exec(text)?.[1] ?? "",
    others: /where no line of this procedure works: (.*?)\./.exec(text)?.[1] ?? "",
    people: text,
    manual: toolsOf([{ performance, lines: linesOf(performance, options) }], options).wear,
  };
}

test("a hazard that no act meets is told apart, and its gear and its authorised person are not asked for", () => {
  const { met, others, people, manual } = sheetOf("step { cool heat  undo ram-screws }");
  expect(met).toBe("Hot ram, Dust everywhere");
  expect(others).toBe("Mains, Heavy lid");
  expect(manual).toEqual(["Gloves against heat", "Mask"]);
  expect(people).not.toMatch(/Electrician|Insulating gloves|Boots/);
  expect(people).toContain("Each is there all the same: keep away.");
});

test("what an act names, moves or opens on the way to a precaution is met", () => {
  expect(sheetOf("step { undo box-screws }").met).toBe("Mains, Dust everywhere");
  expect(sheetOf('step { inspect look on ram "No crack" }').met).toBe("Hot ram, Dust everywhere");
  // The lid is in front of the proof, and is heavy where it is moved.
  expect(sheetOf("step { undo lid-screws  remove lid }").met).toBe("Mains, Heavy lid, Dust everywhere");
  expect(sheetOf("step { mark lid, frame as m }").met).toBe("Mains, Dust everywhere");
});

test("a test runs the unit and meets every energy, and a precaution that stands from the start is somebody's", () => {
  expect(sheetOf('finish { test "Runs." }').met).toBe("Mains, Dust everywhere");
  expect(sheetOf("step { undo ram-screws }", "starts with lock-out mains").met).toBe("Mains, Hot ram, Dust everywhere");
});

test("what a consumable brings is met where it is used", () => {
  const { met, people } = sheetOf("step { apply paste to ram }");
  expect(met).toBe("Hot ram, Dust everywhere, Paste on the skin");
  expect(people).toContain("Nitrile gloves");
});
