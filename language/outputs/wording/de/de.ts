// The German catalogue. Style: the infinitive, as in German work instructions, with the name before it ("Gehäusemuttern abschrauben");
// no article stands before a name, since nobody gives its gender. Terms, all from memory:
// fasteners DIN ISO 1891, joining and taking apart DIN 8593 and DIN 8591, hazards DIN EN ISO 12100, precautions against electricity
// DIN VDE 0105-100 (EN 50110-1), signal words DIN ISO 3864-2, protective equipment as DGUV rules name it; the rest common practice.

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
