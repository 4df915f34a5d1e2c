// `# allow` speaks of one act. What was touched there without its precautions is taken as guarded from then on, so that one lack is said
// once: where that one is allowed, the next act that rests on it is found by itself.

import { reasonOf } from "../bench/bench.ts";
import type { Event, Performance, Performed, Problem, Reason } from "../bench/trace.ts";
import { at } from "../bench/vector.ts";
import { machineOf } from "../bench/machine.ts";
import { isKindOf, precautions } from "../tables/index.ts";
import type { Model, ThingIndex } from "../model/model.ts";
import type { IsAllowed } from "./allow.ts";
import { gravestFirst } from "./gravest-first.ts";

const lacks = /^hazard\/(?:not-yet|lapsed)$/;

/**
 * For each allowed act that lacks precautions what else it was refused for, and the first other one of the strip that lacks them as well
 * and is not allowed itself.
 */
export function hiddenByAllow(performance: Performance, isAllowed: IsAllowed): Problem[] {
  const { problems, model, strip, events } = performance,
    found: Problem[] = [];
  for (const problem of problems) {
    if (problem.phase !== "strip" || !problem.act || !problem.reasons.some(({ rule }) => lacks.test(rule))) continue;
    const led = gravestFirst(problem, model);
    if (!lacks.test(led.rule) || !isAllowed({ code: led.rule, at: led.at })) continue;
    // What else the act was refused for is another code, and stands for itself.
    const others = led.reasons.filter(({ rule }) => !lacks.test(rule));
    if (others.length > 0) found.push({ ...led, rule: others[0]!.rule, reasons: others, about: aboutOf(others) });
    const hazards = new Set(led.reasons.filter(({ rule }) => lacks.test(rule)).flatMap(({ by }) => by));
    for (const one of strip.slice(strip.findIndex(({ act }) => act === problem.act) + 1)) {
      // What takes a precaution, or gives the power back, answers the lack.
      if (isKindOf(precautions, one.act.verb) || one.act.verb === "restore") continue;
      const reasons = restsOn(model, one, events, hazards);
      if (reasons.length === 0 || problems.some(({ act }) => act === one.act)) continue;
      if (isAllowed({ code: "hazard/not-yet", at: one.act.at })) continue;
      found.push({
        ...led,
        act: one.act,
        around: one.around,
        at: one.act.at,
        rule: "hazard/not-yet",
        reasons,
        about: aboutOf(reasons),
      });
      break;
    }
  }
  return found;
}

const aboutOf = (reasons: readonly Reason[]): readonly ThingIndex[] => [
  ...new Set(reasons.flatMap(({ thing, by }) => (thing === undefined ? by : [thing, ...by]))),
];

/** Precautions of these hazards that the act was taken to have, and that no line took. */
function restsOn(
  model: Model,
  { things, handled, before, from, to }: Performed,
  events: readonly Event[],
  hazards: ReadonlySet<ThingIndex>,
): Reason[] {
  const own = events.slice(from, to),
    touched = new Set([...(own.length > 0 ? things : []), ...handled, ...own.flatMap((event) => event.things)]),
    asked = new Set(own.flatMap((event) => event.needs)),
    { hazardsOn } = machineOf(model);
  return model.hazards.flatMap((hazard) => {
    if (!hazards.has(hazard.index)) return [];
    const thing = [...touched].find((one) => hazardsOn[one]?.includes(hazard)),
      missing = hazard.precautions.filter(({ number }) => {
        const by = at(before.standing, number) - 1;
        return events[by]?.assumed === true && (thing !== undefined || asked.has(by));
      }),
      // What this act itself was refused for, said with the allowed one.
      joined = own.filter((event) => event.kind === "stands" && event.assumed && event.thing === hazard.index),
      numbers = [...missing.map(({ number }) => number), ...joined.flatMap((event) => event.precautions)];
    return numbers.length === 0
      ? []
      : [
          reasonOf("hazard/not-yet", {
            thing: thing ?? things[0],
            by: [hazard.index],
            words: numbers.map((number) => model.precautions[number]!.kind),
            numbers,
            at: hazard.at,
          }),
        ];
  });
}
