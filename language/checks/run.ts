// Runs every check over a file, a model or a performance. What belongs together is made one finding afterwards (`merge.ts`).

import { declaredProblems } from "../bench/declared.ts";
import type { Performance } from "../bench/trace.ts";
import type { Model } from "../model/model.ts";
import type { SourceFile } from "../names/project.ts";
import type { SyntaxError } from "../syntax/index.ts";
import { agreed } from "./agreement.ts";
import { allowedIn } from "./allow.ts";
import { hiddenByAllow } from "./allowed-once.ts";
import { benchContext, type Asked, type CheckTable } from "./check-table.ts";
import type { BenchContext, Check, CheckContext, Draft, Say } from "./check.ts";
import { leftToSay, saidAlready } from "./one-slip.ts";
import { ofMissingStep } from "./missing-step.ts";
import { rawFinding, type Raw } from "./raw.ts";
import { severityOf } from "./severity.ts";
import { unitKey } from "./unit-key.ts";
import { unreadDeclaration } from "./unread-declaration.ts";
import { wordProblem } from "./word-problem.ts";
import type { Settings } from "../world/settings.ts";

/** Asks one check after the other, save those that are off; `take` is told which of them said it. */
function ask<One extends Check>(
  checks: readonly One[],
  settings: Settings,
  one: (check: One, say: Say) => void,
  take: (check: One, draft: Draft) => void,
): void {
  const say = (draft: Draft): void => take(asked, draft);
  let asked: One;
  for (asked of checks) if (severityOf(asked, settings, undefined) !== "off") one(asked, say);
}

/** Errors of form, and what the checks of a file find. */
export function checkFile(table: CheckTable, file: SourceFile, context: CheckContext): Raw[] {
  const found: Raw[] = file.tree.errors.map((error) => syntaxFinding(file.path, error));
  ask(
    table.ofFile,
    context.settings,
    (check, say) => check.file(file, say, context),
    (check, draft) => push(found, rawFinding(check, draft, context.settings, { build: undefined, unit: "" })),
  );
  return found;
}

/** The parser words its own errors, and no setting changes their weight. */
function syntaxFinding(file: string, { code, says, start, end, fix }: SyntaxError): Raw {
  const fixes = fix ? [{ ...fix, edits: fix.edits.map((edit) => ({ file, ...edit })) }] : [];
  return {
    code,
    severity: "error",
    says,
    at: { file, start, end },
    because: [],
    fixes,
    builds: [],
    build: undefined,
    unit: "",
    who: "",
    about: [],
    lack: undefined,
    inTheWay: undefined,
    restsOn: undefined,
  };
}

/** What the declarations of a unit in one build hold against each other, and what its checks find. */
export function checkModel(table: CheckTable, model: Model, context: CheckContext): Raw[] {
  const found: Raw[] = [],
    bench = benchContext(table, context, model);
  for (const problem of declaredProblems(model))
    push(found, wordProblem(table, problem, bench, { within: unreadDeclaration(problem, model, context.project) }));
  pushOfModel(found, table.ofModel, model, bench);
  return found;
}

/** What `checkModel` leaves out, since it may change with any file. */
export function checkModelAmongAll(table: CheckTable, model: Model, context: CheckContext): Raw[] {
  const found: Raw[] = [];
  pushOfModel(found, table.ofModelAmongAll, model, benchContext(table, context, model));
  return found;
}

function pushOfModel(found: Raw[], checks: readonly Asked<"model">[], model: Model, bench: BenchContext): void {
  const { build } = model,
    unit = unitKey(model);
  ask(
    checks,
    bench.settings,
    (check, say) => check.model(model, say, bench),
    (check, draft) => push(found, rawFinding(check, agreed(draft, model), bench.settings, { build, unit })),
  );
}

/** What the bench met in one performance, and what its checks find. */
export function checkPerformance(table: CheckTable, performance: Performance, context: CheckContext): Raw[] {
  const found: Raw[] = [],
    { model, problems } = performance,
    { build } = model,
    unit = unitKey(model),
    bench = benchContext(table, context, model),
    met = { ...context, performance },
    isAllowed = allowedIn(context.project.files),
    ofStep = ofMissingStep(performance, isAllowed);
  for (const problem of [...problems, ...hiddenByAllow(performance, isAllowed)]) {
    const left = leftToSay(problem, met),
      raw = left && wordProblem(table, left, bench, { within: saidAlready(left, met), performance }),
      // One call that does all of it answers it already.
      within = raw?.answer === undefined ? (raw?.within ?? ofStep.get(problem)) : undefined;
    push(found, raw && within ? { ...raw, within } : raw);
  }
  ask(
    table.ofPerformance,
    context.settings,
    (check, say) => check.performance(performance, say, bench),
    (check, draft) => push(found, rawFinding(check, agreed(draft, model), context.settings, { build, unit })),
  );
  return found;
}

function push<T>(list: T[], one: T | undefined): void {
  if (one !== undefined) list.push(one);
}
