// What the page says at once about what was entered, and why a line cannot be ticked yet. It asks for what is missing; nothing here ever
// says that a machine is in any state.

import type { ReadingTry } from "../../record/record.ts";
import { isOutside } from "../../record/limits.ts";
import { entryOf, numberOf, type Entries, type LineEntry } from "./entries.ts";
import type { Plan, PlanLine, PlanReading } from "./plan.ts";

/** `none`: nothing to hold it against yet. */
export type Judged = "none" | "inside" | "outside" | "no-limits";

export function judged({ isFigure, low, high }: PlanReading, taken: ReadingTry | undefined): Judged {
  if (taken === undefined) return "none";
  if (!isFigure) return taken.asItShouldBe === undefined ? "none" : taken.asItShouldBe ? "inside" : "outside";
  if (taken.value === undefined) return "none";
  if (low === undefined && high === undefined) return "no-limits";
  return isOutside(taken.value, { low, high }) ? "outside" : "inside";
}

export const lastTry = (entry: LineEntry, reading: number): ReadingTry | undefined => entry.readings?.[reading]?.at(-1);

/** Why a tick is refused, the first thing to do first. `lines` names lines by their ids in the page. */
export interface Missing {
  readonly is: "precautions" | "before" | "hold" | "wait" | "reading" | "outside" | "outside-precaution" | "signature";
  readonly lines: readonly string[];
}

export function missingFor(id: string, plan: Plan, entries: Entries): readonly Missing[] {
  const line = plan.lines.find((each) => each.id === id);
  if (!line) return [];
  const entry = entryOf(entries, id),
    open = (ids: readonly string[] = []): string[] => ids.filter((each) => entryOf(entries, each).done !== true),
    missing: Missing[] = [];
  const add = (is: Missing["is"], lines: readonly string[] = []): void => {
    missing.push({ is, lines });
  };
  const needs = open(line.needs),
    before = open(line.before),
    hold = line.hold === undefined ? [] : open([line.hold]);
  if (hold.length > 0) add("hold", hold);
  if (needs.length > 0) add("precautions", needs);
  if (before.length > 0) add("before", before);
  if (line.takes !== undefined && line.wait !== undefined && (entry.waited ?? 0) < line.wait) add("wait");
  const agreed = isAgreed(entry);
  const states = (line.readings ?? []).map((reading, i) => judged(reading, lastTry(entry, i + 1)));
  // A proof that failed is not made up for by words: it is taken again.
  if (states.includes("outside")) {
    if (line.takes !== undefined) add("outside-precaution");
    else if (!agreed) add("outside");
  }
  if (states.includes("none") && (line.takes !== undefined || !agreed)) add("reading");
  if (line.sign && (entry.signed ?? "").trim() === "") add("signature");
  return missing;
}

/** The lines whose entries decide how a line stands: itself, and all that `missingFor` asks of others. */
export const asksAbout = ({ id, needs = [], before = [], hold }: PlanLine): readonly string[] => [
  id,
  ...needs,
  ...before,
  ...(hold === undefined ? [] : [hold]),
];

/** Somebody wrote down what was done instead, and who agreed to it. */
const isAgreed = ({ notAsWritten = [] }: LineEntry): boolean =>
  notAsWritten.some(({ done, agreedBy }) => (done ?? "") !== "" && (agreedBy ?? "") !== "");

/** Ticked lines that stand on one that is no longer so: they are told, never unticked. */
export const leaningOn = (id: string, plan: Plan, entries: Entries): readonly string[] =>
  plan.lines
    .filter((line) => line.needs?.includes(id) === true && entryOf(entries, line.id).done === true)
    .map((line) => line.id);

/** Proofs that are ticked: after a break in the work they are taken again. */
export const proofsTaken = (plan: Plan, entries: Entries): readonly string[] =>
  plan.lines.filter(({ id, takes }) => takes === "proof" && entryOf(entries, id).done === true).map(({ id }) => id);

/** Their ticks and the waits that ran before go; every try of a reading stays. */
export function withoutProofs(plan: Plan, entries: Entries): Entries {
  const lines = { ...entries.lines };
  for (const id of proofsTaken(plan, entries)) {
    const { done: _, waited: __, ...rest } = lines[id]!;
    lines[id] = rest;
  }
  return { ...entries, lines };
}

export type TorqueJudged = "none" | "given" | "other" | "no-number" | "not-given";

/** A torque as typed against the author's figures, in one of their units. */
export function judgedTyped(line: PlanLine, item: string, value: string, unit: string): TorqueJudged {
  const given = line.torques?.find((each) => each.item === item)?.given ?? [],
    figure = numberOf(value);
  if (value.trim() === "") return "none";
  if (figure === undefined) return "no-number";
  if (given.length === 0) return "not-given";
  return given.some(
    (each) =>
      each.unit === unit &&
      figure >= each.low - 1e-9 * Math.abs(each.high) &&
      figure <= each.high + 1e-9 * Math.abs(each.high),
  )
    ? "given"
    : "other";
}

/** Where the counting of fasteners stands: which one is next, in which pass; `next` 0 when all are through. */
export function tightening(
  { order = [], passes = 1 }: PlanLine,
  tightened: number,
): { readonly next: number; readonly pass: number; readonly inPass: number; readonly of: number } {
  const of = order.length,
    all = of * passes,
    n = Math.min(Math.max(0, tightened), all);
  if (of === 0 || n === all) return { next: 0, pass: passes, inPass: of, of };
  return { next: order[n % of]!, pass: Math.floor(n / of) + 1, inPass: n % of, of };
}

/** Minutes and seconds left, rounded up: never shorter than what is due. */
export function leftText(seconds: number): string {
  const left = Math.max(0, Math.ceil(seconds)),
    two = (n: number): string => String(n).padStart(2, "0");
  return left >= 3600
    ? `${Math.floor(left / 3600)}:${two(Math.floor(left / 60) % 60)}:${two(left % 60)}`
    : `${Math.floor(left / 60)}:${two(left % 60)}`;
}
