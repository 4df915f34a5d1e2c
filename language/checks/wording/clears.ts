// Words that give an assurance: any that clears a danger beside a hazard, and elsewhere what can mean nothing else. Nobody can promise that on
// paper.

import { check } from "../check.ts";
import { clearingWord, promiseIn } from "../clearing-words.ts";
import { allTexts, textsBesideHazards, type SaidText } from "../texts-beside.ts";

export default check({
  code: "wording/clears",
  title: "A word that clears a danger",
  severity: "warning",
  why: "A text says what to do and what to read off, never that it is safe: the reader believes it on the day when it is not so.",
  source: "IEC/IEEE 82079-1; ANSI Z535.6",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      hazard mains electrical danger "Mains" {
        on foot  source mains
        precaution isolate "Open the isolator: the box is now safe."
    #                      ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ "safe" clears a danger: say what to do, or what to read off
        precaution prove-dead "Test all phases."
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      hazard mains electrical danger "Mains" {
        on foot  source mains
        precaution isolate "Open the isolator, lock it."
        precaution prove-dead "Test all phases."
      }
    }
  `,
  file(file, say) {
    const tell = ({ start, end }: SaidText, word: string | undefined): void => {
      if (word !== undefined)
        say({
          at: { file: file.path, start, end },
          says: `"${word}" clears a danger: say what to do, or what to read off`,
        });
    };
    const beside = textsBesideHazards(file);
    for (const one of beside) tell(one, clearingWord(one.text));
    if (!mayPromise.test(file.text)) return;
    const seen = new Set(beside.map(({ start }) => start));
    for (const one of allTexts(file)) if (!seen.has(one.start)) tell(one, promiseIn(one.text));
  },
});

/** Without one of these no text of the file promises anything: most files are told by one look. */
const mayPromise =
  /\b(?:safe|clear|harmless|risk[ -]free|de-?energi[sz]ed|voltage-free)\b|\bno\s+(?:danger|risk)\b|(?<!-)\bdead\b/i;
