// Turning the unit to another position, and shafts by hand.

import type { Act } from "../model/act.ts";
import { hiders } from "./access.ts";
import { assume, isAssumed, reasonOf, report, type Bench } from "./bench.ts";
import { isLive, lumpOf } from "./ties.ts";
import { A_DOUBT, A_OFF, HELD, ON_BASE } from "./state.ts";
import { isAboard } from "./fluids.ts";
import type { Around } from "./trace.ts";
import { at } from "./vector.ts";

/** `turn to P`: to the position that it is in it does nothing. What only rests, or would run out, is a finding. */
export function turn(bench: Bench, act: Act, around: Around): void {
  const { model, machine, state: s } = bench,
    to = (act.on[0] ?? act.names[0])?.text ?? "";
  if (to === s.position || to === "") return;
  if (!bench.computed) {
    const loose = model.parts.find(
      (part) =>
        part.rests.length > 0 &&
        lumpOf(s, part.index) === ON_BASE &&
        !machine.isBase(part.index) &&
        !isAssumed(bench, part.index, A_OFF) &&
        (at(s.flags, part.index) & HELD) === 0 &&
        part.hosts.length === 0 &&
        !machine.edges[part.index]!.some((edge) => edge.tie >= 0 && isLive(model, s, part.index, edge)) &&
        hiders(bench, part.behind, ON_BASE, []).length === 0,
    );
    if (loose) {
      report(
        bench,
        act.at,
        [loose.index],
        [
          reasonOf("sequence/loose-when-turned", {
            thing: loose.index,
            by: loose.rests.slice(0, 1),
            words: ["rests", to],
            at: loose.at,
          }),
        ],
        act,
        around,
      );
      assume(bench, loose.index, A_OFF | A_DOUBT);
    }
    const runs = model.fluids.find(
      (fluid) =>
        isAboard(bench, fluid.index) &&
        model.ties.some((tie) => at(s.out, tie.index) > 0 && tie.opens.includes(fluid.index)),
    );
    if (runs && bench.phase === "strip")
      report(
        bench,
        act.at,
        [runs.index],
        [reasonOf("sequence/loose-when-turned", { thing: runs.index, words: ["runs out", to], at: runs.at })],
        act,
        around,
      );
  }
  bench.state = { ...bench.state, position: to };
}
