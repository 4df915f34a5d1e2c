// Ce que dit le manuel sur un écran avec lequel on travaille. Il demande ce qui manque et ne libère rien.

import type { Wording } from "../wording.ts";

export const tablet: Wording["tablet"] = {
  title: "Relevé sur cet appareil",
  titled: (title, text) => `${title}\u00a0: ${text}`,
  then: (first, second) => `${first}\u00a0; ${second}`,
  progress: (done, all) => `Cochées\u00a0: ${done} sur ${all}`,
  nextOpen: "Ligne ouverte suivante",
  save: "Enregistrer le relevé",
  load: "Charger un relevé",
  clear: "Commencer une autre unité",
  clearSure:
    "Effacer tout ce qui est saisi ici\u00a0? Enregistrer d'abord le relevé\u00a0: ces saisies ne seront plus nulle part.",
  loadSure: "Remplacer ce qui est saisi ici par le relevé\u00a0? Enregistrer d'abord ce qui doit rester.",
  notKept: "Ce navigateur ne garde rien de cette page. Enregistrer le relevé avant de la fermer.",
  saved: (file) => `Écrit dans les téléchargements\u00a0: ${file}`,
  loaded: "Le relevé est chargé.",
  loadOther:
    "Ce relevé vient d'une autre révision de la procédure. Il n'est pas chargé\u00a0: ses lignes demandent peut-être autre chose.",
  loadBad: (why) => `Ce relevé ne peut pas être chargé\u00a0: ${why}`,
  loadWhy: {
    "no-json": "ce n'est pas un relevé",
    "broken-off": "il s'interrompt avant la fin. L'enregistrer de nouveau là où il a été écrit",
    format: "ce n'est pas le relevé d'un tel manuel",
    version: "un Stripdown plus récent l'a peut-être écrit",
    entry: (place) => `son entrée ${place} n'est pas telle qu'un relevé la contient`,
  },
  loadUnknown: (lines) => `Non chargé, car une telle ligne n'existe pas ici\u00a0: ${lines}`,
  breakTitle: "Après une interruption du travail",
  breakSays:
    "Ces saisies ont été faites avant l'ouverture de la page. Si le travail a été interrompu, ces vérifications sont caduques. Les refaire avant de continuer\u00a0:",
  breakAgain: "Décocher ces vérifications",
  breakNone: "Le travail n'a pas été interrompu",

  missing: {
    precautions: "Cette ligne demande des précautions qui ne sont pas cochées. Prendre d'abord celles-ci\u00a0:",
    before: "Ces lignes viennent avant que la précaution soit levée\u00a0:",
    hold: "Le travail s'arrête à ce point jusqu'à ce qu'il soit levé\u00a0:",
    wait: "L'attente de cette ligne n'est pas écoulée. Lancer son horloge et la laisser courir.",
    reading: "Noter d'abord la mesure.",
    outside:
      "La mesure est hors limites. Faire ce que dit la ligne et mesurer de nouveau, ou noter sous «\u00a0Différent de la description\u00a0» ce qui a été fait et qui a donné son accord.",
    "outside-precaution":
      "La mesure est hors limites. S'arrêter et chercher pourquoi. Puis mesurer de nouveau\u00a0: rien de ce qui en dépend ne continue.",
    signature: "On signe avant de cocher.",
  },
  leaning: "Des lignes cochées demandent celle-ci. Revoir chacune d'elles\u00a0:",

  outside: (limits) => `Hors limites (${limits})`,
  notAsItShouldBe: "Pas comme prévu.",
  noNumber: "Ce n'est pas un nombre. La saisie n'est pas notée.",
  tries: "Essais",
  aTry: (number, says) => `${number}\u00a0: ${says}`,
  outsideShort: "hors limites",
  yes: "Oui",
  no: "Non",
  countDiffers: (due) => `Pas le nombre attendu\u00a0: ${due}. Chercher le reste.`,
  torqueOther: "Pas le couple de serrage de la procédure\u00a0:",
  torqueNoNumber: "Ce n'est pas un nombre.",
  torqueNotGiven: "La procédure n'indique pas de valeur à laquelle le comparer.",

  startWait: (time) => `Lancer l'horloge\u00a0: ${time}`,
  againWait: "Recommencer depuis le début",
  left: (time) => `encore ${time}`,
  waitOver: "Le temps est écoulé. Cela seul ne montre rien\u00a0: mesurer ou vérifier avant de continuer.",
  waitNote: "L'horloge ne court que tant que cette page est ouverte.",

  nextBolt: (number, done, all) => `Suivant\u00a0: numéro ${number}\u00a0; ${done} sur ${all} serrés`,
  inPass: (pass, passes) => `Passe ${pass} sur ${passes}.`,
  oneMore: "Un de plus est serré",
  oneBack: "Un de moins",
  allCounted: "Tous sont comptés. Noter le couple de serrage.",

  notAsWritten: "Différent de la description",
  what: "Quoi",
  howMany: "Combien",
  chosen: "Taille choisie",
  readingsOn: "Jour du travail noté maintenant",
  noDate: "Ce n'est pas une date\u00a0: année-mois-jour, comme 2027-03-31. La saisie n'est pas notée.",
  noDue:
    "Ce n'est pas une date\u00a0: année-mois-jour ou année-mois, comme 2027-03-31 ou 2027-03. La saisie n'est pas notée.",
  takenWith: "Mesuré avec",
  notSaid: "non indiqué",
  overdue: (instrument, due, on) =>
    `${instrument}\u00a0: échéance d'étalonnage ${due}, saisie pour le ${on}. Refaire avec un autre appareil, et se renseigner.`,
  whatThing: "Quel élément",
  wholeLine: "la ligne",
  note: "Comment on l'a trouvé",
  whatDone: "Ce qui a été fait",
  agreedBy: "Qui a donné son accord",
  wanted: "Pièce à commander",
  add: "Noter",
  takeOut: "Retirer cette saisie",

  counted: "Compté",
  countedOf: (name) => `Compté, ${name}`,
  setAt: "Réglé à",
  setAtOf: (name) => `Réglé à, ${name}`,
  unit: "Unité de mesure",
  wrench: "Clé n°",
  initials: "Initiales",
  asItShouldBe: "Comme prévu\u00a0?",
  instruments: "Clés dynamométriques et instruments utilisés",
  instrument: "Appareil",
  instrumentNumber: "Numéro",
  due: "Échéance d'étalonnage (AAAA-MM-JJ)",
};
