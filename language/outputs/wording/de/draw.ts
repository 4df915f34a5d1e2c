// Wörter in den Zeichnungen.

import type { Wording } from "../wording.ts";
import { sentence } from "../phrases.ts";
import { list } from "./phrases.ts";

export const draw: Wording["draw"] = {
  titles: { strip: "Zerlegeplan", pattern: "Anziehreihenfolgen", path: "Wege der Flüssigkeiten" },
  of: (name, unit) => (unit === "" ? name : `${unit}: ${name}`),
  nothing: {
    strip: "Nach dieser Anleitung wird nichts abgebaut.",
    pattern: "Keine Gruppe von Verbindungselementen hat ein Muster.",
    path: "Keine Flüssigkeit hat einen Weg.",
  },
  sheet: (title, sheet, of) => `${title}, Blatt ${sheet} von ${of}`,

  pieces: (name, count, of) => (of <= 1 ? name : count < of ? `${name} (${count} von ${of})` : `${name} (${of})`),
  precaution: (precaution, hazard) => `${precaution}: ${hazard}`,
  loosen: (what) => `Lockern: ${what}`,
  drain: (what) => `Ablassen: ${what}`,
  support: (what) => `Abstützen: ${what}`,
  aside: (what) => `Zur Seite: ${what}`,
  assumed: (label) => `${label} (von der Werkbank abgelehnt: siehe Befunde)`,
  outer: (label, sheet) => `nach ${label}, Blatt\u00a0${sheet}`,
  free: (isAll) =>
    isAll
      ? "In beliebiger Reihenfolge, soweit die Maschine beschrieben ist"
      : "Nach nichts anderem, soweit die Maschine beschrieben ist",
  stripAbout:
    "Was vor was kommen muss, soweit die Maschine beschrieben ist. Ein Pfeil zeigt auf das, was danach kommt. Das ist keine Arbeitsanweisung: Die Vorkehrungen stehen in den Schritten.",
  relation: (label, after) => sentence(after.length === 0 ? label : `${label}, nach ${list(after)}`),
  sorts: {
    part: "Teil",
    fastener: "Verbindungselement",
    joint: "Verbindung",
    fluid: "Flüssigkeit",
    precaution: "Vorkehrung",
    hold: "abgestützt",
    aside: "zur Seite bewegt",
  },

  patternAbout: (count, order) =>
    sentence(
      order === undefined
        ? `${count} Verbindungselemente an ihren Plätzen`
        : `${count} Verbindungselemente, dem Muster nach gezählt, in der Reihenfolge des Anziehens: ${order}`,
    ),
  groupOf: (count, size) => sentence(size === "" ? `${count} Stück` : `${count} Stück, ${size}`),
  pitchCircle: (diameter) => sentence(`Lochkreis ${diameter}`),
  torque: (text) => sentence(`Anziehdrehmoment: ${text}`),
  asSaid: (text) => sentence(text),
  turns: "Die Zahl in jedem Kreis sagt, wann er an der Reihe ist.",
  turnsAnywhere: "Die Zahl in jedem Kreis sagt, wann er an der Reihe ist; mit einem beliebigen beginnen.",
  noTurns: (isTorqueMissing) =>
    isTorqueMissing
      ? "Reihenfolge und Anziehdrehmoment: nicht angegeben."
      : "Reihenfolge des Anziehens: nicht in Zahlen angegeben.",

  pathAbout: (stations, closed) =>
    sentence(
      `${stations.join(", dann ")}${closed && stations[0] !== undefined ? ` und zurück zu ${stations[0]}` : ""}`,
    ),
  fillsAt: (name) => `Einfüllen: ${name}`,
  bleedsAt: (name) => `Entlüften: ${name}`,
  drainsAt: (name) => `Ablassen: ${name}`,
  port: (says, on) => sentence(on === "" ? says : `${says}, an ${on}`),
  code: (number) => `Code, der zu Schritt ${number} führt`,
};
