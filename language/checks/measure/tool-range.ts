// A limit that the tool of the reading cannot read: of another dimension, or outside its range.

import { dimensionNames, si, type Dimension, type Quantity } from "../../quantities/index.ts";
import type { Span } from "../../findings/finding.ts";
import type { Name } from "../../model/act.ts";
import type { Entry } from "../../model/model.ts";
import { check, type Draft } from "../check.ts";

interface Reading {
  readonly tool: Name | undefined;
  readonly limits: { readonly value?: Quantity; readonly atLeast?: Quantity; readonly atMost?: Quantity } | undefined;
  readonly at: Span;
}

export default check({
  code: "measure/tool-range",
  title: "The tool cannot read this limit",
  severity: "warning",
  why: "The unit of the limit is a slip, or another instrument is meant: the hand at the bench holds one that cannot show what is asked.",
  source: "common practice",
  fails: `
    tool feeler "Feeler gauges" { range 0.05..1 mm }
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure look "Look" for box {
      aim none
      step "Measure" {
        measure gap on lid "Gap at the rim" at most 3 mm with feeler
    #   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ The range of Feeler gauges is 0.05..1 mm, and the limit is 3 mm
      }
    }
  `,
  mended: `
    tool feeler "Feeler gauges" { range 0.05..1 mm }
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure look "Look" for box {
      aim none
      step "Measure" {
        measure gap on lid "Gap at the rim" at most 0.3 mm with feeler
      }
    }
  `,
  *model(model) {
    const readings: Reading[] = model.hazards.flatMap((hazard) => hazard.precautions);
    const walk = (entries: readonly Entry[]): void => {
      for (const entry of entries)
        if (entry.is === "block") walk(entry.body);
        else readings.push(entry.act);
    };
    for (const { body, refit, finish } of model.procedures.values())
      for (const entries of [body, refit, finish]) walk(entries);
    for (const { tool, limits, at } of readings) {
      const of = tool && model.library.tools.get(tool.text),
        { range } = of ?? {};
      if (!of || !range || !limits) continue;
      for (const limit of [limits.value, limits.atLeast, limits.atMost]) {
        if (!limit) continue;
        const isOther = limit.dimension !== range.dimension;
        if (isOther && !(plain.has(limit.dimension) && plain.has(range.dimension))) continue;
        if (!isOther && !isOutside(limit, range)) continue;
        const draft: Draft = {
          at,
          says: `The range of ${of.name} is ${range.written}, and the limit is ${limit.written}${isOther ? `, a figure of ${dimensionNames[limit.dimension].title}` : ""}`,
          because: [{ says: `the range is said here`, at: of.at }],
        };
        yield draft;
        break;
      }
    }
  },
});

/**
 * What an instrument shows of one kind alone. Electrical ones have several scales, and a spring balance on a lever reads a torque.
 */
const plain: ReadonlySet<Dimension> = new Set<Dimension>([
  "length",
  "pressure",
  "temperature",
  "angle",
  "time",
  "volume",
]);

/** No figure of the limit lies in the range; a hair beside its ends is in it. */
function isOutside(limit: Quantity, range: Quantity): boolean {
  const { low, high } = si(limit),
    { low: from, high: to } = si(range),
    hair = 1e-9 * Math.max(Math.abs(from), Math.abs(to));
  return high < from - hair || low > to + hair;
}
