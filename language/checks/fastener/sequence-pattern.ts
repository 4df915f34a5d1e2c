// An order of tightening that the way the fasteners stand does not have.

import { kindIn, sequences } from "../../tables/index.ts";
import { listed } from "../bench-check.ts";
import { check } from "../check.ts";

export default check({
  code: "fastener/sequence-pattern",
  title: "An order of tightening that these fasteners do not have",
  severity: "warning",
  why: "On a circle there are no rows and nothing stands in the middle: whoever takes the order at its word pulls one side of the joint down first, and the flange tilts on its gasket. An order in numbers that leaves one out leaves it loose.",
  source: "common practice; crosswise on a circle: ASME PCC-1 (legacy pattern), from memory",
  fails: `
    unit pump "Pump" {
      base casing
      part casing "Casing"
      part cover "Cover"
      fastener cover-bolts bolt "Cover bolts" {
        count 8  size M12x40  torque 60 N·m  pattern circle 210 mm
        sequence rows
    #   ^^^^^^^^^^^^^ Cover bolts stand on a circle, and rows goes row by row, from one end: sequence star goes crosswise
        joins cover to casing
      }
    }
  `,
  mended: `
    unit pump "Pump" {
      base casing
      part casing "Casing"
      part cover "Cover"
      fastener cover-bolts bolt "Cover bolts" {
        count 8  size M12x40  torque 60 N·m  pattern circle 210 mm
        sequence star
        joins cover to casing
      }
    }
  `,
  model(model, say) {
    for (const tie of model.ties) {
      const { name, pattern, sequence } = tie;
      if (sequence && sequence.listed.length > 0 && !tie.countUnknown) {
        const wrong = notInOrder(sequence.listed, tie.count);
        if (wrong !== undefined) say({ at: sequence.at, says: `${name}, ${tie.count} of them: ${wrong}` });
        continue;
      }
      if (pattern?.is !== "circle" || !sequence) continue;
      const order = kindIn(sequences, sequence.kind);
      if (order?.asksPattern !== true) continue;
      say({
        at: sequence.at,
        says: `${name} stand on a circle, and ${sequence.kind} goes ${order.about.charAt(0).toLowerCase()}${order.about.slice(1, -1)}: sequence star goes crosswise`,
        fixes: [
          {
            title: "Write sequence star",
            certain: false,
            edits: [{ file: sequence.at.file, start: sequence.at.start, end: sequence.at.end, text: "sequence star" }],
          },
        ],
      });
    }
  },
});

/** What is wrong with an order in numbers: each piece has its turn in each round, and there are no others. Undefined where nothing is. */
function notInOrder(listed: readonly number[], count: number): string | undefined {
  const other = listed.find((one) => !Number.isInteger(one) || one < 1 || one > count);
  if (other !== undefined) return `the order lists ${other}, and they are 1 to ${count}`;
  const turns = Array.from({ length: count }, (_, i) => listed.filter((one) => one === i + 1).length),
    missing = turns.flatMap((times, i) => (times === 0 ? [i + 1] : [])),
    most = Math.max(...turns);
  if (missing.length > 0)
    return `the order lists ${count - missing.length}, and ${few(missing)} ${missing.length > 1 ? "have" : "has"} no turn in it`;
  const fewer = turns.findIndex((times) => times < most);
  return fewer < 0 ? undefined : `the order lists ${turns.indexOf(most) + 1} more often than ${fewer + 1}`;
}

const few = (numbers: readonly number[]): string =>
  numbers.length > 4
    ? `${numbers.slice(0, 3).join(", ")} and ${numbers.length - 3} others`
    : listed(numbers.map(String));
