// A made-up rig with one of each kind of joint, stages, ranges and pieces.

export const rig = `
unit rig "Test rig" {
  base frame
  positions upright, on-side
  renew always gasket
  part frame   "Frame"
  part cover   "Cover" { mass 4 kg  caution "Sharp edge." }
  part ring    gasket "Cover gasket" { between cover and frame }
  part hub     "Hub" { fits frame by press-fit  behind cover  mass 2 kg }
  part cap     "Bearing cap" { pieces 1..3  behind cover  dry }
  part drum    "Drum" { mass 40 kg  hangs  behind cover  align by "Arrow to the front." }
  part strainer "Strainer"
  part loom    loom "Control loom"
  fastener cover-bolts bolt "Cover bolts" { count 4  size M8x20  torque 60..100 lb-in (7..11 N·m)  joins cover to frame  with cover-washers }
  part cover-washers gasket "Sealing washers" { count 4 }
  fastener cap-screws screw "Cap screw" { count 2 per cap  size M6x16  drive hex-socket 5  stages 5 N·m, 9 N·m, 90 deg  back-out 1/4 turn until "the slot lines up"  joins cap to frame }
  fastener drum-nut nut "Drum nut" { size M16x1.5-LH  drive hex 24  torque none  joins drum to frame }
  fastener vent plug "Vent plug" { into frame }
  fastener tag-rivets rivet "Plate rivets" { count 2  joins strainer to frame }
  joint plug connector "Loom plug" { joins loom to frame  how "Press the tab." }
  joint joint-face sealant "Strainer face" { joins strainer to frame  bead 3 mm x 640 mm  uses paste }
  joint tie cable-tie "Loom ties" { count 3  joins loom to frame }
  fluid oil oil "Oil" { volume 1.5 L  uses oil-46  drains at vent  fills at vent }
  hazard live electrical danger "Stored charge" {
    on plug, drum-nut  voltage 400 V dc  capacitance 2200 uF  bleeder 47 kohm  role fitter  wear gloves  keep-out 1 m
    precaution isolate "Open the switch." back "Close the switch."
    precaution discharge "Wait." wait 2 min
    precaution prove-dead "Both terminals." at most 12 V dc with tester
  }
}
tool tester "Two-pole tester"
tool hoist "Hoist" { kind hoist  capacity 200 kg }
tool feeler "Feeler gauges"
tool gloves "Insulating gloves"
role fitter "Fitter"
consumable paste "Face sealant" { pack 50 ml }
consumable oil-46 "Oil 46" { pack 1 L }
procedure all-of-it "Take it apart" for rig {
  aim cover, drum, hub, strainer off
  needs "Rig bolted down"
  step "Prove" { isolate live  discharge live  prove-dead live }
  step "Open" {
    drain oil
    undo plug
    undo tie
    undo 2 of cover-bolts
    undo rest of cover-bolts into bag C
    remove cover
    remove ring
  }
  step "Inside" {
    turn to on-side
    mark hub, frame as hub-mark "One line."
    undo cap-screws
    remove cap
    support drum with hoist
    undo drum-nut
    lift drum with hoist by 2 people
    remove hub
    measure gap on hub "Bore" 20.00..20.02 mm at 20 °C with feeler else renew hub
    inspect hub-face on hub "No scratch"
    undo tag-rivets
    remove strainer
    remove loom
  }
  finish { test "Nothing leaks" }
}
`;
