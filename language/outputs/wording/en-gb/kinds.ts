// Printed words of the kinds, in British English: the tables are written in it, so they are read as they stand.

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
} from "../../../tables/index.ts";
import { protectiveEquipment } from "../../../tables/protective-equipment.ts";
import { kindsOf, type KindWords } from "../kinds.ts";

export const kindWords: KindWords = {
  plain: { strip: "Remove", refit: "Fit" },
  parts: partKinds,
  fasteners: fastenerKinds,
  joints: jointKinds,
  uses: {
    "pinch clamp": "pinch clamp",
    sealant: "sealant",
    adhesive: "adhesive",
    solder: "solder",
    splice: "splice",
    "cable tie": "cable tie",
    "split pin": "split pin",
    "lock-wire": "lock-wire",
  },
  hazards: hazardKinds,
  hazardFigures: {
    voltage: "voltage",
    capacitance: "capacitance",
    bleeder: "bleeder",
    force: "force",
    pressure: "pressure",
    temperature: "temperature",
    mass: "mass",
    flux: "flux",
  },
  precautions,
  anyPrecaution: "Precaution",
  fluids: fluidKinds,
  sources,
  wear: protectiveEquipment,
  drives,
  sequences,
  positions: positionWords,
  facings: facingWords,
  signals: {
    danger: { word: "DANGER", about: signals.danger.about },
    warning: { word: "WARNING", about: signals.warning.about },
    caution: { word: "CAUTION", about: signals.caution.about },
    notice: { word: "NOTICE", about: signals.notice.about },
  },
};

export const kinds = kindsOf(kindWords);
