// The JSON of refit, bill and export against the published schemas, by a validator of others; needs that name acts there are.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import Ajv2020 from "ajv/dist/2020.js";
import { expect, test } from "vitest";
import { bill } from "../../language/outputs/bill/bill.ts";
import { modelExport } from "../../language/outputs/export/export.ts";
import type { ExportData } from "../../language/outputs/export/data.ts";
import { write } from "../../language/outputs/output.ts";
import { refit } from "../../language/outputs/refit/refit.ts";
import type { RefitData } from "../../language/outputs/refit/data.ts";
import { compiledExample, options, type Compiled } from "./outputs-of.ts";

const validator = (name: string) =>
  new Ajv2020.default({ allErrors: true, strict: false }).compile(
    JSON.parse(readFileSync(join(import.meta.dirname, `../../language/schemas/${name}.schema.json`), "utf8")) as object,
  );
const inputs: readonly (readonly [string, Compiled])[] = [
  ["dairy-pump/pump.strip"],
  ["mooring-winch/strip.strip", "mooring-winch/insulation.strip"],
  ["valve-actuator/actuator.strip"],
].map((paths) => [paths.join(" and "), compiledExample(...paths)]);

test.each(inputs)("%s: refit, bill and model fit their schemas", (_, input) => {
  for (const [name, text] of [
    ["refit", write(refit, "json", input, options)],
    ["bill", write(bill, "json", input, { ...options, units: 3 })],
    ["model", write(modelExport, "json", input, options)],
  ] as const) {
    const validate = validator(name);
    validate(JSON.parse(text));
    expect(validate.errors ?? [], name).toEqual([]);
  }
});

test("the schemas refuse what is amiss", () => {
  const data = JSON.parse(write(refit, "json", inputs[0]![1], options)) as {
    procedures: { strip: { verb?: string }[] }[];
  };
  const validate = validator("refit");
  delete data.procedures[0]!.strip[0]!.verb;
  expect(validate(data)).toBe(false);
  expect(validate({ ...data, more: 1 })).toBe(false);
});

test.each(inputs)("%s: every need names an act that stands before", (_, input) => {
  const data = JSON.parse(write(refit, "json", input, options)) as RefitData;
  let needs = 0;
  for (const procedure of data.procedures) {
    for (const acts of [procedure.strip, procedure.refit]) {
      const ids = acts.map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
      acts.forEach((act, i) => {
        for (const need of act.needs) {
          needs++;
          expect(ids.indexOf(need.id), `${act.id} needs ${need.id}`).toBeGreaterThanOrEqual(0);
          expect(ids.indexOf(need.id)).toBeLessThan(i);
        }
      });
    }
  }
  expect(needs).toBeGreaterThan(10);
});

test("the model says what the pump's procedure takes off, renews and leaves unanswered", () => {
  const data = JSON.parse(write(modelExport, "json", inputs[0]![1], options)) as ExportData,
    [unit] = data.units,
    [procedure] = data.procedures;
  expect(procedure!.fastenersRemoved.map(({ id, count }) => `${count} ${id}`)).toEqual([
    "1 drain-plug",
    "4 guard-screws",
    "8 casing-nuts",
    "1 impeller-nut",
  ]);
  expect(procedure!.toRenew.map(({ id, grade }) => `${grade} ${id}`)).toEqual([
    "certain ring",
    "certain face-seal",
    "certain drain-washer",
  ]);
  expect(unit!.fasteners.find(({ id }) => id === "casing-nuts")!.torque!.values[0]!.value).toEqual({
    written: "30 N·m",
    metric: "30 N·m",
    us: "22 lbf·ft",
    unit: "N·m",
    low: 30,
    high: 30,
    newtonMetres: { low: 30, high: 30 },
  });
  expect(unit!.notConsidered).toContain("electrical");
  expect(unit!.notConsidered).not.toContain("pressure");
  const text = readFileSync(join(import.meta.dirname, "../../examples/dairy-pump/pump.strip"), "utf8"),
    nuts = unit!.fasteners.find(({ id }) => id === "casing-nuts")!;
  expect(text.slice(nuts.at.start, nuts.at.end)).toBe("casing-nuts");
  expect(text.split("\n")[nuts.at.line - 1]!.slice(nuts.at.column - 1, nuts.at.endColumn - 1)).toBe("casing-nuts");
});
