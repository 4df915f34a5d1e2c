// What every published procedure must show, whatever it is about: clean, its facts reproduced, its printed refit a line of the order.

import { describe, expect, test } from "vitest";
import { crewAt } from "../../language/bench/crew.ts";
import { machineOf } from "../../language/bench/machine.ts";
import { placementOf } from "../../language/bench/placement.ts";
import type { Performance } from "../../language/bench/trace.ts";
import { newThings } from "../../language/bill/new-things.ts";
import type { Thing } from "../../language/model/model.ts";
import { si } from "../../language/quantities/index.ts";
import { performLine } from "../bench/refit/stage.ts";
import {
  asPrinted,
  comesBefore,
  fastenersRemoved,
  firstInStrip,
  lineAsPrinted,
  printedOrder,
  published,
  renewed,
  thingIn,
  writtenOrder,
  type Published,
} from "./published.ts";

export interface Case {
  readonly name: string;
  /** Order constraints that are stated in words, or shown another way: by "before < after". */
  readonly shownOtherwise?: Readonly<Record<string, (at: Published) => boolean>>;
  /** Each tool of the oracle: what the text calls it. */
  readonly tools: Readonly<Record<string, string>>;
  /** Each fault: the edit, the line to blame as it stands in the edited text, and the code. */
  readonly faults: Readonly<
    Record<string, { readonly edit: (at: Published) => Parameters<Published["found"]>[0]; readonly finds: RegExp }>
  >;
  /** Each print defect in the order of the file. */
  readonly defects: readonly (
    | { readonly literally: (at: Published) => Parameters<Published["found"]>[0]; readonly finds: RegExp }
    | { readonly cannot: string }
  )[];
}

const levels: ReadonlySet<string> = new Set(["danger", "warning", "caution"]);

/** Washers come and go with their screw: the source names them, we say them of the screw. */
const withFastener = ({ model }: Performance): ReadonlySet<string> =>
  new Set(model.ties.flatMap(({ washers }) => washers.map(({ part }) => model.parts[part]!.declared)));

/** Held by the same third one: a spring on a shaft that presses on the housing. */
const isNear = ({ model }: Performance, end: number, ends: readonly number[]): boolean =>
  machineOf(model).edges[end]!.some(({ to }) =>
    machineOf(model).edges[to]!.some((edge) => ends.includes(edge.to) && edge.to !== end),
  );

export function testPublished(of: Case): Published {
  const at = published(of.name),
    {
      facts,
      facts: { oracle, deliberate_faults, parts, fasteners, joints },
      apart,
      together,
      checked,
    } = at;
  describe(of.name, () => {
    test("is clean, in every build, and so is its printed refit", () => {
      expect(
        checked.findings.filter(({ severity }) => severity !== "hint").map(({ code, says }) => `${code}: ${says}`),
      ).toEqual([]);
      expect(checked.performances.flatMap(({ problems }) => problems)).toEqual([]);
    });
    test("has the parts and fasteners of the source, as many, tying what they tie there", () => {
      const of = (id: string): Thing[] => thingIn(apart, id).map((index) => apart.model.things[index]!);
      const count = (id: string): number =>
        of(id).reduce((sum, thing) => sum + (thing.is === "part" || thing.is === "tie" ? thing.count : 0), 0);
      for (const { id, quantity } of parts) expect(`${id} ${count(id)}`).toBe(`${id} ${quantity}`);
      for (const { id, count: pieces, joins } of fasteners) {
        expect(`${id} ${count(id)}`).toBe(`${id} ${pieces}`);
        const [tie] = of(id);
        if (tie?.is !== "tie") throw new Error(`${id} is no tie`);
        const tied = [...tie.lowers, ...tie.uppers].map((part) => apart.model.parts[part]!.declared);
        for (const part of joins) expect(tied, id).toContain(part);
      }
      // What holds without a thread: a part that fits or lies on the other, or lies in its joint, or a joint of its own.
      for (const { id, joins } of joints) {
        const ends = joins.flatMap((one) => thingIn(apart, one)),
          { edges } = machineOf(apart.model);
        expect(
          ends.some((end) => edges[end]!.some(({ to }) => ends.includes(to)) || isNear(apart, end, ends)),
          id,
        ).toBe(true);
      }
    });
    test("takes apart and puts together in the printed order", () => {
      const undone = new Set(["undo", "loosen", "slide", "remove", "mark"]),
        made = new Set(["fit", "make", "fit-finger-tight", "tighten", "slide"]);
      const known = (ids: readonly string[]): string[] => ids.filter((id) => thingIn(apart, id).length > 0);
      const washed = (ids: readonly string[]): string[] => ids.filter((id) => !withFastener(apart).has(id));
      expect(washed(writtenOrder(apart, apart.strip, undone))).toEqual(
        washed(known(printedOrder(facts.strip_order, undone))),
      );
      const wet = new Set(["fit", "tighten"]);
      expect(washed(writtenOrder(together, together.written, wet))).toEqual(
        washed(known(printedOrder(facts.refit_order, made))),
      );
    });
    test("names its people, its stores, and what is new only if it is bad", () => {
      expect(crewAt(apart.procedure)).toBe(facts.people);
      const isTwo = facts.strip_order.some(({ people }) => people === 2);
      expect(apart.strip.some(({ act }) => act.verb === "people" || act.people === 2)).toBe(isTwo);
      for (const { id } of facts.consumables) expect([...apart.model.library.consumables.keys()]).toContain(id);
      const fresh = newThings(apart);
      for (const id of oracle.replaced_only_if_bad ?? [])
        expect(fresh.get(thingIn(apart, id)[0]!)?.grade, id).toBe("worn");
      for (const { id, one_time: once } of parts)
        if (once) for (const thing of thingIn(apart, id)) expect(fresh.get(thing)?.grade, id).toBe("certain");
    });
    test("its torques come to the newton-metres that the collector computed", () => {
      for (const { id, torque } of fasteners) {
        const tie = apart.model.things[thingIn(apart, id)[0]!]!;
        if (tie.is !== "tie" || !torque) continue;
        const { low, high } = si(tie.torques[0]!.value!);
        expect([low.toFixed(2), high.toFixed(2)], id).toEqual(
          torque.computed_newton_metres.map((figure) => figure.toFixed(2)),
        );
      }
    });
    test("prints each warning of the source at its level", () => {
      const words = placementOf(apart),
        before = [...words.strip, ...words.refit].flatMap(({ messages }) =>
          messages.map(({ message }) => message.signal),
        ),
        written = [...apart.strip.map(({ act }) => act.verb), ...apart.refit.map(({ op }) => op.act?.verb ?? "")];
      const printed = [...before, ...written].filter((word) => levels.has(word));
      expect(printed.sort()).toEqual(
        facts.hazards.flatMap(({ level, before: places }) => places.map(() => level.toLowerCase())).sort(),
      );
    });
    test("takes out the fasteners that the source counts", () => {
      const counts = fastenersRemoved(apart);
      expect(counts).toEqual(oracle.fasteners_removed.by_id);
      expect(Object.values(counts).reduce((sum, n) => sum + n, 0)).toBe(oracle.fasteners_removed.total);
    });
    test("renews what the source renews", () => {
      expect(renewed(apart)).toEqual([...oracle.mandatory_replacements].sort((a, b) => (a.id < b.id ? -1 : 1)));
    });
    for (const { phase, before, after, why } of oracle.order_constraints)
      test(`${phase}: ${before} before ${after} (${why})`, () => {
        const otherwise = of.shownOtherwise?.[`${before} < ${after}`];
        if (otherwise) expect(otherwise(at)).toBe(true);
        else if (phase === "refit") expect(comesBefore(apart, before, after)).toBe(true);
        else {
          expect(firstInStrip(apart, before)).toBeGreaterThanOrEqual(0);
          expect(firstInStrip(apart, before)).toBeLessThan(firstInStrip(apart, after));
        }
      });
    for (const { fastener, count, printed } of oracle.torques)
      test(`${fastener}: ${printed}, ${count} of them, both units kept`, () => {
        const [index] = thingIn(apart, fastener),
          tie = apart.model.things[index!]!;
        if (tie.is !== "tie") throw new Error(`${fastener} is no tie`);
        expect(tie.count).toBe(count);
        const angle = tie.backOut ? `, then back ${asPrinted(tie.backOut.angle.written).replace("-", " to ")}` : "";
        const { written, pair } = tie.torques[0]!.value!;
        expect(`${asPrinted(written)} (${asPrinted(pair!.written)})${angle}`).toBe(printed);
      });
    test("names every tool that the source lists or needs", () => {
      const library = apart.model.library,
        known = [...library.tools.values(), ...library.consumables.values()].map(({ id }) => id);
      expect(Object.keys(of.tools).sort()).toEqual([...oracle.tools].sort());
      for (const [tool, id] of Object.entries(of.tools)) expect(known, tool).toContain(id);
    });
    test("the printed refit ends where the strip began", () => {
      expect(together.written.length).toBeGreaterThan(0);
      expect(together.problems).toEqual([]);
    });
    test("the printed refit is a line of the computed order, and that line is performed without a word", () => {
      const line = lineAsPrinted(apart, together);
      expect(line, "a line with the printed sequence").toBeDefined();
      expect(performLine(apart, line!).map(({ rule }) => rule)).toEqual([]);
    });
    for (const fault of deliberate_faults) {
      const mine = of.faults[fault.id];
      test(`fault ${fault.id}: ${fault.edit}`, () => {
        expect(mine, "the fault is made").toBeDefined();
        const found = at.found(mine!.edit(at));
        expect(found).toHaveLength(1);
        expect(found[0]).toMatch(mine!.finds);
      });
    }
    test("no fault is made that the source does not have", () => {
      expect(Object.keys(of.faults).sort()).toEqual(deliberate_faults.map(({ id }) => id).sort());
      expect(of.defects).toHaveLength(oracle.print_defects.length);
    });
    oracle.print_defects.forEach((defect, i) => {
      const mine = of.defects[i];
      if (!mine || "cannot" in mine) return;
      test(`print defect, transcribed literally: ${defect}`, () => {
        const found = at.found(mine.literally(at));
        expect(found.join("\n")).toMatch(mine.finds);
      });
    });
  });
  return at;
}
