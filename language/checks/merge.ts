// One mistake, one finding: over several pieces on a line, over several builds, over several procedures that miss the same thing.

import type { Build } from "../model/builds.ts";
import type { Finding, Span } from "../findings/finding.ts";
import type { Raw } from "./raw.ts";
import { few, listed } from "./bench-check.ts";
import { mayMissALine } from "./line-missing.ts";

/** Missed by the aim, or at the end: the same thing missed by several procedures is said at the first. */
const missedOnce = /^removal\/|^refit\/(?:missing|mark-unused|position|fluid-short)$/;

/** `isAllowed`: the author allows this code at its line, so that it stands for itself, unless all say the same. */
export function mergeFindings(
  raw: readonly Raw[],
  buildsOf: (unit: string) => readonly Build[],
  isAllowed: (one: Pick<Finding, "code" | "at">) => boolean = () => false,
): Finding[] {
  const groups: Raw[][] = [],
    groupOf = new Map<string, Raw[]>();
  const placeOf = ({ file, start }: Span): string => `${file} ${start}`,
    // A hint that the author has allowed says nothing; else what belongs to it makes it as grave as that.
    said = new Set(raw.filter((one) => !one.within && !isAllowed(one)).map(({ at }) => placeOf(at))),
    // What belongs to a finding that is itself a reason of another one belongs to that other one.
    further = new Map(raw.flatMap(({ at, within }) => (within ? [[placeOf(at), within] as const] : []))),
    // Where parts of a unit are in the way on its own bench. Around it the same ones are so again.
    met = raw.flatMap(({ inTheWay, at }) => (inTheWay && !inTheWay.isInside ? [{ ...inTheWay, at }] : [])),
    metBefore = (inTheWay: Raw["inTheWay"]): Span | undefined =>
      inTheWay?.isInside
        ? met.find(({ unit, things }) => unit === inTheWay.unit && !things.isDisjointFrom(inTheWay.things))?.at
        : undefined,
    reasons: Raw[] = [];
  for (const one of [...raw].sort(byPlace)) {
    const own = one.within ?? metBefore(one.inTheWay),
      whole = own && (said.has(placeOf(own)) ? own : further.get(placeOf(own)));
    if (whole && said.has(placeOf(whole))) {
      reasons.push({ ...one, within: whole });
      continue;
    }
    // What one statement would answer is one mistake, however often it shows: said at the first, the others are among the reasons. What
    // stands at the same place under the same code is one finding anyway.
    const place = `${one.code} ${one.at.file} ${one.at.start}`,
      key =
        one.answer !== undefined && (one.answer.key === one.says || !isAllowed(one))
          ? `${one.answer.across ? "" : one.code} ${one.answer.key}`
          : place;
    let list = groupOf.get(key) ?? groupOf.get(place);
    if (list) list.push(one);
    else groups.push((list = [one]));
    groupOf.set(key, list).set(place, list);
  }
  // The line that is missing at the bench, or in a hazard, may be the one that would speak of what no line speaks of.
  const isMissing = groups.some(
    ([one]) => !isAllowed(one!) && (one!.code === "hazard/no-tester" || mayMissALine(one!)),
  );
  // A question about the hazard, or what the author allows there, says nothing of what it lacks.
  const saysLack = (one: Raw, asked: Raw): boolean =>
    isOfHazard(one) && weights.indexOf(one.severity) <= weights.indexOf(asked.severity) && !isAllowed(one);
  const missed = new Set<string>(),
    findings: Finding[] = [],
    lacks: { readonly lack: NonNullable<Raw["lack"]>; readonly place: number }[] = [];
  const isWithin = (at: Raw["at"], whole: Raw["at"]): boolean =>
    at.file === whole.file && at.start >= whole.start && at.end <= whole.end;
  for (const group of groups) {
    const list = gravestOf(group),
      first = list[0]!,
      { restsOn } = first;
    // What a declaration lacks is said at the declaration, and not again at each line that asks for it.
    if (restsOn && groups.some((other) => other.some((one) => saysLack(one, first) && isWithin(one.at, restsOn))))
      continue;
    if (isMissing && (first.code === "names/unused" || first.code === "hazard/never-touched")) continue;
    if (missedOnce.test(first.code)) {
      const about = list.flatMap((one) => one.about),
        isNew = about.length === 0 || about.some((id) => !missed.has(`${first.code} ${id}`));
      // What is allowed for one procedure is not allowed for the next.
      if (!isAllowed(first)) for (const id of about) missed.add(`${first.code} ${id}`);
      if (!isNew) continue;
    }
    // The same was missing in a procedure that this one shares acts with: said there, and this place among its reasons.
    const { lack } = first,
      before =
        lack &&
        lacks.find(
          (one) =>
            lack.what.isSubsetOf(one.lack.what) && one.lack.performed.values().some((id) => lack.performed.has(id)),
        );
    if (before) {
      const had = findings[before.place]!;
      findings[before.place] = {
        ...had,
        severity: graver(had.severity, first.severity),
        because: [...had.because, { says: first.says, at: first.at }],
      };
      continue;
    }
    if (lack && !isAllowed(first)) lacks.push({ lack, place: findings.length });
    findings.push(merged(first, list, buildsOf));
  }
  for (const one of reasons) if (!addReason(findings, one, isAllowed)) findings.push(merged(one, [one], buildsOf));
  return sameCause(findings, isAllowed);
}

/** In their order; where they are of several codes the gravest in front, of equal ones what is said of a hazard. */
const gravestOf = (list: readonly Raw[]): readonly Raw[] =>
  list.every(({ code }) => code === list[0]!.code)
    ? list
    : list.toSorted(
        (a, b) =>
          weights.indexOf(a.severity) - weights.indexOf(b.severity) || Number(isOfHazard(b)) - Number(isOfHazard(a)),
      );
const isOfHazard = ({ code }: Raw): boolean => code.startsWith("hazard/");

const figureCodes = [
  "figure/implausible",
  "fastener/torque-over-yield",
  "fastener/torque-too-low",
  "figure/pair-disagrees",
  "tool/wrench-range",
];
/**
 * What one cause at one place shows as: a figure that is wrong, an act that was refused with what should have been off already, an aim
 * that is not reached. Others that stand at one place are mistakes of their own.
 */
const causes: readonly { readonly leads: readonly string[]; readonly follows: readonly string[] }[] = [
  { leads: figureCodes, follows: figureCodes },
  { leads: ["sequence/still-held", "sequence/blocked"], follows: ["lift/over-guideline", "refit/impossible"] },
  // What is done twice by one line is listed twice there.
  { leads: ["sequence/already-undone", "sequence/repeat"], follows: ["names/listed-twice"] },
  // One aim, not reached.
  { leads: ["removal/missing"], follows: ["removal/never-undone"] },
];
const weights: readonly Finding["severity"][] = ["error", "warning", "question", "hint"];
const graver = (a: Finding["severity"], b: Finding["severity"]): Finding["severity"] =>
  weights.indexOf(a) < weights.indexOf(b) ? a : b;

/** At the very same place, from one cause: the gravest speaks, the others are among its reasons. What the author allows stands for itself. */
function sameCause(findings: readonly Finding[], isAllowed: (one: Pick<Finding, "code" | "at">) => boolean): Finding[] {
  const causeOf = ({ code }: Finding): number =>
    causes.findIndex(({ leads, follows }) => leads.includes(code) || follows.includes(code));
  const rank = (one: Finding): number => {
    const { leads } = causes[causeOf(one)]!,
      place = leads.indexOf(one.code);
    return (place < 0 ? 1 : 0) * 100 + weights.indexOf(one.severity) * 10 + place;
  };
  // By file, cause and place: what stands within the place of another is at it too.
  const groups: { readonly cause: number; readonly at: Finding["at"]; readonly list: Finding[] }[] = [];
  for (const one of findings) {
    const cause = causeOf(one);
    if (cause < 0 || isAllowed(one)) continue;
    const { at } = one,
      group = groups.find(
        (had) => had.cause === cause && had.at.file === at.file && had.at.start < at.end && at.start < had.at.end,
      );
    if (group) group.list.push(one);
    else groups.push({ cause, at, list: [one] });
  }
  const joined = new Map<Finding, Finding | undefined>();
  for (const { list } of groups) {
    const [first, ...rest] = list.toSorted((a, b) => rank(a) - rank(b)),
      { leads, follows } = causes[causeOf(first!)]!,
      others = leads.includes(first!.code) ? rest.filter(({ code }) => follows.includes(code)) : [];
    if (others.length === 0) continue;
    const reasons = others.flatMap(({ says, at, because }) => [{ says, at }, ...because.filter((one) => one.at)]);
    joined.set(first!, { ...first!, because: [...first!.because, ...reasons] });
    for (const one of others) joined.set(one, undefined);
  }
  return findings.flatMap((one) => (joined.has(one) ? (joined.get(one) ?? []) : [one]));
}

/** Puts a finding among the reasons of the one that says its mistake already, at its place or at a later one of the same name; never of one that the author allows. False where none does. */
function addReason(
  findings: Finding[],
  { within, says, at, severity }: Raw,
  isAllowed: (one: Pick<Finding, "code" | "at">) => boolean,
): boolean {
  const isThere = (place: Finding["because"][number]["at"]): boolean =>
      place?.file === within!.file && place.start === within!.start,
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

function merged(first: Raw, list: readonly Raw[], buildsOf: (unit: string) => readonly Build[]): Finding {
  // Of another code at the same place: what one statement would answer as well.
  const byCode = Map.groupBy(list, ({ code, at }) => (isAt(first, at) ? code : first.code)),
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
  const found = new Set(list.map((one) => one.build)),
    all = buildsOf(unit);
  const builds =
    found.has(undefined) || all.length < 2 || all.every((b) => found.has(b.name))
      ? []
      : [smallestCondition(all, found)];
  const places = new Map(
    list
      .slice(1)
      .filter((one) => !isAt(first, one.at))
      .map((one) => [`${one.at.file} ${one.at.start}`, one]),
  );
  return {
    ...finding,
    severity: list.reduce((gravest, one) => graver(gravest, one.severity), first.severity),
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

/** The fewest choices under which it is always found; the name of a whole build where fewer do not say it. */
export function smallestCondition(all: readonly Build[], found: ReadonlySet<string | undefined>): string {
  const keys = [...new Set(all.flatMap((b) => [...b.chosen]))];
  const varies = ({ key, is }: { key: string; is: boolean }): boolean =>
    all.some((b) => b.chosen.has(key) === is) && all.some((b) => b.chosen.has(key) !== is);
  const literals = keys
    .flatMap((key) => [
      { key, is: true },
      { key, is: false },
    ])
    .filter(varies);
  const holds = (set: readonly { key: string; is: boolean }[]): boolean => {
    const those = all.filter((b) => set.every(({ key, is }) => b.chosen.has(key) === is));
    return those.length > 0 && those.every((b) => found.has(b.name));
  };
  // What is fitted is easier to check at the machine than what is not, so that conditions without a "without" come first.
  const pairs = literals.flatMap((a, i) => literals.slice(i + 1).map((b) => [a, b])),
    sets = [...literals.map((one) => [one]), ...pairs];
  const negatives = (set: readonly { is: boolean }[]): number => set.filter(({ is }) => !is).length;
  const smallest = sets.filter(holds).sort((a, b) => a.length - b.length || negatives(a) - negatives(b))[0];
  if (!smallest) return all.find((b) => found.has(b.name))?.name ?? "";
  const named = (is: boolean, word: string): string[] => {
    const keys = smallest.filter((one) => one.is === is).map(({ key }) => readable(key));
    return keys.length === 0 ? [] : [`${word} ${listed(keys)}`];
  };
  return [...named(true, "with"), ...named(false, "without")].join(" and ");
}

/** Keys of optional blocks and choices hold a place; the reader sees what they are. */
const readable = (key: string): string =>
  key.startsWith("optional ")
    ? "the optional part"
    : key.startsWith("either ") || key.startsWith("or ")
      ? "the other choice"
      : key;
