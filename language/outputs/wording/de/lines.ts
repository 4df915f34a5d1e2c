// Überschriften und kleine Wörter um die gedruckten Zeilen, Zahlen und Einheiten.

import type { Wording } from "../wording.ts";
import { figureIn, sentence } from "../phrases.ts";

export const lines: Wording["lines"] = {
  step: (number) => `Schritt ${number}`,
  stepNamed: (number, title) => `Schritt ${number}, ${title}`,
  pieces: (title, pieces) => `${title} (${pieces.join(", ")})`,
  only: (says, what) => `${says} (${what})`,
  continued: (title) => `${title} (Fortsetzung)`,
  outsideSteps: "Außerhalb der Schritte",
  refitOf: (number, title) => `Zusammenbau zu Schritt ${number}: ${title}`,
  refitOutside: "Außerhalb der Schritte",
  finish: "Schlussprüfungen",
  withTool: (tool) => sentence(`Mit: ${tool}`),
  withConsumable: (name) => sentence(`Mit: ${name}`),
  intoContainer: (container) => sentence(`In ${container}`),
  sequence: (text) => sentence(`Reihenfolge: ${text}`),
};

export const figures: Wording["figures"] = {
  number: figureIn(",", {
    turn: "Umdrehung",
    turns: "Umdrehungen",
    day: "Tag",
    days: "Tage",
    month: "Monat",
    months: "Monate",
    year: "Jahr",
    years: "Jahre",
    rpm: "min⁻¹",
    ohm: "Ω",
    kohm: "kΩ",
    Mohm: "MΩ",
    uF: "µF",
    deg: "°",
    "V dc": "V DC",
    "V ac": "V AC",
  }),
  plusMinus: (percent) => `± ${percent} %`,
  share: (percent) => `${percent} %`,
  seconds: (n) => `${n} s`,
  minutes: (n) => `${n} min`,
  hours: (n) => `${String(n).replace(".", ",")} h`,
};
