// The whole model for other programs.

import { outputCommand } from "../output-command.ts";

export default outputCommand({
  name: "export",
  summary: "The whole model as JSON: parts, fasteners, torques in both systems, tools, strip and refit",
  example: "stripdown export examples/dairy-pump --to pump.json",
  formats: ["json"],
  load: async () => (await import("../../outputs/export/export.ts")).modelExport,
});
