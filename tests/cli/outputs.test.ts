// The commands that write outputs: their JSON by its published schema for every example, the procedures and builds asked for, and
// the same bytes whatever the order of the files.

import { globSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { expect, test } from "vitest";
import { folderWith, stripdown } from "../support/command-line.ts";
import { box, good, held } from "./machines.ts";

const project = process.cwd();
const examples = [
  ...globSync("examples/*").filter((path) => !path.endsWith("/mistakes") && !path.endsWith("/workshop")),
  ...globSync("tests/procedures/*.strip"),
  ...globSync("tests/sequencing/*.strip"),
].sort();
const schemas = { refit: "refit", bill: "bill", export: "model" } as const;

for (const [command, schema] of Object.entries(schemas)) {
  const validate = new Ajv2020({ strict: false }).compile(
    JSON.parse(readFileSync(`${project}/language/schemas/${schema}.schema.json`, "utf8")),
  );
  test.each(examples)(`${command} --json of %s is as its schema says`, async (path) => {
    const { status, out, err } = await stripdown(project, [command, path, "--json"]);
    expect([err.replace(/^\d+ findings? .*\n$/, ""), status === 2]).toEqual(["", false]);
    expect(validate(JSON.parse(out)), JSON.stringify(validate.errors?.slice(0, 3))).toBe(true);
  });
}

test("the published schemas refuse what is none of theirs", async () => {
  const { out } = await stripdown(project, ["refit", "examples/dairy-pump", "--json"]),
    data = JSON.parse(out);
  const validate = new Ajv2020({ strict: false }).compile(
    JSON.parse(readFileSync(`${project}/language/schemas/refit.schema.json`, "utf8")),
  );
  data.procedures[0].strip[0].needs = "none";
  expect(validate(data)).toBe(false);
});

test("the acts of a refit need only acts that come before, and every refit act has its text place", async () => {
  for (const path of examples) {
    const { procedures } = JSON.parse((await stripdown(project, ["refit", path, "--json"])).out) as {
      procedures: { strip: Act[]; refit: Act[]; refitIs: string }[];
    };
    for (const { strip, refit } of procedures)
      for (const acts of [strip, refit]) {
        const place = new Map(acts.map(({ id }, i) => [id, i]));
        for (const [i, { needs }] of acts.entries())
          for (const { id } of needs) expect(place.get(id), `${path} ${id}`).toBeLessThan(i);
      }
  }
});
interface Act {
  readonly id: string;
  readonly needs: readonly { readonly id: string }[];
}

test("a procedure that another of them does is not written twice; --procedure asks for one", async () => {
  const folder = folderWith({ "a.strip": `${good}procedure whole "Whole" for box {\n  aim lid off\n  do strip\n}\n` });
  const ids = async (...argv: string[]): Promise<string[]> =>
    (
      JSON.parse((await stripdown(folder, ["refit", "--json", ...argv])).out) as { procedures: { id: string }[] }
    ).procedures.map(({ id }) => id);
  expect(await ids()).toEqual(["whole"]);
  expect(await ids("--procedure", "strip")).toEqual(["strip"]);
  expect(await ids("--procedure", "strip, whole")).toEqual(["strip", "whole"]);
  expect((await stripdown(folder, ["refit", "--procedure", "hole"])).err).toBe(
    "stripdown: no procedure is called hole: did you mean whole?\n",
  );
});

test("--build asks for one build of the unit", async () => {
  const folder = folderWith({
    "a.strip": good.replace(
      "  part lid",
      '  option heater "Heater"\n  if heater { part coil "Coil" { rests on foot } }\n  part lid',
    ),
  });
  const builds = async (...argv: string[]): Promise<string[]> =>
    (JSON.parse((await stripdown(folder, ["export", ...argv])).out) as { units: { build: string }[] }).units.map(
      ({ build }) => build,
    );
  expect(await builds()).toEqual(["plain"]);
  expect(await builds("--build", "heater")).toEqual(["heater"]);
  expect((await stripdown(folder, ["export", "--build", "cooler"])).err).toMatch(
    /^stripdown: there is no build cooler: it is one of plain; heater\n$/,
  );
  // Of a unit that has one build alone it is not passed over either; beside one that has it, that unit is printed as well.
  writeFileSync(
    join(folder, "b.strip"),
    good.replaceAll("box", "case").replaceAll("procedure strip", "procedure bare"),
  );
  expect(await stripdown(folder, ["export", "b.strip", "--build", "heater"])).toEqual({
    status: 2,
    out: "",
    err: "stripdown: there is no build heater: these units have one build each, and are printed without --build\n",
  });
  expect(await builds("--build", "heater")).toEqual(["heater", ""]);
});

test("the bill counts units, and refuses what is no number of them", async () => {
  const folder = folderWith({
    "a.strip": box("undo lid-screws\n    remove lid, ring").replace(
      "  fastener",
      '  part ring o-ring "Ring" { between lid and foot  renew always }\n  fastener',
    ),
  });
  const pieces = async (...argv: string[]): Promise<number> =>
    (
      JSON.parse((await stripdown(folder, ["bill", "--json", ...argv])).out) as {
        lines: { total: { pieces: number } }[];
      }
    ).lines[0]!.total.pieces;
  expect(await pieces()).toBe(1);
  expect(await pieces("--units", "12")).toBe(12);
  for (const units of ["0", "-1", "1.5", "many"])
    expect((await stripdown(folder, ["bill", "--units", units])).status).toBe(2);
});

test("findings do not stop an output: it is a draft, says so, and the status is 1", async () => {
  const { status, out, err } = await stripdown(folderWith({ "a.strip": held }), ["refit", "a.strip"]);
  expect([status, err]).toEqual([1, "1 finding is open, so this is a draft: stripdown check tells them\n"]);
  expect(out).toContain("DRAFT");
});

test.each([
  ["refit", "text"],
  ["refit", "csv"],
  ["refit", "json"],
  ["bill", "text"],
  ["bill", "csv"],
  ["bill", "json"],
  ["export", "json"],
  ["manual", "html"],
])("%s as %s is the same for any order of the files, in any time zone", async (command, format) => {
  const folder = "examples/mooring-winch",
    files = globSync(`${folder}/*.strip`).sort(),
    as = format === "html" || command === "export" ? [] : ["--as", format];
  const whole = await stripdown(project, [command, folder, ...as]);
  expect(whole.status).toBe(0);
  expect(whole.out.length).toBeGreaterThan(200);
  const zone = process.env["TZ"];
  try {
    process.env["TZ"] = "Pacific/Kiritimati";
    expect((await stripdown(project, [command, ...files.toReversed(), ...as])).out).toBe(whole.out);
  } finally {
    if (zone === undefined) delete process.env["TZ"];
    else process.env["TZ"] = zone;
  }
});

test("a drawing that is not there is refused with how many there are", async () => {
  const folder = folderWith({ "a.strip": good });
  expect(await stripdown(folder, ["draw", "strip", "a.strip", "--sheet", "9"])).toMatchObject({
    status: 2,
    err: "stripdown: --sheet 9: there is 1 drawing\n",
    out: "",
  });
  expect((await stripdown(folder, ["draw", "strip", "a.strip", "--sheet", "1"])).out).toContain("<svg");
});
