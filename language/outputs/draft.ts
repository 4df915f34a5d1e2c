// Whether a document is a draft, and what it was made from: every page, sheet and file says so by the same rule.

import type { OutputInput } from "./output.ts";
import { sha256 } from "./text/sha256.ts";

export interface Provenance {
  /** Why it is a draft; empty once it is approved and no finding is open. */
  readonly draft: readonly ("not-approved" | "open-findings")[];
  readonly openFindings: number;
  /** SHA-256 over names and texts of all files, sorted by name: 64 hexadecimal digits. */
  readonly hash: string;
}

/** The language has no word yet by which a procedure is approved, so that every document is a draft. */
export function provenanceOf(input: OutputInput): Provenance {
  const texts = [...input.texts].sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
  // Lengths keep two files apart whose texts would run together; folders of one machine are no part of the content.
  const whole = texts
    .map(([path, written]) => {
      const text = written.replace(/^\uFEFF/, "").replace(/\r\n/g, "\n");
      return `${path.slice(path.lastIndexOf("/") + 1)}\n${text.length}\n${text}`;
    })
    .join("\n");
  return {
    draft: input.openFindings > 0 ? ["not-approved", "open-findings"] : ["not-approved"],
    openFindings: input.openFindings,
    hash: sha256(whole),
  };
}
