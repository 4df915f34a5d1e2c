// Nothing that is printed is too small to read at the bench. ISO/IEC 82079-1 asks for a legible size and gives none (from memory); common
// practice for printed instructions: at least 8 pt.

import { expect, test } from "vitest";
import { manual } from "../../../language/outputs/manual/manual.ts";
import { outputs } from "../../../language/outputs/registry.ts";
import type { Block, Drawn } from "../../../language/outputs/pdf/print.ts";
import { wordings } from "../../../language/outputs/wording/languages.ts";
import { compiledExample, options } from "../outputs-of.ts";

const least = 8;

const drawingsIn = (blocks: readonly Block[]): Drawn[] =>
  blocks.flatMap((block): Drawn[] => {
    if (block.is === "drawing") return [block];
    if (block.is === "actions") return block.rows.flatMap(({ drawing }) => drawing ?? []);
    return block.is === "lying" ? drawingsIn(block.blocks) : [];
  });

const examples = [
  "mooring-winch/strip.strip",
  "reducer-family/reducer.strip",
  "valve-actuator/actuator.strip",
  "dairy-pump/pump.strip",
];

test.each(Object.keys(wordings))("%s: every text of every drawing of the manual, on A4 and on Letter", (tag) => {
  const small: string[] = [];
  let seen = 0;
  for (const example of examples)
    for (const paper of ["a4", "letter"] as const) {
      const with_ = { ...options, wording: wordings[tag]!, paper },
        input = compiledExample(example);
      for (const { svg, width, alt } of drawingsIn(manual.print!(manual.data(input, with_), with_).blocks)) {
        const scale = width / Number(/<svg[^>]*\swidth="([\d.]+)"/.exec(svg)![1]);
        for (const [, size] of svg.matchAll(/font-size="([\d.]+)"/g)) {
          seen++;
          if (Number(size) * scale < least - 0.05)
            small.push(`${example} ${paper} ${(Number(size) * scale).toFixed(1)} pt: ${alt.slice(0, 50)}`);
        }
      }
    }
  expect(seen).toBeGreaterThan(200);
  expect([...new Set(small)]).toEqual([]);
});

test("every table of every paper", () => {
  const input = compiledExample("mooring-winch/strip.strip");
  const tables = (blocks: readonly Block[]): number[] =>
    blocks.flatMap((block) => (block.is === "table" ? [block.size] : block.is === "lying" ? tables(block.blocks) : []));
  for (const output of outputs)
    if (output.print)
      for (const size of tables(output.print(output.data(input, options), options).blocks))
        expect(size, output.name).toBeGreaterThanOrEqual(least);
});
