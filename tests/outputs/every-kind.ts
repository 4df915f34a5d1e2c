// A made-up machine with one of every kind of the tables, so that every word of a kind is printed, in the strip and on the way back.

import {
  drives,
  facingWords,
  fastenerKinds,
  fluidKinds,
  hazardKinds,
  jointKinds,
  partKinds,
  positionWords,
  precautions,
  sequences,
  signals,
  sources,
} from "../../language/tables/index.ts";
import { protectiveEquipment } from "../../language/tables/protective-equipment.ts";
import { hazardFigures } from "../../language/model/read-hazard.ts";

const names = (table: object): string[] => Object.keys(table);
/** One line for each, with the one of the other list whose turn it is. */
const lines = (of: readonly string[], line: (kind: string, i: number) => string): string => of.map(line).join("\n  ");

const figure: Readonly<Record<string, string>> = {
  voltage: "400 V ac",
  capacitance: "1200 uF",
  bleeder: "22 kohm",
  force: "450 N",
  pressure: "6 bar",
  temperature: "80 °C",
  mass: "48 kg",
  flux: "300 mT",
  "keep-out": "2 m",
};

const parts = names(partKinds),
  fasteners = names(fastenerKinds),
  joints = names(jointKinds),
  fluids = names(fluidKinds),
  hazards = names(hazardKinds),
  precaution = names(precautions),
  turns = names(sequences),
  heads = names(drives),
  faces = names(facingWords);

/** Of a mere notice nothing is said of what it can do to people. */
const hurts = names(signals).filter((signal) => signal !== "notice");

/** In turn, beginning again behind the last. */
const at = (list: readonly string[], i: number): string => list[i % list.length]!;

export const everyKind = `
unit u-all "Unit" {
  base u-frame
  positions u-stand, ${names(positionWords).join(", ")}
  part u-frame "Frame" { mass 50 kg }
  ${lines(parts, (kind) => `part u-p-${kind} ${kind} "Part" { mass 1 kg  rests on u-frame }`)}
  ${lines(fasteners, (kind) => `part u-h-${kind} "Host" { mass 1 kg }`)}
  ${lines(fasteners, (kind, i) => `fastener u-f-${kind} ${kind} "Fastener" { count 4  size M8  drive ${at(heads, i)} ${/hex|square|spline/.test(at(heads, i)) ? "13" : ""}  torque 9 N·m  pattern rectangle 100 x 100 mm  sequence ${at(turns, i)}  joins u-h-${kind} to u-frame }`)}
  ${lines(joints, (kind) => `part u-j-${kind} "Joined" { mass 1 kg }  joint u-t-${kind} ${kind} "Joint" { joins u-j-${kind} to u-frame }`)}
  ${lines(fluids, (kind) => `fluid u-l-${kind} ${kind} "Fluid" { volume 1 L  drains at u-f-plug }`)}
  ${lines(
    hazards,
    (kind, i) =>
      `hazard u-z-${kind} ${kind} ${at(hurts, i)} "Hazard" { on u-h-screw  wear ${names(protectiveEquipment)
        .filter((_, k) => k % hazards.length === i)
        .join(", ")} }`,
  )}
  ${lines(names(sources), (source) => `hazard u-s-${source} electrical danger "Source" { on u-h-bolt  source ${source} }`)}
  hazard u-all-of-it electrical danger "All" {
    on u-h-nut  ${hazardFigures.map(([word]) => `${word} ${figure[word] ?? ""}`).join("  ")}
    ${lines(precaution, (kind) => `precaution ${kind} "Do it."`)}
  }
  ${lines(precaution, (kind) => `hazard u-c-${kind} pressure danger "One" { on u-h-stud  precaution ${kind} "Do it." }`)}
}
procedure u-apart "Apart" for u-all {
  aim u-frame off
  step "Before" {
    ${lines(precaution, (kind) => `${kind} u-c-${kind}`)}
    ${lines(names(positionWords), (word) => `turn to ${word}`)}
    turn to u-stand
    ${lines(fluids, (kind) => (kind === "refrigerant" ? `recover u-l-${kind}` : `drain u-l-${kind}`))}
  }
  step "Fasteners" {
    ${lines(fasteners, (kind) => `undo u-f-${kind}\n    remove u-h-${kind}`)}
  }
  step "Joints" {
    ${lines(joints, (kind) => `${(jointKinds as Record<string, { parts: string }>)[kind]!.parts === "undone" ? `undo u-t-${kind}\n    ` : ""}remove u-j-${kind}`)}
  }
  step "Parts" {
    ${lines(parts, (kind) => `remove u-p-${kind}`)}
    refit {
      ${lines(faces, (word, i) => `fit u-p-${at(parts, i)} facing ${word}`)}
      reverse
    }
  }
}
`;
