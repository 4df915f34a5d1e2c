// What every published procedure must show, whatever it is about: clean, its facts reproduced, its printed refit a line of the order.

import { describe, expect, test } from "vitest";
import { performLine } from "../bench/refit/stage.ts";
import {
  asPrinted,
  comesBefore,
  fastenersRemoved,
  firstInStrip,
  lineAsPrinted,
  published,
  renewed,
  thingIn,
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

export function testPublished(of: Case): Published {
  const at = published(of.name),
    {
      facts: { oracle, deliberate_faults },
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
