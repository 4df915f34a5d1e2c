// The British English catalogue, put together from its chapters. Style: the imperative, one act a sentence. Terms, all from memory:
// fasteners BS EN ISO 1891, hazards BS EN ISO 12100, precautions against electricity BS EN 50110-1, signal words ISO 3864-2 and ANSI Z535.4,
// lifting BS 7121; the rest common practice.

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
import type { Review } from "../review.ts";
import { labels, layoutSheet, torqueSheet } from "./sheets.ts";
import { tablet } from "./tablet.ts";

const tag: string = "en-GB";

/** The language that the program is written in: nothing is translated. */
const review = { is: "source" } as Review;

export const enGb = {
  tag,
  /** The language's own name for itself. */
  language: "English (United Kingdom)",
  review,
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
