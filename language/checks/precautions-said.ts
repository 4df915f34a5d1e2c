// Kinds of precautions in a sentence of a finding.

import { listed } from "./bench-check.ts";

/** "isolate, lock-out and its precaution written other": the word of the open kind says nothing by itself. */
export const precautionsSaid = (kinds: readonly string[]): string =>
  listed(kinds.map((kind) => (kind === "other" ? "the precaution written other" : kind)));
