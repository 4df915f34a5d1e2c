// Laws that hold for any machine, tried on made-up ones: the refit ends where the strip began, every line of it does, the way there and
// back again gives the same machine, and nothing depends on the order of files.

import fc from "fast-check";
import { expect, test } from "vitest";
import { isLine } from "../../language/bench/refit/freedom.ts";
import type { State } from "../../language/bench/state.ts";
import type { Performance } from "../../language/bench/trace.ts";
import { at } from "../../language/bench/vector.ts";
import { checkProject, type Checked } from "../../language/workspace/check-project.ts";
import { firstRefusedLine } from "../bench/refit/stage.ts";
import { worldWith } from "../mutation/scenes.ts";
import { madeUp, type MadeUp } from "./made-up.ts";

const seed = 1907;
const check = ({ unit, procedure }: MadeUp, roots: readonly string[] = ["apart.strip"]): Checked =>
  checkProject(
    worldWith(
      new Map([
        ["unit.strip", unit],
        ["apart.strip", procedure],
      ]),
    ),
    roots,
  );
const problems = (checked: Checked): string[] =>
  checked.findings.filter(({ severity }) => severity !== "hint").map(({ code, says }) => `${code}: ${says}`);
const performanceOf = (checked: Checked): Performance =>
  checked.performances.find(({ procedure }) => procedure.id === "apart")!;

/** What a hand would see: what is on what, what is in, how the machine lies. */
function seen({ model }: Performance, s: State): unknown {
  return {
    on: model.parts.map(({ index }) => at(s.lump, index) <= 0),
    in: model.ties.map(({ index }) => [at(s.out, index), at(s.slack, index)]),
    flags: model.things.map(({ index }) => at(s.flags, index)),
    position: s.position,
  };
}

test("a made-up procedure is clean: what is generated is what the laws speak of", () => {
  fc.assert(
    fc.property(madeUp(), (made) => {
      expect(problems(check(made)), made.unit + made.procedure).toEqual([]);
    }),
    { seed, numRuns: 200 },
  );
});

test("the refit of any clean procedure ends in the state that its strip began with", () => {
  fc.assert(
    fc.property(madeUp(), (made) => {
      const performance = performanceOf(check(made));
      expect(seen(performance, performance.stripEnd), "the strip does something").not.toEqual(
        seen(performance, performance.start),
      );
      expect(seen(performance, performance.end), made.unit + made.procedure).toEqual(
        seen(performance, performance.start),
      );
      expect(isLine(performance.order!, performance.order!.line)).toBe(true);
    }),
    { seed, numRuns: 200 },
  );
});

test("so does every other line of its order", () => {
  fc.assert(
    fc.property(madeUp(), (made) => {
      expect(firstRefusedLine(performanceOf(check(made)), 20), made.unit + made.procedure).toBeUndefined();
    }),
    { seed, numRuns: 100 },
  );
});

test("results do not depend on the order of files, nor on how many are asked for", () => {
  fc.assert(
    fc.property(madeUp(8), (made) => {
      const said = (checked: Checked): unknown => [
        checked.findings,
        performanceOf(checked).order!.line,
        performanceOf(checked).order!.later,
      ];
      const one = said(check(made, ["unit.strip", "apart.strip"]));
      expect(said(check(made, ["apart.strip", "unit.strip"]))).toEqual(one);
      expect(said(check(made, ["apart.strip"]))).toEqual(one);
    }),
    { seed, numRuns: 60 },
  );
});

test("a line taken out of a clean procedure gives at most one finding, and never an exception", () => {
  fc.assert(
    fc.property(madeUp(8), fc.nat(), (made, which) => {
      const lines = made.procedure.split("\n"),
        acts = lines.flatMap((line, i) => (/^ {4}(?:undo|remove)/.test(line) ? [i] : [])),
        gone = acts[which % acts.length]!;
      const found = problems(check({ ...made, procedure: lines.filter((_, i) => i !== gone).join("\n") }));
      expect(found.length, `${lines[gone]}\n${found.join("\n")}\n${made.unit}${made.procedure}`).toBeLessThanOrEqual(1);
    }),
    { seed, numRuns: 300 },
  );
});
