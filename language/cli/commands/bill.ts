// What the procedures use up and fit new.

import { outputCommand, wholeNumber } from "../output-command.ts";

export default outputCommand({
  name: "bill",
  summary: "Consumables and spares that the procedures use, for so many units, in whole packs",
  example: "stripdown bill examples/dairy-pump --units 12 --as csv",
  formats: ["text", "csv", "json"],
  options: [{ name: "units", value: "N", about: "How many units are stripped and refitted (1 if not said)" }],
  load: async () => (await import("../../outputs/bill/bill.ts")).bill,
  settings: (args) => {
    const units = wholeNumber(args, "units");
    return units === undefined ? {} : { units };
  },
});
