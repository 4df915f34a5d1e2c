// Words of a unit, and those of the parts and fluids in it.

import { core, real, type Entry } from "./entry.ts";

export const wordsUnit: readonly Entry[] = [
  ...core("unit", [
    ["mass", "<mass>", "Mass of the whole.", `mass 240 kg`],
    ["positions", "<ids>", "How it can lie on the stand; the first is how it arrives.", `positions on-feet, on-side`],
    ["base", "<names>", "What stays on the stand.", `base bracket`],
    ["renew", "always <names>", "The shop's standing rule for kinds of part.", `renew always gasket, o-ring`],
    ["no", "<kind:hazard> <string>", "A hazard that is not there, and why.", `no pressure "Open to air."`],
    ["part", "<id> [<kind:part>] [<string>]", "A part.", `part ring o-ring "Ring" { mass 3 g }`, "part?"],
    [
      "joint",
      "<id> <kind:joint> [<string>]",
      "A joint that is no fastener.",
      `joint lead connector "Lead" { joins loom to motor }`,
      "joint?",
    ],
    [
      "fluid",
      "<id> [<kind:fluid>] [<string>]",
      "A fluid aboard.",
      `fluid sump-oil oil "Oil" { volume 4.2 L }`,
      "fluid?",
    ],
  ]),
  ...real("unit", [
    ["torque", "standard (<name> | <string>)", "Torque of every fastener here that names none.", `torque standard dry`],
    [
      "variants",
      "<variant> (',' <variant>)*",
      "Builds, of which it is exactly one.",
      `variants early "before 1990", late`,
    ],
    ["option", "<id> [<string>]", "Something fitted or not.", `option heater "Cabinet heater"`],
    ["maker", "<string> [<string>]", "Who made it, and the address.", `maker "Invented Winches" "Quay 4, Porthaven"`],
    ["serial", "<string>", "The serial numbers that this is about.", `serial "0417 to 0980"`],
    ["intended-use", "<string>", "What it is for.", `intended-use "Hauling mooring ropes."`],
    ["wrong-use", "<string>", "What people do with it that they must not.", `wrong-use "Lifting loads or people."`],
  ]),
  ...real("unit procedure", [
    [
      "mishap",
      "<string> <string>",
      "What may go wrong, and what is done then.",
      `mishap "Oil is spilled" "Stop. Bind it, keep it out of drains."`,
    ],
    ["waste", "<string> <string>", "What is left over, and where it goes.", `waste "Old seals" "Oily waste, drum 3."`],
  ]),
  ...real("unit refit", [
    ["order", "<items> <place>", "Where a step, or all of a part, comes in the refit.", `order brake before motor-out`],
  ]),
  ...core("part", [
    ["mass", "<mass>", "Mass of one.", `mass 3.1 kg`],
    ["size", "(<thread> | <plane>)", "Main dimensions.", `size 183.82 x 2.62 mm`],
    [
      "fits",
      "<items> [by <kind:joint>]",
      "Is held by this one; the joint lets go in passing.",
      `fits hub by press-fit`,
    ],
    ["rests", "on <items>", "Lies on these by its weight.", `rests on bracket`],
    [
      "matched",
      "with <items>",
      "Of one set with these: kept together, back together, and one set where it is renewed as a set.",
      `matched with race`,
    ],
    ["between", "<item> and <item>", "Lies in the joint of these two.", `between casing and bracket`],
    ["hangs", "", "Falls when its last tie goes.", `hangs`],
    [
      "lift",
      "(by <count> people | with <name>)*",
      "How to lift it, where no mass is known.",
      `lift by 2 people with hoist`,
    ],
  ]),
  ...real("part", [
    ["supply", "<voltage>", "What feeds it.", `supply 400 V ac`],
    [
      "is",
      "unit <name>",
      "The part is a unit of its own; what is inside is named by it, `gearbox.lid`.",
      `is unit g4-gearbox`,
    ],
    ["align", "by <string>", "How it is lined up without a mark.", `align by "Arrow to the front."`],
    ["dry", "", "Fitted without grease or sealant.", `dry`],
    ["groove", "<length>", "Depth of the groove that an O-ring lies in.", `groove 2.1 mm`],
    ["reach", "<length>", "How far from the body it is lifted.", `reach 400 mm`],
  ]),
  ...core("fluid", [
    ["volume", "<volume>", "How much is aboard.", `volume 4.2 L`],
    ["drains", "at <items>", "Where it is let out.", `drains at drain-plug`],
    ["fills", "at <items>", "Where it is filled.", `fills at filler-plug`],
    ["uses", "<name>", "What it is filled with.", `uses oil-vg220`],
  ]),
  ...real("fluid", [
    ["amount", "<any>", "How much is aboard, by mass.", `amount 600 g`],
    ["bleeds", "at <items>", "Where air is let out.", `bleeds at bleed-screw`],
    ["recover", "[with <name>]", "Must be caught, not let go.", `recover with recovery-set`],
    ["path", "<items>", "The parts it runs through.", `path sump, pump, sump`],
  ]),
];
