// The manual for the bench, as one file.

import { isBaseAddress } from "../../world/base-address.ts";
import { readers } from "../../outputs/manual/sections.ts";
import { CannotRun } from "../command.ts";
import { option } from "../project-run.ts";
import { outputCommand } from "../output-command.ts";

export default outputCommand({
  name: "manual",
  summary:
    "The manual: safety, tools, consumables, strip and refit with torques and record boxes, as one HTML file or as a PDF",
  example: "stripdown manual examples/dairy-pump --to pump.html",
  formats: ["html", "pdf"],
  options: [
    {
      name: "for",
      value: readers.join("|"),
      about: "Whom it is for (technician if not said): others get no papers to fill in",
    },
    {
      name: "base-address",
      value: "ADDRESS",
      about: "Where the HTML manual will lie: each step gets a QR code that leads there",
    },
  ],
  settings: (args) => {
    const asked = option(args, "for"),
      reader = readers.find((each) => each === asked),
      address = option(args, "base-address");
    if (asked !== undefined && reader === undefined)
      throw new CannotRun(`--for ${asked}: it is one of ${readers.join(", ")}`);
    const whom = reader === undefined ? {} : { reader };
    if (address === undefined) return whom;
    if (!isBaseAddress(address))
      throw new CannotRun(
        `--base-address ${address}: an address as https://manuals.example/winch.html, without #, is due`,
      );
    return { ...whom, baseAddress: address };
  },
  load: async () => (await import("../../outputs/manual/manual.ts")).manual,
});
