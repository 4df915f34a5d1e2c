// Order statements that contradict the bench or each other, found before performing, with the ring of links.

import { benchCheck } from "../bench-check.ts";
import { unitKey } from "../unit-key.ts";

export default benchCheck({
  code: "refit/contradiction",
  title: "Statements about order contradict each other",
  severity: "error",
  why: "Two places for one act cannot both be right; the reader would have to guess.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      part card "Card" { rests on foot  behind lid }
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure strip "Strip" for box {
      aim card off
      step "Open" {
        undo lid-screws
        remove lid
        remove card
        refit { fit card after lid }
    #           ^^^^^^^^^^^^^^^^^^ Fitting Lid cannot come before fitting Card
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
    procedure strip "Strip" for box {
      aim card off
      step "Open" {
        undo lid-screws
        remove lid
        remove card
        refit { fit card before lid }
      }
    }
  `,
  subject: () => "",
  reason: (reason, context) => {
    const [how, ...words] = reason.words;
    if (how === "dry") return `${context.name(reason.thing!)} goes on dry, and this puts something on it`;
    if (how === "declared") return `${words[0]} goes after ${words[1]} here, and before it in another statement`;
    if (how === "renewed late")
      return `${context.name(reason.by[0]!)} goes on the old ${context.name(reason.thing!)} before this: renew belongs to the step in which that goes back, before reverse`;
    if (how === "unit order")
      return `the unit says that ${context.name(reason.thing!)} goes on after ${context.name(reason.by[0]!)}`;
    return words.join(" ") || (how ?? "");
  },
  // Statements that go against one and the same link of the way back are wrong for one reason: whoever sees that takes them all out.
  answer: ({ reasons, around }, { model }) => {
    const [first, link] = reasons;
    return first!.words[0] === "order" && link && around
      ? { key: `${link.words.join(" ")} in ${around.procedure.id} of ${unitKey(model)}`, again: "said here too" }
      : undefined;
  },
});
