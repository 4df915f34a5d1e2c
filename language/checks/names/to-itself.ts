// A thing that is said to hold on to itself, or to come before itself.

import type { Model, ThingIndex } from "../../model/model.ts";
import { check } from "../check.ts";

export default check({
  code: "names/to-itself",
  title: "Something that holds on to itself, or comes before itself",
  severity: "error",
  why: "One of the two names is a slip, and what the line was to say is said nowhere: the part counts as held by nothing else.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      part card "Card" { rests on card }
    #      ^^^^ Card is said to rest on itself
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      part card "Card" { rests on foot }
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
  `,
  model(model, say) {
    for (const { index, name, at, hosts, rests, between } of model.parts) {
      if (hosts.includes(index)) say({ at, says: `${name} is said to fit itself` });
      if (rests.includes(index)) say({ at, says: `${name} is said to rest on itself` });
      if (between?.flat().includes(index)) say({ at, says: `${name} is said to lie between itself and another` });
      const both = between && common(between[0], between[1]);
      if (both !== undefined && both !== index)
        say({ at, says: `${name} is said to lie between ${nameOf(model, both)} and the same once more` });
    }
    for (const { name, at, uppers, lowers } of model.ties) {
      const both = common(uppers, lowers);
      if (both !== undefined) say({ at, says: `${name} is said to join ${nameOf(model, both)} to itself` });
    }
    for (const { names, after, before, at } of model.orders) {
      const text = names
        .map((one) => one.text)
        .find((one) => [...after, ...before].some((other) => other.text === one));
      if (text !== undefined) say({ at, says: `${text} is said to come before or after itself` });
    }
  },
});

const common = (some: readonly ThingIndex[], others: readonly ThingIndex[]): ThingIndex | undefined =>
  some.find((one) => others.includes(one));

const nameOf = (model: Model, index: ThingIndex): string => model.things[index]!.name;
