// A reading that nothing is held against.

import { check } from "../check.ts";
import { figuresIn } from "../figures-said.ts";
import { itemsWith } from "../items-of.ts";

export default check({
  code: "measure/no-limits",
  title: "A reading without limits",
  severity: "hint",
  why: "Who takes the reading cannot tell whether it will do. Write the maker's limits, or `as found` where it is only recorded.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
    }
    procedure look "Look" for box {
      aim none
      step "Look" {
        measure flatness on foot "Face of the foot"
    #   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ No limits stand with this reading: write them, or as found where it is only recorded
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
    }
    procedure look "Look" for box {
      aim none
      step "Look" {
        measure flatness on foot "Face of the foot" at most 0.05 mm
      }
    }
  `,
  file(file, say) {
    const readings = itemsWith(file, "measure");
    if (readings.length === 0) return;
    const limited = new Set(figuresIn(file).map((figure) => figure.item)),
      { tokens } = file.tree.scan;
    for (const item of readings) {
      if (item.broken || limited.has(item)) continue;
      if (tokens.slice(item.first, item.last + 1).some((token) => token.text === "found")) continue;
      const what = tokens[item.first]!,
        last = tokens[item.last]!;
      // What could not be read may be its limits.
      if (file.tree.errors.some(({ start, end }) => start < last.endOffset! + 1 && end > what.startOffset)) continue;
      say({
        at: { file: file.path, start: what.startOffset, end: last.endOffset! + 1 },
        says: "No limits stand with this reading: write them, or as found where it is only recorded",
      });
    }
  },
});
