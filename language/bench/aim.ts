// Is the aim reached? What a procedure promised to have off or apart at its end.

import type { Aim, Part, Procedure, ThingIndex, Tie } from "../model/model.ts";
import { isUnknown } from "./access.ts";
import { assume, isAssumed, reasonOf, report, resolve, type Bench } from "./bench.ts";
import { isPart, isTie, partOf, tieOf } from "./machine.ts";
import { A_AWAY, A_DOUBT, A_OFF, A_OUT, BACKED_OUT, ON_BASE } from "./state.ts";
import { left, lumpOf } from "./ties.ts";
import type { Around } from "./trace.ts";
import { at } from "./vector.ts";

/** Reports what is still on, once: afterwards it is taken as away, so that what follows from it is not said again. */
export function judgeAim(bench: Bench, procedure: Procedure, around: Around): void {
  for (const aim of procedure.aims) {
    const except = new Set(resolve(bench, aim.except, around));
    if (aim.is === "all-apart") allApart(bench, procedure, aim, except, around);
    else if (aim.is === "off" || aim.is === "apart") named(bench, aim, except, around);
  }
}

function isOn(bench: Bench, part: ThingIndex): boolean {
  const hosts = bench.machine.hosts[part]!,
    s = bench.state;
  return hosts.length > 0
    ? hosts.some((h) => lumpOf(s, h) === lumpOf(s, part))
    : lumpOf(s, part) === ON_BASE && !bench.machine.isBase(part);
}

function named(bench: Bench, aim: Aim, except: ReadonlySet<ThingIndex>, around: Around): void {
  for (const thing of resolve(bench, aim.names, around)) {
    if (except.has(thing)) continue;
    if (isPart(bench.model, thing)) {
      if (aim.is === "off" && bench.machine.isBase(thing) && around.prefix === "") {
        baseStays(bench, aim, thing, around);
        continue;
      }
      const on = aim.is === "apart" ? isWhole(bench, thing) : isOn(bench, thing);
      if (!on || isUnknown(bench, thing)) continue;
      missing(bench, aim, partOf(bench.model, thing), around);
    } else if (isTie(bench.model, thing)) neverUndone(bench, aim, tieOf(bench.model, thing), around);
  }
}

/** The base is what the rest comes off: it never is off itself. */
function baseStays(bench: Bench, aim: Aim, thing: ThingIndex, around: Around): void {
  const { at: declared } = partOf(bench.model, thing);
  report(bench, aim.at, [thing], [reasonOf("sequence/base-stays", { thing, at: declared })], undefined, around);
}

/** `X apart`: something that hung on it still does. */
function isWhole(bench: Bench, part: ThingIndex): boolean {
  return bench.machine.edges[part]!.some((e) => !e.hangs && lumpOf(bench.state, e.to) === lumpOf(bench.state, part));
}

/** Nothing is said of a part that was refused, or that something was found amiss with: where it ends follows from that. */
function missing(bench: Bench, aim: Aim, part: Part, around: Around): void {
  if (isAssumed(bench, part.index, A_DOUBT)) return;
  report(
    bench,
    aim.at,
    [part.index],
    [reasonOf("removal/missing", { thing: part.index, words: [aim.is], at: part.at })],
    undefined,
    around,
  );
  assume(bench, part.index, A_AWAY);
}

function neverUndone(bench: Bench, aim: Aim, tie: Tie, around: Around): void {
  if (
    tie.passing ||
    isAssumed(bench, tie.index, A_OUT) ||
    left(bench.model, bench.state, tie.index) === 0 ||
    at(bench.state.slack, tie.index) === BACKED_OUT
  )
    return;
  if ([...tie.lowers, ...tie.uppers].some((part) => isAssumed(bench, part, A_OFF | A_AWAY))) return;
  report(
    bench,
    aim.at,
    [tie.index],
    [
      reasonOf("removal/never-undone", {
        thing: tie.index,
        left: [left(bench.model, bench.state, tie.index)],
        at: tie.at,
      }),
    ],
    undefined,
    around,
  );
  assume(bench, tie.index, A_OUT);
}

function allApart(bench: Bench, procedure: Procedure, aim: Aim, except: ReadonlySet<ThingIndex>, around: Around): void {
  const { model, machine } = bench;
  for (const tie of model.ties) {
    // What sits in one part alone parts nothing, and what holds a part that is to stay on stays as well.
    if (tie.uppers.length === 0 || except.has(tie.index) || tie.lowers.some((part) => except.has(part))) continue;
    if (tie.prefix.startsWith(around.prefix)) neverUndone(bench, aim, tie, around);
  }
  for (const part of model.parts) {
    if (
      except.has(part.index) ||
      machine.isBase(part.index) ||
      !part.prefix.startsWith(around.prefix) ||
      machine.hosts[part.index]!.length === 0 ||
      !isOn(bench, part.index) ||
      isUnknown(bench, part.index)
    )
      continue;
    // Said with its tie.
    if (machine.tiesOf[part.index]!.some((tie) => !tie.passing && left(model, bench.state, tie.index) > 0)) continue;
    missing(bench, aim, part, around);
  }
}
