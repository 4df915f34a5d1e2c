// Energy isolation: every precaution that the strip takes, in its order, with what is due and places to sign; then the way back.

import type { Hazard } from "../../model/model.ts";
import { isKindOf, precautions as precautionKinds } from "../../tables/index.ts";
import { toolName, type LineContext } from "../lines/context.ts";
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
    // What is run under power at the end takes precautions too, and ends them for the test.
    const later = [...actionsIn(lines.refit), ...actionsIn(lines.finish)];
    const taken = [...actionsIn(lines.strip), ...later].filter(
      (line) => isKindOf(precautionKinds, line.verb) && hazardOf(line),
    );
    const back = [...actionsIn(lines.strip).filter(isRestored), ...later].filter(
      (line) => (line.verb === "lift" && hazardOf(line)) || isRestored(line),
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
              withWhat(line, hazard, lines.context),
              options.wording.document.parts(
                [
                  line.wait === undefined ? "" : isolation.wait(timeText(line.wait, options.wording)),
                  ...line.readings.map(({ limits }) => limits),
                ].filter(Boolean),
              ),
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
            // What ends all of them at once says under its line how each is ended.
            isRestored(line)
              ? [line.text, ...line.details.filter(({ sort }) => sort === "how").map(({ says }) => says)]
                  .filter(Boolean)
                  .join(" ")
              : line.text,
          ]),
        },
      ],
    };
  },
};

export const isolationSheet = tableSheet(isolationKind);

/** All precautions against a hazard end here, for a test under power. */
const isRestored = ({ verb }: ActionLine): boolean => verb === "restore";

/** The tools of a precaution; where it names none, what the line says of its own. */
function withWhat({ verb, details }: ActionLine, { precautions }: Hazard, context: LineContext): string {
  const tools = precautions.find(({ kind }) => kind === verb)?.tools ?? [];
  return tools.length > 0
    ? context.wording.acts.list(tools.map(({ text }) => toolName(context, text)))
    : (details.find(({ sort }) => sort === "with")?.says.replace(/\.$/, "") ?? "");
}

/** The hazard by name with what it can do: voltage, pressure, force. */
function sourceOf(hazard: Hazard, options: Made["options"]): string {
  const figures = [...hazard.figures]
    .filter(([word]) => word !== "keep-out")
    .map(([word, quantity]) =>
      options.wording.document.hazardFigure(options.wording.kinds.hazardFigure(word), figureText(quantity, options)),
    );
  return [hazard.name, ...figures].join(", ");
}
