// An act tried on a copy of the bench: nothing is reported, nothing is kept. What could be done now, and what would have to come first.

import { asStart } from "../bench/as-start.ts";
import { benchOf, type Bench } from "../bench/bench.ts";
import { perform } from "../bench/perform.ts";
import type { State } from "../bench/state.ts";
import type { Around, Problem } from "../bench/trace.ts";
import { aroundOf } from "../bench/walk.ts";
import { readAct } from "../model/read-act.ts";
import type { Act } from "../model/act.ts";
import type { Model } from "../model/model.ts";
import type { SourceFile } from "../names/project.ts";
import { parse } from "../syntax/index.ts";
import type { Moment } from "./bench-at.ts";

/** An act from its line, as if it stood in a step. Undefined where the line is none. */
export function actFrom(line: string): Act | undefined {
  const text = `procedure a for b {\n step { ${line} }\n}\n`,
    tree = parse(text),
    item = tree.items[0]?.block?.items[0]?.block?.items[0];
  if (!item?.entry || item.broken || tree.errors.length > 0) return undefined;
  const source: SourceFile = { path: "", text, tree, uses: [], declarations: [], branches: false };
  return readAct({ item, source });
}

export interface Tried {
  readonly problems: readonly Problem[];
  readonly state: State;
}

/** The same act for other names: verbs are read once. */
const named = new Map<string, Act>();
export function simpleAct(verb: string, name: string): Act | undefined {
  let act = named.get(verb);
  if (!act) {
    const read = actFrom(verb === "turn" ? "turn to a" : `${verb} a`);
    if (!read) return undefined;
    named.set(verb, (act = read));
  }
  const names = [{ text: name, start: 0, end: 0 }];
  return verb === "turn" ? { ...act, on: names } : { ...act, names };
}

export function tryAct(model: Model, state: State, act: Act, around: Around): Tried {
  // One act on its own: what was done before has no events here, and must share no numbers with what this one does.
  const bench: Bench = benchOf(model, asStart(model, { ...state, assumptions: 0 }));
  perform(bench, act, around);
  return { problems: bench.problems, state: bench.state };
}

export const aroundAt = ({ performance, done }: Moment): Around => done?.around ?? aroundOf(performance.procedure);
