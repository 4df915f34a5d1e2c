// Handover: the bench as it stands after each step of the strip, for whoever goes on. Facts of the performance; none of them says that
// somebody may stop, and what is held says that nobody should.

import { at } from "../../bench/vector.ts";
import { isOut, left, lumpOf } from "../../bench/ties.ts";
import { ASIDE, CAPPED, DRAINED, HELD, ON_BASE, TIGHT, type State } from "../../bench/state.ts";
import type { Performance } from "../../bench/trace.ts";
import type { Thing } from "../../model/model.ts";
import type { Lines } from "../lines/groups.ts";
import { actionsIn } from "./actions.ts";
import type { Made, SheetKind, SheetTable } from "./sheet-data.ts";
import { tableSheet } from "./table-sheet.ts";

export const handoverKind: SheetKind = {
  name: "handover",
  title: ({ wording }) => wording.benchSheets.handover.title,
  note: ({ wording }) => wording.benchSheets.handover.note,
  make: ({ performance, lines, options, inManual }) => {
    const { handover } = options.wording.benchSheets;
    const tell = tellerOf(performance, placesIn(lines));
    let before: Growing = { off: [], standing: [] };
    return {
      tables: lines.strip.map((group): SheetTable => {
        const acts = actionsIn([group]).flatMap(({ of }) => of),
          state = performance.strip[Math.max(...acts, -1)]?.after ?? performance.start,
          now: Growing = {
            off: offAt(state, performance, tell),
            standing: standingAt(state, performance, tell, options),
          };
        const told: Growing = inManual === true ? before : { off: [], standing: [] };
        before = now;
        return {
          title: handover.after(group.step === undefined ? "" : group.number, group.title),
          columns: [handover.fact, handover.what],
          blank: [],
          empty: "",
          rows: [
            ...factsAt(state, performance, lines, now, told),
            ...actionsIn([group])
              .flatMap(({ id, readings }) => readings.map(({ what, limits }) => [id, what, limits]))
              .map(([id = "", what = "", limits = ""]) => [
                handover.readings,
                options.wording.document.titled(`${id} ${what}${limits === "" ? "" : ` (${limits})`}`, "________"),
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

/** Lists that grow with every step. */
interface Growing {
  readonly off: readonly Told[];
  readonly standing: readonly Told[];
}

/** A name, and what it is told with: where the thing lies, or what a precaution is against. Alike ones of a procedure are one and the same. */
interface Told {
  readonly name: string;
  readonly at: string;
}

/** Among other tables a list says what is new, as long as all that the table before says still holds. */
function sinceBefore(
  now: readonly Told[],
  before: readonly Told[],
  { document, benchSheets }: Made["options"]["wording"],
): string {
  const { asBefore, lies } = benchSheets.handover,
    had = new Set(before),
    still = before.length > 0 && had.isSubsetOf(new Set(now)),
    fresh = still ? now.filter((each) => !had.has(each)) : now;
  // What lies in one place, or is against one thing, is told together: thirty names of one tray say it once.
  const groups = [...Map.groupBy(fresh, (each) => each.at)].map(([where, all]) =>
    lies(all.map(({ name }) => name).join(", "), where),
  );
  return document.parts([...(still ? [asBefore] : []), ...groups]);
}

const standingAt = (s: State, { model }: Performance, tell: Teller, { wording: { kinds } }: Made["options"]): Told[] =>
  model.precautions
    .filter(({ number }) => at(s.standing, number) !== 0)
    .map(({ kind, hazard }) => tell.alike(kinds.precautionShort(kind), model.things[hazard]!.name));

interface Teller {
  readonly alike: (name: string, at: string) => Told;
  /** By the index of a part or a fastener: with where its line puts it. */
  readonly things: readonly Told[];
}

function tellerOf({ model }: Performance, lies: ReadonlyMap<string, string>): Teller {
  const found = new Map<string, Told>();
  const alike = (name: string, at: string): Told => {
    const key = `${name}\n${at}`,
      told = found.get(key) ?? { name, at };
    found.set(key, told);
    return told;
  };
  return { alike, things: model.things.map(({ name, id }) => alike(name, lies.get(id) ?? "")) };
}

/** Where the lines put things, by id. */
function placesIn({ strip }: Lines): ReadonlyMap<string, string> {
  const lies = new Map<string, string>();
  for (const line of actionsIn(strip)) {
    const where = line.details.find(({ sort }) => sort === "goes-to")?.says.replace(/\.$/, "");
    if (where !== undefined) for (const { id } of line.items) lies.set(id, where);
  }
  return lies;
}

/** What is off, each with where its line put it. */
function offAt(s: State, { model }: Performance, { things }: Teller): Told[] {
  return [
    ...model.parts.filter((part) => lumpOf(s, part.index) !== ON_BASE),
    ...model.ties.filter((tie) => tie.fastener && isOut(model, s, tie.index)),
  ].map(({ index }) => things[index]!);
}

/** @param told what the table before this one says; empty where it stands alone. */
function factsAt(s: State, performance: Performance, { context }: Lines, now: Growing, told: Growing): string[][] {
  const { benchSheets: words, labels, document } = context.wording,
    { handover } = words,
    { model } = performance;
  // Few things have any flag at any moment.
  const flagged = model.things.filter(({ index }) => at(s.flags, index) !== 0),
    having = (flag: number, is?: Thing["is"]): Thing[] =>
      flagged.filter((thing) => (is === undefined || thing.is === is) && (at(s.flags, thing.index) & flag) !== 0),
    names = (things: readonly Thing[]): string => things.map(({ name }) => name).join(", ");
  const held = having(HELD, "part"),
    hanging = held.filter((part) => lumpOf(s, part.index) === ON_BASE),
    lifted = held.filter((part) => lumpOf(s, part.index) !== ON_BASE);
  const loose = model.ties.filter(
    (tie) =>
      !isOut(model, s, tie.index) &&
      (at(s.slack, tie.index) !== TIGHT || (left(model, s, tie.index) < tie.count && !tie.countUnknown)),
  );
  const row = (label: string, says: string): string[] => [label, says === "" ? words.none : says];
  return [
    ...(hanging.length > 0 ? [row(handover.hangs, `${names(hanging)}. ${handover.doNotStop}`)] : []),
    ...(lifted.length > 0 ? [row(handover.lifted, names(lifted))] : []),
    row(handover.off, sinceBefore(now.off, told.off, context.wording)),
    row(
      handover.loose,
      document.parts(
        loose.map((tie) =>
          tie.countUnknown
            ? `${tie.name} (${labels.countNotGiven})`
            : handover.left(tie.name, left(model, s, tie.index), tie.count),
        ),
      ),
    ),
    row(handover.standing, sinceBefore(now.standing, told.standing, context.wording)),
    row(handover.open, names(having(DRAINED, "fluid"))),
    row(handover.closed, names(having(CAPPED))),
    row(handover.aside, names(having(ASIDE, "part"))),
    row(
      handover.temporary,
      [...s.temporaries.keys()].map((id) => model.temporaries.get(id)?.name || id.replaceAll("-", " ")).join(", "),
    ),
  ];
}
