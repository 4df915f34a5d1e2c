// Pieces of the JSON schemas that several outputs share. Each is held to the type that the output makes.

import { z } from "zod";
import type { Provenance } from "./draft.ts";
import type { LineItem } from "./lines/line.ts";
import type { Place } from "./places.ts";
import type { FigureData, TorqueData } from "./torque-data.ts";

const count = z.number().int().min(0);

export const placeSchema: z.ZodType<Place> = z.strictObject({
  file: z.string(), line: count.describe("From 1"), column: count.describe("From 1, in UTF-16 code units"), endLine: count, endColumn: count, start: count.describe("Offset in UTF-16 code units"), end: count.describe("First offset after it"),
});

export const provenanceSchema: z.ZodType<Provenance> = z.strictObject({
  draft: z.array(z.enum(["not-approved", "open-findings"])).describe("Why this is a draft; empty where it is none"), openFindings: count, hash: z.string().regex(/^[0-9a-f]{64}$/).describe("SHA-256 over the files"),
});

export const figureSchema: z.ZodType<FigureData> = z.strictObject({
  written: z.string().describe("As the author wrote it, with his bracket"), metric: z.string(), us: z.string(), unit: z.string(), low: z.number().describe("In `unit`"), high: z.number(),
});

const newtonMetres = z.strictObject({ low: z.number(), high: z.number() });

export const torqueSchema: z.ZodType<TorqueData> = z.strictObject({
  text: z.string().describe("As printed"),
  values: z.array(z.strictObject({
    is: z.enum(["none", "value", "standard", "words"]),
    value: z.strictObject({ written: z.string(), metric: z.string(), us: z.string(), unit: z.string(), low: z.number(), high: z.number(), newtonMetres }).exactOptional(),
    words: z.string().exactOptional(), table: z.string().exactOptional(), forPieces: z.union([z.number().int(), z.literal("rest")]).exactOptional(), while: z.string().exactOptional(),
  })),
  stages: z.array(figureSchema),
  passes: z.strictObject({ count, shares: z.array(z.number()) }).exactOptional(),
  sequence: z.strictObject({ kind: z.string(), words: z.string().exactOptional(), order: z.array(count) }).exactOptional(),
});

export const itemShape = {
  id: z.string(), name: z.string(), is: z.enum(["part", "fastener", "joint", "fluid", "hazard"]), count: count.optional().describe("Pieces in this act; absent where no number is given"), of: count.optional(),
  fresh: z.enum(["certain", "worn"]).optional().describe("It goes back in new"),
} satisfies Record<keyof LineItem, z.ZodType>;
