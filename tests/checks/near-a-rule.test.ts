// Correct work that comes near a rule: nothing is found in it. Each with the slips that the rule is for, one at a time. The machines are made
// up, and what is correct is common practice.

import { expect, test } from "vitest";
import { checkText } from "../support/check-text.ts";

const codes = (text: string): string[] =>
  checkText(text)
    .checked.findings.filter(({ severity }) => severity !== "hint")
    .map(({ code }) => code);

interface Slip {
  readonly instead: string;
  readonly write: string;
  readonly code: string;
}
const slip = (instead: string, write: string, code: string): Slip => ({ instead, write, code });

const work: readonly { readonly what: string; readonly text: string; readonly slips: readonly Slip[] }[] = [
  {
    what: "what is held by something else does not fall: two brackets, one of which stays",
    text: `
unit drive "Drive" {
  base frame
  no pressure "Open."
  part frame "Frame" { mass 200 kg }
  part left "Left bracket" { mass 4 kg }
  part right "Right bracket" { mass 4 kg }
  part motor "Motor" { mass 60 kg }
  fastener left-frame bolt "Left bracket bolts" { count 2  joins left to frame }
  fastener right-frame bolt "Right bracket bolts" { count 2  joins right to frame }
  fastener left-motor bolt "Left motor bolts" { count 2  joins left to motor }
  fastener right-motor bolt "Right motor bolts" { count 2  joins right to motor }
}
procedure left-off "Left bracket off" for drive {
  aim left off
  step "Off" {
    undo left-frame
    undo left-motor
    remove left
  }
}
`,
    slips: [],
  },
  {
    what: "what stands on something does not fall: a motor with a stay, a cable in a tray",
    text: `
unit drive "Drive" {
  base frame
  no pressure "Open."
  part frame "Frame" { mass 200 kg }
  part stay "Stay" { mass 2 kg }
  part motor "Motor" { mass 60 kg  rests on frame }
  part rack "Cable tray" { mass 2 kg }
  part cable cable "Trailing cable" { mass 40 kg }
  fastener stay-frame bolt "Stay bolts" { count 2  joins stay to frame }
  fastener stay-motor bolt "Motor stay bolts" { count 2  joins stay to motor }
  fastener tray-bolts bolt "Tray bolts" { count 2  joins rack to frame }
  joint tie cable-tie "Cable ties" { count 3  joins cable to rack }
  fastener gland bolt "Clamp bolts" { count 2  joins cable to motor }
}
procedure stay-off "Stay off" for drive {
  aim stay off
  step "Off" {
    undo stay-frame
    undo stay-motor
    remove stay
  }
}
procedure tray-off "Tray off" for drive {
  aim rack off
  step "Off" {
    undo tie
    undo tray-bolts
    remove rack
  }
}
`,
    slips: [],
  },
  {
    what: "what rests does not fall, with what is on it",
    text: `
unit tank "Tank" {
  base casing
  no pressure "Open."
  part casing "Casing" { mass 200 kg }
  part lid "Lid" { mass 3 kg  rests on casing }
  part pump "Pump" { mass 30 kg  rests on lid }
  fastener lid-screws screw "Lid screws" { count 6  joins lid to casing }
  fastener pump-screws screw "Pump screws" { count 4  joins pump to lid }
}
tool hoist "Hoist" { kind hoist  capacity 500 kg }
procedure lid-off "Lid off" for tank {
  aim lid off
  step "Off" {
    undo lid-screws
    lift lid with hoist
  }
}
`,
    slips: [slip("mass 3 kg  rests on casing", "mass 3 kg", "sequence/falls")],
  },
  {
    what: "the load taken, or taken off before",
    text: `
unit drive "Drive" {
  base frame
  no pressure "Open."
  part frame "Frame" { mass 200 kg }
  part plate "Adapter plate" { mass 4 kg }
  part motor "Motor" { mass 60 kg }
  part cover "Terminal cover" { mass 1 kg }
  fastener plate-bolts bolt "Plate bolts" { count 4  joins plate to frame }
  fastener motor-bolts bolt "Motor bolts" { count 4  joins motor to plate }
  fastener cover-screws screw "Cover screws" { count 4  joins cover to motor }
}
tool hoist "Hoist" { kind hoist  capacity 500 kg }
procedure one-by-one "One by one" for drive {
  aim plate off
  step "Off" {
    undo cover-screws
    remove cover
    support motor with hoist
    undo motor-bolts
    lift motor with hoist
    undo plate-bolts
    remove plate
  }
}
procedure whole "In one piece" for drive {
  aim plate off
  step "Off" {
    support motor with hoist
    undo plate-bolts
    lift plate with hoist
  }
  step "On the bench" {
    undo motor-bolts
    remove motor
  }
}
`,
    slips: [slip("    support motor with hoist\n    undo plate", "    undo plate", "sequence/falls")],
  },
  {
    what: "a unit as a part weighs what it says, and its cover no more than itself",
    text: `
unit gear "Gear head" {
  base case
  mass 60 kg
  no pressure "Breather."
  part case "Case" { mass 20 kg }
  part cover "Cover" { mass 2 kg }
  part wheel "Wheel" { mass 30 kg  fits case  behind cover }
  fastener cover-screws screw "Cover screws" { count 4  joins cover to case }
}
unit drive "Drive" {
  base frame
  mass 300 kg
  no pressure "Open."
  part frame "Frame" { mass 200 kg }
  part head "Gear head" { is unit gear }
  fastener feet bolt "Foot bolts" { count 4  joins head to frame }
  hazard load overhead danger "Head on the crane" {
    on head  mass 60 kg
    precaution barrier "Rope the place off." back "Clear the rope away."
  }
}
tool hoist "Hoist" { kind hoist  capacity 100 kg }
procedure cover-off "Cover off" for drive {
  aim head.cover off
  step "Off" {
    undo head.cover-screws
    remove head.cover
  }
}
procedure head-off "Head off" for drive {
  aim head off
  step "Off" {
    barrier load
    support head with hoist
    undo feet
    lift head with hoist
  }
  step "Inside" {
    undo head.cover-screws
    remove head.cover
  }
}
`,
    slips: [
      slip("    support head with hoist\n", "", "sequence/falls"),
      slip("    barrier load\n", "", "hazard/not-yet"),
      slip("on head  mass 60 kg", "on head  mass 20 kg", "figure/load-disagrees"),
    ],
  },
  {
    what: "the mass of a weight, rounded; that of a gas is not that of the part",
    text: `
unit skid "Skid" {
  base bed
  no pressure "Open."
  part bed "Bed" { mass 400 kg }
  part tank "Receiver" { mass 45 kg  rests on bed }
  part comp "Compressor" { mass 148 kg  rests on bed }
  part cyl "Cylinder" { pieces left, right  mass 40 kg  rests on bed }
  hazard load overhead danger "Compressor on the crane" {
    on comp  mass 150 kg
    precaution barrier "Rope the place off."  back "Clear the rope away."
  }
  hazard rounding overhead danger "Receiver on the crane" {
    on tank  mass 44 kg
    precaution barrier "Rope the place off."  back "Clear the rope away."
  }
  hazard both overhead danger "Cylinders on the crane" {
    on cyl  mass 40 kg
    precaution barrier "Rope the place off."  back "Clear the rope away."
  }
  hazard gas chemical danger "Refrigerant" {
    on comp  mass 2 kg
    precaution vent "Recover it."
  }
}
`,
    slips: [slip("mass 150 kg", "mass 48 kg", "figure/load-disagrees")],
  },
  {
    what: "stages that go up, and orders that go round",
    text: `
unit head "Head" {
  base block
  no pressure "Open."
  part block "Block"
  part lid "Lid"
  part cap "Cap"
  part hood "Hood"
  part flap "Flap"
  fastener a bolt "Head bolts" { count 4  size M10x80  class 10.9  stages 30 N·m, 60 N·m, 90 deg, 90 deg  sequence listed 1, 3, 2, 4  joins lid to block }
  fastener b bolt "Cap bolts" { count 4  size M10x80  class 8.8  stages 20..25 N·m, 22..28 N·m, 45 N·m  sequence listed 1, 3, 2, 4, 1, 3, 2, 4  joins cap to block }
  fastener c bolt "Hood bolts" { count 4  size M8x20  class 8.8  stages 10 N·m, 10 N·m, 22 N·m  sequence listed 1, 3, 2, 4, 1  joins hood to block }
  fastener d bolt "Flap bolts" { count 4  size M8x20  class 8.8  torque 22 N·m  sequence listed 4, 2, 3, 1  joins flap to block }
}
`,
    slips: [
      slip("stages 30 N·m, 60 N·m, 90 deg", "stages 60 N·m, 90 deg, 30 N·m", "fastener/stages-fall"),
      slip("listed 4, 2, 3, 1", "listed 4, 2, 3, 3", "fastener/sequence-listed"),
    ],
  },
  {
    what: "pieces that go back to their own",
    text: `
unit axle "Axle" {
  base beam
  no pressure "Open."
  part beam "Beam"
  part hub "Hub" { pieces left, right  rests on beam }
  part drum "Drum" { pieces left, right  fits hub }
  part plug "Plug" { pieces 1..2  fits hub.left }
  part seal "Seal" { pieces left, right  fits hub }
}
procedure off "Drums off" for axle {
  aim drum off
  step "Off" {
    remove seal
    remove drum
    remove plug
    refit {
      fit drum.left to hub.left
      fit drum.right to hub.right
      fit seal
      fit plug.1 to hub.left
      fit plug.2 to hub.left
    }
  }
}
`,
    slips: [slip("fit drum.left to hub.left", "fit drum.left to hub.right", "refit/mismatched")],
  },
  {
    what: "guards held by some of their screws, or by nothing that is undone",
    text: `
tool tester "Tester" { kind voltage-tester  range 0..1000 V }
unit box "Box" {
  base foot
  no pressure "Open."
  part foot "Foot"
  part hood guard "Belt guard"
  part net guard "Net"  { fits foot by slide-fit }
  part shaft "Shaft" { rests on foot  behind hood }
  fastener hood-screws screw "Guard screws" { count 4  joins hood to foot }
  hazard mains electrical danger "Mains" {
    on hood-screws, shaft  source mains
    precaution lock-out "Open the isolator, lock it." back "Take the lock off."
    precaution prove-dead "Test." with tester
  }
}
procedure strip "Strip" for box {
  aim none
  step "Open" {
    lock-out mains
    prove-dead mains
    undo 2 of hood-screws
    undo 2 of hood-screws
    remove net
    remove hood
    inspect belt on shaft "No cracks"
    fit hood
    fit 2 of hood-screws
    fit 2 of hood-screws
    fit net
    restore mains
    test "Run it for a minute, no knocking"
  }
}
procedure strip2 "Strip two" for box {
  aim none
  step "Open" {
    lock-out mains
    prove-dead mains
    loosen hood-screws
    inspect belt on shaft "No cracks"
    tighten hood-screws
    restore mains
  }
}
`,
    slips: [
      slip("    fit 2 of hood-screws\n    fit 2 of hood-screws\n", "", "hazard/guard-off"),
      slip("    fit net\n", "", "hazard/guard-off"),
      slip("    tighten hood-screws\n", "    undo hood-screws\n", "hazard/guard-off"),
    ],
  },
  {
    what: "earth and proof behind a guard that goes on again before there is power",
    text: `
tool tester "Tester" { kind voltage-tester  range 0..1000 V }
unit box "Box" {
  base foot
  no pressure "Open."
  part foot "Foot"
  part hood guard "Belt guard"
  part shaft "Shaft" { rests on foot  behind hood }
  part belt "Belt" { fits shaft  behind hood }
  fastener hood-screws screw "Guard screws" { count 4  joins hood to foot }
  fastener terminal screw "Terminal" { joins lead to foot  behind hood }
  part lead cable "Lead"
  hazard mains electrical danger "Mains" {
    on belt, terminal  source mains
    precaution lock-out "Open the isolator, lock it." back "Take the lock off."
    precaution prove-dead behind hood "Test." with tester
    precaution earth behind hood "Earth it." back "Take the earth off."
  }
}
procedure strip "Strip" for box {
  aim belt off
  step "Open" {
    lock-out mains
    undo hood-screws
    remove hood
    prove-dead mains
    earth mains
    remove belt
  }
  finish {
    test "Run it for a minute, no knocking"
  }
}
`,
    slips: [slip("    earth mains\n", "", "hazard/not-yet")],
  },
  {
    what: "a type of hazard says its words, and the hazard its own",
    text: `
hazard charge electrical danger "Charged capacitors" {
  source capacitor
  precaution lock-out "Open the isolator, lock it." back "Take the lock off."
  precaution discharge "Short over 100 ohm." wait 5 min
  precaution prove-dead "Test." with tester
}
tool tester "Tester" { kind voltage-tester  range 0..1000 V }
unit box "Box" {
  base foot
  no pressure "Open."
  part foot "Foot"
  part lid "Lid"
  fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
  hazard bus electrical { like charge  on lid, lid-screws voltage 48 V dc }
}
procedure strip "Strip" for box {
  aim lid off
  step "Open" {
    lock-out bus
    discharge bus
    wait 5 min
    prove-dead bus
    undo lid-screws
    remove lid
  }
}
`,
    slips: [slip("    discharge bus\n", "", "hazard/order")],
  },
  {
    what: "a proof by another instrument that can read it",
    text: `
tool gauge "Gauge" { kind pressure-gauge  range 0..250 bar }
tool small "Small gauge" { kind pressure-gauge  range 0..10 bar }
tool balance "Spring balance" { kind spring-balance  range 0..200 N }
tool meter "Multimeter" { kind multimeter  range 0..600 V }
unit ram "Ram" {
  base barrel
  part barrel "Barrel"
  part gland "Gland"
  part bank "Bank"
  fastener gland-screws screw "Gland screws" { count 4  joins gland to barrel }
  fastener bank-screws screw "Bank screws" { count 4  joins bank to barrel }
  hazard oil pressure danger "Oil pressure" {
    on gland-screws, gland  pressure 160 bar
    precaution shut-down "Stop the pump." back "Start it."
    precaution vent "Open the valve."
    precaution prove-zero "Gauge at zero." with gauge at most 1 bar
  }
  hazard air pressure warning "Air" {
    on bank-screws, bank  pressure 8 bar
    precaution shut-down "Stop the compressor." back "Start it."
    precaution vent "Open the cock."
    precaution prove-zero "Gauge at zero." with small at most 50 mbar
  }
}
procedure strip "Strip" for ram {
  aim gland off
  step "Open" {
    shut-down oil
    vent oil
    prove-zero oil
    undo gland-screws
    remove gland
  }
}
procedure bank-off "Bank off" for ram {
  aim bank off
  step "Open" {
    shut-down air
    vent air
    prove-zero air with gauge
    undo bank-screws
    remove bank
  }
}
`,
    slips: [
      slip("prove-zero oil\n", "prove-zero oil with small\n", "measure/tool-range"),
      slip("air with gauge", "air with meter", "measure/tool-range"),
      slip("small at most 50 mbar", "small at most 1 mbar", "measure/tool-range"),
      slip('" with gauge at most 1 bar', '"', "hazard/no-tester"),
    ],
  },
  {
    what: "what sits on what was taken off can be worked on there",
    text: `
unit tank "Tank" {
  base shell
  no pressure "Open."
  part shell "Shell"
  part plate "Top plate"
  part pump "Pump"
  part strainer "Strainer" { behind plate }
  part cover "Cover"  { behind plate }
  fastener plate-screws screw "Plate screws" { count 8  joins plate to shell }
  fastener pump-screws screw "Pump screws" { count 4  joins pump to plate }
  fastener strainer-screws screw "Strainer screws" { count 2  joins strainer to pump  behind plate }
  fastener cover-screws screw "Cover screws" { count 2  joins cover to pump  behind strainer }
}
procedure strainer-out "Strainer out" for tank {
  aim strainer off
  step "Plate" {
    undo plate-screws
    remove plate
  }
  step "Strainer" {
    undo strainer-screws
    remove strainer
    undo cover-screws
    remove cover
  }
}
`,
    slips: [slip("    undo plate-screws\n    remove plate\n", "", "sequence/blocked")],
  },
];

test.each(work)("$what", ({ text, slips }) => {
  expect(codes(text)).toEqual([]);
  for (const { instead, write, code } of slips) {
    expect(text).toContain(instead);
    expect(codes(text.replace(instead, write)), write).toContain(code);
  }
});
