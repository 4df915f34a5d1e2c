// The French catalogue. Style: the infinitive, as in French maintenance sheets, with the name behind a colon ("Déposer : couvercle"),
// since nobody gives the gender or the number of an author's name. Terms, all from memory: fasteners
// NF EN ISO 1891, hazards NF EN ISO 12100, precautions against electricity NF C 18-510, signal words NF ISO 3864-2, protective equipment as
// INRS leaflets name it; the rest common practice. A no-break space stands before a colon and a semicolon.

import type { Wording } from "../wording.ts";
import { acts } from "./acts.ts";
import { benchSheets } from "./bench-sheets.ts";
import { refitBook } from "./refit-book.ts";
import { bill, document, refit } from "./document.ts";
import { draw } from "./draw.ts";
import { instructions } from "./instructions.ts";
import { kinds } from "./kinds.ts";
import { figures, lines } from "./lines.ts";
import { manual } from "./manual.ts";
import { record } from "./record.ts";
import { labels, layoutSheet, torqueSheet } from "./sheets.ts";
import { tablet } from "./tablet.ts";

export const fr: Wording = {
  tag: "fr",
  language: "Français",
  review: {
    is: "awaited",
    says: "Les textes français intégrés n'ont pas encore été relus par un praticien francophone. En cas de doute, le texte anglais prévaut.",
  },
  acts,
  kinds,
  lines,
  figures,
  document,
  refit,
  bill,
  manual,
  draw,
  labels,
  torqueSheet,
  layoutSheet,
  record,
  tablet,
  instructions,
  benchSheets,
  refitBook,
};
