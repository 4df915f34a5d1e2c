// Handover: the bench as it stands after each step of the strip, for whoever goes on. Facts of the performance; none of them says that
// somebody may stop, and what is held says that nobody should.

import { at } from "../../bench/vector.ts";
import { isOut, left, lumpOf } from "../../bench/ties.ts";
import { ASIDE, CAPPED, DRAINED, HELD, ON_BASE, TIGHT, type State } from "../../bench/state.ts";
import type { Performance } from "../../bench/trace.ts";
import type { Thing } from "../../model/model.ts";
import type { Lines } from "../lines/groups.ts";
import { actionsIn } from "./actions.ts";
import { tableSheet, type SheetTable } from "./table-sheet.ts";

export const handoverSheet = tableSheet({
  name: "handover",
  title: ({ wording }) => wording.benchSheets.handover.title,
  note: ({ wording }) => wording.benchSheets.handover.note,
  make: ({ performance, lines, options }) => {
    const { handover } = options.wording.benchSheets;
    return {
      tables: lines.strip.map((group): SheetTable => {
        const acts = actionsIn([group]).flatMap(({ of }) => of),
          state = performance.strip[Math.max(...acts, -1)]?.after ?? performance.start;
        return {
          title: handover.after(`${group.number} ${group.title}`),
          columns: [handover.fact, handover.what],
          blank: [],
          empty: "",
          rows: [
            ...factsAt(state, performance, lines),
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
});

function factsAt(s: State, performance: Performance, { context, strip }: Lines): string[][] {
  const { benchSheets: words, kinds, labels } = context.wording,
    { handover } = words,
    { model } = performance;
  const has = (thing: Thing, flag: number): boolean => (at(s.flags, thing.index) & flag) !== 0,
    names = (things: readonly Thing[]): string => things.map(({ name }) => name).join(", ");
  // Where a thing was put when it came off, as its line says.
  const lies = new Map<string, string>();
  for (const line of actionsIn(strip)) {
    const where = line.details.find(({ sort }) => sort === "goes-to")?.says.replace(/\.$/, "");
    if (where !== undefined) for (const { id } of line.items) lies.set(id, where);
  }
  const placed = (thing: Thing): string => handover.lies(thing.name, lies.get(thing.id) ?? "");
  const off = model.parts.filter((part) => lumpOf(s, part.index) !== ON_BASE),
    outTies = model.ties.filter((tie) => tie.fastener && isOut(model, s, tie.index)),
    held = model.parts.filter((part) => has(part, HELD)),
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
    row(handover.off, [...off, ...outTies].map(placed).join("; ")),
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
