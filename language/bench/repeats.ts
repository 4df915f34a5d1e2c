// `repeat from STEP` after a reading: the technician goes back to that step and does it again, with all up to the reading, from the state
// that the bench is in then. What stands already is nothing to do; what could not be done from there (a precaution that lies behind, a
// way that has been closed since) is found, at the reading.

import type { Act, Name } from "../model/act.ts";
import { placeOf, placeOfStep, unitsOf, type Unit } from "./again.ts";
import { benchOf, reasonOf, report, type Bench } from "./bench.ts";
import type { Entry } from "../model/model.ts";
import type { Around, Event, Performed, Problem, Reason, RefitPerformed } from "./trace.ts";
import { walk } from "./walk.ts";

/** Where a reading stands, and what goes on from it. */
interface Reading {
  readonly act: Act;
  readonly around: Around;
  readonly state: Performed["after"];
  readonly events: readonly Event[];
  /** What was done of those lines the first time. */
  readonly done: readonly Performed[];
  /** Goes on in the strip, or in the refit that the author wrote out. */
  readonly phase: Bench["phase"];
  /** The reading stands in the half that it goes back in: done again is only what is up to it. */
  readonly within: boolean;
}

/** `bench`: where to report. `known`: what performing the whole found: that is said already. */
export function judgeRepeats(bench: Bench, readings: readonly Reading[], known: readonly Problem[]): void {
  const said = new Set(known.map(keyOf)),
    lacking = new Set(known.flatMap(({ reasons }) => reasons.map(lackOf))),
    faulty = new Set(known.flatMap(({ act }) => act ?? []));
  for (const reading of readings)
    for (const name of targetsOf(reading.act)) {
      const units = unitsOf(bench, reading.around),
        from = placeOf(units, name.text);
      if (from < 0) continue; // an unknown name is said by the names; a step of another build is not there to go back to
      const here = reading.within ? placeOfStep(units, reading.around) : -1;
      const first = units[from]!.entry;
      const title = first.is === "block" ? first.title || name.text.replaceAll("-", " ") : name.text,
        at = first.is === "block" ? first.at : first.act.at;
      if (reading.within && here >= 0 && here < from) {
        report(bench, reading.act.at, [], [reasonOf("sequence/repeat", { words: [title, "later"], at })]);
        continue;
      }
      const range = units.slice(from, here < 0 ? undefined : here + 1),
        isFaulty = actsOf(range.map(({ entry }) => entry)).some((act) => faulty.has(act));
      const found = again(bench, reading, range)
        .filter((one) => !isDoneAlready(one) && !said.has(keyOf(one)) && !isLackedAnyway(one, lacking))
        // What goes wrong in steps that are wrong themselves rests on that; a missing precaution is said all the same.
        .filter((one) => !isFaulty || isOfHazard(one))
        .toSorted((a, b) => Number(isOfHazard(b)) - Number(isOfHazard(a)));
      const [problem] = found;
      if (!problem) continue;
      report(bench, reading.act.at, problem.about, [
        reasonOf(isOfHazard(problem) ? "hazard/repeat" : "sequence/repeat", {
          thing: problem.about[0],
          words: [title],
          at: problem.at,
        }),
        ...found.flatMap(({ reasons }) => reasons).toSorted((a, b) => Number(isHazard(b)) - Number(isHazard(a))),
      ]);
    }
}

const actsOf = (entries: readonly Entry[]): Act[] =>
  entries.flatMap((entry) => (entry.is === "act" ? [entry.act] : actsOf(entry.body)));

const targetsOf = (act: Act): readonly Name[] =>
  act.verb === "repeat"
    ? act.names
    : act.consequences.flatMap((consequence) => (consequence.is === "repeat" ? consequence.names : []));

/** Readings of a half that somebody wrote line by line. */
export const readingsIn = (
  performed: readonly Performed[],
  events: readonly Event[],
  phase: Bench["phase"],
  within: boolean,
  strip: readonly Performed[] = [],
): Reading[] =>
  performed
    .filter(({ act }) => targetsOf(act).length > 0)
    .map(({ act, around, after, to }) => ({
      act,
      around,
      state: after,
      events: within && phase === "strip" ? events.slice(0, to) : events,
      done: within ? performed : strip,
      phase,
      within,
    }));

/** Readings of a computed refit: from there the strip is done again. */
export const readingsOnTheWayBack = (
  refit: readonly RefitPerformed[],
  events: readonly Event[],
  strip: readonly Performed[],
): Reading[] =>
  refit.flatMap(({ op, after }) =>
    op.act && targetsOf(op.act).length > 0
      ? [{ act: op.act, around: op.around, state: after, events, done: strip, phase: "strip" as const, within: false }]
      : [],
  );

function again(bench: Bench, reading: Reading, units: readonly Unit[]): readonly Problem[] {
  const next = benchOf(bench.model, reading.state);
  next.phase = reading.phase;
  next.again = reading.done;
  next.events.push(...reading.events);
  for (const [label, where] of bench.marksAt) next.marksAt.set(label, where);
  for (const call of bench.calls) next.calls.add(call);
  next.calling = [reading.around.procedure.id];
  if (reading.phase === "refit") next.willFit = bench.willFit;
  for (const { entry, around } of units) walk(next, [entry], around);
  return next.problems;
}

/** A missing precaution leads, as in any refusal. */
const isOfHazard = ({ reasons }: Problem): boolean => reasons.some(isHazard);
const isHazard = ({ rule }: Reason): boolean => rule.startsWith("hazard/");

/** Off, out, drained, on or in already: nothing to do, and no fault of who goes back. */
const isDoneAlready = ({ rule, reasons }: Problem): boolean =>
  rule === "sequence/already-undone" ||
  rule === "sequence/over-count" ||
  (rule === "refit/impossible" && ["already on", "already in"].includes(reasons[0]?.words[0] ?? ""));

/** What stands against it stood against the first time too, and is said there. */
const isLackedAnyway = ({ reasons }: Problem, lacking: ReadonlySet<string>): boolean =>
  reasons.every((reason) => lacking.has(lackOf(reason)));

/** Of a missing precaution it does not matter which of the things was touched. */
const lackOf = ({ rule, thing, by, words }: Reason): string =>
  `${rule} ${rule === "hazard/not-yet" ? "" : thing} ${by.join(" ")} ${words.join(" ")}`;

const keyOf = ({ rule, at, about }: Problem): string => `${rule} ${at.file} ${at.start} ${about.join(" ")}`;
