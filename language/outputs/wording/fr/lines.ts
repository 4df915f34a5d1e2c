// Titres et petits mots autour des lignes imprimées, chiffres et unités.

import { figureIn, sentence } from "../phrases.ts";
import type { Wording } from "../wording.ts";
import { the, titled } from "./phrases.ts";

export const lines: Wording["lines"] = {
  step: (number) => `Étape ${number}`,
  stepNamed: (number, title) => `étape ${number}, ${title}`,
  pieces: (title, pieces) => `${title} (${pieces.join(", ")})`,
  only: (says, what) => `${says} (${what})`,
  continued: (title) => `${title} (suite)`,
  outsideSteps: "Hors des étapes",
  refitOf: (number, title) => titled(`Remontage de l'étape ${number}`, title),
  refitOutside: "Hors des étapes",
  finish: "Essais finaux",
  withTool: (tool) => sentence(titled("Avec", the(tool))),
  withConsumable: (name) => sentence(titled("Avec", the(name))),
  intoContainer: (container) => sentence(`Dans ${container}`),
  sequence: (text) => sentence(titled("Ordre", text)),
};

export const figures: Wording["figures"] = {
  number: figureIn(",", {
    turn: "tour",
    turns: "tours",
    day: "jour",
    days: "jours",
    month: "mois",
    months: "mois",
    year: "an",
    years: "ans",
    rpm: "tr/min",
    ohm: "Ω",
    kohm: "kΩ",
    Mohm: "MΩ",
    uF: "µF",
    deg: "°",
    "V dc": "V CC",
    "V ac": "V CA",
  }),
  plusMinus: (percent) => `± ${percent}\u00a0%`,
  share: (percent) => `${percent}\u00a0%`,
  seconds: (n) => `${n} s`,
  minutes: (n) => `${n} min`,
  hours: (n) => `${String(n).replace(".", ",")} h`,
};
