// Findings at the very same place that are one cause: the gravest speaks, the others are among its reasons.

import type { Finding } from "../findings/finding.ts";
import type { IsAllowed } from "./allow.ts";
import { weight } from "./severity.ts";

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

/** What the author allows stands for itself. */
export function sameCause(findings: readonly Finding[], isAllowed: IsAllowed): Finding[] {
  const causeOf = ({ code }: Finding): number =>
    causes.findIndex(({ leads, follows }) => leads.includes(code) || follows.includes(code));
  const rank = (one: Finding): number => {
    const { leads } = causes[causeOf(one)]!,
      place = leads.indexOf(one.code);
    return (place < 0 ? 1 : 0) * 100 - weight(one.severity) * 10 + place;
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
