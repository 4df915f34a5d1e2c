// A strength class or grade that no standard has, or that belongs to threads of the other system.

import { fromSource } from "../../findings/finding.ts";
import { strengthFinding, strengthSource } from "../../figures/strength-names.ts";
import { fastenerKinds, kindIn } from "../../tables/index.ts";
import { listed } from "../bench-check.ts";
import { check } from "../check.ts";

export default check({
  code: "fastener/strength-unknown",
  title: "No such strength class or grade on this thread",
  severity: "warning",
  why: "Stores order by it, and the torque is held against it. Metric threads have a class (8.8), inch threads a grade (5); a bolt of grade 8 and a nut of class 8 are not the same strength. A name of the shop's own (brass, Ti-5) is taken.",
  source: strengthSource,
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  size M6x20  class 88  joins lid to foot }
    #                                                               ^^^^^^^^ Lid screws: 88 is no strength class of a metric thread; 8.8 is
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  size M6x20  class 8.8  joins lid to foot }
    }
  `,
  model(model, say) {
    for (const tie of model.ties) {
      const { size, strengthAt: at } = tie,
        system = size?.system;
      if (!at || (system !== "metric" && system !== "unified")) continue;
      const metric = system === "metric",
        sort = kindIn(fastenerKinds, tie.kind)?.classesOf ?? "other",
        own = metric ? tie.propertyClass : tie.grade,
        other = metric ? tie.grade : tie.propertyClass,
        found = own === undefined ? undefined : strengthFinding(own, system, sort);
      if (!found && (own !== undefined || other === undefined)) continue;
      const word = metric ? "class" : "grade",
        thread = metric ? "a metric thread" : "an inch thread",
        because = [{ says: `the thread is ${size!.designation}`, at: tie.at }, fromSource(strengthSource)];
      if (!found) {
        const isOwn = strengthFinding(other!, system, sort) === undefined;
        say({
          at,
          says: `${tie.name}: ${metric ? "a grade is for inch threads" : "a class is for metric threads"}, and ${size!.designation} is ${thread}: write its ${word}`,
          because,
          fixes:
            isOwn && /^[\d.]+$|^A\d-/.test(other!)
              ? [{ title: `Write ${word} ${other}`, edits: [{ ...at, text: `${word} ${other}` }], certain: false }]
              : [],
        });
        continue;
      }
      const [near] = found.near;
      say({
        at,
        says:
          found.says === "other system"
            ? `${tie.name}: ${own} is ${metric ? "a grade of inch threads" : "a class of metric threads"}, and ${size!.designation} is ${thread}`
            : `${tie.name}: ${own} is no strength ${word} of ${thread}${near === undefined ? "" : `; ${listed(found.near, "and")} ${found.near.length > 1 ? "are" : "is"}`}`,
        because,
        fixes:
          near !== undefined && found.near.length === 1
            ? [{ title: `Write ${word} ${near}`, edits: [{ ...at, text: `${word} ${near}` }], certain: false }]
            : [],
      });
    }
  },
});
