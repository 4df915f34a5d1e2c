// A name is held against what is declared in every place where one is due; and one mistake is said once.

import { expect, test } from "vitest";
import { hasDueRow } from "../../language/checks/due-names.ts";
import { nearestName } from "../../language/checks/near-names.ts";
import { withoutDoubt } from "../../language/checks/rests-on-unknown.ts";
import { surveyOf } from "../../language/checks/survey-of-names.ts";
import { loadProject } from "../../language/names/load.ts";
import { macros, vocabulary } from "../../language/vocabulary/index.ts";
import { defaultSettings } from "../../language/world/settings.ts";
import { checkProject } from "../../language/workspace/check-project.ts";
import { memoryWorld } from "../support/memory-world.ts";

const machine = (facts = "", steps = "", more = "", head = ""): string => `${more}
unit u "Pump" {
  positions upright, on-side
  base b
  variants early, late
  option heater
  part b "Base"
  part lid "Lid"
  part cap "Cap" { pieces 1..3  fits b }
  fastener lid-screws screw { count 4  joins lid to b }
  fluid oil oil { drains at lid-screws }
  hazard bus electrical danger { on lid  precaution isolate "Off."  precaution prove-dead "Meter." }
  ${facts}
}
procedure p "Strip" for u {
  ${head}
  step open-up "Open" { measure gap on lid "Gap" at most 1 mm  ${steps} }
}
`;

function unknown(text: string, files: Readonly<Record<string, string>> = {}): string[] {
  const world = memoryWorld(
    new Map([
      ["/p/m.strip", text],
      ...Object.entries(files).map(([name, body]): [string, string] => [`/p/${name}`, body]),
    ]),
  );
  const project = loadProject(world, ["/p/m.strip"]);
  return surveyOf(project, project.files.get("/p/m.strip")!).unknown.map(
    (one) => `${one.text}: ${one.is === undefined ? one.due : `is a ${one.is}`}`,
  );
}

test("a text without a slip has none", () => {
  expect(
    unknown(
      machine(
        `part pad { fits b  behind lid  needs on-side }\nif late and heater { part fan { rests on b } }\norder open-up before lid`,
        `undo lid-screws  lock-out bus  drain oil into bucket  turn on-side  do p  repeat for 1..3 { clean cap }  clean cap.2 before lid`,
        `tool bucket\nrole fitter`,
        "role fitter  aim lid off  starts drained oil",
      ),
    ),
  ).toEqual([]);
});

test.each([
  ["part x { fits nix }", "nix: part"],
  ["part x { rests on nix }", "nix: part"],
  ["part x { between b and nix }", "nix: part"],
  ["part x { behind nix }", "nix: thing"],
  ["part x { needs nix }", "nix: position"],
  ["part x { lift by 2 people with nix }", "nix: tool"],
  ["part x { is unit nix }", "nix: unit"],
  ["part x { like nix }", "nix: like"],
  ["fastener x { joins nix to b }", "nix: part"],
  ["fastener x { into b  with nix }", "nix: washer"],
  ["fastener x { into b  thread-locker nix }", "nix: stores"],
  ["fastener x { into b  torque standard nix }", "nix: table"],
  ["fastener x { count 2 per nix  into b }", "nix: thing"],
  ["joint x hose { joins lid to b  opens nix }", "nix: fluid"],
  ["fluid x { fills at nix }", "nix: thing"],
  ["hazard x hot { on nix }", "nix: thing"],
  ["hazard x spring { on lid  pushes nix }", "nix: part"],
  ["hazard x hot { on lid  role nix }", "nix: role"],
  ["hazard x hot { on lid  precaution cool behind nix }", "nix: thing"],
  ["renew always nix", "nix: kind"],
  ['warn caution "Sharp." on nix', "nix: kind or thing"],
  ["if nix { part x }", "nix: condition"],
  ["order nix before lid", "nix: step or thing"],
  ["part x { fits lid-screws }", "lid-screws: is a fastener"],
  ["part x { behind cap.4 }", "cap.4: thing"],
])("in the unit: %s", (facts, said) => {
  expect(unknown(machine(facts))).toEqual([said]);
});

test.each([
  ["undo nix", "nix: thing"],
  ["undo 2 of nix", "nix: thing"],
  ["remove lid with nix", "nix: tool"],
  ["undo lid-screws into nix", "nix: tool"],
  ["turn to nix", "nix: position"],
  ["drain nix", "nix: fluid"],
  ["lock-out nix", "nix: hazard"],
  ["restore nix", "nix: hazard"],
  ["apply nix to lid", "nix: stores"],
  ["apply nix to nix-2", "nix: stores nix-2: thing"],
  ["put nix on lid", "nix: temporary"],
  ["do nix", "nix: procedure or step"],
  ["repeat from nix", "nix: step"],
  ['measure "Play" at most 1 mm else renew nix', "nix: thing"],
  ['inspect seat on nix "Good"', "nix: thing"],
  ['measure w on nix "Wear" at most 1 mm', "nix: thing"],
  ["refit { fit lid after nix }", "nix: step or thing"],
  ["refit by nix", "nix: procedure"],
  ["if nix fails { clean lid }", "nix: condition"],
  ["unless nix removed { clean lid }", "nix: thing"],
  ["undo oil", ""],
  ["drain lid", "lid: is a part"],
  ["lock-out lid", "lid: is a part"],
])("in a step: %s", (steps, said) => {
  expect(unknown(machine("", steps)).join(" ")).toBe(said);
});

test.each([
  ["aim nix off", "nix: thing"],
  ["needs nix", "nix: procedure"],
  ["starts with lock-out nix", "nix: hazard"],
  ["leaves off nix", "nix: thing"],
  ["role nix", "nix: role"],
  ['task t "T" does nix', "nix: step"],
])("at the head of a procedure: %s", (head, said) => {
  expect(unknown(machine("", "", "", head))).toEqual([said]);
});

test("a procedure for an unknown unit is said once, and nothing inside it", () => {
  expect(unknown(`procedure p "P" for nix { aim lid off step { undo these with those } }`)).toEqual(["nix: unit"]);
});

test("what a file that cannot be read may declare is left alone, what stands in the unit itself is not", () => {
  expect(unknown(machine("", "remove lid with puller  apply grease to lid  clean nix", `use "gone.strip"`))).toEqual([
    "nix: thing",
  ]);
});

test("a declaration that cannot be read has its name all the same, or leaves it in doubt", () => {
  expect(unknown(machine('part pad gaskett "Pad"\nfastner clips clip', "remove pad  undo clips"))).toEqual([]);
});

test("a unit in its own file may speak of readings that a procedure elsewhere takes", () => {
  expect(unknown(`unit u { base b part b  if bore fails { part sleeve { fits b } } }`)).toEqual([]);
});

test("every word of the vocabulary that takes names has its row", () => {
  const takesNames = (shape: string): boolean =>
    [...shape.matchAll(/<(\w+)(?::\w+)?>/g)].some(
      ([, name = ""]) => name === "name" || name === "item" || (macros[name] !== undefined && takesNames(macros[name])),
    );
  const acts = new Set(["step", "refit", "finish", "procedure"]),
    conditions = new Set(["if", "unless"]);
  expect(
    vocabulary
      .filter(
        (entry) =>
          !acts.has(entry.place) &&
          !conditions.has(entry.word) &&
          takesNames(entry.shape) &&
          !hasDueRow(entry.place, entry.word),
      )
      .map((entry) => `${entry.place} ${entry.word}`),
  ).toEqual([]);
});

test("near names: a slip of the hand, never a guess", () => {
  expect(nearestName("lid-screw", ["lid-screws", "guard-screws", "lid"])).toBe("lid-screws");
  expect(nearestName("csaing", ["casing", "key"])).toBe("casing");
  expect(nearestName("key", ["lid", "nut"])).toBeUndefined();
  expect(nearestName("M2", ["M1", "M3"])).toBeUndefined();
  expect(nearestName("part-a", ["part-c", "part-b"])).toBe("part-b");
});

const hidden = (
  step: string,
  more = "",
): string => `unit u { base b part b part lid  fastener lid-screws { count 4 joins lid to b }  hazard bus electrical danger { on lid  precaution isolate "Off." precaution prove-dead "Meter." } }
procedure p for u { aim lid off step { ${step} remove lid } }
${more}`;

/** Rules of the bench's problems, with all of their reasons, that are left. */
function kept(text: string, settings = defaultSettings): string[][] {
  const world = memoryWorld(new Map([["/p/m.strip", text]])),
    { project, performances } = checkProject(world, ["/p/m.strip"]);
  return performances
    .flatMap((performance) =>
      performance.problems.flatMap((problem) => withoutDoubt(problem, { project, settings, world, performance }) ?? []),
    )
    .map((problem) => [problem.rule, ...problem.reasons.map((reason) => reason.rule)]);
}

test("what rests on an unknown name is left out, in callers too", () => {
  expect(kept(hidden("isolate bus prove-dead bus undo lid-screw"))).toEqual([]);
  expect(kept(hidden("isolate bus prove-dead bus undo lid-screw", "procedure q for u { aim lid off do p }"))).toEqual(
    [],
  );
  expect(kept(hidden("isolate bus prove-dead bus")).flat()).toContain("sequence/still-held");
});

test("a hazard among the reasons of one refused act is kept, and speaks first", () => {
  expect(kept(hidden("undo lid-screw"))).toEqual([["hazard/not-yet", "hazard/not-yet"]]);
});

test("a name in doubt in the unit casts doubt on every procedure for it", () => {
  expect(kept(hidden("isolate bus prove-dead bus undo lid-screws").replace("joins lid to", "joins lidd to"))).toEqual(
    [],
  );
});

test("where the unknown name is not reported as an error, nothing is left out", () => {
  const text = hidden("isolate bus prove-dead bus undo lid-screw");
  for (const severity of ["off", "hint", "warning"] as const)
    expect(kept(text, { ...defaultSettings, severity: { "names/unknown": severity } }).flat()).toContain(
      "sequence/still-held",
    );
  expect(kept(`# allow names/unknown: known\n${text}`).flat()).toContain("sequence/still-held");
});

test("what stands before the unknown name is still said, and an unknown tool casts no doubt", () => {
  expect(kept(hidden("isolate bus prove-dead bus remove lid clean nix")).flat()).toContain("sequence/still-held");
  expect(kept(hidden("isolate bus prove-dead bus clean lid with nix")).flat()).toContain("sequence/still-held");
});
