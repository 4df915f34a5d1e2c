// A load lifted by hand that is over the published guideline for the people at it.

import { crewAt } from "../../bench/crew.ts";
import { isUnknown } from "../../bench/access.ts";
import { gearOf, massKg, massOf } from "../../bench/load.ts";
import { machineOf, partOf } from "../../bench/machine.ts";
import { A_AWAY, HELD } from "../../bench/state.ts";
import { at } from "../../bench/vector.ts";
import { liftLimit, ONE_PERSON_BEST } from "../../figures/lift-limit.ts";
import type { Event } from "../../bench/trace.ts";
import type { Model, ThingIndex } from "../../model/model.ts";
import { rounded, si } from "../../quantities/index.ts";
import { check } from "../check.ts";
import { sumLines } from "../sums.ts";

export default check({
  code: "lift/over-guideline",
  title: "Over the lifting guideline for these people",
  severity: "error",
  why: "Backs and feet pay for it. Say what carries it (`lift X with hoist`), hold it first (`support X with hoist`), or say how many lift, if the guideline allows that many.",
  source: "NIOSH revised lifting equation (23 kg at its best); team shares by HSE L23 as quoted",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part block "Block" { mass 40 kg  rests on foot }
      no heavy "Lifted by gear."
    }
    procedure strip "Strip" for box {
      aim block off
      step "Take the block off" { remove block }
    #                             ^^^^^^^^^^^^ Block weighs 40.0 kg, over the guideline of 23.0 kg for one person
    }
  `,
  mended: `
    tool hoist "Chain hoist" { kind hoist  capacity 250 kg }
    unit box "Box" {
      base foot
      part foot "Foot"
      part block "Block" { mass 40 kg  rests on foot }
      no heavy "Lifted by gear."
    }
    procedure strip "Strip" for box {
      aim block off
      step "Take the block off" { lift block with hoist }
    }
  `,
  performance({ model, events }, say, context) {
    for (const event of events) {
      if (event.kind !== "off" || event.assumed || isLight(model, event)) continue;
      if (gearOf(model, event.act, event.things).length > 0) continue;
      // What was refused before it and assumed out of the way is no load of this act.
      if (event.things.some((thing) => (at(event.before.flags, thing) & HELD) !== 0)) continue;
      // Nor is what sits on that.
      const there = { model, machine: machineOf(model), state: event.before },
        isLoad = (part: ThingIndex): boolean =>
          (at(event.before.assumed, part) & A_AWAY) === 0 && (event.things.includes(part) || !isUnknown(there, part));
      const { kg, unknown } = massOf(model, event.moved.filter(isLoad)),
        people = Math.max(event.act.people ?? 0, crewAt(event.around));
      // At or under what one may be asked to lift at best, only a far reach could make it too much.
      if (kg <= ONE_PERSON_BEST && !isFar(model, event)) continue;
      const reach = event.things.map((thing) => model.things[thing]!).find((t) => t.is === "part" && t.reach),
        situation = reach?.is === "part" && reach.reach ? { reach: si(reach.reach).high } : {};
      const limit = liftLimit(people, situation);
      if (kg <= limit.kilograms) continue;
      const what = event.moved.length > event.things.length ? ` with all that is on it` : "";
      say({
        at: event.act.at,
        says: `${context.name(event.things[0]!)}${what} weighs ${rounded(kg, 3)} kg${unknown > 0 ? " or more" : ""}, over the guideline of ${rounded(limit.kilograms, 3)} kg for ${people === 1 ? "one person" : `${people} people`}`,
        because: sumLines(
          { name: "recommended weight limit", formula: limit.formula, source: limit.source, steps: [limit.basis] },
          model.things[event.things[0]!]!.at,
        ),
      });
    }
  },
});

const isFar = (model: Model, { things }: Event): boolean =>
  things.some((thing) => {
    const part = model.things[thing]!;
    return part.is === "part" && part.reach !== undefined;
  });

/** Even if all that moves is carried it is no more than one may be asked to lift at best: then nothing has to be reckoned. */
function isLight(model: Model, event: Event): boolean {
  let most = 0;
  for (const index of event.moved) {
    const part = partOf(model, index);
    most += Math.max(0, massKg(part) ?? 0) * part.count;
  }
  return most <= ONE_PERSON_BEST && !isFar(model, event);
}
