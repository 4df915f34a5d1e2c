// Taken off and put back in the strip with nothing done between: mostly a line is missing there, or one is too many.

import type { ThingIndex } from "../model/model.ts";
import { reasonOf, report, type Bench } from "./bench.ts";
import { isUnknown } from "./access.ts";
import type { Event, Performed } from "./trace.ts";

/** Acts that only take it off and put it on. */
const toAndFro: ReadonlySet<string> = new Set([
  "undo",
  "loosen",
  "back-out",
  "remove",
  "lift",
  "support",
  "release",
  "fit",
  "press",
  "tighten",
]);

/** At the end of a strip, where nothing else was found: said at the act that puts it back. What is off again by then was tried on. */
export function judgeNothingBetween(bench: Bench): void {
  const { events, performed } = bench;
  if (bench.problems.length > 0) return;
  for (const met of events) {
    if (met.kind !== "met") continue;
    const off = events.findLast(({ kind, thing, index }) => kind === "off" && thing === met.thing && index < met.index);
    if (!off || off.assumed || met.assumed || isUnknown(bench, met.thing)) continue;
    const isOffAgain = events.some(
      ({ kind, moved, index }) => kind === "off" && index > met.index && moved.includes(met.thing),
    );
    if (isOffAgain || off.moved.join() !== met.moved.join()) continue;
    const from = actOf(performed, off),
      to = actOf(performed, met),
      its = thingsAbout(bench, met);
    if (from < 0 || to < 0) continue;
    const isIdle = performed
      .slice(from, to + 1)
      .every(({ act, things }) => toAndFro.has(act.verb) && act.text === "" && things.every((thing) => its.has(thing)));
    if (!isIdle) continue;
    report(
      bench,
      met.act.at,
      [met.thing],
      [reasonOf("removal/nothing-between", { thing: met.thing, at: off.act.at })],
      met.act,
      met.around,
    );
  }
}

const actOf = (performed: readonly Performed[], { index }: Event): number =>
  performed.findIndex(({ from, to }) => index >= from && index < to);

/** The part with what came along, and what ties them. */
const thingsAbout = ({ machine }: Bench, { moved }: Event): ReadonlySet<ThingIndex> =>
  new Set(moved.flatMap((part) => [part, ...machine.tiesOf[part]!.map(({ index }) => index)]));
