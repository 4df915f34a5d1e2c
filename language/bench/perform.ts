// One act on the bench, by its verb. Strip and refit go through the same functions; a refit only has more acts that put together.

import type { Act } from "../model/act.ts";
import type { ThingIndex } from "../model/model.ts";
import { isKindOf, precautions } from "../tables/index.ts";
import { judgeAbsent } from "./absent.ts";
import { hidden, lumpOfItem } from "./access.ts";
import { stillToDo } from "./still-to-do.ts";
import { moveAside, moveBack } from "./aside.ts";
import { reasonOf, report, resolve, type Bench, type Obstacle } from "./bench.ts";
import { cap, drain, evacuate, fill } from "./fluids.ts";
import { fit } from "./fit.ts";
import { handsOn, restore, stand, turned } from "./hazards.ts";
import { cannotReachPast, handledBy } from "./handling.ts";
import { grip, release, support } from "./hold.ts";
import { isPart, isTie, partOf } from "./machine.ts";
import { make } from "./make.ts";
import { align, mark, tag } from "./marks.ts";
import { renew, renewHere, reuse } from "./new-parts.ts";
import { remove } from "./remove.ts";
import { isOut } from "./ties.ts";
import type { Around } from "./trace.ts";
import { turn } from "./turn.ts";
import { undo } from "./undo.ts";

export function perform(bench: Bench, act: Act, around: Around): void {
  const things = resolve(bench, act.names, around),
    before = bench.state,
    from = bench.events.length,
    problems = bench.problems.length;
  bench.work.acts++;
  judgeAbsent(bench, act, around);
  const handled = handle(bench, act, things, around);
  if (bench.again && act.count !== undefined) {
    for (const thing of things) {
      const count = stillToDo(bench, act, thing, around);
      if (count !== 0) apply(bench, { ...act, count: count ?? act.count }, [thing], around);
    }
  } else apply(bench, act, things, around);
  bench.performed.push({
    act,
    around,
    things,
    handled,
    from,
    to: bench.events.length,
    before,
    after: bench.state,
    refused: bench.problems.length > problems && bench.problems.slice(problems).some((p) => p.act === act),
  });
}

function handle(bench: Bench, act: Act, things: readonly ThingIndex[], around: Around): readonly ThingIndex[] {
  const handled = handledBy(act, things, (names) => resolve(bench, names, around));
  if (handled.length === 0) return handled;
  handsOn(
    bench,
    act,
    handled,
    around,
    cannotReachPast(act) ? (thing) => inReach(bench, act, thing, around) : undefined,
  );
  return handled;
}

function apply(bench: Bench, act: Act, things: readonly ThingIndex[], around: Around): void {
  switch (act.verb) {
    case "undo":
    case "loosen":
    case "back-out":
      return undo(bench, act, things, around);
    case "remove":
    case "lift":
      return remove(bench, act, things, around);
    case "slide":
    case "swing":
    case "open":
      return things.forEach((thing) => (act.back ? moveBack : moveAside)(bench, act, thing, around));
    case "turn":
      return turn(bench, act, around);
    case "rotate":
      return turned(bench, things, act, around);
    case "drain":
    case "recover":
      return things.forEach((thing) => drain(bench, act, thing, around));
    case "fill":
      return things.forEach((thing) => fill(bench, act, thing, around));
    case "evacuate":
    case "purge":
      return things.forEach((thing) => evacuate(bench, act, thing, around));
    case "cap":
    case "uncap":
      return things.forEach((thing) => cap(bench, act, thing, around));
    case "restore":
      return things.forEach((thing) => restore(bench, act, thing, around));
    case "support":
      return things.forEach((thing) => support(bench, act, thing, around));
    case "hold":
      return things.forEach((thing) => grip(bench, act, thing, around));
    case "release":
      things.forEach((thing) => release(bench, act, thing, around));
      return turned(bench, things, act, around);
    case "put":
      return putOn(bench, act, around);
    case "take":
      return takeOff(bench, act, around);
    case "tag":
      return tag(bench, act, things, around);
    case "mark":
      return mark(bench, act, things, around);
    case "align":
      return align(bench, act, around);
    case "apply":
      return applied(bench, act, around);
    case "measure":
    case "inspect":
    case "test":
    case "set":
      return outside(bench, act, around);
    case "renew":
      return renewHere(bench, act, things, around);
    case "scrap":
      return renew(bench, things, true);
    case "reuse":
      return reuse(bench, act, things, around);
    case "fit":
    case "tighten":
    case "press":
      return putTogether(bench, act, things, around);
    default:
      if (isKindOf(precautions, act.verb)) things.forEach((thing) => stand(bench, act, thing, around));
  }
}

/** Of several named ties `tighten` means those that are in. */
function putTogether(bench: Bench, act: Act, things: readonly ThingIndex[], around: Around): void {
  const { model } = bench;
  const some =
    act.verb === "tighten" && things.length > 1
      ? things.filter((t) => !isTie(model, t) || !isOut(model, bench.state, t))
      : things;
  const onto = act.on.length > 0 ? resolve(bench, act.on, around) : [];
  for (const thing of some.length > 0 ? some : things) {
    if (isTie(model, thing)) make(bench, act, thing, around);
    else if (isPart(model, thing)) fit(bench, act, thing, around, onto);
  }
}

/** A reading that is outside its limits in this build: what is to be new is new from here on, what is scrapped does not go back. */
function outside(bench: Bench, act: Act, around: Around): void {
  if (act.id === undefined || !bench.model.chosen.has(`${act.id.text} fails`)) return;
  for (const then of act.consequences)
    if (then.is === "renew" || then.is === "scrap")
      renew(bench, resolve(bench, then.names, around), then.is === "scrap");
}

/**
 * What hides a part or tie that hands or eyes have to get at. Asked in a refit block too: there the author may have put the act after
 * what covers the part is back.
 */
function inReach(bench: Bench, act: Act, thing: ThingIndex, around: Around): readonly Obstacle[] {
  const item = bench.model.things[thing];
  return item?.is === "part" || item?.is === "tie" ? hidden(bench, item, lumpOfItem(bench, item), act, around) : [];
}

function putOn(bench: Bench, act: Act, around: Around): void {
  const name = act.names[0]?.text ?? "";
  bench.state = {
    ...bench.state,
    temporaries: new Map(bench.state.temporaries).set(name, {
      on: resolve(bench, act.on, around),
      event: bench.events.length,
    }),
  };
  bench.putAt.set(name, act.at);
}

function takeOff(bench: Bench, act: Act, around: Around): void {
  const name = act.names[0]?.text ?? "";
  // A name that no temporary thing has is told as that: nothing can be said of where it is.
  if (bench.model.temporaries.has(name) && !bench.state.temporaries.has(name))
    report(
      bench,
      act.at,
      [],
      [reasonOf("sequence/already-undone", { words: ["not put", name], at: bench.model.temporaries.get(name)?.at })],
      act,
      around,
    );
  const next = new Map(bench.state.temporaries);
  next.delete(name);
  bench.state = { ...bench.state, temporaries: next };
}

/** Nothing is put on a part that goes on dry. */
function applied(bench: Bench, act: Act, around: Around): void {
  for (const thing of resolve(bench, act.on, around)) {
    if (!isPart(bench.model, thing) || !partOf(bench.model, thing).dry) continue;
    report(
      bench,
      act.at,
      [thing],
      [reasonOf("refit/contradiction", { thing, words: ["dry"], at: partOf(bench.model, thing).at })],
      act,
      around,
    );
  }
}
