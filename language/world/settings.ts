// What `stripdown.json` may say, as plain values. Reading and checking it is the command line's and the server's business (zod schema beside it).

import type { Severity } from "../findings/finding.ts";

export interface Settings {
  /** Severity by code; `hazard/` and `lift/` only stricter. */
  readonly severity: Readonly<Record<string, Severity | "off">>;
  /** Defaults of the figures: friction, load of yield … by name. See figures/assumptions.ts. */
  readonly assumptions: Readonly<Record<string, number | string>>;
  /** Units shown first. */
  readonly system: "metric" | "us";
  /** Where the manual lies, for the QR codes beside its steps; none without it. */
  readonly baseAddress?: string;
}

export const defaultSettings: Settings = { severity: {}, assumptions: {}, system: "metric" };
