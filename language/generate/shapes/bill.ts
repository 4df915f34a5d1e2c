// What `stripdown bill --json` prints.

import * as z from "zod";
import { place, provenance } from "./common.ts";

const need = z.strictObject({
  pieces: z.int().min(0),
  amounts: z.array(z.strictObject({ value: z.number(), unit: z.string() })),
  notGiven: z.int().min(0).describe("Uses that name no amount."),
  text: z.string().describe("As printed."),
});

const row = z.strictObject({
  id: z.string(),
  name: z.string(),
  within: z.string().describe("The unit that it is a part of, where another line is called the same."),
  what: z.string(),
  grade: z.string().describe("certain, if found worn, likely."),
  reasons: z.array(z.string()),
  why: z.string(),
  size: z.string().optional(),
  partNo: z.string().optional(),
  standard: z.string().optional(),
  lot: z
    .strictObject({
      is: z.enum(["pair", "set"]),
      of: z.int().min(1),
      with: z
        .array(z.string())
        .optional()
        .describe("The other lines of a set that has several: one set, not one a line."),
    })
    .optional()
    .describe("Bought in whole pairs, or whole sets of so many pieces."),
  perUnit: need,
  total: need,
  pack: z.string().optional(),
  packs: z
    .strictObject({
      count: z.int().min(0),
      atLeast: z.boolean().describe("Some uses name no amount."),
      text: z.string(),
    })
    .optional(),
  lead: z.string().optional(),
  shelfLife: z.string().optional(),
  usedOn: z.array(z.string()),
  usedAt: z.array(z.strictObject({ on: z.string(), procedure: z.string(), step: z.string(), at: place })),
});

export const billShape = z
  .strictObject({
    format: z.literal("stripdown-bill"),
    version: z.literal(1),
    provenance,
    units: z.int().min(1),
    procedures: z.array(
      z.strictObject({
        id: z.string(),
        title: z.string(),
        unit: z.string(),
        unitTitle: z.string(),
        build: z.string(),
        buildText: z.string().describe("The build as printed."),
      }),
    ),
    lines: z.array(row),
  })
  .meta({ title: "Consumables and spares", description: "What `stripdown bill --json` prints." });
