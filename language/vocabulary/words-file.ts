// Words at the top of a file, and those of the blocks that only stand there: tools, consumables, torque tables.

import { core, real, type Entry } from "./entry.ts";

export const wordsFile: readonly Entry[] = [
  ...core("file", [
    ["use", "<string>", "Everything that another file declares.", `use "../workshop/workshop.strip"`],
    ["unit", "<id> [<string>]", "The machine to strip.", `unit pump "Pump" { }`, "unit"],
    ["tool", "<id> [<string>]", "A tool of the workshop.", `tool hoist "Chain hoist" { capacity 250 kg }`, "tool?"],
    ["consumable", "<id> [<string>]", "Something used up.", `consumable grease "Grease" { pack 50 ml }`, "consumable?"],
    [
      "procedure",
      "<id> [<string>] for <name>",
      "How to strip a unit.",
      `procedure strip "Full strip" for pump { }`,
      "procedure",
    ],
  ]),
  ...real("file", [
    ["role", "<id> [<string>]", "Who may do what.", `role electrician "Authorised electrician"`],
    [
      "torque-table",
      "<id> [<string>]",
      "Torque by thread size, for `torque standard`.",
      `torque-table dry { size M6 9 N·m }`,
      "torque-table",
    ],
  ]),
  ...core("file unit", [
    [
      "fastener",
      "<id> [<kind:fastener>] [<string>]",
      "A group of like fasteners; at the top of a file, a type for `like`.",
      `fastener screws "Screws" { count 8 }`,
      "fastener?",
    ],
    [
      "hazard",
      "<id> <kind:hazard> [<kind:signal>] [<string>]",
      "What can hurt, and what stands against it.",
      `hazard bus electrical danger "Drive bus" { }`,
      "hazard?",
    ],
  ]),
  ...real("file unit", [
    ["temporary", "<id> [<string>]", "A thing put on for the work and taken off again.", `temporary felt "Felt sheet"`],
    [
      "warn",
      "<kind:signal> <string> on <items>",
      "Printed before the steps that move or undo these things or kinds.",
      `warn caution "Sharp edge." on shim`,
    ],
  ]),
  ...core("tool", [
    ["kind", "<label>", "What it is.", `kind torque-wrench`],
    ["range", "<any>", "What it can set or read.", `range 5..25 N·m`],
    ["capacity", "<any>", "What it can carry.", `capacity 250 kg`],
    ["count", "<count>", "How many the shop has.", `count 2`],
  ]),
  ...real("tool", [
    ["accuracy", "'±' <share>", "How true it is.", `accuracy ± 4 %`],
    ["calibration", "<string>", "When it was checked.", `calibration "2026-03"`],
    ["legs", "<count>", "Legs of a sling; its capacity is that of one leg, straight.", `legs 2`],
    ["angle", "<angle>", "Of a sling's leg to the horizontal.", `angle 60 deg`],
  ]),
  ...core("consumable", [["pack", "<pack>", "What one pack holds.", `pack 50 ml`]]),
  ...real("consumable", [
    ["shelf-life", "<time>", "How long it keeps.", `shelf-life 24 months`],
    ["hazard", "<name>", "The hazard that it brings.", `hazard solvent`],
    ["lead", "<time>", "Time to get it.", `lead 5 days`],
  ]),
  ...real("torque-table", [["size", "<thread> <torque>", "Torque of one thread size.", `size M6 9 N·m`]]),
];
