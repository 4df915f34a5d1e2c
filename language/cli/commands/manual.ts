// The manual for the bench, as one file.

import { isBaseAddress } from "../../outputs/base-address.ts";
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
      name: "base-address",
      value: "ADDRESS",
      about:
        "Where the HTML manual will lie: each step gets a QR code that leads there (none if not said here or in stripdown.json)",
    },
  ],
  settings: (args) => {
    const address = option(args, "base-address");
    if (address === undefined) return {};
    if (!isBaseAddress(address))
      throw new CannotRun(
        `--base-address ${address}: an address as https://manuals.example/winch.html, without #, is due`,
      );
    return { baseAddress: address };
  },
  load: async () => (await import("../../outputs/manual/manual.ts")).manual,
});
