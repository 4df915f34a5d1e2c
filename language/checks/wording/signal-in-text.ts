// A signal word typed into a text: it is printed as words, without the panel and the sign of a warning.

import { check } from "../check.ts";
import { allTexts, isSignal } from "../texts-beside.ts";

/** In hardly any file, so that its texts need not be looked through one by one. */
const anywhere = /(?:DANGER|WARNING|CAUTION|NOTICE|Danger|Warning|Caution|Notice)\s*[:!]/;
const typed = /^\s*(DANGER|WARNING|CAUTION|NOTICE|Danger|Warning|Caution|Notice)\s*[:!]\s*/;

export default check({
  code: "wording/signal-in-text",
  title: "A signal word inside a text",
  severity: "warning",
  why: "A warning is told by its panel, its sign and its place before the act. Typed into a text it is a sentence among others; under another signal word the reader is told two things.",
  source: "ANSI Z535.6 (signal word panel); ISO 3864-2",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Lid off" {
        note "Caution: the rim is sharp."
    #        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^ "Caution" is typed into the text of a note: write caution "…"
        remove lid
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Lid off" {
        caution "The rim is sharp: wear gloves."
        remove lid
      }
    }
  `,
  file(file, say) {
    if (!anywhere.test(file.text)) return;
    const { tokens } = file.tree.scan;
    for (const { text, start, end, word, item } of allTexts(file)) {
      const [prefix, signal] = typed.exec(text) ?? [];
      if (prefix === undefined || signal === undefined) continue;
      const at = { file: file.path, start, end },
        own = signal.toLowerCase(),
        opener = tokens[item.first]!;
      const isMessage = word === "note" || isSignal(word);
      const says = !isMessage
        ? `"${signal}" is typed into the text of ${word}: write it as a line of its own, ${own} "…"`
        : word === own
          ? `"${signal}" stands in the text of ${word} again: it is printed twice`
          : `"${signal}" is typed into the text of a ${word}: write ${own} "…"`;
      const rest = text.slice(prefix.length);
      // Only where the text is one line as typed can it be written anew without changing what it says.
      const plain = file.text.slice(start, end) === `"${text}"` && rest !== "";
      say({
        at,
        says,
        fixes:
          isMessage && plain
            ? [
                {
                  title: `Write ${own} with the rest`,
                  edits: [
                    {
                      file: file.path,
                      start: opener.startOffset,
                      end,
                      text: `${own} "${rest.charAt(0).toUpperCase()}${rest.slice(1)}"`,
                    },
                  ],
                  certain: false,
                },
              ]
            : [],
      });
    }
  },
});
