// The closing list of a refit book: everything that the record leaves open, so that nothing of it is lost between the strip and the day
// of the way back. A line is open until somebody signs it; the list clears nothing.

import type { Performance } from "../../bench/trace.ts";
import type { Lines } from "../lines/groups.ts";
import type { ActionLine } from "../lines/line.ts";
import { checkedRecord, type Made, type Remark, type RemarkIs } from "../record/check.ts";
import type { WorkRecord } from "../record/record.ts";
import { wantedOf, wantedText } from "../record/wanted.ts";
import { actionsIn, saysAll } from "../sheet/actions.ts";
import type { SheetTable } from "../sheet/sheet-data.ts";
import { toolName } from "../lines/context.ts";
import type { OutputOptions } from "../output.ts";

/** Lines of the way back are ticked in the book: of them only what was entered and is amiss. */
const dueInTheBook: ReadonlySet<RemarkIs> = new Set([
  "not-ticked",
  "count-missing",
  "torque-missing",
  "reading-missing",
  "not-signed",
]);

type Group = "agreed" | "outside" | "ticks" | "other";

const groupOf: Readonly<Partial<Record<RemarkIs, Group>>> = {
  "not-agreed": "agreed",
  "reading-outside": "outside",
  "reading-unit": "outside",
  "calibration-overdue": "outside",
  "instrument-unlisted": "other",
  "not-as-it-should-be": "outside",
  "not-ticked": "ticks",
};

export function closingTables(
  record: WorkRecord,
  made: Made,
  performance: Performance,
  hash: string,
  options: OutputOptions,
): readonly SheetTable[] {
  const { refitBook: words, benchSheets: heads } = options.wording,
    { lines } = made,
    strip = new Set(actionsIn(lines.strip).map(({ id }) => id)),
    own = ownLines(record, made);
  const open = checkedRecord({ ...record, procedures: own ? [own] : [] }, [made], hash, options.wording).filter(
    (remark) => remark.open && (strip.has(remark.line) || !dueInTheBook.has(remark.is)),
  );
  const of = (group: Group): string[][] =>
    open.filter(({ is }) => (groupOf[is] ?? "other") === group).map((remark) => [remark.line, saysOf(remark)]);
  const wanted = wantedOf({ ...record, procedures: own ? [own] : [] }, () => lines.context.model).map((each) => [
    each.line,
    wantedText(each, options.wording),
  ]);
  const ticked = new Set((own?.lines ?? []).flatMap(({ line, done }) => (done === true ? [line] : [])));
  const table = (title: string, rows: readonly (readonly string[])[]): SheetTable => ({
    title,
    columns: [heads.line, words.left],
    blank: [heads.done, heads.who, heads.when],
    empty: heads.none,
    rows,
  });
  return [
    table(words.wanted, wanted),
    table(words.agreed, of("agreed")),
    table(words.outside, of("outside")),
    table(words.temporary, temporaries(performance, lines, ticked, options)),
    table(words.ticks, of("ticks")),
    table(words.other, of("other")),
  ];
}

export const ownLines = (
  { procedures }: WorkRecord,
  { id, unit, build }: Pick<Made, "id" | "unit" | "build">,
): WorkRecord["procedures"][number] | undefined =>
  procedures.find((each) => each.procedure === id && each.unit === unit && each.build === build);

const saysOf = ({ says, consequences }: Remark): string => [says, ...consequences].join(" ");

/** What the strip puts on and caps, until the line that takes it off, in the strip or on the way back, is ticked in the record. */
function temporaries(
  { strip, refit, written }: Performance,
  lines: Lines,
  ticked: ReadonlySet<string>,
  options: OutputOptions,
): string[][] {
  const { refitBook: words } = options.wording,
    acts = new Map(refit.map(({ op }) => [op.number, op.act]));
  /** What a line puts on or takes off: the name of a temporary thing, or the things that are capped. */
  const subjects = (line: ActionLine): readonly string[] => {
    if (line.verb === "cap" || line.verb === "uncap") return line.items.map(({ id }) => `capped ${id}`);
    if (line.verb !== "put" && line.verb !== "take") return [];
    return line.of.flatMap((of) => {
      const act = line.half === "strip" ? strip[of]?.act : (acts.get(of) ?? written[of]?.act);
      return act?.names[0] ? [`put ${act.names[0].text}`] : [];
    });
  };
  const nameOf = (subject: string, line: ActionLine): string =>
    subject.startsWith("put ")
      ? toolName(lines.context, subject.slice("put ".length))
      : (line.items.find(({ id }) => subject === `capped ${id}`)?.name ?? saysAll(line));
  const all = actionsIn([...lines.strip, ...lines.refit, ...lines.finish]);
  return all.flatMap((line, i): string[][] => {
    if (line.half !== "strip" || (line.verb !== "put" && line.verb !== "cap")) return [];
    return subjects(line).flatMap((subject): string[][] => {
      const off = all
        .slice(i + 1)
        .find((each) => (each.verb === "take" || each.verb === "uncap") && subjects(each).includes(subject));
      if (off && ticked.has(off.id)) return [];
      const name = subject.startsWith("put ") ? nameOf(subject, line) : words.capped(nameOf(subject, line));
      return [[line.id, off ? words.comesOff(name, off.id) : words.staysOn(name)]];
    });
  });
}
