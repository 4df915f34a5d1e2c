// One line that is missing shows in several places: one finding at the root, the others among its reasons with their places, and as
// grave as the gravest of them.

import { expect, test } from "vitest";
import type { Finding } from "../../language/findings/finding.ts";
import { checkProject } from "../../language/workspace/check-project.ts";
import { check, codes, findings, stage, worldOf } from "../bench/refit/stage.ts";

const reasonsOf = (found: Finding | undefined): string[] => found?.because.map(({ says }) => says) ?? [];
/** Of texts that are checked together. */
const found = (texts: Readonly<Record<string, string>>): Finding[] =>
  checkProject(worldOf(texts), Object.keys(texts)).findings.filter(
    ({ code, severity }) => severity !== "hint" && /^(?:sequence|removal|refit|hazard|syntax|names)\//.test(code),
  );

test("a line that goes on from one that is missing is that mistake, with the reading that the line would have made", () => {
  const text = (reading: string): string =>
    stage(
      `part lid "Lid"\n fastener screws screw "Screws" { joins lid to b }`,
      `step {\n  undo screws\n  remove lid\n  ${reading}\n    else renew lid\n    else "Ask."\n  clean b\n  if gap fails {\n   note "Tell."\n  }\n }`,
      "aim lid off",
    );
  expect(codes(text('measure gap on lid "Gap" 0.1..0.2 mm'))).toEqual([]);
  const [first, ...more] = findings(text(""));
  expect(more).toEqual([]);
  expect(first).toMatchObject({ code: "syntax/line-missing", severity: "error" });
  expect(first!.says).toContain("else goes on from a line above it that begins with measure, inspect");
  expect(reasonsOf(first).join()).toContain("gap is not declared in U");
});

test("else before a block stays what it was, another word for otherwise", () => {
  const text = stage("", 'step {\n  clean b\n  else {\n   note "Tell."\n  }\n }');
  expect(findings(text).map(({ code, says }) => [code, says])).toEqual([
    ["syntax/word-unknown", "Unknown word else: here it is called otherwise"],
  ]);
});

const hanging = (allow: string): string =>
  stage(
    `part lid "Lid"\n fastener screws screw "Screws" { joins lid to b }\n hazard load heavy "Load" {\n ${allow}\n like hanging-load\n on lid\n }`,
    "step { barrier load undo screws remove lid }",
    "aim lid off",
  );

test("a hazard that is like a type which nothing declares has no precaution for that: a reason there, and an error by itself where the name is allowed", () => {
  const [first, ...more] = findings(hanging(""));
  expect(more).toEqual([]);
  expect(first).toMatchObject({ code: "names/unknown", severity: "error" });
  expect(reasonsOf(first)).toEqual(["Load has no precaution", "Load declares no barrier"]);
  expect(codes(hanging("# allow names/unknown: it stands in the works file"))).toEqual(["hazard/no-precaution"]);
});

test("what a hazard lacks while a line in it cannot be read is a reason of that line, never left out", () => {
  const text = stage(
    `part lid "Lid"\n fastener screws screw "Screws" { joins lid to b }\n hazard load heavy "Load" {\n on lid\n precation barrier "Rope it off."\n }`,
    "step { barrier load undo screws remove lid }",
    "aim lid off",
  );
  const [first, ...more] = findings(text);
  expect(more).toEqual([]);
  expect(first!.code).toBe("syntax/word-unknown");
  expect(findings(text.replace("precation barrier", "precaution barrier"))).toEqual([]);
  const other = findings(text.replace('precation barrier "', 'wear gloves "'));
  expect(other.map(({ code }) => code)).toEqual(["syntax/unexpected"]);
  expect(reasonsOf(other[0])).toEqual(["Load has no precaution", "Load declares no barrier"]);
});

const drive = `unit drive "Drive" {
  base case
  part case "Case"
  part cover "Cover"
  part seal seal "Seal" { fits case  behind cover  renew always }
  fastener cover-screws screw "Cover screws" { joins cover to case }
}
procedure drive-strip "Strip the drive" for drive {
  aim all apart
  starts on bench
  step { undo cover-screws  remove cover  remove seal }
}
`;
const around = (call: string): string =>
  drive +
  stage(
    `part drive "Drive" { is unit drive }\n fastener feet bolt "Feet" { joins drive to b }`,
    `step { undo feet  remove drive }\n ${call}`,
    "aim all apart",
  );

test("the call of a procedure that takes a unit inside apart: parts that stay on and screws that stay in are that one line", () => {
  expect(codes(around("do drive-strip on drive"))).toEqual([]);
  const [first, ...more] = findings(around(""));
  expect(more).toEqual([]);
  expect(first).toMatchObject({ code: "removal/missing", severity: "error" });
  expect(reasonsOf(first)).toEqual(
    expect.arrayContaining([
      "Strip the drive does all of this, and is not called before",
      "Cover screws are never undone",
    ]),
  );
});

test("what the bench finds of a danger in a block that no line opens is a reason of that, with its place", () => {
  const text = (head: string): string => `unit u "U" {
  base b
  part b "Base"
  part guard guard "Guard"
  fastener screws screw "Screws" { joins guard to b }
  hazard start rotating danger "Motor can start" {
    on screws, guard
    precaution isolate "Isolator off." back "Isolator on."
    precaution try-start "Press start."
  }
}
procedure p "P" for u {
  aim guard off
  step "Guard" {
    isolate start
    try-start start
    undo screws
    remove guard
  }
  ${head}
    clean b
    restore start
  }
}
`;
  expect(codes(text("finish {"))).toEqual([]);
  const [first, ...more] = findings(text(""));
  expect(more).toEqual([]);
  expect(first).toMatchObject({ code: "syntax/head-missing", severity: "error" });
  expect(first!.because.find(({ says }) => says.startsWith("Motor can start is restored"))?.at).toBeDefined();
});

test("what hides a part that comes along may have come along by the fastener that nothing declares", () => {
  const text = (screws: string): string =>
    stage(
      `part pump "Pump"\n part cover "Cover"\n part gear "Gear" { fits pump by slide-fit  behind cover }\n fastener bolts bolt "Bolts" { joins pump to b }\n ${screws}\n joint pipe slide-fit "Pipe" { joins cover to b }`,
      "step { undo bolts  remove pump  undo cover-screws  remove cover  remove gear }",
      "aim pump, cover, gear off",
    );
  expect(codes(text('fastener cover-screws screw "Cover screws" { joins cover to pump }'))).toEqual([]);
  const [first, ...more] = findings(text(""));
  expect(more).toEqual([]);
  expect(first).toMatchObject({ code: "names/unknown", severity: "error" });
  expect(reasonsOf(first)).toContain("Pump cannot come off: Gear, which comes along, is behind Cover");
});

test("a unit whose own parts are in each other's way is told on its own bench, and the unit around it is a reason there", () => {
  const texts = (joint: string): Record<string, string> => ({
    "ram.strip": `unit ram "Ram" {
  base barrel
  part barrel "Barrel"
  part gland "Gland"
  part rod "Rod"
  part piston "Piston" { behind barrel }
  part ring seal "Ring" { fits gland  behind rod  renew always }
  fastener gland-nut nut "Gland nut" { joins gland to barrel }
  fastener piston-nut nut "Piston nut" { joins piston to rod  behind barrel }
  ${joint}
  joint gland-on-rod slide-fit "Gland on the rod" { joins gland to rod  behind piston }
}
procedure reseal "Reseal" for ram {
  aim ring off
  step { undo gland-nut  remove rod  undo piston-nut  remove piston  remove gland  remove ring }
}
`,
    "table.strip": `use "ram.strip"
unit table "Table" {
  base frame
  part frame "Frame"
  part ram "Ram" { is unit ram }
  fastener pivot bolt "Pivot" { joins ram to frame }
}
procedure table-reseal "Reseal the ram" for table {
  aim ram.ring off
  step { undo pivot  remove ram }
  do reseal on ram
}
`,
  });
  expect(found(texts('joint rod-in-barrel slide-fit "Rod" { joins rod to barrel  behind gland-nut }'))).toEqual([]);
  const [first, ...more] = found(texts(""));
  expect(more).toEqual([]);
  expect(first).toMatchObject({ code: "sequence/blocked", at: { file: "ram.strip" } });
  expect(first!.because.find(({ at }) => at?.file === "table.strip")?.says).toContain("Ram cannot come off");
});

const filter = (aims: string, more = ""): string => `unit filter "Filter" {
  base head
  part head "Head"
  part bowl "Bowl"
  part element "Element" { fits bowl }
  fastener bolts bolt "Bolts" { count 4  joins bowl to head }
}
procedure strip "Apart" for filter {
  aim bowl, element off
  step { undo bolts  remove bowl  remove element }
}
procedure build "Together" for filter {
  needs strip
  ${aims}
  step { fit element  fit bowl  fit bolts  ${more} }
}
`;

test("what only puts together and does not say so is asked for its aim, and as grave as what the bench then finds", () => {
  expect(codes(filter("aim all in"))).toEqual([]);
  expect(findings(filter(""))).toMatchObject([{ code: "removal/no-aim", severity: "question" }]);
  const [first, ...more] = findings(filter("", "slide bowl"));
  expect(more).toEqual([]);
  expect(first).toMatchObject({ code: "removal/no-aim", severity: "error" });
  expect(reasonsOf(first).join()).toContain("Bowl cannot be slid aside");
});

test("what takes apart and is a part of another procedure has no need of an aim", () => {
  const text = (aims: string, more: string): string =>
    stage(
      `part lid "Lid"\n fastener screws screw "Screws" { joins lid to b }`,
      "step { undo screws remove lid }",
      aims,
    ) + more;
  const hints = (of: string): string[] =>
    check(of).findings.flatMap(({ code, severity }) => (code === "removal/no-aim" ? [severity] : []));
  expect(hints(text("", ""))).toEqual(["hint"]);
  expect(hints(text("aim lid off", ""))).toEqual([]);
  expect(hints(text("", `procedure q "Q" for u {\n aim lid off\n do p\n}\n`))).toEqual([]);
});

test("statements of order against one and the same fact of the way back are one mistake", () => {
  const text = (orders: string): string =>
    stage(
      `part lid "Lid"\n part card "Card" { rests on b  behind lid }\n part fan "Fan" { rests on b }\n fastener screws screw "Screws" { count 4 joins lid to b }\n${orders}`,
      "step { undo screws  remove lid  remove card  remove fan }",
      "aim card, fan off",
    );
  expect(codes(text("order card before lid"))).toEqual([]);
  const said = (orders: string): string[] =>
    findings(text(orders)).map(({ code, because }) => `${code} ${because.length}`);
  const [one] = said("order lid before card");
  expect(said("order lid before card").length).toBe(1);
  expect(one).toBe("refit/contradiction 2");
  for (const second of ["order card after lid", "order screws before card"]) {
    const [first, ...more] = findings(text(`order lid before card\n${second}`));
    expect(more).toEqual([]);
    expect(first!.because.at(-1)!.at!.start).toBeGreaterThan(first!.at.start);
  }
  expect(reasonsOf(findings(text("order lid before card\norder card after lid"))[0])).toContain("said here too");
});

test("what an aim misses is one finding, whether it stays on or stays in", () => {
  const facts = `part lid "Lid"\n part fan "Fan" { fits b }\n fastener screws screw "Screws" { joins lid to b }`,
    [first, ...more] = findings(stage(facts, 'step { note "Nothing." }', "aim screws, fan off"));
  expect(more).toEqual([]);
  expect(first).toMatchObject({ code: "removal/missing", severity: "error" });
  expect(reasonsOf(first)).toContain("Screws are never undone");
});

const boxed = (inside: string, steps: string): string => stage(`option heater "Heater"\n ${inside}`, steps, "aim none");

test("names that all stand under one condition, and that nothing has, are the one block of declarations that is missing", () => {
  const steps = "step {\n if heater {\n undo coil-screws\n remove coil\n }\n clean b\n }",
    block = `if heater {\n part coil "Coil"\n fastener coil-screws screw "Coil screws" { joins coil to b }\n }`;
  expect(codes(boxed(block, steps))).toEqual([]);
  const [first, ...more] = findings(boxed("", steps));
  expect(more).toEqual([]);
  expect(first!.code).toBe("names/unknown");
  expect(reasonsOf(first).join()).toContain("coil is not declared in U");
  // Under no condition each is one of its own.
  expect(codes(boxed("", "step { undo coil-screws  remove coil }"))).toEqual(["names/unknown", "names/unknown"]);
});

test("readings like no other name are the one step that is missing, or the procedure that nothing declares", () => {
  const steps = (before: string): string =>
    stage(
      "",
      `${before}\n step "Tell" {\n if wall fails {\n note "Wall."\n }\n if seam fails {\n note "Seam."\n }\n }`,
      "aim none",
    );
  expect(
    codes(steps('step "Look" {\n inspect wall on b "Whole" else "Tell."\n inspect seam on b "Whole" else "Tell."\n }')),
  ).toEqual([]);
  const [first, ...more] = findings(steps(""));
  expect(more).toEqual([]);
  expect(reasonsOf(first).join()).toContain("seam is not declared in U");
  const called = findings(steps("do look-over"));
  expect(called.map(({ says }) => says)).toEqual([
    "look-over is not declared in this file or in any that it uses: a procedure or step is due",
  ]);
  expect(called[0]!.because).toHaveLength(2);
});

test("a unit, or a procedure, that nothing declares is one mistake in whatever files ask for it", () => {
  const texts = {
    "strip.strip": `use "box.strip"\nprocedure p "P" for drive {\n aim none\n step { note "Look." }\n}\n`,
    "box.strip": `unit box "Box" {\n base b\n part b "Base"\n part drive "Drive" { is unit drive  rests on b }\n}\n`,
  };
  const [first, ...more] = found(texts);
  expect(more).toEqual([]);
  expect(first!.code).toBe("names/unknown");
  expect(first!.because.some(({ at }) => at?.file === "strip.strip")).toBe(true);
});

test("a hazard that is spoken of and not declared is why no hazard of its kind is declared", () => {
  const text = (hazard: string): string =>
    stage(
      `part motor motor "Motor" { supply 400 V ac  rests on b }\n${hazard}`,
      "step {\n isolate mains\n prove-dead mains\n remove motor\n }",
      "aim motor off",
    );
  const mainsHazard = `hazard mains electrical danger "Mains" { on motor  source mains  voltage 400 V ac  precaution isolate "Open it." back "Close it."  precaution prove-dead "Test it." with tester }`;
  expect(codes(text(mainsHazard))).toEqual([]);
  const [first, ...more] = findings(text(""));
  expect(more).toEqual([]);
  expect(first).toMatchObject({ code: "names/unknown", severity: "error" });
  expect(reasonsOf(first).join()).toContain("no hazard of kind electrical is declared or dismissed");
});
