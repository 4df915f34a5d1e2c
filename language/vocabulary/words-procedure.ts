// Words of a procedure: what it is for, what it starts and ends with, and what orders its steps.

import { core, real, type Entry } from "./entry.ts";

export const wordsProcedure: readonly Entry[] = [
  ...core("procedure", [
    [
      "aim",
      "(all (apart | in) | none | <items> (off | apart)) [except <items>]",
      "What is off or apart at the end.",
      `aim pack, motor off`,
    ],
    ["crew", "<count>", "How many work on it.", `crew 2`],
    ["video", "<string>", "The recording.", `video "films/seal.mp4"`],
    ["finish", "", "What is done after refitting.", `finish { }`, "finish"],
  ]),
  ...real("procedure", [
    [
      "needs",
      "(<names> | <string>) [then <string>]",
      "What must have been done before.",
      `needs "Engine on the stand"`,
    ],
    [
      "starts",
      "(without <some> | drained <items> | with <kind:precaution> <item> | on bench)",
      "What is not as usual at the start.",
      `starts without 1 of cover-bolts`,
    ],
    [
      "leaves",
      "(out <some> | finger-tight <some> | off <items> | drained <items> | turned <name>) [<string>] [until <name>]",
      "What is not as it was at the end.",
      `leaves finger-tight strap-bolts until ignition-refit`,
    ],
    [
      "task",
      "<id> [<string>] does <names>",
      "Some of the steps, done alone.",
      `task seal-only "Change the seal only" does make-dead, brake`,
    ],
  ]),
  ...real("procedure", [
    ["author", "<string> [<string>]", "Who wrote it, and the address.", `author "Winch workshop" "Quay 4, Porthaven"`],
    ["date", "<string>", "When this issue was made.", `date "2026-11-20"`],
    ["original", "", "Original instructions, no translation.", `original`],
    ["translated", "from <string>", "A translation, and of what.", `translated from "the German issue of 2026-03"`],
    ["prepared", "<string> <string> [of <label>]", "Who made it ready, and when.", `prepared "N. N." "2026-11-20"`],
    ["checked", "<string> <string> [of <label>]", "Who has checked it, and when.", `checked "N. N." "2026-11-21"`],
    [
      "approved",
      "<string> <string> [of <label>]",
      "Who answers for it, when, and for which revision. Until then every output is a draft.",
      `approved "N. N." "2026-11-22" of C`,
    ],
  ]),
  ...core("procedure refit", [["step", "[<id>] [<string>]", "One step.", `step "Take the brake off" { }`, "step"]]),
  ...core("procedure step", [
    ["refit", "[by <name>]", "What the refit does beyond, or other than, the reverse.", `refit { }`, "refit?"],
  ]),
  ...real("procedure refit", [["base", "<name>", "Built up on this part.", `base gearbox-case`]]),
  ...core("procedure step refit finish", [
    [
      "do",
      "(<name> [on <item>] | <string>) [<place>]",
      "Another procedure, a step again, or a plain act in words.",
      `do g4-strip on gearbox`,
    ],
    ["note", "<string>", "For the reader.", `note "The second nut is hidden."`],
  ]),
  ...real("procedure step refit finish", [
    [
      "repeat",
      "(for <span> | from <name>)",
      "The same for each of these pieces; or back to a step.",
      `repeat for left, right { }`,
      "same?",
    ],
    ["optional", "[<string>]", "Done or not, as found.", `optional "if required" { }`, "same"],
    ["either", "", "A free choice, with the `or` blocks that follow.", `either { }`, "same"],
    ["or", "", "The other choice.", `or { }`, "same"],
  ]),
  ...core("refit", [["reverse", "", "The computed reverse stands here.", `reverse`]]),
  ...real("refit", [["instead", "", "Written here, not computed.", `instead { }`, "refit"]]),
  ...real("step refit", [
    ["reuse", "<items> [<string>]", "The old one goes back, and why.", `reuse gasket-b "Moulded rim, no set."`],
  ]),
];
