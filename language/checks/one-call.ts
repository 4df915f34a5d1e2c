// Several lacks of one procedure that another procedure of the unit makes good, all of them, are one line forgotten: its call.

import type { Problem } from "../bench/trace.ts";
import type { Act } from "../model/act.ts";
import { kept } from "../model/kept.ts";
import type { Entry, Model, Procedure, ThingIndex } from "../model/model.ts";
import type { Answer, BenchContext } from "./check.ts";

/** The call of a procedure that takes every precaution, or opens every way, that is missing here; undefined where none does. */
export function callAnswer({ reasons, around }: Problem, { model }: BenchContext): Answer | undefined {
  if (!around) return undefined;
  const calls = calledIn(model, around.procedure);
  for (const procedure of model.procedures.values()) {
    if (procedure.unit !== model.unit || calls.has(procedure.id)) continue;
    const done = doneIn(model, procedure);
    if (
      reasons.every(({ rule, by, words }) =>
        rule === "hazard/not-yet"
          ? words.every((kind) => done.has(`${kind} ${by[0]}`))
          : (rule === "sequence/blocked" || rule === "sequence/still-held") &&
            by.every((thing) => done.has(`undo ${thing}`) || done.has(`remove ${thing}`)),
      )
    )
      return {
        key: `do ${procedure.id} in ${around.procedure.id} of ${model.unit}`,
        across: true,
        because: { says: `${procedure.title} does all of this, and is not called before`, at: procedure.at },
      };
  }
  return undefined;
}

const done = kept<Model, Map<Procedure, ReadonlySet<string>>>();

/** `verb thing` of each act that stands in its steps. */
function doneIn(model: Model, procedure: Procedure): ReadonlySet<string> {
  const known = done(model, () => new Map());
  let found = known.get(procedure);
  if (!found)
    known.set(
      procedure,
      (found = new Set(
        actsIn(procedure.body).flatMap(({ verb, names }) =>
          names.flatMap(({ text }) => things(model, text).map((thing) => `${verb} ${thing}`)),
        ),
      )),
    );
  return found;
}
const things = (model: Model, name: string): readonly ThingIndex[] => model.scopes.get("")?.get(name) ?? [];

/** This procedure, and those that it calls or needs, directly or not. */
function calledIn(model: Model, first: Procedure): ReadonlySet<string> {
  const found = new Set([first.id]);
  for (const id of found) {
    const one = model.procedures.get(id);
    if (!one) continue;
    for (const { verb, names } of actsIn(one.body)) if (verb === "do") for (const { text } of names) found.add(text);
    for (const need of one.needs) for (const { text } of need.names) found.add(text);
  }
  return found;
}

const actsIn = (entries: readonly Entry[]): readonly Act[] =>
  entries.flatMap((entry) => (entry.is === "block" ? actsIn(entry.body) : [entry.act]));
