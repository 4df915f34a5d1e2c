// Was eine Anleitung neben der Arbeit enthält: wer dafür einsteht, wofür die Maschine da ist, Störungen, Entsorgung, Begriffe.

import type { Wording } from "../wording.ts";

export const instructions: Wording["instructions"] = {
  language: "Sprache",
  languageName: "Deutsch",
  original: "Originalanleitung",
  translated: (from) => `Übersetzung von: ${from}`,
  notSaid: "der Autor sagt nicht, ob Original oder Übersetzung",
  maker: "Hersteller der Einheit",
  serials: "Seriennummern",
  author: "Autor",
  prepared: "Erstellt von",
  checked: "Geprüft von",
  approved: "Freigegeben von",
  signed: (who, when) => `${who}, ${when}`,
  otherRevision: (who, when, revision) =>
    `${who}, ${when}, für ${revision === undefined ? "keinen Stand" : `Stand ${revision}`}: nicht für den, aus dem dies erstellt wurde`,
  notSigned: "nicht unterschrieben",

  sections: {
    purpose: "Wofür die Maschine da ist",
    diagram: "Reihenfolge beim Zerlegen",
    mishaps: "Bei Störungen und Unfällen",
    waste: "Entsorgung",
    glossary: "Wörter, Zeichen und Einheiten",
    index: "Stichwörter",
  },
  intended: "Bestimmungsgemäße Verwendung",
  wrong: "Vorhersehbare Fehlanwendung",
  intendedNotGiven:
    "Der Autor sagt nicht, wofür die Maschine da ist. Vor Beginn in den Angaben des Herstellers nachsehen.",
  mishap: "Was geschieht",
  mishapThen: "Was zu tun ist",
  mishapAlways: [
    "Vor Beginn wissen, wer gerufen wird, wo der Ausgang ist und wo Verbandkasten und Feuerlöscher sind.",
    "Ist jemand verletzt: auf die eigene Unversehrtheit achten, Hilfe rufen, dann Erste Hilfe leisten wie gelernt.",
    "Endet die Arbeit vorzeitig: Schlösser, Schilder und Absperrungen lassen, wo sie sind, und aufschreiben, was lose ist, was hängt und was offen ist.",
  ],
  mishapsNotGiven:
    "Der Autor nennt nichts, was bei der Arbeit passieren kann. Selbst herausfinden: Blockade, Leckage, Brand, ein Teil, das fällt oder klemmt.",
  term: "Wort",
  means: "Bedeutung",
  terms: [
    [
      "Zeile",
      "Ein Handgriff mit seinem Kästchen, nummeriert in seinem Schritt: 3.2. R vor der Zahl: beim Zusammenbau. F: Schlussprüfungen.",
    ],
    [
      "Zusammenbau",
      "Der Weg zurück, wie er aus dem Zerlegen folgt: Was zuletzt abgebaut wurde, wird zuerst wieder angebaut, wenn nicht anderes davor kommt.",
    ],
    [
      "Vorkehrung",
      "Ein Handgriff, der zwischen einer Person und einer Gefährdung steht. Er zählt vom Abhaken an, bis er aufgehoben wird oder verfällt.",
    ],
    [
      "Feststellung",
      "Eine Vorkehrung, die durch einen Messwert oder Versuch zeigt, ob die davor gewirkt hat. Nach einer Unterbrechung ist sie verfallen.",
    ],
    ["Durchgang", "Einmal um alle Verbindungselemente einer Gruppe in ihrer Reihenfolge."],
    ["Reihenfolge", "Die Zahl eines Verbindungselements sagt, wann es beim Anziehen an der Reihe ist."],
    [
      "Messwert",
      "Ein Wert oder eine Antwort zum Aufschreiben, mit den Grenzen und mit dem, was außerhalb der Grenzen zu tun ist.",
    ],
    [
      "Nicht wie beschrieben",
      "Alles an der Maschine, was nicht so ist, wie die Zeile sagt. Anhalten, nachfragen, aufschreiben.",
    ],
    ["Wie vorgefunden", "Der Messwert, bevor etwas eingestellt wird."],
    ["Haltepunkt", "Die Arbeit hält dort an, bis die genannte Person sie weitergehen lässt."],
    ["N·m, lbf·ft", "Anziehdrehmoment: Newtonmeter und angelsächsische Einheit (Pfund-Kraft mal Fuß)"],
    ["mm, in", "Länge: Millimeter und Zoll"],
    ["kg, lb", "Masse: Kilogramm und angelsächsisches Pfund"],
    ["L, US qt", "Volumen: Liter und US-Quart"],
    ["V DC, V AC", "Spannung, Gleich- und Wechselspannung: nie miteinander verglichen"],
    ["°C, °F", "Temperatur"],
  ],
};
