// `stripdown.json` checked, with the JSON Schema published from the same shape.

import * as z from "zod";
import type { CheckTable } from "../checks/check-table.ts";
import { isGuarded, weight } from "../checks/severity.ts";
import { severities, type Finding } from "../findings/finding.ts";
import { nearestWords } from "../calc/nearest.ts";
import { assumptionsFrom } from "../figures/assumptions.ts";
import { allChecks } from "./check-project.ts";
import { isBaseAddress } from "../world/base-address.ts";
import { jsonProblem, shapeProblem } from "../world/shape-problem.ts";
import { defaultSettings, type Settings } from "../world/settings.ts";

const severity = z.enum([...severities, "off"]);

export const settingsSchema = z
  .strictObject({
    $schema: z.string().optional().describe("For editors: where this schema lies."),
    severity: z
      .record(z.string().regex(/^[a-z][a-z-]*\/[a-z][a-z-]*$/, "a code such as sequence/blocked"), severity)
      .optional()
      .describe("Weight of a check by its code. Those of hazard/, lift/ and syntax/ can be made stricter only."),
    assumptions: z
      .record(z.string(), z.union([z.number(), z.string()]))
      .optional()
      .describe("What the figures assume where nobody says: friction-thread, friction-head, …"),
    system: z.enum(["metric", "us"]).optional().describe("Units shown first in outputs."),
    baseAddress: z
      .string()
      .refine(isBaseAddress, "an address as https://manuals.example/winch.html, without #, is due")
      .optional()
      .describe(
        "Where the HTML manual lies, as https://manuals.example/winch.html: each step of a printed manual then has a QR code that leads there. No code without it.",
      ),
  })
  .meta({
    title: "Settings of a project of procedures",
    description: "stripdown.json, in the top folder of the project.",
  });

export type ReadSettings =
  { readonly settings: Settings; readonly findings: readonly Finding[] } | { readonly problem: string };

/** Settings from the text of `stripdown.json`, with a finding for each code in it that has no effect; or the first thing wrong with it, in words. */
export function readSettings(text: string, path: string): ReadSettings {
  let value: unknown;
  try {
    value = JSON.parse(text.charCodeAt(0) === 0xfeff ? text.slice(1) : text);
  } catch (error) {
    return { problem: jsonProblem(error) };
  }
  const parsed = settingsSchema.safeParse(value);
  if (!parsed.success) return { problem: shapeProblem(parsed.error.issues, value) };
  const { severity: weights = {}, assumptions = {}, system = "metric", baseAddress } = parsed.data,
    table = allChecks();
  const findings = [
    ...Object.keys(weights)
      .sort()
      .flatMap((code) => judged(code, weights[code]!, table, text, path)),
    ...assumptionsFrom(assumptions).problems.map(({ name, says }): Finding => ({
      code: "settings/assumption",
      severity: "warning",
      says,
      at: placeOf(name, text, path),
      because: [],
      fixes: [],
      builds: [],
    })),
  ];
  return {
    settings: {
      ...defaultSettings,
      severity: weights,
      assumptions,
      system,
      ...(baseAddress === undefined ? {} : { baseAddress }),
    },
    findings,
  };
}

/** A code that is no check, or that cannot be made as mild as this asks. */
function judged(
  code: string,
  wanted: keyof typeof severity.enum,
  table: CheckTable,
  text: string,
  path: string,
): Finding[] {
  const check = table.byCode(code),
    at = placeOf(code, text, path);
  const finding = (of: string, says: string, because: string[]): Finding => ({
    code: of,
    severity: "warning",
    says,
    at,
    because: because.map((one) => ({ says: one })),
    fixes: [],
    builds: [],
  });
  if (!check) {
    const near = nearestWords(
      code,
      table.all.map((one) => one.code),
    );
    return [
      finding(
        "settings/unknown-code",
        `${code} is no check${near.length > 0 ? `: did you mean ${near.join(" or ")}?` : ""}`,
        [],
      ),
    ];
  }
  if (!isGuarded(code) || weight(wanted) >= weight(check.severity)) return [];
  return [
    finding("settings/only-stricter", `${code} stays ${article(check.severity)}: it cannot be made milder`, [
      `the settings ask for ${wanted}`,
    ]),
  ];
}

/** Where a key stands in the text, with its quotes. */
function placeOf(key: string, text: string, file: string): Finding["at"] {
  const start = Math.max(0, text.indexOf(JSON.stringify(key)));
  return { file, start, end: start + key.length + 2 };
}

const article = (word: string): string => (word === "error" ? "an error" : `a ${word}`);
