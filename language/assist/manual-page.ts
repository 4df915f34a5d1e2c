// The manual of a file for a view beside the source: its body as markup, its style, and where each printed line comes from.

import type { Span } from "../findings/finding.ts";
import { manualDocument } from "../outputs/manual/build.ts";
import { manualBody } from "../outputs/manual/html.ts";
import { style } from "../outputs/manual/style.ts";
import type { OutputOptions } from "../outputs/output.ts";
import type { Checked } from "../workspace/check-project.ts";
import { inputFor, printedPerformances } from "./refit-of.ts";

export interface ManualPage {
  readonly title: string;
  /** Of our own making throughout: what authors wrote stands in it as text. */
  readonly body: string;
  readonly style: string;
  /** Ids of elements in the body, with the place of the text that they print; in the order of the page. */
  readonly marks: readonly { readonly id: string; readonly at: Span }[];
}

/** The procedures of the file that no other of them does; undefined where it has none. */
export function manualPage(checked: Checked, file: string, options: OutputOptions): ManualPage | undefined {
  const printed = printedPerformances(checked, file);
  if (printed.length === 0) return undefined;
  const document = manualDocument(inputFor(checked, printed), options);
  const marks = document.chapters.flatMap((chapter) =>
    [...chapter.strip, ...chapter.refit, ...chapter.finish].flatMap((group) =>
      group.lines.flatMap((line, i) => {
        const mark =
          line.is === "action" ? [{ id: `${chapter.prefix}line-${line.id.toLowerCase()}`, at: line.at }] : [];
        return i === 0 ? [{ id: group.id, at: line.at }, ...mark] : mark;
      }),
    ),
  );
  return { title: `${document.title}: ${document.subtitle}`, body: manualBody(document, options), style, marks };
}
