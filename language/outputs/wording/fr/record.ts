// Ce qui est dit des relevés du travail. On lit ce qui a été noté, et rien n'est libéré par là.

import { joined } from "../phrases.ts";
import type { Wording } from "../wording.ts";
import { figures } from "./lines.ts";
import { counted, list, the, titled } from "./phrases.ts";

const limits = (text: string): string => (text === "" ? "" : ` (${titled("limites", text)})`),
  values = (count: number): string => counted(count, "valeur");

export const record: Wording["record"] = {
  checkTitle: "Remarques sur le relevé",
  recordOf: (file, serial) => (serial === "" ? file : `${file}, numéro de série ${serial}`),
  noRemark: "Aucune remarque. Seul le relevé est lu\u00a0; cela ne dit rien de la machine.",
  openTitle: "À traiter",
  toldTitle: "À savoir",
  wantedTitle: "À commander",
  open: "à traiter",
  told: "à savoir",
  checkColumns: [
    "Projet",
    "Fichier",
    "Numéro de série",
    "Procédure",
    "Ligne",
    "Catégorie",
    "Remarque",
    "Ce qui suit",
    "Élément",
    "Demandé",
    "Combien",
    "Pour",
  ],

  figure: (value, unit) =>
    unit === "" ? `${figures.number(String(value))} sans unité` : figures.number(`${value} ${unit}`),
  otherRevision: (own, now) =>
    `Il vient d'une autre révision, ou d'autres fichiers\u00a0: son contenu est ${own}, ici c'est ${now}. Les lignes demandent peut-être autre chose`,
  otherProcedure: (procedure, unit, build) =>
    titled(
      `${procedure} sur ${unit}${build === "" ? "" : `, version ${build}`}`,
      "une telle procédure n'existe pas ici",
    ),
  noLines: (procedure) => titled(procedure, "le relevé n'en contient rien"),
  unknownLine: (line) => `Il n'y a pas de ligne ${line}`,
  unknownItem: (item) => `On ne travaille pas sur ${item} dans cette ligne`,
  unknownReading: (reading) => `Cette ligne n'a pas de mesure ${reading}`,
  notTicked: (line) => titled("Non coché", line),
  countMissing: (name, count) => titled(name, `pas de nombre${count === undefined ? "" : `, ${count} attendus`}`),
  countDiffers: (name, count, due) => titled(name, `compté ${count}, attendu ${due}`),
  torqueMissing: (name, torque) => titled(name, `aucun couple de serrage noté (${torque})`),
  torqueDiffers: (name, set, torque) => titled(name, `réglage à ${set}, la procédure indique ${torque}`),
  torqueUnit: (name, set) => titled(name, `${set} ne peut pas être comparé au couple de serrage de la procédure`),
  torqueNotGiven: (name, set) =>
    titled(name, `réglage à ${set}, la procédure n'indique pas de valeur à laquelle le comparer`),
  readingMissing: (what, text) => titled(what, `pas de mesure${limits(text)}`),
  readingUnit: (what, figure, unit) => titled(what, `${figure} ne peut pas être comparé à des limites en ${unit}`),
  readingOutside: (what, figure, text) => titled(what, `${figure} est hors limites${limits(text)}`),
  readingWasOutside: (what, number, figure, text) =>
    titled(what, `à l'essai ${number}, ${figure}, hors limites${limits(text)}`),
  notAsItShouldBe: (what, number) =>
    titled(what, `pas comme prévu${number === undefined ? "" : ` à l'essai ${number}`}`),
  noConsequence: "La procédure ne dit pas ce qui suit\u00a0: s'arrêter et se renseigner.",
  notSigned: "Non signé",
  troubles: {
    sheared: "Cisaillé",
    "thread-damaged": "Filetage abîmé",
    seized: "Grippé",
    broken: "Cassé",
    missing: "Manquant",
    "wrong-part": "Mauvaise pièce",
    other: "Différent de la description",
  },
  notAsWritten: (what, name, note, done, agreedBy, wanted) =>
    joined(
      [
        name === "" ? what : titled(what, name),
        note,
        done === "" ? "" : titled("fait", done),
        agreedBy === "" ? "" : titled("accord de", agreedBy),
        wanted === "" ? "" : titled("demandé", wanted),
      ],
      "\u00a0; ",
    ),
  notAgreed: (what, name) =>
    titled(`${what}${name === "" ? "" : `, ${the(name)}`}`, "personne n'a donné son accord à ce qui a été fait"),
  notDone: (what, name) =>
    titled(
      `${what}${name === "" ? "" : `, ${the(name)}`}`,
      "ni ce qui a été fait ni qui a donné son accord n'est noté",
    ),

  calibrationOverdue: (name, due, on) => titled(name, `échéance d'étalonnage ${due}, emploi le ${on}`),
  calibrationFollows:
    "Refaire avec un appareil dont l'étalonnage n'est pas échu, et se renseigner sur ce qui a été mesuré avec celui-ci.",
  calibrationNoDay: (name, due) =>
    titled(name, `échéance d'étalonnage ${due}\u00a0; le relevé ne donne aucun jour de mesure à comparer`),
  calibrationNoDate: (name, due) =>
    titled(name, `échéance d'étalonnage «\u00a0${due}\u00a0» n'est pas une date et ne se compare à rien`),
  instrumentUnlisted: (name) =>
    titled(name, "ne figure pas parmi les appareils du relevé\u00a0; rien n'est connu de son étalonnage"),
  wantedLine: (part, count, thing) =>
    joined(
      [
        `${part}${count === undefined ? "" : `, ${counted(count, "pièce")}`}`,
        thing === "" ? "" : titled("pour", thing),
      ],
      ", ",
    ),

  summaryTitle: (count) => `Mesures de ${counted(count, "relevé")}`,
  leftOut: (files) => titled("Laissé de côté, car d'une autre révision", list(files)),
  noReadings: "Les procédures ne demandent aucune mesure.",
  summaryColumns: [
    "Projet",
    "Procédure",
    "Ligne",
    "Mesure",
    "Limites",
    "Unité de mesure",
    "Valeurs",
    "Minimum",
    "Médiane",
    "Maximum",
    "Moyenne",
    "Écart type",
    "Hors limites",
    "Comme prévu",
    "Pas comme prévu",
    "Manque",
  ],
  heads: {
    line: "Ligne",
    reading: "Mesure",
    limits: "Limites",
    unit: "Unité de mesure",
    count: "Valeurs",
    lowest: "Minimum",
    median: "Médiane",
    highest: "Maximum",
    mean: "Moyenne",
    deviation: "Écart type",
    outside: "Hors limites",
    answers: "Comme prévu",
    missing: "Manque",
  },
  spread: (count, lowest, highest, median, unit) =>
    titled(values(count), `de ${lowest} à ${highest} ${unit}, médiane ${median}`),
  meanAndDeviation: (mean, deviation, unit) =>
    `moyenne ${mean} ${unit}${deviation === "" ? "" : `, écart type ${deviation}`}`,
  outsideCount: (count) => `${count} hors limites`,
  answers: (yes, no) => `${yes} comme prévu, ${no} non`,
  missing: (count) => `${counted(count, "relevé")} sans cette mesure`,
  limits: (text) => titled("Limites", text),
  atLeast: "au moins",
  atMost: "au plus",
  plotTitle: (line, what) => `${line} ${what}`,
  plotLegend: (withOutside) =>
    `Chaque anneau est une unité${withOutside ? ", chaque carré plein une unité hors limites" : ""}\u00a0; la flèche est la médiane.`,
  plotAbout: (count, lowest, highest, median, unit, outside, text) =>
    `${values(count)} de ${lowest} à ${highest} ${unit}, médiane ${median}${text === "" ? "" : `, limites ${text}, ${outside} hors limites`}.`,
};
