// Mots dans les dessins.

import { sentence } from "../phrases.ts";
import type { Wording } from "../wording.ts";
import { counted, list, the, titled } from "./phrases.ts";

export const draw: Wording["draw"] = {
  titles: { strip: "Schéma de démontage", pattern: "Séquences de serrage", path: "Chemins des fluides" },
  of: (name, unit) => (unit === "" ? name : titled(unit, name)),
  nothing: {
    strip: "Cette procédure ne fait rien déposer.",
    pattern: "Aucun groupe d'éléments de fixation n'a de plan.",
    path: "Aucun fluide n'a de chemin.",
  },
  sheet: (title, sheet, of) => `${title}, feuille ${sheet} sur ${of}`,

  pieces: (name, count, of) => (of <= 1 ? name : count < of ? `${name} (${count} sur ${of})` : `${name} (${of})`),
  precaution: (precaution, hazard) => titled(precaution, the(hazard)),
  loosen: (what) => titled("Desserrer", the(what)),
  drain: (what) => titled("Vidanger", the(what)),
  support: (what) => titled("Soutenir", the(what)),
  aside: (what) => titled("De côté", the(what)),
  assumed: (label) => `${label} (refusé par l'établi\u00a0: voir les constats)`,
  outer: (label, sheet) => `après ${label}, feuille\u00a0${sheet}`,
  free: (isAll) =>
    isAll
      ? "Dans n'importe quel ordre, pour autant que la machine soit décrite"
      : "Après rien d'autre, pour autant que la machine soit décrite",
  stripAbout:
    "Ce qui doit venir avant quoi, pour autant que la machine soit décrite. Une flèche montre ce qui vient après. Ce n'est pas une consigne de travail\u00a0: les précautions se trouvent dans les étapes.",
  relation: (label, after) => sentence(after.length === 0 ? label : `${label}, après ${list(after)}`),
  sorts: {
    part: "pièce",
    fastener: "élément de fixation",
    joint: "assemblage",
    fluid: "fluide",
    precaution: "précaution",
    hold: "soutien",
    aside: "mise de côté",
  },

  patternAbout: (count, order) =>
    sentence(
      order === undefined
        ? `${count} éléments de fixation à leurs places`
        : titled(`${count} éléments de fixation, comptés le long du tracé, dans l'ordre de serrage`, order),
    ),
  groupOf: (count, size) => sentence(size === "" ? counted(count, "pièce") : `${counted(count, "pièce")}, ${size}`),
  pitchCircle: (diameter) => sentence(`Cercle de perçage de diamètre ${diameter}`),
  torque: (text) => sentence(titled("Couple de serrage", text)),
  asSaid: (text) => sentence(text),
  turns: "Le chiffre dans chaque cercle est son rang.",
  turnsAnywhere: "Le chiffre dans chaque cercle est son rang\u00a0; commencer par n'importe lequel.",
  noTurns: (isTorqueMissing) =>
    isTorqueMissing
      ? "Ordre et couple de serrage\u00a0: non indiqués."
      : "Ordre de serrage\u00a0: non indiqué en chiffres.",

  pathAbout: (stations, closed) =>
    sentence(`${stations.join(", puis ")}${closed && stations[0] !== undefined ? `, et retour à ${stations[0]}` : ""}`),
  fillsAt: (name) => titled("remplissage", the(name)),
  bleedsAt: (name) => titled("purge", the(name)),
  drainsAt: (name) => titled("vidange", the(name)),
  port: (says, on) => sentence(on === "" ? says : `${says}, sur ${the(on)}`),
  code: (number) => `Code qui mène à l'étape ${number}`,
};
