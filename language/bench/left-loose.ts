// A part that lost its last tie in the strip and stays in place, neither held nor aside: said at the act that took the last tie,
// where nothing else was found.

import { assume, isAssumed, reasonOf, report, type Bench } from "./bench.ts";
import { isAside, isUnknown } from "./access.ts";
import { A_AWAY, HELD, NEVER, ON_BASE } from "./state.ts";
import { anchorsOf, lumpOf, reach } from "./ties.ts";
import { at } from "./vector.ts";

export function judgeLeftLoose(bench: Bench): void {
  if (bench.problems.length > 0) return;
  const { model, machine, state: s } = bench;
  const fixed = reach(bench, s, anchorsOf(bench, s, ON_BASE, new Set()), new Set());
  for (const part of model.parts) {
    const index = part.index;
    if (
      lumpOf(s, index) !== ON_BASE ||
      fixed.has(index) ||
      (at(s.flags, index) & HELD) !== 0 ||
      isAside(s, index) ||
      isUnknown(bench, index) ||
      isAssumed(bench, index, A_AWAY)
    )
      continue;
    const hosts = machine.hosts[index]!;
    if (hosts.length === 0 || hosts.some((h) => lumpOf(s, h) === ON_BASE && !fixed.has(h))) continue; // it lies on what is loose
    let last = NEVER;
    for (const tie of machine.tiesOf[index]!) last = Math.max(last, at(s.outBy, tie.index));
    const event = bench.events[last];
    if (!event) continue;
    report(
      bench,
      event.act.at,
      [index],
      [reasonOf("removal/left-loose", { thing: index, by: [event.thing], at: part.at })],
      event.act,
      event.around,
    );
    assume(bench, index, A_AWAY);
  }
}
