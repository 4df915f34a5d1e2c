// Texts that no author means to write: a clear error, never a stack trace, never a hang.

import { expect, test } from "vitest";
import { folderWith, stripdown } from "../support/command-line.ts";
import { good } from "./machines.ts";

test.each<[string, string]>([
  ["a hundred thousand blocks inside each other", "unit a {".repeat(100_000)],
  [
    "blocks that are never closed, one a line",
    Array.from({ length: 3000 }, (_, i) => `${" ".repeat(i % 100)}step {`).join("\n"),
  ],
  ["closing braces alone", "}".repeat(100_000)],
  ["conditions inside each other", `unit u {\n${"if a ".repeat(20_000)}\n}`],
  ["one very long line", "part ".repeat(100_000)],
  ["one very long list", `${good}\nundo a${", a".repeat(100_000)}`],
  ["quotes alone", '"'.repeat(100_000)],
  ["words that are none", "x y z\n".repeat(5000)],
  [
    "a name that nothing has, thousands of times",
    `unit u "U" { base b  part b "B" }\nprocedure p "P" for u { aim none step {\n${"remove q\n".repeat(4000)}} }`,
  ],
  ["parts outside of a unit", 'part a "A" { }\n'.repeat(40_000)],
  ["half of a character", `${good}# \\ud800`.replace("\\ud800", "\ud800")],
])("%s", async (_, text) => {
  const { status, out, err } = await stripdown(folderWith({}), ["check", "-"], text);
  expect(err).toBe("");
  expect(status).toBe(1);
  expect(out).toContain("standard-input.strip:");
  expect(out).not.toMatch(/\n\s+at .*:\d+:\d+|RangeError|TypeError/);
  // Of a line without end only what stands around the place is shown.
  expect(out.split("\n").filter((line) => line.length >= 400)).toEqual([]);
});

test("thousands of parts that nothing holds are told in time", async () => {
  const parts = Array.from({ length: 16_000 }, (_, i) => `part a${i} "A" { }\n`).join("");
  const { status, out } = await stripdown(folderWith({}), ["check", "-"], `unit u "U" {\n${parts}}`);
  expect([status, out.match(/removal\/joins-nothing|names\/part-unattached/g)?.length]).toEqual([0, 16_000]);
});
