// Mots du livret de remontage, alimenté par un relevé. Ils disent ce qui a été écrit et ne lèvent rien.

import type { Wording } from "../wording.ts";

export const refitBook: Wording["refitBook"] = {
  title: (procedure, serial) =>
    `Livret de remontage\u00a0: ${procedure}${serial === "" ? "" : `, numéro de série ${serial}`}`,
  sections: { recorded: "Ce que dit le relevé", closing: "Liste de clôture" },
  file: "Relevé",
  lead: [
    "Ce livret contient le remontage d'une seule unité et, aux lignes concernées, ce que son relevé dit du démontage.",
    "Toute vérification du relevé est caduque. La refaire avant la ligne qui en a besoin.",
    "Ce que le relevé ne dit pas n'est pas connu. Regarder avant de continuer.",
  ],
  whole: "Pour tout le remontage",
  at: (line, says) => `Relevé, ligne ${line}\u00a0: ${says}`,
  reading: (what, figure, limits, outside) =>
    `${what}\u00a0: ${figure}${outside ? ", hors limites" : ""}${limits === "" ? "" : ` (${limits})`}`,
  notTicked: "Non cochée\u00a0: regarder si cela a été fait.",
  chosen: (what, chosen) => `${what}, choix\u00a0: ${chosen}`,
  notChosen: (what) => `${what}\u00a0: ce qui a été choisi n'est pas noté`,
  ticked: "Le relevé porte cette ligne cochée.",

  closingNote:
    "Tout ce que le relevé laisse ouvert. Une ligne reste ouverte jusqu'à la signature d'une personne qui en a le droit.",
  nothing: "Le relevé ne laisse rien d'ouvert. Seul le relevé est lu\u00a0; cela ne dit rien de la machine.",
  left: "Ce qui est ouvert",
  wanted: "Pièces demandées",
  agreed: "Différent de la description, et personne n'a donné son accord",
  outside: "Valeurs hors limites, et ce qui n'est pas comme prévu",
  temporary: "Éléments provisoires et obturateurs mis au démontage",
  ticks: "Cases non cochées au démontage",
  other: "Ce qui manque ou diffère encore",
  capped: (what) => `Obturateur sur\u00a0: ${what}`,
  comesOff: (what, line) => `${what}\u00a0: s'enlève à la ligne ${line}`,
  staysOn: (what) => `${what}\u00a0: aucune ligne du remontage ne l'enlève`,
};
