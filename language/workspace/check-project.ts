// A whole project checked: files to models, each procedure performed in each build, findings merged. Command line and editor run this
// same function.

import type { Work } from "../bench/bench.ts";
import { likeness } from "../bench/likeness.ts";
import { rehearse, type Keeping, type Rehearsal } from "../bench/perform-procedure.ts";
import type { Performance } from "../bench/trace.ts";
import { allowedIn, applyAllows } from "../checks/allow.ts";
import { mergeFindings } from "../checks/merge.ts";
import { checkTable, type CheckTable } from "../checks/check-table.ts";
import type { CheckContext } from "../checks/check.ts";
import type { Raw } from "../checks/raw.ts";
import { checks } from "../checks/registry.ts";
import { checkFile, checkModel, checkModelAmongAll, checkPerformance } from "../checks/run.ts";
import { severityOf } from "../checks/severity.ts";
import { unitKey } from "../checks/unit-key.ts";
import type { Finding } from "../findings/finding.ts";
import type { Surveyed, UnitSummary } from "../findings/surveyed.ts";
import { buildModel, withProcedures } from "../model/build-model.ts";
import { buildsOf, type Build } from "../model/builds.ts";
import type { Model } from "../model/model.ts";
import { loadProject, type TreeCache } from "../names/load.ts";
import type { Declaration, Project, SourceFile } from "../names/project.ts";
import { sameDeclared } from "../names/same-declared.ts";
import { hazardKinds } from "../tables/index.ts";
import { defaultSettings, type Settings } from "../world/settings.ts";
import type { World } from "../world/world.ts";
import { resting } from "./resting.ts";

/** What the procedures of a project do, judged or not. */
export interface Acted {
  readonly project: Project;
  /** Every procedure in every build, in the order of files; models are shared. */
  readonly performances: readonly Performance[];
}

export interface Checked extends Surveyed, Acted {}

let table: CheckTable | undefined;
/** All checks there are. */
export const allChecks = (): CheckTable => (table ??= checkTable(checks));

/**
 * What is kept from one check to the next: a file whose own text and imports did not change is not parsed, built or performed again, and
 * of a procedure that changed only what comes from the change on is performed again.
 */
export interface CheckMemo {
  readonly trees: TreeCache;
  readonly files: Map<string, FileResult>;
  /** By path: what was found in the results of a file. */
  readonly judged: Map<string, { readonly of: FileResult; readonly settings: Settings; readonly raw: readonly Raw[] }>;
  /** How much was performed since the memo was made. */
  readonly work: Work;
}

/** Empty. Throw one away when pictures came or went: models are not asked again whether those are there. */
export const newMemo = (): CheckMemo => ({
  trees: new Map(),
  files: new Map(),
  judged: new Map(),
  work: { acts: 0 },
});

export interface CheckOptions {
  readonly settings?: Settings;
  readonly memo?: CheckMemo;
  /** Is only what was found to be held of this file? What its procedures do is then performed again when it is asked for. */
  readonly resting?: ((path: string) => boolean) | undefined;
  /** Called between steps of long work; may throw to end it. */
  readonly between?: (done: number, of: number) => void;
}

/** Everything that follows from one file and what it uses, before it is judged. */
interface FileResult {
  /** The files that it was made from. */
  readonly from: readonly SourceFile[];
  /** By `unitKey`. */
  readonly builds: ReadonlyMap<string, readonly Build[]>;
  /** What there is to judge, in the order of the text: each build of a unit that it declares, each of its procedures in each build. */
  readonly toJudge: readonly (
    { readonly model: Model; readonly performance?: undefined } | { readonly performance: Performance }
  )[];
  readonly rehearsals: readonly Rehearsal[];
  /** Its performances are performed again when they are asked for. */
  readonly isAside?: boolean;
  readonly units: readonly UnitSummary[];
  /** By unit and build. */
  readonly models: ReadonlyMap<string, Model | undefined>;
}

/** Checks the files asked for and all that they use. Never throws for what stands in a file. */
export function checkProject(world: World, roots: readonly string[], options: CheckOptions = {}): Checked {
  const { memo = newMemo() } = options;
  return checkTexts(loadProject(world, roots, memo.trees), world, options);
}

/** The same for texts that were read already, with the trees of the memo. */
export function checkTexts(project: Project, world: World, options: CheckOptions = {}): Checked {
  const { settings = defaultSettings, memo = newMemo(), between } = options,
    context = { project, settings, world };
  const raw: Raw[] = [],
    performances: Performance[] = [],
    units: UnitSummary[] = [],
    builds = new Map<string, readonly Build[]>();
  let done = 0;
  for (const file of project.files.values()) {
    between?.(done++, project.files.size);
    const { result, found } = foundIn(file, context, memo, options.memo ? "stages" : "once", options.resting);
    for (const one of checkFile(allChecks(), file, context)) raw.push(one);
    for (const one of found) raw.push(one);
    for (const one of judgeAmongAll(result, context)) raw.push(one);
    for (const { performance } of result.rehearsals) performances.push(performance);
    units.push(...result.units);
    for (const [unit, list] of result.builds) builds.set(unit, list);
  }
  const merged = mergeFindings(raw, (unit) => builds.get(unit) ?? [], allowedIn(project.files)),
    asked = new Set(project.roots);
  const { findings, used } = applyAllows(merged, project.files, {
    check: allChecks().byCode,
    severity: (check) => severityOf(check, settings, undefined),
    // A library that is only used may allow what other procedures than these find; a file with mistakes of form was not all performed.
    complete: (file) => asked.has(file.path) && file.tree.errors.length === 0,
  });
  return {
    project,
    findings: findings.sort(byPlace),
    allows: used,
    performances,
    units,
    unreadable: project.unreadable,
    texts: new Map([...project.files.values()].map((file) => [file.path, file.text])),
    procedures: new Set(performances.map((p) => `${p.procedure.at.file} ${p.procedure.id}`)).size,
  };
}

/** Works out one file of texts that were read already: a check of them all then finds it done. */
export function checkAhead(
  project: Project,
  path: string,
  world: World,
  {
    settings = defaultSettings,
    memo,
    resting: rests,
  }: Pick<CheckOptions, "settings" | "resting"> & { readonly memo: CheckMemo },
): void {
  const file = project.files.get(path);
  if (file) foundIn(file, { project, settings, world }, memo, "stages", rests);
}

/** Performed and judged, both kept where nothing changed. */
function foundIn(
  file: SourceFile,
  context: CheckContext,
  memo: CheckMemo,
  keeping: Keeping,
  rests: CheckOptions["resting"],
): { readonly result: FileResult; readonly found: readonly Raw[] } {
  const { settings } = context,
    { path } = file;
  let result = resultOf(context.project, file, memo, keeping),
    judged = memo.judged.get(path);
  if (judged?.of !== result || judged.settings !== settings) {
    const raw = judge(result, context);
    if (rests?.(path) === true) memo.files.set(path, (result = putAside(result)));
    memo.judged.set(path, (judged = { of: result, settings, raw }));
  }
  return { result, found: judged.raw };
}

/** The same result with its performances put aside. An edit then performs the whole procedure. */
function putAside(result: FileResult): FileResult {
  const aside = new Map(result.rehearsals.map(({ performance }) => [performance, resting(performance)]));
  return {
    ...result,
    toJudge: result.toJudge.map((one) => (one.performance ? { performance: aside.get(one.performance)! } : one)),
    rehearsals: [...aside.values()].map((performance) => ({ performance, stages: [] })),
    isAside: true,
  };
}

/** Performs every procedure of texts that were read already and judges nothing; a check of the same texts then only judges. */
export function performTexts(project: Project, memo: CheckMemo): Acted {
  return {
    project,
    performances: [...project.files.values()].flatMap((file) =>
      resultOf(project, file, memo, "stages").rehearsals.map(({ performance }) => performance),
    ),
  };
}

/** What follows from a file: kept where neither it nor what it uses changed. */
function resultOf(project: Project, file: SourceFile, memo: CheckMemo, keeping: Keeping): FileResult {
  const from = filesSeen(project, file),
    kept = memo.files.get(file.path);
  if (kept && isSame(kept.from, from)) return kept;
  const result = performFile(project, file, from, memo.work, keeping, kept);
  memo.files.set(file.path, result);
  memo.judged.delete(file.path);
  return result;
}

/** Everything found in one file of a project, nothing kept. */
export function checkOneFile(
  file: SourceFile,
  context: CheckContext,
): Pick<FileResult, "rehearsals" | "units" | "builds"> & { readonly raw: readonly Raw[] } {
  const result = performFile(context.project, file, [], { acts: 0 }, "once");
  return {
    ...result,
    raw: [...checkFile(allChecks(), file, context), ...judge(result, context), ...judgeAmongAll(result, context)],
  };
}

function judge({ toJudge }: FileResult, context: CheckContext): Raw[] {
  const raw: Raw[] = [];
  for (const one of toJudge)
    for (const found of one.performance
      ? checkPerformance(allChecks(), one.performance, context)
      : checkModel(allChecks(), one.model, context))
      raw.push(found);
  return raw;
}

/** What is found in the results of a file by the texts of all others: never kept, since any of them may change it. */
const judgeAmongAll = ({ toJudge }: FileResult, context: CheckContext): Raw[] =>
  toJudge.flatMap((one) => (one.performance ? [] : checkModelAmongAll(allChecks(), one.model, context)));

/** Builds and performs what a file declares, in each build. `earlier` is what came of it at an earlier reading. */
function performFile(
  project: Project,
  file: SourceFile,
  from: readonly SourceFile[],
  work: Work,
  keeping: Keeping,
  earlier?: FileResult,
): FileResult {
  const toJudge: FileResult["toJudge"][number][] = [],
    rehearsals: Rehearsal[] = [],
    like = likeness(),
    units: UnitSummary[] = [];
  const builds = new Map<string, readonly Build[]>(),
    ofUnit = new Map<string, readonly Build[]>(),
    models = new Map<string, Model | undefined>(),
    declaredBefore = earlier && sameDeclared(earlier.from, from) ? earlier.models : undefined;
  const buildsIn = (unit: string): readonly Build[] => {
    let list = ofUnit.get(unit);
    if (!list) ofUnit.set(unit, (list = buildsOf(project, file.path, unit)));
    return list;
  };
  const modelIn = (unit: string, build: Build): Model | undefined => {
    const key = `${unit}\n${build.name}`;
    if (!models.has(key)) {
      const had = declaredBefore?.get(key),
        model =
          had && sameChoices(had, build)
            ? withProcedures(had, project, file.path)
            : buildModel(project, file.path, unit, build);
      models.set(key, model);
      if (model) builds.set(unitKey(model), buildsIn(unit));
    }
    return models.get(key);
  };
  for (const declaration of file.declarations) {
    if (declaration.word === "unit") {
      const all = buildsIn(declaration.id);
      for (const build of all) {
        const model = modelIn(declaration.id, build);
        if (model) toJudge.push({ model });
      }
      units.push(summaryOf(declaration, modelIn(declaration.id, all[0]!), all.length));
    } else if (declaration.word === "procedure") {
      const unit = unitNamed(project, file.path, declaration);
      if (
        unit === undefined ||
        project
          .seen(file.path)
          .get(declaration.id)
          ?.find((d) => d.word === "procedure") !== declaration
      )
        continue;
      for (const build of buildsIn(unit)) {
        const model = modelIn(unit, build);
        if (!model?.procedures.has(declaration.id)) continue;
        const had =
          earlier?.isAside === true
            ? undefined
            : earlier?.rehearsals.find(
                ({ performance: { model: of, procedure } }) =>
                  procedure.id === declaration.id && of.unit === model.unit && of.build === model.build,
              );
        const rehearsal = rehearse(model, declaration.id, work, keeping, had && { rehearsal: had, like });
        rehearsals.push(rehearsal);
        toJudge.push({ performance: rehearsal.performance });
      }
    }
  }
  return { from, builds, toJudge, rehearsals, units, models };
}

/** A file and all that it uses, directly or not, in the order in which they are reached. */
function filesSeen(project: Project, file: SourceFile): SourceFile[] {
  const reached = new Set<string>([file.path]),
    files: SourceFile[] = [];
  for (const path of reached) {
    const one = project.files.get(path);
    if (!one) continue;
    files.push(one);
    for (const use of one.uses) if (use.problem !== "outside") reached.add(use.path);
  }
  return files;
}

const isSame = (a: readonly SourceFile[], b: readonly SourceFile[]): boolean =>
  a.length === b.length && a.every(({ tree }, i) => tree === b[i]!.tree);

const sameChoices = (model: Model, { chosen, choices }: Build): boolean =>
  model.chosen.size === chosen.size &&
  [...chosen].every((one) => model.chosen.has(one)) &&
  JSON.stringify(model.choices) === JSON.stringify(choices);

export const byPlace = (a: Finding, b: Finding): number =>
  a.at.file !== b.at.file
    ? a.at.file < b.at.file
      ? -1
      : 1
    : a.at.start - b.at.start || (a.code < b.code ? -1 : a.code > b.code ? 1 : 0);

/** The unit that a procedure is for, if the file sees it. */
function unitNamed(project: Project, file: string, declaration: Declaration): string | undefined {
  const args = declaration.item.arguments.filter((a) => a.slot === "name" && !a.declares),
    last = args[args.length - 1];
  const id = last && project.files.get(file)!.tree.scan.tokens[last.first]!.text;
  return id !== undefined &&
    project
      .seen(file)
      .get(id)
      ?.some((d) => d.word === "unit")
    ? id
    : undefined;
}

function summaryOf(declaration: Declaration, model: Model | undefined, builds: number): UnitSummary {
  const declared = new Set(model?.hazards.map((h) => h.kind) ?? []),
    parts = model?.parts ?? [];
  return {
    unit: declaration.id,
    title: declaration.name,
    file: declaration.file,
    builds,
    notConsidered: Object.keys(hazardKinds).filter((kind) => !declared.has(kind) && !model?.dismissed.has(kind)),
    parts: parts.length,
    massesMissing: parts.filter((part) => part.mass === undefined).length,
  };
}
