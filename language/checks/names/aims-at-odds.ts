// Several aims of one procedure, of which one leaves no room for another. All that are written are judged: `aim lid off` and below it
// `aim card off` are both meant.

import { writtenCondition } from "../../model/conditions.ts";
import { headSpan, wordOf, type Line } from "../../model/cursor.ts";
import { check, type Say } from "../check.ts";
import { canHold, linesUnder, variantsOf, type UnderConditions } from "../condition-chains.ts";
import { itemsWith } from "../items-of.ts";
import type { Project } from "../../names/project.ts";

export default check({
  code: "names/aims-at-odds",
  title: "Aims that cannot both be meant",
  severity: "error",
  why: "`aim none` asks for nothing to be off, `aim all in` for everything to be on: beside another aim nobody knows which holds.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure open "Open" for box {
      aim none
      aim lid off
    # ^^^^^^^^^^^ aim lid off and aim none cannot both be meant
      step "Lid" {
        undo lid-screws
        remove lid
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      part card "Card" { rests on foot  behind lid }
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure open "Open" for box {
      aim lid off
      aim card off
      step "Lid" {
        undo lid-screws
        remove lid
        remove card
      }
    }
  `,
  file(source, say, { project }) {
    if (source.tree.errors.length > 0 || itemsWith(source, "aim").length < 2) return;
    for (const item of itemsWith(source, "procedure"))
      if (!item.broken && item.block) atOdds({ item, source }, project, say);
  },
});

function atOdds(procedure: Line, project: Project, say: Say): void {
  const aims = linesUnder(procedure).filter(({ line }) => wordOf(line) === "aim");
  for (const [i, second] of aims.entries()) {
    const first = aims
      .slice(0, i)
      .find(
        (one) =>
          textOf(one.line) !== textOf(second.line) &&
          (isAlone(one) || isAlone(second)) &&
          canHold([...one.chain, ...second.chain], variantsOf(project)),
      );
    if (!first) continue;
    const when = [...new Set([...first.chain, ...second.chain].map(writtenCondition))].join(", ");
    say({
      at: headSpan(second.line),
      says: `${textOf(second.line)} and ${textOf(first.line)} cannot both be meant${when === "" ? "" : ` (${when})`}`,
      because: [{ says: `the first: ${textOf(first.line)}`, at: headSpan(first.line) }],
    });
  }
}

const isAlone = ({ line }: UnderConditions): boolean => /^aim (?:none|all in)$/.test(textOf(line));

function textOf(line: Line): string {
  const { start, end } = headSpan(line);
  return line.source.text.slice(start, end).replaceAll(/\s+/g, " ");
}
