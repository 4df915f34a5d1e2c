// What `stripdown refit --json` prints.

import * as z from "zod";
import { place, provenance, torque } from "./common.ts";

const item = z.strictObject({
  id: z.string().describe("Full id, with the unit part that it is inside and its piece."),
  name: z.string(),
  is: z.enum(["part", "fastener", "joint", "fluid", "hazard"]),
  count: z.int().optional().describe("Pieces in this act; left out where the author gives no number."),
  of: z.int().optional().describe("Pieces in all."),
  fresh: z.enum(["certain", "worn"]).optional().describe("It goes back in new: for certain, or if found worn."),
  torque: torque.optional(),
});

const act = z.strictObject({
  id: z
    .string()
    .regex(/^[SRF][1-9][0-9]*$/)
    .describe("S3 in the strip, R7 in the refit, F1 in the finish: by place in the printed line."),
  verb: z.string(),
  says: z.array(z.string()).describe("As printed, one line each."),
  text: z.string().describe("The author's own words."),
  items: z.array(item),
  tool: z.string().optional(),
  into: z.strictObject({ kind: z.enum(["tray", "bag", "container"]), label: z.string() }).optional(),
  passes: z.int().optional(),
  turn: z.string().optional().describe("The position that it is turned to first."),
  procedure: z.string(),
  step: z.strictObject({ number: z.int(), name: z.string(), title: z.string(), on: z.string().optional() }).optional(),
  given: z.array(z.string()).describe("Conditions that it stands under."),
  refused: z.boolean().describe("The bench could not do it: see stripdown check."),
  at: place,
  needs: z.array(z.strictObject({ id: z.string().describe("The act that must come before."), why: z.string() })),
});

export const refitProcedure = z.strictObject({
  id: z.string(),
  title: z.string(),
  unit: z.string(),
  unitTitle: z.string(),
  build: z.string().describe("Empty where the unit has one build only."),
  refitIs: z.enum(["computed", "written", "none"]),
  strip: z.array(act),
  refit: z.array(act),
  finish: z.array(act),
});

export const refitShape = z
  .strictObject({
    format: z.literal("stripdown-refit"),
    version: z.literal(1),
    provenance,
    procedures: z.array(refitProcedure),
  })
  .meta({
    title: "Strip and refit as acts",
    description: "What `stripdown refit --json` prints: the acts in the order of doing, with the needs between them.",
  });
