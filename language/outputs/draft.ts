// Whether a document is a draft, and what it was made from: every page, sheet and file says so by the same rule.

import { isSigned } from "../model/instructions.ts";
import type { OutputInput } from "./output.ts";
import { sha256 } from "./text/sha256.ts";

export interface Provenance {
  /** Why it is a draft; empty once it is approved and no finding is open. */
  readonly draft: readonly ("not-approved" | "open-findings")[];
  readonly openFindings: number;
  /** SHA-256 over names and texts of all files, sorted by name, and over the tasks that are printed alone: 64 hexadecimal digits. */
  readonly hash: string;
}

/** A draft until every procedure that it prints is approved in its present revision and no finding is open. */
export function provenanceOf(input: OutputInput): Provenance {
  const texts = [...input.texts].sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
  // Lengths keep two files apart whose texts would run together; folders of one machine are no part of the content.
  const whole = texts
    .map(([path, written]) => {
      const text = written.replace(/^\uFEFF/, "").replace(/\r\n/g, "\n");
      return `${path.slice(path.lastIndexOf("/") + 1)}\n${text.length}\n${text}`;
    })
    .join("\n");
  // Lines of a task are numbered by themselves: a record made by them is none of the whole.
  const tasks = input.performances.flatMap(({ procedure, task }) => (task ? [`${procedure.id} ${task.id}`] : []));
  return {
    draft: [
      ...(isApproved(input) ? [] : ["not-approved" as const]),
      ...(input.openFindings > 0 ? ["open-findings" as const] : []),
    ],
    openFindings: input.openFindings,
    hash: sha256(tasks.length > 0 ? [whole, ...tasks].join("\n") : whole),
  };
}

/** Those that are done within others are printed with them, so that they count too. */
function isApproved({ performances }: OutputInput): boolean {
  const printed = new Set(
    performances.flatMap(({ procedure, strip, written, finish }) => [
      procedure,
      ...[...strip, ...written, ...finish].map(({ around }) => around.procedure),
    ]),
  );
  return printed.size > 0 && [...printed].every(({ issue, revision }) => isSigned(issue.approved, revision));
}
