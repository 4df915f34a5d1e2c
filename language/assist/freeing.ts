// The acts that free a thing at a moment, in an order that the bench takes. It fills in no text, no wait and no figure of a precaution:
// it only names those that the author declared.

import type { State } from "../bench/state.ts";
import type { Around, Problem, Reason } from "../bench/trace.ts";
import type { Model, ThingIndex } from "../model/model.ts";
import { simpleAct, tryAct } from "./trial.ts";

/** More acts than this are no help any more. */
const most = 120;

/** Lines to write before `verb name`, without that act itself; undefined where the bench knows no way. */
export function linesThatFree(
  model: Model,
  state: State,
  around: Around,
  verb: string,
  name: string,
): string[] | undefined {
  const lines: string[] = [],
    pending = new Set<string>();
  let now = state;

  const manage = (what: string, about: string): boolean => {
    const act = simpleAct(what, about),
      key = `${what} ${about}`;
    if (!act || pending.has(key)) return false;
    pending.add(key);
    for (let rounds = 0; rounds < most && lines.length < most; rounds++) {
      const { problems, state: after } = tryAct(model, now, act, around),
        problem = problems.find((one) => one.rule !== "sequence/already-undone");
      if (!problem) {
        now = after;
        pending.delete(key);
        lines.push(what === "turn" ? `turn to ${about}` : key);
        return true;
      }
      const before = remediesOf(problem, model, around);
      if (before.length === 0) return false;
      const had = lines.length;
      for (const [verb2, name2] of before) if (!manage(verb2, name2)) return false;
      if (lines.length === had) return false;
    }
    return false;
  };
  if (!manage(verb, name)) return undefined;
  lines.pop();
  return lines;
}

type Remedy = readonly [verb: string, name: string];

/** What would answer one refusal. Undone in one round, so that the next one shows what is left. */
function remediesOf(problem: Problem, model: Model, around: Around): Remedy[] {
  const found = new Map<string, Remedy>();
  for (const reason of problem.reasons)
    for (const remedy of remediesFor(reason, model, around)) found.set(remedy.join(" "), remedy);
  return [...found.values()];
}

function remediesFor({ rule, by, thing, words }: Reason, model: Model, around: Around): Remedy[] {
  const undo = (things: readonly ThingIndex[]): Remedy[] =>
    things.flatMap((index): Remedy[] => {
      const name = written(model, index, around),
        is = model.things[index]?.is;
      return name === undefined ? [] : is === "part" ? [["remove", name]] : is === "tie" ? [["undo", name]] : [];
    });
  switch (rule) {
    case "sequence/still-held":
    case "sequence/blocked":
      return undo(by);
    case "sequence/wrong-position": {
      const to = words[1];
      return to === undefined ? [] : [["turn", to]];
    }
    case "sequence/fluid-aboard":
      return by.flatMap((index): Remedy[] => {
        const fluid = model.things[index],
          name = written(model, index, around);
        return fluid?.is !== "fluid" || name === undefined ? [] : [[fluid.recover ? "recover" : "drain", name]];
      });
    case "sequence/falls": {
      const name = thing === undefined ? undefined : written(model, thing, around);
      return name === undefined ? [] : [["support", name]];
    }
    case "hazard/not-yet":
    case "hazard/lapsed":
      return by.flatMap((index): Remedy[] => {
        const name = written(model, index, around);
        return name === undefined ? [] : words.map((kind): Remedy => [kind, name]);
      });
    case "hazard/order": {
      const name = thing === undefined ? undefined : written(model, thing, around);
      return name === undefined || words[0] !== "before" ? [] : words.slice(1).map((kind): Remedy => [kind, name]);
    }
    case "hazard/proof-out-of-reach":
      return undo(by);
    default:
      return [];
  }
}

/** The name that a line of this procedure may write for a thing; undefined for one of another unit. */
export function written(model: Model, index: ThingIndex, around: Around): string | undefined {
  const thing = model.things[index];
  if (!thing) return undefined;
  if (thing.prefix === around.prefix) return thing.piece === "" ? thing.declared : `${thing.declared}.${thing.piece}`;
  return undefined;
}
