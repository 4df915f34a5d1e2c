// Something declared for a procedure's sake that no line speaks of. The shop's library is not asked: it lists what there is.

import { cursorOf, takeNames } from "../../model/cursor.ts";
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
    const { unknown, used } = surveyOf(project, file);
    if (file.tree.errors.length > 0 || unknown.length > 0) return;
    // Mostly by this very file: then no other has to be looked through.
    const isUsed = (one: string): boolean => used.includes(one) || usedInProject(project).has(one);
    for (const { word, id, item, at, name } of file.declarations) {
      if (asked.has(word)) {
        // Torque wrenches and meters are chosen by their kind and range, not by their names.
        const isChosen =
          word === "tool" &&
          (item.block?.items.some((one) => one.entry?.word === "kind" || one.entry?.word === "range") ?? false);
        if (!isChosen && !isUsed(id)) say(unused(name, at));
      } else if (word === "unit") {
        for (const line of item.block?.items ?? []) {
          const own = line.broken ? undefined : line.entry?.word;
          if (own === "variants") {
            const names = takeNames(cursorOf({ item: line, source: file })),
              first = declaredName(file, line);
            const ids = line.arguments
              .filter((one) => one.declares)
              .map((one) => file.tree.scan.tokens[one.first]!.text);
            if (first && names.length > 0 && !ids.some(isUsed))
              say(unused(first.text, { file: file.path, start: first.start, end: first.end }));
          } else if (own === "option" || own === "temporary") {
            const one = declaredName(file, line);
            if (one && !isUsed(one.text)) say(unused(one.text, { file: file.path, start: one.start, end: one.end }));
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
