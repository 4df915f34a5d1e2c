// `if READING fails` around work that comes before the reading is taken: nobody knows it yet.

import { writtenCondition } from "../../model/conditions.ts";
import { headSpan, linesIn, wordOf, type Line } from "../../model/cursor.ts";
import { readCondition } from "../../model/read-entries.ts";
import { check, type Say } from "../check.ts";
import { isCondition } from "../condition-chains.ts";
import { holdsWord } from "../items-of.ts";

const readings: ReadonlySet<string> = new Set(["measure", "inspect", "test", "set"]);
/** Facts of the procedure as a whole: they are read when it is over. */
const facts: ReadonlySet<string> = new Set(["leaves", "starts", "needs", "aim", "task"]);
/** Done after the strip, when every reading of it is taken. */
const later: ReadonlySet<string> = new Set(["refit", "finish"]);

export default check({
  code: "sequence/read-later",
  title: "It hangs on a reading that is taken later",
  severity: "error",
  why: "The hand that comes to this line has not measured yet, and does not know whether to do it.",
  source: "common practice",
  fails: `
    unit press "Press" {
      base bed
      part bed "Bed"
      part ram "Ram" { rests on bed }
    }
    procedure open "Open" for press {
      aim ram off
      step "Ram" {
        if bore fails { note "Put the scraper out." }
    #   ^^^^^^^^^^^^^ if bore fails comes before bore is read
        remove ram
        inspect bore on bed "No scores"
      }
    }
  `,
  mended: `
    unit press "Press" {
      base bed
      part bed "Bed"
      part ram "Ram" { rests on bed }
    }
    procedure open "Open" for press {
      aim ram off
      step "Ram" {
        remove ram
        inspect bore on bed "No scores"
        if bore fails { note "Put the scraper out." }
      }
    }
  `,
  file(source, say) {
    if (source.tree.errors.length > 0 || !(holdsWord(source, "if") || holdsWord(source, "unless"))) return;
    for (const item of source.tree.items) {
      if (item.entry?.word !== "procedure" || item.broken) continue;
      const procedure: Line = { item, source },
        taken = new Map<string, Line>();
      const collect = (line: Line): void => {
        for (const one of linesIn(line)) {
          const name = readings.has(wordOf(one)) ? nameOfReading(one) : undefined;
          // Read in two places (one a branch, one a piece), the first counts.
          if (name !== undefined && !taken.has(name)) taken.set(name, one);
          collect(one);
        }
      };
      collect(procedure);
      before(procedure, taken, say);
    }
  },
});

/** `measure play …`, `inspect bore on b …`: without a thing behind it, the name of an inspection is that of what it looks at. */
function nameOfReading(line: Line): string | undefined {
  const { item, source } = line,
    { tokens } = source.tree.scan,
    declared = item.arguments.find(({ declares }) => declares);
  if (declared) return tokens[declared.first]!.text;
  return wordOf(line) === "inspect" && tokens[item.first + 2]?.text === "on" ? tokens[item.first + 1]!.text : undefined;
}

function before(line: Line, taken: ReadonlyMap<string, Line>, say: Say): void {
  for (const one of linesIn(line)) {
    if (later.has(wordOf(one))) continue;
    if (!isCondition(one)) {
      before(one, taken, say);
      continue;
    }
    const condition = readCondition(one),
      at = headSpan(one);
    const early = condition.states.flatMap(({ name, state }) => {
      const reading = state === "fails" ? taken.get(name.text) : undefined;
      return reading && headSpan(reading).start > at.start ? [{ name: name.text, reading }] : [];
    })[0];
    if (early && linesIn(one).some((inner) => !facts.has(wordOf(inner))))
      say({
        at,
        says: `${writtenCondition(condition)} comes before ${early.name} is read`,
        because: [{ says: `${early.name} is read here`, at: headSpan(early.reading) }],
      });
    else before(one, taken, say);
  }
}
