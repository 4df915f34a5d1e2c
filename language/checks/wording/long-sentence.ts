// A sentence beside a danger that is longer than a hand in a hurry reads.

import { check } from "../check.ts";
import { isSignal, textsBesideHazards } from "../texts-beside.ts";

/** Words of a procedural sentence, as the rules of simplified technical English count them. */
const longest = 20;

export default check({
  code: "wording/long-sentence",
  title: "A long sentence beside a danger",
  severity: "hint",
  why: "Over twenty words a reader at the bench keeps the beginning or the end, and the command is in one of them. Two sentences are read as two.",
  source: "ASD-STE100 (20 words in a procedural sentence; read through public summaries)",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Lid off" {
        warning "Lower the lid onto two wooden blocks that are at least 40 mm high so that your fingers do not get under its rim."
    #           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ A sentence here has 23 words: over 20, make two of it
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
        warning "Lower the lid onto two wooden blocks, at least 40 mm high. Keep your fingers from under its rim."
        remove lid
      }
    }
  `,
  file(file, say) {
    // A text that lost its end takes the lines after it in.
    if (file.tree.errors.some(({ code }) => code === "syntax/unclosed-text")) return;
    for (const { text, start, end, word } of textsBesideHazards(file)) {
      // Names of hazards and reasons why one is not there are no instructions.
      if (word === "hazard" || word === "no" || (word === "warn" && isSignal(text))) continue;
      // No sentence of a text has more words than stand between the blanks of the whole; a word and a blank are two signs.
      if (text.length < 2 * longest || text.split(/\s+/).length <= longest) continue;
      const most = Math.max(...sentencesOf(text).map(wordsIn));
      if (most <= longest) continue;
      say({
        at: { file: file.path, start, end },
        says: `A sentence here has ${most} words: over ${longest}, make two of it`,
      });
    }
  },
});

/** A colon ends one, and what stands in brackets is one of its own. */
const sentencesOf = (text: string): string[] =>
  text.replaceAll(/\(([^()]*)\)/g, ". $1. ").split(/[.!?:;](?=\s|$)|\n\s*\n/);

/** A figure with its unit is one word, and so is what hyphens join. */
const wordsIn = (sentence: string): number =>
  sentence
    .replaceAll(
      /(\d)\s+(?:N·m|Nm|lbf·ft|lbf·in|mm|cm|m|kg|g|bar|kPa|MPa|V|A|°C|°F|min|s|h|L|ml|%|deg)(?![\p{L}\p{N}])/gu,
      "$1",
    )
    .split(/\s+/)
    .filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
