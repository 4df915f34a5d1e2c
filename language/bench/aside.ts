// Aside: slid, swung or opened, still attached. There it hides nothing; it must be back at the end.

import type { Act } from "../model/act.ts";
import type { Part, ThingIndex } from "../model/model.ts";
import { assume, happen, isAssumed, reasonOf, refuse, report, type Bench, type Obstacle } from "./bench.ts";
import { cleared, hidden, isAside, leftOf, wrongPosition } from "./access.ts";
import { touch } from "./hazards.ts";
import { isFlexible, isPart, partOf, tieOf } from "./machine.ts";
import { A_AWAY, A_DOUBT, A_OFF, A_SLACK, ASIDE, LOOSE, NEVER, ON_BASE, TIGHT } from "./state.ts";
import { anchorsOf, holds, lumpOf, reach } from "./ties.ts";
import type { Around } from "./trace.ts";
import { at, set } from "./vector.ts";

const nothing: ReadonlySet<ThingIndex> = new Set();

/** Allowed when it reaches the base only through loose fasteners, hinges, cables and what it lies on. */
export function moveAside(bench: Bench, act: Act, thing: ThingIndex, around: Around): void {
  const { model, machine, state: s } = bench;
  if (!isPart(model, thing)) return;
  const part = partOf(model, thing),
    lump = lumpOf(s, thing),
    needs = new Set<number>(),
    hazards = new Set<ThingIndex>();
  if (isOffAlready(bench, act, thing, around)) return;
  const slack = (tie: ThingIndex): boolean => at(bench.state.slack, tie) !== TIGHT,
    fixed = fixedTo(bench, thing);
  const obstacles: Obstacle[] = [];
  if (anchorsOf(bench, s, lump, nothing).some((anchor) => anchor !== thing && fixed.has(anchor))) {
    const ties = machine.tiesOf[thing]!.filter(
      (t) =>
        !t.passing &&
        holds(model, s, t.index) &&
        !slack(t.index) &&
        !givesWay(bench, t.index) &&
        [...t.lowers, ...t.uppers].some((p) => p !== thing && fixed.has(p)),
    );
    if (ties.length > 0) {
      const list = ties.map((t) => t.index);
      obstacles.push({
        reason: reasonOf("sequence/still-held", {
          thing,
          by: list,
          left: leftOf(bench, list),
          words: ["aside"],
          at: ties[0]!.at,
        }),
        assume: () => {
          for (const tie of list) {
            bench.state = { ...bench.state, slack: set(bench.state.slack, tie, LOOSE) };
            assume(bench, tie, A_SLACK);
          }
        },
      });
    }
  }
  obstacles.push(
    ...hidden(bench, part, lump, act, around),
    ...wrongPosition(bench, part, lump),
    ...touch(bench, [thing], act, around, needs, hazards),
  );
  refuse(bench, act, around, thing, obstacles);
  // Further aside: it is moved back once.
  if (isAside(bench.state, thing)) return;
  freedBy(bench, part, fixed, needs);
  const event = happen(bench, "aside", thing, act, around, needs, { hazards: [...hazards] }),
    now = bench.state;
  bench.state = {
    ...now,
    flags: set(now.flags, thing, at(now.flags, thing) | ASIDE),
    asideBy: set(now.asideBy, thing, event),
  };
}

/** What it takes along: all that it is tied to by what is tight and does not give way. */
const fixedTo = (bench: Bench, thing: ThingIndex): ReadonlySet<ThingIndex> =>
  reach(
    bench,
    bench.state,
    [thing],
    nothing,
    (edge, from) =>
      !(edge.tie >= 0 && at(bench.state.slack, edge.tie) !== TIGHT) &&
      !isFlexible(partOf(bench.model, edge.to)) &&
      (from !== thing || (edge.undone && edge.tie >= 0 && !givesWay(bench, edge.tie))),
  );

/** What made it free to be moved: what was in front of it, what no longer holds it or what it takes along. */
function freedBy(bench: Bench, part: Part, fixed: ReadonlySet<ThingIndex>, needs: Set<number>): void {
  cleared(bench, part, needs);
  const { model, machine, state: s } = bench;
  for (const moved of new Set([part.index, ...fixed]))
    for (const tie of machine.tiesOf[moved]!)
      if (moved === part.index || !holds(model, s, tie.index) || at(s.slack, tie.index) !== TIGHT)
        for (const by of [at(s.outBy, tie.index), at(s.slackBy, tie.index)]) if (by !== NEVER) needs.add(by);
}

/** It is off, or carries what it came off with: there is nothing left that it could be moved aside from. */
function isOffAlready(bench: Bench, act: Act, thing: ThingIndex, around: Around): boolean {
  const { state: s } = bench,
    lump = lumpOf(s, thing);
  if (bench.phase !== "strip" || lump === ON_BASE || anchorsOf(bench, s, lump, new Set([thing])).length > 0)
    return false;
  const before = bench.events[at(s.lumpBy, thing)];
  if (before && !before.assumed && !isAssumed(bench, thing, A_OFF | A_AWAY | A_DOUBT))
    report(
      bench,
      act.at,
      [thing],
      [reasonOf("sequence/already-undone", { thing, words: ["off"], at: before.act.at })],
      act,
      around,
    );
  return true;
}

/** A tie to a hinge, cable or hose gives way, unless it is a nut on it. */
function givesWay(bench: Bench, index: ThingIndex): boolean {
  const tie = tieOf(bench.model, index);
  return [...tie.lowers, ...tie.uppers].some((p) => isFlexible(partOf(bench.model, p))) && tie.kind !== "nut";
}

export function moveBack(bench: Bench, act: Act, thing: ThingIndex, around: Around): void {
  if (!isPart(bench.model, thing)) return;
  if (!isAside(bench.state, thing)) {
    if (bench.phase === "strip")
      report(
        bench,
        act.at,
        [thing],
        [reasonOf("sequence/aside", { thing, at: partOf(bench.model, thing).at })],
        act,
        around,
      );
    return;
  }
  const by = at(bench.state.asideBy, thing),
    // Moved aside again on the way back, it has to be as free as it is now.
    needs = new Set(by === NEVER ? [] : [by]);
  if (bench.phase === "strip") freedBy(bench, partOf(bench.model, thing), fixedTo(bench, thing), needs);
  const event = bench.phase === "strip" ? happen(bench, "back", thing, act, around, needs) : by;
  bench.state = {
    ...bench.state,
    flags: set(bench.state.flags, thing, at(bench.state.flags, thing) & ~ASIDE),
    asideBy: set(bench.state.asideBy, thing, event),
  };
}
