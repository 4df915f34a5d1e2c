// A published procedure at hand: its facts as collected, its text and its printed refit as we wrote them, and both performed.
// The facts stand in tests/reference/procedures/*.json, whose README names the source of each.

import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect } from "vitest";
import { isLine, mustFollow } from "../../language/bench/refit/freedom.ts";
import type { Performance, RefitOp } from "../../language/bench/trace.ts";
import { newThings } from "../../language/bill/new-things.ts";
import { checkProject, type Checked } from "../../language/workspace/check-project.ts";
import { lineAt } from "../mutation/mutant.ts";
import { worldWith } from "../mutation/scenes.ts";

/** A step of the source's own order: acts on parts and fasteners by their ids. */
interface Step {
  readonly acts: readonly { readonly action: string; readonly id?: string }[];
  readonly optional?: string | null;
  readonly people?: number | null;
}
interface PrintedTorque {
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  readonly computed_newton_metres: readonly [number, number];
}

export interface Facts {
  readonly parts: readonly { readonly id: string; readonly quantity: number; readonly one_time?: boolean }[];
  readonly fasteners: readonly {
    readonly id: string;
    readonly count: number;
    readonly joins: readonly string[];
    readonly torque: PrintedTorque | null;
  }[];
  readonly joints: readonly { readonly id: string; readonly joins: readonly string[] }[];
  readonly consumables: readonly { readonly id: string }[];
  readonly hazards: readonly { readonly id: string; readonly level: string; readonly before: readonly string[] }[];
  readonly people: number;
  readonly strip_order: readonly Step[];
  readonly refit_order: readonly Step[];
  readonly oracle: {
    readonly replaced_only_if_bad?: readonly string[];
    readonly fasteners_removed: { readonly total: number; readonly by_id: Readonly<Record<string, number>> };
    readonly mandatory_replacements: readonly { readonly id: string; readonly count: number }[];
    readonly order_constraints: readonly {
      readonly phase: "strip" | "refit";
      readonly before: string;
      readonly after: string;
      readonly why: string;
    }[];
    readonly torques: readonly { readonly fastener: string; readonly count: number; readonly printed: string }[];
    readonly warning_placement: readonly unknown[];
    readonly print_defects: readonly string[];
    readonly tools: readonly string[];
  };
  readonly deliberate_faults: readonly { readonly id: string; readonly edit: string; readonly expect: string }[];
}

export interface Published {
  readonly facts: Facts;
  readonly checked: Checked;
  /** The strip with its computed refit, nothing found at the inspection. */
  readonly apart: Performance;
  /** The printed refit. */
  readonly together: Performance;
  /** The two texts by what they are. */
  readonly texts: Readonly<Record<"strip" | "refit", string>>;
  /** The texts with these edits, checked: what is found beyond what the text as it is gives, as `strip:12 code: text`. */
  found(edits: Partial<Record<"strip" | "refit", (text: string) => string>>): string[];
}

const folder = fileURLToPath(new URL("./", import.meta.url));

export function published(name: string): Published {
  const facts = JSON.parse(readFileSync(`${folder}../reference/procedures/${name}.json`, "utf8")) as Facts;
  const paths = { strip: `tests/procedures/${name}.strip`, refit: `tests/procedures/${name}-refit.strip` };
  const texts = {
    strip: readFileSync(`${folder}${name}.strip`, "utf8"),
    refit: readFileSync(`${folder}${name}-refit.strip`, "utf8"),
  };
  const check = (by: typeof texts): Checked =>
    checkProject(
      worldWith(
        new Map([
          [paths.strip, by.strip],
          [paths.refit, by.refit],
        ]),
      ),
      [paths.strip, paths.refit],
    );
  const checked = check(texts),
    first = (file: string): Performance =>
      checked.performances.find(
        ({ procedure, model }) =>
          procedure.at.file === file && ![...model.chosen].some((choice) => choice.endsWith(" fails")),
      )!;
  const said = (one: Checked, by: typeof texts): string[] =>
    one.findings.map(({ at, code, says }) => {
      const half = at.file === paths.strip ? "strip" : "refit";
      return `${half}:${lineAt(by[half], at.start)} ${code}: ${says}`;
    });
  const clean = new Set(said(checked, texts));
  return {
    facts,
    checked,
    texts,
    apart: first(paths.strip),
    together: first(paths.refit),
    found(edits) {
      const by = { strip: edits.strip?.(texts.strip) ?? texts.strip, refit: edits.refit?.(texts.refit) ?? texts.refit };
      expect(by, "the edit changes the text").not.toEqual(texts);
      return said(check(by), by).filter((one) => !clean.has(one));
    },
  };
}

/** Text replaced where it stands exactly once; lines must not shift, so what goes leaves its line ends. */
export function put(text: string, old: string, by: string): string {
  expect(text.split(old).length - 1, `"${old}" stands once`).toBe(1);
  return text.replace(old, () => by);
}
export const dropped = (text: string, old: string): string => put(text, old, "\n".repeat(old.split("\n").length - 1));
/** Two steps, each with what it holds, in each other's place; the numbers of lines between them shift if they differ in length. */
export function swapped(text: string, one: string, other: string): string {
  const a = step(text, one),
    b = step(text, other);
  return put(put(put(text, a, "\u0001"), b, a), "\u0001", b);
}
export function moved(text: string, one: string, before: string): string {
  const a = step(text, one),
    b = step(text, before);
  return put(put(text, a, ""), b, a + b);
}
/** The whole step that begins so. */
export function step(text: string, begins: string): string {
  const start = text.indexOf(`\n  step ${begins}`) + 1;
  expect(start, `step ${begins}`).toBeGreaterThan(0);
  return text.slice(start, text.indexOf("\n  }\n", start) + 5);
}
/** Line of a text, from 1. */
export const lineOf = (text: string, part: string): number => {
  expect(text.includes(part), part).toBe(true);
  return lineAt(text, text.indexOf(part) + 1);
};

export const thingIn = ({ model }: Performance, id: string): number[] => [...(model.scopes.get("")!.get(id) ?? [])];

export function fastenersRemoved({ model, events }: Performance): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const { kind, thing, count } of events) {
    const tie = model.things[thing]!;
    if (kind === "out" && tie.is === "tie" && tie.fastener) counts[tie.declared] = (counts[tie.declared] ?? 0) + count;
  }
  return counts;
}

/** Ids in the order in which a list of acts first does something of these to them; what is done under a condition is left out. */
export function printedOrder(steps: readonly Step[], actions: ReadonlySet<string>): string[] {
  const ids = steps
    .filter(({ optional }) => !optional)
    .flatMap(({ acts }) => acts.flatMap(({ action, id }) => (actions.has(action) && id !== undefined ? [id] : [])));
  return [...new Set(ids)];
}

/** The same of what we wrote, by the declarations of the things. */
export function writtenOrder({ model }: Performance, acts: Performance["strip"], verbs: ReadonlySet<string>): string[] {
  const ids = acts
    .filter(({ act }) => verbs.has(act.verb))
    .flatMap(({ things }) => things.map((thing) => model.things[thing]!))
    .flatMap((thing) => (thing.is === "part" || thing.is === "tie" ? [thing.declared] : []));
  return [...new Set(ids)];
}

/** Parts and fasteners that go back new whatever is found, by declaration. */
export function renewed(performance: Performance): { id: string; count: number }[] {
  const counts = new Map<string, number>();
  for (const { thing, grade } of newThings(performance).values()) {
    const item = performance.model.things[thing]!;
    if (grade === "certain" && (item.is === "part" || item.is === "tie"))
      counts.set(item.declared, (counts.get(item.declared) ?? 0) + item.count);
  }
  return [...counts].map(([id, count]) => ({ id, count })).sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** The first act of the strip that does something to it; of two it must be the earlier. */
export function firstInStrip(performance: Performance, id: string): number {
  const things = thingIn(performance, id);
  return performance.events.findIndex(
    ({ kind, things: of }) => kind !== "gripped" && of.some((thing) => things.includes(thing)),
  );
}

const handles = (op: RefitOp): boolean =>
  op.verb !== "written" || ["fit", "tighten", "press"].includes(op.act?.verb ?? "");
/** Lines of the refit on a thing, or those that use it up. */
export function inRefit(performance: Performance, id: string): RefitOp[] {
  const things = thingIn(performance, id),
    { ops } = performance.order!;
  return things.length === 0
    ? ops.filter(({ act }) => act?.names.some((name) => name.text === id))
    : ops.filter((op) => handles(op) && op.things.some((thing) => things.includes(thing)));
}

/** In every line of the computed order the one comes before the other. */
export function comesBefore(performance: Performance, before: string, after: string): boolean {
  const follow = mustFollow(performance.order!),
    ones = inRefit(performance, before),
    others = inRefit(performance, after);
  return (
    ones.length > 0 &&
    others.length > 0 &&
    ones.every((one) => others.every((other) => follow[one.number]!.has(other.number)))
  );
}

/**
 * The ops of the computed order in the sequence in which the printed refit does them; what the printed one does not name (readings,
 * cleaning) stands where the order has it. Undefined where no line of the order has that sequence.
 */
export function lineAsPrinted(computed: Performance, printed: Performance): readonly number[] | undefined {
  const { ops, later } = computed.order!,
    left = new Set(ops.map((op) => op.number)),
    waits = ops.map(() => 0),
    line: number[] = [];
  for (const list of later) for (const next of list) waits[next]!++;
  const idOf = (performance: Performance, thing: number): string => performance.model.things[thing]!.id;
  const take = (number: number): void => {
    left.delete(number);
    line.push(number);
    for (const next of later[number]!) waits[next]!--;
  };
  const free = (wanted: (op: RefitOp) => boolean): RefitOp | undefined =>
    ops.filter((op) => left.has(op.number) && waits[op.number] === 0 && wanted(op)).sort((a, b) => b.rank - a.rank)[0];
  // Lines that the printed text has no act for come as soon as they may: readings, notes, what is held for a moment.
  const named = new Set(
    printed.written.flatMap(({ act, things }) =>
      handled.has(act.verb) ? things.map((thing) => idOf(printed, thing)) : [],
    ),
  );
  const isOurs = (op: RefitOp): boolean =>
    !handles(op) || op.verb === "hold" || !op.things.some((thing) => named.has(idOf(computed, thing)));
  const settle = (): void => {
    for (let op = free(isOurs); op; op = free(isOurs)) take(op.number);
  };
  for (const { act, things } of printed.written) {
    if (!handled.has(act.verb)) continue;
    for (const thing of things) {
      settle();
      const id = idOf(printed, thing),
        mine = (op: RefitOp): boolean => handles(op) && op.things.some((one) => idOf(computed, one) === id);
      if (![...left].some((number) => mine(ops[number]!))) continue; // done with another: a washer, a second mention
      const op = free(mine);
      if (!op) return undefined;
      take(op.number);
    }
  }
  settle();
  return left.size === 0 && isLine(computed.order!, line) ? line : undefined;
}
const handled: ReadonlySet<string> = new Set(["fit", "tighten", "press", "slide", "swing", "open", "fill"]);

/** `59..74 lb-ft (80..100 N·m)` as the manual prints it. */
export const asPrinted = (written: string): string => written.replaceAll("..", "-").replaceAll(/\s+/g, " ").trim();
