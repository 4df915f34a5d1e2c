// The rules of the page on a tablet: what is asked before a tick, what is said of a reading, how the record comes and goes.

import { expect, test } from "vitest";
import {
  entriesOf,
  noEntries,
  numberOf,
  recordOf,
  withLine,
  withInstrument,
  withTry,
} from "../../language/outputs/manual/tablet/entries.ts";
import {
  asksAbout,
  judged,
  judgedTyped,
  leaningOn,
  leftText,
  missingFor,
  proofsTaken,
  tightening,
  withoutProofs,
} from "../../language/outputs/manual/tablet/judge.ts";
import type { Plan } from "../../language/outputs/manual/tablet/plan.ts";
import { filled, tabletWords } from "../../language/outputs/manual/tablet/words.ts";
import { manualDocument } from "../../language/outputs/manual/build.ts";
import { readRecord } from "../../language/outputs/record/read-record.ts";
import { defaultWording } from "../../language/outputs/wording/languages.ts";
import { compiledExample, options } from "../outputs/outputs-of.ts";

const plan: Plan = {
  id: "u p",
  content: "0".repeat(64),
  procedures: [{ procedure: "p", unit: "u", build: "" }],
  steps: [[{ id: "screws", name: "Lid screws" }]],
  lines: [
    { id: "a", line: "1.1", procedure: 0, step: 0, takes: "precaution", wait: 60 },
    {
      id: "b",
      line: "1.2",
      procedure: 0,
      step: 0,
      takes: "proof",
      needs: ["a"],
      readings: [{ unit: "V dc", isFigure: true, high: 12 }],
    },
    { id: "c", line: "1.3", procedure: 0, step: 0, needs: ["a", "b"], counts: [{ item: "screws", due: 4 }] },
    { id: "d", line: "1.4", procedure: 0, step: 0, readings: [{ unit: "mm", isFigure: true, low: 3, high: 4 }] },
    { id: "e", line: "1.5", procedure: 0, step: 0, sign: true },
    { id: "f", line: "1.6", procedure: 0, step: 0, hold: "e", readings: [{ unit: "", isFigure: false }] },
    { id: "g", line: "R1.1", procedure: 0, step: 0, before: ["c"] },
    {
      id: "h",
      line: "R1.2",
      procedure: 0,
      step: 0,
      order: [1, 3, 2, 4],
      passes: 2,
      torques: [{ item: "screws", given: [{ unit: "N·m", low: 9, high: 9 }] }],
    },
  ],
};
const is = (id: string, entries = noEntries): string[] => missingFor(id, plan, entries).map((each) => each.is);

test("nothing is ticked before the precautions that it needs, nor a precaution before its wait has run", () => {
  expect(missingFor("c", plan, noEntries)).toEqual([{ is: "precautions", lines: ["a", "b"] }]);
  expect(is("a")).toEqual(["wait"]);
  expect(is("a", withLine(noEntries, "a", { waited: 59.9 }))).toEqual(["wait"]);
  expect(is("a", withLine(noEntries, "a", { waited: 60 }))).toEqual([]);
});

test("a proof outside its limits is not made up for by words; another reading is", () => {
  const ready = withLine(noEntries, "a", { done: true });
  expect(is("b", ready)).toEqual(["reading"]);
  const failed = withTry(ready, "b", 1, { value: 48, unit: "V dc" });
  expect(is("b", failed)).toEqual(["outside-precaution"]);
  const words = { notAsWritten: [{ what: "other" as const, done: "asked", agreedBy: "N. N." }] };
  expect(is("b", withLine(failed, "b", words))).toEqual(["outside-precaution"]);
  expect(is("b", withTry(failed, "b", 1, { value: 0.4, unit: "V dc" }))).toEqual([]);
  const worn = withTry(noEntries, "d", 1, { value: 2.9, unit: "mm" });
  expect(is("d", worn)).toEqual(["outside"]);
  expect(is("d", withLine(worn, "d", { notAsWritten: [{ what: "other", done: "renewed" }] }))).toEqual(["outside"]);
  expect(is("d", withLine(worn, "d", words))).toEqual([]);
});

test("a limit itself is inside, a figure without limits is neither, an answer counts as given", () => {
  const limits = { unit: "mm", isFigure: true, low: 3, high: 4 };
  expect([2.999, 3, 4, 4.001].map((value) => judged(limits, { value }))).toEqual([
    "outside",
    "inside",
    "inside",
    "outside",
  ]);
  expect(judged({ unit: "", isFigure: true }, { value: 3 })).toBe("no-limits");
  expect(judged({ unit: "", isFigure: false }, { asItShouldBe: false })).toBe("outside");
  expect(judged(limits, undefined)).toBe("none");
});

test("a point is signed before it is ticked, and nothing after it goes on before", () => {
  expect(is("e")).toEqual(["signature"]);
  expect(is("f", withTry(noEntries, "f", 1, { asItShouldBe: true }))).toEqual(["hold"]);
  const released = withLine(withLine(noEntries, "e", { signed: "N. N.", done: true }), "f", {});
  expect(is("f", withTry(released, "f", 1, { asItShouldBe: true }))).toEqual([]);
});

test("a precaution is taken back only after all that needs it", () => {
  expect(missingFor("g", plan, noEntries)).toEqual([{ is: "before", lines: ["c"] }]);
  expect(is("g", withLine(noEntries, "c", { done: true }))).toEqual([]);
});

test("after a break the proofs are unticked and every try stays; what leaned on them is named", () => {
  let entries = withLine(noEntries, "a", { done: true, waited: 60 });
  entries = withLine(withTry(entries, "b", 1, { value: 0, unit: "V dc" }), "b", { done: true });
  entries = withLine(entries, "c", { done: true });
  expect(proofsTaken(plan, entries)).toEqual(["b"]);
  const again = withoutProofs(plan, entries);
  expect(again.lines["b"]).toEqual({ readings: { 1: [{ value: 0, unit: "V dc" }] } });
  expect(again.lines["a"]).toEqual({ done: true, waited: 60 });
  expect(leaningOn("b", plan, again)).toEqual(["c"]);
});

test("fasteners are counted off in their order, round by round", () => {
  const line = plan.lines.find(({ id }) => id === "h")!,
    at = (n: number) => tightening(line, n);
  expect([0, 1, 2, 3, 4].map((n) => at(n).next)).toEqual([1, 3, 2, 4, 1]);
  expect(at(5)).toEqual({ next: 3, pass: 2, inPass: 1, of: 4 });
  expect(at(8)).toEqual({ next: 0, pass: 2, inPass: 4, of: 4 });
  expect(at(99).next).toBe(0);
  expect(at(-3).inPass).toBe(0);
});

test("numbers as people type them", () => {
  expect(["3", "3.5", "3,5", " −2 ", ".5", "+4"].map(numberOf)).toEqual([3, 3.5, 3.5, -2, 0.5, 4]);
  expect(["", "3 mm", "1.2.3", "1,000.5", "x", "1e3", "0x10", "Infinity"].map(numberOf)).toEqual(
    Array.from({ length: 8 }, () => undefined),
  );
});

test("the time left is never rounded down", () => {
  expect([59.1, 60, 0, 0.2, 3600.5].map(leftText)).toEqual(["1:00", "1:00", "0:00", "0:01", "1:00:01"]);
});

test("a torque is held against the figures of its own unit", () => {
  const line = plan.lines.find(({ id }) => id === "h")!;
  expect(["9", "9,0", "9.1", "x", ""].map((text) => judgedTyped(line, "screws", text, "N·m"))).toEqual([
    "given",
    "given",
    "other",
    "no-number",
    "none",
  ]);
  expect(judgedTyped(line, "screws", "9", "lbf·ft")).toBe("other");
});

test("the record comes out as the published shape, with every try, and goes in again", () => {
  let entries = withLine(noEntries, "c", { done: true, counts: { screws: "4" } });
  entries = withTry(withTry(entries, "d", 1, { value: 2.9, unit: "mm" }), "d", 1, { value: 3.1, unit: "mm" });
  entries = withLine(entries, "h", {
    torques: { screws: { value: "9,0", unit: "N·m", wrench: "TW 2", initials: "" } },
  });
  entries = withLine(entries, "e", {
    signed: " N. N. ",
    notAsWritten: [{ what: "seized", done: "heated", agreedBy: "N." }],
  });
  entries = { ...entries, fields: { serial: "A 7" }, instruments: [{ name: "Tester", number: "12", due: "2027-01" }] };
  const record = recordOf(entries, plan),
    read = readRecord(JSON.stringify(record));
  if ("problem" in read) throw new Error(read.problem);
  expect(read.record).toEqual(record);
  expect(record.procedures[0]!.lines.find(({ line }) => line === "1.4")!.readings![0]!.tries).toHaveLength(2);
  const again = entriesOf(read.record, plan);
  expect(again.unknown).toEqual([]);
  expect(recordOf(again.entries, plan)).toEqual(record);
});

test("a try carries the day and the instrument of its taking; naming another instrument is no other try", () => {
  const day = { ...noEntries, on: "2027-03-31", instruments: [{ name: "Gauge", number: "G1", due: "2027-01" }] };
  let entries = withTry(withInstrument(day, "d", 1, "Gauge G1"), "d", 1, { value: 3, unit: "mm" });
  entries = withLine(entries, "d", { chosen: { 1: "0.2 mm" } });
  const readings = (): unknown => recordOf(entries, plan).procedures[0]!.lines[0]!.readings;
  expect(readings()).toEqual([
    { reading: 1, tries: [{ value: 3, unit: "mm", instrument: "Gauge G1", on: "2027-03-31" }], chosen: "0.2 mm" },
  ]);
  entries = withInstrument(entries, "d", 1, "");
  expect(readings()).toEqual([{ reading: 1, tries: [{ value: 3, unit: "mm", on: "2027-03-31" }], chosen: "0.2 mm" }]);
  const again = entriesOf(recordOf(entries, plan), plan).entries;
  expect(recordOf(again, plan)).toEqual(recordOf(entries, plan));
});

test("a date of an older record that is none becomes a note: nothing is lost, and nothing is judged by it", () => {
  const old = { ...recordOf(noEntries, plan), version: 1 as const, instruments: [{ name: "Tester", due: "May" }] },
    again = recordOf(entriesOf(old, plan).entries, plan);
  expect([again.version, again.instruments]).toEqual([2, [{ name: "Tester", note: "May" }]]);
  expect("record" in readRecord(JSON.stringify(again))).toBe(true);
});

test("an entry can be about each thing that its step works on, and about what its line works on first", () => {
  const document = manualDocument(compiledExample("mooring-winch/strip.strip"), options),
    { lines, steps } = document.plan;
  for (const { step, things = [], id } of lines)
    for (const thing of things)
      expect(
        steps[step]!.map((each) => each.id),
        id,
      ).toContain(thing);
  const undo = lines.find(({ counts }) => counts)!;
  expect(undo.things!.length).toBeGreaterThan(0);
  expect(steps[undo.step]!.length).toBeGreaterThan(undo.things!.length);
});

test("lines of a record that are not here are named, not dropped in silence", () => {
  const record = {
    ...recordOf(noEntries, plan),
    procedures: [{ ...plan.procedures[0]!, lines: [{ line: "9.9", done: true }] }],
  };
  expect(entriesOf(record, plan).unknown).toEqual(["9.9"]);
});

test("the same figure typed twice is one try, another one is kept beside it", () => {
  const one = withTry(noEntries, "d", 1, { value: 3, unit: "mm" });
  expect(withTry(one, "d", 1, { value: 3, unit: "mm" })).toBe(one);
  expect(withTry(one, "d", 1, { value: 3.1, unit: "mm" }).lines["d"]!.readings![1]).toHaveLength(2);
});

test("the page's sentences are the catalogue's, with places for what is put in", () => {
  const words = tabletWords(defaultWording);
  expect(filled(words.progress, 3, 9)).toBe(defaultWording.tablet.progress("3", "9"));
  expect(JSON.stringify(words)).toContain("{0}");
  expect(filled("{0} and {1}", "{1}", "b")).toBe("{1} and b");
});

test("flagship: the plan names every action line once, in order, and what each asks for", () => {
  const document = manualDocument(
      compiledExample("mooring-winch/strip.strip", "mooring-winch/insulation.strip"),
      options,
    ),
    actions = document.chapters.flatMap(({ strip, refit, finish }) =>
      [...strip, ...refit, ...finish].flatMap(({ lines }) => lines.filter((line) => line.is === "action")),
    );
  expect(document.plan.lines.map(({ line }) => line)).toEqual(actions.map(({ id }) => id));
  expect(new Set(document.plan.lines.map(({ id }) => id)).size).toBe(actions.length);
  const known = new Set(document.plan.lines.map(({ id }) => id));
  for (const line of document.plan.lines)
    for (const id of [...(line.needs ?? []), ...(line.before ?? []), ...(line.hold ? [line.hold] : [])])
      expect(known.has(id), `${line.id}: ${id}`).toBe(true);
  expect(document.plan.lines.filter(({ wait }) => wait !== undefined).map(({ wait }) => wait)).toContain(600);
  expect(document.plan.lines.filter(({ order }) => order !== undefined).length).toBeGreaterThan(3);
});

test("how a line stands is asked of no line but those that it names: only these are shown anew after a change", () => {
  const { plan: whole } = manualDocument(compiledExample("mooring-winch/strip.strip"), options);
  for (let seed = 0; seed < 6; seed++) {
    const ticked = whole.lines.filter((_, i) => (i * 7919 + seed * 104729) % 5 < 2),
      entries = ticked.reduce((all, { id }) => withLine(all, id, { done: true }), noEntries);
    for (const line of whole.lines) {
      const asked = new Set(asksAbout(line)),
        others = {
          ...entries,
          lines: Object.fromEntries(Object.entries(entries.lines).filter(([id]) => asked.has(id))),
        };
      expect(missingFor(line.id, whole, others), line.id).toEqual(missingFor(line.id, whole, entries));
    }
  }
});
