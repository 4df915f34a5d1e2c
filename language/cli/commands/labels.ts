// Labels for the bags and trays that the procedures fill.

import { labelGrid } from "../label-grid.ts";
import { outputCommand } from "../output-command.ts";

export default outputCommand({
  name: "labels",
  summary: "Labels for bags and trays: what is in them, how many, of what size, from which step",
  example: "stripdown labels examples/mooring-winch --grid 3x8 --label 70x36 --to labels.html",
  formats: ["html", "pdf", "csv", "json"],
  options: [
    { name: "grid", value: "COLUMNSxROWS", about: "Labels on a page, across and down: 3x8 if not said" },
    {
      name: "label",
      value: "WIDTHxHEIGHT",
      about: "Size of a label in mm, as 70x36, or with its unit, as 2.625x1in; as large as fits the page if not said",
    },
    { name: "gap", value: "ACROSSxDOWN", about: "Between two labels, in mm or with its unit: 0x0 if not said" },
    { name: "page", value: "A4|Letter", about: "The paper: A4 if not said" },
  ],
  paper: false,
  load: async () => (await import("../../outputs/labels/labels.ts")).labels,
  settings: (args) => ({ labelGrid: labelGrid(args) }),
});
