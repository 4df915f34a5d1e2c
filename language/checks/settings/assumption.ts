// Reported by settings-schema.ts: `stripdown.json` sets an assumption that no figure has, or a value that none can rest on.

import { check } from "../check.ts";

export default check({
  code: "settings/assumption",
  title: "An assumption that the figures cannot take",
  severity: "warning",
  why: "A mistyped assumption is silently the default, and every torque in the project rests on it.",
  fails: `
    #- stripdown.json
    { "assumptions": { "friction-thread": 9 } }
    #                  ^^^^^^^^^^^^^^^^^ friction-thread is a number from 0.04 to 0.4, not 9
  `,
  mended: `
    #- stripdown.json
    { "assumptions": { "friction-thread": 0.14 } }
  `,
});
