// What stands beside a part on the layout sheet, in words.

import type { OutputOptions } from "../output.ts";
import type { LayoutRow } from "./data.ts";

export function factsOf(row: LayoutRow, { wording: { layoutSheet: words } }: OutputOptions): string[] {
  return [
    words.count(row.count),
    row.mass,
    ...row.along,
    ...(row.goesTo === "" ? [] : [words.goesTo(row.goesTo)]),
    ...(row.discard ? [words.discard] : []),
    words.line(row.line, row.step),
  ].filter(Boolean);
}
