// Reported by settings-schema.ts: `stripdown.json` asks to make a finding milder that can only be made stricter.

import { check } from "../check.ts";

export default check({
  code: "settings/only-stricter",
  title: "A finding on a hazard or a lift made milder",
  severity: "warning",
  why: "What can hurt someone is not switched off for a whole project. One place can be allowed, with its reason beside it.",
  fails: `
    #- stripdown.json
    { "severity": { "hazard/not-yet": "hint" } }
    #               ^^^^^^^^^^^^^^^^ hazard/not-yet stays an error: it cannot be made milder
  `,
  mended: `
    #- stripdown.json
    { "severity": { "hazard/no-proof": "error" } }
  `,
});
