// The command: what it prints, where, and its exit status.

import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { calc } from "../../language/cli/commands/calc.ts";
import { CannotRun, type Io } from "../../language/cli/command.ts";
import { figures } from "../../language/figures/registry.ts";

async function run(
  positionals: readonly string[],
  options: Readonly<Record<string, string | true>> = {},
  files: Readonly<Record<string, string>> = {},
  stdin = "",
  colour = false,
  cwd?: string,
) {
  const [out, err]: [string[], string[]] = [[], []];
  const io: Io = {
    out: (text) => void out.push(text),
    err: (text) => void err.push(text),
    readStdin: () => Promise.resolve(stdin),
    readFile: (path) =>
      files[path] === undefined ? Promise.reject(new CannotRun(`${path} is not there`)) : Promise.resolve(files[path]),
    colour,
    ...(cwd === undefined ? {} : { cwd }),
  };
  const status = await calc.run({ positionals, options: new Map(Object.entries(options)) }, io);
  return { status, out: out.join(""), err: err.join("") };
}

test("a wait is printed with inputs, formula, steps, source and caution", async () => {
  const { status, out, err } = await run(["wait", "560", "V", "1200", "uF", "22", "kohm"]);
  expect({ status, err }).toEqual({ status: 0, err: "" });
  expect(out).toMatchInlineSnapshot(`
    "Wait after isolation
    Given      voltage      560 V
               capacitance  1200 uF
               bleeder      22 kohm
    Result     wait                          117 s
               to 60 V dc                    74.30 s
               to 60 V dc at nominal values  58.97 s
               to 0.2 J                      116.9 s
               to 0.2 J at nominal values    90.38 s
               energy at the start, C +20 %  225.8 J
    Formula    t = max(maker's wait, R C ln(V0 / 60 V), R C ln(V0 / sqrt(2 x 0.2 J / C)))
    Steps      1. V0 = 560 V, taken as direct; an alternating voltage charges to its crest, 1.414 times
                  as much: write V ac
               2. C = 1200 µF x 1.2 = 1440 µF, R = 22 kΩ x 1.05 = 23.1 kΩ, R C = 33.26 s
               3. To 60 V dc: 33.26 s x ln(560 / 60) = 74.3 s (58.97 s at nominal values)
               4. 0.2 J is left at sqrt(2 x 0.2 J / 1440 µF) = 16.67 V
               5. To 0.2 J: 33.26 s x ln(560 / 16.67) = 116.9 s (90.38 s at nominal values)
               6. The longest is the wait to 0.2 J: 116.9 s
    Assumed    capacitance +20 %, resistance +5 %
               voltage taken as direct
    Holds for  one capacitor bank on a known bleeder, every source isolated; no wait stands for a proof,
               and a battery has none
    Source     60 V dc: IEC 60204-1 cl. 6.2.4 and ISO 6469-4:2015; 0.2 J: ISO 6469-4:2015 (both read
               through extracts); v = V0 exp(-t/RC); margins C +20 %, R +5 %: common practice
    Caution    An aid only: the maker's data, local codes and licensed or authorised persons come first.
               High-voltage work is for qualified people. A computed time or limit proves nothing: prove
               at the terminals, with a tester tried before and after on a known source.
    "
  `);
});

test("lines are no longer than a hundred characters", async () => {
  for (const figure of figures) {
    for (const words of [[], ...figure.examples.map((example) => example.split(" "))]) {
      const { out } = await run([figure.name, ...words]);
      // A line to try stays whole, so that it can be copied.
      for (const line of out.split("\n").filter((one) => !one.includes("stripdown calc")))
        expect(line.length, `${figure.name}: ${line}`).toBeLessThanOrEqual(100);
    }
  }
});

test("headings are bold only where colour may be used", async () => {
  expect((await run(["fall", "1 kg", "1 m"])).out).not.toContain("\u001b");
  expect((await run(["fall", "1 kg", "1 m"], {}, {}, "", true)).out).toContain("\u001b[1mResult\u001b[0m");
});

test("a question without an answer goes to standard error with the nearest, status 1", async () => {
  const { status, out, err } = await run(["eyebolt", "M18"]);
  expect({ status, out, err }).toEqual({
    status: 1,
    out: "",
    err: "eyebolt: M18 is not in the table; the nearest are M16 and M20\n  nearest: M16, M20\n",
  });
});

test("a name alone says what the figure takes", async () => {
  const { status, out } = await run(["wait"]);
  expect(status).toBe(0);
  expect(out).toContain("stripdown calc wait 560 V 1200 uF 22 kohm");
  expect(out).toContain("capacitance in µF, mF");
});

test("the list holds every figure, by topic; as JSON sorted", async () => {
  const { status, out } = await run([], { list: true });
  expect(status).toBe(0);
  const names = figures.map((figure) => figure.name).sort();
  const listed = out
    .split("\n")
    .filter((line) => line.startsWith("  "))
    .map((line) => line.trim().split(" ")[0]);
  expect(listed.sort()).toEqual(names);
  expect(out.split("\n")[0]).toBe("Threads and bolts");
  const json = JSON.parse((await run([], { list: true, json: true })).out) as { name: string }[];
  expect(json.map((one) => one.name)).toEqual(names);
});

test("JSON: one answer, a sheet from a file, a sheet from standard input", async () => {
  const sheet = '[{"name": "fall", "inputs": {"mass": "9.5 kg", "height": "1.2 m"}}]';
  const one = JSON.parse((await run(["fall", "9.5 kg", "1.2 m"], { json: true })).out) as object;
  const fromFile = await run(["cases.json"], { json: true }, { "cases.json": sheet });
  expect(fromFile.status).toBe(0);
  expect(JSON.parse(fromFile.out)).toEqual({ answers: [one] });
  expect((await run([], { json: true }, {}, sheet)).out).toBe(fromFile.out);
  expect((await run(["-"], { json: true }, {}, sheet)).out).toBe(fromFile.out);
});

test("JSON: an unanswered question of a sheet gives status 1, the others are answered", async () => {
  const { status, out } = await run(
    [],
    { json: true },
    {},
    '[{"name": "fall"}, {"name": "team", "inputs": {"people": 2}}]',
  );
  expect(status).toBe(1);
  expect((JSON.parse(out) as { answers: object[] }).answers.map((one) => Object.keys(one).includes("values"))).toEqual([
    false,
    true,
  ]);
});

test("what cannot be run says so: no name, a file that is not there, no sheet, a bad assumption", async () => {
  await expect(run([])).rejects.toThrow(CannotRun);
  await expect(run(["missing.json"], { json: true })).rejects.toThrow("missing.json is not there");
  await expect(run([], { json: true }, {}, "no sheet")).rejects.toThrow("no JSON");
  await expect(run(["fall", "1 kg", "1 m"], { assume: "friction-thread" })).rejects.toThrow("NAME=VALUE");
});

test("results in US or metric units, sums and inputs as they are", async () => {
  const us = await run(["fall", "9.5 kg", "1.2 m"], { system: "us", json: true });
  expect(JSON.parse((await run(["lift", "60 lb"], { system: "us", json: true })).out)).toMatchObject({
    inputs: { mass: "60 lb" },
    values: [{ value: expect.closeTo(23 / 0.45359237, 6), unit: "lb" }, {}, {}, {}],
  });
  expect(JSON.parse((await run(["eyebolt-us", "12 mm"], { system: "metric", json: true })).out)).toMatchObject({
    values: [
      {
        value: expect.closeTo(2266 * 0.45359237, 6),
        unit: "kg",
      },
    ],
  });
  expect(us.status).toBe(0);
  await expect(run(["fall", "1 kg", "1 m"], { system: "imperial" })).rejects.toThrow("metric or us");
});

test("an assumption out of its limits is no answer", async () => {
  const { status, err } = await run(["fall", "1 kg", "1 m"], { assume: "friction-thread=9" });
  expect(status).toBe(1);
  expect(err).toContain("friction-thread");
});

test("the assumptions of stripdown.json hold, those of the question go first", async () => {
  const folder = mkdtempSync(join(tmpdir(), "calc-"));
  try {
    mkdirSync(join(folder, "machine"));
    writeFileSync(join(folder, "stripdown.json"), JSON.stringify({ assumptions: { "friction-thread": 0.2 } }));
    const asked = ["torque", "M8", "8.8"],
      at = (options: Record<string, string | true>) => run(asked, options, {}, "", false, join(folder, "machine"));
    const bySettings = await at({}),
      byOption = await run(asked, { assume: "friction-thread=0.2" }),
      own = await at({ assume: "friction-thread=0.1" });
    expect(bySettings.out).toContain("friction-thread 0.2");
    expect(bySettings.out).toBe(byOption.out);
    expect(own.out).toContain("friction-thread 0.1");
    const sheet = JSON.stringify([{ id: "1", name: "torque", inputs: { size: "M8", class: "8.8" } }]);
    expect((await run(["-"], { json: true }, {}, sheet, false, folder)).out).toContain("friction-thread 0.2");
    writeFileSync(join(folder, "stripdown.json"), "{");
    await expect(at({})).rejects.toThrow(/stripdown\.json/);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
