// A line `use` that is missing shows as every name that it would have brought: one mistake. Decides which names those are.

import type { Because, Fix } from "../findings/finding.ts";
import { kept } from "../model/kept.ts";
import type { Declaration, Project, SourceFile } from "../names/project.ts";
import type { Answer } from "./check.ts";
import type { Due } from "./due-names.ts";
import { nearestName } from "./near-names.ts";
import { surveyOf, type Unknown } from "./survey-of-names.ts";
import { relativeTo, useLine } from "./use-line.ts";

/** What stands at the top of a file, by what is due: the usual sort first. */
const atTop: Partial<Record<Due, readonly Declaration["word"][]>> = {
  tool: ["tool", "consumable", "temporary"],
  stores: ["consumable"],
  role: ["role"],
  table: ["torque-table"],
  like: ["fastener", "hazard"],
  "hazard type": ["hazard"],
  procedure: ["procedure"],
  "procedure or step": ["procedure"],
  unit: ["unit"],
};
const shop: ReadonlySet<Declaration["word"]> = new Set(["tool", "consumable", "role", "torque-table"]);

/** The file of this project that declares it and that this file does not use, as it would be written, and the line that it lacks. */
export function declaredUnused(
  project: Project,
  file: SourceFile,
  unknown: Unknown,
): { readonly path: string; readonly written: string; readonly fix: Fix } | undefined {
  const path = pathOf(project, file, unknown);
  if (path === undefined) return undefined;
  const written = relativeTo(file.path, path);
  return { path, written, fix: { title: `Use ${written}`, edits: [useLine(file, path)], certain: false } };
}
function pathOf(project: Project, file: SourceFile, { text, due, is }: Unknown): string | undefined {
  // A part that is a unit often has its name.
  const words = is === undefined || due === "unit" ? atTop[due] : undefined;
  if (!words) return undefined;
  return [...project.files.values()].find(
    (other) => other !== file && other.declarations.some(({ id, word }) => id === text && words.includes(word)),
  )?.path;
}

/**
 * The one line that would bring this name and others: of a file that is known, or, in a file that uses none, of one that is not.
 * Undefined where the name is misspelt, or may be forgotten by itself.
 */
export function useAnswer(project: Project, file: SourceFile, unknown: Unknown): Answer | undefined {
  const { text, due, is, candidates } = unknown;
  const path = pathOf(project, file, unknown),
    linked = linkOf(project, file.path);
  if (path !== undefined) return { key: `use ${path} ${linked}`, across: true };
  if (is !== undefined || !atTop[due]) return undefined;
  if (file.uses.length > 0 || nearestName(text, candidates) !== undefined) return undefined;
  // A file with some of the shop's things in it may lack one more of the same sort; of several sorts it lacks the line.
  const sorts = new Set(
    surveyOf(project, file).unknown.flatMap((one) => (one.is === undefined ? (atTop[one.due] ?? []).slice(0, 1) : [])),
  );
  if (sorts.size < 2 && file.declarations.some(({ word }) => shop.has(word))) return undefined;
  const because: Because = {
    says: `this file uses no other: a line use "…" may bring these names`,
    at: { file: file.path, start: 0, end: 0 },
  };
  return { key: `use ${file.path}`, across: true, because };
}

/** Equal for files that hang together by what they use. */
export function linkOf(project: Project, path: string): string {
  return links(project, () => {
    const first = new Map([...project.files.keys()].map((one) => [one, one])),
      top = (one: string): string => {
        let at = one;
        for (let next = first.get(at); next !== undefined && next !== at; next = first.get(at)) at = next;
        return at;
      };
    for (const file of project.files.values())
      for (const use of file.uses) {
        const [a, b] = [top(file.path), top(use.path)].sort();
        first.set(b!, a!);
      }
    return top;
  })(path);
}
const links = kept<Project, (path: string) => string>();
