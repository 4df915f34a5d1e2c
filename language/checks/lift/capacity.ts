// A load over the capacity of what carries it, or over what the sling's legs take at their angle.

import { gearOf, massOf } from "../../bench/load.ts";
import { slingTension } from "../../figures/slings.ts";
import { STANDARD_GRAVITY } from "../../figures/stored-energy.ts";
import type { Span } from "../../findings/finding.ts";
import type { Tool } from "../../model/model.ts";
import type { Project } from "../../names/project.ts";
import { rounded, si, type Quantity } from "../../quantities/index.ts";
import { check } from "../check.ts";
import { figuresIn } from "../figures-said.ts";
import { sumLines } from "../sums.ts";

export default check({
  code: "lift/capacity",
  title: "Over the capacity of the lifting gear",
  severity: "error",
  why: "A hoist or sling over its capacity fails without a word. What comes along with the part counts too.",
  source: "the gear's own plate; sling legs by ISO 8792 / EN 818-4 angles through published tables",
  fails: `
    tool hoist "Chain hoist" { kind hoist  capacity 250 kg }
    unit box "Box" {
      base foot
      part foot "Foot"
      part block "Block" { mass 400 kg  rests on foot }
      no heavy "Lifted by gear."
    }
    procedure strip "Strip" for box {
      aim block off
      step "Take the block off" { lift block with hoist }
    #                             ^^^^^^^^^^^^^^^^^^^^^ Block weighs 400 kg, over the 250 kg of Chain hoist
    }
  `,
  mended: `
    tool hoist "Chain hoist" { kind hoist  capacity 500 kg }
    unit box "Box" {
      base foot
      part foot "Foot"
      part block "Block" { mass 400 kg  rests on foot }
      no heavy "Lifted by gear."
    }
    procedure strip "Strip" for box {
      aim block off
      step "Take the block off" { lift block with hoist }
    }
  `,
  performance(performance, say, context) {
    const { model } = performance;
    for (const event of performance.events) {
      if ((event.kind !== "off" && event.kind !== "held") || event.assumed) continue;
      // Hoist and sling each carry all of it. Asked first, since most of what comes off is carried by hand.
      const gear = event.kind === "off" ? gearOf(model, event.act, event.things) : event.act.tools;
      if (gear.length === 0) continue;
      // What is held is what comes away with it later.
      const off =
        event.kind === "off"
          ? event
          : performance.events.find(
              (later) =>
                later.kind === "off" &&
                later.index > event.index &&
                later.things.some((thing) => event.things.includes(thing)),
            );
      const { kg, unknown } = massOf(model, off?.moved ?? event.things);
      if (kg === 0) continue;
      const name = context.name(event.things[0]!),
        load = `${rounded(kg, 3)} kg${unknown > 0 ? " or more" : ""}`;
      for (const { text } of gear) {
        const tool = model.library.tools.get(text),
          capacity = tool?.capacity;
        if (!tool || !capacity) continue;
        const limit = massCarried(capacity),
          legs = tool.legs ?? 0;
        if (limit === undefined) {
          say({
            at: event.act.at,
            answer: { key: tool.id },
            within: saidAs(context.project, tool),
            says: `${name}: ${capacity.written} of ${tool.name} is no load that a lifting gear carries, so that its load is not checked: write a mass`,
            because: [{ says: `${tool.name} is declared here`, at: tool.at }],
          });
          continue;
        }
        if (legs > 1 && tool.angle) {
          const angle = si(tool.angle).low;
          if (!Number.isInteger(legs)) continue;
          // Others count the angle between the legs, or from the plumb line: taken for ours it would hide what pulls at them.
          if (!(angle > 0 && angle <= Math.PI / 2)) {
            say({
              at: event.act.at,
              answer: { key: tool.id },
              says: `${name}: the legs of ${tool.name} cannot stand at ${tool.angle.written} to the horizontal, so that their pull is not checked: write how far each leg is above it`,
              because: [{ says: `${tool.name} is declared here`, at: tool.at }],
            });
            continue;
          }
          const { tension, tooFlat, formula, steps, source } = slingTension(kg, legs, angle),
            sum = { name: "tension in each leg of a sling", formula, steps, source };
          if (tooFlat)
            say({
              at: event.act.at,
              says: `${name}: the legs of ${tool.name} at ${tool.angle.written} are flatter than 30 degrees`,
              because: sumLines(sum, tool.at),
            });
          else if (tension > limit)
            say({
              at: event.act.at,
              answer: { key: `${name} ${tool.id}` },
              says: `${name}: ${load} pulls each leg of ${tool.name} with ${rounded(tension, 3)} kg at ${tool.angle.written}, over its ${capacity.written}`,
              because: sumLines(sum, tool.at),
            });
        } else if (kg > limit) {
          say({
            at: event.act.at,
            // Held by it first and then lifted with it.
            answer: { key: `${name} ${tool.id}` },
            says: `${name} weighs ${load}, over the ${capacity.written} of ${tool.name}`,
            because: sumLines(
              {
                name: "load on the lifting gear",
                formula: `${load} > ${rounded(limit, 3)} kg, all that comes away with it counted`,
                source: `the plate of ${tool.name}, as said here`,
              },
              tool.at,
            ),
          });
        }
      }
    }
  },
});

/** Where its capacity stands: a figure that no capacity takes is said there. */
function saidAs({ files }: Project, { at: { file, end } }: Tool): Span | undefined {
  const source = files.get(file);
  return source && figuresIn(source).find(({ item, at }) => item.entry!.word === "capacity" && at.start >= end)?.at;
}

/** What a gear carries, in kg: shackles and slings are often stamped with a force. Undefined where it is neither. */
function massCarried(capacity: Quantity): number | undefined {
  const { low } = si(capacity);
  if (capacity.dimension === "mass") return low;
  return capacity.dimension === "force" ? low / STANDARD_GRAVITY : undefined;
}
