// A wrong name leaves two traces: what it names is done twice, and what it should have named is never done. Two traces of one slip are
// one finding, with both as its reasons. Decides only which problems belong together, never whether something is wrong.

import type { Act } from "../model/act.ts";
import type { ThingIndex } from "../model/model.ts";
import { A_DOUBT } from "./state.ts";
import { isAssumed, report, type Bench } from "./bench.ts";
import { isTie } from "./machine.ts";
import type { Around, Problem, Reason, StepRun } from "./trace.ts";

/** One trace that was reported, and the step in which the other one would stand. */
export interface Slip {
  readonly is: "twice" | "never";
  readonly phase: "strip" | "refit";
  readonly step: StepRun | undefined;
  /** The one act that the other trace may stand in, by its number among those performed; undefined: any. */
  readonly only?: number;
  readonly problem: Problem;
}

/** Done a second time. `firstStep` is the step in which it was done first; the first time may have been refused itself. */
export function reportTwice(
  bench: Bench,
  act: Act,
  around: Around,
  thing: ThingIndex,
  firstStep: StepRun | undefined,
  reason: Reason,
): void {
  if (bench.quiet) return;
  const first = isAssumed(bench, thing, A_DOUBT)
    ? bench.problems.findLast((p) => p.about[0] === thing && p.act !== undefined)
    : undefined;
  const never = take(bench, "never", firstStep);
  if (first) {
    // The first time was refused: what rests on that is not said again.
    if (!never) note(bench, "twice", around.step, first);
    else if (never.problem !== first) {
      drop(bench, never.problem);
      extend(bench, first, never.problem.reasons);
    }
    return;
  }
  if (bench.doubled.has(thing)) return;
  bench.doubled.add(thing);
  const same = never?.problem ?? sameFirst(bench, act, reason);
  if (same) {
    extend(bench, same, [reason]);
    return;
  }
  report(bench, act.at, [thing], [reason], act, around);
  note(bench, "twice", around.step, bench.problems[bench.problems.length - 1]!);
}

/** What was said of another thing that the same earlier line did already: that line is to blame for both. Equal lines are merged later. */
function sameFirst(bench: Bench, act: Act, { rule, at: first }: Reason): Problem | undefined {
  const isFirst = (at: Reason["at"]): boolean => at?.start === first?.start && at?.file === first?.file;
  return (
    first &&
    bench.problems.find(
      (p) =>
        (p.at.start !== act.at.start || p.at.file !== act.at.file) &&
        p.reasons.some((reason) => reason.rule === rule && isFirst(reason.at)),
    )
  );
}

/** Takes reasons that name ties which nothing undid to the slip that they belong to; false where there is none, and they are reported. */
export function joinsSlip(bench: Bench, around: Around | undefined, reasons: readonly Reason[]): boolean {
  if (bench.quiet || bench.slips.length === 0 || !reasons.some((reason) => isNever(bench, reason))) return false;
  const twice = take(bench, "twice", around?.step);
  if (twice) extend(bench, twice.problem, reasons);
  return twice !== undefined;
}

/** Remembers a problem that names a tie in the wrong place: what it should have named may be missing at the end. */
export function noteTwice(bench: Bench, around: Around): void {
  const problem = bench.problems[bench.problems.length - 1];
  if (!bench.quiet && problem) note(bench, "twice", around.step, problem);
}

/** Remembers a problem that names ties which nothing undid or put in: the wrong name may turn up later. */
export function noteNever(bench: Bench, around: Around, problem: Problem): void {
  if (problem.reasons.some((reason) => isNever(bench, reason))) note(bench, "never", around.step, problem);
}

/**
 * Remembers that a tie cannot be undone here, whatever stands against it: if the very next act finds another tie still in, that one was
 * meant. No other act is asked, since two lines apart may as well be two mistakes.
 */
export function noteAstray(bench: Bench, around: Around, thing: ThingIndex, problem: Problem): void {
  if (bench.phase === "strip" && isTie(bench.model, thing) && !problem.reasons.some((reason) => isNever(bench, reason)))
    bench.slips.push({ is: "twice", phase: bench.phase, step: around.step, only: bench.performed.length + 1, problem });
}

function isNever(bench: Bench, reason: Reason): boolean {
  if (bench.phase === "refit")
    return (
      (reason.rule === "refit/missing" && ["out", "finger-tight", "loose"].includes(reason.words[0] ?? "")) ||
      (reason.rule === "refit/impossible" && reason.words[0] === "not in")
    );
  return (
    (reason.rule === "sequence/still-held" ||
      reason.rule === "sequence/blocked" ||
      reason.rule === "hazard/proof-out-of-reach") &&
    reason.by.some((thing) => isTie(bench.model, thing))
  );
}

function note(bench: Bench, is: Slip["is"], step: StepRun | undefined, problem: Problem): void {
  bench.slips.push({ is, phase: bench.phase, step, problem });
}

/** Of its own step if there is one, else the last; in the refit what is missing shows at the end, outside any step. */
function take(bench: Bench, is: Slip["is"], step: StepRun | undefined): Slip | undefined {
  const fits = (slip: Slip): boolean =>
      slip.is === is &&
      slip.phase === bench.phase &&
      (slip.only === undefined || (slip.only === bench.performed.length && slip.step === step)),
    near = bench.slips.findLastIndex((slip) => fits(slip) && slip.step === step);
  const i = near >= 0 ? near : bench.slips.findLastIndex(fits);
  return i < 0 ? undefined : bench.slips.splice(i, 1)[0];
}

function extend(bench: Bench, problem: Problem, reasons: readonly Reason[]): void {
  const i = bench.problems.indexOf(problem);
  if (i < 0) return;
  const longer: Problem = {
    ...problem,
    reasons: [...problem.reasons, ...reasons],
    about: [...new Set([...problem.about, ...reasons.flatMap((r) => r.by)])],
  };
  bench.problems[i] = longer;
  bench.slips.forEach((slip, k) => {
    if (slip.problem === problem) bench.slips[k] = { ...slip, problem: longer };
  });
}

function drop(bench: Bench, problem: Problem): void {
  const i = bench.problems.indexOf(problem);
  if (i >= 0) bench.problems.splice(i, 1);
  for (let k = bench.slips.length - 1; k >= 0; k--) if (bench.slips[k]!.problem === problem) bench.slips.splice(k, 1);
}
