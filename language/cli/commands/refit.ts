// The strip and the refit that the bench computes for it.

import { outputCommand } from "../output-command.ts";

export default outputCommand({
  name: "refit",
  summary: "The way back: the refit computed from the strip, with the needs between its acts",
  example: "stripdown refit examples/dairy-pump --as json",
  formats: ["text", "csv", "json"],
  load: async () => (await import("../../outputs/refit/refit.ts")).refit,
});
