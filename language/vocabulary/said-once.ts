// Words of which a declaration has one: a second line of the same word in the same build contradicts the first, or repeats it.
// A list (behind, joins, on, wear), a message or a precaution may stand as often as there is something to say.

const named = ["about", "part-no", "standard"];

/** By the word of the declaration. */
export const saidOnce: ReadonlyMap<string, ReadonlySet<string>> = new Map(
  Object.entries({
    unit: ["mass", "revision", "about", "serial"],
    part: ["mass", "size", "count", "supply", "align", "groove", "reach", "is", ...named],
    fastener: [
      "count",
      "size",
      "class",
      "grade",
      "drive",
      "torque",
      "passes",
      "sequence",
      "pattern",
      "stages",
      "back-out",
      "thread-locker",
      "lubricant",
      "reuse",
      "friction",
      "clamps",
      "tapped",
      ...named,
    ],
    joint: ["how", "force", "bead", "count", "about"],
    fluid: ["volume", "amount", "uses", "about"],
    hazard: [
      "source",
      "voltage",
      "capacitance",
      "bleeder",
      "force",
      "pressure",
      "temperature",
      "mass",
      "flux",
      "keep-out",
      "about",
    ],
    tool: ["kind", "range", "capacity", "accuracy", "count", "calibration", "legs", "angle"],
    consumable: ["pack", "shelf-life", "lead", ...named],
    procedure: ["crew", "revision", "date"],
  }).map(([word, words]) => [word, new Set(words)]),
);
