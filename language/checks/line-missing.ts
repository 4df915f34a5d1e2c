// A line that is missing, and what it would have spoken of: what no line speaks of any more, and an allow that has nothing left to
// silence, are said of a whole text alone.

import type { Finding } from "../findings/finding.ts";

/** Errors at the bench, in a hazard or in a block whose head is gone: each may be a line that is missing. */
export const mayMissALine = ({ code, severity }: Pick<Finding, "code" | "severity">): boolean =>
  severity === "error" && /^(?:sequence|removal|refit|hazard|syntax)\//.test(code);
