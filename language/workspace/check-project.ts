// A whole project checked: files to models, each procedure performed in each build, findings merged. Command line and editor run this
// same function.

import type { Work } from "../bench/bench.ts";
import { likeness } from "../bench/likeness.ts";
import { rehearse, type Keeping, type Rehearsal } from "../bench/perform-procedure.ts";
import type { Performance } from "../bench/trace.ts";
import { allowedIn, applyAllows, type Allow } from "../checks/allow.ts";
import { mergeFindings } from "../checks/merge.ts";
import { checks } from "../checks/registry.ts";
import type { CheckContext } from "../checks/check.ts";
import { checkFile, checkModel, checkPerformance, checkTable, type CheckTable, type Raw } from "../checks/run.ts";
import { severityOf } from "../checks/severity.ts";
import type { Finding } from "../findings/finding.ts";
import { buildModel, withProcedures } from "../model/build-model.ts";
import { buildsOf, type Build } from "../model/builds.ts";
import type { Model } from "../model/model.ts";
import { loadProject, type TreeCache } from "../names/load.ts";
import type { Declaration, Project, SourceFile } from "../names/project.ts";
import { sameDeclared } from "../names/same-declared.ts";
import { hazardKinds } from "../tables/index.ts";
import { defaultSettings, type Settings } from "./settings.ts";
import type { World } from "./world.ts";

export interface UnitSummary {
  readonly unit: string;
  readonly title: string;
  readonly file: string;
  /** Hazard kinds neither declared nor dismissed: nobody has answered for them. */
  readonly notConsidered: readonly string[];
  readonly parts: number;
  readonly massesMissing: number;
  readonly builds: number;
}

/** What a report needs of a check, whoever made it. */
export interface Surveyed {
  readonly findings: readonly Finding[];
  readonly allows: readonly Allow[];
  readonly units: readonly UnitSummary[];
  readonly unreadable: Project["unreadable"];
  /** Texts by path: every file that was read. */
  readonly texts: ReadonlyMap<string, string>;
  /** How many procedures were performed. */
  readonly procedures: number;
}

export interface Checked extends Surveyed {
  readonly project: Project;
  /** Every procedure in every build, in the order of files; models are shared. */
  readonly performances: readonly Performance[];
}

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
  /** How much was performed since the memo was made. */
  readonly work: Work;
}

/** Empty. Throw one away when pictures came or went: models are not asked again whether those are there. */
export const newMemo = (): CheckMemo => ({ trees: new Map(), files: new Map(), work: { acts: 0 } });

export interface CheckOptions {
  readonly settings?: Settings;
  readonly memo?: CheckMemo;
  /** Called between steps of long work; may throw to end it. */
  readonly between?: (done: number, of: number) => void;
}

/** Everything that follows from one file and what it uses. */
interface FileResult {
  readonly settings: Settings;
  /** The files that it was made from. */
  readonly from: readonly SourceFile[];
  readonly builds: ReadonlyMap<string, readonly Build[]>;
  readonly raw: readonly Raw[];
  readonly rehearsals: readonly Rehearsal[];
  readonly units: readonly UnitSummary[];
  /** By unit and build. */
  readonly models: ReadonlyMap<string, Model | undefined>;
}

/** Checks the files asked for and all that they use. Never throws for what stands in a file. */
export function checkProject(world: World, roots: readonly string[], options: CheckOptions = {}): Checked {
  const { settings = defaultSettings, memo = newMemo(), between } = options,
    project = loadProject(world, roots, memo.trees),
    context = { project, settings, world };
  const raw: Raw[] = [],
    performances: Performance[] = [],
    units: UnitSummary[] = [],
    builds = new Map<string, readonly Build[]>();
  let done = 0;
  for (const file of project.files.values()) {
    between?.(done++, project.files.size);
    const from = filesSeen(project, file),
      kept = memo.files.get(file.path);
    const result =
      kept && kept.settings === settings && isSame(kept.from, from)
        ? kept
        : performFile(file, from, context, memo.work, options.memo ? "stages" : "once", kept);
    memo.files.set(file.path, result);
    for (const one of checkFile(allChecks(), file, context)) raw.push(one);
    for (const one of result.raw) raw.push(one);
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

/** Everything found in one file of a project, nothing kept. */
export function checkOneFile(
  file: SourceFile,
  context: CheckContext,
): Pick<FileResult, "raw" | "rehearsals" | "units" | "builds"> {
  const result = performFile(file, [], context, { acts: 0 }, "once");
  return { ...result, raw: [...checkFile(allChecks(), file, context), ...result.raw] };
}

/** Builds and performs what a file declares, in each build. `earlier` is what came of it at an earlier reading. */
function performFile(
  file: SourceFile,
  from: readonly SourceFile[],
  context: CheckContext,
  work: Work,
  keeping: Keeping,
  earlier?: FileResult,
): FileResult {
  const { project, settings } = context,
    raw: Raw[] = [],
    rehearsals: Rehearsal[] = [],
    like = likeness(),
    units: UnitSummary[] = [];
  const builds = new Map<string, readonly Build[]>(),
    models = new Map<string, Model | undefined>(),
    declaredBefore = earlier && sameDeclared(earlier.from, from) ? earlier.models : undefined;
  const buildsIn = (unit: string): readonly Build[] => {
    let list = builds.get(unit);
    if (!list) builds.set(unit, (list = buildsOf(project, file.path, unit)));
    return list;
  };
  const modelIn = (unit: string, build: Build): Model | undefined => {
    const key = `${unit}\n${build.name}`;
    if (!models.has(key)) {
      const had = declaredBefore?.get(key);
      models.set(
        key,
        had && sameChoices(had, build)
          ? withProcedures(had, project, file.path)
          : buildModel(project, file.path, unit, build),
      );
    }
    return models.get(key);
  };
  for (const declaration of file.declarations) {
    if (declaration.word === "unit") {
      const all = buildsIn(declaration.id);
      for (const build of all) {
        const model = modelIn(declaration.id, build);
        if (model) raw.push(...checkModel(allChecks(), model, context));
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
        const had = earlier?.rehearsals.find(
          ({ performance: { model: of, procedure } }) =>
            procedure.id === declaration.id && of.unit === model.unit && of.build === model.build,
        );
        const rehearsal = rehearse(model, declaration.id, work, keeping, had && { rehearsal: had, like });
        rehearsals.push(rehearsal);
        raw.push(...checkPerformance(allChecks(), rehearsal.performance, context));
      }
    }
  }
  return { settings, from, builds, raw, rehearsals, units, models };
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
