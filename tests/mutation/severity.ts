// Lines left out one by one, and what the bench alone finds held against what is told: nothing may end milder, no danger out of sight.

import { globSync } from "node:fs";
import type { Problem } from "../../language/bench/trace.ts";
import { allowedIn } from "../../language/checks/allow.ts";
import { gravestFirst } from "../../language/checks/gravest-first.ts";
import { benchContext } from "../../language/checks/check-table.ts";
import { severityOf, weight } from "../../language/checks/severity.ts";
import type { Model } from "../../language/model/model.ts";
import { allChecks, checkProject, newMemo, type Checked } from "../../language/workspace/check-project.ts";
import { defaultSettings } from "../../language/world/settings.ts";
import { lineAt } from "./mutant.ts";
import { root, scenes, textOf, worldWith } from "./scenes.ts";

export interface Scan {
  /** Lines left out, each checked with all files of its machine. */
  readonly edits: number;
  /** Those after which nothing that is told is as grave as what the bench found. */
  readonly milder: readonly string[];
  /** Those after which a hazard that the bench speaks of is neither a finding nor a reason of one. */
  readonly unseen: readonly string[];
}

/** The machines, each mistake of the examples alone, the shop's files. */
const projects = (): (readonly string[])[] => [
  ...scenes().map(({ files }) => files),
  ...globSync("examples/{mistakes,workshop}/*.strip", { cwd: root })
    .map((path) => [path.replaceAll("\\", "/")])
    .sort(),
];

/** `takes` says of each line whether it is tried. */
export function scanSeverity(takes: () => boolean): Scan {
  const milder: string[] = [],
    unseen: string[] = [];
  let edits = 0;
  for (const files of projects()) {
    const texts = new Map(files.map((path) => [path, textOf(path)])),
      memo = newMemo();
    checkProject(worldWith(texts), files, { memo });
    for (const file of files) {
      const lines = texts.get(file)!.split("\n");
      for (const [i, text] of lines.entries()) {
        if (/^\s*(?:#|$)/.test(text) || !takes()) continue;
        edits++;
        const next = new Map(texts).set(file, lines.with(i, "").join("\n"));
        const checked = checkProject(worldWith(next), files, {
          memo: { ...memo, trees: new Map(memo.trees), files: new Map(memo.files), judged: new Map(memo.judged) },
        });
        const { worst, hidden } = heldAgainst(checked, worldWith(next)),
          told = Math.max(0, ...checked.findings.map(({ severity }) => weight(severity))),
          edit = `${file}:${i + 1} ${text.trim()}`;
        if (worst.weight > told) milder.push(`${edit}: ${worst.says}`);
        for (const says of hidden) unseen.push(`${edit}: ${says}`);
      }
    }
  }
  return { edits, milder, unseen };
}

interface Held {
  readonly worst: { readonly weight: number; readonly says: string };
  readonly hidden: readonly string[];
}

/** Each problem of the bench as its own check words and weighs it, save what the author allows. */
function heldAgainst(checked: Checked, world: ReturnType<typeof worldWith>): Held {
  const { project, performances } = checked,
    isAllowed = allowedIn(project.files),
    hidden: string[] = [];
  let worst = { weight: 0, says: "" };
  for (const { model, problems } of performances) {
    const context = benchContext(allChecks(), { project, settings: defaultSettings, world }, model);
    for (const one of problems) {
      const problem = gravestFirst(one, model),
        check = allChecks().byCode(problem.rule)!,
        draft = check.problem!(problem, context),
        severity = severityOf(check, defaultSettings, draft.severity);
      if (isAllowed({ code: problem.rule, at: draft.at })) continue;
      const says = `${draft.at.file}:${lineAt(project.files.get(draft.at.file)!.text, draft.at.start)} ${draft.says}`;
      if (weight(severity) > worst.weight) worst = { weight: weight(severity), says };
      if (
        problem.reasons.some(({ rule }) => rule.startsWith("hazard/")) &&
        !isSeen(checked, problem, model, draft.says)
      )
        hidden.push(says);
    }
  }
  return { worst, hidden };
}

/**
 * It is said as it is, or at its place something is said, or of that very hazard something of the same family is: what a hazard lacks
 * is told at the hazard, not at each line that asks for it.
 */
function isSeen({ findings }: Checked, { at, reasons }: Problem, { things }: Model, says: string): boolean {
  const hazards = reasons
    .flatMap(({ thing, by }) => [thing, ...by])
    .flatMap((one) => {
      const of = one === undefined ? undefined : things[one];
      return of?.is === "hazard" ? [of.whole] : [];
    });
  return findings.some(({ code, says: first, at: place, because }) =>
    [{ says: first, at: place }, ...because].some(
      (said) =>
        said.says.includes(says) ||
        (said.at?.file === at.file && said.at.start === at.start) ||
        (code.startsWith("hazard/") &&
          hazards.some(
            ({ file, start, end }) => said.at?.file === file && said.at.start >= start && said.at.end <= end,
          )),
    ),
  );
}
