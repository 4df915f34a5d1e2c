// Something declared for a procedure's sake that no line speaks of. The shop's library is not asked: it lists what there is.

import { cursorOf, linesIn, takeNames, wordOf } from "../../model/cursor.ts";
import { check, type Draft } from "../check.ts";
import { surveyOf, usedInProject } from "../survey-of-names.ts";
import { declaredName } from "../space-of-names.ts";

const asked: ReadonlySet<string> = new Set([
  "tool",
  "consumable",
  "role",
  "torque-table",
  "temporary",
  "fastener",
  "hazard",
]);

export default check({
  code: "names/unused",
  title: "Declared and never spoken of",
  severity: "hint",
  why: "A name that no line uses is left over from an earlier text, or the line that should use it is missing.",
  source: "common practice",
  fails: `
    tool mallet "Mallet"
    #    ^^^^^^ Mallet is declared and no line speaks of it
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Lid off" { remove lid }
    }
  `,
  mended: `
    tool mallet "Mallet"
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Lid off" { remove lid with mallet }
    }
  `,
  file(file, say, { project }) {
    const isLibrary = !file.declarations.some((one) => one.word === "procedure");
    if (isLibrary) return;
    // A line that could not be read, or that speaks of a name that nothing has, may be the one that should use it: that is said there.
    if (file.tree.errors.length > 0 || surveyOf(project, file).unknown.length > 0) return;
    const used = usedInProject(project);
    for (const { word, id, item, at, name } of file.declarations) {
      if (asked.has(word) && !used.has(id)) {
        // Torque wrenches and meters are chosen by their kind and range, not by their names.
        if (
          word === "tool" &&
          (item.block?.items.some((one) => one.entry?.word === "kind" || one.entry?.word === "range") ?? false)
        )
          continue;
        say(unused(name, at));
      } else if (word === "unit") {
        for (const line of linesIn({ item, source: file })) {
          const own = wordOf(line);
          if (own === "variants") {
            const names = takeNames(cursorOf(line)),
              first = declaredName(file, line.item);
            const ids = line.item.arguments
              .filter((one) => one.declares)
              .map((one) => file.tree.scan.tokens[one.first]!.text);
            if (first && names.length > 0 && !ids.some((one) => used.has(one)))
              say(unused(first.text, { file: file.path, start: first.start, end: first.end }));
          } else if (own === "option" || own === "temporary") {
            const one = declaredName(file, line.item);
            if (one && !used.has(one.text)) say(unused(one.text, { file: file.path, start: one.start, end: one.end }));
          }
        }
      }
    }
  },
});

const unused = (name: string, at: Draft["at"]): Draft => ({
  at,
  says: `${name} is declared and no line speaks of it`,
  tag: "unused",
});
