// A step that nobody wrote: several acts of one strip, and its aim, lack what no line of it does at all. Where that belongs together by the
// parts that it is about, and one step could have done all of it before the first of them, that step is one mistake: said there, and the
// others are among its reasons. What is about other parts, or could not have been done at that place, since something stands in front that
// only later lines take away, is a mistake of its own, at its own line.

import { partsOf } from "../bench/access.ts";
import { machineOf } from "../bench/machine.ts";
import type { Performance, Problem, Reason } from "../bench/trace.ts";
import type { Span } from "../findings/finding.ts";
import type { Model, ThingIndex } from "../model/model.ts";
import { isKindOf, precautions } from "../tables/index.ts";
import { at } from "../bench/vector.ts";
import type { IsAllowed } from "./allow.ts";

/** By problem: the place of the finding that it belongs to. What the author allows joins nothing. */
export function ofMissingStep(performance: Performance, isAllowed: IsAllowed): ReadonlyMap<Problem, Span> {
  const found = new Map<Problem, Span>();
  if (performance.problems.length < 2) return found;
  const lines = linesOf(performance),
    whole: Lacking[] = [];
  for (const problem of performance.problems) {
    const lacks = problem.phase === "strip" ? lacksOf(problem, performance, lines) : undefined;
    if (!lacks || problem.reasons.some(({ rule }) => isAllowed({ code: rule, at: problem.at }))) continue;
    const act = performance.strip.findIndex((one) => one.act === problem.act);
    whole.push({ problem, lacks, order: act < 0 ? performance.strip.length : act });
  }
  whole.sort((a, b) => a.order - b.order);
  const [first, ...others] = whole;
  if (!first) return found;
  const missing = new Set(whole.flatMap(({ lacks }) => lacks.things)),
    could = relatedTo(
      first,
      others.filter(({ lacks }) =>
        lacks.things.every((thing) => isReached(performance, thing, first.order, lines, missing)),
      ),
    );
  // Of what is at hand where the hazard is met, the precautions lead.
  const lead = [first, ...could].find(({ problem }) => problem.reasons.some(({ rule }) => isOfHazard(rule))) ?? first;
  // What stands at the same place is joined there by what it says.
  const { at: place } = lead.problem;
  for (const { problem } of [first, ...could])
    if (problem.at.file !== place.file || problem.at.start !== place.start) found.set(problem, place);
  return found;
}

const isOfHazard = (rule: string): boolean => rule.startsWith("hazard/");

/** What a problem lacks, and no line does: things that nobody opens. */
interface Lacks {
  readonly things: readonly ThingIndex[];
  /** The parts that these and the hazards are on; the base, which all hangs on, is none. */
  readonly about: ReadonlySet<ThingIndex>;
  /** Precautions, or the procedure that may take them: what stands against a hazard. */
  readonly guards: boolean;
}

interface Lacking {
  readonly problem: Problem;
  readonly lacks: Lacks;
  readonly order: number;
}

/** Those that share a part with the first, or with one that does. A procedure that is missing may have taken any precaution. */
function relatedTo(first: Lacking, others: readonly Lacking[]): readonly Lacking[] {
  const found: Lacking[] = [],
    known: Lacking[] = [first];
  const isRelated = (a: Lacks, b: Lacks): boolean =>
    !a.about.isDisjointFrom(b.about) || (a.guards && b.guards && (a.about.size === 0 || b.about.size === 0));
  for (const one of known)
    for (const other of others)
      if (!found.includes(other) && isRelated(one.lacks, other.lacks)) {
        found.push(other);
        known.push(other);
      }
  return found;
}

/** What the lines of a strip do, refused or not. */
interface Lines {
  /** The number of the first line that opens a thing, or takes it along. */
  readonly away: ReadonlyMap<ThingIndex, number>;
  /** What lines open by name. */
  readonly opened: ReadonlySet<ThingIndex>;
  /** Hazards of which some precaution is taken: what is forgotten of one is a mistake of its own. */
  readonly taken: ReadonlySet<ThingIndex>;
}

const opens: ReadonlySet<string> = new Set(
  "undo loosen back-out remove lift slide swing open drain recover purge evacuate cap".split(" "),
);

/** Kinds of event that open nothing. */
const staying: ReadonlySet<string> = new Set(["stands", "lapses", "met", "in", "held", "let-go", "gripped"]);

function linesOf({ strip, events }: Performance): Lines {
  const away = new Map<ThingIndex, number>(),
    opened = new Set<ThingIndex>(),
    taken = new Set<ThingIndex>();
  strip.forEach(({ act, things, from, to }, line) => {
    if (isKindOf(precautions, act.verb)) for (const thing of things) taken.add(thing);
    const open = (thing: ThingIndex): void => {
      if (!away.has(thing)) away.set(thing, line);
      opened.add(thing);
    };
    if (opens.has(act.verb)) things.forEach(open);
    for (const event of events.slice(from, to)) {
      if (event.assumed || staying.has(event.kind)) continue;
      event.things.forEach(open);
      for (const thing of event.moved) if (!away.has(thing)) away.set(thing, line);
    }
  });
  return { away, opened, taken };
}

/** Undefined where a line does some of it: that line stands in the wrong place, and says so. */
function lacksOf({ reasons }: Problem, { model, start, strip }: Performance, lines: Lines): Lacks | undefined {
  const things: ThingIndex[] = [],
    hazards: ThingIndex[] = [];
  let guards = false;
  for (const reason of reasons) {
    const lacked = lackedBy(reason);
    if (lacked === undefined) return undefined;
    guards ||= lacked === "precautions" || lacked === "procedure";
    if (lacked === "precautions") {
      for (const number of reason.numbers) {
        const { hazard, behind } = model.precautions[number]!;
        if (lines.taken.has(hazard) || at(start.standing, number) !== 0) return undefined;
        hazards.push(hazard);
        things.push(...behind.filter((one) => !lines.opened.has(one)));
      }
    } else if (lacked === "procedure") {
      if (strip.some(({ around: { procedure } }) => (procedure.title || procedure.id) === reason.words[1]))
        return undefined;
    } else {
      if (lacked.length === 0 || lacked.some((thing) => lines.opened.has(thing))) return undefined;
      things.push(...lacked);
    }
  }
  const on = hazards.flatMap((hazard) => {
    const one = model.things[hazard]!;
    return one.is === "hazard" ? [...one.on, ...one.pushes] : [];
  });
  return { things, about: partsAbout(model, [...things, ...on]), guards };
}

/** Parts as they are, and those that fasteners and joints are on. */
function partsAbout(model: Model, things: readonly ThingIndex[]): ReadonlySet<ThingIndex> {
  const { isBase } = machineOf(model),
    found = new Set<ThingIndex>();
  for (const thing of things) {
    const item = model.things[thing]!,
      parts = item.is === "part" ? [thing] : item.is === "tie" ? partsOf(item) : [];
    for (const part of parts) if (!isBase(part)) found.add(part);
  }
  return found;
}

function lackedBy({ rule, thing, by, words }: Reason): readonly ThingIndex[] | "precautions" | "procedure" | undefined {
  switch (rule) {
    case "hazard/not-yet":
      return "precautions";
    case "hazard/order":
      return words[0] === "before" ? "precautions" : undefined;
    case "sequence/needs":
      return "procedure";
    case "sequence/still-held":
    case "sequence/blocked":
    case "sequence/fluid-aboard":
      return by.length > 0 ? by : thing === undefined ? [] : [thing];
    case "removal/missing":
    case "removal/never-undone":
      return thing === undefined ? [] : [thing];
    default:
      return undefined;
  }
}

/** Nothing stands in front of it that a line takes away only at the first act or later. */
function isReached(
  { model }: Performance,
  thing: ThingIndex,
  first: number,
  { away }: Lines,
  missing: ReadonlySet<ThingIndex>,
): boolean {
  const item = model.things[thing]!;
  if (item.is !== "part" && item.is !== "tie") return true;
  return item.behind.every((one) => missing.has(one) || (away.get(one) ?? -1) < first);
}
