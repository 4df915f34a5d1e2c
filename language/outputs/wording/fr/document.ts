// Phrases de documents entiers, titres du remontage et de la nomenclature.

import type { BuildChoice } from "../../../model/model.ts";
import { capital, joined, sentence } from "../phrases.ts";
import type { Wording } from "../wording.ts";
import { counted, list, the, titled } from "./phrases.ts";

function choiceName(choice: BuildChoice): string {
  switch (choice.is) {
    case "named":
      return choice.name;
    case "fails":
      return `${choice.name} (pas comme prévu)`;
    case "reading-before-fails":
      return "résultat précédent (pas comme prévu)";
    case "optional":
      return choice.title || "partie facultative";
    case "choice":
      return `choix ${choice.number}`;
  }
}

export const document: Wording["document"] = {
  draftMark: "PROJET",
  draftLine: (openFindings, why) =>
    `${titled(
      "PROJET",
      joined(
        [
          why.includes("not-approved") ? "non approuvé" : "",
          openFindings > 0 ? counted(openFindings, "constat ouvert", "constats ouverts") : "",
        ],
        ", ",
      ),
    )}. Ne pas travailler d'après ce document.`,
  cautionLine:
    "Les données du fabricant, les règles locales et les personnes habilitées priment. Ce document est une aide et n'est pas une évaluation des risques.",
  contentHash: (hash) => titled("Contenu", hash.slice(0, 16)),
  noSignal: "RISQUE",
  hazardFigure: (word, value) => `${word} ${value}`,
  titled,
  titles: (titles) => titles.join("\u00a0: "),
  parts: (texts) => texts.join("\u00a0; "),
  build: (choices) => {
    const names = choices.map(choiceName);
    return names.length < 2 ? (names[0] ?? "version de base") : `${names[0]} avec ${list(names.slice(1))}`;
  },
  colon: "\u00a0:",
  hazardHead: (signal, kind, name) => titled(signal, titled(kind, name)),
  dated: (date) => sentence(titled("Date", date)),
  figures: (all) => sentence(all.join(", ")),
  harm: (what) => sentence(titled("Conséquences possibles, en général", what)),
  keepOut: (distance) => sentence(`Tenir les autres personnes à ${distance} au moins`),
  wear: (things) => sentence(titled("Porter", list(things.map(the)))),
  who: (role) => sentence(titled("Réservé à", the(role))),
  pushes: (what) => sentence(titled("Pousse sur", what)),
  source: (source) => sentence(titled("Source", the(source))),
  mustStand: (precautions) =>
    sentence(
      titled(
        `Avant de continuer, vérifier que ${precautions.length === 1 ? "cette précaution est" : "ces précautions sont"} toujours en place`,
        list(precautions.map(the)),
      ),
    ),
  on: (what) => `${capital(what)}\u00a0:`,
  picture: (alt) => sentence(titled("Image", alt)),
};

export const refit: Wording["refit"] = {
  halves: { strip: "Démontage", refit: "Remontage", finish: "Essais finaux" },
  columns: [
    "Projet",
    "Procédure",
    "Phase",
    "Étape",
    "Ligne",
    "Action",
    "Nombre",
    "Outil",
    "Couple de serrage",
    "Rangement",
    "Autres indications",
  ],
  noRefit: "Le remontage n'a pas pu être établi\u00a0: voir les constats.",
};

export const bill: Wording["bill"] = {
  title: "Liste des consommables et des pièces de rechange",
  forUnits: (units) => sentence(`Pour ${counted(units, "unité")}`),
  grades: {
    certain: "Nécessaire dans tous les cas",
    worn: "Seulement en cas d'usure, de dommage, ou si une mesure le demande",
  },
  columns: [
    "Projet",
    "Besoin",
    "Article",
    "Type",
    "Taille",
    "Référence",
    "Norme",
    "Pour une",
    "Pour toutes",
    "Conditionnements",
    "Conditionnement",
    "Délai de livraison",
    "Conservation",
    "Pourquoi",
    "Utilisé à",
  ],
  sorts: {
    part: "Pièce",
    fastener: "Élément de fixation",
    joint: "Assemblage",
    consumable: "Consommable",
    fluid: "Fluide",
  },
  pieces: (count) => counted(count, "pièce"),
  lots: {
    pair: (pieces, lots) => `${counted(pieces, "pièce")} (${counted(lots, "paire")})`,
    set: (pieces, lots) => `${counted(pieces, "pièce")} (${counted(lots, "jeu", "jeux")})`,
    setWith: (pieces, lots, others) =>
      `${counted(pieces, "pièce")} (${counted(lots, "jeu", "jeux")}, avec\u00a0: ${others})`,
    inSet: (pieces, first) => `${counted(pieces, "pièce")} (dans le même jeu que\u00a0: ${first})`,
  },
  notGiven: (uses) => (uses === 1 ? "quantité non indiquée" : `quantité non indiquée pour ${uses} emplois`),
  and: (parts) => parts.join(" et "),
  packs: (count, atLeast) => `${atLeast ? "au moins " : ""}${counted(count, "conditionnement")}`,
  packsOf: (packs, pack) => `${packs} (de ${pack})`,
  lead: (time) => `livraison ${time}`,
  shelfLife: (time) => `se conserve ${time}`,
  nothing: "Rien n'est consommé et rien n'est remplacé, d'après ce que disent les procédures.",
  notGivenNote:
    "Là où une quantité n'est pas indiquée, la chercher avant de commander\u00a0: un blanc se lirait comme zéro.",
  reasons: {
    rule: "toujours neuf",
    "standing-rule": "toujours neuf selon la règle permanente de l'atelier",
    destroyed: "détruit par le démontage",
    act: "la procédure le remplace",
    worn: "neuf en cas d'usure",
    damaged: "neuf en cas de dommage",
    "as-a-set": "neuf par jeu",
    "by-pairs": "neuf par paires",
    reading: "si la mesure le demande",
    chosen: "de la taille que la mesure demande",
    scrap: "l'ancien est mis au rebut",
    "kind-not-said": "d'un type à usage unique\u00a0; la procédure ne dit pas s'il est neuf ou ancien",
  },
  every: (strips) => (strips === 1 ? "neuf à chaque démontage" : `neuf tous les ${strips} démontages`),
  each: (text) => titled("pour une", text),
  usedOn: (things) => `pour ${things.map(the).join("\u00a0; ")}`,
};
