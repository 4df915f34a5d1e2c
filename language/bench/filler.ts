// What a fluid is filled at. Filling opens it and closes it again in one act, as draining opens what the fluid drains at; one that an act
// of its own has opened is open already, and its own act closes it after the fill.

import type { Act } from "../model/act.ts";
import type { Fluid, Model, Part, ThingIndex, Tie } from "../model/model.ts";
import { hiders, hostsOf, isWhereUnknown, leftOf, lumpOfItem, seatOf, wrongPosition } from "./access.ts";
import { assume, isAssumed, reasonOf, refuse, type Bench, type Obstacle } from "./bench.ts";
import { A_AWAY, A_OFF, A_ON, type State } from "./state.ts";
import { isOut, lumpOf } from "./ties.ts";
import type { Around } from "./trace.ts";

/** The plugs and joints that a fill opens and closes again in passing: those that are in at that moment. */
export function openedInPassing(model: Model, state: State, fluid: Fluid): readonly Tie[] {
  return fluid.fillsAt.flatMap((index) => {
    const thing = model.things[index];
    return thing?.is === "tie" && !isOut(model, state, index) ? [thing] : [];
  });
}

/** Parts that the fluid is in, as far as it is told: its path, and what it drains at sits in. */
export function holdersOf(model: Model, fluid: Fluid): readonly ThingIndex[] {
  const drains = fluid.drainsAt.flatMap((index) => {
    const thing = model.things[index];
    return thing?.is === "tie" && thing.seat !== undefined ? [thing.seat] : thing?.is === "part" ? [index] : [];
  });
  return [...new Set([...drains, ...fluid.path])];
}

/** Each filler is on the sub-assembly that is filled, nothing is in front of it, and the unit lies as it asks. */
export function reachFillers(bench: Bench, act: Act, fluid: Fluid, around: Around): void {
  const holders = holdersOf(bench.model, fluid);
  for (const index of fluid.fillsAt) {
    const item = bench.model.things[index];
    if ((item?.is !== "part" && item?.is !== "tie") || isWhereUnknown(bench, item)) continue;
    const lump = lumpOfItem(bench, item);
    refuse(bench, act, around, fluid.index, [
      ...offTheUnit(bench, item, lump, holders),
      ...covered(bench, item, lump),
      ...wrongPosition(bench, item, lump),
    ]);
  }
}

function offTheUnit(bench: Bench, item: Part | Tie, lump: number, holders: readonly ThingIndex[]): Obstacle[] {
  const seat = seatOf(bench, item),
    { state } = bench;
  const isThere = (on: number): boolean => holders.some((holder) => lumpOf(state, holder) === on);
  if (seat === undefined || holders.length === 0 || isThere(lump)) return [];
  // A lid that is off leaves its opening: it is filled where the lid goes.
  if (item.is === "part" && closes(bench, item).some((part) => isThere(lumpOf(state, part)))) return [];
  if ([seat, ...holders].some((part) => isAssumed(bench, part, A_ON | A_OFF | A_AWAY))) return [];
  return [
    {
      reason: reasonOf(ruleHere(bench, "sequence/blocked"), {
        thing: item.index,
        by: [seat],
        words: ["filler off"],
        at: item.at,
      }),
      assume: undefined,
    },
  ];
}

/** The parts that this one closes or sits on. */
const closes = (bench: Bench, part: Part): readonly ThingIndex[] => [
  ...hostsOf(bench, part),
  ...bench.model.ties.filter((tie) => tie.uppers.includes(part.index)).flatMap((tie) => tie.lowers),
];

const covered = (bench: Bench, item: Part | Tie, lump: number): Obstacle[] =>
  hiders(bench, item.behind, lump, hostsOf(bench, item)).map((hider) => ({
    reason: reasonOf(ruleHere(bench, "sequence/blocked"), {
      thing: item.index,
      by: [hider],
      left: leftOf(bench, [hider]),
      words: ["covered"],
      at: item.at,
    }),
    assume: () => assume(bench, hider, A_AWAY),
  }));

const ruleHere = (bench: Bench, strip: string): string => (bench.phase === "strip" ? strip : "refit/impossible");
