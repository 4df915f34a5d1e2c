// What a report needs of a check, whoever made it: the check of a project in one process, or the parts of many put together.

import type { Finding, Severity, Span } from "./finding.ts";

/** `# allow CODE: reason`, where it stands. */
export interface Allow {
  readonly code: string;
  readonly reason: string;
  readonly at: Span;
  /** The line that it speaks of, from 0. */
  readonly line: number;
}

export interface UnitSummary {
  readonly unit: string;
  readonly title: string;
  readonly file: string;
  /** Hazard kinds neither declared nor dismissed: nobody has answered for them. */
  readonly notConsidered: readonly string[];
  readonly parts: number;
  readonly massesMissing: number;
  readonly builds: number;
}

/** A kind of figure that nobody gave. */
export interface MissingFigure {
  readonly figure: string;
  /** Names of the things that lack it, one for each thing. */
  readonly of: readonly string[];
  /** What it would let the tool check. */
  readonly wouldCheck: string;
}

export interface UnitUnknowns {
  readonly unit: string;
  readonly title: string;
  readonly file: string;
  readonly figures: readonly MissingFigure[];
}

export interface Surveyed {
  readonly findings: readonly Finding[];
  readonly allows: readonly Allow[];
  readonly units: readonly UnitSummary[];
  /** Files that could not be read, and why. */
  readonly unreadable: readonly { readonly path: string; readonly says: string }[];
  /** Texts by path: every file that was read. */
  readonly texts: ReadonlyMap<string, string>;
  /** How many procedures were performed. */
  readonly procedures: number;
  /** Where it was asked for. */
  readonly unknowns?: readonly UnitUnknowns[];
}

/** What a check says of itself. */
export interface CheckFacts {
  readonly title: string;
  readonly severity: Severity | "off";
  /** Why it matters in the shop: one to three sentences. */
  readonly why: string;
}
