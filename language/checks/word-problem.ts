// A problem of the bench as a finding on its way: worded by the check of its code, with what merging has to know of it.

import type { Performance, Problem } from "../bench/trace.ts";
import type { Span } from "../findings/finding.ts";
import { kept } from "../model/kept.ts";
import type { Model, ThingIndex } from "../model/model.ts";
import { agreed } from "./agreement.ts";
import type { BenchContext } from "./check.ts";
import type { CheckTable } from "./check-table.ts";
import { rawFinding, type Raw } from "./raw.ts";
import { unitKey } from "./unit-key.ts";
import { undeclaredAt } from "./unread-declaration.ts";

/** `within`: the finding that says it already. `performance`: the one that it was found in, if not in the declarations. */
export function wordProblem(
  table: CheckTable,
  problem: Problem,
  context: BenchContext,
  { within, performance }: { readonly within: Span | undefined; readonly performance?: Performance },
): Raw | undefined {
  const check = table.byCode(problem.rule);
  if (!check?.problem) throw new Error(`no check words ${problem.rule}`);
  const { model, settings } = context,
    unit = unitKey(model),
    what = performance && lackOf(problem, context),
    draft = agreed(check.problem(problem, context), model),
    things = problem.about.map((thing) => model.things[thing]!);
  return rawFinding(check, within ? { ...draft, within } : draft, settings, {
    build: model.build,
    unit,
    who: things[0]?.name ?? "",
    about:
      things.length > 0
        ? things.map(({ id }) => `${unit} ${id}`)
        : problem.reasons.flatMap(({ words }) => words.slice(0, 1)),
    lack: performance && what && { what, performed: performedIn(performance) },
    inTheWay: inTheWayOf(problem, model),
    restsOn: undeclaredAt(problem, model),
  });
}

/** By declaration: a part of a unit inside has another name in the unit around it. */
function declaredKey({ things }: Model, thing: ThingIndex): string {
  const { at, piece } = things[thing]!;
  return `${at.file} ${at.start} ${piece}`;
}

/** What a refused act lacked; undefined where it is no such thing. */
function lackOf(problem: Problem, context: BenchContext): ReadonlySet<string> | undefined {
  const idOf = (thing: ThingIndex): string => declaredKey(context.model, thing);
  const lacks = problem.reasons.map(({ rule, thing, by, words }) => {
    const ids = (rule === "hazard/order" && thing !== undefined ? [thing] : by).map(idOf).join();
    switch (rule) {
      case "sequence/still-held":
      case "sequence/blocked":
      case "sequence/fluid-aboard":
        return `open ${ids}`;
      case "hazard/not-yet":
        return `precautions ${ids} ${words.join()}`;
      case "hazard/order":
        return words[0] === "before"
          ? `precautions ${ids} ${words.slice(1).join()}`
          : `declared ${ids} ${words.join()}`;
      case "hazard/proof-out-of-reach":
        return `open ${ids}`;
      // Too many in the one build are too few in the other.
      case "sequence/over-count":
        return thing === undefined ? undefined : `open ${idOf(thing)}`;
      case "refit/mark-unmade":
        return `mark ${unitKey(context.model)} ${words[0] ?? ""}`;
      case "removal/missing":
      case "removal/never-undone":
      case "removal/old-stays":
        return thing === undefined ? undefined : `open ${idOf(thing)}`;
      default:
        return undefined;
    }
  });
  return lacks.every((lack) => lack !== undefined) ? new Set(lacks) : undefined;
}

/** Procedures performed in it, called and needed ones too. */
const performed = kept<Performance, ReadonlySet<string>>();
function performedIn(performance: Performance): ReadonlySet<string> {
  return performed(performance, () => {
    const { procedure, model } = performance,
      acts = [...performance.strip, ...performance.written],
      needs = procedure.needs.flatMap((need) => need.names.map((name) => model.procedures.get(name.text) ?? procedure));
    return new Set(
      [procedure, ...needs, ...acts.map(({ around }) => around.procedure)].map(({ at, id }) => `${at.file} ${id}`),
    );
  });
}

/** Things of one unit that are in each other's way while it is worked on as a whole: of a unit inside, where all of them are within it. */
function inTheWayOf({ reasons, about }: Problem, model: Model): Raw["inTheWay"] {
  if (!reasons.every(({ rule }) => rule === "sequence/blocked" || rule === "sequence/still-held")) return undefined;
  const { parts, things } = model,
    all = reasons.flatMap(({ thing, by }) => (thing === undefined ? by : [thing, ...by])),
    isInside = parts.some(
      (part) => part.unit !== undefined && all.every((thing) => `${things[thing]!.id}/`.startsWith(`${part.id}/`)),
    );
  // On a unit's own bench the thing that was to come off is counted too: on the bench around it, that one may be what is in the way.
  return { isInside, things: new Set((isInside ? all : [...all, ...about]).map((thing) => declaredKey(model, thing))) };
}
