// Words of fasteners and joints, and those that they share with parts.

import { core, real, type Entry } from "./entry.ts";

const whenNew = "(always | when (worn | damaged) | every <count> strips)",
  withIt = "(as-a-set | by pairs)";

export const wordsJoining: readonly Entry[] = [
  ...real("unit part fastener joint", [
    ["pieces", "<span> [own-place]", "Pieces that are told apart.", `pieces 1..5 own-place`],
  ]),
  ...core("part fastener joint", [
    ["count", "(<count> [per <name>] | unknown)", "How many, all alike.", `count 2 per cap`],
    ["behind", "<items>", "Cannot be reached before these are away.", `behind gland-plate`],
    ["needs", "<names>", "Can be worked in these positions only.", `needs on-side`],
    [
      "renew",
      `(${whenNew} [${withIt}] | ${withIt} [${whenNew}])`,
      "When it must be new at refit, and what is renewed with it.",
      `renew when worn by pairs`,
    ],
    ["like", "<name>", "All that is said of this one, unless said again.", `like m6-screw`],
  ]),
  ...real("part fastener joint", [["piece", "<label>", "What is true of one piece only.", `piece 5 { }`, "same"]]),
  ...core("part fastener", [["into", "<item>", "Sits in this one and ties nothing.", `into casing`]]),
  ...core("part fastener consumable", [
    ["part-no", "<string>", "Maker's number.", `part-no "DP2-0117"`],
    ["standard", "<string>", "The standard it is made to.", `standard "ISO 4762"`],
  ]),
  ...core("fastener joint", [
    ["joins", "[each of] <items> to <items>", "The parts that it ties together.", `joins cover, plate to frame`],
  ]),
  ...core("fastener", [
    ["size", "<thread>", "Thread and length.", `size M8x1x35`],
    ["class", "<label>", "Strength class, metric.", `class 8.8`],
    ["grade", "<label>", "Strength grade, inch.", `grade 5`],
    ["drive", "<kind:drive> [<spanner>]", "What the tool grips; a bare figure is mm.", `drive hex 13`],
    [
      "torque",
      "(none | standard <name> | <torque> | <string>) [for (<count> | rest)] [while <string>]",
      "Tightening torque.",
      `torque 52 N·m (38 lb-ft) for 2 while "turning the hub"`,
    ],
    ["passes", "<passes>", "How many passes, or the share of each.", `passes 30 %, 60 %, 100 %`],
    [
      "sequence",
      "(<kind:sequence> | listed <number> (',' <number>)* | <string>)",
      "Order of tightening.",
      `sequence listed 1, 3, 2, 4`,
    ],
    [
      "pattern",
      "(circle <length> | rectangle <plane> | at <plane> (',' <plane>)*)",
      "Where the holes are.",
      `pattern circle 182 mm`,
    ],
    ["with", "[<count>] <name>", "Small parts under each head.", `with 3 spring-washer`],
    ["thread-locker", "<name>", "Thread-locker at refit.", `thread-locker medium`],
    ["lubricant", "<name>", "Thread lubricant at refit.", `lubricant anti-seize`],
  ]),
  ...real("fastener", [
    ["stages", "<stage> (',' <stage>)*", "Torque or angle, stage by stage.", `stages 27 N·m, 68 N·m, 90 deg`],
    [
      "back-out",
      "<angle> [until <string>]",
      "Let back after tightening.",
      `back-out 1/4 turn until "the slot lines up"`,
    ],
    ["reuse", "<count> times", "How often it may be tightened again.", `reuse 3 times`],
    [
      "friction",
      "<figure>",
      "Coefficient of friction in thread and under head, where the maker gives it.",
      `friction 0.14`,
    ],
    ["clamps", "<length>", "Thickness of all that it clamps.", `clamps 24 mm`],
    [
      "tapped",
      "in <kind:tapped>",
      "What its thread is cut in: steel, cast-iron, brass, aluminium, or nut.",
      `tapped in aluminium`,
    ],
  ]),
  ...core("joint", [
    ["how", "<string>", "How it lets go.", `how "Squeeze both tabs."`],
    ["uses", "<names>", "What the refit uses up.", `uses face-sealant`],
  ]),
  ...real("joint", [
    ["force", "<force>", "Force that it holds or takes.", `force 450 N`],
    ["bead", "<length> ['×' <length>]", "Bead of sealant: width, length.", `bead 3 mm x 820 mm`],
    ["opens", "<items>", "The fluids that run out when it is open.", `opens coolant`],
  ]),
];
