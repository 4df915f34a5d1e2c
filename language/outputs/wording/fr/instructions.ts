// Ce qu'une notice contient à côté du travail: qui en répond, à quoi sert la machine, incidents, déchets, glossaire.

import type { Wording } from "../wording.ts";

export const instructions: Wording["instructions"] = {
  language: "Langue",
  languageName: "Français",
  original: "notice originale",
  translated: (from) => `traduction de\u00a0: ${from}`,
  notSaid: "l'auteur ne dit pas si c'est l'original ou une traduction",
  maker: "Fabricant de l'unité",
  serials: "Numéros de série",
  author: "Auteur",
  prepared: "Établi par",
  checked: "Vérifié par",
  approved: "Approuvé par",
  signed: (who, when) => `${who}, ${when}`,
  otherRevision: (who, when, revision) =>
    `${who}, ${when}, pour ${revision === undefined ? "aucune révision" : `la révision ${revision}`}\u00a0: pas pour celle dont ceci est tiré`,
  notSigned: "non signé",

  sections: {
    purpose: "À quoi sert la machine",
    diagram: "Ordre de dépose",
    mishaps: "En cas d'incident ou d'accident",
    waste: "Déchets",
    glossary: "Mots, symboles et unités",
    index: "Table alphabétique",
  },
  intended: "Utilisation prévue",
  wrong: "Mauvais usage prévisible",
  intendedNotGiven:
    "L'auteur ne dit pas à quoi sert la machine. Chercher dans les données du fabricant avant de commencer.",
  mishap: "Ce qui arrive",
  mishapThen: "Que faire",
  mishapAlways: [
    "Avant de commencer, savoir qui appeler, où est la sortie, où sont la trousse de secours et l'extincteur.",
    "Si quelqu'un est blessé\u00a0: veiller à ne pas être blessé soi-même, appeler à l'aide, puis donner les premiers secours comme appris.",
    "Si le travail s'arrête avant la fin\u00a0: laisser cadenas, étiquettes et balisages où ils sont, et noter ce qui est desserré, ce qui est suspendu et ce qui est ouvert.",
  ],
  mishapsNotGiven:
    "L'auteur ne cite aucun incident possible. Y réfléchir soi-même\u00a0: blocage, fuite, incendie, pièce qui tombe ou se coince.",
  term: "Mot",
  means: "Signification",
  terms: [
    [
      "Ligne",
      "Une action avec sa case, numérotée dans son étape\u00a0: 3.2. R devant le numéro\u00a0: au remontage. F\u00a0: essais finaux.",
    ],
    [
      "Remontage",
      "Le chemin inverse, tel qu'il découle du démontage\u00a0: ce qui a été déposé en dernier se repose en premier, sauf si autre chose vient avant.",
    ],
    [
      "Précaution",
      "Une action qui protège une personne d'un danger. Elle compte dès qu'elle est cochée, jusqu'à ce qu'elle soit levée ou caduque.",
    ],
    [
      "Vérification",
      "Une précaution qui montre par une mesure ou un essai que la précédente a eu son effet. Elle est caduque après une interruption.",
    ],
    ["Passe", "Un tour de tous les éléments de fixation d'un groupe dans leur ordre."],
    ["Ordre", "Le numéro d'un élément de fixation est son rang au serrage."],
    ["Mesure", "Une valeur ou une réponse que l'on note, avec ses limites et ce qu'il faut faire hors limites."],
    [
      "Différent de la description",
      "Tout ce qui, sur la machine, n'est pas comme le dit la ligne. S'arrêter, se renseigner, noter.",
    ],
    ["Tel que trouvé", "La mesure avant que rien ne soit réglé."],
    ["Point d'arrêt", "Le travail s'y arrête jusqu'à ce que la personne nommée le lève."],
    ["N·m, lbf·ft", "Couple de serrage\u00a0: newton mètre et livre-force pied"],
    ["mm, in", "Longueur\u00a0: millimètre et pouce"],
    ["kg, lb", "Masse\u00a0: kilogramme et livre"],
    ["L, US qt", "Volume\u00a0: litre et quart américain"],
    ["V CC, V CA", "Tension continue et alternative\u00a0: jamais comparées l'une à l'autre"],
    ["°C, °F", "Température"],
  ],
};
