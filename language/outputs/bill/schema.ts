// The JSON of `bill` as a schema.

import { z } from "zod";
import { placeSchema, provenanceSchema } from "../schema-parts.ts";
import type { BillData, BillRow } from "./data.ts";

const amount = z.strictObject({ value: z.number(), unit: z.string() });
const need = z.strictObject({ pieces: z.number().int().min(0), amounts: z.array(amount), notGiven: z.number().int().min(0).describe("Uses that name no amount"), text: z.string().min(1).describe("As printed; never empty") });

const row = {
  id: z.string(), name: z.string(), what: z.enum(["part", "fastener", "joint", "consumable", "fluid"]), grade: z.enum(["certain", "worn"]).describe("worn: only if found so, or where a reading asks for it"),
  reasons: z.array(z.enum(["rule", "standing-rule", "destroyed", "joint-kind", "act", "worn", "damaged", "as-a-set", "by-pairs", "every", "reading", "scrap", "kind-not-said"])), why: z.string(),
  size: z.string().exactOptional(), partNo: z.string().exactOptional(), standard: z.string().exactOptional(), perUnit: need, total: need, pack: z.string().exactOptional(),
  packs: z.strictObject({ count: z.number().int().min(0), atLeast: z.boolean().describe("Some uses name no amount that the pack can be held against"), text: z.string() }).exactOptional(),
  lead: z.string().exactOptional(), shelfLife: z.string().exactOptional(), usedAt: z.array(z.strictObject({ on: z.string(), procedure: z.string(), step: z.string(), at: placeSchema })),
} satisfies Record<keyof BillRow, z.ZodType>;

export const billSchema = z.strictObject({
  format: z.literal("stripdown-bill"), version: z.literal(1), provenance: provenanceSchema, units: z.number().int().min(1),
  procedures: z.array(z.strictObject({ id: z.string(), title: z.string(), unit: z.string(), unitTitle: z.string(), build: z.string() })), lines: z.array(z.strictObject(row)),
} satisfies Record<keyof BillData, z.ZodType>);
