// The reader and the published schema hold the same files for records: each change to a record is refused by both or by neither.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { expect, test } from "vitest";
import { readRecord } from "../../../language/outputs/record/read-record.ts";
import { full } from "./machine.ts";

const validate = new Ajv2020({ strict: false }).compile(
  JSON.parse(readFileSync(join(import.meta.dirname, "../../../language/schemas/record.schema.json"), "utf8")),
);
/** The first version, and the second with all that it adds. */
const first = (): Record<string, unknown> =>
  JSON.parse(JSON.stringify({ ...full(), begun: "today", instruments: [{ name: "Wrench", number: "4", due: "May" }] }));
const second = (): Record<string, unknown> => {
  const { procedures, ...record } = full();
  return JSON.parse(
    JSON.stringify({
      ...record,
      version: 2,
      instruments: [{ name: "Wrench", number: "4", due: "2027-05", note: "lent" }],
      procedures: procedures.map(({ lines, ...procedure }) => ({
        ...procedure,
        lines: [
          {
            line: "1.1",
            torques: [{ item: "f", value: 22, unit: "N·m", wrench: "4", on: "2027-03-31" }],
            readings: [
              { reading: 1, tries: [{ value: 13, unit: "mm", instrument: "4", on: "2028-02-29" }], chosen: "0.1" },
            ],
            notAsWritten: [{ what: "missing", item: "f", wanted: "Bolt", wantedCount: 2 }],
          },
          ...lines,
        ].filter(({ line }, i, all) => all.findIndex((each) => each.line === line) === i),
      })),
    }),
  );
};
const versions = [
  [1, first],
  [2, second],
] as const;
const wrong: readonly unknown[] = [
  undefined,
  null,
  7,
  0,
  -1.5,
  "x",
  "2027-13",
  "2027-04-31",
  "2027-04-30",
  true,
  [],
  {},
  [null],
  [{}],
];

/** Every place in a value. */
function* places(value: unknown, path: readonly (string | number)[] = []): Generator<readonly (string | number)[]> {
  if (path.length > 0) yield path;
  if (Array.isArray(value))
    for (const i of value.keys()) {
      if (i < 2) yield* places(value[i], [...path, i]);
    }
  else if (typeof value === "object" && value !== null)
    for (const [key, each] of Object.entries(value)) yield* places(each, [...path, key]);
}

test.each(versions)("version %i: a whole record is read as it is", (_, whole) => {
  expect(validate(whole())).toBe(true);
  expect(readRecord(JSON.stringify(whole()))).toEqual({ record: whole() });
});

test("what the second version adds is no part of the first", () => {
  const old = { ...second(), version: 1 };
  expect("problem" in readRecord(JSON.stringify(old))).toBe(true);
  expect(validate(old)).toBe(false);
});

test.each(versions)("version %i: reader and schema agree on every seeded fault", (_, whole) => {
  let refused = 0,
    taken = 0;
  for (const path of places(whole()))
    for (const value of wrong) {
      const changed = whole();
      let at = changed as Record<string | number, unknown>;
      for (const key of path.slice(0, -1)) at = at[key] as typeof at;
      if (value === undefined) delete at[path.at(-1)!];
      else at[path.at(-1)!] = value;
      const json = JSON.stringify(changed),
        read = readRecord(json);
      // What a schema cannot say: a line that stands twice, a try that says nothing.
      if ("problem" in read && /stands twice|an answer or a note/.test(read.problem)) continue;
      expect(
        "record" in read,
        `${path.join(".")} = ${JSON.stringify(value)}: ${"problem" in read ? read.problem : "taken"}`,
      ).toBe(validate(JSON.parse(json)));
      if ("record" in read) taken++;
      else refused++;
    }
  expect([refused > 100, taken > 20], `${refused} refused, ${taken} taken`).toEqual([true, true]);
});

test.each(["", "{", "null", "[]", "7", '"x"', '{"__proto__":{"format":"stripdown-record"}}'])(
  "%j is refused in words",
  (text) => {
    const read = readRecord(text);
    expect("problem" in read && read.problem).toMatch(/^[a-z].{6,}[^.]$/);
  },
);

test("a field of the second version in a record of the first is told as such, and so is a file that breaks off", () => {
  const [procedure] = full().procedures,
    entry = { what: "missing", item: "f", wantedCount: 2 },
    text = JSON.stringify({
      ...full(),
      procedures: [{ ...procedure, lines: [{ line: "1.1", notAsWritten: [entry] }] }],
    });
  const problem = (of: string): unknown => (readRecord(of) as { problem?: string }).problem;
  expect(problem(text)).toBe(
    'procedures[0].lines[0].notAsWritten[0]: it has a field "wantedCount" that a record does not have before version 2',
  );
  expect(problem(text.replace('"version":1', '"version":2'))).toBeUndefined();
  expect(problem(text.replace("wantedCount", "wantedAmount"))).toMatch(/"wantedAmount" that a record does not have$/);
  expect(problem(text.slice(0, -20))).toMatch(/^it is no JSON: it breaks off before its end/);
  expect(problem("no record")).toBe("it is no JSON");
});

test("why a file is none is told for whoever says it in another language", () => {
  const why = (text: string): unknown => {
    const read = readRecord(text);
    return "why" in read ? read.why : read;
  };
  expect(why("no record")).toEqual({ is: "no-json", place: "" });
  expect(why('{ "format": ')).toEqual({ is: "broken-off", place: "" });
  // No word of ours stands in the place: the page says it in its own language.
  expect(why("[]")).toEqual({ is: "format", place: "" });
  expect(why(JSON.stringify({ ...full(), serial: 3 }))).toEqual({ is: "entry", place: "serial" });
  expect(why('{ "format": "other" }')).toEqual({ is: "format", place: "" });
  expect(why('{ "format": "stripdown-record", "version": 9 }')).toEqual({ is: "version", place: "" });
  expect(
    why(JSON.stringify({ ...full(), procedures: [{ procedure: "p", unit: "u", build: "", lines: [3] }] })),
  ).toEqual({
    is: "entry",
    place: "procedures[0].lines[0]",
  });
});
