// What is kept of a performance from one reading to the next is object by object what performing all afresh gives, and only what an edit
// changed, and what follows it, is performed.

import { globSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { checkProject, newMemo, type CheckMemo, type Checked } from "../../language/workspace/check-project.ts";
import { memoryWorld } from "../support/memory-world.ts";
import { numbers } from "../support/numbers.ts";

/** The way to the first place where two values differ; undefined where there is none. What both share is compared once. */
function difference(a: unknown, b: unknown, way = "", seen = new Map<object, object>()): string | undefined {
  if (typeof a !== "object" || a === null || typeof b !== "object" || b === null)
    return Object.is(a, b) ? undefined : `${way}: ${String(a)} and ${String(b)}`;
  if (a === b || seen.get(a) === b) return undefined;
  seen.set(a, b);
  if (typeof (a as { get?: unknown }).get === "function" && "entries" in a) {
    const list = (of: object): unknown[] => [...(of as Map<unknown, unknown>).entries()];
    return difference(list(a), list(b), way, seen);
  }
  if (a instanceof Set) return difference([...a], [...(b as Set<unknown>)], way, seen);
  const keys = Object.keys(a);
  if (keys.join() !== Object.keys(b).join()) return `${way}: ${keys.join()} and ${Object.keys(b).join()}`;
  for (const key of keys) {
    const found = difference(
      (a as Record<string, unknown>)[key],
      (b as Record<string, unknown>)[key],
      `${way}.${key}`,
      seen,
    );
    if (found) return found;
  }
  return undefined;
}

/** Checks with what is kept, holds it against a fresh check, and tells how many acts were performed. */
function checked(
  files: ReadonlyMap<string, string>,
  memo: CheckMemo,
): { readonly acts: number; readonly kept: Checked } {
  const before = memo.work.acts,
    roots = [...files.keys()],
    kept = checkProject(memoryWorld(files), roots, { memo }),
    fresh = checkProject(memoryWorld(files), roots);
  expect(difference(kept.performances, fresh.performances)).toBeUndefined();
  expect(kept.findings).toEqual(fresh.findings);
  return { acts: memo.work.acts - before, kept };
}

const unit = `unit box "Box" {
  base foot
  positions up, down
  part foot "Foot"
  part lid "Lid" { mass 3 kg }
  part cap "Cap" { behind lid }
  part pin "Pin" { behind cap }
  fastener lid-screws screw "Lid screws" { count 4  size M6x20  torque 9 N·m  joins lid to foot }
  fastener cap-screws screw "Cap screws" { count 2  joins cap to foot  behind lid }
  fastener pin-screw screw "Pin screw" { joins pin to foot  behind cap }
}
`;
const procedure = `procedure strip "Strip" for box {
  aim lid, cap, pin off
  step one "Lid" {
    undo lid-screws
    remove lid
  }
  step two "Cap" {
    note "mind the edge"
    undo cap-screws
    remove cap
  }
  step three "Pin" {
    undo pin-screw
    remove pin
  }
}
`;
const files = (text: string): ReadonlyMap<string, string> => new Map([["/p/a.strip", text]]);
/** Acts of the strip and lines of the way back. */
const all = 7 + 6;

/** Acts that are performed when a text was checked and is then changed so. */
function actsAfter(from: string, change: (text: string) => string): number {
  const memo = newMemo();
  checked(files(from), memo);
  const to = change(from);
  expect(to).not.toBe(from);
  return checked(files(to), memo).acts;
}

test("all of it is performed at first", () => {
  expect(checked(files(unit + procedure), newMemo()).acts).toBe(all);
});

test("an edit in step k starts the bench before step k", () => {
  const later = (text: string): number =>
    actsAfter(unit + procedure, (whole) => whole.replace(text, `${text}\n    wait 1 min`));
  expect(later("remove lid")).toBe(all + 1);
  expect(later("remove cap")).toBe(all + 1 - 2);
  expect(later("remove pin")).toBe(all + 1 - 5);
});

test("the way back is performed whole where the strip or the block of the way back changed", () => {
  const back = procedure.replace("    remove pin\n", '    remove pin\n    refit { note "clean the hole"  reverse }\n');
  expect(actsAfter(unit + procedure, () => unit + back)).toBe(all + 1 - 5);
  const whole = procedure.replace("  step one", '  finish { test "Turns by hand" }\n  step one');
  expect(actsAfter(unit + whole, (text) => text.replace("finish {", 'finish { note "Look"'))).toBe(6 + 2);
});

test.each([
  ["a comment above all", (text: string) => `# a note\n${text}`],
  ["a comment in the unit", (text: string) => text.replace("  base foot", "  # where it stands\n  base foot")],
  ["a comment in a step", (text: string) => text.replace("    remove lid", "    # both hands\n    remove lid")],
  ["a text", (text: string) => text.replace("mind the edge", "mind the sharp edge")],
  ["the title of a step", (text: string) => text.replace('"Cap" {\n    note', '"The cap" {\n    note')],
  ["layout", (text: string) => text.replace("    undo cap-screws\n", "\n\n      undo   cap-screws\n")],
  [
    "another procedure",
    (text: string) => `${text}${procedure.replace("procedure strip", "procedure again").slice(0, 42)}  aim none\n}\n`,
  ],
])("nothing is performed again after an edit in %s", (_where, change) => {
  expect(actsAfter(unit + procedure, change)).toBe(0);
});

test("what is declared counts: a figure of a part is read on the bench", () => {
  expect(actsAfter(unit + procedure, (text) => text.replace("mass 3 kg", "mass 60 kg"))).toBe(all);
});

test("a procedure that is called, needed, or is the way back, counts where it is used", () => {
  const caller = `procedure work "Work" for box {
  aim none
  step "First" { note "look" }
  step "Then" { do strip }
}
`;
  const text = unit + procedure + caller;
  // `strip` from its last step on, and `work` from there on too, and both ways back.
  expect(actsAfter(text, (whole) => whole.replace("remove pin\n", "remove pin\n    wait 1 min\n"))).toBe(
    3 + 6 + (3 + 6),
  );
  expect(actsAfter(text, (whole) => whole.replace('note "look"', 'note "look twice"'))).toBe(0);
  expect(actsAfter(text, (whole) => whole.replace('note "look"', 'note "look"  wait 1 min'))).toBe(3 + 7 + 6);
});

/** Three procedures that do one another, with acts before and behind each call. */
const nested = `procedure inner "Pin" for box {
  aim none
  step p1 "Pin screw" { undo pin-screw }
  step p2 "Pin" { remove pin }
}
procedure middle "Cap" for box {
  aim none
  step m1 "Cap" { undo cap-screws  remove cap }
  step m2 "Pin" {
    note "the pin comes next"
    do inner
    note "the pin is away"
  }
  step m3 "Look" { note "middle" }
}
procedure outer "All" for box {
  aim lid, cap, pin off
  step o1 "Lid" { undo lid-screws  remove lid }
  step o2 "The rest" {
    note "mind the cap"
    do middle
    note "all is away"
  }
  step o3 "Look" { note "outer" }
}
`;

// Acts from the edit on, in each procedure that it touches, and then its way back: of `inner` 2 lines, of `middle` 4, of `outer` 6.
test.each([
  // middle: its last step; outer: that, what stands behind the call, its last step
  ["the last step of what is called", 'note "middle"', 'note "middle"  wait 1 min', 2 + 4, 2 + 1 + 1 + 6],
  // middle: 3 + 1 + (1 + 2) + 1 + 1 acts with the call of `inner`
  [
    "the first step of what is called",
    "remove cap }",
    "remove cap  wait 1 min }",
    3 + 5 + 1 + 4,
    3 + 5 + 1 + 1 + 1 + 6,
  ],
  [
    "a step behind all others of what is called",
    'note "middle" }',
    'note "middle" }\n  step m4 { wait 1 min }',
    1 + 4,
    1 + 2 + 6,
  ],
  // The acts before the call in the same step are done again with it: one note, the call, `inner`, the new line.
  [
    "a line behind a call, in its step",
    'away"\n  }\n  step m3',
    'away"\n    wait 1 min\n  }\n  step m3',
    2 + 1 + 4,
    2 + 1 + 2 + 6,
  ],
])("an edit in %s, one call deep, starts the bench before that step", (_where, from, to, middle, outer) => {
  expect(actsAfter(unit + nested, (text) => text.replace(from, to))).toBe(middle + outer);
});

test.each([
  ["the last step", "remove pin }", "remove pin  wait 1 min }", 2 + 2, 2 + 1 + 1 + 4, 2 + 1 + 1 + 1 + 1 + 6],
  ["the first step", "undo pin-screw }", "undo pin-screw  wait 1 min }", 3 + 2, 3 + 1 + 1 + 4, 3 + 1 + 1 + 1 + 1 + 6],
])(
  "an edit in %s of what is called two deep starts the bench before that step",
  (_where, from, to, inner, middle, outer) => {
    expect(actsAfter(unit + nested, (text) => text.replace(from, to))).toBe(inner + middle + outer);
  },
);

test("another head of what is called starts the bench before the step of the call", () => {
  // `inner` whole; `middle` from its second step; `outer` from there in `middle`.
  expect(actsAfter(unit + nested, (text) => text.replace('"Pin" for box {', '"Pin" for box {\n  crew 2'))).toBe(
    2 + 2 + (1 + 1 + 2 + 1 + 1 + 4) + (1 + 1 + 2 + 1 + 1 + 1 + 1 + 6),
  );
});

/** Calls on parts that are units, for each piece, under conditions, twice, with something needed first. */
const calls = `unit gear "Gearbox" {
  base case
  part case "Case" { mass 6 kg }
  part lid "Lid" { mass 1 kg }
  part wheel "Wheel" { mass 2 kg  behind lid }
  fastener lid-screws screw "Lid screws" { count 4  joins lid to case }
  fastener wheel-nut nut "Wheel nut" { joins wheel to case  behind lid }
}
unit drive "Drive" {
  base frame
  part frame "Frame" { mass 30 kg }
  part cover "Cover" { mass 2 kg }
  part gearbox "Gearbox" { is unit gear  pieces left, right }
  fastener cover-screws screw "Cover screws" { count 4  joins cover to frame }
  fastener feet bolt "Feet" { count 2 per gearbox  joins gearbox to frame  behind cover }
}
procedure wheel-off "Wheel" for gear {
  aim wheel off
  step w1 "Nut" { undo wheel-nut }
  step w2 "Wheel" { remove wheel }
}
procedure gear-apart "Gearbox" for gear {
  aim none
  starts on bench
  step g1 "Lid" { undo 2 of lid-screws  undo rest of lid-screws  remove lid }
  step g2 "Wheel" {
    note "look at the teeth"
    do wheel-off
    refit { note "oil the teeth"  reverse }
  }
  step g3 "Look" { note "gear" }
}
procedure cover-off "Cover" for drive {
  aim cover off
  step c1 "Cover" { undo cover-screws  remove cover }
}
procedure all "All" for drive {
  aim none
  needs cover-off
  step a1 "Gearboxes" {
    repeat for left, right {
      undo feet
      remove gearbox
      do gear-apart on gearbox
      if gearbox removed { note "it is off" }
    }
  }
  step a2 "Look" {
    measure play "Play" at most 1 mm else repeat from a2
    note "last"
  }
}
procedure again "Again" for drive {
  aim none
  step b1 { do all }
  step b2 { note "done" }
}
`;

test(
  "kept is what is fresh, object by object, through random edits of procedures that do each other",
  {
    timeout: 120_000,
  },
  () => {
    expect(
      checkProject(memoryWorld(files(calls)), ["/p/a.strip"]).performances.map(({ strip }) => strip.length),
    ).toEqual([2, 8, 2, 26, 28]);
    for (const seed of [1, 2, 3]) randomEdits(new Map(files(calls)), ["/p/a.strip"], seed * 7919, 40);
  },
);

test("problems, slips and marks before the edit are told as they stand now", () => {
  const wrong = procedure
    .replace("    undo lid-screws\n", "    mark lid, foot as M1\n    undo 2 of lid-screws\n")
    .replace("    undo pin-screw\n", "    undo cap-screws\n");
  const memo = newMemo();
  checked(files(unit + wrong), memo);
  checked(files(`# pushed down\n${unit}${wrong}`), memo);
  const { kept, acts } = checked(
    files(`# pushed down\n${unit}${wrong.replace("remove pin", "remove pin  wait 1 min")}`),
    memo,
  );
  expect(kept.findings.length).toBeGreaterThan(0);
  expect(acts).toBeLessThan(all);
});

test("a way back that cannot be gone is told where it is named now", () => {
  const text = `${unit}${procedure.replace("  aim", "  refit by back\n  aim")}
procedure other "Other" for box { aim none }
procedure back "Back" for box {
  aim all in
  needs other
  step "On" { fit lid }
}
`;
  const memo = newMemo();
  expect(checked(files(text), memo).kept.findings.map(({ code }) => code)).toContain("sequence/needs");
  expect(checked(files(`# pushed down\n${text}`), memo).acts).toBe(0);
});

const root = new URL("../../", import.meta.url);
const sets = [
  ...[...new Set(globSync("examples/*/*.strip", { cwd: root }).map((path) => path.split("/")[1]!))]
    .filter((name) => name !== "mistakes" && name !== "workshop")
    .map((name): [string, string[]] => [
      name,
      globSync([`examples/${name}/*.strip`, "examples/workshop/*.strip"], { cwd: root }),
    ]),
  ...globSync("examples/mistakes/*.strip", { cwd: root }).map((path): [string, string[]] => [path, [path]]),
];

/** Edits one after the other, each checked with what is kept and held against a fresh check. */
function randomEdits(texts: Map<string, string>, own: readonly string[], seed: number, edits: number): void {
  const original = new Map(texts),
    random = numbers(seed),
    memo = newMemo();
  checked(texts, memo);
  let saved = 0;
  for (let i = 0; i < edits; i++) {
    const path = own[random(own.length)]!,
      text = i % 6 === 5 ? original.get(path)! : texts.get(path)!,
      lines = text.split("\n"),
      at = random(lines.length);
    switch (random(6)) {
      case 0:
        lines.splice(at, 0, "# a comment");
        break;
      case 1:
        lines.splice(at, 1);
        break;
      case 2:
        lines.splice(at, 0, lines[at]!);
        break;
      case 3:
        lines[at] = lines[at]!.replace(/"([^"]*)"/, '"$1, and more"');
        break;
      case 4:
        lines[at] = lines[at]!.replace(/\d+/, (figure) => String(Number(figure) + 1));
        break;
      default:
        lines[at] = `  ${lines[at]}`;
    }
    texts.set(path, lines.join("\n"));
    const { acts } = checked(texts, memo);
    const alone = newMemo();
    checkProject(memoryWorld(texts), [...texts.keys()], { memo: alone });
    saved += alone.work.acts - acts;
  }
  expect(saved).toBeGreaterThan(0);
}

test.each(sets)(
  "%s: kept is what is fresh, object by object, through random edits",
  { timeout: 120_000 },
  (name, paths) => {
    const texts = new Map(paths.sort().map((path) => [`/p/${path}`, readFileSync(new URL(path, root), "utf8")]));
    randomEdits(
      texts,
      [...texts.keys()].filter((path) => paths.length === 1 || path.includes(name)),
      name.length * 977,
      24,
    );
  },
);
