// What is written of a file from the editor: its manual, the sheets for the bench, the labels, each as one HTML file beside it. Made here
// as the command line makes them; where they go, and whether what stands there may be replaced, is not decided here.

import { labels } from "../outputs/labels/labels.ts";
import { layoutSheet } from "../outputs/layout-sheet/layout-sheet.ts";
import { manual } from "../outputs/manual/manual.ts";
import { write, type Output, type OutputOptions } from "../outputs/output.ts";
import { handoverSheet } from "../outputs/sheet/handover.ts";
import { isolationSheet } from "../outputs/sheet/isolation.ts";
import { liftingSheet } from "../outputs/sheet/lifting.ts";
import { preparationSheet } from "../outputs/sheet/preparation.ts";
import { waitingSheet } from "../outputs/sheet/waiting.ts";
import { wasteSheet } from "../outputs/sheet/waste.ts";
import { torqueSheet } from "../outputs/torque-sheet/torque-sheet.ts";
import type { Checked } from "../workspace/check-project.ts";
import type { OtherWords } from "../workspace/other-words.ts";
import { inputFor, printedPerformances } from "./refit-of.ts";

/** What can be asked for, with the words that the names of its files end in. */
const kinds = {
  manual: { manual },
  sheets: {
    torques: torqueSheet,
    layout: layoutSheet,
    preparation: preparationSheet,
    isolation: isolationSheet,
    lifting: liftingSheet,
    handover: handoverSheet,
    waiting: waitingSheet,
    waste: wasteSheet,
  },
  labels: { labels },
} as const satisfies Readonly<Record<string, Readonly<Record<string, unknown>>>>;

export type DocumentKind = keyof typeof kinds;
export const documentKinds = Object.keys(kinds) as readonly DocumentKind[];

export interface Documents {
  readonly files: readonly { readonly name: string; readonly text: string }[];
  /** Findings that are open in what they are made of: more than 0 makes each of them a draft. */
  readonly open: number;
  /** Pictures that are named and not shown, each counted once. */
  readonly pictures: number;
}

/** Names of the files, whatever stands in the source. */
export const documentNames = (file: string, asked: readonly DocumentKind[]): string[] =>
  eachOf(file, asked).map(({ name }) => name);

/** Undefined where the file has no procedure to print. `words`: the authors' texts in another language. */
export function documentsOf(
  checked: Checked,
  file: string,
  asked: readonly DocumentKind[],
  options: OutputOptions,
  words?: OtherWords,
): Documents | undefined {
  const printed = printedPerformances(checked, file);
  if (printed.length === 0) return undefined;
  const input = inputFor(withinReach(checked, file), words ? printed.map(words.of) : printed),
    named = new Set<string>();
  const settings: OutputOptions = {
    ...options,
    ...(words ? { textsFrom: words.from } : {}),
    picture: (path, from) => {
      named.add(`${from}\n${path}`);
      return undefined;
    },
  };
  const files = eachOf(file, asked).map(({ name, output }) => {
    const text = write(output, "html", input, settings);
    return { name, text: words ? words.marked(text) : text };
  });
  return { files, open: input.openFindings, pictures: named.size };
}

function eachOf(
  file: string,
  asked: readonly DocumentKind[],
): { readonly name: string; readonly output: Output<unknown> }[] {
  const base = file.slice(file.lastIndexOf("/") + 1).replace(/\.strip$/, "");
  return documentKinds
    .filter((kind) => asked.includes(kind))
    .flatMap((kind) =>
      Object.entries(kinds[kind] as Readonly<Record<string, Output<unknown>>>).map(([word, output]) => ({
        name: `${base}-${word}.html`,
        output,
      })),
    );
}

/** What was found in the file and in all that it uses: what else lies in the folder makes no draft of it. */
function withinReach(checked: Checked, file: string): Checked {
  const reached = new Set([file]);
  for (const path of reached) for (const use of checked.project.files.get(path)?.uses ?? []) reached.add(use.path);
  const isIn = (path: string): boolean => reached.has(path);
  return {
    ...checked,
    findings: checked.findings.filter(({ at }) => isIn(at.file)),
    allows: checked.allows.filter((allow) => isIn(allow.at.file)),
    texts: new Map([...checked.texts].filter(([path]) => isIn(path))),
  };
}
