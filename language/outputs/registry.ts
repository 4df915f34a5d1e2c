// Every output, one line each, sorted by name. Those that are made from a saved record stand by themselves: `record/check-output.ts`,
// `record/summary.ts`.

import { bill } from "./bill/bill.ts";
import { pathDrawings, patternDrawings, stripDiagram } from "./draw/draw.ts";
import { modelExport } from "./export/export.ts";
import { labels } from "./labels/labels.ts";
import { layoutSheet } from "./layout-sheet/layout-sheet.ts";
import { manual } from "./manual/manual.ts";
import type { Output } from "./output.ts";
import { refit } from "./refit/refit.ts";
import { batchSheet } from "./sheet/batch.ts";
import { handoverSheet } from "./sheet/handover.ts";
import { isolationSheet } from "./sheet/isolation.ts";
import { liftingSheet } from "./sheet/lifting.ts";
import { preparationSheet } from "./sheet/preparation.ts";
import { waitingSheet } from "./sheet/waiting.ts";
import { wasteSheet } from "./sheet/waste.ts";
import { torqueSheet } from "./torque-sheet/torque-sheet.ts";

export const outputs: readonly Output<unknown>[] = [
  bill,
  pathDrawings,
  patternDrawings,
  stripDiagram,
  modelExport,
  labels,
  manual,
  refit,
  batchSheet,
  handoverSheet,
  isolationSheet,
  layoutSheet,
  liftingSheet,
  preparationSheet,
  torqueSheet,
  waitingSheet,
  wasteSheet,
] as readonly Output<unknown>[];
