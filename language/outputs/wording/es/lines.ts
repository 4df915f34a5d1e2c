// Títulos y palabras menores alrededor de las líneas impresas, cifras y unidades.

import { figureIn, sentence } from "../phrases.ts";
import type { Wording } from "../wording.ts";
import { the, titled } from "./phrases.ts";

export const lines: Wording["lines"] = {
  step: (number) => `Paso ${number}`,
  stepNamed: (number, title) => `paso ${number}, ${title}`,
  pieces: (title, pieces) => `${title} (${pieces.join(", ")})`,
  only: (says, what) => `${says} (${what})`,
  continued: (title) => `${title} (continuación)`,
  outsideSteps: "Fuera de los pasos",
  refitOf: (number, title) => titled(`Montaje del paso ${number}`, title),
  refitOutside: "Fuera de los pasos",
  finish: "Pruebas finales",
  withTool: (tool) => sentence(titled("Con", the(tool))),
  withConsumable: (name) => sentence(titled("Con", the(name))),
  intoContainer: (container) => sentence(`En ${container}`),
  sequence: (text) => sentence(titled("Orden", text)),
};

export const figures: Wording["figures"] = {
  number: figureIn(",", {
    turn: "vuelta",
    turns: "vueltas",
    day: "día",
    days: "días",
    month: "mes",
    months: "meses",
    year: "año",
    years: "años",
    rpm: "r/min",
    ohm: "Ω",
    kohm: "kΩ",
    Mohm: "MΩ",
    uF: "µF",
    deg: "°",
    "V dc": "V CC",
    "V ac": "V CA",
  }),
  plusMinus: (percent) => `± ${percent} %`,
  share: (percent) => `${percent} %`,
  seconds: (n) => `${n} s`,
  minutes: (n) => `${n} min`,
  hours: (n) => `${String(n).replace(".", ",")} h`,
};
