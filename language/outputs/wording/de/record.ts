// Was über Aufzeichnungen der Arbeit gesagt wird. Es liest, was aufgeschrieben wurde, und gibt nichts frei.

import type { Wording } from "../wording.ts";
import { joined } from "../phrases.ts";
import { counted, list } from "./phrases.ts";
import { figures } from "./lines.ts";

const limits = (text: string): string => (text === "" ? "" : ` (Grenzen: ${text})`),
  values = (count: number): string => counted(count, "Wert", "Werte");

export const record: Wording["record"] = {
  checkTitle: "Anmerkungen zur Aufzeichnung",
  recordOf: (file, serial) => (serial === "" ? file : `${file}, Seriennummer ${serial}`),
  noRemark: "Keine Anmerkung. Gelesen wird nur die Aufzeichnung; über die Maschine sagt das nichts.",
  openTitle: "Zu klären",
  toldTitle: "Zur Kenntnis",
  wantedTitle: "Zu bestellen",
  open: "zu klären",
  told: "zur Kenntnis",
  checkColumns: [
    "Entwurf",
    "Datei",
    "Seriennummer",
    "Anleitung",
    "Zeile",
    "Einstufung",
    "Anmerkung",
    "Was folgt",
    "Gegenstand",
    "Gewünscht",
    "Wie viele",
    "Für",
  ],

  figure: (value, unit) =>
    unit === "" ? `${figures.number(String(value))} ohne Einheit` : figures.number(`${value} ${unit}`),
  otherRevision: (own, now) =>
    `Sie stammt von einem anderen Stand oder aus anderen Dateien: Ihr Inhalt ist ${own}, hier ist er ${now}. Die Zeilen verlangen vielleicht anderes`,
  otherProcedure: (procedure, unit, build) =>
    `${procedure} an ${unit}${build === "" ? "" : `, Ausführung ${build}`}: Eine solche Anleitung gibt es hier nicht`,
  noLines: (procedure) => `${procedure}: Die Aufzeichnung enthält nichts davon`,
  unknownLine: (line) => `Eine Zeile ${line} gibt es nicht`,
  unknownItem: (item) => `An ${item} wird in dieser Zeile nicht gearbeitet`,
  unknownReading: (reading) => `Diese Zeile hat keinen Messwert ${reading}`,
  notTicked: (line) => `Nicht abgehakt: ${line}`,
  countMissing: (name, count) => `${name}: keine Anzahl${count === undefined ? "" : `, ${count} verlangt`}`,
  countDiffers: (name, count, due) => `${name}: ${count} gezählt, ${due} verlangt`,
  torqueMissing: (name, torque) => `${name}: kein Anziehdrehmoment aufgeschrieben (${torque})`,
  torqueDiffers: (name, set, torque) => `${name}: eingestellt auf ${set}, die Anleitung gibt ${torque} an`,
  torqueUnit: (name, set) => `${name}: ${set} lässt sich nicht mit dem Anziehdrehmoment der Anleitung vergleichen`,
  torqueNotGiven: (name, set) => `${name}: eingestellt auf ${set}, die Anleitung gibt keinen Wert zum Vergleich an`,
  readingMissing: (what, text) => `${what}: kein Messwert${limits(text)}`,
  readingUnit: (what, figure, unit) => `${what}: ${figure} lässt sich nicht mit Grenzen in ${unit} vergleichen`,
  readingOutside: (what, figure, text) => `${what}: ${figure} liegt außerhalb der Grenzen${limits(text)}`,
  readingWasOutside: (what, number, figure, text) =>
    `${what}: Versuch ${number} ergab ${figure}, außerhalb der Grenzen${limits(text)}`,
  notAsItShouldBe: (what, number) =>
    `${what}: nicht wie vorgesehen${number === undefined ? "" : `, bei Versuch ${number}`}`,
  noConsequence: "Die Anleitung sagt nicht, was folgt: anhalten und nachfragen.",
  notSigned: "Nicht unterschrieben",
  troubles: {
    sheared: "Abgeschert",
    "thread-damaged": "Gewinde beschädigt",
    seized: "Festgefressen",
    broken: "Gebrochen",
    missing: "Fehlt",
    "wrong-part": "Falsches Teil",
    other: "Nicht wie beschrieben",
  },
  notAsWritten: (what, name, note, done, agreedBy, wanted) =>
    joined(
      [
        `${what}${name === "" ? "" : `: ${name}`}`,
        note,
        done === "" ? "" : `getan: ${done}`,
        agreedBy === "" ? "" : `Zustimmung: ${agreedBy}`,
        wanted === "" ? "" : `gewünscht: ${wanted}`,
      ],
      "; ",
    ),
  notAgreed: (what, name) => `${what}${name === "" ? "" : `, ${name}`}: Niemand hat dem zugestimmt, was getan wurde`,
  notDone: (what, name) =>
    `${what}${name === "" ? "" : `, ${name}`}: Weder was getan wurde noch wer zugestimmt hat, ist aufgeschrieben`,

  calibrationOverdue: (name, due, on) => `${name}: Kalibrierung fällig ${due}, benutzt am ${on}`,
  calibrationFollows:
    "Mit einem Gerät wiederholen, dessen Kalibrierung nicht überfällig ist, und nach dem fragen, was mit diesem gemessen wurde.",
  calibrationNoDay: (name, due) =>
    `${name}: Kalibrierung fällig ${due}; die Aufzeichnung nennt keinen Tag der Messung zum Vergleich`,
  calibrationNoDate: (name, due) =>
    `${name}: Kalibrierung fällig „${due}“ ist kein Datum und lässt sich nicht vergleichen`,
  instrumentUnlisted: (name) =>
    `${name}: nicht unter den Geräten, die die Aufzeichnung nennt; über die Kalibrierung ist nichts bekannt`,
  wantedLine: (part, count, thing) =>
    joined([`${part}${count === undefined ? "" : `, ${count} Stück`}`, thing === "" ? "" : `für: ${thing}`], ", "),

  summaryTitle: (count) => `Messwerte aus ${counted(count, "Aufzeichnung", "Aufzeichnungen")}`,
  leftOut: (files) => `Ausgelassen, weil von einem anderen Stand: ${list(files)}`,
  noReadings: "Die Anleitungen verlangen keinen Messwert.",
  summaryColumns: [
    "Entwurf",
    "Anleitung",
    "Zeile",
    "Messwert",
    "Grenzen",
    "Maßeinheit",
    "Werte",
    "Kleinster",
    "Median",
    "Größter",
    "Mittel",
    "Standardabweichung",
    "Außerhalb der Grenzen",
    "Wie vorgesehen",
    "Nicht wie vorgesehen",
    "Fehlt",
  ],
  heads: {
    line: "Zeile",
    reading: "Messwert",
    limits: "Grenzen",
    unit: "Maßeinheit",
    count: "Werte",
    lowest: "Kleinster",
    median: "Median",
    highest: "Größter",
    mean: "Mittel",
    deviation: "Standardabweichung",
    outside: "Außerhalb",
    answers: "Wie vorgesehen",
    missing: "Fehlt",
  },
  spread: (count, lowest, highest, median, unit) =>
    `${values(count)}: ${lowest} bis ${highest} ${unit}, Median ${median}`,
  meanAndDeviation: (mean, deviation, unit) =>
    `Mittel ${mean} ${unit}${deviation === "" ? "" : `, Standardabweichung ${deviation}`}`,
  outsideCount: (count) => `${count} außerhalb der Grenzen`,
  answers: (yes, no) => `${yes} wie vorgesehen, ${no} nicht`,
  missing: (count) => `${counted(count, "Aufzeichnung", "Aufzeichnungen")} ohne diesen Messwert`,
  limits: (text) => `Grenzen: ${text}`,
  atLeast: "mindestens",
  atMost: "höchstens",
  plotTitle: (line, what) => `${line} ${what}`,
  plotLegend: (withOutside) =>
    `Jeder Ring ist eine Einheit${withOutside ? ", jedes gefüllte Quadrat eine Einheit außerhalb der Grenzen" : ""}; der Pfeil ist der Median.`,
  plotAbout: (count, lowest, highest, median, unit, outside, text) =>
    `${values(count)} von ${lowest} bis ${highest} ${unit}, Median ${median}${text === "" ? "" : `, Grenzen ${text}, ${outside} außerhalb`}.`,
};
