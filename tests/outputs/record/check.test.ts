// A full record gives no remark; each thing left out, wrong or outside its limits gives its own.

import { expect, test } from "vitest";
import { write } from "../../../language/outputs/output.ts";
import { recordCheck } from "../../../language/outputs/record/check-output.ts";
import { options } from "../outputs-of.ts";
import { full, input, lineWhere, remarks, withLine } from "./machine.ts";

const undo = lineWhere(({ verb, items }) => verb === "undo" && items.some(({ id }) => id === "f")),
  reading = lineWhere(({ readings }) => readings[0]?.isFigure === true);
const look = lineWhere(({ readings }) => readings[0]?.isFigure === false),
  sign = lineWhere((line) => line.sign),
  tight = lineWhere(({ half, items }) => half === "refit" && items.some(({ id }) => id === "f"));
const kinds = (record: Parameters<typeof remarks>[0]): string[] =>
  remarks(record).map(({ is, line }) => `${line} ${is}`.trim());

test("a record that is filled in gives no remark, and says that this clears nothing", () => {
  expect(remarks(full())).toEqual([]);
  expect(write(recordCheck([{ file: "r.json", record: full() }]), "text", input, options)).toContain(
    "No remark. This reads the record alone and says nothing about the machine.",
  );
});

test.each([
  ["no tick", undo.id, { done: false }, "not-ticked"],
  ["no count", undo.id, { counts: [] }, "count-missing"],
  ["a count short", undo.id, { counts: [{ item: "f", count: 3 }] }, "count-differs"],
  ["no torque", tight.id, { torques: [] }, "torque-missing"],
  ["a torque too low", tight.id, { torques: [{ item: "f", value: 19.9, unit: "N·m" }] }, "torque-differs"],
  [
    "a torque too high in the other system",
    tight.id,
    { torques: [{ item: "f", value: 18.5, unit: "lbf·ft" }] },
    "torque-differs",
  ],
  ["a torque in millimetres", tight.id, { torques: [{ item: "f", value: 22, unit: "mm" }] }, "torque-unit"],
  ["no reading", reading.id, { readings: [] }, "reading-missing"],
  ["only a note", reading.id, { readings: [{ reading: 1, tries: [{ note: "later" }] }] }, "reading-missing"],
  ["a reading without a unit", reading.id, { readings: [{ reading: 1, tries: [{ value: 13 }] }] }, "reading-unit"],
  [
    "a reading in kilograms",
    reading.id,
    { readings: [{ reading: 1, tries: [{ value: 13, unit: "kg" }] }] },
    "reading-unit",
  ],
  [
    "a look that fails",
    look.id,
    { readings: [{ reading: 1, tries: [{ asItShouldBe: false }] }] },
    "not-as-it-should-be",
  ],
  ["no signature", sign.id, { signed: undefined }, "not-signed"],
  [
    "a second reading",
    reading.id,
    {
      readings: [
        { reading: 1, tries: [{ value: 13, unit: "mm" }] },
        { reading: 2, tries: [{ value: 1, unit: "mm" }] },
      ],
    },
    "unknown-reading",
  ],
] as const)("%s is one remark", (_, id, change, is) => {
  expect(kinds(withLine(id, change as never))).toEqual([`${id} ${is}`]);
  expect(remarks(withLine(id, change as never)).every(({ open }) => open)).toBe(true);
});

// NIST SP 811: 1 in is 25.4 mm exactly, so 0.5 in is 12.7 mm.
test("a reading is held against its limits in any unit of its kind; the limit itself is inside", () => {
  const of = (value: number, unit: string) =>
    kinds(withLine(reading.id, { readings: [{ reading: 1, tries: [{ value, unit }] }] }));
  expect([of(12.7, "mm"), of(0.5, "in"), of(12.71, "mm")]).toEqual([[], [], []]);
  expect([of(12.69, "mm"), of(0.499, "in")]).toEqual([
    [`${reading.id} reading-outside`],
    [`${reading.id} reading-outside`],
  ]);
});

test("outside its limits a reading says what follows, and an earlier try is never lost", () => {
  const [outside] = remarks(withLine(reading.id, { readings: [{ reading: 1, tries: [{ value: 12, unit: "mm" }] }] }));
  expect(outside!.consequences.join()).toMatch(/scrap/i);
  const twice = remarks(
    withLine(reading.id, {
      readings: [
        {
          reading: 1,
          tries: [
            { value: 12, unit: "mm" },
            { value: 13, unit: "mm" },
          ],
        },
      ],
    }),
  );
  expect(twice.map(({ is, open }) => [is, open])).toEqual([["reading-was-outside", false]]);
  expect(twice[0]!.says).toContain("try 1");
});

test("the figure that is printed in the other system may be set", () => {
  // 20..24 N·m is 14.75..17.70 lbf·ft (NIST SP 811: 1 lbf·ft is 1.355 818 N·m).
  for (const value of [15, 16, 17.7])
    expect(kinds(withLine(tight.id, { torques: [{ item: "f", value, unit: "lbf·ft" }] }))).toEqual([]);
});

test("another revision, another procedure and unknown lines are told", () => {
  expect(kinds({ ...full(), content: "0".repeat(64) })).toEqual(["other-revision"]);
  expect(kinds({ ...full(), procedures: [] })).toEqual(["no-lines"]);
  const [procedure] = full().procedures;
  expect(kinds({ ...full(), procedures: [{ ...procedure!, lines: [...procedure!.lines, { line: "99.1" }] }] })).toEqual(
    ["99.1 unknown-line"],
  );
  expect(kinds({ ...full(), procedures: [procedure!, { ...procedure!, procedure: "other" }] })).toEqual([
    "other-procedure",
  ]);
});

test("what was not as written is told, and open until somebody agrees; wanted parts are listed", () => {
  const entry = { what: "sheared" as const, item: "f", done: "drilled out", wanted: "Bolt M8" };
  expect(kinds(withLine(undo.id, { notAsWritten: [entry] }))).toEqual([
    `${undo.id} not-as-written`,
    `${undo.id} not-agreed`,
  ]);
  expect(kinds(withLine(undo.id, { notAsWritten: [{ ...entry, agreedBy: "Foreman" }] }))).toEqual([
    `${undo.id} not-as-written`,
  ]);
  expect(
    recordCheck([{ file: "r", record: withLine(undo.id, { notAsWritten: [entry] }) }]).data(input, options).records[0]!
      .wanted,
  ).toEqual([
    {
      part: "Bolt M8",
      procedure: "job",
      line: undo.id,
      thing: { id: "f", name: "Bolts", size: "M8", partNo: "", standard: "" },
    },
  ]);
});

test("an entry that says neither what was done nor who agreed asks for both", () => {
  const said = (entry: { what: "seized"; item: string; done?: string; agreedBy?: string }): string[] =>
    recordCheck([{ file: "r", record: withLine(undo.id, { notAsWritten: [entry] }) }])
      .data(input, options)
      .records[0]!.remarks.filter(({ open }) => open)
      .map(({ says }) => says);
  const entry = { what: "seized" as const, item: "f" };
  expect(said(entry)).toEqual(["Seized, bolts: neither what was done about it nor who agreed is written down"]);
  expect(said({ ...entry, done: "cut off" })).toEqual(["Seized, bolts: nobody has agreed to what was done"]);
  expect(said({ ...entry, agreedBy: "Foreman" })).toEqual([]);
});

test("the order list says how many and for what, in the text, the table and the JSON", () => {
  const record = withLine(undo.id, {
      notAsWritten: [
        { what: "sheared", item: "f", agreedBy: "Foreman", wanted: "Bolt M8x30", wantedCount: 2 },
        { what: "other", agreedBy: "Foreman", wanted: "Rag" },
      ],
    }),
    made = recordCheck([{ file: "r", record: { ...record, version: 2 } }]),
    text = write(made, "text", input, options);
  expect(text).toMatch(/To be ordered\n +\S+ +Bolt M8x30, 2 off, for bolts, M8\n +\S+ +Rag\n/);
  const rows = write(made, "csv", input, options).split("\r\n");
  expect(rows.filter((row) => row.includes("To be ordered"))).toEqual([
    `DRAFT,r,7,job,${undo.id},To be ordered,,,Bolts,Bolt M8x30,2,M8`,
    `DRAFT,r,7,job,${undo.id},To be ordered,,,,Rag,,`,
  ]);
  expect(rows.filter((row) => row.includes("Sheared: Bolts"))[0]!.split(",")[8]).toBe("Bolts");
});
