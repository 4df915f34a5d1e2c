// The bill as text for a terminal or a printer.

import type { OutputOptions } from "../output.ts";
import { reviewLines } from "../wording/review.ts";
import { shownOnOneLine } from "../text/shown.ts";
import { wrap } from "../text/wrap.ts";
import { billName, type BillData, type BillRow } from "./data.ts";

export function billAsText(data: BillData, { wording }: OutputOptions): string {
  const { bill: words, document } = wording,
    out: string[] = [words.title, "=".repeat(words.title.length)];
  if (data.provenance.draft.length > 0)
    out.push(document.draftLine(data.provenance.openFindings, data.provenance.draft));
  for (const { title, unitTitle, buildText } of data.procedures)
    out.push(...wrap([unitTitle, title, buildText].filter(Boolean).map(shownOnOneLine).join(" - "), "", "  "));
  out.push(
    `${words.forUnits(data.units)} ${document.contentHash(data.provenance.hash)}`,
    document.cautionLine,
    ...reviewLines(wording),
  );
  if (data.lines.length === 0) out.push("", words.nothing);
  for (const grade of ["certain", "worn"] as const) {
    const lines = data.lines.filter((line) => line.grade === grade);
    if (lines.length === 0) continue;
    out.push("", words.grades[grade].toUpperCase());
    for (const line of lines) out.push(...rowText(line, data.units, wording));
  }
  if (data.lines.some((line) => line.total.notGiven > 0)) out.push("", ...wrap(words.notGivenNote, "", ""));
  return `${out.join("\n")}\n`;
}

function rowText(line: BillRow, units: number, wording: OutputOptions["wording"]): string[] {
  const { bill: words, document } = wording;
  const head = [billName(line, wording), line.size, line.standard, line.partNo]
    .filter((each) => each !== undefined && each !== "")
    .map((each) => shownOnOneLine(each!))
    .join(", ");
  const packs = line.packs ? words.packsOf(line.packs.text, line.pack ?? "") : "";
  const more = document.parts(
    [
      packs,
      units > 1 ? words.each(line.perUnit.text) : "",
      line.why,
      line.lead ? words.lead(line.lead) : "",
      line.shelfLife ? words.shelfLife(line.shelfLife) : "",
    ].filter(Boolean),
  );
  const on = line.usedOn.map(shownOnOneLine);
  return [
    ...wrap(document.titled(head, line.total.text), "  ", "    "),
    ...(more ? wrap(shownOnOneLine(more), "      ", "      ") : []),
    ...(on.length > 0 ? wrap(words.usedOn(on), "      ", "      ") : []),
  ];
}
