// A whole project checked: files to models, each procedure performed in each build, findings merged. Command line and editor run this
// same function.

import { performProcedure } from "../bench/perform-procedure.ts";
import type { Performance } from "../bench/trace.ts";
import { applyAllows, type Allow } from "../checks/allow.ts";
import { mergeFindings } from "../checks/merge.ts";
import { checks } from "../checks/registry.ts";
import { checkFile, checkModel, checkPerformance, checkTable, type CheckTable, type Raw } from "../checks/run.ts";
import type { Finding } from "../findings/finding.ts";
import { buildModel } from "../model/build-model.ts";
import { buildsOf, type Build } from "../model/builds.ts";
import type { Model } from "../model/model.ts";
import { loadProject, type TreeCache } from "../names/load.ts";
import type { Declaration, Project } from "../names/project.ts";
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

export interface Checked {
  readonly project: Project;
  readonly findings: readonly Finding[];
  readonly allows: readonly Allow[];
  /** Every procedure in every build, in the order of files; models are shared. */
  readonly performances: readonly Performance[];
  readonly units: readonly UnitSummary[];
  readonly unreadable: Project["unreadable"];
}

let table: CheckTable | undefined;
/** All checks there are. */
export const allChecks = (): CheckTable => (table ??= checkTable(checks));

export interface CheckOptions {
  readonly settings?: Settings;
  readonly cache?: TreeCache;
  /** Called between steps of long work; may throw to end it. */
  readonly between?: (done: number, of: number) => void;
}

export function checkProject(world: World, roots: readonly string[], options: CheckOptions = {}): Checked {
  const settings = options.settings ?? defaultSettings, project = loadProject(world, roots, options.cache), raw: Raw[] = [], performances: Performance[] = [], units: UnitSummary[] = [];
  const context = { project, settings, world }, models = new Map<string, Model | undefined>(), builds = new Map<string, readonly Build[]>(), byUnit = new Map<string, readonly Build[]>();
  const buildsIn = (file: string, unit: string): readonly Build[] => {
    const key = `${file}\n${unit}`;
    let list = builds.get(key);
    if (!list) { builds.set(key, (list = buildsOf(project, file, unit))); byUnit.set(unit, list); }
    return list;
  };
  const modelIn = (file: string, unit: string, build: Build): Model | undefined => {
    const key = `${file}\n${unit}\n${build.name}`;
    if (!models.has(key)) models.set(key, buildModel(project, file, unit, build));
    return models.get(key);
  };
  let done = 0;
  for (const file of project.files.values()) {
    options.between?.(done++, project.files.size);
    raw.push(...checkFile(allChecks(), file, context));
    for (const declaration of file.declarations) {
      if (declaration.word === "unit") {
        for (const build of buildsIn(file.path, declaration.id)) { const model = modelIn(file.path, declaration.id, build); if (model) raw.push(...checkModel(allChecks(), model, context)); }
        units.push(summaryOf(declaration, modelIn(file.path, declaration.id, buildsIn(file.path, declaration.id)[0]!), buildsIn(file.path, declaration.id).length));
      } else if (declaration.word === "procedure") {
        const unit = unitNamed(project, file.path, declaration);
        if (unit === undefined || project.seen(file.path).get(declaration.id)?.find((d) => d.word === "procedure") !== declaration) continue;
        for (const build of buildsIn(file.path, unit)) {
          const model = modelIn(file.path, unit, build);
          if (!model?.procedures.has(declaration.id)) continue;
          const performance = performProcedure(model, declaration.id);
          performances.push(performance);
          raw.push(...checkPerformance(allChecks(), performance, context));
        }
      }
    }
  }
  const merged = mergeFindings(raw, (unit) => byUnit.get(unit) ?? []), { findings, used } = applyAllows(merged, project.files, (code) => allChecks().byCode(code) !== undefined);
  return { project, findings: findings.sort(byPlace), allows: used, performances, units, unreadable: project.unreadable };
}

const byPlace = (a: Finding, b: Finding): number =>
  a.at.file !== b.at.file ? (a.at.file < b.at.file ? -1 : 1) : a.at.start - b.at.start || (a.code < b.code ? -1 : a.code > b.code ? 1 : 0);

/** The unit that a procedure is for, if the file sees it. */
function unitNamed(project: Project, file: string, declaration: Declaration): string | undefined {
  const args = declaration.item.arguments.filter((a) => a.slot === "name" && !a.declares), last = args[args.length - 1];
  const id = last && project.files.get(file)!.tree.scan.tokens[last.first]!.text;
  return id !== undefined && project.seen(file).get(id)?.some((d) => d.word === "unit") ? id : undefined;
}

function summaryOf(declaration: Declaration, model: Model | undefined, builds: number): UnitSummary {
  const declared = new Set(model?.hazards.map((h) => h.kind) ?? []), parts = model?.parts ?? [];
  return {
    unit: declaration.id, title: declaration.name, file: declaration.file, builds,
    notConsidered: Object.keys(hazardKinds).filter((kind) => !declared.has(kind) && !model?.dismissed.has(kind)),
    parts: parts.length, massesMissing: parts.filter((part) => part.mass === undefined).length,
  };
}
