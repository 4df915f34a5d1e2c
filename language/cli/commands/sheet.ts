// One-page sheets for the bench.

import { kindsCommand } from "../kinds-of-output.ts";

const formats = ["html", "csv", "text", "json"];

export default kindsCommand({
  name: "sheet",
  summary: "Sheets for the bench: torques to sign (torque), parts in the order they come off (layout)",
  example: "stripdown sheet torque examples/mooring-winch --to torques.html",
  kinds: {
    torque: { formats, load: async () => (await import("../../outputs/torque-sheet/torque-sheet.ts")).torqueSheet },
    layout: { formats, load: async () => (await import("../../outputs/layout-sheet/layout-sheet.ts")).layoutSheet },
  },
});
