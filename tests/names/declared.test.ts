// Checks of declarations at their edges: where they speak, and where they must be silent.

import { expect, test } from "vitest";
import { checkProject } from "../../language/workspace/check-project.ts";
import type { World } from "../../language/world/world.ts";
import { memoryWorld } from "../support/memory-world.ts";

/** The project is the folder `/p`. */
const inFolder = (world: World): World => ({ ...world, inside: (path) => path.startsWith("/p/") });

function codes(text: string, only: RegExp, files: Readonly<Record<string, string>> = {}): string[] {
  const world = inFolder(
    memoryWorld(
      new Map([
        ["/p/m.strip", text],
        ...Object.entries(files).map(([name, body]): [string, string] => [`/p/${name}`, body]),
      ]),
    ),
  );
  return checkProject(world, [
    "/p/m.strip",
    ...Object.keys(files)
      .filter((name) => name.endsWith(".strip"))
      .map((name) => `/p/${name}`),
  ])
    .findings.filter((one) => only.test(one.code))
    .map((one) => `${one.severity} ${one.code}: ${one.says}`);
}
const unit = (lines: string): string => `unit u "U" { base b part b "B"\n${lines}\n}\n`;
const step = (lines: string): string => `procedure p "P" for u { aim none step { ${lines} } }\n`;

test("one name under two conditions is one name; under one condition, or without, it is two", () => {
  expect(
    codes(unit(`variants early, late\nif early { part x { fits b } }\nif late { part x { rests on b } }`), /duplicate/),
  ).toEqual([]);
  expect(codes(unit(`option h\nif h { part x { fits b } part x { fits b } }`), /duplicate/)).toHaveLength(1);
  expect(codes(unit(`option h\npart x { fits b }\nif h { fastener x { into b } }`), /duplicate/)).toEqual([
    "error names/duplicate: x is the name of a part already",
  ]);
});

test("a step of the name of a part; a tool that a used file has too", () => {
  expect(
    codes(
      unit(`part lid { fits b }`) +
        `procedure p for u { aim none step lid "L" { clean lid } step lid "M" { clean lid } }`,
      /duplicate/,
    ),
  ).toHaveLength(2);
  expect(codes(`use "s.strip"\ntool vice`, /duplicate/, { "s.strip": `tool vice` })).toEqual([
    "error names/duplicate: vice is the name of another tool already",
  ]);
});

test("the shop's library lists what there is; torque wrenches are chosen by range", () => {
  expect(codes(`tool vice\nconsumable grease`, /unused/)).toEqual([]);
  expect(
    codes(`tool w { kind torque-wrench range 1..5 N·m }\ntool vice\n${unit("option h")}${step("clean b")}`, /unused/),
  ).toHaveLength(2);
});

test("a ring of files is said once, whatever the order; one outside is not read", () => {
  const ring = { "a.strip": `use "b.strip"`, "b.strip": `use "c.strip"`, "c.strip": `use "a.strip"` };
  expect(codes("", /import/, ring)).toEqual([
    "warning names/import-cycle: a.strip uses b.strip uses c.strip uses a.strip: the files go round in a ring",
  ]);
  expect(codes(`use "../x.strip"`, /import/)).toEqual([
    `error names/import-outside: "../x.strip" cannot be used: it lies outside the project`,
  ]);
});

test("rings of like, and a unit in itself", () => {
  expect(codes(unit(`part x { fits b like x }`), /like/)).toEqual([
    "error names/like-cycle: x is said to be like itself",
  ]);
  expect(
    codes(`unit v { base c part c part d { fits c is unit u } }\n${unit("part e { fits b is unit v }")}`, /like/),
  ).toEqual([expect.stringContaining("u has a part that is unit v has a part that is unit u")]);
  expect(codes(`fastener m6 { like m8 }\nfastener m8 { size M8 }`, /like/)).toEqual([]);
});

test("procedures that do themselves, in a ring, or need each other first", () => {
  const procedure = (id: string, head: string, body: string): string =>
    `procedure ${id} "P" for u { ${head} step "S" { ${body} } }`;
  expect(codes(`${unit("")}\n${procedure("p", "", "do p")}`, /call/)).toEqual([
    "error names/call-cycle: p does p: it would never end",
  ]);
  expect(
    codes(
      [unit(""), procedure("p", "", "do q"), procedure("q", "", "do r"), procedure("r", "", "do q")].join("\n"),
      /call/,
    ),
  ).toEqual(["error names/call-cycle: q does r does q: it would never end"]);
  expect(codes([unit(""), procedure("p", "needs q", ""), procedure("q", "needs p", "")].join("\n"), /call/)).toEqual([
    "error names/call-cycle: p needs q needs p: none of them can ever be begun",
  ]);
  expect(codes([unit(""), procedure("p", "needs q", "do q"), procedure("q", "", "")].join("\n"), /call/)).toEqual([]);
});

test("figures: a falling range, none of something, another dimension, a bracket", () => {
  expect(codes(unit(`part x { fits b mass 5..3 kg }`), /^figure/)).toEqual([
    expect.stringContaining("figure/implausible: 5..3 falls"),
  ]);
  expect(codes(unit(`fastener f { count 0 into b }`), /^figure/)).toEqual([
    `warning figure/implausible: "count" cannot take 0: count from 1`,
  ]);
  expect(codes(unit(`part x { fits b mass 3 mm }`), /^figure/)).toHaveLength(1);
  // Real manuals print these: silent when the bracket is the rounding, a warning over 5 %.
  expect(
    codes(
      unit(`fastener f { into b torque 35 lb-ft (48 N·m) }\nfastener g { into b torque 22 lb-in (3 N·m) }`),
      /^figure/,
    ),
  ).toEqual([expect.stringContaining("warning figure/pair-disagrees: 22 lb-in is 2.49 N·m")]);
});

test("what is tied, carried, clamped, a washer or a host is attached", () => {
  expect(
    codes(
      unit(
        `part x { fits b } part y { rests on x } part z { between x and y } part w washer\nfastener f { into y with w }\npart alone`,
      ),
      /unattached/,
    ),
  ).toEqual([expect.stringContaining("alone is tied to nothing")]);
  // A misspelt name may be what holds it.
  expect(codes(unit(`part alone\nfastener f { joins alon to b }`), /unattached|unknown|joins-nothing/)).toEqual([
    expect.stringContaining("names/unknown: alon "),
  ]);
});

test("pictures: there, not there, outside; a film that is not there is a hint", () => {
  const shown = step(`photo "a.jpg" "A" photo "b.jpg" "B" photo "../c.jpg" "C" video "f.mp4" from 0:10 to 0:20`);
  expect(codes(unit("") + shown, /^media/, { "a.jpg": "" }).map((one) => one.split(":")[0])).toEqual([
    "warning media/missing",
    "error media/outside-folder",
    "hint media/missing",
  ]);
});

const rings = (lines: string): string[] => codes(unit(lines), /cycle/);

test("rings of behind: two, many, through what holds the hider; each once", () => {
  expect(rings(`part x { fits b behind y } part y { fits b behind x }`)).toHaveLength(1);
  expect(
    rings(
      `part x { fits b behind y } part y { fits b behind z } part z { fits b behind x } part w { fits b behind x }`,
    ),
  ).toEqual([expect.stringContaining("x is behind y, y is behind z, z is behind x")]);
  expect(rings(`part lid\npart plug { fits b behind lid }\nfastener f { joins lid to b behind plug }`)).toEqual([
    expect.stringContaining("lid is held by f, f is behind plug, plug is behind lid"),
  ]);
  expect(
    rings(
      `part x { fits b behind y } part y { fits b behind x } part v { fits b behind w } part w { fits b behind v }`,
    ),
  ).toHaveLength(2);
});

test("no ring: a diamond, what swings on a hinge, what leaves with its carrier", () => {
  expect(
    rings(`part x { fits b behind y, z } part y { fits b behind w } part z { fits b behind w } part w { fits b }`),
  ).toEqual([]);
  expect(
    rings(`part hinge hinge { fits b } part door { fits hinge }\nfastener f { joins door to b behind door }`),
  ).toEqual([]);
  expect(
    rings(
      `part carrier { fits b } part lid\npart plug { fits b behind lid }\nfastener f { joins lid to carrier behind plug }`,
    ),
  ).toEqual([]);
});

test("a chain of thousands is walked without recursion", () => {
  const n = 3000,
    lines = Array.from({ length: n }, (_, i) => `part p${i} { rests on b  behind p${(i + 1) % n} }`).join("\n");
  expect(rings(lines)).toHaveLength(1);
  expect(rings(lines.replace(/ behind p0 /, " "))).toEqual([]);
});
