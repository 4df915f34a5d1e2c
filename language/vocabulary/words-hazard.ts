// Words of a hazard: where it is, what it measures, and the precautions against it.

import { core, real, type Entry } from "./entry.ts";

export const wordsHazard: readonly Entry[] = [
  ...core("hazard", [
    ["on", "<items>", "What must not be touched while it stands.", `on guard, impeller-nut`],
    ["source", "<kind:source>", "Where it comes from.", `source capacitor`],
    ["voltage", "<voltage>", "Highest voltage.", `voltage 560 V dc`],
    ["pressure", "<pressure>", "Pressure.", `pressure 16 bar`],
    ["temperature", "<temperature>", "Highest or lowest temperature.", `temperature 85 °C`],
    ["mass", "<mass>", "Mass that can fall.", `mass 48 kg`],
    [
      "precaution",
      "<kind:precaution> (behind <items> | <string> | wait <time> | with <name> | <any> | at [least | most] <any> | back <string>)*",
      "What is done against it, in this order.",
      `precaution lock-out "Lock it." back "Take off your own lock."`,
    ],
    ["wear", "<names>", "What to wear.", `wear gloves, face-shield`],
  ]),
  ...real("hazard", [
    ["capacitance", "<capacitance>", "Stored charge.", `capacitance 1200 uF`],
    ["bleeder", "<resistance>", "What discharges it.", `bleeder 22 kohm`],
    ["force", "<force>", "Stored force.", `force 900 N`],
    ["flux", "<flux>", "Flux density.", `flux 300 mT`],
    ["pushes", "<items>", "What flies when it lets go.", `pushes cover`],
    ["keep-out", "<length>", "How far others stay away.", `keep-out 2 m`],
    ["like", "<name>", "All that is said of this one, unless said again.", `like live-bus`],
  ]),
  ...real("hazard procedure", [["role", "<name>", "Who may do it.", `role electrician`]]),
];
