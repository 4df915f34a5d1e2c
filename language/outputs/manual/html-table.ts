// One way to make a table with heads, a caption and a head cell in every row. Columns that are empty throughout are left out.

import { html, Markup, type Value } from "../text/markup.ts";

/** On a screen a wide table is moved sideways; paper has no more room than it has. */
export const tableStyle = "td.sign{height:2.4rem}@media screen{td.prose{min-width:13rem}}";

export interface Column<Row> {
  readonly head: string;
  cell(row: Row): Value;
  /** `n`: a number, set to the right. */
  readonly is?: "n" | "code";
  /** It names the row. */
  readonly isHead?: true;
}

/** Signs from which a text is sentences: beside empty columns for a pen it would be left one word a line. */
const prose = 60;
const isProse = (value: Value): boolean =>
  typeof value === "string"
    ? value.length > prose
    : value instanceof Markup && value.source.length > prose && value.source.replace(/<[^>]*>/g, "").length > prose;

/** A table of so few rows stays on one page; one of a name and what is said of it has low rows. */
const shortest = (columns: number): number => (columns > 2 ? 8 : 14);

/** @param quietCaption the heading just above says the same: the caption is for screen readers through the label alone. */
export function table<Row>(
  caption: string,
  columns: readonly Column<Row>[],
  rows: readonly Row[],
  quietCaption = false,
): Markup {
  const cells = rows.map((row) => columns.map((column) => column.cell(row))),
    isShown = columns.map(
      (column, i) =>
        column.isHead ||
        cells.some((of) => {
          const value = of[i];
          return value !== "" && value !== undefined && value !== false;
        }),
    ),
    width = isShown.filter(Boolean).length;
  const cellHtml = (value: Value, i: number): Value => {
    const { isHead, is } = columns[i]!;
    if (!isShown[i]) return false;
    if (isHead) return html`<th scope="row">${value}</th>`;
    // What is signed has the height that a hand needs.
    if (typeof value === "string" && /^_+$/.test(value)) return html`<td class="sign"></td>`;
    const className = is ?? (isProse(value) ? "prose" : undefined);
    return className === undefined ? html`<td>${value}</td>` : html`<td class="${className}">${value}</td>`;
  };
  return html`<div class="scroll${rows.length <= shortest(width) && html` short`}" role="group" tabindex="0" aria-label="${caption}"><table${quietCaption && html` aria-label="${caption}"`}>${!quietCaption && html`<caption>${caption}</caption>`}<thead><tr>${columns.map(({ head }, i) => isShown[i] && html`<th scope="col">${head}</th>`)}</tr></thead>
<tbody>${cells.map(
    (of) => html`<tr>${of.map(cellHtml)}</tr>
`,
  )}</tbody></table></div>
`;
}
