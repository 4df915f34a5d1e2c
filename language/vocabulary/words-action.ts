// Words of the actions at the bench, as they stand in a step, in a refit block and in `finish`.

import { precautions, type PrecautionName } from "../tables/precautions.ts";
import { core, real, type Entry } from "./entry.ts";

const places = "step refit finish";

export const wordsAction: readonly Entry[] = [
  ...core(places, [
    ["undo", "<some> <manner>", "Fasteners out, joints broken.", `undo 5 of flange-bolts passes 3 into tray A`],
    ["loosen", "<some> [<angle>] <manner>", "Loose, but still in.", `loosen strap-bolts 2 turns`],
    ["back-out", "<some> [<angle>] <manner>", "Stays in its hole, holds nothing.", `back-out setscrew "Flush."`],
    ["remove", "<some> <manner>", "A part off, with all that hangs on it.", `remove cap.3, lever.left with puller`],
    ["lift", "<items> <manner>", "Remove, with a holder.", `lift motor with hoist by 2 people`],
    ["support", "<items> <manner>", "Held from here on.", `support motor with hoist`],
    ["release", "<items> <manner>", "Held no more.", `release motor`],
    ["hold", "<items> <manner>", "Kept from turning.", `hold shaft with strap-wrench`],
    ["slide", "<items> [back | <length>] <manner>", "Moved aside, still attached.", `slide harness 1 in`],
    ["swing", "<items> [back | <angle>] <manner>", "Swung aside, still attached.", `swing door`],
    ["open", "<items> [back] <manner>", "Opened, still attached.", `open box-cover`],
    ["turn", "[to] <name> <manner>", "Another position.", `turn to on-side`],
    ["rotate", "<items> [<angle>] <manner>", "A shaft turned by hand.", `rotate crankshaft "Until the mark is up."`],
    ["drain", "<items> <manner>", "Fluid out.", `drain water into bucket`],
    ["recover", "<items> <manner>", "Fluid caught.", `recover refrigerant with recovery-set`],
    ["cap", "<items> <manner>", "An open line closed.", `cap feed-hose`],
    ["uncap", "<items> <manner>", "The cap taken off again.", `uncap feed-hose`],
    ["fill", "<items> <manner>", "Fluid in; what it is filled at is opened and closed again.", `fill gear-oil`],
    ["bleed", "<items> <manner>", "Air out.", `bleed brake-fluid`],
    ["restore", "<items> <manner>", "The precautions lapse, for a powered test.", `restore bus`],
    ["mark", "<items> as <label> [<string>]", "Match marks.", `mark motor, frame as M1 "Match-mark them."`],
    ["tag", "<items> [as <labels>] [<string>]", "Tags on leads or hoses.", `tag leads as L1, L2, L3`],
    [
      "measure",
      "[<id>] [on <items>] <string> [<any>] <reading>",
      "A reading with a figure.",
      `measure play on shaft "Play" at most 0.2 mm else renew bush`,
    ],
    [
      "inspect",
      "[<items>] [on <items>] <string> <reading>",
      "A look: the good state, passes or fails.",
      `inspect bore on liner "No scores" else renew liner`,
    ],
    [
      "test",
      "[<id>] <string> [<any>] <reading>",
      "A trial of the work.",
      `test "Brake holds" at least 900 N·m with torque-arm`,
    ],
    ["set", "<items> [<string>] [<any>] <reading>", "Brought to a figure.", `set valve "Gap" 0.20 mm with feeler`],
    ["clean", "<items> <manner>", "Clean.", `clean bracket`],
    [
      "apply",
      "<name> to <items> <manner>",
      "Something put on from stores.",
      `apply ring-grease to cover-ring "Lips only."`,
    ],
    ["heat", "<items> to <temperature> <manner>", "Warmed for the next act.", `heat bearing to 80 °C with oven`],
    ["wait", "<time> [<string>]", "Wait.", `wait 5 min`],
    ["renew", "<some> <manner>", "A new one.", `renew filter`],
    ["work", "[<items>] <string> <manner>", "Any other act by hand, in words.", `work crankshaft "Tap it rearward."`],
    [
      "fit",
      "<some> (finger-tight | to <items> | facing <label> | <manner>)*",
      "A part on, a fastener in.",
      `fit ring facing out "Lip towards the pump."`,
    ],
    ["tighten", "<some> [to (<torque> | stage <count>)] <manner>", "To the torque.", `tighten cover-bolts to stage 2`],
    ["video", "[<string>] from <timecode> to <timecode>", "This part of the recording.", `video from 12:04 to 12:40`],
    ["time", "<time>", "How long it takes.", `time 12 min`],
    ["people", "<count>", "How many it takes.", `people 2`],
    ["second-check", "[<string>]", "Somebody else looks, and signs.", `second-check`],
    ["hold-point", "<string>", "Stop here until it is released.", `hold-point "Inspector."`],
  ]),
  ...real(places, [
    ["purge", "<items> <manner>", "Blown through.", `purge refrigerant with nitrogen`],
    ["evacuate", "<items> <manner>", "Pumped out.", `evacuate refrigerant`],
    ["align", "<names> <manner>", "Marks lined up.", `align frame-mark`],
    ["press", "<items> [onto <items>] <manner>", "Moved under force.", `press bearing onto shaft with arbor-press`],
    ["scrap", "<items> <manner>", "Not to be used again.", `scrap drum`],
    ["put", "<name> on <items> [<string>]", "A temporary thing put on.", `put felt on rotor`],
    ["take", "<name> off [<string>]", "A temporary thing taken off.", `take felt off`],
    ["otherwise", "", "When the reading before fails.", `otherwise { }`, "same"],
  ]),
  ...(Object.keys(precautions) as PrecautionName[]).flatMap((name) =>
    core(places, [
      [
        name,
        "<items> <manner>",
        `Precaution: ${precautions[name].about.charAt(0).toLowerCase()}${precautions[name].about.slice(1)}`,
        `${name} start`,
      ],
    ]),
  ),
];
