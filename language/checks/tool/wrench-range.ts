// A torque that no torque wrench of the shop can set.

import { wrenchFigure, wrenchFinding } from "../../figures/torque-wrench.ts";
import { comparePair, si } from "../../quantities/index.ts";
import { check } from "../check.ts";
import { sumLines } from "../sums.ts";
import { judgedTorques } from "../torque-judged.ts";

const overYield = "fastener/torque-over-yield";

export default check({
  code: "tool/wrench-range",
  title: "No torque wrench for this torque",
  severity: "warning",
  why: "A wrench outside its range is a guess with a click. Below a fifth of its range it is not calibrated.",
  source: "ISO 6789-1 (range from 20 % of the maximum)",
  fails: `
    tool wrench "Torque wrench" { kind torque-wrench  range 5..25 N·m }
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  torque 60 N·m  joins lid to foot }
    #                                                   ^^^^^^^^^^^^^ Lid screws: no torque wrench of the shop sets 60 N·m
    }
  `,
  mended: `
    tool wrench "Torque wrench" { kind torque-wrench  range 20..100 N·m }
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  torque 60 N·m  joins lid to foot }
    }
  `,
  model(model, say, context) {
    const wrenches = [...model.library.tools.values()].filter((tool) => tool.range?.dimension === "torque");
    if (wrenches.length === 0) return;
    // What the thread does not carry is wrong itself: no wrench is looked for.
    const over = new Set(
      context.settings.severity[overYield] === "off"
        ? []
        : judgedTorques(model, context).flatMap(({ torque, judged }) => (judged.verdict === "over" ? [torque] : [])),
    );
    for (const tie of model.ties)
      for (const torque of tie.torques) {
        // Where its two printed values disagree nobody knows which torque is meant: that is said there.
        if (!torque.value || over.has(torque) || comparePair(torque.value)?.level === "warning") continue;
        const { low, high } = si(torque.value);
        // A range is met where a wrench can set some torque of it.
        const met = wrenches.some((wrench) => {
          const range = si(wrench.range!);
          return high >= range.low && low <= range.high && !(low === high && wrenchFinding(low, range));
        });
        if (met) continue;
        const ranges = wrenches.map((wrench) => si(wrench.range!));
        say({
          at: torque.at,
          // One more wrench would set all that lie in the same gap.
          answer: {
            key: `${Math.max(0, ...ranges.map((range) => range.high).filter((most) => most <= low))} ${Math.min(...ranges.map((range) => range.low).filter((least) => least >= high))}`,
          },
          says: `${tie.name}: no torque wrench of the shop sets ${torque.value.written}`,
          because: [
            ...wrenches.map((wrench) => ({ says: `${wrench.name}: ${wrench.range!.written}`, at: wrench.at })),
            ...sumLines({
              name: "range of a torque wrench",
              formula: "lowest of its scale <= torque <= highest; 20 % of the highest where no lowest is given",
              source: wrenchFigure.source,
            }),
          ],
        });
      }
  },
});
