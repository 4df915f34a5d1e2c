// Every block taken out: a declaration is one mistake, and so are most steps; never an exception. The table of what each class gave is held
// to the run.

import { readFileSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import { classes, editBlocks, tableOf } from "./blocks.ts";

let edited: ReturnType<typeof editBlocks> = [];
beforeAll(() => {
  edited = editBlocks();
}, 600_000);

test("there are some hundreds of blocks, of each class", () => {
  expect(edited.length).toBeGreaterThan(600);
  for (const name of classes) expect(edited.filter((one) => one.class === name).length, name).toBeGreaterThan(15);
});

test("a block that is lost gives one finding, save steps and procedures that several lines rest on", () => {
  const several = edited.filter(({ findings }) => findings.length > 1);
  expect(several.filter((one) => one.class !== "step" && one.class !== "procedure")).toEqual([]);
  expect(several.length).toBeLessThan(edited.length / 25);
  // Each is found somewhere else, or it would be the same again; two lost names may stand in one line.
  for (const { findings } of several)
    expect(new Set(findings.map((one) => / names\/unknown: (\S+)/.exec(one)?.[1] ?? one.split(" ")[0])).size).toBe(
      findings.length,
    );
});

test("blocks.md is the table of this run", () => {
  expect(readFileSync(new URL("blocks.md", import.meta.url), "utf8")).toBe(tableOf(edited));
});
