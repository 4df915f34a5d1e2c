// Whole blocks with places to fill in, for words that open one. Figures, waits and words beside a hazard are left for the author.

import type { Entry } from "../vocabulary/index.ts";

const byWord: Readonly<Record<string, string>> = {
  "file use": 'use "$1.strip"',
  "file unit": 'unit ${1:id} "${2:Name}" {\n\tbase ${3:frame}\n\n\tpart ${3:frame} "${4:Frame}" { mass $5 }\n\t$0\n}',
  "file procedure":
    'procedure ${1:id} "${2:What is done}" for ${3:unit} {\n\taim ${4:part} off\n\n\tstep ${5:first} "${6:First step}" {\n\t\t$0\n\t}\n}',
  "file tool": 'tool ${1:id} "${2:Name}" { $0 }',
  "file consumable": 'consumable ${1:id} "${2:Name}" { pack $0 }',
  "unit part": 'part ${1:id} "${2:Name}" { mass $0 }',
  "unit fastener":
    'fastener ${1:id} ${2:bolt} "${3:Name}" {\n\tcount $4  size $5  torque $6\n\tjoins ${7:part} to ${8:part}$0\n}',
  "unit joint": 'joint ${1:id} ${2:connector} "${3:Name}" { joins ${4:part} to ${5:part} }$0',
  "unit fluid": 'fluid ${1:id} ${2:oil} "${3:Name}" { volume $4  drains at ${5:plug} }$0',
  "unit hazard":
    'hazard ${1:id} ${2:electrical} ${3:danger} "${4:What can hurt}" {\n\ton ${5:thing}\n\tprecaution ${6:isolate} "$0"\n}',
  "unit no": 'no ${1:kind} "$0"',
  "procedure step": 'step ${1:id} "${2:What is done}" {\n\t$0\n}',
  "procedure finish": "finish {\n\t$0\n}",
  "step refit": "refit {\n\t$0\n\treverse\n}",
};

/** Undefined for a word that is typed as it stands. */
export function snippetFor(entry: Entry): string | undefined {
  const own = byWord[`${entry.place} ${entry.word}`];
  if (own !== undefined) return own;
  return entry.blockNeeded && entry.shape === "" ? `${entry.word} {\n\t$0\n}` : undefined;
}
