// A condition that no build can meet, by itself or inside those around it: what stands in it is never done and never printed.

import { headSpan, linesIn, type Line } from "../../model/cursor.ts";
import { writtenCondition } from "../../model/conditions.ts";
import type { Condition } from "../../model/model.ts";
import { readCondition } from "../../model/read-entries.ts";
import { check, type Say } from "../check.ts";
import { canHold, isCondition, variantsOf } from "../condition-chains.ts";
import { holdsWord } from "../items-of.ts";

export default check({
  code: "names/never-holds",
  title: "A condition that never holds",
  severity: "warning",
  why: "What stands under it is in no manual and was never performed: a step that somebody means to be done is done by nobody.",
  source: "common practice",
  fails: `
    unit fan "Fan" {
      base foot
      variants early, late
      part foot "Foot"
      part cap "Cap" { rests on foot }
    }
    procedure open "Open" for fan {
      aim cap off
      step "Cap" {
        remove cap
        if early and late { inspect cap "Not cracked" }
    #   ^^^^^^^^^^^^^^^^^ if early and late never holds: no build is both
      }
    }
  `,
  mended: `
    unit fan "Fan" {
      base foot
      variants early, late
      part foot "Foot"
      part cap "Cap" { rests on foot }
    }
    procedure open "Open" for fan {
      aim cap off
      step "Cap" {
        remove cap
        if early or late { inspect cap "Not cracked" }
      }
    }
  `,
  file(source, say, { project }) {
    if (source.tree.errors.length > 0 || !(holdsWord(source, "if") || holdsWord(source, "unless"))) return;
    const variants = variantsOf(project);
    function inside(line: Line, chain: readonly Condition[], say: Say): void {
      for (const one of linesIn(line)) {
        if (!isCondition(one)) {
          inside(one, chain, say);
          continue;
        }
        const condition = readCondition(one),
          all = [...chain, condition];
        if (canHold(all, variants)) inside(one, all, say);
        else
          say({
            at: headSpan(one),
            says: canHold([condition], variants)
              ? `${writtenCondition(condition)} never holds here: it stands inside ${chain.map(writtenCondition).join(", ")}`
              : `${writtenCondition(condition)} never holds: no build is both`,
          });
      }
    }
    for (const item of source.tree.items) if (item.entry && !item.broken) inside({ item, source }, [], say);
  },
});
