// Mots des étiquettes et des feuilles pour l'établi.

import { joined, sentence } from "../phrases.ts";
import type { Wording } from "../wording.ts";
import { counted, the, titled } from "./phrases.ts";

export const labels: Wording["labels"] = {
  title: "Étiquettes pour sachets et bacs",
  printAt: "Imprimer à 100\u00a0%, sans marges propres à l'imprimante.",
  nothing: "Aucune ligne ne met rien dans un sachet ou un bac.",
  place: (kind, label) => `${kind === "tray" ? "Bac" : "Sachet"} ${label}`,
  from: (unit, procedure) => joined([unit, procedure], "\u00a0: "),
  count: (count) => counted(count, "pièce"),
  some: (count, of) => `${count} sur ${of}`,
  countNotGiven: "nombre non indiqué",
  discard: "à ne pas garder\u00a0: du neuf sera posé",
  item: (item) =>
    joined(
      [
        item.name,
        item.count,
        item.size,
        `[${item.id}]`,
        `ligne ${item.line}`,
        item.discard ? "à ne pas garder\u00a0: du neuf sera posé" : "",
      ],
      ", ",
    ),
  columns: ["Projet", "Rangement", "Id", "Nom", "Nombre", "Taille", "Étape", "Ligne", "Note", "Unité", "Procédure"],
};

export const torqueSheet: Wording["torqueSheet"] = {
  title: "Feuille de serrage",
  nothing: "Le remontage ne fait rien serrer.",
  columns: {
    line: "Ligne",
    fastener: "Élément de fixation",
    count: "Nombre",
    thread: "Filetage, classe",
    passes: "Passes, ordre",
    metric: "Métrique",
    us: "US",
    tool: "Outil, clé dynamométrique",
    note: "Note",
    set: "Réglé à",
    wrenchNo: "Clé n°",
    initials: "Initiales",
  },
  csv: [
    "Projet",
    "Procédure",
    "Étape",
    "Ligne",
    "Id",
    "Élément de fixation",
    "Nombre",
    "Filetage",
    "Classe",
    "Métrique",
    "US",
    "Passes",
    "Ordre",
    "Numéros",
    "Outil",
    "Clé dynamométrique",
    "Note",
    "Réglé à",
    "Clé n°",
    "Initiales",
  ],
  pass: (number, share, metric, us) => titled(String(number), `${share} = ${metric} (${us})`),
  passes: (count) => counted(count, "passe"),
  order: (numbers) => titled("Ordre", numbers),
  forPieces: (value, pieces) => (pieces === "rest" ? `${value} pour les autres` : `${value} pour ${pieces}`),
  stage: (number, value) => titled(`palier ${number}`, value),
  whileDoing: (value, what) => `${value}, ${titled("pendant ce temps", what)}`,
  notGiven: "non indiqué",
  none: "sans couple de serrage",
  fresh: { certain: "neuf", worn: "neuf en cas d'usure" },
  lubricant: (name) => `avec ${name}`,
  threadLocker: (name) => titled("sur le filetage", the(name)),
  leftHand: "filetage à gauche",
  noWrench: "aucune de la liste ne le couvre",
  note: "Un seul des deux systèmes porte le chiffre de l'auteur lui-même. Là où un couple de serrage n'est pas indiqué, le chercher avant de serrer.",
};

export const layoutSheet: Wording["layoutSheet"] = {
  title: "Feuille de rangement",
  nothing: "Cette procédure ne fait déposer aucune pièce.",
  note: "Poser les pièces dans cet ordre, de gauche à droite. Elles se reposent comme le dit le remontage, à peu près de la dernière à la première.",
  csv: [
    "Projet",
    "Procédure",
    "Place",
    "Ligne",
    "Id",
    "Nom",
    "Nombre",
    "Vient avec",
    "Masse",
    "Rangement",
    "Note",
    "Étape",
  ],
  count: (count) =>
    count === undefined ? "nombre non indiqué\u00a0: compter" : count === 1 ? "" : counted(count, "pièce"),
  goesTo: (where) => sentence(titled("À ranger dans", where)),
  tray: (label) => `bac ${label}`,
  bag: (label) => `sachet ${label}`,
  massOf: (mass, unknown) =>
    unknown === 0
      ? mass
      : mass === ""
        ? "masse non indiquée"
        : `${mass} et ${counted(unknown, "pièce")} sans masse indiquée`,
  discard: "À ne pas garder\u00a0: du neuf sera posé.",
  line: (line, step) => joined([line, step], " "),
};
