// A merged finding is as grave as the gravest that it joins, and a danger is never out of sight: lines of every example and of every
// published procedure are left out one by one, one in eight of them, by a die with a seed; with STRIPDOWN_EVERY_LINE=1 each of them
// (some 3,000, a minute).

import { beforeAll, expect, test } from "vitest";
import { dieOf } from "../bench/refit/stage.ts";
import { scanSeverity, type Scan } from "./severity.ts";

let scan: Scan | undefined;
beforeAll(() => {
  const die = dieOf(1);
  scan = scanSeverity(process.env.STRIPDOWN_EVERY_LINE ? () => true : () => die() < 1 / 8);
}, 600_000);

test("hundreds of lines are left out", () => {
  expect(scan!.edits).toBeGreaterThan(300);
});

test("nothing ends milder than what the bench alone found", () => {
  expect(scan!.milder).toEqual([]);
});

test("no hazard that the bench speaks of is out of sight", () => {
  expect(scan!.unseen).toEqual([]);
});
