// The German catalogue. Style: the infinitive, as in German work instructions, with the name before it ("Gehäusemuttern abschrauben");
// no article stands before a name, since nobody gives its gender. Terms are those of DIN, DIN EN and DIN VDE standards where they have one.

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

export const de: Wording = {
  tag: "de",
  language: "Deutsch",
  review: {
    is: "awaited",
    says: "Die eingebauten deutschen Texte hat noch keine Fachkraft geprüft, die Deutsch spricht. Im Zweifel gilt der englische Text.",
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
