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
const whole = (): Record<string, unknown> =>
  JSON.parse(JSON.stringify({ ...full(), begun: "today", instruments: [{ name: "Wrench", number: "4", due: "May" }] }));
const wrong: readonly unknown[] = [undefined, null, 7, -1.5, "x", true, [], {}, [null], [{}]];

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

test("a whole record is read as it is", () => {
  expect(validate(whole())).toBe(true);
  expect(readRecord(JSON.stringify(whole()))).toEqual({ record: whole() });
});

test("reader and schema agree on every seeded fault", () => {
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
