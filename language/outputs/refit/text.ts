// Strip and refit as plain text for a terminal or a printer, wrapped at 100 signs.

import { linesText } from "../text/lines-text.ts";
import type { OutputOptions } from "../output.ts";
import { reviewLines } from "../wording/review.ts";
import { shownOnOneLine } from "../text/shown.ts";
import type { RefitData } from "./data.ts";

export function refitAsText(data: RefitData, { wording }: OutputOptions): string {
  const { refit: words, document } = wording,
    out: string[] = [];
  data.procedures.forEach((procedure, i) => {
    const printed = data.printed[i]!,
      title = [procedure.title || procedure.id, procedure.unitTitle || procedure.unit, printed.buildText]
        .filter(Boolean)
        .map(shownOnOneLine)
        .join(" - ");
    if (i > 0) out.push("");
    out.push(title, "=".repeat(Math.min(title.length, 100)));
    if (data.provenance.draft.length > 0)
      out.push(document.draftLine(data.provenance.openFindings, data.provenance.draft));
    out.push(document.contentHash(data.provenance.hash), document.cautionLine, ...reviewLines(wording));
    for (const [half, groups] of [
      ["strip", printed.strip],
      ["refit", printed.refit],
      ["finish", printed.finish],
    ] as const) {
      if (groups.length === 0) continue;
      out.push("", words.halves[half].toUpperCase(), ...linesText(groups, wording));
    }
    if (procedure.refitIs === "none") out.push("", words.noRefit);
  });
  return `${out.join("\n")}\n`;
}
