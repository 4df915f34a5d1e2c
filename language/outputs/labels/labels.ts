// The output "labels": for the bags and trays that a strip fills.

import { output } from "../output.ts";
import { labelsPrint } from "../pdf/sheets-print.ts";
import { csv } from "../text/csv.ts";
import { asJson } from "../text/json.ts";
import { labelData, type LabelData } from "./data.ts";
import { labelsAsHtml } from "./html.ts";

export const labels = output<LabelData>({
  name: "labels",
  title: "Labels for bags and trays",
  data: labelData,
  formats: {
    html: { extension: "html", title: "Label sheets to print", write: labelsAsHtml },
    csv: {
      extension: "csv",
      title: "A row for each thing, for a label printer",
      write: ({ places, provenance }, { wording: { labels: words, document } }) =>
        csv(
          words.columns,
          places.flatMap((place) =>
            place.items.map((item) => [
              provenance.draft.length > 0 ? document.draftMark : "",
              words.place(place.kind, place.label),
              item.id,
              item.name,
              item.count ?? words.countNotGiven,
              item.size,
              item.step === undefined ? "" : `${item.step.number} ${item.step.title}`,
              item.line,
              item.discard ? words.discard : "",
              place.unit,
              place.procedure,
            ]),
          ),
        ),
    },
    json: {
      extension: "json",
      title: "What lies where, for programs",
      write: asJson,
    },
  },
  print: labelsPrint,
});
