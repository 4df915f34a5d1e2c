// What `leaves` says is printed as the state in which the unit is handed on. An act of the way back that puts it right, or a strip that
// never made it so, makes that a false statement.

import type { Act } from "../model/act.ts";
import type { Leave, Model, Procedure, ThingIndex } from "../model/model.ts";
import { isAssumed, reasonOf, report, type Bench } from "./bench.ts";
import { isUnknown } from "./access.ts";
import { isPart, isTie, partOf, tieOf } from "./machine.ts";
import { callsFor } from "./procedures-before.ts";
import { isLeft } from "./promises.ts";
import { A_DOUBT, A_DRAINED, type State } from "./state.ts";
import type { Performed, Promised, RefitPerformed } from "./trace.ts";

/** An act of the way back, or of what comes after it. */
interface Done extends Pick<Performed, "things" | "before" | "after" | "around"> {
  /** As somebody wrote it; undefined where the order alone asks for it. */
  readonly act: Act | undefined;
}

/** Acts of a written way back and of `finish`, and those that a computed order performs. */
export const doneBy = (written: readonly Performed[], computed: readonly RefitPerformed[] = []): readonly Done[] => [
  ...computed.map(({ op, before, after }): Done => ({
    act: op.act,
    things: op.things,
    around: op.around,
    before,
    after,
  })),
  ...written,
];

/**
 * @param promised its own, and what it is the way back of promised.
 * @param isWhole nothing was refused before: else what was never made so is an echo of that.
 */
export function judgeLeft(
  bench: Bench,
  procedure: Procedure,
  promised: readonly Promised[],
  done: readonly Done[],
  isWhole: boolean,
): void {
  const { model } = bench;
  for (const one of promised) {
    const { leave, is, things: left } = one;
    const until = leave.until?.text;
    // It calls what puts that right.
    if (until !== undefined && (callsFor(procedure.body, until) || callsFor(procedure.finish, until))) continue;
    for (const thing of left) {
      if (
        !canBeLeft(model, is, thing) ||
        isUnknown(bench, thing) ||
        isAssumed(bench, thing, A_DOUBT) ||
        isAssumed(bench, thing, A_DRAINED)
      )
        continue;
      const isSo = (s: State): boolean => isLeft(model, s, one, thing);
      // A line that would tighten it says how, and is taken for the fitting.
      const by = isSo(bench.state)
        ? done.find(({ act, things }) => is === "finger-tight" && act?.verb === "tighten" && things.includes(thing))
        : done.findLast(({ before, after }) => isSo(before) && !isSo(after));
      if (by ? !by.act : isSo(bench.state) || !isWhole || bench.problems.length > 0) continue;
      const reason = reasonOf("refit/not-left", {
        thing,
        words: [is, by ? "put right" : "never"],
        numbers: [leave.count ?? countOf(model, thing), countOf(model, thing)],
        at: leave.at,
      });
      report(bench, by?.act?.at ?? leave.at, [thing], [reason], by?.act, by?.around);
    }
  }
}

const countOf = (model: Model, thing: ThingIndex): number =>
  isTie(model, thing) ? tieOf(model, thing).count : isPart(model, thing) ? partOf(model, thing).count : 1;

/** Told by itself where it cannot; a position is judged at the end. */
function canBeLeft(model: Model, is: Leave["is"], thing: ThingIndex): boolean {
  if (is === "off") return isPart(model, thing);
  return is === "drained"
    ? model.things[thing]?.is === "fluid"
    : is !== "turned" && (isTie(model, thing) || isPart(model, thing));
}
