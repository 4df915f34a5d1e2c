// Match marks, tags and alignments.

import type { Act } from "../model/act.ts";
import type { ThingIndex } from "../model/model.ts";
import { isAside, isUnknown } from "./access.ts";
import { isAssumed, joinsSameLack, reasonOf, report, type Bench } from "./bench.ts";
import { isPart, isTie, tieOf } from "./machine.ts";
import { A_DOUBT, A_OUT, NEVER } from "./state.ts";
import { reportTwice } from "./slips.ts";
import { isOut, lumpOf, together } from "./ties.ts";
import type { Around } from "./trace.ts";
import { at } from "./vector.ts";

export function mark(bench: Bench, act: Act, things: readonly ThingIndex[], around: Around): void {
  const label = act.labels[0] ?? "";
  acrossWhatIsApart(bench, act, things, around);
  bench.marksAt.set(label, act.at);
  bench.state = {
    ...bench.state,
    marks: new Map(bench.state.marks).set(label, { things, event: bench.events.length }),
  };
}

/** A mark across parts says how they stood together: made after they are apart it says nothing. */
function acrossWhatIsApart(bench: Bench, act: Act, things: readonly ThingIndex[], around: Around): void {
  const parts = things.filter((thing) => isPart(bench.model, thing) && !isUnknown(bench, thing)),
    [first] = parts;
  if (bench.phase !== "strip" || first === undefined) return;
  const aside = parts.length > 1 ? parts.find((part) => isAside(bench.state, part)) : undefined;
  if (aside !== undefined && !isAssumed(bench, aside, A_DOUBT)) {
    const moved = bench.events.findLast(({ kind, thing }) => kind === "aside" && thing === aside);
    if (moved?.assumed !== false) return;
    return report(
      bench,
      act.at,
      [aside],
      [reasonOf("sequence/already-undone", { thing: aside, words: ["mark aside"], at: moved.act.at })],
      act,
      around,
    );
  }
  const apart = parts.find((part) => !together(bench.state, part, first));
  if (apart === undefined || isAssumed(bench, apart, A_DOUBT) || isAssumed(bench, first, A_DOUBT)) return;
  const by = bench.events.findLast(
    ({ kind, moved }) => kind === "off" && (moved.includes(apart) || moved.includes(first)),
  );
  if (by?.assumed !== false) return;
  report(
    bench,
    act.at,
    [apart],
    [reasonOf("sequence/already-undone", { thing: by.thing, words: ["mark"], at: by.act.at })],
    act,
    around,
  );
}

/** A tie is tagged while it is made: afterwards nobody knows which end belongs where. */
export function tag(bench: Bench, act: Act, things: readonly ThingIndex[], around: Around): void {
  for (const thing of things) {
    if (
      !isTie(bench.model, thing) ||
      !isOut(bench.model, bench.state, thing) ||
      isAssumed(bench, thing, A_OUT | A_DOUBT)
    )
      continue;
    const first = bench.events[at(bench.state.outBy, thing)];
    reportTwice(
      bench,
      act,
      around,
      thing,
      first?.around.step,
      reasonOf("sequence/already-undone", { thing, words: ["tag"], at: first?.act.at ?? tieOf(bench.model, thing).at }),
    );
  }
}

export function align(bench: Bench, act: Act, around: Around): void {
  for (const name of act.names) {
    if (!bench.state.marks.has(name.text) && bench.phase === "refit" && !isKnownAlignment(bench, name.text, around)) {
      const reasons = [reasonOf("refit/mark-unmade", { words: [name.text] })];
      if (!joinsSameLack(bench, reasons, around)) report(bench, act.at, [], reasons, act, around);
    }
    bench.aligned.add(name.text);
  }
}

/** `align X` may name a part that says `align by "…"`, and needs no earlier mark then. */
function isKnownAlignment(bench: Bench, label: string, around: Around): boolean {
  const things = bench.model.scopes.get(around.prefix)?.get(label) ?? [];
  return things.some((thing) => {
    const t = bench.model.things[thing]!;
    return t.is === "part" && t.alignBy !== undefined;
  });
}

/** Marks are due at the first tie made after their parts met: a written refit lines them up before, ours does it by itself. */
export function lineUp(bench: Bench, act: Act, around: Around): void {
  if (bench.phase === "strip" || bench.state.marks.size === 0) return;
  const s = bench.state;
  for (const [label, { things }] of s.marks) {
    const parts = things.filter((thing) => isPart(bench.model, thing));
    if (
      bench.aligned.has(label) ||
      parts.length < 2 ||
      parts.some((p) => isUnknown(bench, p)) ||
      !parts.every((p) => together(s, p, parts[0]!))
    )
      continue;
    if (!parts.some((p) => at(s.lumpBy, p) !== NEVER) || !wereParted(bench, parts)) continue;
    if (!bench.computed)
      report(
        bench,
        act.at,
        parts,
        [reasonOf("refit/mark-unused", { words: [label, "before this"], by: parts, at: bench.marksAt.get(label) })],
        act,
        around,
      );
    bench.aligned.add(label);
  }
}

function wereParted(bench: Bench, parts: readonly ThingIndex[]): boolean {
  return bench.events.some((e) => {
    if (e.kind !== "off") return false;
    const moved = parts.filter((p) => e.moved.includes(p));
    return moved.length > 0 && parts.some((p) => !e.moved.includes(p) && lumpOf(e.before, p) === e.from);
  });
}
