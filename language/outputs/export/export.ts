// The output "export": the whole model as one JSON text.

import { output } from "../output.ts";
import { asJson } from "../text/json.ts";
import { exportData, type ExportData } from "./data.ts";

export const modelExport = output<ExportData>({
  name: "export",
  title: "The whole model",
  data: exportData,
  formats: {
    json: { extension: "json", title: "For programs", write: asJson },
  },
});
