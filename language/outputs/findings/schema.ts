// The shape of `check --json`, as zod; its JSON Schema is published from here.

import * as z from "zod";
import { severities } from "../../findings/finding.ts";

const position = z.strictObject({
  line: z.int().min(1).describe("From 1."),
  column: z.int().min(1).describe("From 1, in UTF-16 code units."),
});
const range = z.strictObject({ start: position, end: position.describe("The first place after.") });
const place = { file: z.string().describe("Path as shown to the user, with slashes."), range };
const severity = z.enum(severities);

export const checkSchema = z
  .strictObject({
    version: z.literal(1),
    findings: z.array(
      z.strictObject({
        code: z.string().describe("Family and name: sequence/still-held."),
        severity,
        says: z.string(),
        ...place,
        because: z
          .array(z.strictObject({ says: z.string(), file: z.string().optional(), range: range.optional() }))
          .describe("The chain of facts."),
        fixes: z.array(
          z.strictObject({
            title: z.string(),
            certain: z.boolean(),
            edits: z.array(z.strictObject({ ...place, text: z.string() })),
          }),
        ),
        builds: z.array(z.string()).describe("The smallest condition that it holds under; empty where it always does."),
      }),
    ),
    allows: z
      .array(z.strictObject({ code: z.string(), reason: z.string(), ...place }))
      .describe("Findings that the author allowed, with the reason."),
    unreadable: z.array(z.strictObject({ file: z.string(), says: z.string() })),
    summary: z.strictObject({
      procedures: z.int(),
      files: z.int(),
      units: z.array(
        z.strictObject({
          unit: z.string(),
          title: z.string(),
          file: z.string(),
          builds: z.int(),
          hazardsNotConsidered: z.array(z.string()).describe("Kinds neither declared nor dismissed."),
          parts: z.int(),
          massesNotGiven: z.int(),
        }),
      ),
      note: z.string(),
    }),
    unknowns: z
      .array(
        z.strictObject({
          unit: z.string(),
          title: z.string(),
          file: z.string(),
          figures: z.array(
            z.strictObject({
              figure: z.string().describe("mass, thread size, strength class, torque, voltage, …"),
              of: z.array(z.string()).describe("Names of the things that lack it, one for each thing."),
              wouldCheck: z.string().describe("What it would let the tool check."),
            }),
          ),
        }),
      )
      .optional()
      .describe("Figures that nobody gave, by unit; with `--unknowns` alone."),
  })
  .meta({ title: "Findings of stripdown check", description: "What `stripdown check --json` prints." });

export type CheckJson = z.infer<typeof checkSchema>;
