// Strip and refit as one table: a row an action, in the order of doing.

import type { OutputOptions } from "../output.ts";
import { csv } from "../text/csv.ts";
import type { RefitData } from "./data.ts";
import { hazardFacts, hazardHead } from "../lines/hazard-facts.ts";
import type { Line, LineGroup } from "../lines/line.ts";

export function refitAsCsv(data: RefitData, { wording }: OutputOptions): string {
  const { refit: words } = wording,
    rows: (string | number | undefined)[][] = [];
  data.procedures.forEach((procedure, i) => {
    const printed = data.printed[i]!;
    for (const [half, groups] of [
      ["strip", printed.strip],
      ["refit", printed.refit],
      ["finish", printed.finish],
    ] as const) {
      for (const group of groups)
        for (const line of group.lines)
          rows.push(row(procedure.title || procedure.id, words.halves[half], group, line, data, wording));
    }
  });
  return csv([...words.columns], rows);
}

function row(
  procedure: string,
  half: string,
  group: LineGroup,
  line: Line,
  data: RefitData,
  wording: OutputOptions["wording"],
): (string | number | undefined)[] {
  const draft = data.provenance.draft.length > 0 ? wording.document.draftMark : "",
    head = [draft, procedure, half, group.title, line.is === "action" ? line.id : ""];
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
      ? [line.torque.text, line.torque.passes, line.torque.sequence, line.torque.order.join(" ")]
          .filter(Boolean)
          .join("; ")
      : "",
    of(["goes-to"]),
    of(["new", "discard", "mark", "with", "hazard", "wait", "limits", "otherwise", "how", "comes-away", "mass"]),
  ];
}
