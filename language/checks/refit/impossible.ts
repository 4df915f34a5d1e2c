// An act of a written or corrected refit that the bench does not allow.

import { howOf } from "../../bench/how.ts";
import { benchCheck, listed, stillIn } from "../bench-check.ts";
import { unitKey } from "../unit-key.ts";

export default benchCheck({
  code: "refit/impossible",
  title: "The refit cannot be done like this",
  severity: "error",
  why: "Putting together has its own order: what is already in the way, closed or missing stops the hand.",
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
      }
    }
    procedure build "Put together" for box {
      aim all in
      needs strip
      step "Close" {
        fit lid
        fit card
    #   ^^^^^^^^ Card cannot go on: Card belongs behind Lid, which is on already
        fit lid-screws
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
      }
    }
    procedure build "Put together" for box {
      aim all in
      needs strip
      step "Close" {
        fit card
        fit lid
        fit lid-screws
      }
    }
  `,
  // One line says what took it apart, in whichever builds it shows.
  answer: ({ reasons: [first], around }, { model }) =>
    first!.words[1] === "nothing apart" ? { key: `needs ${around?.procedure.id} of ${unitKey(model)}` } : undefined,
  reason: (reason, context) => {
    const name = reason.thing === undefined ? "it" : context.name(reason.thing),
      by = stillIn(reason, context),
      whole =
        reason.words[1] === "nothing apart"
          ? ", since nothing was taken off before: a line needs says which procedure does that"
          : "",
      behind = `belongs behind ${by}, which is on already`;
    switch (howOf("refit/impossible", reason)) {
      case "behind":
        return `${name} ${behind}`;
      case "comes along":
        return `${name}, which comes along, ${behind}`;
      case "covered":
        return `${by} ${(reason.left[0] ?? 0) > 1 ? "are" : "is"} in front of ${name}`;
      case "filler off":
        return `${name} is not on the unit yet: ${listed(reason.by.map((thing) => context.name(thing)))} ${reason.by.length > 1 ? "are" : "is"} still off`;
      case "closed":
        return `its joint is closed already by ${by}`;
      case "already on":
        return `${name} is on already${whole}`;
      case "aside":
        return `${name} never came off and is only aside: moved back, not fitted`;
      case "already in":
        return `${name} is in already${whole}`;
      case "not in":
        return `${name} is not in`;
      case "not on":
        return `${listed(reason.by.map((thing) => context.name(thing)))} ${reason.by.length > 1 ? "are" : "is"} not on yet`;
      case "open":
        return `${by} is still open`;
      case "evacuate":
        return "the circuit is evacuated before it is filled";
      case "stage":
        return `stage ${reason.numbers[0]} comes before stage ${reason.numbers[1]}`;
      case "no such stage":
        return `it has ${reason.numbers[1]} stages, not ${reason.numbers[0]}`;
      case "starts on bench":
        return `${reason.words[1]} starts on the bench, and it is on the unit`;
    }
  },
});
