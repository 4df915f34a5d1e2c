// Shapes that several outputs share, as zod: their JSON Schemas are published from here. Only generation and tests load them.

import * as z from "zod";

export const place = z.strictObject({
  file: z.string().describe("Path as shown to the user, with slashes."),
  line: z.int().min(1).describe("From 1."),
  column: z.int().min(1).describe("From 1, in UTF-16 code units."),
  endLine: z.int().min(1),
  endColumn: z.int().min(1).describe("The first place after."),
  start: z.int().min(0).describe("Offset in UTF-16 code units."),
  end: z.int().min(0),
});

export const provenance = z.strictObject({
  draft: z
    .array(z.enum(["not-approved", "open-findings"]))
    .describe("Why this is a draft; empty once it is approved and nothing is open."),
  openFindings: z.int().min(0),
  hash: z
    .string()
    .regex(/^[0-9a-f]{64}$/)
    .describe("SHA-256 over names and texts of all files."),
});

export const figure = z.strictObject({
  written: z.string().describe("As the author wrote it."),
  metric: z.string(),
  us: z.string(),
  unit: z.string(),
  low: z.number().describe("In `unit`; equal to `high` for a single value."),
  high: z.number(),
});

export const torque = z.strictObject({
  text: z.string().describe("As printed, in both systems."),
  values: z.array(
    z.strictObject({
      is: z.enum(["none", "value", "standard", "words"]),
      value: figure.extend({ newtonMetres: z.strictObject({ low: z.number(), high: z.number() }) }).optional(),
      words: z.string().optional(),
      table: z.string().optional(),
      forPieces: z.union([z.int(), z.literal("rest")]).optional(),
      while: z.string().optional(),
    }),
  ),
  stages: z.array(figure),
  passes: z.strictObject({ count: z.int(), shares: z.array(z.number()) }).optional(),
  sequence: z.strictObject({ kind: z.string(), words: z.string().optional(), order: z.array(z.int()) }).optional(),
});

/** The published text of a shape. */
export function published(name: string, shape: z.ZodType): { readonly path: string; readonly text: string } {
  return {
    path: `language/schemas/${name}.schema.json`,
    text: `${JSON.stringify(z.toJSONSchema(shape, { target: "draft-2020-12" }), null, 2)}\n`,
  };
}
