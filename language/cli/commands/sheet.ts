// One-page sheets for the bench.

import { CannotRun } from "../command.ts";
import { kindsCommand } from "../kinds-of-output.ts";
import { wholeNumber } from "../output-command.ts";

const formats = ["html", "pdf", "csv", "text", "json"];

export default kindsCommand({
  name: "sheet",
  summary:
    "Sheets for the bench: torque, layout, preparation, isolation, lifting, handover, waiting (for a part), waste, batch (--units)",
  example: "stripdown sheet isolation examples/mooring-winch --to isolation.html",
  options: [{ name: "units", value: "N", about: "How many units a batch has (1 if not said)" }],
  settings: (args) => {
    const units = wholeNumber(args, "units");
    if (units !== undefined && units > 200) throw new CannotRun(`--units ${units}: a batch has at most 200 units`);
    return units === undefined ? {} : { units };
  },
  kinds: {
    torque: { formats, load: async () => (await import("../../outputs/torque-sheet/torque-sheet.ts")).torqueSheet },
    layout: { formats, load: async () => (await import("../../outputs/layout-sheet/layout-sheet.ts")).layoutSheet },
    preparation: { formats, load: async () => (await import("../../outputs/sheet/preparation.ts")).preparationSheet },
    isolation: { formats, load: async () => (await import("../../outputs/sheet/isolation.ts")).isolationSheet },
    lifting: { formats, load: async () => (await import("../../outputs/sheet/lifting.ts")).liftingSheet },
    handover: { formats, load: async () => (await import("../../outputs/sheet/handover.ts")).handoverSheet },
    waiting: { formats, load: async () => (await import("../../outputs/sheet/waiting.ts")).waitingSheet },
    waste: { formats, load: async () => (await import("../../outputs/sheet/waste.ts")).wasteSheet },
    batch: { formats, load: async () => (await import("../../outputs/sheet/batch.ts")).batchSheet },
  },
});
