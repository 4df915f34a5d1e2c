// The JSON Schemas of the outputs that a program may read.

import { billShape } from "./shapes/bill.ts";
import { published } from "./shapes/common.ts";
import { drawingShape } from "./shapes/drawing.ts";
import { modelShape } from "./shapes/model.ts";
import { recordShape } from "./shapes/record.ts";
import { refitBookShape } from "./shapes/refit-book.ts";
import { refitShape } from "./shapes/refit.ts";
import {
  labelsShape,
  layoutSheetShape,
  recordCheckShape,
  recordSummaryShape,
  sheetShape,
  torqueSheetShape,
} from "./shapes/sheets.ts";

export function generate(): readonly { readonly path: string; readonly text: string }[] {
  return [
    published("refit", refitShape),
    published("refit-book", refitBookShape),
    published("bill", billShape),
    published("model", modelShape),
    published("drawing", drawingShape),
    published("labels", labelsShape),
    published("torque-sheet", torqueSheetShape),
    published("layout-sheet", layoutSheetShape),
    published("sheet", sheetShape),
    published("record", recordShape),
    published("record-check", recordCheckShape),
    published("record-summary", recordSummaryShape),
  ];
}
