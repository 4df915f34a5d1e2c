// A line that could not be read, or that names what nothing declares, may be the very one that the bench misses: the call of the procedure
// that takes the precautions, the fastener that holds the part. What the bench met is then a reason of that line's own finding, an error as
// well, and is never left out. Each question here asks for one kind of such a lack.

import type { Problem } from "../bench/trace.ts";
import type { Span } from "../findings/finding.ts";
import { kept } from "../model/kept.ts";
import type { Model, ThingIndex } from "../model/model.ts";
import type { Project, SourceFile } from "../names/project.ts";
import { eachItem, type Item, type SyntaxError } from "../syntax/index.ts";
import { isKindOf, precautions } from "../tables/index.ts";
import { allowsOf } from "./allow.ts";
import type { Met } from "./check.ts";
import type { Due } from "./due-names.ts";
import { lostHeads, type LostHead } from "./lost-heads.ts";
import { lostThing } from "./lost-thing.ts";
import { nearestName } from "./near-names.ts";
import { itemsOf } from "./items-of.ts";
import { isLostStep } from "./rests-on-unknown.ts";
import { surveyOf } from "./survey-of-names.ts";
import { tiesOfNothing } from "./ties-of-nothing.ts";
import { unattached } from "./unattached.ts";

/** What nothing holds is off before it is taken off, and stays where it hides others: the part that nothing leads to from the base. */
export const looseParts = ({ reasons }: Problem, { project, performance: { model } }: Met): Span | undefined =>
  unattached(project, model).find((parts) =>
    reasons.every(({ rule, thing, by, words }) =>
      parts.some(({ index }) =>
        rule === "sequence/blocked"
          ? by.includes(index) || (thing === index && words.includes("comes along"))
          : rule === "sequence/already-undone" && thing === index,
      ),
    ),
  )?.[0].at;

/** What falls: the line before it that would have taken its weight, or the one thing that it hung on and that nothing declares. */
export const lostHolder = ({ reasons, at }: Problem, { project, performance: { model } }: Met): Span | undefined =>
  reasons.every(({ rule }) => rule === "sequence/falls")
    ? (linesOf(project).holders.findLast((one) => one.file === at.file && one.start < at.start) ??
      lostThing(project, model))
    : undefined;

/** What hides a part that comes along may have come along too, by the fastener that nothing declares. */
export const lostCarrier = ({ reasons }: Problem, { project, performance: { model } }: Met): Span | undefined =>
  reasons.every(({ rule, words }) => rule === "sequence/blocked" && words.includes("comes along"))
    ? lostTie(project, model)
    : undefined;

/** Precautions that are missing: the line that may have taken them, or what holds the springs or the pressure back. */
export function lostPrecaution({ at, reasons }: Problem, { project, performance: { model } }: Met): Span | undefined {
  const hazards: ThingIndex[] = [];
  for (const { rule, by, thing } of reasons) {
    const hazard = rule === "hazard/not-yet" ? by[0] : rule === "hazard/order" ? thing : undefined;
    if (hazard === undefined) return undefined;
    hazards.push(hazard);
  }
  // What springs or pressure push is held by nothing where nothing says what its fasteners hold.
  const isPush = (hazard: ThingIndex): boolean =>
    model.hazards.some(({ index, pushes }) => index === hazard && pushes.length > 0);
  if (hazards.every(isPush)) return tiesOfNothing(project, model)[0]?.at ?? lostTie(project, model);
  return linesOf(project).guarding.find(
    (line) =>
      line.at.file === at.file &&
      // A task stands before the name in it.
      (at.start > line.at.start || at.end >= line.at.end || line.isLost) &&
      at.end <= line.end &&
      (line.kind === undefined || reasons.every(({ words }) => words.includes(line.kind!))) &&
      (line.hazard === undefined || hazards.every((hazard) => model.things[hazard]!.declared === line.hazard)),
  )?.at;
}

/** What may be a fastener or joint of this unit: a block that lost its first line, or the one thing that nothing declares. */
const lostTie = (project: Project, model: Model): Span | undefined =>
  linesOf(project).heads.find(({ item }) => isTieWord(item?.entry?.word))?.at ?? lostThing(project, model);

const isTieWord = (word: string | undefined): boolean => word === "fastener" || word === "joint";

interface LostLines {
  /** Lines of procedures that may have taken a precaution. */
  readonly guarding: readonly {
    readonly at: Span;
    /** End of the procedure. */
    readonly end: number;
    /** The hazard and the kind of precaution that alone it may have been; undefined where it may have been any. */
    readonly hazard: string | undefined;
    readonly kind: string | undefined;
    /** The step that it names is missing as a whole, and may have stood anywhere before. */
    readonly isLost: boolean;
  }[];
  /** Lines that may have taken a weight. */
  readonly holders: readonly Span[];
  readonly heads: readonly LostHead[];
}

const known = kept<Project, LostLines>();
const linesOf = (project: Project): LostLines =>
  known(project, () => {
    const files = [...project.files.values()],
      // Where the author allows unknown names nothing is said of them that could have reasons.
      told = files.filter((file) => !allowsOf(file).some(({ code }) => code === "names/unknown"));
    return {
      guarding: told.flatMap((file) => guardingIn(project, file)),
      holders: told.flatMap(holdersIn),
      heads: files.flatMap(lostHeads),
    };
  });

const callDue: ReadonlySet<Due> = new Set<Due>(["procedure", "procedure or step", "step", "condition", "hazard"]);

function guardingIn(project: Project, file: SourceFile): LostLines["guarding"][number][] {
  const { tokens } = file.tree.scan,
    procedures = file.declarations.flatMap(({ word, item }) =>
      word === "procedure" ? [{ start: tokens[item.first]!.startOffset, end: tokens[item.last]!.endOffset! + 1 }] : [],
    ),
    found: LostLines["guarding"][number][] = [];
  const add = (
    { start, end }: Place,
    { hazard, kind, isLost = false }: { hazard?: string; kind?: string; isLost?: boolean } = {},
  ): void => {
    const around = procedures.find((one) => one.start <= start && one.end > start);
    if (around) found.push({ at: { file: file.path, start, end }, end: around.end, hazard, kind, isLost });
  };
  for (const call of surveyOf(project, file).unknown)
    if (call.is === undefined && callDue.has(call.due))
      add(call, {
        ...(call.due === "hazard" ? { hazard: nearestName(call.text, call.candidates) ?? "" } : {}),
        isLost: isLostStep(call),
      });
  for (const error of file.tree.errors) {
    const kind = onlyEdit(error);
    if (kind !== undefined && isKindOf(precautions, kind)) add(error, { kind });
  }
  // Precautions may stand in a block whose first line could not be read.
  for (const item of file.tree.errors.length > 0 ? itemsOf(file) : []) {
    const error = item.broken && item.block ? file.tree.errors.find((one) => isInHead(file, item, one)) : undefined;
    if (error) add(error);
  }
  return found;
}

/** Words that take a weight. */
const holding: ReadonlySet<string> = new Set(["support", "hold", "lift"]);

/** Lines of such a word that could not be read to their end, and words that may be meant for one. */
function holdersIn(file: SourceFile): Span[] {
  const { errors, scan } = file.tree,
    found: Place[] = [];
  if (errors.length === 0) return [];
  eachItem(file.tree.items, (item) => {
    if (!item.broken || !holding.has(item.entry?.word ?? "")) return;
    const from = scan.tokens[item.first]!.startOffset,
      to = scan.tokens[item.last]!.endOffset! + 1,
      own = errors.find(({ start, end }) => start >= from && end <= to);
    if (own) found.push(own);
  });
  const misspelt = errors.filter((error) => holding.has(onlyEdit(error) ?? ""));
  return [...found, ...misspelt].map(({ start, end }) => ({ file: file.path, start, end }));
}

/** The word that a remedy of one edit puts in the place of another. */
const onlyEdit = ({ fix }: SyntaxError): string | undefined =>
  fix?.edits.length === 1 ? fix.edits[0]!.text : undefined;

/** The error stands in the line that opens the block. */
function isInHead({ tree }: SourceFile, { first, block }: Item, error: Place): boolean {
  const { tokens } = tree.scan;
  return error.start >= tokens[first]!.startOffset && error.end <= tokens[block!.first]!.startOffset;
}

interface Place {
  readonly start: number;
  readonly end: number;
}
