// What a record says of the strip, at the line of the way back that touches the same thing: readings as they were found, marks and tags,
// sizes that were chosen, entries "not as written". Proofs are left out: on resuming they are void.

import type { Lines } from "../lines/groups.ts";
import type { ActionLine, Line, LineGroup, NoteLine } from "../lines/line.ts";
import { judgedTry } from "../record/judge-reading.ts";
import type { LineRecord } from "../record/record.ts";
import { notAsWrittenText } from "../record/not-as-written.ts";
import { actionsIn, saysAll } from "../sheet/actions.ts";
import { isKindOf, precautions } from "../../tables/index.ts";
import type { OutputOptions } from "../output.ts";

/** Something that the record says, and the things that it is about. */
interface Found {
  readonly line: ActionLine;
  readonly says: string;
  readonly things: readonly string[];
}

export interface WayBack {
  /** With the notes of the record before the lines that they touch. */
  readonly refit: readonly LineGroup[];
  readonly finish: readonly LineGroup[];
  /** What no single line or step of the way back is about. */
  readonly whole: readonly string[];
}

export function wayBackWith(own: readonly LineRecord[], lines: Lines, options: OutputOptions): WayBack {
  const byId = new Map(own.map((line) => [line.line, line])),
    before = new Map<ActionLine, string[]>(),
    atStep = new Map<LineGroup, string[]>(),
    whole: string[] = [];
  /** The same words twice before one line say it once. */
  const put = <Key>(map: Map<Key, string[]>, key: Key, says: string): void => {
    map.set(key, [...new Set([...(map.get(key) ?? []), says])]);
  };
  const back = actionsIn([...lines.refit, ...lines.finish]);
  for (const group of lines.strip)
    for (const found of actionsIn([group]).flatMap((line) => foundAt(line, byId.get(line.id), lines, options))) {
      const touched = back.find(({ items }) => items.some(({ id }) => found.things.includes(id))),
        step = lines.refit.find((each) => each.step === group.step && each.procedure === group.procedure);
      if (touched) put(before, touched, found.says);
      else if (step) put(atStep, step, found.says);
      else whole.push(found.says);
    }
  for (const line of back)
    for (const says of doneAlready(line, byId.get(line.id), lines, options)) put(before, line, says);
  const fed = (groups: readonly LineGroup[]): LineGroup[] =>
    groups.map((group) => ({ ...group, lines: withNotes(group, atStep.get(group) ?? [], before) }));
  return { refit: fed(lines.refit), finish: fed(lines.finish), whole };
}

function foundAt(line: ActionLine, own: LineRecord | undefined, lines: Lines, options: OutputOptions): Found[] {
  const { refitBook: words } = options.wording,
    items = line.items.map(({ id }) => id),
    found: Found[] = [],
    add = (says: string, things: readonly string[] = items): void => {
      found.push({ line, says: words.at(line.id, says), things });
    };
  if (!isKindOf(precautions, line.verb)) {
    for (const { says, chooses } of readingsOf(line, own, lines, options)) {
      add(says);
      if (chooses.length > 0) add(says, chooses);
    }
    if (line.verb === "mark" || line.verb === "tag")
      add([saysAll(line), own?.done === true ? "" : words.notTicked].filter(Boolean).join(" "));
  }
  for (const entry of own?.notAsWritten ?? [])
    add(notAsWrittenText(entry, lines.context), entry.item === undefined ? items : [entry.item]);
  return found;
}

/** What is written down for lines of the way back: they may be done in part. */
function doneAlready(line: ActionLine, own: LineRecord | undefined, lines: Lines, options: OutputOptions): string[] {
  if (!own) return [];
  const { refitBook: words } = options.wording;
  return [
    ...(own.done === true ? [words.ticked] : []),
    ...(own.readings?.length ? readingsOf(line, own, lines, options).map(({ says }) => words.at(line.id, says)) : []),
    ...(own.notAsWritten ?? []).map((entry) => words.at(line.id, notAsWrittenText(entry, lines.context))),
  ];
}

/** Every reading of the line as it was taken, the last try; one that is missing says so. */
function readingsOf(
  line: ActionLine,
  own: LineRecord | undefined,
  { context: { model } }: Lines,
  { wording }: OutputOptions,
): { readonly says: string; readonly chooses: readonly string[] }[] {
  const { record, refitBook: words, tablet, document } = wording;
  const names = (ids: readonly string[]): string =>
    wording.acts.list(ids.map((id) => model.things.find((thing) => thing.id === id)?.name ?? id));
  return line.readings.map((reading, i) => {
    const taken = own?.readings?.find((each) => each.reading === i + 1),
      last = taken?.tries.at(-1),
      judged = last ? judgedTry(last, reading) : undefined;
    const says = ((): string => {
      switch (judged?.is) {
        case "figure":
          return words.reading(reading.what, record.figure(judged.value, judged.unit), reading.limits, judged.outside);
        case "wrong-unit":
          return record.readingUnit(reading.what, record.figure(judged.value, judged.unit), reading.unit);
        case "answer":
          return document.titled(
            reading.what,
            `${tablet.asItShouldBe} ${judged.asItShouldBe ? tablet.yes : tablet.no}`,
          );
        default:
          return record.readingMissing(reading.what, reading.limits);
      }
    })();
    const isOutside = judged?.is === "figure" && judged.outside,
      which = names(reading.chooses);
    const choice =
      reading.chooses.length === 0
        ? ""
        : taken?.chosen !== undefined
          ? words.chosen(which, taken.chosen)
          : isOutside
            ? words.notChosen(which)
            : "";
    return { says: document.parts([says, last?.note ?? "", choice].filter(Boolean)), chooses: reading.chooses };
  });
}

/** Notes stand before what a line is told by: its warnings stay right before it. */
function withNotes(group: LineGroup, first: readonly string[], before: ReadonlyMap<ActionLine, string[]>): Line[] {
  const out: Line[] = [];
  let told: Line[] = [],
    pending = [...first];
  const note = (says: string, i: number, line: Line): NoteLine => ({
    is: "note",
    id: `${line.id}-record-${i + 1}`,
    half: line.half,
    at: line.at,
    given: [],
    says,
    recorded: true,
  });
  for (const line of group.lines) {
    if (line.is !== "action") {
      told.push(line);
      continue;
    }
    pending.push(...(before.get(line) ?? []));
    out.push(...pending.map((says, i) => note(says, i, line)), ...told, line);
    told = [];
    pending = [];
  }
  const last = group.lines.at(-1);
  return [...out, ...(last ? pending.map((says, i) => note(says, i, last)) : []), ...told];
}
