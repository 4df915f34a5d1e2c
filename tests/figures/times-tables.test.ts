// Every row of disassembly-times.csv (sources T30 to T36 in tests/reference/sources-times.md) against the tables of the figures. Rows marked memory are
// carried as memory, and that mark is checked too.

import { expect, test } from "vitest";
import { TIME_TABLES } from "../../language/figures/action-times.ts";
import {
  MOTIONS,
  MOTION_INCHES,
  MOVE,
  MOVE_WEIGHTS,
  REACH,
  TMU_SECONDS,
  TURN,
  TURN_DEGREES,
  motionTime,
  moveWithWeight,
  type MotionColumn,
} from "../../language/figures/motion-times.ts";
import { referenceRows, lookUp, tally, type Row } from "./reference-rows.ts";

const code = (action: string): string => /\(([^)]+)\)/.exec(action)![1]!;
const column = (table: readonly MotionColumn[], row: Row): MotionColumn =>
  table.find((one) => one.code === code(row["action"]!))!;

function motion(row: Row): number | undefined {
  const condition = row["condition"]!;
  const inches = condition.startsWith("3/4") ? 0.75 : Number.parseFloat(condition);
  if (row["group"] === "reach") return motionTime(column(REACH, row), inches);
  if (row["group"] === "move") return motionTime(column(MOVE, row), inches);
  if (row["group"] === "turn") return column(TURN, row).tmu[TURN_DEGREES.indexOf(Number.parseFloat(condition))];
  const found = MOTIONS.find((one) => one.action === row["action"] && one.condition === condition);
  expect(found?.standing).toBe(row["status"]);
  return found?.tmu;
}

function weight(row: Row): void {
  const pounds = Number(/[\d.]+/.exec(row["condition"]!)![0]);
  const [, factor, constant] = /x ([\d.]+) \+ ([\d.]+)/.exec(row["value"]!)!;
  expect(moveWithWeight(10, pounds)).toEqual({ tmu: 10 * Number(factor) + Number(constant), standing: row["status"] });
}

function action(row: Row): void {
  const table = TIME_TABLES.find(
    (one) => one.method === row["method"] && one.rows.some((each) => each.action === row["action"]),
  );
  const found = table?.rows.find((one) => one.action === row["action"] && one.condition === row["condition"]);
  expect(found?.seconds).toBe(Number(row["seconds"]));
  expect(found?.standing).toBe(/^(memory|computed)/.exec(row["status"]!)?.[1] ?? "read");
  // The seconds of the file follow from its own value and unit.
  const factor: Readonly<Record<string, number>> = { s: 1, min: 60, "man-hours": 3600 };
  expect(found?.seconds).toBeCloseTo(Number(row["value"]) * factor[row["unit"]!]!, 6);
}

const file = "disassembly-times.csv";
const rows = referenceRows(file);
const count = tally(file, rows.length, lookUp.alone);
for (const row of rows) {
  const { method, group, condition, value, unit, seconds } = row as Record<
    "method" | "group" | "condition" | "value" | "unit" | "seconds",
    string
  >;
  const title = [method, row["action"], condition].filter((part) => part !== "").join(", ");
  if (method === "MTM-UAS" || method === "Basic MOST") count.leave(title, "memory: a card that could not be read");
  else if (group === "formula") count.leave(title, "memory: a formula that could not be read");
  else {
    count.row(title, () => {
      if (group === "unit") return expect(TMU_SECONDS).toBe(Number(seconds));
      if (row["action"] === "weight allowance") return weight(row);
      if (method !== "MTM-1") return action(row);
      const tmu = motion(row);
      expect(tmu).toBe(Number(value));
      // Four figures are printed.
      expect(unit).toBe("TMU");
      expect(Number((tmu! * TMU_SECONDS).toPrecision(4))).toBeCloseTo(Number(seconds), 2);
    });
  }
}

test("tables hold no row more", () => {
  const cells = [...REACH, ...MOVE, ...TURN].reduce((sum, one) => sum + one.tmu.length, 0);
  expect(cells).toBe((REACH.length + MOVE.length) * MOTION_INCHES.length + TURN.length * TURN_DEGREES.length);
  const carried =
    cells + MOTIONS.length + MOVE_WEIGHTS.length + 1 + TIME_TABLES.reduce((sum, table) => sum + table.rows.length, 0);
  expect(carried).toBe(
    rows.filter((row) => row["method"] !== "MTM-UAS" && row["method"] !== "Basic MOST" && row["group"] !== "formula")
      .length,
  );
});
