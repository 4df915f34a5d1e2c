// Les phrases imprimées des actions, au démontage et au remontage.

import { ifAny, joined, lowerFirst, sentence } from "../phrases.ts";
import type { Wording } from "../wording.ts";
import { counted, list, people, some, the, titled, told, withTool } from "./phrases.ts";

const by = (count: number | undefined): string => (count ? people(count) : "");
const passes = (count: number): string => counted(count, "passe");
const under = (title: string, text: string | undefined): string => (text ? titled(title, text) : "");

export const acts: Wording["acts"] = {
  the,
  some,
  list,
  givenOtherwise: "seulement si le résultat précédent n'est pas comme prévu",
  givenState: (title, state) =>
    `${title}${{ "": "", fails: " (pas comme prévu)", removed: " (à l'état déposé)" }[state]}`,
  givenPieces: (unless, any, pieces) =>
    `${unless ? "sauf pour\u00a0: " : "seulement pour\u00a0: "}${pieces.join(any ? " ou " : " et ")}`,
  givenCondition: (unless, any, states) =>
    `${unless ? "sauf si\u00a0: " : "seulement si\u00a0: "}${states.join(any ? " ou " : " et ")}`,

  undo: (verb, what, tool) => told(verb, what, withTool(tool)),
  loosen: (what, amount, tool) => told("Desserrer", what, under("de", amount), withTool(tool), "laisser en place"),
  backOut: (what, amount, tool) =>
    told("Dévisser en partie", what, under("de", amount), withTool(tool), "laisser dans le trou"),
  remove: (verb, what, how, tool, count) => told(verb, what, withTool(tool), by(count), how),
  removeTogether: (what, tool, count) => told("Déposer ensemble, d'un bloc", what, withTool(tool), by(count)),
  lift: (what, tool, count) => told("Soulever et déposer", what, withTool(tool), by(count)),
  support: (what, tool) => told("Soutenir", what, withTool(tool), "maintenir le soutien"),
  hold: (what, tool) => told("Immobiliser en rotation", what, withTool(tool)),
  release: (what, tool) => told("Retirer le soutien de", what, tool && the(tool)),
  aside: (verb, what, amount) =>
    told(
      { open: "Ouvrir", swing: "Faire pivoter de côté", slide: "Faire glisser de côté" }[verb],
      what,
      under("de", amount),
      "ne pas détacher",
    ),
  back: (verb, what) =>
    told({ open: "Fermer", swing: "Faire pivoter en place", slide: "Faire glisser en place" }[verb], what),
  turn: (position, part) => (part === undefined ? told("Tourner l'unité", position) : told("Tourner", part, position)),
  turnBack: (position) => told("Remettre l'unité en position", position),
  rotate: (what, amount) => told("Tourner à la main", what, under("de", amount)),
  drain: (what, volume, into) => told("Vidanger", `${what} (${volume})`, under("dans", into && the(into))),
  recover: (what, volume, into, tool) =>
    told(
      "Récupérer",
      `${what} (${volume})`,
      under("dans", into && the(into)),
      withTool(tool),
      "ne rien laisser échapper",
    ),
  fill: (what, volume, at) => told("Remplir", `${what} (${volume})`, under("par", at)),
  topUp: (what, at) => told("Faire l'appoint", what, under("par", at)),
  bleed: (what, at) => told("Purger l'air", what, under("par", at)),
  evacuate: (what, tool) => told("Tirer le circuit au vide", what, withTool(tool)),
  purge: (what, tool) => told("Balayer le circuit", what, withTool(tool)),
  cap: (what) => told("Obturer", what),
  uncap: (what) => told("Retirer l'obturateur", what),
  restore: (hazard) => told("Lever les précautions contre ce danger pour l'essai en marche", the(hazard)),
  precaution: (title, hazard) => told(title, the(hazard)),
  precautionTitle: (title) => `${title}\u00a0:`,
  mark: (what, label) => told("Repérer", what, `repère ${label}`),
  tag: (what, labels) => told("Étiqueter", what, labels),
  align: (labels) => told("Aligner les repères", labels),
  measure: (what, on, tool) => told("Mesurer", what, under("sur", on), withTool(tool)),
  inspect: (what, on) => told("Examiner", what, under("sur", on)),
  test: (what, tool) => told("Essayer", what, withTool(tool)),
  set: (on, what, tool) => told("Régler", on, withTool(tool), what),
  clean: (what, tool) => told("Nettoyer", what, withTool(tool)),
  apply: (consumable, what, amount) => told("Appliquer", the(consumable), amount, under("sur", what)),
  heat: (what, to, tool) => told("Chauffer", what, under("jusqu'à", to), withTool(tool)),
  wait: (time) => sentence(`Attendre au moins ${time}`),
  renew: (what) => told("Remplacer par du neuf", what),
  scrap: (what) => told("Mettre au rebut", what, "marquer, garder à part"),
  reuse: (what) => told("Réutiliser l'ancienne pièce", what),
  work: (what) => `Sur ${what}\u00a0:`,
  put: (thing, on) => told("Poser provisoirement", the(thing), under("sur", on), "à retirer ensuite"),
  take: (thing) => told("Retirer", the(thing)),
  press: (what, onto, tool) => told("Presser", what, under("sur", onto), withTool(tool)),
  fit: (verb, what, of) =>
    told(
      verb,
      of.fresh && !verb.endsWith("à neuf") ? `${what} (à l'état neuf)` : what,
      under("sur", of.onto),
      under("orientation", of.facing),
      withTool(of.tool),
      by(of.people),
      of.how,
    ),
  lowerIn: (what, tool, count) => told("Descendre en place", what, withTool(tool), by(count)),
  fingerTight: (what) => told("Visser à la main, sans serrer", what),
  tighten: (what, stage) => told(stage === undefined ? "Serrer" : `Serrer au palier ${stage}`, what),
  precautionBackTitle: (title) => `Lever la précaution (${lowerFirst(title)})\u00a0:`,
  starts: {
    without: (what) => told("Au départ, sans", what),
    drained: (what) => told("Au départ, vidange déjà faite", what),
    with: (title, hazard) => told("Au départ, déjà en place", `${lowerFirst(title)}, ${the(hazard)}`),
    onBench: "Au départ\u00a0: sur l'établi, hors de l'unité.",
  },
  leaves: (how, what, until, words) =>
    joined(
      [
        told(
          "Laissé à la fin",
          how === "turned" ? `unité en position ${what}` : what,
          {
            turned: "",
            out: "à l'état dévissé",
            "finger-tight": "vissage à la main seulement",
            off: "à l'état déposé",
            drained: "à l'état vidangé",
          }[how],
          under("jusqu'à", until),
        ),
        words,
      ],
      " ",
    ),
  afterwards: (text) => titled("Ensuite", text),
  stillStands: (title, hazard) => told("Pas levé ici, du travail reste ouvert", `${lowerFirst(title)}, ${the(hazard)}`),
  standAgain: (title, hazard) => told("Reprendre la précaution", `${lowerFirst(title)}, ${the(hazard)}`),
  repeatFrom: (step) => sentence(`Recommencer à partir de\u00a0: ${step}`),
  doProcedure: (title) => told("Exécuter", title),
  secondCheck: "Une deuxième personne contrôle et signe.",
  holdPoint: "S'arrêter ici jusqu'à la levée de ce point d'arrêt.",
  time: (time) => told("Durée", `environ ${time}`),
  people: (count) => told("Personnes", String(count)),
  video: (from, to, file) => told(`Vidéo${ifAny(" ", file)}`, `de ${from} à ${to}`),

  spanner: (tool, size) => joined([tool, size], " "),
  leftHand: "Filetage à gauche\u00a0: dévisser dans le sens horaire, serrer dans le sens antihoraire.",
  comesAway: (what) => told("Vient avec", what),
  withWashers: (what) => told("Avec", what),
  massHere: (mass, notGiven) =>
    notGiven === 0
      ? told("Masse suspendue à ce moment", mass)
      : mass
        ? told("Masse suspendue à ce moment", `${mass} et ${counted(notGiven, "pièce")} sans masse indiquée`)
        : "Masse non indiquée\u00a0: peser ou se renseigner avant de lever.",
  into: (kind, label) =>
    sentence(
      kind === "container" ? titled("Dans", the(label)) : `Dans le ${kind === "tray" ? "bac" : "sachet"} ${label}`,
    ),
  opens: (what) => told("À ouvrir pour cela", what),
  closesAfter: (what) => told("Refermer ensuite", what),
  against: (hazard) => told("Contre", the(hazard)),
  waitLeast: (time, why) => sentence(`Attendre au moins ${time}${why ? ` (${why})` : ""}`),
  waitWhy: {
    maker: "comme indiqué avec la précaution",
    "to-60-V": "calculé, jusqu'à 60 V CC\u00a0; aucune attente ne remplace la vérification",
    "to-0.2-J": "calculé, jusqu'à 0,2 J\u00a0; aucune attente ne remplace la vérification",
  },
  inPasses: (count, shares) => (shares ? titled(`en ${passes(count)}`, shares) : `en ${passes(count)}`),
  undoInPasses: (count) => sentence(`En ${passes(count)}, un peu à chaque fois`),
  sequence: (title) => lowerFirst(title),
  order: (order, round) =>
    told(round ? "Ordre, compté dans le sens horaire, départ au choix" : "Ordre, compté le long du tracé", order),
  torqueNone: "aucun couple de serrage demandé",
  torqueNotGiven: "couple de serrage non indiqué",
  torqueFor: (value, forWhat, whileText) =>
    joined(
      [
        `${value}${forWhat === undefined ? "" : forWhat === "rest" ? " pour les autres" : ` pour ${forWhat}`}`,
        under("pendant ce temps", whileText),
      ],
      ", ",
    ),
  stages: (stages) => stages.join(", puis "),
  backOutAfter: (angle, until) => `puis dévisser de ${angle}${until ? `, ${titled("jusqu'à ce que", until)}` : ""}`,
  torqueLine: (torque) =>
    /^(?:aucun )?couple de serrage\b/.test(torque) ? sentence(torque) : told("Couple de serrage", torque),
  tightenLater: "Le couple de serrage vient plus tard.",
  threadLocker: (name) => told("Sur le filetage", the(name)),
  lubricant: (name) => told("Lubrifier avec", the(name)),
  newIf: {
    worn: "Neuf en cas d'usure.",
    damaged: "Neuf en cas de dommage.",
    "as-a-set": "Si neuf\u00a0: le jeu complet.",
    "by-pairs": "Si neuf\u00a0: par paires.",
    reading: "Neuf si la mesure l'a demandé.",
    chosen: "De la taille que la mesure a demandée.",
    "kind-not-said": "D'un type à usage unique\u00a0: la procédure ne dit pas s'il est neuf ou ancien.",
  },
  isNew: "Poser du neuf.",
  aNew: (name, count) => `${the(name)} (${count > 1 ? `${count} pièces, ` : ""}à l'état neuf)`,
  hows: (verbs) => (verbs.length === 0 ? undefined : verbs.map(lowerFirst).join(", ")),
  limitsLine: (limits) => told("Limites", limits),
  newEvery: (strips) => sentence(strips === 1 ? "Neuf à chaque démontage" : `Neuf tous les ${strips} démontages`),
  reuseTimes: (times) => sentence(`Peut servir encore ${times} fois\u00a0: compter, puis neuf`),
  ownPlace: "Garder chaque pièce avec sa place\u00a0: elle y retourne.",
  ownPlaceBack: "À remettre à sa propre place.",
  keepTogether: (sets: readonly string[]) => sentence(`Garder ensemble\u00a0: ${sets.join("\u00a0; ")}`),
  togetherAgain: (sets: readonly string[]) => sentence(`À remettre ensemble\u00a0: ${sets.join("\u00a0; ")}`),
  newWasher: (what) => told("Avec du neuf", what),
  discardOf: (what) => told("Ne pas garder", what, "du neuf sera posé"),
  discard: "Ne pas garder\u00a0: du neuf sera posé.",
  lineUp: (label, text) => told("Aligner le repère", label, text),
  tagged: (labels) => told("D'après les étiquettes", labels),
  alignBy: (text) => titled("Alignement", text),
  goesOnDry: "Poser à sec\u00a0: rien sur les faces.",
  seal: (joint, consumable, bead) =>
    told(`Avant que les pièces se touchent, sur ${the(joint)}`, the(consumable), ifAny("", bead)),
  usesUp: (what) => told("Nécessite", what),
  bead: (width, length) => (length ? `cordon ${width} x ${length}` : `cordon ${width}, longueur non indiquée`),
  piecesNamed: (name, pieces) => `${the(name)} ${list(pieces)}`,
  each: (what, count) => `${what}, ${counted(count, "pièce")} pour chaque`,
  volumeNotGiven: "volume non indiqué",
  massNotGiven: "masse non indiquée",
  countNotGiven: "nombre non indiqué",

  limits: {
    atLeast: (value) => `au moins ${value}`,
    atMost: (value) => `au plus ${value}`,
    both: (low, high) => `de ${low} à ${high}`,
    condition: (value) => ` à ${value}`,
  },
  range: (low, high, unit) => `${low} à ${high} ${unit}`,
  noLimits: "pas de limites indiquées\u00a0: noter",
  asFound: "tel que trouvé",
  otherwiseLine: (what) => (what.startsWith("Sinon") ? what : told("Sinon", what)),
  otherwise: (what) => told("Sinon", what),
  consequence: {
    renew: (what) => titled("remplacer par du neuf", what),
    scrap: (what) => titled("mettre au rebut", what),
    repeat: (what) => titled("recommencer à partir de", what),
    choose: (what, from) => `${titled("choisir", what)}, parmi ${from}`,
    standardSize: "la cote standard",
    further: (build) => `poursuivre d'après les documents de la version «\u00a0${build}\u00a0»`,
  },
};
