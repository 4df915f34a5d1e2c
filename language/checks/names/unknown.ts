// A name that stands for nothing here: misspelt, not declared, or the name of something of another kind.

import type { Project, SourceFile } from "../../names/project.ts";
import { synonyms } from "../../tables/index.ts";
import { check, type Answer } from "../check.ts";
import { doubledFor } from "../doubled-names.ts";
import { lostHeadFor } from "../lost-heads.ts";
import { nearestName } from "../near-names.ts";
import { listed } from "../bench-check.ts";
import type { Due } from "../due-names.ts";
import { surveyOf, type Unknown } from "../survey-of-names.ts";
import { conditionOf, lostProcedureFor } from "../stood-together.ts";
import { declaredUnused, linkOf, useAnswer } from "../unused-files.ts";

/** What is due, as a sentence says it. */
const dueWords: Readonly<Record<Due, string>> = {
  part: "a part",
  thing: "a part, fastener, joint, fluid or hazard",
  fluid: "a fluid",
  hazard: "a hazard",
  position: "a position",
  step: "a step",
  "step or thing": "a step, part or fastener",
  procedure: "a procedure",
  "procedure or step": "a procedure or step",
  unit: "a unit",
  tool: "a tool",
  washer: "a part",
  stores: "a consumable",
  role: "a role",
  table: "a torque table",
  temporary: "a temporary thing",
  condition: "a variant, option or reading",
  kind: "a kind of part",
  "kind or thing": "a part or a kind",
  like: "a declaration of the same sort",
  "hazard type": "a hazard at the top of a file",
  piece: "a piece that is told apart",
  any: "a name",
};
/** Due names that stand in the unit itself, not in the shop's files. */
const inUnit: ReadonlySet<Due> = new Set<Due>([
  "part",
  "thing",
  "fluid",
  "hazard",
  "position",
  "step",
  "step or thing",
  "washer",
  "condition",
  "piece",
]);

export default check({
  code: "names/unknown",
  title: "A name that nothing has",
  severity: "error",
  why: "A line about a misspelt thing does nothing: the screw stays in, the seal stays old, and the list of tools lacks one.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure look "Look" for box {
      aim none
      step "Look" {
        clean lit
    #         ^^^ lit is not declared in Box, but lid is
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure look "Look" for box {
      aim none
      step "Look" {
        clean lid
      }
    }
  `,
  file(file, say, { project }) {
    for (const unknown of surveyOf(project, file).unknown) {
      // The families `tool` and `consumable` speak of what the shop lacks.
      if (
        (unknown.due === "tool" || unknown.due === "stores") &&
        unknown.is === undefined &&
        unknown.pieces === undefined
      )
        continue;
      const at = { file: file.path, start: unknown.start, end: unknown.end },
        near = meant(unknown),
        other = declaredUnused(project, file, unknown),
        says = wordsOf(unknown, near, other?.written);
      say({
        at,
        says,
        answer: useAnswer(project, file, unknown) ?? answerTo(project, file, unknown, says),
        within:
          doubledFor(project, unknown) ?? lostHeadFor(project, unknown) ?? lostProcedureFor(project, file, unknown),
        fixes: other
          ? [other.fix]
          : near === undefined
            ? []
            : [{ title: `Write ${near}`, edits: [{ ...at, text: near }], certain: false }],
      });
    }
  },
});

/** However often it is used, and whatever is due at each place: one declaration, or one line of positions, would answer them all. */
function answerTo(project: Project, file: SourceFile, unknown: Unknown, says: string): Answer {
  const { unit, text, due, candidates, is } = unknown;
  // A part that is a unit often has its name: with the one gone, the other is found at every place.
  if (is === "unit" && inUnit.has(due)) return { key: `${unit ?? ""} ${text.split(".")[0]!}` };
  const isUnit = due === "unit" && is === "part";
  if (!isUnit && !isMissing(unknown)) return { key: says };
  if (due === "unit" || isProcedure(project, unknown))
    return { key: `at the top ${text} ${linkOf(project, file.path)}` };
  if (due === "position" && candidates.length === 0) return { key: `${unit ?? ""} positions` };
  if (nearestName(text, candidates) === undefined) {
    // The one step that they were read in is missing, or the one block of declarations that stood under this condition.
    if (due === "condition") return { key: `${unit ?? ""} readings` };
    const condition = conditionOf(project, unknown);
    if (condition !== undefined) return { key: `${unit ?? ""} ${condition}` };
  }
  // `cylinder.barrel`, said of the unit that stands inside, and `barrel` said in that unit are one name.
  return { key: `${unit ?? ""} ${text.slice(text.lastIndexOf(".") + 1)}` };
}

/** A `do` may name a step; what another line needs, or goes back by, is a procedure, in whatever unit it is spoken of. */
const isProcedure = (project: Project, { due, text }: Unknown): boolean =>
  due === "procedure" ||
  (due === "procedure or step" &&
    [...project.files.values()].some((file) =>
      surveyOf(project, file).unknown.some((one) => one.due === "procedure" && one.text === text),
    ));

/** Nothing at all has it; else it is only the wrong sort of thing here, or has other pieces. */
const isMissing = ({ is, pieces }: Unknown): boolean => is === undefined && pieces === undefined;

/** The name that was meant: nearly the same letters, or what we call the thing. */
function meant({ text, due, candidates, is }: Unknown): string | undefined {
  if (due === "kind" || due === "kind or thing") {
    const synonym = synonyms.find((one) => one.says === text && candidates.includes(one.is));
    if (synonym) return synonym.is;
  }
  return is === undefined ? nearestName(text, candidates) : undefined;
}

function wordsOf(
  { text, due, is, pieces, unit }: Unknown,
  near: string | undefined,
  other: string | undefined,
): string {
  if (pieces !== undefined)
    return pieces.length === 0
      ? `${text} is no piece: it has none that are told apart`
      : `${text} is not there: the pieces are ${listed(pieces)}`;
  if (other !== undefined) return `${text} is declared in ${other}, which this file does not use`;
  if (is !== undefined)
    return `${text} is a ${is}: here ${dueWords[due]} is due${due === "temporary" && is === "part" ? `, a part comes off by remove ${text}` : ""}`;
  const where = inUnit.has(due) && unit !== undefined ? `in ${unit}` : "in this file or in any that it uses";
  if (near === undefined) return `${text} is not declared ${where}: ${dueWords[due]} is due`;
  return `${text} is not declared ${where}, but ${near} is`;
}
