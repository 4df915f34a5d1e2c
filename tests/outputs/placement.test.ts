// Where hazards and messages stand: once in each half before the first precaution or touch; a message on a thing before each step that
// handles it.

import { expect, test } from "vitest";
import { endTurnBefore, placementOf } from "../../language/bench/placement.ts";
import { linesOf } from "../../language/outputs/lines/groups.ts";
import { mustStand } from "../../language/outputs/lines/hazard-facts.ts";
import { checkProject } from "../../language/workspace/check-project.ts";
import { memoryWorld } from "../support/memory-world.ts";
import { compiledText, options } from "./outputs-of.ts";

const press = (steps: string, more = "", library = ""): ReturnType<typeof linesOf> => {
  const [performance] = compiledText(`
${library}
unit press "Press" {
  base bed
  positions up, down
  part bed "Bed"
  part ram "Ram" { behind lid  caution "Sharp edge." }
  part lid "Lid"
  fastener lid-screws screw "Lid screws" { count 4  joins lid to bed }
  fastener ram-screws screw "Ram screws" { count 2  joins ram to bed  behind lid }
  hazard oil-pressure pressure danger "Pressure" {
    on ram-screws, ram
    precaution vent "Open the valve." back "Close the valve."
    precaution prove-zero "Gauge reads nothing."
  }
  ${more}
}
procedure strip "Strip" for press { aim ram off  ${steps} }
`).performances;
  return linesOf(performance!, options);
};

const told = (groups: ReturnType<typeof linesOf>["strip"]): string[] =>
  groups
    .flatMap((group) => group.lines)
    .map((line) =>
      line.is === "action"
        ? line.says
        : line.is === "hazard"
          ? `! ${line.hazard.name}`
          : line.is === "message"
            ? `! ${line.text}`
            : line.is,
    );

test("a hazard stands once before the first of its precautions, and again on the way back before the first touch", () => {
  const { strip, refit } = press(`
    step "Vent" { vent oil-pressure  prove-zero oil-pressure }
    step "Lid" { undo lid-screws  remove lid }
    step "Ram" { undo ram-screws  remove ram }
  `);
  expect(told(strip)).toEqual([
    "! Pressure",
    "Vent:",
    "Prove zero:",
    "Undo the 4 lid screws.",
    "Remove the lid.",
    "Undo the 2 ram screws.",
    "! Sharp edge.",
    "Remove the ram.",
  ]);
  expect(told(refit)).toEqual([
    "! Pressure",
    "! Sharp edge.",
    "Fit the ram.",
    "Fit and tighten the 2 ram screws.",
    "Fit the lid.",
    "Fit and tighten the 4 lid screws.",
    "Take back (vent):",
  ]);
});

test("in the final tests a hazard stands again: before its precautions are taken anew, before they end, before what is bled", () => {
  const steps = `
    step "Vent" { vent oil-pressure  prove-zero oil-pressure  undo lid-screws  remove lid  undo ram-screws  remove ram }
    finish { vent oil-pressure  prove-zero oil-pressure  note "Look."  restore oil-pressure  bleed oil }
  `;
  const fluid =
      'fluid oil "Oil" { volume 1 L  bleeds at bleed-screw } fastener bleed-screw screw "Bleed screw" { into bed }',
    other = 'hazard jet pressure danger "Jet" { on bleed-screw  precaution other "Goggles on." }';
  const { refit, finish } = press(steps, `${fluid} ${other}`);
  expect(told(refit)[0]).toBe("! Pressure");
  expect(told(finish)).toEqual([
    "! Pressure",
    "Vent:",
    "Prove zero:",
    "note",
    "! Pressure",
    "End the precautions against this hazard for the powered test: pressure.",
    "! Jet",
    "Bleed the oil at the bleed screw.",
  ]);
  // Taken away on the way back, taken anew, ended: before none of these is one asked to be still in place.
  for (const line of finish.flatMap((group) => group.lines))
    if (line.is === "hazard") expect(mustStand(line.hazard, options.wording)).toEqual([]);
});

test("where nothing is printed to take a precaution back, no hazard stands by itself", () => {
  const { strip, refit } = press(
    'step "Gloves" { other skin } step "Lid" { vent oil-pressure  prove-zero oil-pressure  undo lid-screws  remove lid  undo ram-screws  remove ram }',
    'hazard skin chemical caution "Skin" { on press-foot  precaution other "Gloves on." } part press-foot "Foot" { rests on bed }',
  );
  expect(told(strip).slice(0, 2)).toEqual(["! Skin", "Precaution:"]);
  expect(told(refit)).not.toContain("! Skin");
  expect(told(refit)).toContain("! Pressure");
});

test("a message on a thing stands in every step that handles it, once in each", () => {
  const { strip } = press(`
    step "Vent" { vent oil-pressure  prove-zero oil-pressure  undo lid-screws  remove lid }
    step "Hold" { support ram with hoist  hold ram with hoist }
    step "Ram" { undo ram-screws  remove ram }
  `);
  expect(told(strip).filter((line) => line === "! Sharp edge.")).toHaveLength(2);
});

test("a message that several things share stands once in a step, before the first of them, with all that the step handles", () => {
  const facts = `part cap "Cap" { pieces left, right  fits bed  notice "Soft." piece right { caution "Hot." } }`;
  const { strip } = press('step { remove cap.left note "Look." remove cap.right } step { remove lid }', facts);
  expect(told(strip.slice(0, 1))).toEqual(["! Soft.", "Remove cap left.", "note", "! Hot.", "Remove cap right."]);
  const messages = strip[0]!.lines.flatMap((line) => (line.is === "message" ? [line.on] : []));
  expect(messages).toEqual(["cap left and right", "cap right"]);
});

test("a reading, a mark and a note call up no message", () => {
  const { strip } = press(`
    step "Vent" { vent oil-pressure  prove-zero oil-pressure  undo lid-screws  remove lid }
    step "Look" { inspect ram-face on ram "No scratch"  note "Look well." }
    step "Ram" { undo ram-screws  remove ram }
  `);
  expect(told(strip).filter((line) => line === "! Sharp edge.")).toHaveLength(1);
  expect(told(strip).indexOf("! Sharp edge.")).toBe(told(strip).length - 2);
});

test("the unit is turned back before the last precautions are taken away", () => {
  const steps = `
    step "Vent" { vent oil-pressure  prove-zero oil-pressure }
    step "Lid" { turn to down  undo lid-screws  remove lid }
    step "Ram" { undo ram-screws  remove ram }
  `;
  const { refit, context } = press(steps);
  expect(told(refit).slice(-2)).toEqual(["Turn the unit back: up.", "Take back (vent):"]);
  expect(endTurnBefore(context.performance)).toBe(context.performance.refit.findIndex(({ op }) => op.verb === "lift"));
});

test("a hazard that only the final tests touch stands before them", () => {
  const { finish } = press(`step "Lid" { undo lid-screws  remove lid }  finish { vent oil-pressure }`);
  expect(told(finish)).toEqual(["! Pressure", "Vent:"]);
});

test("there is one place for each act", () => {
  const {
      context: { performance },
    } = press(`step "Lid" { undo lid-screws  remove lid }`),
    placement = placementOf(performance);
  for (const half of ["strip", "refit", "written", "finish"] as const)
    expect(placement[half]).toHaveLength(performance[half].length);
});

test("before a precaution is taken back nobody is told that it must stand", () => {
  const asked = (steps: string): boolean[] =>
    press(steps)
      .refit.flatMap((group) => group.lines)
      .flatMap((line) => (line.is === "hazard" ? [mustStand(line.hazard, options.wording).length > 0] : []));
  const safe = "step { vent oil-pressure  prove-zero oil-pressure }";
  // Told at the screws that it is on, where it does stand; and only at the taking back, where it no longer does.
  expect(asked(`${safe} step { undo lid-screws  remove lid  undo ram-screws  remove ram }`)).toEqual([true]);
  expect(asked(`${safe} step { undo lid-screws  remove lid }`)).toEqual([false]);
});

test("what is handled without being undone calls for its hazard too: the part that grease goes on, that is worked, that is measured", () => {
  for (const act of [
    `apply ram-grease to ram`,
    `work ram "Stone the face."`,
    `measure wear on ram "Width of the ram" at least 20 mm`,
  ]) {
    const { refit } = press(
      `
    step "Vent" { vent oil-pressure  prove-zero oil-pressure }
    step "Lid" { undo lid-screws  remove lid }
    step "Ram" { undo ram-screws  remove ram  refit {
      ${act}
      reverse
    } }
  `,
      "",
      `consumable ram-grease "Ram grease"`,
    );
    const lines = told(refit);
    expect(lines[0], act).toBe("! Pressure");
    expect(lines[1], act).toMatch(/^(Apply|At the ram|Measure)/);
  }
});

// What guards against a weight is no business of a mark or of a cloth: its warning stands where the load is taken, moved or let go.
test("a hazard of weight stands before the act that takes, moves or frees the load, and not before one that only handles it", () => {
  const { strip, refit } = press(
    `step "Mark" { vent oil-pressure  prove-zero oil-pressure  undo lid-screws  remove lid
      mark ram, bed as M "Line."  clean ram }
    step "Ram" { prop above  barrier load  support ram with hoist  undo ram-screws  remove ram by 2 people
      refit { clean ram  reverse } }`,
    `hazard load heavy warning "Load" { on ram  precaution barrier "Rope off." back "Ropes away." }
     hazard above overhead danger "Above" { on ram  precaution prop "Prop in." back "Prop out." }`,
    'tool hoist "Hoist" { capacity 90 kg }',
  );
  const after = (lines: string[], what: string): string | undefined => lines[lines.indexOf("! Load") + 1] ?? what;
  expect(after(told(strip), "none")).toBe("Barrier:");
  // What hangs above falls on whoever only marks the part below it.
  expect(told(strip).indexOf("! Above")).toBeLessThan(told(strip).indexOf("Mark the ram and the bed (mark M)."));
  expect(told(strip).indexOf("! Load")).toBeGreaterThan(told(strip).indexOf("Clean the ram."));
  expect(told(refit).indexOf("! Load")).toBeGreaterThan(told(refit).indexOf("Clean the ram."));
  expect(told(refit).indexOf("! Load")).toBeLessThan(told(refit).indexOf("Fit the ram, 2 people."));
});

test("what several people took off, they fit; what turned the unit in the strip is named where it is turned on the way back", () => {
  const { refit } = press(
    `step "Ram" { vent oil-pressure  prove-zero oil-pressure  undo lid-screws  remove lid by 2 people
      turn to down with stand by 3 people  undo ram-screws  remove ram }`,
    "",
    'tool stand "Stand"',
  );
  expect(told(refit)).toContain("Fit the lid, 2 people.");
  const turns = refit.flatMap(({ lines }) => lines.filter((line) => line.is === "action" && line.verb === "turn"));
  expect(turns.map((line) => (line.is === "action" ? line.details.map(({ says }) => says) : []))).toContainEqual([
    "With: stand.",
    "People: 3.",
  ]);
});

test("a precaution that a refit block takes first is not asked to be still in place", () => {
  const { strip, refit } = press(
    `step "Vent" { vent oil-pressure  prove-zero oil-pressure  undo lid-screws  remove lid }
     step "Ram" { undo ram-screws  remove ram
       refit { other glow  heat ram to 90 °C  reverse } }`,
    'hazard glow hot warning "Warm ram" { temperature 90 °C  precaution other "Gloves on." }',
  );
  const asked = (groups: typeof strip): (readonly [string, readonly string[]])[] =>
    groups.flatMap(({ lines }) =>
      lines.flatMap((line) =>
        line.is === "hazard" ? [[line.hazard.name, mustStand(line.hazard, options.wording)] as const] : [],
      ),
    );
  expect(asked(strip).map(([name]) => name)).toEqual(["Pressure"]);
  const back = new Map(asked(refit));
  expect(back.get("Warm ram")).toEqual([]);
  expect(back.get("Pressure")).toHaveLength(1);
});

// What follows from a bad reading may be a whole branch: a build of its own, which the plain papers do not hold.
test("a reading with more written for the case that it fails says in which papers that stands, and no more in these", () => {
  const text = `unit press "Press" { base bed  part bed "Bed"  part ram "Ram"
  fastener ram-screws screw "Ram screws" { count 2  joins ram to bed } }
procedure strip "Strip" for press { aim ram off  step "Ram" {
  inspect bore on ram "No score" otherwise { note "Hone it." }
  inspect face on ram "No dent" else "Dress it."
  undo ram-screws  remove ram } }`;
  const { performances } = checkProject(memoryWorld(new Map([["/project/press.strip", text]]), [], "/project/"), [
    "/project/press.strip",
  ]);
  const ofBuild = (name: string) => performances.find(({ model }) => model.build === name);
  const otherwise = (build: string): readonly string[] =>
    linesOf(ofBuild(build)!, options).strip.flatMap(({ lines }) =>
      lines.flatMap((line) => (line.is === "action" ? line.readings.flatMap((reading) => reading.otherwise) : [])),
    );
  expect(otherwise("plain")).toEqual(['If not: go on by the papers of the build "bore failing".', "If not: Dress it."]);
  expect(otherwise("bore failing")).toEqual(["If not: Dress it."]);
});
