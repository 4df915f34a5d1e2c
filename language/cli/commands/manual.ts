// The manual for the bench, as one file.

import { outputCommand } from "../output-command.ts";

export default outputCommand({
  name: "manual",
  summary:
    "The manual: safety, tools, consumables, strip and refit with torques and record boxes, as one HTML file or as a PDF",
  example: "stripdown manual examples/dairy-pump --to pump.html",
  formats: ["html", "pdf"],
  load: async () => (await import("../../outputs/manual/manual.ts")).manual,
});
