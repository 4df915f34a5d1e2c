// The book of the way back: what the record says stands at the line that it touches, all that is open stands in the list, and a record of
// other files makes no book.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { expect, test } from "vitest";
import { defaultWording, wordings } from "../../language/outputs/wording/languages.ts";
import { write, CannotMake } from "../../language/outputs/output.ts";
import { refitBook } from "../../language/outputs/refit-book/refit-book.ts";
import { linesOf } from "../../language/outputs/lines/groups.ts";
import { actionsIn } from "../../language/outputs/sheet/actions.ts";
import type { LineRecord, WorkRecord } from "../../language/outputs/record/record.ts";
import { pdfOf } from "../../language/cli/pdf/pdf.ts";
import { compiledExample, compiledText, options } from "./outputs-of.ts";
import { readPdf } from "./pdf/pdf-text.ts";
import { checkUa } from "./pdf/ua-check.ts";
import { filledRecord } from "./record/filled.ts";

const input = compiledText(`
temporary felt "Felt sheet"
unit u "Unit" { base a
  part a "Housing" { mass 5 kg }  part b "Cover" { mass 2 kg }  part c "Shaft" { fits a by slide-fit  behind b  mass 1 kg }
  part s "Shim" { behind b }
  fastener f bolt "Bolts" { count 4  size M8  torque 20..24 N·m  joins b to a }
  fastener g screw "Shim screw" { torque 3 N·m  joins s to a }
  joint l connector "Sensor lead" { joins b to a }
  hazard live electrical danger "Heater" { on l  precaution isolate "Open the switch." back "Close the switch."  precaution prove-dead "Both poles." at most 12 V dc } }
procedure job "Job" for u { aim b, c, s off
  step one "Open" { isolate live  prove-dead live  undo l  cap l  undo f  remove b }
  step two "Inside" { mark c, a as m1 "One line."  measure end-play on c "End play" as found  measure gap on c "Gap" at most 0.5 mm else choose s from 0.1 mm, 0.2 mm
    remove c  undo g  remove s  put felt on a  inspect bore on a "Bore clean" else "Dress it."  take felt off } }
`);
const lines = linesOf(input.performances[0]!, options);
const line = (is: (verb: string, items: readonly string[]) => boolean): string =>
  actionsIn(lines.strip).find(({ verb, items }) =>
    is(
      verb,
      items.map(({ id }) => id),
    ),
  )!.id;
const cover = line((verb, items) => verb === "undo" && items.includes("f")),
  gap = actionsIn(lines.strip).find(({ readings }) => readings[0]?.what === "Gap")!.id,
  play = actionsIn(lines.strip).find(({ readings }) => readings[0]?.what === "End play")!.id,
  mark = line((verb) => verb === "mark"),
  cap = line((verb) => verb === "cap"),
  put = line((verb) => verb === "put"),
  take = line((verb) => verb === "take");

const record = (change: Readonly<Record<string, Partial<LineRecord>>> = {}): WorkRecord =>
  filledRecord(input, options, "strip", change);
const book = (of: WorkRecord, more = {}) => {
  const made = refitBook({ file: "unit-7.json", record: of });
  return { made, data: made.data(input, { ...options, ...more }) };
};
/** The notes right before the line of the way back that works on a thing, its warnings between them. */
const notesBefore = (of: WorkRecord, item: string): string[] => {
  const [chapter] = book(of).data.chapters,
    all = [...chapter!.refit, ...chapter!.finish].flatMap((group) => group.lines),
    at = all.findIndex((each) => each.is === "action" && each.items.some(({ id }) => id === item)),
    notes: string[] = [];
  for (let i = at - 1; i >= 0 && all[i]!.is !== "action"; i--) {
    const each = all[i]!;
    if (each.is === "note" && each.recorded) notes.unshift(each.says);
  }
  return notes;
};
const closing = (of: WorkRecord): Record<string, string[]> =>
  Object.fromEntries(book(of).data.book!.closing.map(({ title, rows }) => [title, rows.map((row) => row.join(" "))]));
const { refitBook: words } = defaultWording;

test("the machine is clean, so that what is open comes from the record alone", () => {
  expect(input.findings.filter(({ severity }) => severity === "error")).toEqual([]);
});

test("readings as found, the mark and the reading that chooses stand before the lines that they touch", () => {
  const of = record({
    [play]: {
      readings: [
        {
          reading: 1,
          tries: [
            { value: 0.04, unit: "mm" },
            { value: 0.05, unit: "mm" },
          ],
        },
      ],
    },
    [gap]: { readings: [{ reading: 1, tries: [{ value: 0.7, unit: "mm" }] }] },
  });
  const shaft = notesBefore(of, "c");
  expect(shaft).toContain(`Record, line ${play}: End play: 0.05 mm (as found)`);
  expect(shaft).toContain(
    `Record, line ${gap}: Gap: 0.7 mm, outside its limits (at most 0.5 mm); Shim: which one was chosen is not written down`,
  );
  expect(shaft.some((says) => says.startsWith(`Record, line ${mark}: Mark`) && says.includes("m1"))).toBe(true);
  expect(notesBefore(of, "s")).toContain(
    `Record, line ${gap}: Gap: 0.7 mm, outside its limits (at most 0.5 mm); Shim: which one was chosen is not written down`,
  );
  expect(notesBefore(record({ [mark]: { done: false } }), "c").join()).toContain(
    "Not ticked: look whether it was done.",
  );
});

test("the size that was chosen stands at what is fitted", () => {
  const of = record({ [gap]: { readings: [{ reading: 1, tries: [{ value: 0.7, unit: "mm" }], chosen: "0.2 mm" }] } });
  expect(notesBefore({ ...of, version: 2 }, "s").join()).toContain("; Shim, chosen: 0.2 mm");
});

test("a proof of the record is told nowhere as a reading, and every book says that proofs are void", () => {
  const html = write(book(record()).made, "html", input, options);
  expect(html).toContain("Every proof of the record is void.");
  expect(html).not.toMatch(/Record, line [^:]*: Prove/);
});

test("an entry not as written stands at the thing that it names, or at what its line works on", () => {
  const entry = { what: "sheared" as const, done: "drilled out", agreedBy: "Foreman" };
  expect(notesBefore(record({ [cover]: { notAsWritten: [entry] } }), "f")).toEqual([
    `Record, line ${cover}: Sheared; done: drilled out; agreed by Foreman`,
  ]);
  expect(notesBefore(record({ [cover]: { notAsWritten: [{ ...entry, item: "c" }] } }), "c").at(0)).toBe(
    `Record, line ${cover}: Sheared: Shaft; done: drilled out; agreed by Foreman`,
  );
  const nowhere = book(record({ [cover]: { notAsWritten: [{ ...entry, item: "no-such" }] } })).data;
  expect(JSON.stringify(nowhere.chapters)).toContain("Sheared: no-such");
});

test("the list holds each thing that is open, and nothing that is not", () => {
  expect(Object.keys(closing(record()))).toEqual([words.temporary]);
  const capped = closing(record())[words.temporary]!;
  expect(capped).toHaveLength(1);
  expect(capped[0]).toMatch(new RegExp(`^${cap} Cap on Sensor lead: comes off at line R`));
  const all = closing(
    record({
      [cover]: {
        done: false,
        counts: [{ item: "f", count: 3 }],
        notAsWritten: [{ what: "sheared", item: "f", wanted: "Bolt M8x20" }],
      },
      [gap]: { readings: [{ reading: 1, tries: [{ value: 0.7, unit: "mm" }] }] },
      [play]: { readings: [] },
      [take]: { done: false },
    }),
  );
  expect(all).toEqual({
    [words.wanted]: [`${cover} Bolt M8x20, for bolts, M8`],
    [words.agreed]: [`${cover} Sheared, bolts: neither what was done about it nor who agreed is written down`],
    [words.outside]: [expect.stringMatching(`^${gap} Gap: 0.7 mm is outside its limits.* choose`)],
    [words.temporary]: [...capped, `${put} Felt sheet: comes off at line ${take}`],
    [words.ticks]: [`${cover} Not ticked: Undo the 4 bolts.`, `${take} Not ticked: Take off the felt sheet.`],
    [words.other]: [`${cover} Bolts: 3 counted, 4 due`, `${play} End play: no reading (limits: as found)`],
  });
});

test("lines of the way back that the record has ticked say so, and are not asked for in the list", () => {
  const whole = filledRecord(input, options, "all"),
    html = write(refitBook({ file: "r", record: whole }), "html", input, options);
  expect(html.split("The record has this line ticked.").length - 1).toBe(
    actionsIn([...lines.refit, ...lines.finish]).length,
  );
  expect(closing(whole)).toEqual({});
  expect(html).toContain(
    "The record leaves nothing open. This reads the record alone and says nothing about the machine.",
  );
});

test("the book is the way back and its warnings: the strip is not in it, nothing in it keeps or asks", () => {
  const html = write(book(record()).made, "html", input, options);
  expect(html).not.toContain("<script");
  expect(html).not.toContain('id="strip"');
  for (const id of ["recorded", "safety", "tools", "refit", "closing"]) expect(html).toContain(`<section id="${id}"`);
  expect(html).toContain("DRAFT");
  for (const [, target = ""] of html.matchAll(/href="#([^"]+)"/g)) expect(html).toContain(`id="${target}"`);
});

test("its tools and its lifts are those of lines that it prints, and their numbers", () => {
  const winch = compiledExample("mooring-winch/strip.strip"),
    made = refitBook({ file: "unit-7.json", record: filledRecord(winch, options, "strip") }).data(winch, options),
    printed = new Set(
      made.chapters.flatMap(({ refit, finish }) =>
        [...refit, ...finish].flatMap(({ lines }) => lines.flatMap((each) => (each.is === "action" ? [each.id] : []))),
      ),
    );
  const named = [
    ...made.tools.lifts.map((row) => row.line),
    ...made.tools.others.flatMap((row) => row.for),
    ...made.chapters.flatMap(({ sheets }) =>
      sheets.tables.lifting.tables.flatMap(({ rows }) => rows.map(([id]) => id)),
    ),
  ];
  expect(named.length).toBeGreaterThan(10);
  expect(named.filter((id) => !printed.has(id!))).toEqual([]);
  expect(made.tools.others.every((row) => row.for.length > 0)).toBe(true);
});

test("a record of other files, or of another procedure, makes no book and says why", () => {
  expect(() => book({ ...record(), content: "0".repeat(64) })).toThrow(CannotMake);
  expect(() => book({ ...record(), content: "0".repeat(64) })).toThrow(
    /^unit-7\.json was made from another revision of these files: its content is 0{16}, here it is [0-9a-f]{16}\./,
  );
  const [own] = record().procedures;
  expect(() => book({ ...record(), procedures: [{ ...own!, procedure: "other" }] })).toThrow(
    "unit-7.json holds nothing of job on u: it is about other on u",
  );
});

test.each(Object.keys(wordings))(
  "%s: the book as PDF holds every note and every line of the list, and is tagged",
  async (tag) => {
    const winch = compiledExample("mooring-winch/strip.strip"),
      with_ = { ...options, wording: wordings[tag]! },
      first = { ...winch, performances: winch.performances.filter(({ procedure }) => procedure.id === "winch-strip") },
      strip = actionsIn(linesOf(first.performances[0]!, with_).strip),
      of = filledRecord(first, with_, "strip", {
        [strip[20]!.id]: { done: false, notAsWritten: [{ what: "seized", done: "warmed", wanted: "Nut M16" }] },
      }),
      made = refitBook({ file: "r.json", record: of }),
      data = made.data(first, with_),
      { bytes } = await pdfOf(made.print!(data, with_)),
      { pages } = await readPdf(bytes),
      text = pages
        .map(({ tagged }) => tagged)
        .join(" ")
        .replace(/\s/g, "");
    expect((await checkUa(bytes)).findings).toEqual([]);
    const notes = data.chapters.flatMap(({ refit }) =>
      refit.flatMap((group) => group.lines.flatMap((each) => (each.is === "note" && each.recorded ? [each.says] : []))),
    );
    expect(notes.length).toBeGreaterThan(10);
    for (const says of notes) expect(text.includes(says.replace(/\s/g, "")), says).toBe(true);
    for (const { rows } of data.book!.closing)
      for (const cell of rows.flat()) expect(text.includes(cell.replace(/\s/g, "")), cell).toBe(true);
  },
  30_000,
);

test("as text, as a table and as data it holds every line of the way back, every note of the record and all that is open", () => {
  const amiss = record({
      [gap]: { readings: [{ reading: 1, tries: [{ value: 0.9, unit: "mm" }] }] },
      [cover]: {
        done: false,
        notAsWritten: [{ what: "seized", note: "Two bolts", wanted: "Bolt M8x30", wantedCount: 2 }],
      },
    }),
    { made, data } = book(amiss),
    read = (text: string): string => text.replace(/\s+/g, " "),
    text = read(write(made, "text", input, options)),
    table = read(write(made, "csv", input, options).replaceAll('""', '"')),
    json = JSON.parse(write(made, "json", input, options)) as object;
  const says = data.chapters
    .flatMap(({ refit, finish }) => [...refit, ...finish])
    .flatMap((group) => group.lines)
    .flatMap((each) => (each.is === "action" || each.is === "note" ? [each.says] : []));
  expect(says.length).toBeGreaterThan(10);
  expect(data.book!.closing.length).toBeGreaterThan(2);
  for (const each of [
    ...says,
    ...data.book!.closing.flatMap(({ title, rows }) => [title, ...rows.map((row) => row[1]!)]),
  ])
    for (const whole of [text, table, read(JSON.stringify(json).replaceAll('\\"', '"'))])
      expect(whole).toContain(read(each));
  for (const line of options.wording.refitBook.lead) expect(text).toContain(line);
  const validate = new Ajv2020({ strict: false }).compile(
    JSON.parse(
      readFileSync(join(import.meta.dirname, "../../language/schemas/refit-book.schema.json"), "utf8"),
    ) as object,
  );
  expect(validate(json), JSON.stringify(validate.errors)).toBe(true);
  expect(validate({ ...json, more: 1 })).toBe(false);
});

test("made twice, and with the files in another order, every format is the same bytes", async () => {
  const turned = { ...input, texts: new Map([...input.texts].reverse()) },
    { made } = book(record());
  for (const format of Object.keys(made.formats))
    expect(write(made, format, turned, options)).toBe(write(made, format, input, options));
  const pdf = async (of: typeof input) => (await pdfOf(made.print!(made.data(of, options), options))).bytes;
  expect((await pdf({ ...input, ...turned })).equals(await pdf(input))).toBe(true);
});
