// Was das Handbuch auf einem Bildschirm sagt, mit dem gearbeitet wird. Es fragt nach dem, was fehlt, und gibt nichts frei.

import type { Wording } from "../wording.ts";

export const tablet: Wording["tablet"] = {
  title: "Aufzeichnung auf diesem Gerät",
  titled: (title, text) => `${title}: ${text}`,
  then: (first, second) => `${first}; ${second}`,
  progress: (done, all) => `${done} von ${all} abgehakt`,
  nextOpen: "Nächste offene Zeile",
  save: "Aufzeichnung speichern",
  load: "Aufzeichnung laden",
  clear: "Mit einer anderen Einheit beginnen",
  clearSure:
    "Alles hier Eingetragene löschen? Vorher die Aufzeichnung speichern: Danach gibt es die Einträge nirgends mehr.",
  loadSure: "Das hier Eingetragene durch die Aufzeichnung ersetzen? Vorher speichern, was noch gebraucht wird.",
  notKept: "Dieser Browser behält nichts von dieser Seite. Die Aufzeichnung speichern, bevor sie geschlossen wird.",
  saved: (file) => `In die Downloads geschrieben: ${file}`,
  loaded: "Die Aufzeichnung ist geladen.",
  loadOther:
    "Diese Aufzeichnung stammt von einem anderen Stand der Anleitung. Sie wird nicht geladen: Ihre Zeilen verlangen vielleicht anderes.",
  loadBad: (why) => `Diese Aufzeichnung lässt sich nicht laden: ${why}`,
  loadWhy: {
    "no-json": "sie ist keine Aufzeichnung",
    "broken-off": "sie bricht vor ihrem Ende ab. Dort, wo sie geschrieben wurde, noch einmal speichern",
    format: "sie gehört nicht zu einem solchen Handbuch",
    version: "vielleicht hat sie ein neueres Stripdown geschrieben",
    entry: (place) => `ihr Eintrag ${place} ist nicht so, wie eine Aufzeichnung ihn hat`,
  },
  loadUnknown: (lines) => `Nicht geladen, weil es eine solche Zeile hier nicht gibt: ${lines}`,
  breakTitle: "Nach einer Unterbrechung der Arbeit",
  breakSays:
    "Diese Einträge wurden gemacht, bevor die Seite geöffnet wurde. War die Arbeit unterbrochen, sind diese Feststellungen verfallen. Vor dem Weiterarbeiten wiederholen:",
  breakAgain: "Haken dieser Feststellungen entfernen",
  breakNone: "Die Arbeit war nicht unterbrochen",

  missing: {
    precautions: "Diese Zeile braucht Vorkehrungen, die nicht abgehakt sind. Zuerst diese treffen:",
    before: "Diese Zeilen kommen, bevor die Vorkehrung aufgehoben wird:",
    hold: "Die Arbeit hält an diesem Punkt an, bis er freigegeben ist:",
    wait: "Die Wartezeit dieser Zeile ist nicht abgelaufen. Die Uhr starten und laufen lassen.",
    reading: "Zuerst den Messwert aufschreiben.",
    outside:
      "Der Messwert liegt außerhalb der Grenzen. Tun, was die Zeile sagt, und neu messen, oder unter „Nicht wie beschrieben“ eintragen, was getan wurde und wer zugestimmt hat.",
    "outside-precaution":
      "Der Messwert liegt außerhalb der Grenzen. Anhalten und herausfinden, warum. Dann neu messen: Nichts, was ihn braucht, geht weiter.",
    signature: "Vor dem Abhaken wird unterschrieben.",
  },
  leaning: "Abgehakte Zeilen brauchen diese. Jede davon noch einmal ansehen:",

  outside: (limits) => `Außerhalb der Grenzen (${limits})`,
  notAsItShouldBe: "Nicht wie vorgesehen.",
  noNumber: "Das ist keine Zahl. Die Eingabe wird nicht übernommen.",
  tries: "Versuche",
  aTry: (number, says) => `${number}: ${says}`,
  outsideShort: "außerhalb",
  yes: "Ja",
  no: "Nein",
  countDiffers: (due) => `Nicht die verlangte Anzahl: ${due}. Den Rest suchen.`,
  torqueOther: "Nicht das Anziehdrehmoment der Anleitung:",
  torqueNoNumber: "Das ist keine Zahl.",
  torqueNotGiven: "Die Anleitung gibt keinen Wert zum Vergleich an.",

  startWait: (time) => `Uhr starten: ${time}`,
  againWait: "Von vorn beginnen",
  left: (time) => `noch ${time}`,
  waitOver: "Die Zeit ist um. Das allein zeigt nichts: messen oder feststellen, bevor es weitergeht.",
  waitNote: "Die Uhr läuft nur, solange diese Seite offen ist.",

  nextBolt: (number, done, all) => `Als Nächstes: Nummer ${number}; ${done} von ${all} getan`,
  inPass: (pass, passes) => `Durchgang ${pass} von ${passes}.`,
  oneMore: "Eine weitere ist angezogen",
  oneBack: "Eine zurück",
  allCounted: "Alle sind gezählt. Das Anziehdrehmoment aufschreiben.",

  notAsWritten: "Nicht wie beschrieben",
  what: "Was",
  howMany: "Wie viele",
  chosen: "Gewählte Größe",
  readingsOn: "Tag der Arbeit, die jetzt eingetragen wird",
  noDate: "Das ist kein Datum: Jahr-Monat-Tag, wie 2027-03-31. Die Eingabe wird nicht übernommen.",
  noDue:
    "Das ist kein Datum: Jahr-Monat-Tag oder Jahr-Monat, wie 2027-03-31 oder 2027-03. Die Eingabe wird nicht übernommen.",
  takenWith: "Gemessen mit",
  notSaid: "nicht gesagt",
  overdue: (instrument, due, on) =>
    `${instrument}: Kalibrierung fällig ${due}, eingetragen wird für ${on}. Mit einem anderen Gerät wiederholen und nachfragen.`,
  whatThing: "Welcher Gegenstand",
  wholeLine: "die Zeile",
  note: "Wie es vorgefunden wurde",
  whatDone: "Was getan wurde",
  agreedBy: "Wer zugestimmt hat",
  wanted: "Zu bestellendes Teil",
  add: "Aufschreiben",
  takeOut: "Diesen Eintrag entfernen",

  counted: "Gezählt",
  countedOf: (name) => `Gezählt, ${name}`,
  setAt: "Eingestellt auf",
  setAtOf: (name) => `Eingestellt auf, ${name}`,
  unit: "Maßeinheit",
  wrench: "Schlüssel-Nr.",
  initials: "Kürzel",
  asItShouldBe: "Wie vorgesehen?",
  instruments: "Verwendete Drehmomentschlüssel und Messgeräte",
  instrument: "Gerät",
  instrumentNumber: "Nummer",
  due: "Kalibrierung fällig (JJJJ-MM-TT)",
};
