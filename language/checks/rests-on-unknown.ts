// What the bench finds after a line that could not be read, or that speaks of an unknown name, rests on a guess: the line may have undone
// the very screw that still holds. Such reasons are left out, so that one mistake is said once. Reasons of hazard, lifting and falling never are.

import type { Problem, Reason } from "../bench/trace.ts";
import type { Span } from "../findings/finding.ts";
import { kept } from "../model/kept.ts";
import type { Declaration, Project, SourceFile } from "../names/project.ts";
import { allowsOf } from "./allow.ts";
import { callsIn } from "./calls-in.ts";
import type { Met } from "./check.ts";
import type { Due } from "./due-names.ts";
import { doubledIn } from "./doubled-names.ts";
import { nearestName } from "./near-names.ts";
import { onlyReasons } from "./only-reasons.ts";
import { fallsByItself } from "./rests-on-fault.ts";
import { isAnError } from "./severity.ts";
import { unitOfProcedure } from "./space-of-names.ts";
import { surveyOf, type Unknown } from "./survey-of-names.ts";

/** Names that the bench takes no notice of: what is wrong with them changes nothing that it performs. */
const noMatter: ReadonlySet<Due> = new Set<Due>([
  "tool",
  "stores",
  "role",
  "table",
  "hazard type",
  "kind",
  "kind or thing",
  "any",
]);
const code = "names/unknown";

/** A procedure, from `start` to `end`, in which what is found behind `from` is in doubt. What the refit and the end of it show is so at any place. */
interface Doubt {
  readonly file: string;
  readonly start: number;
  readonly end: number;
  readonly from: number;
}

/**
 * A problem of the bench without the reasons that rest on a name that nothing has; undefined where no other is left. A refused act is one
 * problem with all its reasons, so a hazard that stands among them is kept and then speaks first. Where the unknown name itself is not
 * reported as an error, nothing is taken.
 */
export function withoutDoubt(problem: Problem, { project, settings, performance }: Met): Problem | undefined {
  const doubts = isAnError(code, settings) ? doubtsIn(project) : [];
  if (doubts.length === 0) return problem;
  const { at } = problem,
    { whole } = performance.procedure,
    isIn = (place: Span, doubt: Doubt): boolean =>
      doubt.file === place.file && place.start >= doubt.start && place.end <= doubt.end;
  const isDoubtful = (reason: Reason): boolean => {
    const { rule } = reason;
    if (fallsByItself(reason) || !/^(?:sequence|removal|refit)\//.test(rule)) return false;
    const isLater = !rule.startsWith("sequence/");
    return doubts.some(
      (doubt) =>
        (isIn(at, doubt) && (isLater || problem.rule === "sequence/task" || at.start >= doubt.from)) ||
        // What the end of a procedure misses may be said in another one, which took it off.
        (isLater && isIn(whole, doubt)),
    );
  };
  return onlyReasons(problem, (reason) => !isDoubtful(reason));
}

interface Place {
  readonly start: number;
  readonly end: number;
}
const stepDue: ReadonlySet<Due> = new Set<Due>(["step", "condition"]);
/** A step or a reading like no other name: the step is missing as a whole, and may have stood anywhere before. */
export const isLostStep = ({ due, is, text, candidates }: Unknown): boolean =>
  stepDue.has(due) && is === undefined && nearestName(text, candidates) === undefined;

/** What the bench stumbles over in a file: unknown names, unless the author has them allowed, doubled ones, and lines that could not be read. */
function unknownIn(project: Project, file: SourceFile): readonly (Place | Unknown)[] {
  const unknown = surveyOf(project, file).unknown.filter((one) => !noMatter.has(one.due)),
    isAllowed = unknown.length > 0 && allowsOf(file).some((allow) => allow.code === code);
  return [...(isAllowed ? [] : unknown), ...file.tree.errors, ...doubledIn(file)].sort((a, b) => a.start - b.start);
}

interface Doubtful {
  readonly declaration: Declaration;
  readonly file: string;
  readonly start: number;
  readonly end: number;
  /** The unit that it is for and the procedures that it calls, as its own file sees them: other files may use the same names. */
  readonly unit: Declaration | undefined;
  readonly calls: readonly Declaration[];
  from: number | undefined;
}

const known = kept<Project, readonly Doubt[]>();
const doubtsIn = (project: Project): readonly Doubt[] => known(project, () => findDoubts(project));

function findDoubts(project: Project): Doubt[] {
  const procedures: Doubtful[] = [],
    doubtfulUnits = new Set<Declaration>(),
    unknownOf = new Map([...project.files.values()].map((file) => [file, unknownIn(project, file)]));
  if ([...unknownOf.values()].every((unknown) => unknown.length === 0)) return [];
  for (const [file, unknown] of unknownOf) {
    const seen = project.seen(file.path);
    const named = (id: string, word: Declaration["word"]): Declaration | undefined =>
      seen.get(id)?.find((d) => d.word === word);
    for (const declaration of file.declarations) {
      const { word, item } = declaration,
        { tokens } = file.tree.scan,
        start = tokens[item.first]!.startOffset,
        end = tokens[item.last]!.endOffset! + 1;
      const first = unknown.find((one) => one.start >= start && one.end <= end);
      if (word === "unit" && first) doubtfulUnits.add(declaration);
      if (word !== "procedure") continue;
      const calls = [...callsIn(tokens, item)].flatMap((id) => named(id, "procedure") ?? []);
      procedures.push({
        declaration,
        file: file.path,
        start,
        end,
        unit: named(unitOfProcedure(file, item) ?? "", "unit"),
        calls,
        from:
          first && unknown.some((one) => "due" in one && one.start >= start && one.end <= end && isLostStep(one))
            ? start
            : first?.start,
      });
    }
  }
  for (const one of procedures) if (one.unit && doubtfulUnits.has(one.unit)) one.from = one.start;
  // Who calls or needs a procedure in doubt is in doubt too.
  for (let changed = true; changed;) {
    changed = false;
    const doubtful = new Set(procedures.filter((one) => one.from !== undefined).map((one) => one.declaration));
    for (const one of procedures) {
      if (one.from !== undefined || !one.calls.some((call) => doubtful.has(call))) continue;
      one.from = one.start;
      changed = true;
    }
  }
  return procedures.flatMap(({ file, start, end, from }) => (from === undefined ? [] : [{ file, start, end, from }]));
}
