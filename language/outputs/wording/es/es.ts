// The Spanish catalogue. Style: the infinitive, as in Spanish workshop sheets, with the name behind a colon ("Desmontar: tapa"), since
// nobody gives the gender or the number of an author's name. Terms, all from memory: fasteners
// UNE-EN ISO 1891, hazards UNE-EN ISO 12100, precautions against electricity Royal Decree 614/2001, signal words ISO 3864-2, protective
// equipment Royal Decree 773/1997; the rest common practice.

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

export const es: Wording = {
  tag: "es",
  language: "Español",
  review: {
    is: "awaited",
    says: "Los textos españoles incorporados aún no los ha revisado un profesional de habla española. En caso de duda prevalece el texto inglés.",
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
