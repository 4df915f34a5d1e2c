// The torque sheet and the labels against the text that they are made from.

import { expect, test } from "vitest";
import type { LabelData } from "../../../language/outputs/labels/data.ts";
import { labels } from "../../../language/outputs/labels/labels.ts";
import { write } from "../../../language/outputs/output.ts";
import { torqueSheet } from "../../../language/outputs/torque-sheet/torque-sheet.ts";
import { compiledExample, compiledText, options } from "../outputs-of.ts";

// NIST SP 811, B.8: 1 lbf·ft is 1.355 818 N·m, 1 lbf·in is 0.112 984 8 N·m.
const newtonMetres: Readonly<Record<string, number>> = { "lbf·ft": 1.355818, "lbf·in": 0.1129848, "N·m": 1 };
const inNewtonMetres = (text: string): number => {
  const [, value, unit] = /^([\d.]+) (\S+)$/.exec(text) ?? [];
  return Number(value) * (newtonMetres[unit ?? ""] ?? Number.NaN);
};

/** Half of the last printed place, in N·m. */
const halfPlace = (text: string): number => {
  const [, , decimals = "", unit = ""] = /^(\d+)(?:\.(\d+))? (\S+)$/.exec(text) ?? [];
  return inNewtonMetres(`${(0.5 * 10 ** -decimals.length).toFixed(decimals.length + 1)} ${unit}`) * (1 + 1e-9);
};

test("both systems say the same torque, within the last printed place", () => {
  let count = 0;
  for (const paths of [["dairy-pump/pump.strip"], ["mooring-winch/strip.strip"], ["valve-actuator/actuator.strip"]]) {
    for (const { rows } of torqueSheet.data(compiledExample(...paths), options).procedures)
      for (const row of rows)
        row.metric.forEach((metric, i) => {
          if (!/^[\d.]+ N·m$/.test(metric)) return;
          count++;
          const us = row.us[i]!;
          expect(
            Math.abs(inNewtonMetres(us) - inNewtonMetres(metric)),
            `${row.name}: ${metric} and ${us}`,
          ).toBeLessThanOrEqual(halfPlace(us) + halfPlace(metric));
        });
  }
  expect(count).toBeGreaterThan(30);
});

test("a pass is its share of the torque", () => {
  const input =
    compiledText(`unit u "Unit" { base a  part a "A"  part b "B"  fastener f bolt "F" { count 8  torque 120 N·m  passes 30 %, 60 %, 100 %  joins b to a } }
procedure p "P" for u { aim b off  step "S" { undo f  remove b } }`);
  // 36, 72, 120: the worked example of a target of 120 N·m in 30, 60 and 100 %.
  expect(torqueSheet.data(input, options).procedures[0]!.rows[0]!.passes).toEqual([
    "1: 30 % = 36 N·m (27 lbf·ft)",
    "2: 60 % = 72 N·m (53 lbf·ft)",
    "3: 100 % = 120 N·m (88.5 lbf·ft)",
  ]);
});

test("a torque that nobody gives is not filled in", () => {
  const input =
    compiledText(`unit u "Unit" { base a  part a "A"  part b "B"  fastener f bolt "F" { count 2  size M8  class 8.8  joins b to a } }
procedure p "P" for u { aim b off  step "S" { undo f  remove b } }`);
  expect(torqueSheet.data(input, options).procedures[0]!.rows.map(({ metric, us }) => [metric, us])).toEqual([
    [["not given"], ["not given"]],
  ]);
});

const tray = (size: string) =>
  compiledText(`unit u "Unit" { base a  part a "A"  part b "B"  part w washer "Washers"  fastener f bolt "F" { count 8  size M8x20  with w  joins b to a } }
procedure p "P" for u { aim b off  step "Open" { undo 6 of f into tray ${size}  undo rest of f into tray ${size}  remove b } }`);

test("a tray has one label with all that goes in, part by part", () => {
  const [place] = labels.data(tray("A"), options).places;
  expect([place!.kind, place!.label]).toEqual(["tray", "A"]);
  expect(
    place!.items.filter(({ id }) => id === "f").map(({ count, of, size, step }) => [count, of, size, step?.title]),
  ).toEqual([
    [6, 8, "M8x20", "Open"],
    [2, 8, "M8x20", "Open"],
  ]);
});

test("nothing is cut away: what does not fit a label goes on with the next", () => {
  const input = compiledExample("mooring-winch/strip.strip"),
    small = { columns: 3, rows: 14, width: 70, height: 20, pageWidth: 210, pageHeight: 297, gapX: 0, gapY: 0 };
  const { places } = labels.data(input, options) as LabelData,
    // What unit its things are from stands on every label, on however many there are.
    from = new Set(
      places.map(({ unit, procedure }) => options.wording.labels.from(unit, procedure).replace(/\s+/g, "")),
    );
  const words = (html: string): string =>
    [...from].reduce(
      (text, each) => text.replaceAll(each, ""),
      html
        .replace(/[^]*<main>/, "")
        .replace(/<p class="head">[^]*?<\/p>/g, "")
        .replace(/<[^>]*>/g, "")
        .replace(/\s+/g, ""),
    );
  const large = write(labels, "html", input, {
    ...options,
    labelGrid: { ...small, columns: 1, rows: 1, width: 200, height: 290 },
  });
  expect(words(write(labels, "html", input, { ...options, labelGrid: small }))).toBe(words(large));
  expect(write(labels, "html", input, { ...options, labelGrid: small })).toMatch(/>2 \/ \d/);
});
