// The output "bill": consumables and spares as text, CSV and JSON.

import { output } from "../output.ts";
import { asJson } from "../text/json.ts";
import { billAsCsv } from "./csv.ts";
import { billData, type BillData } from "./data.ts";
import { billAsText } from "./text.ts";

export const bill = output<BillData>({
  name: "bill",
  title: "Consumables and spares",
  data: billData,
  formats: {
    text: { extension: "txt", title: "Text", write: billAsText },
    csv: { extension: "csv", title: "Table for a spreadsheet", write: billAsCsv },
    json: {
      extension: "json",
      title: "Lines with their uses, for programs",
      write: asJson,
    },
  },
});
