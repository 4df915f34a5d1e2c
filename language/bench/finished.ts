// What stands in `finish` comes after the way back, which does not undo it: what it opens, takes off or puts up it puts right itself.

import type { Span } from "../findings/finding.ts";
import type { ThingIndex } from "../model/model.ts";
import { precautions as kinds, kindIn } from "../tables/index.ts";
import { isUnknown } from "./access.ts";
import { assume, isAssumed, reasonOf, report, type Bench } from "./bench.ts";
import type { Leaves } from "./leaves.ts";
import { staysOff } from "./refit/inverse.ts";
import { A_DOUBT, A_HAZARD, ON_BASE, type State } from "./state.ts";
import { lumpOf } from "./ties.ts";
import type { Performed } from "./trace.ts";
import { at } from "./vector.ts";

export function judgeFinished(bench: Bench, leaves: Leaves, finished: readonly Performed[]): void {
  const { model } = bench,
    start = finished[0]?.before;
  if (!start || finished[finished.length - 1]!.after === start) return;
  /** The last act that made it so, where it was not so before the first. */
  const madeBy = (isSo: (s: State) => boolean): Span | undefined =>
    isSo(bench.state) && !isSo(start)
      ? finished.findLast(({ before, after }) => isSo(after) && !isSo(before))?.act.at
      : undefined;
  /** Said here, and not again as missing at the end. */
  const say = (thing: ThingIndex, where: Span, words: readonly string[], numbers: readonly number[] = []): void => {
    assume(bench, thing, model.things[thing]!.is === "hazard" ? A_HAZARD : A_DOUBT);
    report(
      bench,
      where,
      [thing],
      [reasonOf("refit/missing", { thing, words, numbers, at: model.things[thing]!.at })],
      finished.find(({ act }) => act.at === where)?.act,
    );
  };
  const isDoubtful = (thing: ThingIndex): boolean => isUnknown(bench, thing) || isAssumed(bench, thing, A_DOUBT);
  for (const hazard of model.hazards) {
    if (isAssumed(bench, hazard.index, A_HAZARD)) continue;
    const left = hazard.precautions.flatMap((p) => {
      const by =
        p.back !== "" || kindIn(kinds, p.kind)?.back !== undefined
          ? madeBy((s) => at(s.standing, p.number) !== 0)
          : undefined;
      return by ? [{ kind: p.kind, by }] : [];
    });
    if (left.length > 0) say(hazard.index, left[0]!.by, ["stands", ...left.map(({ kind }) => kind)]);
  }
  const off = new Set<ThingIndex>();
  for (const part of model.parts) {
    const by = madeBy((s) => lumpOf(s, part.index) !== ON_BASE);
    if (!by) continue;
    const said = off.size > 0 && finished.some(({ act, things }) => act.at === by && things.some((t) => off.has(t)));
    off.add(part.index);
    if (!said && !leaves.off.has(part.index) && !isDoubtful(part.index)) say(part.index, by, ["off"]);
  }
  for (const tie of model.ties) {
    const by = madeBy((s) => at(s.out, tie.index) > at(start.out, tie.index));
    if (!by || isDoubtful(tie.index) || leaves.out.has(tie.index) || staysOff(model, tie.index, leaves)) continue;
    if ([...tie.lowers, ...tie.uppers].some((part) => off.has(part))) continue;
    say(tie.index, by, ["out"], [at(bench.state.out, tie.index), tie.count]);
  }
}
