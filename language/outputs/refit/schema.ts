// The JSON of `refit` as a schema: acts of strip and refit with the needs between them.

import { z } from "zod";
import { itemShape, placeSchema, provenanceSchema, torqueSchema } from "../schema-parts.ts";
import type { RefitData, RefitProcedure } from "./data.ts";

export const actSchema = z.strictObject({
  id: z.string().describe("S3 in the strip, R7 in the refit, F1 in the finish, by place in the printed line"), verb: z.string().describe("Word of the language, or verb of the refit"),
  says: z.array(z.string()).describe("As printed, one a line; empty where nothing is to be done"), text: z.string().describe("The author's own words"),
  items: z.array(z.strictObject({ ...itemShape, torque: torqueSchema.exactOptional() })), tool: z.string().exactOptional(),
  into: z.strictObject({ kind: z.enum(["tray", "bag", "container"]), label: z.string() }).exactOptional(), passes: z.number().int().exactOptional(), turn: z.string().exactOptional().describe("The unit is turned to this position before it"),
  procedure: z.string(), step: z.strictObject({ number: z.number().int(), name: z.string(), title: z.string() }).exactOptional(), given: z.array(z.string()).describe("Conditions around it, as written"),
  refused: z.boolean().describe("The bench refused it: the findings say why"), at: placeSchema, needs: z.array(z.strictObject({ id: z.string(), why: z.string() })).describe("Acts that must come before, the direct ones"),
});

export const procedureShape = {
  id: z.string(), title: z.string(), unit: z.string(), unitTitle: z.string(), build: z.string(), refitIs: z.enum(["computed", "written", "none"]), strip: z.array(actSchema), refit: z.array(actSchema), finish: z.array(actSchema),
} satisfies Record<keyof RefitProcedure, z.ZodType>;

export const refitSchema = z.strictObject({
  format: z.literal("stripdown-refit"), version: z.literal(1), provenance: provenanceSchema, procedures: z.array(z.strictObject(procedureShape)),
} satisfies Record<Exclude<keyof RefitData, "printed">, z.ZodType>);
