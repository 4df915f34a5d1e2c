// A small stage for the rules of the refit: a text in, the performance and the findings out. It decides nothing about refits.

import { performRefit } from "../../../language/bench/perform-refit.ts";
import { benchAfter } from "../../../language/bench/perform-procedure.ts";
import { benchOf } from "../../../language/bench/bench.ts";
import { judgeEnd, leavesOf } from "../../../language/bench/end-state.ts";
import { lineOf } from "../../../language/bench/refit/line.ts";
import { named } from "../../../language/bench/refit/graph.ts";
import type { Performance, Problem, RefitOp } from "../../../language/bench/trace.ts";
import type { Finding } from "../../../language/findings/finding.ts";
import { checkProject, type Checked } from "../../../language/workspace/check-project.ts";
import type { World } from "../../../language/world/world.ts";

/** A world of texts in memory; paths are names of these texts, pictures are there. */
export function worldOf(texts: Readonly<Record<string, string>>): World {
  return {
    read: (path) => (texts[path] === undefined ? { problem: "missing" } : { text: texts[path] }),
    exists: () => true,
    inside: () => true,
    resolve: (from, relative) => {
      const parts = from.split("/").slice(0, -1);
      for (const part of relative.split("/"))
        if (part === "..") parts.pop();
        else if (part !== "." && part !== "") parts.push(part);
      return parts.join("/");
    },
  };
}

/** A unit u with a base b and one procedure p. */
export const stage = (facts: string, steps: string, head = ""): string =>
  `unit u "U" {\n base b\n part b "Base"\n${facts}\n}\nprocedure p "P" for u {\n${head}\n${steps}\n}\n`;

export const check = (text: string): Checked => checkProject(worldOf({ "stage.strip": text }), ["stage.strip"]);

/** Findings on the procedure itself: what the author has not told about masses, hazards and the like is another matter. */
const aboutTheBench = /^(sequence|removal|refit|lift|fastener|hazard|syntax|names)\//;
export const findings = (text: string): Finding[] =>
  check(text).findings.filter((f) => aboutTheBench.test(f.code) && f.severity !== "hint");
export const codes = (text: string): string[] => findings(text).map((f) => f.code);

export function perform(text: string, procedure = "p"): Performance {
  const found = check(text).performances.find((p) => p.procedure.id === procedure);
  if (!found?.order) throw new Error(`${procedure} has no computed refit`);
  return found;
}

export const nameOf = (performance: Performance, op: RefitOp): string => named({ model: performance.model }, op);

/** The printed line, in words: "fitting Card". */
export function refit(text: string, procedure = "p"): string[] {
  const performance = perform(text, procedure);
  return performance.order!.line.map((n) => nameOf(performance, performance.order!.ops[n]!));
}

/** A die with a seed (Park and Miller's minimal standard generator, CACM 31/10, 1988), 0 up to 1. */
export function dieOf(seed: number): () => number {
  let value = seed;
  return () => (value = (value * 16807) % 2147483647) / 2147483647;
}

/** The refit performed along any line of its order, from where the strip ended, and its end judged. */
export function performLine(performance: Performance, line: readonly number[]): readonly Problem[] {
  const { model, procedure, order, events, stripEnd, start, leaves: promised } = performance;
  const stripped = benchOf(model, stripEnd);
  stripped.events.push(...events);
  const bench = benchAfter(stripped, stripEnd),
    leaves = leavesOf(stripped, promised);
  performRefit(bench, order!, line);
  // The unit is turned back at the very end, whatever line was taken.
  bench.state = { ...bench.state, position: leaves.turned ?? start.position };
  judgeEnd(bench, start, leaves, procedure.at);
  return bench.problems;
}

/** Draws so many lines of the order and performs each; the first that is refused, with why, or undefined. */
export function firstRefusedLine(
  performance: Performance,
  lines: number,
  seed = 1,
): { readonly line: readonly string[]; readonly problem: Problem } | undefined {
  const die = dieOf(seed),
    { ops, later } = performance.order!;
  for (let i = 0; i < lines; i++) {
    const line = lineOf(ops, later, die),
      [problem] = performLine(performance, line);
    if (problem) return { line: line.map((n) => nameOf(performance, ops[n]!)), problem };
  }
  return undefined;
}
