// Reported by settings-schema.ts: `stripdown.json` gives a severity to a code that is no check.

import { check } from "../check.ts";

export default check({
  code: "settings/unknown-code",
  title: "A severity for a code that is no check",
  severity: "warning",
  why: "A mistyped code changes nothing, and the shop believes that it does.",
  fails: `
    #- stripdown.json
    { "severity": { "fastener/drive-mismach": "error" } }
    #               ^^^^^^^^^^^^^^^^^^^^^^^^ fastener/drive-mismach is no check: did you mean fastener/drive-mismatch?
  `,
  mended: `
    #- stripdown.json
    { "severity": { "fastener/drive-mismatch": "error" } }
  `,
});
