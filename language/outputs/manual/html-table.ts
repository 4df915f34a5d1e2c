// One way to make a table with heads, a caption and a head cell in every row. Columns that are empty throughout are left out.

import { html, Markup, type Value } from "../text/markup.ts";

/** On a screen a wide table is moved sideways; paper has no more room than it has. */
export const tableStyle = "@media screen{td.prose{min-width:13rem}}";

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

/** A table of so few rows stays on one page. */
const shortest = 8;

/** @param quietCaption the heading just above says the same: the caption is for screen readers through the label alone. */
export function table<Row>(
  caption: string,
  columns: readonly Column<Row>[],
  rows: readonly Row[],
  quietCaption = false,
): Markup {
  const shown = columns.filter(
    (column) =>
      column.isHead ||
      rows.some((row) => {
        const value = column.cell(row);
        return value !== "" && value !== undefined && value !== false;
      }),
  );
  const cell = (column: Column<Row>, row: Row): Markup => {
    const value = column.cell(row);
    if (column.isHead) return html`<th scope="row">${value}</th>`;
    const className = column.is ?? (isProse(value) ? "prose" : undefined);
    return html`<td${className !== undefined && html` class="${className}"`}>${value}</td>`;
  };
  return html`<div class="scroll${rows.length <= shortest && html` short`}" role="group" tabindex="0" aria-label="${caption}"><table${quietCaption && html` aria-label="${caption}"`}>${!quietCaption && html`<caption>${caption}</caption>`}<thead><tr>${shown.map(({ head }) => html`<th scope="col">${head}</th>`)}</tr></thead>
<tbody>${rows.map(
    (row) => html`<tr>${shown.map((column) => cell(column, row))}</tr>
`,
  )}</tbody></table></div>
`;
}
