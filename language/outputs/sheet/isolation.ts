// Energy isolation: every precaution that the strip takes, in its order, with what is due and places to sign; then the way back.

import type { Hazard } from "../../model/model.ts";
import { isKindOf, precautions as precautionKinds } from "../../tables/index.ts";
import { figureText, timeText } from "../lines/figures.ts";
import type { ActionLine } from "../lines/line.ts";
import { actionsIn } from "./actions.ts";
import type { SheetKind, Made } from "./sheet-data.ts";
import { tableSheet } from "./table-sheet.ts";

export const isolationKind: SheetKind = {
  name: "isolation",
  title: ({ wording }) => wording.benchSheets.isolation.title,
  note: ({ wording }) => wording.benchSheets.isolation.note,
  landscape: true,
  make: ({ lines, options }) => {
    const { benchSheets: words } = options.wording,
      { isolation } = words,
      { model } = lines.context;
    const hazardOf = (line: ActionLine): Hazard | undefined =>
      model.hazards.find(({ id }) => line.items.some((item) => item.id === id));
    const taken = [...actionsIn(lines.strip), ...actionsIn(lines.refit)].filter(
      (line) => isKindOf(precautionKinds, line.verb) && hazardOf(line),
    );
    const back = actionsIn(lines.refit).filter(
      (line) => line.verb === "lift" && line.items.some(({ is }) => is === "hazard"),
    );
    return {
      tables: [
        {
          title: isolation.take,
          columns: [words.line, isolation.source, isolation.act, isolation.where, isolation.withWhat, isolation.due],
          blank: [isolation.lock, words.reading, words.who, words.when],
          empty: isolation.nothing,
          rows: taken.map((line) => {
            const hazard = hazardOf(line)!;
            return [
              line.id,
              sourceOf(hazard, options),
              line.says.replace(/:$/, ""),
              line.text,
              line.details.find(({ sort }) => sort === "with")?.says.replace(/\.$/, "") ?? "",
              [
                line.wait === undefined ? "" : isolation.wait(timeText(line.wait, options.wording)),
                ...line.readings.map(({ limits }) => limits),
              ]
                .filter(Boolean)
                .join("; "),
            ];
          }),
        },
        {
          title: isolation.back,
          columns: [words.line, isolation.source, isolation.act, isolation.where],
          blank: [words.who, words.when],
          empty: isolation.nothingBack,
          rows: back.map((line) => [
            line.id,
            line.items.find(({ is }) => is === "hazard")?.name ?? "",
            line.says.replace(/:$/, ""),
            line.text,
          ]),
        },
      ],
    };
  },
};

export const isolationSheet = tableSheet(isolationKind);

/** The hazard by name with what it can do: voltage, pressure, force. */
function sourceOf(hazard: Hazard, options: Made["options"]): string {
  const figures = [...hazard.figures]
    .filter(([word]) => word !== "keep-out")
    .map(([word, quantity]) =>
      options.wording.document.hazardFigure(options.wording.kinds.hazardFigure(word), figureText(quantity, options)),
    );
  return [hazard.name, ...figures].join(", ");
}
