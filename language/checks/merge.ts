// One mistake, one finding: over several pieces on a line, over several builds, over several procedures that miss the same thing.

import type { Finding, Span } from "../findings/finding.ts";
import type { Build } from "../model/builds.ts";
import type { IsAllowed } from "./allow.ts";
import { few } from "./bench-check.ts";
import { smallestCondition } from "./builds-found-in.ts";
import type { Raw } from "./raw.ts";
import { mayMissALine } from "./line-missing.ts";
import { sameCause } from "./same-cause.ts";
import { graver, weight } from "./severity.ts";

type BuildsOf = (unit: string) => readonly Build[];

/** What becomes one finding, the one that speaks in front. */
type Group = readonly [Raw, ...Raw[]];

/** One that is said at the place of another, as a reason of it. */
interface Further {
  readonly one: Raw;
  readonly within: Span;
}

const placeOf = ({ file, start }: Span): string => `${file} ${start}`;

/** What the author allows at its line stands for itself, unless all that belong together say the same. */
export function mergeFindings(raw: readonly Raw[], buildsOf: BuildsOf, isAllowed: IsAllowed): Finding[] {
  const sorted = [...raw].sort(byPlace),
    saidIn = saidElsewhere(sorted, isAllowed),
    own: Raw[] = [],
    reasons: Further[] = [];
  for (const one of sorted) {
    const within = saidIn(one);
    if (within) reasons.push({ one, within });
    else own.push(one);
  }
  const groups = grouped(own, isAllowed),
    spoken = groups.map(gravestFirst).filter(speaks(groups, isAllowed)).filter(missedFirst(isAllowed)),
    findings = findingsOf(spoken, reasons, buildsOf, isAllowed);
  // What they belong to is told elsewhere, or not at all: then they stand for themselves.
  const left = reasons.filter(({ one, within }) => !addReason(findings, one, within, isAllowed)).map(({ one }) => one);
  for (const [first, ...rest] of Map.groupBy(left, ({ code, at }) => `${code} ${placeOf(at)}`).values())
    findings.push(merged([first!, ...rest], buildsOf));
  return sameCause(findings, isAllowed);
}

/** For each the place of the finding that says it already, if that one is said itself; undefined where it stands for itself. */
function saidElsewhere(raw: readonly Raw[], isAllowed: IsAllowed): (one: Raw) => Span | undefined {
  // A hint that the author has allowed says nothing; else what belongs to it makes it as grave as that.
  const said = new Set(raw.filter((one) => !one.within && !isAllowed(one)).map(({ at }) => placeOf(at))),
    // What belongs to a finding that is itself a reason of another one belongs to that other one.
    further = new Map(raw.flatMap(({ at, within }) => (within ? [[placeOf(at), within] as const] : []))),
    // What was found on a unit's own bench because its parts are in each other's way: on the bench of a unit around it they are so again.
    met = raw.flatMap(({ inTheWay, at }) => (inTheWay && !inTheWay.isInside ? [{ ...inTheWay, at }] : [])),
    metBefore = (inTheWay: Raw["inTheWay"]): Span | undefined =>
      inTheWay?.isInside ? met.find(({ things }) => !things.isDisjointFrom(inTheWay.things))?.at : undefined;
  return ({ within, inTheWay }) => {
    const own = within ?? metBefore(inTheWay),
      whole = own && (said.has(placeOf(own)) ? own : further.get(placeOf(own)));
    return whole && said.has(placeOf(whole)) ? whole : undefined;
  };
}

/**
 * What one statement would answer is one mistake, however often it shows: said at the first, the others are among the reasons. What stands
 * at the same place under the same code is one finding anyway.
 */
function grouped(raw: readonly Raw[], isAllowed: IsAllowed): readonly Group[] {
  const groups: [Raw, ...Raw[]][] = [],
    groupOf = new Map<string, [Raw, ...Raw[]]>();
  for (const one of raw) {
    const place = `${one.code} ${one.at.file} ${one.at.start}`,
      key =
        one.answer !== undefined && (one.answer.key === one.says || !isAllowed(one))
          ? `${one.answer.across ? "" : one.code} ${one.answer.key}`
          : place;
    let group = groupOf.get(key) ?? groupOf.get(place);
    if (group) group.push(one);
    else groups.push((group = [one]));
    groupOf.set(key, group).set(place, group);
  }
  return groups;
}

/** In their order; where they are of several codes the gravest in front, of equal ones what is said of a hazard. */
function gravestFirst(group: Group): Group {
  const [{ code }] = group;
  if (group.every((one) => one.code === code)) return group;
  const [first, ...others] = group.toSorted(
    (a, b) => weight(b.severity) - weight(a.severity) || Number(isOfHazard(b)) - Number(isOfHazard(a)),
  );
  return [first!, ...others];
}

const isOfHazard = ({ code }: Raw): boolean => code.startsWith("hazard/");

/** What no line speaks of, by code, and what else tells that the line which would is missing. */
const missingFor: ReadonlyMap<string, ReadonlySet<string>> = new Map([
  ["names/unused", new Set(["hazard/no-tester", "hazard/never-touched", "removal/never-undone"])],
  ["hazard/never-touched", new Set(["hazard/no-tester", "removal/never-undone"])],
]);

/** Leaves out what only follows from what another group says. */
function speaks(groups: readonly Group[], isAllowed: IsAllowed): (group: Group) => boolean {
  // A line is missing somewhere, at the bench or in a hazard. It may be the one that would have named what these codes say no line names;
  // and what no procedure touches or undoes may be what an unused name was for.
  const unspoken = new Set(groups.map(([{ code }]) => code).filter((code) => missingFor.has(code))),
    isMissing = new Map(
      [...unspoken].map((code) => {
        const tellers = missingFor.get(code)!;
        return [code, groups.some(([one]) => !isAllowed(one) && (tellers.has(one.code) || mayMissALine(one)))] as const;
      }),
    );
  // A question about the hazard, or what the author allows there, says nothing of what it lacks.
  const saysLack = (one: Raw, { severity }: Raw): boolean =>
    isOfHazard(one) && weight(one.severity) >= weight(severity) && !isAllowed(one);
  const isWithin = (at: Span, whole: Span): boolean =>
    at.file === whole.file && at.start >= whole.start && at.end <= whole.end;
  return ([first]) => {
    const { restsOn, code } = first;
    if (isMissing.get(code) === true) return false;
    // What a declaration lacks is said at the declaration, and not again at each line that asks for it.
    return (
      restsOn === undefined ||
      !groups.some((other) => other.some((one) => saysLack(one, first) && isWithin(one.at, restsOn)))
    );
  };
}

/** Missed by the aim, or at the end: the same thing missed by several procedures is said at the first. */
const missedOnce = /^removal\/|^refit\/(?:missing|mark-unused|position|fluid-short)$/;

/** To be asked of each group once, in their order. */
function missedFirst(isAllowed: IsAllowed): (group: Group) => boolean {
  const missed = new Set<string>();
  return (group) => {
    const [first] = group;
    if (!missedOnce.test(first.code)) return true;
    const about = group.flatMap((one) => one.about),
      isNew = about.length === 0 || about.some((id) => !missed.has(`${first.code} ${id}`));
    // What is allowed for one procedure is not allowed for the next.
    if (!isAllowed(first)) for (const id of about) missed.add(`${first.code} ${id}`);
    return isNew;
  };
}

/** The same, or a part of it, missing in a procedure that shares acts with the other. */
const isLackOf = (lack: NonNullable<Raw["lack"]>, other: NonNullable<Raw["lack"]>): boolean =>
  lack.what.isSubsetOf(other.what) && other.performed.values().some((id) => lack.performed.has(id));

/**
 * A finding of each group; where the same was missing in a procedure that it shares acts with, it is a reason of what is said there. What a
 * related procedure misses as a reason of another finding joins `reasons`, to be one of that finding's, too.
 */
function findingsOf(groups: readonly Group[], reasons: Further[], buildsOf: BuildsOf, isAllowed: IsAllowed): Finding[] {
  const findings: Finding[] = [],
    lacks: { readonly lack: NonNullable<Raw["lack"]>; readonly place: number }[] = [],
    further = reasons.flatMap(({ one: { lack }, within }) => (lack ? [{ lack, within }] : [])),
    joined = new Set<string>();
  for (const group of groups) {
    const [first] = group,
      { lack } = first,
      before = lack && lacks.find((one) => isLackOf(lack, one.lack));
    if (before) {
      const had = findings[before.place]!;
      findings[before.place] = {
        ...had,
        severity: graver(had.severity, first.severity),
        because: [...had.because, { says: first.says, at: first.at }],
      };
      continue;
    }
    const place = placeOf(first.at),
      other =
        lack && !isAllowed(first) && !joined.has(place)
          ? further.find((one) => isLackOf(lack, one.lack) && placeOf(one.within) !== place)
          : undefined;
    if (other) {
      joined.add(placeOf(other.within));
      for (const one of group) reasons.push({ one, within: other.within });
      continue;
    }
    if (lack && !isAllowed(first)) lacks.push({ lack, place: findings.length });
    findings.push(merged(group, buildsOf));
  }
  return findings;
}

/** Puts a finding among the reasons of the one that says its mistake already, at its place or at a later one of the same name; never of one that the author allows. False where none does. */
function addReason(findings: Finding[], { says, at, severity }: Raw, within: Span, isAllowed: IsAllowed): boolean {
  const isThere = (place: Finding["because"][number]["at"]): boolean =>
      place?.file === within.file && place.start === within.start,
    i = findings.findIndex(
      (one) => !isAllowed(one) && (isThere(one.at) || one.because.some((because) => isThere(because.at))),
    ),
    had = findings[i];
  if (!had) return false;
  const because = had.because.some((one) => one.says === says) ? had.because : [...had.because, { says, at }];
  findings[i] = { ...had, severity: graver(had.severity, severity), because };
  return true;
}

function byPlace(a: Raw, b: Raw): number {
  if (a.at.file !== b.at.file) return a.at.file < b.at.file ? -1 : 1;
  return a.at.start - b.at.start || (a.code < b.code ? -1 : a.code > b.code ? 1 : 0);
}

/** The group as one finding: said by its first, the others' names, places and further sentences behind it. */
function merged(group: Group, buildsOf: BuildsOf): Finding {
  const [first, ...rest] = group;
  // Of another code at the same place: what one statement would answer as well.
  const byCode = Map.groupBy(group, ({ code, at }) => (isAt(first, at) ? code : first.code)),
    says = saidOfAll(byCode.get(first.code)!),
    besides = [...byCode].filter(([code]) => code !== first.code).map(([, same]) => same),
    // Of the same code at the same place, and not the same again: a second sling, a second kind of hazard.
    also = byCode
      .get(first.code)!
      .filter((one) => isAt(first, one.at) && one.who === first.who && one.build === first.build)
      .map((one) => one.says)
      .filter((one) => one !== first.says);
  const {
    build: _build,
    unit,
    who: _who,
    about: _about,
    lack: _lack,
    inTheWay: _inTheWay,
    restsOn: _restsOn,
    answer,
    within: _within,
    ...finding
  } = first;
  const found = new Set(group.map((one) => one.build)),
    all = buildsOf(unit);
  const builds =
    found.has(undefined) || all.length < 2 || all.every((b) => found.has(b.name))
      ? []
      : [smallestCondition(all, found)];
  const places = new Map(
    rest.filter((one) => !isAt(first, one.at)).map((one) => [`${one.at.file} ${one.at.start}`, one]),
  );
  return {
    ...finding,
    severity: group.reduce((gravest, one) => graver(gravest, one.severity), first.severity),
    says,
    builds,
    because: [
      ...finding.because,
      ...((places.size > 0 || besides.length > 0) && answer?.because ? [answer.because] : []),
      ...[...new Set(also)].map((one) => ({ says: one, at: first.at })),
      ...besides.map((same) => ({ says: saidOfAll(same), at: first.at })),
      ...[...places.values()].map(({ at, says: too }) => ({
        says: too === first.says ? (answer?.again ?? "used here too") : too,
        at,
      })),
    ],
  };
}

const isAt = ({ at }: Raw, place: Span): boolean => at.file === place.file && at.start === place.start;

/** What the first of them says, with the names of the others. */
function saidOfAll([first, ...rest]: readonly Raw[]): string {
  const others = [...new Set(rest.map((one) => one.who))].filter((who) => who !== first!.who && who !== "");
  return others.length === 0 ? first!.says : `${first!.says} (the same for ${few(shortened(others))})`;
}

/** "Cap 2", "Cap 3", "Cap 4" as "Cap 2 to Cap 4". */
function shortened(names: readonly string[]): string[] {
  const out: string[] = [];
  for (let i = 0; i < names.length; i++) {
    let j = i;
    while (j + 1 < names.length && isNext(names[j]!, names[j + 1]!)) j++;
    if (j - i >= 2) {
      out.push(`${names[i]} to ${names[j]}`);
      i = j;
    } else out.push(names[i]!);
  }
  return out;
}
function isNext(a: string, b: string): boolean {
  const x = /^(.*\s)(\d+)$/.exec(a),
    y = /^(.*\s)(\d+)$/.exec(b);
  return x !== null && y !== null && x[1] === y[1] && Number(x[2]) + 1 === Number(y[2]);
}
