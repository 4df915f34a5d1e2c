// The unit is turned with something on it that nothing fixes.

import { benchCheck, stillIn } from "../bench-check.ts";

export default benchCheck({
  code: "sequence/loose-when-turned",
  title: "Something is not fixed while the unit is turned",
  severity: "warning",
  why: 'What only rests, or is held by nothing any more, slides off when the unit goes over; what hangs by one piece swings round it; what is open runs out. A cable, hose or loom may hang by one end; with nothing left to hold it, it is taken off, or tied back (`slide loom "Tie it back."`).',
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      positions upright, on-side
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure strip "Strip" for box {
      aim none
      step "Turn" {
        turn to on-side
    #   ^^^^^^^^^^^^^^^ Lid only rests on Foot, and the unit is turned to on-side
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      positions upright, on-side
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure strip "Strip" for box {
      aim none
      step "Turn" {
        remove lid
        turn to on-side
      }
    }
  `,
  subject: () => "",
  reason: (reason, context) => {
    const [how, to] = reason.words,
      thing = context.name(reason.thing!);
    if (how === "runs out")
      return `${thing} would run out of ${context.name(reason.by[0]!)} when the unit is turned to ${to}`;
    const turned = `and the unit is turned to ${to}`;
    if (how === "untied") return `${thing} is held by nothing any more, ${turned}`;
    if (how === "last") return `${thing} hangs by ${stillIn(reason, context)} alone, ${turned}`;
    return `${thing} only rests on ${context.name(reason.by[0]!)}, ${turned}`;
  },
});
