// Wörter des Buches zum Zusammenbau, das eine Aufzeichnung speist. Sie sagen, was aufgeschrieben wurde, und geben nichts frei.

import type { Wording } from "../wording.ts";

export const refitBook: Wording["refitBook"] = {
  title: (procedure, serial) => `Buch zum Zusammenbau: ${procedure}${serial === "" ? "" : `, Seriennummer ${serial}`}`,
  sections: { recorded: "Was die Aufzeichnung sagt", closing: "Schlussliste" },
  file: "Aufzeichnung",
  lead: [
    "Dieses Buch enthält den Zusammenbau einer Einheit und, an den betroffenen Zeilen, was ihre Aufzeichnung vom Zerlegen sagt.",
    "Jede Feststellung der Aufzeichnung ist verfallen. Vor der Zeile, die sie braucht, wiederholen.",
    "Was die Aufzeichnung nicht sagt, ist nicht bekannt. Nachsehen, bevor es weitergeht.",
  ],
  whole: "Für den ganzen Zusammenbau",
  at: (line, says) => `Aufzeichnung, Zeile ${line}: ${says}`,
  reading: (what, figure, limits, outside) =>
    `${what}: ${figure}${outside ? ", außerhalb der Grenzen" : ""}${limits === "" ? "" : ` (${limits})`}`,
  notTicked: "Nicht abgehakt: nachsehen, ob es getan wurde.",
  chosen: (what, chosen) => `${what}, gewählt: ${chosen}`,
  notChosen: (what) => `${what}: Was gewählt wurde, ist nicht aufgeschrieben`,
  ticked: "In der Aufzeichnung ist diese Zeile abgehakt.",

  closingNote:
    "Alles, was die Aufzeichnung offen lässt. Eine Zeile ist offen, bis jemand sie unterschreibt, der es darf.",
  nothing: "Die Aufzeichnung lässt nichts offen. Gelesen wird nur die Aufzeichnung; über die Maschine sagt das nichts.",
  left: "Was offen ist",
  wanted: "Gewünschte Teile",
  agreed: "Nicht wie beschrieben, und niemand hat zugestimmt",
  outside: "Messwerte außerhalb der Grenzen, und was nicht wie vorgesehen ist",
  temporary: "Vorübergehend Angebrachtes und Verschlusskappen vom Zerlegen",
  ticks: "Beim Zerlegen nicht abgehakt",
  other: "Was sonst fehlt oder abweicht",
  capped: (what) => `Verschlusskappe an: ${what}`,
  comesOff: (what, line) => `${what}: kommt in Zeile ${line} wieder ab`,
  staysOn: (what) => `${what}: keine Zeile des Zusammenbaus nimmt es ab`,
};
