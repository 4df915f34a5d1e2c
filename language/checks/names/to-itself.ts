// A thing that is said to hold on to itself, or to come before itself.

import type { Model, Part, ThingIndex, Tie } from "../../model/model.ts";
import { check } from "../check.ts";
import { unreadIn } from "../read-whole.ts";

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
  model(model, say, { project }) {
    // Where the declaration could not be read to its end the line may be that of another thing: what is wrong with its text says so.
    const about = ({ at, whole }: Part | Tie, says: string): void =>
      say({ at, says, within: unreadIn(project, whole) });
    for (const part of model.parts) {
      const { index, name, hosts, rests, between } = part,
        both = between && common(between[0], between[1]);
      if (hosts.includes(index)) about(part, `${name} is said to fit itself`);
      if (rests.includes(index)) about(part, `${name} is said to rest on itself`);
      if (between?.flat().includes(index)) about(part, `${name} is said to lie between itself and another`);
      if (both !== undefined && both !== index)
        about(part, `${name} is said to lie between ${nameOf(model, both)} and the same once more`);
    }
    for (const tie of model.ties) {
      const both = common(tie.uppers, tie.lowers);
      if (both !== undefined) about(tie, `${tie.name} is said to join ${nameOf(model, both)} to itself`);
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
