// What the sheets for the bench have in common: which procedure in which build a part of a sheet is of, and the page and the text that
// such parts stand in.

import type { Performance } from "../../bench/trace.ts";
import type { Provenance } from "../draft.ts";
import { buildText } from "../lines/build-text.ts";
import type { OutputOptions } from "../output.ts";
import { headLines, htmlPage, pageHead } from "../page.ts";
import { html, type Markup } from "../text/markup.ts";
import { shownOnOneLine } from "../text/shown.ts";
import { wrap } from "../text/wrap.ts";

/** Names are the authors', or the ids where they give none. */
export interface ProcedureHead {
  readonly title: string;
  readonly unit: string;
  readonly build: string;
  /** As printed. */
  readonly buildText: string;
}

export const procedureHead = ({ model, procedure }: Performance, { wording }: OutputOptions): ProcedureHead => ({
  title: procedure.title || procedure.id,
  unit: model.title || model.unit,
  build: model.build,
  buildText: buildText(model, wording),
});

/** "Pump, Strip, with heater" */
export const titleOf = (
  { unit, title, buildText: build }: Omit<ProcedureHead, "build">,
  { wording }: OutputOptions,
): string => wording.document.titles([unit, title, build].filter(Boolean));

export interface Sheet<Of extends ProcedureHead> {
  readonly title: string;
  readonly note: string;
  readonly provenance: Provenance;
  readonly procedures: readonly Of[];
}

/** Each procedure begins on a page of its own: for the style of the page. */
export const ownPages = "main section{break-after:page}main section:last-child{break-after:auto}";

export function sheetPage<Of extends ProcedureHead>(
  { title, note, provenance, procedures }: Sheet<Of>,
  style: string,
  content: (of: Of) => Markup,
  options: OutputOptions,
): string {
  return htmlPage(
    {
      title,
      style,
      body: html`${pageHead(title, provenance, options)}
<main><p>${note}</p>${procedures.map(
        (procedure) => html`<section><h2>${titleOf(procedure, options)}</h2>
${content(procedure)}</section>
`,
      )}</main>`,
    },
    provenance,
    options,
  );
}

/** `content`: the lines below the title of a procedure. */
export function sheetText<Of extends ProcedureHead>(
  { title, note, provenance, procedures }: Sheet<Of>,
  content: (of: Of) => readonly string[],
  options: OutputOptions,
): string {
  const out = [title, "=".repeat(title.length), ...headLines(provenance, options), ...wrap(note, "", "")];
  for (const procedure of procedures)
    out.push("", ...wrap(shownOnOneLine(titleOf(procedure, options)), "", "  "), ...content(procedure));
  return `${out.join("\n")}\n`;
}
