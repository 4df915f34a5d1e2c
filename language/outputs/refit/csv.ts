// Strip and refit as one table: a row an action, in the order of doing.

import type { Provenance } from "../draft.ts";
import type { OutputOptions } from "../output.ts";
import type { Wording } from "../wording/wording.ts";
import { csv } from "../text/csv.ts";
import type { RefitData } from "./data.ts";
import { hazardFacts, hazardHead } from "../lines/hazard-facts.ts";
import type { Line, LineGroup } from "../lines/line.ts";

type Row = readonly (string | number | undefined)[];

export const refitAsCsv = (data: RefitData, { wording }: OutputOptions): string =>
  csv(
    [...wording.refit.columns],
    data.procedures.flatMap((procedure, i) =>
      rowsOf(procedure.title || procedure.id, data.printed[i]!, data.provenance, wording),
    ),
  );

/** The halves of one procedure that are there, a row a line. */
export const rowsOf = (
  procedure: string,
  printed: { readonly [Half in "strip" | "refit" | "finish"]?: readonly LineGroup[] },
  { draft }: Provenance,
  wording: Wording,
): Row[] =>
  (["strip", "refit", "finish"] as const).flatMap((half) =>
    (printed[half] ?? []).flatMap((group) =>
      group.lines.map((line) =>
        row([draftMark(draft, wording), procedure, wording.refit.halves[half]], group, line, wording),
      ),
    ),
  );

export const draftMark = (draft: Provenance["draft"], { document }: Wording): string =>
  draft.length > 0 ? document.draftMark : "";

function row(before: readonly string[], group: LineGroup, line: Line, wording: Wording): Row {
  const head = [...before, group.title, line.is === "action" ? line.id : ""];
  if (line.is !== "action") {
    const says =
      line.is === "hazard"
        ? [`${hazardHead(line.hazard, wording)}.`, ...hazardFacts(line.hazard, wording)].join(" ")
        : line.is === "message"
          ? wording.document.titled(wording.kinds.signal(line.signal), line.text)
          : line.is === "photo"
            ? line.alt || line.file
            : line.says;
    return [...head, says, "", "", "", "", ""];
  }
  const counts = line.items.filter((item) => item.count !== undefined && item.is !== "hazard"),
    of = (sorts: readonly string[]): string =>
      line.details
        .filter((detail) => sorts.includes(detail.sort))
        .map((detail) => detail.says)
        .join(" ");
  return [
    ...head,
    [line.says, line.text].filter(Boolean).join(" "),
    counts.length === 1 ? counts[0]!.count : "",
    of(["tool", "thread"]),
    line.torque
      ? wording.document.parts(
          [line.torque.text, line.torque.passes, line.torque.sequence, line.torque.order.join(" ")].filter(Boolean),
        )
      : "",
    of(["goes-to"]),
    of(["new", "discard", "mark", "with", "hazard", "wait", "limits", "otherwise", "how", "comes-away", "mass"]),
  ];
}
