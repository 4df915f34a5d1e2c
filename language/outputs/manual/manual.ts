// The output "manual": the whole manual as one HTML file; its document as JSON is for renderers and tests.

import { output } from "../output.ts";
import { manualDocument } from "./build.ts";
import type { ManualDocument } from "./document.ts";
import { manualPrint } from "../pdf/manual-print.ts";
import { manualAsHtml } from "./html.ts";

export const manual = output<ManualDocument>({
  name: "manual",
  title: "Manual",
  data: manualDocument,
  formats: { html: { extension: "html", title: "One file for the browser and for paper", write: manualAsHtml } },
  print: manualPrint,
});
