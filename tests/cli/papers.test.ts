// The commands draw, labels, sheet and record, as a user types them.

import { expect, test } from "vitest";
import { folderWith, stripdown } from "../support/command-line.ts";
import { good, held } from "./machines.ts";

test("draw and sheet ask which one is meant, and help with a slip", async () => {
  const folder = folderWith({ "a.strip": good });
  expect((await stripdown(folder, ["draw"])).err).toBe("stripdown: draw what? It is one of strip, pattern, path\n");
  expect((await stripdown(folder, ["draw", "strp", "a.strip"])).err).toBe(
    "stripdown: draw strp: did you mean strip?\n",
  );
  expect((await stripdown(folder, ["sheet", "a.strip"])).status).toBe(2);
});

test.each([
  ["draw", "strip", "<svg "],
  ["draw", "pattern", "<svg "],
  ["draw", "path", "<svg "],
  ["sheet", "torque", "<!DOCTYPE html>"],
  ["sheet", "layout", "<!DOCTYPE html>"],
])("%s %s writes", async (command, which, begins) => {
  const { status, out, err } = await stripdown(folderWith({ "a.strip": good }), [command, which, "a.strip"]);
  expect([err, status]).toEqual(["", 0]);
  expect(out.startsWith(begins)).toBe(true);
  expect(out).toContain("DRAFT");
});

test("an open finding makes a drawing a draft that says so, with status 1", async () => {
  const { status, out } = await stripdown(folderWith({ "a.strip": held }), ["draw", "strip", "a.strip"]);
  expect(status).toBe(1);
  expect(out).toContain("1 finding open");
});

test("labels take the sheet by its dimensions, and refuse what does not fit the page", async () => {
  const folder = folderWith({ "a.strip": good.replace("undo lid-screws", "undo lid-screws into tray A") }),
    of = async (...argv: string[]) => stripdown(folder, ["labels", "a.strip", ...argv]);
  expect((await of("--grid", "3x8", "--label", "70x36")).out).toContain("repeat(3,70mm)");
  expect((await of("--page", "Letter", "--grid", "3x10", "--label", "2.625x1in", "--gap", "0.125x0in")).out).toContain(
    "repeat(3,66.675mm)",
  );
  expect((await of("--grid", "3x8", "--label", "71x36")).err).toBe(
    "stripdown: 3 labels of 71 mm need 213 mm across, and A4 is 210 mm wide\n",
  );
  expect((await of("--grid", "3x9", "--label", "70x36")).err).toContain("9 labels of 36 mm need 324 mm down");
  for (const wrong of [
    ["--grid", "0x8"],
    ["--grid", "3"],
    ["--label", "70"],
    ["--label", "70x"],
    ["--page", "B5"],
    ["--grid", "20x8"],
  ])
    expect((await of(...wrong)).status, wrong.join(" ")).toBe(2);
});

test("sheet refit-book: fed by a record, refused without one, for a record of other files, and by every other sheet", async () => {
  const first = folderWith({ "a.strip": good }),
    hash = (JSON.parse((await stripdown(first, ["refit", "--json"])).out) as { provenance: { hash: string } })
      .provenance.hash;
  const record = (content: string): string =>
    JSON.stringify({
      format: "stripdown-record",
      version: 1,
      content,
      procedures: [{ procedure: "strip", unit: "box", build: "", lines: [{ line: "1.1", done: true }] }],
    });
  const folder = folderWith({ "a.strip": good, "mine.json": record(hash), "other.json": record("0".repeat(64)) }),
    sheet = (...argv: string[]) => stripdown(folder, ["sheet", ...argv, "a.strip"]);
  const made = await sheet("refit-book", "--record", "mine.json");
  expect([made.status, made.err]).toEqual([0, ""]);
  expect(made.out).toContain("Not ticked: Remove the lid.");
  const refused = await sheet("refit-book", "--record", "other.json");
  expect(refused.status).toBe(2);
  expect(refused.err).toMatch(/^stripdown: other\.json was made from another revision of these files: [^\n]+\n$/);
  expect((await sheet("refit-book")).err).toContain("--record RECORD.json names the file");
  expect((await sheet("torque", "--record", "mine.json")).err).toBe(
    "stripdown: sheet torque takes no --record: it is for refit-book\n",
  );
});

test("record: the command finds the procedure, tells what is open, and ends with 1; a file that is none ends with 2", async () => {
  const text = good.replace(
    "remove lid",
    'remove lid\n    measure play on lid "Play" at most 2 mm else "Fit a new lid."',
  );
  const first = folderWith({ "a.strip": text }),
    hash = (JSON.parse((await stripdown(first, ["refit", "--json"])).out) as { provenance: { hash: string } })
      .provenance.hash;
  const record = (value: number) =>
    JSON.stringify({
      format: "stripdown-record",
      version: 1,
      content: hash,
      serial: "1",
      procedures: [
        {
          procedure: "strip",
          unit: "box",
          build: "",
          lines: [{ line: "1.3", done: true, readings: [{ reading: 1, tries: [{ value, unit: "mm" }] }] }],
        },
      ],
    });
  const folder = folderWith({
    "a.strip": text,
    "one.json": record(2.5),
    "two.json": record(1),
    "none.json": "{}",
    "elsewhere.json": record(2).replace('"strip"', '"overhaul"'),
  });
  const checked = await stripdown(folder, ["record", "one.json", "a.strip"]);
  expect(checked.status).toBe(1);
  expect(checked.out).toMatch(
    /1\.3 +Play: 2\.5 mm is outside its limits \(limits: at most 2 mm\)\n +- .*Fit a new lid\./,
  );
  expect(checked.out).toMatch(/1\.1 +Not ticked: /);
  const { readings } = JSON.parse(
    (await stripdown(folder, ["record", "one.json", "two.json", "a.strip", "--summary", "--json"])).out,
  ) as { readings: { spread: { count: number; median: number } }[] };
  expect([readings[0]!.spread.count, readings[0]!.spread.median]).toEqual([2, 1.75]);
  expect((await stripdown(folder, ["record", "elsewhere.json", "a.strip"])).err).toBe(
    "stripdown: elsewhere.json is about overhaul, and in these files no procedure is called overhaul: there is strip\n",
  );
  expect((await stripdown(folder, ["record", "none.json", "a.strip"])).err).toBe(
    'stripdown: none.json is no record: its format is not "stripdown-record"\n',
  );
  expect((await stripdown(folder, ["record", "a.strip"])).status).toBe(2);
  expect((await stripdown(folder, ["record", "one.json", "a.strip", "--as", "svg"])).err).toContain(
    "it is one of text, csv, json",
  );
});
