// Many files checked one after the other, each with what it uses, keeping only what a report needs: a repository of thousands of
// procedures fits in the memory of a small machine. The findings are those of `checkProject`.

import { allowedIn, allowsOf, applyAllows } from "../checks/allow.ts";
import { mergeFindings } from "../checks/merge.ts";
import type { Raw } from "../checks/raw.ts";
import { severityOf } from "../checks/severity.ts";
import { unitKey } from "../checks/unit-key.ts";
import type { Surveyed, UnitSummary } from "../findings/surveyed.ts";
import type { Build } from "../model/builds.ts";
import type { Model } from "../model/model.ts";
import { loadProject, type TreeCache } from "../names/load.ts";
import type { SourceFile } from "../names/project.ts";
import { allChecks, checkOneFile, byPlace } from "./check-project.ts";
import { defaultSettings, type Settings } from "../world/settings.ts";
import { unknownsOfUnit } from "./unknowns.ts";
import type { World } from "../world/world.ts";

export interface ManyOptions {
  readonly settings?: Settings;
  readonly between?: (done: number, of: number) => void;
  /** Tell the figures that nobody gave as well. */
  readonly unknowns?: boolean;
  /** Files that another run judges: of them only what the files here use is asked, and what their authors allow. */
  readonly elsewhere?: ReadonlySet<string>;
}

export function checkMany(world: World, roots: readonly string[], options: ManyOptions = {}): Surveyed {
  const { settings = defaultSettings, between, unknowns, elsewhere } = options,
    sorted = [...new Set(roots)].sort(),
    asked = new Set(sorted);
  const raw: Raw[] = [],
    units: UnitSummary[] = [],
    builds = new Map<string, readonly Build[]>(),
    texts = new Map<string, string>(),
    allowing = new Map<string, SourceFile>();
  const unreadable: { path: string; says: string }[] = [],
    complete = new Set<string>(),
    trees: TreeCache = new Map(),
    performed = new Map<string, Model[]>();
  let procedures = 0;
  // Files that are only used come last, each once, as if they had been asked for.
  const queue = [...sorted],
    queued = new Set(queue);
  for (let i = 0; i < queue.length; i++) {
    const path = queue[i]!;
    between?.(i, queue.length);
    // Trees stay of files that others use alone; the rest goes with its load.
    const read: TreeCache = new Map(),
      project = loadProject(world, [path], { get: (one) => trees.get(one), set: (one, tree) => read.set(one, tree) });
    const file = project.files.get(path);
    unreadable.push(...project.unreadable);
    for (const other of project.files.keys()) {
      if (other === path) continue;
      const tree = read.get(other);
      if (tree) trees.set(other, tree);
      if (queued.has(other)) continue;
      queued.add(other);
      if (elsewhere?.has(other) !== true) queue.push(other);
      else if (allowsOf(project.files.get(other)!).length > 0) allowing.set(other, project.files.get(other)!);
    }
    if (!file) continue;
    texts.set(path, file.text);
    const result = checkOneFile(file, { project, settings, world });
    for (const one of result.raw) raw.push(one);
    units.push(...result.units);
    for (const [unit, list] of result.builds) builds.set(unit, list);
    procedures += new Set(result.rehearsals.map(({ performance }) => performance.procedure.id)).size;
    if (unknowns)
      for (const { performance } of result.rehearsals) {
        const key = unitKey(performance.model),
          models = performed.get(key);
        if (!models) performed.set(key, [performance.model]);
        else if (!models.includes(performance.model)) models.push(performance.model);
      }
    if (allowsOf(file).length > 0) allowing.set(path, file);
    if (asked.has(path) && file.tree.errors.length === 0) complete.add(path);
  }
  const merged = mergeFindings(raw, (unit) => builds.get(unit) ?? [], allowedIn(allowing));
  const allowed = applyAllows(merged, allowing, {
    check: allChecks().byCode,
    severity: (check) => severityOf(check, settings, undefined),
    complete: (file) => complete.has(file.path),
  });
  return {
    findings: allowed.findings.sort(byPlace),
    allows: allowed.used,
    units,
    unreadable,
    texts,
    procedures,
    ...(unknowns ? { unknowns: [...performed.values()].flatMap((models) => unknownsOfUnit(models) ?? []) } : {}),
  };
}
