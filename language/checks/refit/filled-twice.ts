// A fluid that is filled on the way back, and once more after that: twice the volume, or a topping-up that does not say so.

import { DRAINED } from "../../bench/state.ts";
import { at } from "../../bench/vector.ts";
import { check } from "../check.ts";

export default check({
  code: "refit/filled-twice",
  title: "Filled once more",
  severity: "hint",
  why: "What was drained is filled by the way back, and this fills it again. Where it is only topped up, say in words to which mark.",
  source: "common practice",
  fails: `
    consumable gear-oil "Gear oil" { pack 5 L }
    unit box "Gearbox" {
      base case
      part case "Case"
      fastener drain-plug plug "Drain plug" { into case }
      fluid oil oil "Oil" { volume 2 L  drains at drain-plug  fills at drain-plug  uses gear-oil }
    }
    procedure change "Change the oil" for box {
      aim none
      step "Out" { drain oil }
      finish {
        fill oil
    #   ^^^^^^^^ Oil is filled already: this fills it once more
        test "No leak"
      }
    }
  `,
  mended: `
    consumable gear-oil "Gear oil" { pack 5 L }
    unit box "Gearbox" {
      base case
      part case "Case"
      fastener drain-plug plug "Drain plug" { into case }
      fluid oil oil "Oil" { volume 2 L  drains at drain-plug  fills at drain-plug  uses gear-oil }
    }
    procedure change "Change the oil" for box {
      aim none
      step "Out" { drain oil }
      finish {
        test "No leak"
      }
    }
  `,
  performance({ model, events, finish, written }, say) {
    for (const { act, things, before } of [...written, ...finish]) {
      // What is topped up says so in words.
      if (act.verb !== "fill" || act.text !== "") continue;
      for (const thing of things)
        if (
          (at(before.flags, thing) & DRAINED) === 0 &&
          events.some((event) => event.kind === "drained" && event.thing === thing && !event.assumed)
        )
          say({ at: act.at, says: `${model.things[thing]!.name} is filled already: this fills it once more` });
    }
  },
});
