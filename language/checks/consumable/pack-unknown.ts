// A consumable that is used and whose pack is not given.

import { check } from "../check.ts";
import { usedInProject } from "../survey-of-names.ts";

export default check({
  code: "consumable/pack-unknown",
  title: "What one pack holds is not given",
  severity: "hint",
  why: "The bill can say how much is used, but not how many packs to order.",
  source: "common practice",
  fails: `
    consumable grease "Bearing grease"
    #          ^^^^^^ Bearing grease is used, and nothing says what one pack holds
    unit spindle "Spindle" {
      base shaft
      part shaft "Shaft"
    }
    procedure care "Grease it" for spindle {
      aim none
      step "Grease" { apply grease to shaft }
    }
  `,
  mended: `
    consumable grease "Bearing grease" { pack 400 g }
    unit spindle "Spindle" {
      base shaft
      part shaft "Shaft"
    }
    procedure care "Grease it" for spindle {
      aim none
      step "Grease" { apply grease to shaft }
    }
  `,
  file(file, say, { project }) {
    const bare = file.declarations.filter(
      ({ word, item }) =>
        word === "consumable" && !(item.block?.items.some((one) => one.entry?.word === "pack") ?? false),
    );
    if (bare.length === 0) return;
    const used = usedInProject(project);
    for (const { id, name, at } of bare)
      if (used.has(id)) say({ at, says: `${name} is used, and nothing says what one pack holds` });
  },
});
