// The bill as a table for the stores.

import type { OutputOptions } from "../output.ts";
import { csv } from "../text/csv.ts";
import { billName, type BillData } from "./data.ts";

export function billAsCsv(data: BillData, { wording }: OutputOptions): string {
  const { bill: words, document } = wording,
    draft = data.provenance.draft.length > 0 ? document.draftMark : "";
  return csv(
    words.columns,
    data.lines.map((line) => [
      draft,
      words.grades[line.grade],
      billName(line, wording),
      words.sorts[line.what],
      line.size,
      line.partNo,
      line.standard,
      line.perUnit.text,
      line.total.text,
      line.packs?.text,
      line.pack,
      line.lead,
      line.shelfLife,
      line.why,
      document.parts([
        ...new Set(line.usedAt.map(({ on, step }) => (on && step ? document.titled(on, step) : on || step))),
      ]),
    ]),
  );
}
