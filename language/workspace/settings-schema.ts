// `stripdown.json` checked, with the JSON Schema published from the same shape.

import { z } from "zod";
import { defaultSettings, type Settings } from "./settings.ts";

const severity = z.enum(["error", "warning", "question", "hint", "off"]);

export const settingsSchema = z.strictObject({
  $schema: z.string().optional().describe("For editors: where this schema lies."),
  severity: z.record(z.string().regex(/^[a-z][a-z-]*\/[a-z][a-z-]*$/, "a code such as sequence/blocked"), severity).optional()
    .describe("Weight of a check by its code. Those of hazard/ and lift/ can be made stricter only."),
  assumptions: z.record(z.string(), z.union([z.number(), z.string()])).optional().describe("What the figures assume where nobody says: friction-thread, friction-head, …"),
  system: z.enum(["metric", "us"]).optional().describe("Units shown first in outputs."),
}).meta({ title: "Settings of a project of procedures", description: "stripdown.json, in the top folder of the project." });

export type ReadSettings = { readonly settings: Settings } | { readonly problem: string };

/** Settings from the text of `stripdown.json`; the first thing wrong with it, in words. */
export function readSettings(text: string): ReadSettings {
  let value: unknown;
  try { value = JSON.parse(text.charCodeAt(0) === 0xfeff ? text.slice(1) : text); } catch { return { problem: "it is no JSON: look for a missing comma, quote or bracket" }; }
  const parsed = settingsSchema.safeParse(value);
  if (parsed.success) {
    const { severity: weights = {}, assumptions = {}, system = "metric" } = parsed.data;
    return { settings: { ...defaultSettings, severity: weights, assumptions, system } };
  }
  const issue = parsed.error.issues[0]!, where = issue.path.join(".");
  return { problem: `${where === "" ? "" : `${where}: `}${issue.message}` };
}
