// Several lacks of one procedure that another procedure of the unit, or of a unit inside it, makes good, all of them, are one line
// forgotten: its call.

import type { Problem } from "../bench/trace.ts";
import type { Act } from "../model/act.ts";
import { kept } from "../model/kept.ts";
import type { Entry, Model, Procedure, ThingIndex } from "../model/model.ts";
import type { Answer, BenchContext } from "./check.ts";
import { unitKey } from "./unit-key.ts";

/** A call that could be written: `do PROCEDURE`, or `do PROCEDURE on PART`, the unit inside being that part. */
interface Call {
  readonly procedure: Procedure;
  /** "" where it is done on the whole unit. */
  readonly on: string;
  readonly prefix: string;
}

/** The call of a procedure that takes every precaution, opens every way, or takes off all that is missing here; undefined where none does. */
export function callAnswer({ reasons, around }: Problem, { model }: BenchContext): Answer | undefined {
  if (!around) return undefined;
  const called = calledIn(model, around.procedure);
  for (const call of callsOf(model)) {
    const { procedure, on, prefix } = call;
    if (called.has(procedure.id) && (on === "" || called.has(callOf(procedure.id, on)))) continue;
    const done = doneBy(model, call),
      isOff = (thing: ThingIndex): boolean => done.has(`undo ${thing}`) || done.has(`remove ${thing}`);
    if (
      reasons.every(({ rule, thing, by, words }) => {
        switch (rule) {
          case "hazard/not-yet":
            return words.every((kind) => done.has(`${kind} ${by[0]}`));
          case "sequence/blocked":
          case "sequence/still-held":
            return by.every(isOff);
          case "removal/missing":
          case "removal/never-undone":
            return thing !== undefined && isOff(thing);
          default:
            return false;
        }
      })
    )
      return {
        key: `do ${procedure.id} on ${prefix} in ${around.procedure.id} of ${unitKey(model)}`,
        across: true,
        because: { says: `${procedure.title} does all of this, and is not called before`, at: procedure.at },
      };
  }
  return undefined;
}

const calls = kept<Model, readonly Call[]>();

/** On the unit itself first, then on the units inside it. */
const callsOf = (model: Model): readonly Call[] =>
  calls(model, () => {
    const all = [...model.procedures.values()],
      onUnit = (unit: string, on: string, prefix: string): Call[] =>
        all.filter((one) => one.unit === unit).map((procedure) => ({ procedure, on, prefix }));
    return [
      ...onUnit(model.unit, "", ""),
      ...model.parts.flatMap(({ unit, id }) => (unit === undefined ? [] : onUnit(unit, id, `${id}/`))),
    ];
  });

const done = kept<Model, Map<Call, ReadonlySet<string>>>();

/** `verb thing` of each act that stands in its steps. */
function doneBy(model: Model, call: Call): ReadonlySet<string> {
  const known = done(model, () => new Map());
  let found = known.get(call);
  if (!found)
    known.set(
      call,
      (found = new Set(
        actsIn(call.procedure.body).flatMap(({ verb, names }) =>
          names.flatMap(({ text }) => things(model, call.prefix, text).map((thing) => `${verb} ${thing}`)),
        ),
      )),
    );
  return found;
}
const things = (model: Model, prefix: string, name: string): readonly ThingIndex[] =>
  model.scopes.get(prefix)?.get(name) ?? [];

const callOf = (procedure: string, on: string): string => `${procedure} on ${on}`;

/** This procedure, and those that it calls or needs, directly or not, and on which of its own parts it calls them. */
function calledIn(model: Model, first: Procedure): ReadonlySet<string> {
  const found = new Set([first.id]);
  for (const id of found) {
    const one = model.procedures.get(id);
    if (!one) continue;
    for (const { verb, names, on } of actsIn(one.body)) {
      if (verb !== "do") continue;
      for (const { text } of names) {
        found.add(text);
        for (const part of on)
          for (const thing of things(model, "", part.text)) found.add(callOf(text, model.things[thing]!.id));
      }
    }
    for (const need of one.needs) for (const { text } of need.names) found.add(text);
  }
  return found;
}

const actsIn = (entries: readonly Entry[]): readonly Act[] =>
  entries.flatMap((entry) => (entry.is === "block" ? actsIn(entry.body) : [entry.act]));
