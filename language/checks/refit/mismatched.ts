// A part goes to one that belongs to another set.

import { benchCheck, listed } from "../bench-check.ts";

export default benchCheck({
  code: "refit/mismatched",
  title: "Fitted to a part of another set or place",
  severity: "error",
  why: "Matched parts are run in, lapped or measured together: with one of another set the clearance, the contact or the seal is lost. Pieces that are told apart by name go back where their name says.",
  source: "common practice",
  fails: `
    unit head "Head" {
      base block
      part block "Block"
      part seat "Seat" { pieces inlet, outlet  rests on block }
      part valve "Valve" { pieces inlet, outlet  fits seat  matched with seat }
    }
    procedure valves "Valves out" for head {
      aim valve off
      step "Valves" {
        remove valve
        refit {
          fit valve.inlet to seat.outlet
    #     ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ Valve inlet goes to Seat outlet, and is matched with Seat inlet
        }
      }
    }
  `,
  mended: `
    unit head "Head" {
      base block
      part block "Block"
      part seat "Seat" { pieces inlet, outlet  rests on block }
      part valve "Valve" { pieces inlet, outlet  fits seat  matched with seat }
    }
    procedure valves "Valves out" for head {
      aim valve off
      step "Valves" {
        remove valve
        refit {
          fit valve.inlet to seat.inlet
        }
      }
    }
  `,
  subject: () => "",
  reason: ({ thing, by, words }, context) =>
    `${context.name(thing!)} goes to ${context.name(by[0]!)}, and ${words[0] === "place" ? "belongs on" : "is matched with"} ${listed(by.slice(1).map((other) => context.name(other)))}`,
});
