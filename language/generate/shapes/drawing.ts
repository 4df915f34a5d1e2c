// What `stripdown draw … --json` prints.

import * as z from "zod";
import { provenance, torque } from "./common.ts";

const text = z.string();

const node = z.strictObject({
  number: z.int().min(1).describe("By its place in the strip."),
  is: z.enum(["fastener", "joint", "part", "fluid", "precaution", "hold", "aside"]),
  things: z.array(text).describe("Full ids."),
  label: text,
  line: text.describe("The printed line that does it; empty where none does."),
  step: text,
  after: z.array(z.int().min(1)).describe("Those that must come before, without what follows from the rest."),
  assumed: z.boolean().describe("The bench refused it, and it is taken as done."),
});

const item = z.union([
  z.strictObject({ procedure: text, title: text, unit: text, build: text, nodes: z.array(node) }),
  z.strictObject({
    unit: text,
    fastener: text,
    name: text,
    count: z.int(),
    places: z
      .array(z.strictObject({ x: z.number(), y: z.number() }))
      .describe("Middles in millimetres, x to the right, y down, as they are counted."),
    order: z
      .array(z.int().min(1))
      .describe(
        "For each turn the number of the fastener; empty where the author gives no order that can be numbered.",
      ),
    torque: torque.optional(),
  }),
  z.strictObject({ unit: text, fluid: text, name: text, parts: z.array(text) }),
]);

export const drawingShape = z
  .strictObject({
    format: z.literal("stripdown-drawing"),
    version: z.literal(1),
    of: z.enum(["strip", "pattern", "path"]),
    provenance,
    items: z.array(item),
  })
  .meta({
    title: "What the drawings show",
    description: "What `stripdown draw strip`, `draw pattern` and `draw path` print with --as json.",
  });
