// The output "refit": strip and the way back as text, CSV and JSON.

import { output } from "../output.ts";
import { asJson } from "../text/json.ts";
import { refitAsCsv } from "./csv.ts";
import { refitData, type RefitData } from "./data.ts";
import { refitAsText } from "./text.ts";

export const refit = output<RefitData>({
  name: "refit",
  title: "Strip and refit, line by line",
  data: refitData,
  formats: {
    text: { extension: "txt", title: "Text", write: refitAsText },
    csv: { extension: "csv", title: "Table for a spreadsheet", write: refitAsCsv },
    json: {
      extension: "json",
      title: "Acts with their needs, for programs",
      write: ({ printed: _, ...data }) => asJson(data),
    },
  },
});
