// Odd builds and branches: each finding names the smallest condition, and what no build can meet is found.

import { expect, test } from "vitest";
import { checkProject } from "../../language/workspace/check-project.ts";
import { worldOf } from "../bench/refit/stage.ts";

const lid = (properties = "count 4"): string =>
  `part lid "Lid" { mass 1 kg }\n fastener ls screw "Lid screws" { ${properties} size M5x12 drive hex 8 torque 4 N·m joins lid to b }`;
const says = (facts: string, ...procedures: string[]): string[] =>
  checkProject(
    worldOf({
      "a.strip": `unit u "Unit" { base b\n part b "Base" { mass 3 kg }\n ${facts} }\n${procedures.map((one, i) => `procedure p${i} "P${i}" for u { ${one} }`).join("\n")}`,
    }),
    ["a.strip"],
  )
    .findings.filter(({ severity }) => severity !== "hint")
    .map(({ code, says: text, builds }) => `${code} ${text}${builds.length > 0 ? ` (${builds.join(", ")})` : ""}`);
const open = "step { undo ls remove lid }";

test("two options of which one is forgotten: with that one alone", () => {
  const facts = ["glass", "steel"].map(
    (one) =>
      `option ${one} if ${one} { part ${one}-lid "${one} lid" { mass 1 kg } fastener ${one}-screws screw "${one} screws" { torque 4 N·m joins ${one}-lid to b } }`,
  );
  expect(
    says(
      `${facts.join("\n")}\n part core "Core" { fits b if glass { behind glass-lid } if steel { behind steel-lid } }`,
      "aim core off if glass { step { undo glass-screws remove glass-lid } } step { remove core }",
    ),
  ).toEqual(["sequence/blocked Core cannot come off: steel lid is in front of it (with steel)"]);
});

test("an option inside a variant: with both, and the act that forgets the variant with the other", () => {
  const facts = `variants a, c option heater ${lid()}\n if a { if heater { part coil "Coil" { mass 1 kg } fastener cs screw "Coil screws" { torque 4 N·m joins coil to b behind lid } } }`;
  expect(says(facts, `aim all apart ${open}`)).toEqual([
    "removal/never-undone Coil screws are never undone (with a and heater)",
  ]);
  expect(says(facts, `aim all apart ${open} if heater { step { undo cs remove coil } }`)).toContain(
    "sequence/not-in-build Coil screws are not there: they are declared if a (with heater and c)",
  );
});

test("a variant that lacks what a procedure takes off, done by itself and on another", () => {
  const facts = `variants a, c ${lid()}\n if a { part cup "Cup" { rests on b behind lid } }`;
  const gone = "sequence/not-in-build Cup is not there: it is declared if a (with c)";
  expect(says(facts, `aim lid off ${open}`, "needs p0 aim cup off step { remove cup }")).toEqual([gone]);
  expect(says(facts, `aim lid off ${open}`, "aim lid off step { do p0 remove cup }")).toEqual([gone]);
});

test("found at the inspection inside a repeat: under the reading, both pieces in one finding", () => {
  const caps = `part cap "Cap" { pieces left, right } fastener cs screw "Cap screws" { pieces left, right count 2 torque 4 N·m joins cap to b }`;
  expect(
    says(
      caps,
      `aim cap off repeat for left, right { step { undo cs remove cap inspect seat on b "Good" if seat fails { undo cs } } }`,
    ),
  ).toEqual([
    "sequence/already-undone Cap screws left are undone already (the same for Cap screws right) (with seat fails)",
  ]);
});

test("a free choice that is wrong with one option only", () => {
  const facts = `option fan part lid "Lid" { if fan { behind blade } } if fan { part blade "Blade" { rests on b } } fastener ls screw "Lid screws" { torque 4 N·m joins lid to b }`;
  expect(says(facts, `aim lid off either { if fan { step { remove blade } } ${open} } or { ${open} }`)).toEqual([
    "sequence/blocked Lid cannot come off: Blade is in front of it (with fan and the other choice)",
  ]);
});

test("a task that is done alone is wrong in one variant", () => {
  expect(
    says(
      `variants a, c ${lid()}`,
      `aim lid off task quick "Quick" does two step one { unless a { undo ls } } step two { if a { undo ls } remove lid }`,
    ),
  ).toEqual(["sequence/task Quick cannot be done alone: still held by 4 of 4 Lid screws (with c)"]);
});

test("a condition that no build can meet is found, by itself and inside another", () => {
  const facts = `variants a, c option fan ${lid()}`;
  const found = (condition: string): string[] => says(facts, `aim lid off ${open} ${condition} { step { note "x" } }`);
  expect(found("if a and c")).toEqual(["names/never-holds if a and c never holds: no build is both"]);
  expect(says(facts, `aim lid off ${open} if a { unless a { step { note "x" } } }`)).toEqual([
    "names/never-holds unless a never holds here: it stands inside if a",
  ]);
  expect(says(facts, `aim lid off ${open} if a { if fan { if c or a { step { note "x" } } } }`)).toEqual([]);
  for (const met of ["if a or c", "unless a", "if a and fan", "unless a and c"]) expect(found(met), met).toEqual([]);
});

test("what is said twice of one thing is found where one build has both, and not where no build has", () => {
  const twice = (properties: string): string[] =>
    says(`variants a, c option fan ${lid(properties)}`, `aim lid off ${open}`);
  const count = (when: string): string =>
    `names/said-twice Lid screws: count is said twice, and only the first is read${when}`;
  expect(twice("count 4 count 6")).toEqual([count("")]);
  expect(twice("count 4 if c { if fan { count 6 } }")).toEqual([count(" (if c, if fan)")]);
  expect(twice("if fan { count 4 } if c { count 6 }")).toEqual([count(" (if fan, if c)")]);
  expect(twice("if a { count 4 } if c { count 6 }")).toEqual([]);
  expect(twice("unless fan { count 4 } if fan { count 6 }")).toEqual([]);
  expect(twice("count 4 count 4")).toEqual([]);
  expect(
    says(`hazard h electrical danger "H" { on b voltage 48 V voltage 560 V precaution prove-dead "Tested." }`),
  ).toContain("names/said-twice H: voltage is said twice, and only the first is read");
});

test("what hangs on a reading that is taken later is found, in a step; what is left at the end may hang on it", () => {
  const later = (acts: string, head = ""): string[] => says(lid(), `aim lid off ${head} ${acts}`);
  const reading = `step { undo ls remove lid inspect bore on b "Good" }`;
  expect(later(`if bore fails { step { note "x" } } ${reading}`)).toEqual([
    "sequence/read-later if bore fails comes before bore is read",
  ]);
  expect(later(`${reading} if bore fails { step { note "x" } }`)).toEqual([]);
  expect(later(reading, `if bore fails { leaves off lid }`)).toEqual([]);
  expect(later(`step { refit { if bore fails { note "x" } reverse } } ${reading}`)).toEqual([]);
});
