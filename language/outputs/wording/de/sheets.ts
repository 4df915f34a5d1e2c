// Wörter der Etiketten und der Blätter für die Werkbank.

import type { Wording } from "../wording.ts";
import { joined, sentence } from "../phrases.ts";
import { counted } from "./phrases.ts";

export const labels: Wording["labels"] = {
  title: "Etiketten für Beutel und Schalen",
  printAt: "Mit 100 % drucken, ohne eigene Ränder des Druckers.",
  nothing: "Keine Zeile legt etwas in einen Beutel oder eine Schale.",
  place: (kind, label) => `${kind === "tray" ? "Schale" : "Beutel"} ${label}`,
  from: (unit, procedure) => joined([unit, procedure], ": "),
  count: (count) => `${count} Stück`,
  some: (count, of) => `${count} von ${of}`,
  countNotGiven: "Anzahl nicht angegeben",
  discard: "nicht wieder verwenden: neu einsetzen",
  item: (item) =>
    joined(
      [
        item.name,
        item.count,
        item.size,
        `[${item.id}]`,
        `Zeile ${item.line}`,
        item.discard ? "nicht wieder verwenden: neu einsetzen" : "",
      ],
      ", ",
    ),
  columns: [
    "Entwurf",
    "Ablage",
    "Id",
    "Name",
    "Anzahl",
    "Größe",
    "Schritt",
    "Zeile",
    "Anmerkung",
    "Einheit",
    "Anleitung",
  ],
};

export const torqueSheet: Wording["torqueSheet"] = {
  title: "Drehmomentprotokoll",
  nothing: "Beim Zusammenbau wird nichts angezogen.",
  columns: {
    line: "Zeile",
    // Weiche Trennstriche: Auf schmalem Papier brechen die langen Wörter.
    fastener: "Verbindungs\u00adelement",
    count: "Anzahl",
    thread: "Gewinde, Klasse",
    passes: "Durch\u00adgänge, Reihen\u00adfolge",
    metric: "Metrisch",
    us: "US",
    tool: "Werkzeug, Drehmoment\u00adschlüssel",
    note: "An\u00admerkung",
    set: "Ein\u00adgestellt",
    wrenchNo: "Schlüssel-Nr.",
    initials: "Kürzel",
  },
  csv: [
    "Entwurf",
    "Anleitung",
    "Schritt",
    "Zeile",
    "Id",
    "Verbindungselement",
    "Anzahl",
    "Gewinde",
    "Klasse",
    "Metrisch",
    "US",
    "Durchgänge",
    "Reihenfolge",
    "Nummern",
    "Werkzeug",
    "Drehmomentschlüssel",
    "Anmerkung",
    "Eingestellt",
    "Schlüssel-Nr.",
    "Kürzel",
  ],
  pass: (number, share, metric, us) => `${number}: ${share} = ${metric} (${us})`,
  passes: (count) => counted(count, "Durchgang", "Durchgänge"),
  order: (numbers) => `Reihenfolge: ${numbers}`,
  forPieces: (value, pieces) => (pieces === "rest" ? `${value} für die übrigen` : `${value} für ${pieces}`),
  stage: (number, value) => `Stufe ${number}: ${value}`,
  whileDoing: (value, what) => `${value}, dabei: ${what}`,
  notGiven: "nicht angegeben",
  none: "kein Anziehdrehmoment",
  fresh: { certain: "neu", worn: "neu, wenn verschlissen" },
  lubricant: (name) => `mit ${name}`,
  threadLocker: (name) => `auf das Gewinde: ${name}`,
  leftHand: "Linksgewinde",
  noWrench: "keiner der Liste reicht dafür",
  note: "Nur einer der beiden Werte stammt vom Autor selbst. Wo ein Anziehdrehmoment nicht angegeben ist, vor dem Anziehen herausfinden.",
};

export const layoutSheet: Wording["layoutSheet"] = {
  title: "Ablageplan",
  nothing: "Nach dieser Anleitung wird kein Teil abgebaut.",
  note: "Teile in dieser Reihenfolge von links nach rechts ablegen. Eingebaut werden sie, wie es der Zusammenbau sagt, ungefähr vom letzten zum ersten.",
  csv: [
    "Entwurf",
    "Anleitung",
    "Platz",
    "Zeile",
    "Id",
    "Name",
    "Anzahl",
    "Kommt mit",
    "Masse",
    "Ablage",
    "Anmerkung",
    "Schritt",
  ],
  count: (count) => (count === undefined ? "Anzahl nicht angegeben: zählen" : count === 1 ? "" : `${count} Stück`),
  goesTo: (where) => sentence(`Ablegen in: ${where}`),
  tray: (label) => `Schale ${label}`,
  bag: (label) => `Beutel ${label}`,
  massOf: (mass, unknown) =>
    unknown === 0
      ? mass
      : mass === ""
        ? "Masse nicht angegeben"
        : `${mass} und ${counted(unknown, "Teil", "Teile")} ohne Angabe der Masse`,
  discard: "Nicht wieder verwenden: neu einsetzen.",
  line: (line, step) => joined([line, step], " "),
};
