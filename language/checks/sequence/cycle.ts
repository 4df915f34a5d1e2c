// A ring of things each behind the next: none of them can ever be reached. Found in the declarations, before any procedure.

import { check } from "../check.ts";
import { behindOf, ringsIn } from "../rings.ts";

export default check({
  code: "sequence/cycle",
  title: "A ring of things behind each other",
  severity: "error",
  why: "Nothing in the ring can be reached before the rest of it is away, so no procedure can ever begin on it: one of the statements is the wrong way round.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part bowl "Bowl" { rests on foot  behind bracket }
    #      ^^^^ Bowl is behind Bracket, Bracket is behind Bowl: none of them can be reached
      part bracket "Bracket" { rests on foot  behind bowl }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part bowl "Bowl" { rests on foot  behind bracket }
      part bracket "Bracket" { rests on foot }
    }
  `,
  model(model, say, context) {
    for (const ring of ringsIn(model)) {
      const links = ring.map((thing, i) => ({ thing, next: ring[(i + 1) % ring.length]! })),
        name = context.name;
      const says = ({ thing, next }: (typeof links)[number]): string =>
        behindOf(model, thing).includes(next)
          ? `${name(thing)} is behind ${name(next)}`
          : `${name(thing)} is held by ${name(next)}`;
      const alone = ring.length === 1 ? name(ring[0]!) : undefined;
      say({
        at: model.things[ring[0]!]!.at,
        says:
          alone === undefined
            ? `${links.map(says).join(", ")}: none of them can be reached`
            : `${alone} is behind itself: it can never be reached`,
        because: links.map((link) => ({ says: says(link), at: model.things[link.thing]!.at })),
      });
    }
  },
});
