// What `stripdown sheet refit-book --json` prints.

import * as z from "zod";
import { provenance } from "./common.ts";

const groups = z.array(
  z.strictObject({
    number: z.string().describe("R3 on the way back, F at the end."),
    title: z.string(),
    lines: z.array(
      z.strictObject({
        is: z.enum(["action", "hazard", "message", "note", "photo", "video"]),
        line: z.string().optional().describe("The printed number of an action: R1.4, F2."),
        given: z.array(z.string()).describe("Conditions that it stands under."),
        says: z.string().describe("Our sentence; of a note what the procedure or the record says."),
        text: z.string().describe("The author's own words."),
        under: z.array(z.string()).describe("What stands under it: torque, tools, how, what must stand."),
      }),
    ),
  }),
);

export const refitBookShape = z
  .strictObject({
    format: z.literal("stripdown-refit-book"),
    version: z.literal(1),
    provenance,
    title: z.string(),
    subtitle: z.string(),
    recorded: z.array(z.strictObject({ label: z.string(), value: z.string() })).describe("Of the record as a whole."),
    whole: z.array(z.string()).describe("What the record says that no single line is about."),
    procedures: z.array(
      z.strictObject({
        title: z.string(),
        refitIs: z.enum(["computed", "written", "none"]),
        refit: groups,
        finish: groups,
      }),
    ),
    closing: z
      .array(
        z.strictObject({
          procedure: z.string(),
          title: z.string(),
          columns: z.array(z.string()),
          blank: z.array(z.string()).describe("Heads of columns that are left blank for a pen."),
          rows: z.array(z.array(z.string())),
        }),
      )
      .describe("All that the record leaves open."),
  })
  .meta({
    title: "Refit book",
    description:
      "What `stripdown sheet refit-book --json` prints: the way back of one unit with what its record says, and what that leaves open.",
  });
