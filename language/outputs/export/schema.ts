// The JSON of `export` as a schema: the whole model.

import { z } from "zod";
import { procedureShape } from "../refit/schema.ts";
import { figureSchema, placeSchema, provenanceSchema, torqueSchema } from "../schema-parts.ts";
import type { ExportData, FastenerData, FluidData, HazardData, JointData, PartData, PrecautionData, ProcedureData, UnitData } from "./data.ts";

const ids = z.array(z.string()), text = z.string(), maybe = text.exactOptional(), whole = z.number().int();
const renew = z.strictObject({ when: z.enum(["always", "worn", "damaged", "as-a-set", "by-pairs", "every"]), strips: z.number().exactOptional(), said: z.boolean().describe("On the thing itself, not by the standing rule") });
const thing = {
  id: text, declared: text, name: text, piece: text, about: text, messages: z.array(z.strictObject({ signal: z.enum(["danger", "warning", "caution", "notice"]), text, at: placeSchema })), at: placeSchema,
};
const part = z.strictObject({
  ...thing, kind: text, count: whole.exactOptional().describe("Absent where the author gives none"), mass: figureSchema.exactOptional(), size: maybe, supply: figureSchema.exactOptional(), hosts: ids, fitsBy: maybe, rests: ids,
  between: z.tuple([ids, ids]).exactOptional(), behind: ids, positions: ids, hangs: z.boolean(), renew: renew.exactOptional(), liftPeople: whole.exactOptional(), liftWith: maybe, dry: z.boolean(), alignBy: maybe,
  partNo: maybe, standard: maybe, unit: maybe,
} satisfies Record<keyof PartData, z.ZodType>);
const tie = {
  ...thing, kind: text, count: whole.exactOptional(), joins: z.strictObject({ hanging: ids, on: ids }), into: maybe, behind: ids, positions: ids, opens: ids, renew: renew.exactOptional(), partNo: maybe, standard: maybe,
};
const fastener = z.strictObject({
  ...tie, size: maybe, class: maybe, grade: maybe, drive: z.strictObject({ kind: text, size: maybe }).exactOptional(), tool: z.strictObject({ says: text, computed: z.boolean() }).exactOptional(), torque: torqueSchema.exactOptional(),
  washers: z.array(z.strictObject({ part: text, count: whole })), threadLocker: maybe, lubricant: maybe, reuseTimes: whole.exactOptional(),
} satisfies Record<keyof FastenerData, z.ZodType>);
const joint = z.strictObject({
  ...tie, parts: z.enum(["undone", "in passing"]), how: maybe, force: figureSchema.exactOptional(), uses: ids, bead: z.strictObject({ width: figureSchema, length: figureSchema.exactOptional() }).exactOptional(),
} satisfies Record<keyof JointData, z.ZodType>);
const fluid = z.strictObject({
  ...thing, kind: text, volume: figureSchema.exactOptional(), drainsAt: ids, fillsAt: ids, bleedsAt: ids, recover: z.boolean(), uses: maybe, path: ids, filled: z.boolean(),
} satisfies Record<keyof FluidData, z.ZodType>);
const precaution = z.strictObject({
  kind: text, text, behind: ids, waitGiven: figureSchema.exactOptional(), tool: maybe, limits: maybe, back: text, at: placeSchema,
  wait: z.strictObject({ seconds: z.number(), decidedBy: z.enum(["maker", "to-60-V", "to-0.2-J"]) }).exactOptional().describe("The longest of the given and the computed waits; no wait stands for a proof"),
} satisfies Record<keyof PrecautionData, z.ZodType>);
const hazard = z.strictObject({
  ...thing, kind: text, signal: maybe, source: maybe, on: ids, pushes: ids, figures: z.record(text, figureSchema), wear: ids, role: maybe, precautions: z.array(precaution),
} satisfies Record<keyof HazardData, z.ZodType>);
const unit = z.strictObject({
  id: text, title: text, build: text, revision: maybe, about: text, mass: figureSchema.exactOptional(), base: ids, positions: ids, parts: z.array(part), fasteners: z.array(fastener), joints: z.array(joint), fluids: z.array(fluid),
  hazards: z.array(hazard), dismissed: z.array(z.strictObject({ kind: text, why: text })), notConsidered: ids.describe("Hazard kinds that nobody has answered for"),
} satisfies Record<keyof UnitData, z.ZodType>);
const named = { id: text, name: text };
const procedure = z.strictObject({
  ...procedureShape, revision: maybe, crew: whole, role: maybe, about: text, needs: ids, fastenersRemoved: z.array(z.strictObject({ ...named, count: whole })), partsRemoved: z.array(z.strictObject(named)),
  toRenew: z.array(z.strictObject({ ...named, grade: z.enum(["certain", "worn"]), reason: text })),
} satisfies Record<keyof ProcedureData, z.ZodType>);

export const exportSchema = z.strictObject({
  format: z.literal("stripdown-model"), version: z.literal(1), provenance: provenanceSchema, units: z.array(unit), procedures: z.array(procedure),
  tools: z.array(z.strictObject({ ...named, kind: maybe, range: figureSchema.exactOptional(), capacity: figureSchema.exactOptional(), accuracy: z.number().exactOptional(), count: z.number().exactOptional(), calibration: maybe })),
  consumables: z.array(z.strictObject({ ...named, pack: z.union([figureSchema, z.strictObject({ pieces: z.number() })]).exactOptional(), partNo: maybe, standard: maybe, lead: figureSchema.exactOptional(), shelfLife: figureSchema.exactOptional() })),
  roles: z.array(z.strictObject(named)),
} satisfies Record<keyof ExportData, z.ZodType>);
