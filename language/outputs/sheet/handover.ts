// Handover: the bench as it stands after each step of the strip, for whoever goes on. Facts of the performance; none of them says that
// somebody may stop, and what is held says that nobody should.

import { at } from "../../bench/vector.ts";
import { isOut, left, lumpOf } from "../../bench/ties.ts";
import { ASIDE, CAPPED, DRAINED, HELD, ON_BASE, TIGHT, type State } from "../../bench/state.ts";
import type { Performance } from "../../bench/trace.ts";
import type { Thing } from "../../model/model.ts";
import type { Lines } from "../lines/groups.ts";
import { actionsIn } from "./actions.ts";
import { tableSheet, type SheetKind, type SheetTable } from "./table-sheet.ts";

export const handoverKind: SheetKind = {
  name: "handover",
  title: ({ wording }) => wording.benchSheets.handover.title,
  note: ({ wording }) => wording.benchSheets.handover.note,
  make: ({ performance, lines, options, inManual }) => {
    const { handover } = options.wording.benchSheets;
    let before: readonly string[] = [];
    return {
      tables: lines.strip.map((group): SheetTable => {
        const acts = actionsIn([group]).flatMap(({ of }) => of),
          state = performance.strip[Math.max(...acts, -1)]?.after ?? performance.start,
          off = offAt(state, performance, lines);
        // The list grows with every step: a book says what is new, as long as all of before still lies there.
        const told = inManual === true && before.length > 0 && before.every((each) => off.includes(each)) ? before : [];
        before = off;
        return {
          title: handover.after(`${group.number} ${group.title}`),
          columns: [handover.fact, handover.what],
          blank: [],
          empty: "",
          rows: [
            ...factsAt(state, performance, lines, off, told),
            ...actionsIn([group])
              .flatMap(({ id, readings }) => readings.map(({ what, limits }) => [id, what, limits]))
              .map(([id = "", what = "", limits = ""]) => [
                handover.readings,
                `${id} ${what}${limits === "" ? "" : ` (${limits})`}: ________`,
              ]),
            [handover.from, "________________________"],
            [handover.to, "________________________"],
          ],
        };
      }),
    };
  },
};

export const handoverSheet = tableSheet(handoverKind);

/** What is off, each with where its line put it. */
function offAt(s: State, { model }: Performance, { context, strip }: Lines): string[] {
  const { handover } = context.wording.benchSheets,
    lies = new Map<string, string>();
  for (const line of actionsIn(strip)) {
    const where = line.details.find(({ sort }) => sort === "goes-to")?.says.replace(/\.$/, "");
    if (where !== undefined) for (const { id } of line.items) lies.set(id, where);
  }
  return [
    ...model.parts.filter((part) => lumpOf(s, part.index) !== ON_BASE),
    ...model.ties.filter((tie) => tie.fastener && isOut(model, s, tie.index)),
  ].map((thing) => handover.lies(thing.name, lies.get(thing.id) ?? ""));
}

/** @param told those of `off` that the table before this one names. */
function factsAt(
  s: State,
  performance: Performance,
  { context }: Lines,
  off: readonly string[],
  told: readonly string[],
): string[][] {
  const { benchSheets: words, kinds, labels } = context.wording,
    { handover } = words,
    { model } = performance;
  const has = (thing: Thing, flag: number): boolean => (at(s.flags, thing.index) & flag) !== 0,
    names = (things: readonly Thing[]): string => things.map(({ name }) => name).join(", ");
  const held = model.parts.filter((part) => has(part, HELD)),
    hanging = held.filter((part) => lumpOf(s, part.index) === ON_BASE),
    lifted = held.filter((part) => lumpOf(s, part.index) !== ON_BASE);
  const loose = model.ties.filter(
    (tie) =>
      !isOut(model, s, tie.index) &&
      (at(s.slack, tie.index) !== TIGHT || (left(model, s, tie.index) < tie.count && !tie.countUnknown)),
  );
  const standing = model.precautions.filter(({ number }) => at(s.standing, number) !== 0);
  const row = (label: string, says: string): string[] => [label, says === "" ? words.none : says];
  return [
    ...(hanging.length > 0 ? [row(handover.hangs, `${names(hanging)}. ${handover.doNotStop}`)] : []),
    ...(lifted.length > 0 ? [row(handover.lifted, names(lifted))] : []),
    row(
      handover.off,
      [...(told.length > 0 ? [handover.asBefore] : []), ...off.filter((each) => !told.includes(each))].join("; "),
    ),
    row(
      handover.loose,
      loose
        .map((tie) =>
          tie.countUnknown
            ? `${tie.name} (${labels.countNotGiven})`
            : handover.left(tie.name, left(model, s, tie.index), tie.count),
        )
        .join("; "),
    ),
    row(
      handover.standing,
      standing.map(({ kind, hazard }) => `${kinds.precautionShort(kind)} (${model.things[hazard]!.name})`).join("; "),
    ),
    row(handover.open, names(model.fluids.filter((fluid) => has(fluid, DRAINED)))),
    row(handover.closed, names(model.things.filter((thing) => has(thing, CAPPED)))),
    row(handover.aside, names(model.parts.filter((part) => has(part, ASIDE)))),
    row(
      handover.temporary,
      [...s.temporaries.keys()].map((id) => model.temporaries.get(id)?.name || id.replaceAll("-", " ")).join(", "),
    ),
  ];
}
