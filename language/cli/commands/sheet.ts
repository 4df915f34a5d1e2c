// One-page sheets for the bench.

import type { Output } from "../../outputs/output.ts";
import { CannotRun } from "../command.ts";
import { kindsCommand } from "../kinds-of-output.ts";
import { wholeNumber } from "../output-command.ts";
import { option } from "../project-run.ts";
import { asRecorded, readRecords } from "../record-files.ts";

const formats = ["html", "pdf", "csv", "text", "json"];

export default kindsCommand({
  name: "sheet",
  summary:
    "Sheets for the bench: torque, layout, preparation, isolation, lifting, handover, waiting (for a part), waste, batch (--units), refit-book (--record)",
  example: "stripdown sheet isolation examples/mooring-winch --to isolation.html",
  options: [
    { name: "units", value: "N", about: "How many units a batch has (1 if not said)" },
    { name: "record", value: "RECORD.json", about: "The saved record of the strip that a refit-book is fed by" },
  ],
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
    "refit-book": {
      formats,
      load: () => {
        throw new Error("a book is made of a record that is read first");
      },
      fed: {
        options: ["record"],
        by: async (args, io) => {
          const file = option(args, "record");
          if (file === undefined)
            throw new CannotRun(
              "sheet refit-book: of which record? --record RECORD.json names the file that the manual on a tablet saved",
            );
          const [read] = await readRecords([file], io);
          return {
            args: asRecorded(args, [read!]),
            load: async () =>
              (await import("../../outputs/refit-book/refit-book.ts")).refitBook(read!) as Output<unknown>,
          };
        },
      },
    },
  },
});
