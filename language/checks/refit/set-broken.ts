// One of a pair or a set is renewed, and the others stay.

import { benchCheck, listed } from "../bench-check.ts";

export default benchCheck({
  code: "refit/set-broken",
  title: "Some of a pair or set stay old",
  severity: "error",
  why: "What is renewed by pairs or as a set is matched, or wears in together: an old one beside a new one takes the load alone, or pulls to one side.",
  source: "common practice",
  fails: `
    unit brake "Brake" {
      base plate
      part plate "Plate"
      part shoe "Shoe" { pieces leading, trailing  rests on plate  renew as-a-set }
    }
    procedure strip "Strip" for brake {
      aim shoe off
      step "Shoes" {
        remove shoe
        inspect lining on shoe.leading "No rivet touches the drum" else renew shoe.leading
    #   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ Shoe leading is renewed without Shoe trailing, and they are renewed as a set
      }
    }
  `,
  mended: `
    unit brake "Brake" {
      base plate
      part plate "Plate"
      part shoe "Shoe" { pieces leading, trailing  rests on plate  renew as-a-set }
    }
    procedure strip "Strip" for brake {
      aim shoe off
      step "Shoes" {
        remove shoe
        inspect lining on shoe.leading "No rivet touches the drum" else renew shoe
      }
    }
  `,
  subject: () => "",
  reason: ({ thing, by, words, numbers }, context) => {
    const how = words[0] === "by-pairs" ? "by pairs" : "as a set";
    return by.length > 0
      ? `${context.name(thing!)} is renewed without ${listed(by.map((other) => context.name(other)))}, and they are renewed ${how}`
      : `${numbers[0]} of ${numbers[1]} ${context.name(thing!)} ${numbers[0] === 1 ? "is" : "are"} renewed, and they are renewed ${how}`;
  },
});
