// Things inside a part that is a unit, named from the unit around it: in acts, facts, aims, hazards and messages.

import { expect, test } from "vitest";
import { mentionsIn } from "../../language/assist/symbols.ts";
import { surveyOf } from "../../language/checks/survey-of-names.ts";
import { loadProject } from "../../language/names/load.ts";
import { write } from "../../language/outputs/output.ts";
import { refit as refitOutput } from "../../language/outputs/refit/refit.ts";
import { compiledText, options } from "../outputs/outputs-of.ts";
import { findings, perform, refit, worldOf } from "./refit/stage.ts";

const machine = (steps: string, facts = "", box = "is unit gear", aim = "aim none"): string => `
unit gear "Gear" {
  base case
  part case "Case"
  part lid "Lid"
  part cap "Cap" { pieces left, right  rests on case  behind lid }
  fastener screws screw "Lid screws" { count 2  joins lid to case }
  fastener plug plug "Plug" { into case }
  fluid oil oil "Oil" { volume 1 L  drains at plug }
}
unit u "U" {
  base b
  part b "Base"
  part box "Gearbox" { ${box}  rests on b }
  ${facts}
}
procedure p "P" for u { ${aim}  step s "S" { ${steps} } }
`;
const says = (text: string): string[] => findings(text).map((finding) => `${finding.code} ${finding.says}`);

test("acts name what is inside, and the bench holds them to the facts of the inner unit", () => {
  expect(says(machine("undo box.screws remove box.lid remove box.cap.left"))).toEqual([]);
  expect(says(machine("remove box.cap.left"))).toEqual([
    "sequence/blocked Cap left cannot come off: Lid is in front of it",
  ]);
  expect(refit(machine("undo box.screws remove box.lid"))).toEqual(["fitting Lid", "fitting Lid screws"]);
});

test("fluids and aims inside are named so as well", () => {
  expect(perform(machine("drain box.oil")).events.map(({ kind }) => kind)).toEqual(["out", "drained"]);
  expect(says(machine("undo box.screws", "", "is unit gear", "aim box.lid off"))[0]).toContain(
    "removal/missing Lid is not off",
  );
});

test("of several units each has its own: by the piece, or by the piece at hand", () => {
  const two = "pieces left, right  is unit gear";
  expect(perform(machine("undo box.left.screws", "", two)).events).toHaveLength(1);
  expect(perform(machine("undo box.screws", "", two)).events).toHaveLength(2);
  const each = perform(
    machine("", "", two)
      .replace("step s", "repeat for left, right { step s")
      .concat()
      .replace('"S" {  } }', '"S" { undo box.screws } } }'),
  );
  expect(each.events.map(({ thing }) => each.model.things[thing]!.id)).toEqual(["box.left/screws", "box.right/screws"]);
});

test("facts of the unit around hold for what is inside", () => {
  const facts = `part hood "Hood" { behind box.lid }\n part sensor "Sensor"\n fastener ss screw "Sensor screw" { joins sensor to box.lid }
 hazard hot-lid hot warning "Hot lid" { on box.screws  precaution cool "Let it stand." }`;
  expect(says(machine("cool hot-lid undo box.screws remove box.lid remove hood", facts))).toEqual([]);
  expect(says(machine("cool hot-lid remove hood", facts))[0]).toContain("sequence/blocked Hood cannot come off: Lid");
  expect(says(machine("undo box.screws remove box.lid", facts))[0]).toContain("hazard/not-yet");
  expect(
    perform(machine("cool hot-lid undo box.screws remove box.lid", facts)).events.at(-1)!.moved.map(String),
  ).toHaveLength(2);
});

test("a remedy writes the name as it is written here", () => {
  const [finding] = findings(machine("remove box.lid"));
  expect(finding!.fixes.flatMap(({ edits }) => edits.map(({ text }) => text.trim()))).toContain("undo box.screws");
});

const projectOf = (text: string) => {
  const project = loadProject(worldOf({ "m.strip": text }), ["m.strip"]);
  return { project, file: project.files.get("m.strip")! };
};

test("a wrong name inside is found in the unit that it is looked up in, and the near one offered", () => {
  const lost = (name: string): string[] => {
    const { project, file } = projectOf(machine(`clean ${name}`));
    return surveyOf(project, file).unknown.map(
      ({ text, unit, candidates }) => `${text} in ${unit}: ${candidates.length}`,
    );
  };
  expect(lost("box.lid")).toEqual([]);
  expect(lost("box.lit")).toEqual(["box.lit in Gear: 6"]);
  expect(lost("box.cap.middle")).toEqual(["box.cap.middle in Gear: 2"]);
  expect(says(machine("clean box.lit"))).toEqual(["names/unknown box.lit is not declared in Gear, but box.lid is"]);
  expect(says(machine("drain box.lid"))).toEqual(["names/unknown box.lid is a part: here a fluid is due"]);
});

test("each name of a path is a mention of its own declaration: hover, jump and rename go there", () => {
  const text = machine("remove box.lid"),
    { project, file } = projectOf(text),
    at = text.indexOf("box.lid");
  expect(
    mentionsIn(project, file)
      .filter(({ start }) => start >= at && start < at + 7)
      .map(({ id, unit, start, end }) => `${unit} ${id} ${text.slice(start, end)}`),
  ).toEqual(["u box box", "gear lid lid"]);
});

test("a condition names what is inside, and one piece of several", () => {
  const done = (condition: string, facts = "", box?: string): boolean => {
    const text = machine(`undo box.screws remove box.lid ${condition} { inspect look on b "No rust" }`, facts, box);
    expect(says(text), condition).toEqual([]);
    return perform(text).strip.some(({ act }) => act.verb === "inspect");
  };
  const caps = 'part cap "Cap" { pieces left, right  rests on b }';
  expect(done("if box.lid removed")).toBe(true);
  expect(done("unless box.lid removed")).toBe(false);
  expect(done("if box.cap.left removed")).toBe(false);
  expect(done("remove cap.left if cap.left removed", caps)).toBe(true);
  expect(done("remove cap.left if cap.right removed", caps)).toBe(false);
  expect(done("remove cap.left if cap removed", caps)).toBe(true);
  expect(done("remove cap.left if cap.left removed and box.lid removed", caps)).toBe(true);
});

test("in a condition as elsewhere a name that is not there, or of another kind, is found", () => {
  expect(says(machine("undo box.screws remove box.lid if box.lod removed { clean b }"))).toEqual([
    "names/unknown box.lod is not declared in Gear, but box.lid is",
  ]);
  expect(says(machine("undo box.screws remove box.lid if box.cap.left { clean b }"))).toEqual([
    "names/unknown box.cap.left is a part: here a variant, option or reading is due",
  ]);
});

test("the manual says of which piece, and of what inside, a line holds", () => {
  const text = machine(
    'undo box.screws remove box.lid remove box.cap.left if box.lid removed { inspect look on b "No rust" } if box.cap.left removed { inspect seat on b "No pits" }',
  );
  const printed = write(refitOutput, "text", compiledText(text), options);
  expect(printed).toContain("(If lid removed) Inspect the base: No rust.");
  expect(printed).toContain("(If cap left removed) Inspect the base: No pits.");
});
