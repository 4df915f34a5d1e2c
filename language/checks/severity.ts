// How much a finding weighs: what the check says, or what the project's settings make of it. What can hurt someone, and what keeps a
// file from being read at all, is only ever made stricter.

import type { Severity } from "../findings/finding.ts";
import type { Settings } from "../world/settings.ts";
import type { Check } from "./check.ts";

const weights: Readonly<Record<Severity | "off", number>> = { off: 0, hint: 1, question: 2, warning: 3, error: 4 };

/** From 0 for off to 4 for error. */
export const weight = (severity: Severity | "off"): number => weights[severity];

export const graver = (a: Severity, b: Severity): Severity => (weight(a) > weight(b) ? a : b);

/** Findings on hazards and lifts, and of form, cannot be made milder. */
export const isGuarded = (code: string): boolean => /^(?:hazard|lift|syntax)\//.test(code);

/** `own` is what the check says for this one finding, where it speaks at two weights. */
export function severityOf(
  check: Pick<Check, "code" | "severity">,
  settings: Settings,
  own: Severity | undefined,
): Severity | "off" {
  const set = settings.severity[check.code],
    base = own ?? check.severity;
  if (set === undefined) return base;
  return isGuarded(check.code) && weight(set) < weight(base) ? base : set;
}

/** Does a check that is an error by itself speak as one here? */
export const isAnError = (code: string, settings: Settings): boolean =>
  (settings.severity[code] ?? "error") === "error";
