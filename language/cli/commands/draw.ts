// Drawings of what the procedures say.

import { wholeNumber } from "../output-command.ts";
import { kindsCommand } from "../kinds-of-output.ts";

const formats = ["svg", "html", "json"];

export default kindsCommand({
  name: "draw",
  summary: "Drawings: what comes off before what (strip), tightening patterns (pattern), ways of the fluids (path)",
  example: "stripdown draw strip examples/dairy-pump --to pump.svg",
  kinds: {
    strip: { formats, load: async () => (await import("../../outputs/draw/draw.ts")).stripDiagram },
    pattern: { formats, load: async () => (await import("../../outputs/draw/draw.ts")).patternDrawings },
    path: { formats, load: async () => (await import("../../outputs/draw/draw.ts")).pathDrawings },
  },
  options: [{ name: "sheet", value: "N", about: "The N-th drawing alone; all if not said" }],
  settings: (args) => {
    const sheet = wholeNumber(args, "sheet");
    return sheet === undefined ? {} : { sheet };
  },
});
