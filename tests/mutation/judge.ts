// What became of each mutant: checked as a whole project, its findings held against those of the text as it was.

import type { Performance } from "../../language/bench/trace.ts";
import { isAlwaysNew, isOneTimeKind } from "../../language/bench/new-parts.ts";
import type { Finding } from "../../language/findings/finding.ts";
import { checkProject, newMemo, type Checked, type CheckMemo } from "../../language/workspace/check-project.ts";
import { concernedBy } from "./blame.ts";
import { mutantsOf, type UnitFacts } from "./make-mutants.ts";
import { applied, lineAt, type Mutant } from "./mutant.ts";
import { meaningOf } from "./same-meaning.ts";
import { scenes, textOf, worldWith, type Scene } from "./scenes.ts";
import { reasonFor } from "./survivors.ts";

export type Verdict = "found" | "found otherwise" | "equivalent" | "only statement" | "survivor";

export interface Judged {
  readonly mutant: Mutant;
  readonly verdict: Verdict;
  /** `line code: text` of what was found. */
  readonly findings: readonly string[];
  /** Why it was not found as one finding at the right line. */
  readonly why: string;
}

export interface SceneAtWork {
  readonly scene: Scene;
  readonly texts: ReadonlyMap<string, string>;
  readonly checked: Checked;
  readonly mutants: readonly Mutant[];
  judge(mutant: Mutant): Judged;
  /** `file:line code: text` of what is found with this text in place of that file's, and was not found before. */
  found(file: string, text: string): readonly string[];
}

const keyOf = (finding: Finding, texts: ReadonlyMap<string, string>): string =>
  `${finding.at.file}:${lineAt(texts.get(finding.at.file) ?? "", finding.at.start)} ${finding.code}: ${finding.says}`;

export function atWork(scene: Scene): SceneAtWork {
  const texts = new Map(scene.files.map((path) => [path, textOf(path)])),
    memo: CheckMemo = newMemo();
  const checked = checkProject(worldWith(texts), scene.files, { memo });
  for (const [path, file] of checked.project.files) texts.set(path, file.text);
  const known = new Set(checked.findings.map((finding) => keyOf(finding, texts))),
    meaning = meaningOf(checked.performances);
  const mutants = scene.files.flatMap((path) =>
    mutantsOf(checked.project.files.get(path)!, (start) => factsOf(start, path, checked.performances)),
  );
  // The memo of the text as it was stays as it is: only what the edit touches is done again.
  const check = (next: ReadonlyMap<string, string>): Checked =>
    checkProject(worldWith(next), scene.files, {
      memo: { ...memo, trees: new Map(memo.trees), files: new Map(memo.files) },
    });
  const foundIn = (file: string, text: string): string[] => {
    const next = new Map(texts).set(file, text);
    return check(next)
      .findings.map((finding) => keyOf(finding, next))
      .filter((key) => !known.has(key));
  };
  const judge = (mutant: Mutant): Judged => {
    const next = new Map(texts).set(mutant.file, applied(texts.get(mutant.file)!, mutant.edits)),
      after = check(next);
    const found = after.findings.filter((finding) => !known.has(keyOf(finding, next)));
    const findings = found.map((finding) => keyOf(finding, next)),
      { lines, isAskedFor } = concernedBy(mutant, checked.performances, texts);
    if (
      found.length === 1 &&
      lines.has(`${found[0]!.at.file}:${lineAt(next.get(found[0]!.at.file)!, found[0]!.at.start)}`)
    )
      return { mutant, verdict: "found", findings, why: "" };
    if (found.length > 0)
      return {
        mutant,
        verdict: "found otherwise",
        findings,
        why: otherwise(found),
      };
    if (meaningOf(after.performances) === meaning && mutant.class === "swap two neighbours")
      return { mutant, verdict: "equivalent", findings, why: "" };
    const why = reasonFor(mutant, checked, isAskedFor);
    return { mutant, verdict: why.only ? "only statement" : "survivor", findings, why: why.says };
  };
  return { scene, texts, checked, mutants, judge, found: foundIn };
}

/** Why what was found is not one finding at the right line. */
const otherwise = (found: readonly Finding[]): string =>
  found.length === 1
    ? "at another line"
    : new Set(found.map(({ at }) => at.file)).size > 1
      ? `${found.length} findings: what the wrong line leaves behind is found in its procedure and in the one that begins where that one ends`
      : `${found.length} findings in one procedure`;

/** Every mutant of every scene. */
export const judgeAll = (): Judged[] =>
  scenes().flatMap((scene) => {
    const work = atWork(scene);
    return work.mutants.map(work.judge);
  });

/** What the unit of a procedure offers for wrong names and counts, from the models that it was performed on. */
function factsOf(start: number, file: string, performances: readonly Performance[]): UnitFacts | undefined {
  const first = performances.find(({ procedure: { whole } }) => whole.file === file && whole.start === start);
  if (!first) return undefined;
  const { model } = first,
    scope = model.scopes.get("")!,
    things = (name: string): readonly number[] => scope.get(name) ?? [];
  return {
    fasteners: [...new Set(model.ties.filter((tie) => tie.fastener && tie.prefix === "").map((tie) => tie.declared))],
    positions: model.positions,
    countOf: (name) => {
      const [only, ...more] = things(name),
        thing = only === undefined || more.length > 0 ? undefined : model.things[only];
      return thing && (thing.is === "tie" || thing.is === "part") && !thing.countUnknown ? thing.count : undefined;
    },
    isOneTime: (name) =>
      things(name).some((thing) => {
        const of = model.things[thing]!;
        return (of.is === "part" || of.is === "tie") && (isAlwaysNew(of) || isOneTimeKind(of));
      }),
  };
}
