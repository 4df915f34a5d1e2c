// A problem of the bench as a finding on its way: worded by the check of its code, with what merging has to know of it.

import type { Performance, Problem } from "../bench/trace.ts";
import type { Span } from "../findings/finding.ts";
import { kept } from "../model/kept.ts";
import type { Model, ThingIndex } from "../model/model.ts";
import { agreed } from "./agreement.ts";
import type { BenchContext } from "./check.ts";
import type { CheckTable } from "./check-table.ts";
import { rawFinding, type Raw } from "./raw.ts";
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
    what = performance && lackOf(problem, context),
    draft = agreed(check.problem(problem, context), model),
    things = problem.about.map((thing) => model.things[thing]!);
  return rawFinding(check, within ? { ...draft, within } : draft, settings, {
    build: model.build,
    unit: model.unit,
    who: things[0]?.name ?? "",
    about:
      things.length > 0
        ? things.map(({ id }) => `${model.unit} ${id}`)
        : problem.reasons.flatMap(({ words }) => words.slice(0, 1)),
    lack: performance && what && { what, performed: performedIn(performance) },
    inTheWay: inTheWayOf(problem, model),
    restsOn: undeclaredAt(problem, model),
  });
}

/** What a refused act lacked; undefined where it is no such thing. */
function lackOf(problem: Problem, context: BenchContext): ReadonlySet<string> | undefined {
  // By declaration: a part of a unit inside has another name in the unit around it.
  const idOf = (thing: ThingIndex): string => {
    const { at, piece } = context.model.things[thing]!;
    return `${at.file} ${at.start} ${piece}`;
  };
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
        return `mark ${context.model.unit} ${words[0] ?? ""}`;
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
    const { procedure } = performance,
      acts = [...performance.strip, ...performance.written],
      needs = procedure.needs.flatMap((need) => need.names.map((name) => name.text));
    return new Set([procedure.id, ...needs, ...acts.map(({ around }) => around.procedure.id)]);
  });
}

/** Things of one unit that are in each other's way while it is worked on as a whole: of a unit inside, where all of them are within it. */
function inTheWayOf({ reasons, about }: Problem, { parts, things, unit }: Model): Raw["inTheWay"] {
  if (!reasons.every(({ rule }) => rule === "sequence/blocked" || rule === "sequence/still-held")) return undefined;
  const all = reasons
      .flatMap(({ thing, by }) => (thing === undefined ? by : [thing, ...by]))
      .map((thing) => things[thing]!.id),
    inside = parts.find((part) => part.unit !== undefined && all.every((id) => `${id}/`.startsWith(`${part.id}/`)));
  return {
    unit: inside?.unit ?? unit,
    isInside: inside !== undefined,
    // On a unit's own bench the thing that was to come off is counted too: on the bench around it, that one may be what is in the way.
    things: new Set(
      inside ? all.map((id) => id.slice(inside.id.length + 1)) : [...all, ...about.map((thing) => things[thing]!.id)],
    ),
  };
}
