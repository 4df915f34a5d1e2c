// Made-up machines whose papers hold the sentences that the other machines of the language tests do not: what is not given, what is done
// in part, what is left open, every build, a way back that cannot be worked out.

export const everySentence = `
tool u-puller "Puller"
tool u-hoist "Hoist" { kind hoist }
tool u-wrench "Wrench" { kind torque-wrench  range 5..10 N·m }
tool u-meter "Meter" { calibration "x" }
tool u-bucket "Bucket"
temporary u-sheet "Sheet"
consumable u-paste "Paste" { lead 5 days }
unit u-a "Unit" {
  base u-frame
  positions upright, lying
  renew always o-ring
  variants u-early "Early", u-late "Late"
  option u-heater "Heater"
  part u-frame "Frame" { mass 40 kg }
  part u-lid "Lid"
  part u-door "Door" { mass 3 kg }
  part u-pads "Pads" { count unknown  behind u-lid }
  part u-ring o-ring "Ring" { between u-lid and u-frame }
  part u-shoe "Shoe" { pieces left, right  own-place  renew by pairs  behind u-lid }
  part u-set bearing "Bearings" { count 2  renew as-a-set  behind u-lid  matched with u-shoe.left }
  part u-worn seal "Worn seal" { renew every 1 strips  behind u-lid }
  part u-third seal "Third seal" { renew every 3 strips  behind u-lid }
  part u-once circlip "Once ring" { behind u-lid }
  part u-old gasket "Old gasket" { behind u-lid }
  part u-shim shim "Shims" { count 2  behind u-lid }
  part u-scrap bush "Scrap bush" { behind u-lid }
  part u-drum "Drum" { mass 60 kg  hangs  behind u-lid }
  part u-plate "Plates" { count 2  renew always  behind u-lid }
  part u-rod "Rod"
  if u-late { part u-fan "Fan" { mass 1 kg } }
  fastener u-bolts bolt "Bolts" { count 4  size M8  torque 40 N·m for 2 while "x"  torque 30 N·m for rest  passes 1  joins u-lid to u-frame }
  fastener u-many screw "Screws" { count unknown  size M5  joins u-door to u-frame }
  fastener u-ring-of screw "Ring screws" { count 4  size M5  pattern circle 80 mm  joins u-drum to u-frame }
  fastener u-row screw "Row screws" { count 4  size M6  stages 5 N·m, 9 N·m, 90 deg  reuse 3 times  pattern rectangle 80 x 40 mm  sequence listed 1, 4, 2, 3  joins u-rod to u-frame }
  fastener u-once-more screw "One more" { size M6  torque 9 N·m  reuse 1 times  joins u-shoe.left to u-frame }
  fastener u-plug plug "Plug" { torque 12 N·m  into u-frame }
  joint u-seam sealant "Seam" { joins u-lid to u-frame  bead 3 mm  uses u-paste }
  joint u-union pipe-union "Union" { joins u-rod to u-frame  renew always }
  joint u-clamp pinch-clamp "Clamp" { joins u-rod to u-door }
  fluid u-oil oil "Oil" { drains at u-plug  fills at u-plug }
  fluid u-gas refrigerant "Gas" { volume 1 L  path u-rod }
  hazard u-bus electrical danger "Bus" {
    on u-drum  source capacitor  voltage 560 V dc  capacitance 47 uF  bleeder 22 kohm  bleeder 22 kohm
    precaution isolate "x"  precaution discharge "x"  precaution prove-dead "x" at most 12 V dc with u-meter
  }
  hazard u-bank electrical danger "Bank" {
    on u-shoe  source capacitor  voltage 70 V dc  capacitance 4700 uF  bleeder 22 kohm
    precaution isolate "x"  precaution discharge "x"  precaution prove-dead "x" at most 12 V dc with u-meter
  }
}
procedure u-first "First" for u-a {
  translated from "x"  revision 3  checked "x" "x" of 2  approved "x" "x"
  aim u-lid, u-door off
  starts without u-plate
  starts without 1 of u-bolts
  starts drained u-oil
  starts with isolate u-bus
  leaves finger-tight u-bolts until u-second
  leaves out 1 of u-many "x"
  leaves turned lying
  leaves off u-door
  leaves drained u-oil
  step u-s1 "One" {
    do "x"
    discharge u-bus  prove-dead u-bus
    isolate u-bank  discharge u-bank  prove-dead u-bank
    restore u-bus
    put u-sheet on u-frame
    cap u-union
    drain u-oil into u-bucket
    recover u-gas
    purge u-gas with u-puller
    evacuate u-gas
    swing u-door 90 deg
    slide u-rod 10 mm
    open u-door
    rotate u-drum 90 deg
    swing u-door back
    slide u-rod back
    mark u-lid, u-frame as u-m "x"
    undo u-many
  }
  step u-s2 "Two" {
    loosen u-row 2 turns
    undo u-bolts passes 1
    lift u-lid with u-hoist
    remove u-ring
    remove u-pads
    remove u-shoe.left, u-shoe.right together
    remove u-plate, u-worn, u-third, u-once, u-old, u-scrap
    support u-drum with u-hoist
  }
  step u-s3 "Three" {
    undo u-ring-of
    release u-drum
    undo u-union  undo u-clamp  undo u-row
    remove u-rod
    measure u-gap on u-frame "x" with u-meter as found
    measure u-play on u-frame "x" at most 0.2 mm with u-meter else choose u-shim from standard, 0.10, 0.20 mm
    inspect u-face on u-frame "x" else "x"
    otherwise { note "x"  repeat from u-s3 }
    if u-play fails and u-face fails { remove u-set }
    if u-lid removed { work u-frame "x" }
    unless u-late note "x"
    if u-heater note "x"
    repeat for left, right { if left note "x"  unless left or middle note "x"  unless left and u-late note "x" }
    either { work u-frame "x" } or { work u-frame "x" }
    optional { work u-frame "x" }
    optional "x" { work u-frame "x" }
    remove u-drum
    undo u-bolts
    refit {
      align u-m
      renew u-third
      scrap u-scrap
      reuse u-once "x"
      fit u-old, u-ring
      fit 2 of u-bolts finger-tight
      tighten u-row to stage 2
      reverse
    }
  }
  finish { test "x" 1200 rpm  set u-lid "x" 1 mm with u-meter  press u-lid onto u-frame  measure on u-frame "x"  fill u-oil "x" }
}
procedure u-second "Second" for u-a { about "x" }
unit u-b "Other" {
  base u-foot
  part u-foot "Foot" { mass 4 kg }
  part u-cap "Cap" { mass 1 kg }
  part u-card "Card" { mass 1 kg  rests on u-foot  behind u-cap }
  part u-rings washer "Rings" { count 4  renew always }
  part u-plate gasket "Plates" { count 4  renew always }
  fastener u-cap-bolts bolt "Cap bolts" { count 4  size M20  torque 40 N·m for 2 while "x"  torque 30 N·m for rest  with u-rings  with u-plate  joins u-cap to u-foot }
  part u-tag "Tag" { mass 1 kg }
  part u-pad o-ring "Pad" { renew always  rests on u-foot }
  fastener u-nut nut "Nut" { size M6  joins u-tag to u-foot }
  hazard u-air pressure danger "Air" { on u-cap-bolts  precaution isolate "x"  precaution prove-zero "x" at most 0.1 bar with u-meter }
}
procedure u-clash "Clash" for u-b {
  revision 3  approved "x" "x" of 2
  aim u-card off
  step "One" { isolate u-air  prove-zero u-air  undo u-cap-bolts  remove u-cap  remove u-card  refit { fit u-card after u-cap } }
}
procedure u-no-way-back "No way back" for u-b {
  aim u-cap off
  step "One" { isolate u-air  prove-zero u-air  undo u-cap-bolts  remove u-cap }
  refit by u-nothing
}
procedure u-nothing "Nothing" for u-b { aim all in }
procedure u-open-end "Open end" for u-b {
  aim u-cap off
  video "x.mp4"
  leaves off u-cap
  step "One" { isolate u-air  prove-zero u-air  undo u-cap-bolts  remove u-cap }
}
procedure u-by-hand "By hand" for u-b {
  starts without u-cap
  starts without u-pad
  aim all in
  step "One" { fit u-cap, u-pad  tighten u-cap-bolts  video from 00:01 to 00:02 }
}
`;

/** Nothing is used up by it. */
export const idle = `
unit u-a "Unit" { base u-frame  part u-frame "Frame" { mass 4 kg } }
procedure u-first "First" for u-a { about "x" }
`;

/** Printed in each of its builds. */
export const everyBuild = `
unit u-a "Unit" {
  base u-frame
  variants u-short "Short", u-long "Long"
  part u-frame "Frame" { mass 4 kg }
  part u-cap "Cap" { mass 1 kg }
  part u-bush bush "Bush" { behind u-cap  fits u-frame }
  fastener u-screws screw "Screws" { torque 5 N·m  joins u-cap to u-frame  unless u-long count 4  if u-long { count 6 } }
}
procedure u-first "First" for u-a {
  aim u-cap off
  step u-s "One" {
    undo u-screws
    either { remove u-cap } or { remove u-cap "x" }
    inspect u-bore on u-bush "x" else renew u-bush
    if u-bore fails { remove u-bush }
    measure u-play on u-frame "x" at most 0.2 mm
    otherwise { note "x" }
    measure "x" at most 0.2 mm else "x"
    otherwise { clean u-frame }
    optional { clean u-frame }
    optional "x" { work u-frame "x" }
  }
}
`;
