// Matched parts that are several alike on either side: which one belongs to which nobody can tell.

import { matchedSets } from "../../bench/matched.ts";
import { check } from "../check.ts";
import { listed } from "../bench-check.ts";

export default check({
  code: "refit/matched-alike",
  title: "Several sets that are not told apart",
  severity: "hint",
  why: "In the tray they are all alike: unless the pieces have names or numbers, a valve comes back into the seat of another one.",
  source: "common practice",
  fails: `
    unit head "Head" {
      base block
      part block "Block"
      part seat "Seats" { count 4  rests on block }
      part valve "Valves" { count 4  fits seat  matched with seat }
    #      ^^^^^ Seats and Valves are matched, 4 alike of each: tell them apart with pieces 1..4, so that each goes back to its own
    }
  `,
  mended: `
    unit head "Head" {
      base block
      part block "Block"
      part seat "Seat" { pieces 1..4  rests on block }
      part valve "Valve" { pieces 1..4  fits seat  matched with seat }
    }
  `,
  model(model, say) {
    for (const set of new Set(matchedSets(model).values())) {
      const alike = set.filter(({ count }) => count > 1 && count === set[0]!.count);
      if (alike.length < 2 || alike.length < set.length) continue;
      const [first] = alike;
      say({
        at: alike.find(({ matched }) => matched.length > 0)!.at,
        says: `${listed(alike.map(({ name }) => name))} are matched, ${first!.count} alike of each: tell them apart with pieces 1..${first!.count}, so that each goes back to its own`,
      });
    }
  },
});
