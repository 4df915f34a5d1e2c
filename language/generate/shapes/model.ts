// What `stripdown export` prints: the whole model.

import * as z from "zod";
import { signalNames } from "../../tables/index.ts";
import { figure, place, provenance, torque } from "./common.ts";
import { refitProcedure } from "./refit.ts";

const text = z.string(),
  texts = z.array(z.string()),
  ids = z.array(z.string()).describe("Full ids of other things.");
const renew = z.strictObject({
  when: z.enum(["always", "worn", "damaged", "every"]).optional(),
  together: z.enum(["as-a-set", "by-pairs"]).optional(),
  strips: z.int().optional(),
  said: z.boolean().describe("Stated on the thing itself."),
});

const thing = z.strictObject({
  id: text.describe("Full id, with the unit part that it is inside and its piece."),
  declared: text,
  name: text,
  piece: text,
  about: text,
  messages: z.array(z.strictObject({ signal: z.enum(signalNames), text, at: place })),
  at: place,
});

const part = thing.extend({
  kind: text,
  count: z.int().optional(),
  mass: figure.optional().describe("Left out where the author gives none."),
  size: text.optional(),
  supply: figure.optional(),
  hosts: ids,
  fitsBy: text.optional(),
  rests: ids,
  matched: ids,
  between: z.tuple([ids, ids]).optional(),
  behind: ids,
  positions: texts,
  hangs: z.boolean(),
  renew: renew.optional(),
  liftPeople: z.int().optional(),
  liftWith: text.optional(),
  dry: z.boolean(),
  alignBy: text.optional(),
  partNo: text.optional(),
  standard: text.optional(),
  unit: text.optional().describe("The unit that this part is."),
});

const tie = thing.extend({
  kind: text,
  count: z.int().optional(),
  joins: z.strictObject({ hanging: ids, on: ids }),
  into: text.optional(),
  behind: ids,
  positions: texts,
  opens: ids,
  renew: renew.optional(),
  partNo: text.optional(),
  standard: text.optional(),
});

const fastener = tie.extend({
  size: text.optional(),
  class: text.optional(),
  grade: text.optional(),
  drive: z.strictObject({ kind: text, size: text.optional() }).optional(),
  tool: z.strictObject({ says: text, computed: z.boolean() }).optional(),
  torque: torque.optional().describe("Left out where the author gives none: nothing is filled in."),
  washers: z.array(z.strictObject({ part: text, count: z.int() })),
  threadLocker: text.optional(),
  lubricant: text.optional(),
  reuseTimes: z.int().optional(),
});

const joint = tie.extend({
  parts: z.enum(["undone", "in passing"]),
  how: text.optional(),
  force: figure.optional(),
  uses: texts,
  bead: z.strictObject({ width: figure, length: figure.optional() }).optional(),
});

const fluid = thing.extend({
  kind: text,
  volume: figure.optional(),
  drainsAt: ids,
  fillsAt: ids,
  bleedsAt: ids,
  recover: z.boolean(),
  uses: text.optional(),
  path: ids,
  filled: z.boolean(),
});

const hazard = thing.extend({
  kind: text,
  signal: text.optional(),
  source: text.optional(),
  on: ids,
  pushes: ids,
  figures: z.record(z.string(), figure),
  wear: texts,
  role: text.optional(),
  precautions: z.array(
    z.strictObject({
      kind: text,
      text,
      behind: ids,
      waitGiven: figure.optional(),
      wait: z
        .strictObject({ seconds: z.number(), decidedBy: z.enum(["maker", "to-60-V", "to-0.2-J"]) })
        .optional()
        .describe("The longest of the given and the computed waits. No wait stands for a proof."),
      tool: text.optional(),
      limits: text.optional(),
      back: text,
      at: place,
    }),
  ),
});

const unit = z.strictObject({
  id: text,
  title: text,
  build: text,
  revision: text.optional(),
  about: text,
  mass: figure.optional(),
  base: ids,
  positions: texts,
  parts: z.array(part),
  fasteners: z.array(fastener),
  joints: z.array(joint),
  fluids: z.array(fluid),
  hazards: z.array(hazard),
  dismissed: z.array(z.strictObject({ kind: text, why: text })),
  notConsidered: texts.describe("Hazard kinds neither declared nor dismissed: nobody has answered for them."),
});

const named = z.strictObject({ id: text, name: text });
const procedure = refitProcedure.extend({
  revision: text.optional(),
  crew: z.int(),
  role: text.optional(),
  about: text,
  needs: texts,
  fastenersRemoved: z.array(named.extend({ count: z.int() })),
  partsRemoved: z.array(named),
  toRenew: z.array(named.extend({ grade: z.enum(["certain", "worn"]), reason: text })),
});

export const modelShape = z
  .strictObject({
    format: z.literal("stripdown-model"),
    version: z.literal(1),
    provenance,
    units: z.array(unit),
    procedures: z.array(procedure),
    tools: z.array(
      named.extend({
        kind: text.optional(),
        range: figure.optional(),
        capacity: figure.optional(),
        accuracy: z.number().optional(),
        count: z.int().optional(),
        calibration: text.optional(),
      }),
    ),
    consumables: z.array(
      named.extend({
        pack: z.union([figure, z.strictObject({ pieces: z.int() })]).optional(),
        partNo: text.optional(),
        standard: text.optional(),
        lead: figure.optional(),
        shelfLife: figure.optional(),
      }),
    ),
    roles: z.array(named),
  })
  .meta({ title: "The whole model", description: "What `stripdown export` prints." });
