// Strips that nobody wrote: a made-up machine, and acts drawn at random of which the bench refuses none. Unlike `made-up.ts`, where one
// order is known to be allowed, this finds the orders that an author may stumble on: parts left behind, things aside, trials, half-undone
// screws.

import { actFrom } from "../../language/assist/trial.ts";
import { benchOf } from "../../language/bench/bench.ts";
import { perform } from "../../language/bench/perform.ts";
import { aroundOf } from "../../language/bench/walk.ts";
import { check } from "../bench/refit/stage.ts";

export type Die = () => number;
export const chance = (die: Die, share: number): boolean => die() < share;
export const pick = <T>(die: Die, list: readonly T[]): T => list[Math.floor(die() * list.length)]!;
export const upTo = (die: Die, most: number): number => 1 + Math.floor(die() * most);

interface Machine {
  readonly facts: readonly string[];
  readonly solid: readonly string[];
  readonly parts: readonly string[];
  readonly ties: readonly string[];
  readonly fluid: boolean;
  readonly hazard: boolean;
}

const fixings = ["screw", "screw", "nut", "captive-screw", "press-fit", "slide", "rests"] as const;

function machine(die: Die): Machine {
  const facts: string[] = [],
    solid = ["b"],
    parts: string[] = [],
    ties: string[] = [];
  const count = 2 + upTo(die, 6);
  for (let i = 1; i <= count; i++) {
    const part = `p${i}`,
      hosts = [...new Set([pick(die, solid), ...(i > 2 && chance(die, 0.2) ? [pick(die, solid)] : [])])].join(", "),
      by = pick(die, fixings),
      front = [...parts, ...ties],
      behind = front.length > 0 && chance(die, 0.35) ? ` behind ${pick(die, front)}` : "",
      hangs = chance(die, 0.1) && by === "screw" ? " hangs" : "",
      sits = by === "slide" ? ` fits ${hosts} by slide-fit` : by === "rests" ? ` rests on ${hosts}` : "";
    facts.push(`part ${part} "${part}" {${sits}${behind}${hangs} }`);
    if (by === "press-fit") facts.push(`joint t${i} press-fit "t${i}" { joins ${part} to ${hosts} }`);
    else if (by !== "slide" && by !== "rests")
      facts.push(
        `fastener t${i} ${by} "t${i}" { count ${upTo(die, 4)} joins ${part} to ${hosts}${parts.length > 0 && chance(die, 0.25) ? ` behind ${pick(die, parts)}` : ""} }`,
      );
    if (by !== "slide" && by !== "rests") ties.push(`t${i}`);
    solid.push(part);
    parts.push(part);
    if (!chance(die, 0.2)) continue;
    facts.push(`part r${i} o-ring "r${i}" { between ${part} and ${hosts.split(",")[0]} renew when worn }`);
    parts.push(`r${i}`);
  }
  const fluid = chance(die, 0.3),
    hazard = chance(die, 0.4);
  if (fluid) {
    facts.push(`fastener plug plug "plug" { into ${pick(die, solid)} }`);
    facts.push(`fluid oil oil "oil" { volume 1 L drains at plug fills at plug path ${pick(die, solid.slice(1))} }`);
    ties.push("plug");
  }
  if (hazard)
    facts.push(
      `hazard h rotating danger "h" { on ${[...new Set([pick(die, parts), ...(ties.length > 0 ? [pick(die, ties)] : [])])].join(", ")} precaution isolate "i" back "j" precaution lock-out "l" back "m" precaution try-start "t" }`,
    );
  return { facts, solid: solid.slice(1), parts, ties, fluid, hazard };
}

/** An act by its line; with `back` some that put together. */
function drawn(die: Die, { solid, parts, ties, fluid, hazard }: Machine, back: number): string {
  const tie = ties.length > 0 ? pick(die, ties) : "b",
    part = pick(die, parts),
    one = pick(die, solid);
  if (chance(die, back))
    return pick(die, [
      `fit ${part}`,
      `fit ${tie}`,
      `fit ${upTo(die, 3)} of ${tie}`,
      `slide ${one} back`,
      `tighten ${tie}`,
    ]);
  return pick(die, [
    ...Array.from({ length: 3 }, () => `remove ${part}`),
    ...Array.from({ length: 3 }, () => `undo ${tie}`),
    `undo ${upTo(die, 3)} of ${tie}`,
    `loosen ${tie}`,
    `back-out ${tie}`,
    `slide ${one}`,
    `support ${one} with jack`,
    `hold ${one} with strap`,
    `remove ${[...new Set([part, pick(die, parts), ...(chance(die, 0.3) ? [pick(die, parts)] : [])])].join(", ")} together`,
    ...(fluid ? ["drain oil"] : []),
    ...(hazard ? ["isolate h", "lock-out h", "try-start h", "restore h"] : []),
  ]);
}

/** What the unit, its procedure and its things are called. */
interface Names {
  readonly unit: string;
  readonly procedure: string;
  readonly part: string;
  readonly tie: string;
}

/** The text of a strip of up to `most` acts, each of which the bench takes; undefined where the machine contradicts itself. */
export const walked = (die: Die, back: number, most = 20): string | undefined =>
  walkedOf(die, back, most, { unit: "u", procedure: "p", part: "p", tie: "t" });

export function walkedOf(die: Die, back: number, most: number, names: Names): string | undefined {
  const called = (text: string): string =>
    text.replace(
      /\b([pt])(\d)\b/g,
      (_, kind: "p" | "t", number: string) => (kind === "p" ? names.part : names.tie) + number,
    );
  const made = machine(die),
    unit = called(`unit ${names.unit} "u" {\n base b\n part b "b"\n${made.facts.join("\n")}\n}\n`),
    procedure = (steps: readonly string[]): string =>
      `procedure ${names.procedure} "p" for ${names.unit} {\n aim none\n${steps.map((step) => ` step { ${step} }`).join("\n")}\n}\n`,
    checked = check(unit + procedure(['note "x"'])),
    [start] = checked.performances;
  if (!start || checked.findings.some(({ severity }) => severity === "error")) return undefined;
  const around = aroundOf(start.procedure),
    acts: string[] = [];
  let bench = benchOf(start.model, start.stripEnd);
  for (let tries = most * 6; tries > 0 && acts.length < most; tries--) {
    const line = called(drawn(die, made, back)),
      act = actFrom(line),
      next = benchOf(start.model, bench.state);
    if (!act) continue;
    next.events.push(...bench.events);
    next.performed.push(...bench.performed);
    perform(next, act, around);
    if (next.problems.length > 0 || next.state === bench.state) continue;
    bench = next;
    acts.push(line);
  }
  const perStep = upTo(die, 4);
  return unit + procedure(acts.flatMap((_, i) => (i % perStep === 0 ? [acts.slice(i, i + perStep).join(" ")] : [])));
}
