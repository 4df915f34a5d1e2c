// Random lines of each computed order, all performed: the order is strong enough. The printed line is one of them.

import { readFileSync, readdirSync, statSync } from "node:fs";
import { join, posix } from "node:path";
import { expect, test } from "vitest";
import { isLine } from "../../../language/bench/refit/freedom.ts";
import type { Performance } from "../../../language/bench/trace.ts";
import { checkProject } from "../../../language/workspace/check-project.ts";
import type { World } from "../../../language/world/world.ts";
import { firstRefusedLine, performLine } from "./stage.ts";

const root = new URL("../../../", import.meta.url).pathname;
const world: World = {
  read: (path) => {
    try {
      return { text: readFileSync(join(root, path), "utf8") };
    } catch {
      return { problem: "missing" };
    }
  },
  exists: () => true,
  inside: () => true,
  resolve: (from, relative) => posix.join(posix.dirname(from), relative),
};
const stripsIn = (folder: string): string[] =>
  readdirSync(join(root, folder))
    .filter((name) => name.endsWith(".strip"))
    .map((name) => `${folder}/${name}`);
/** Every machine that there is; of the mistakes the strip is refused already. */
const files = [
  ...readdirSync(join(root, "examples"))
    .filter((name) => name !== "mistakes" && statSync(join(root, "examples", name)).isDirectory())
    .flatMap((name) => stripsIn(`examples/${name}`)),
  ...["tests/procedures", "tests/sequencing", "tests/real-machines/cases"].flatMap(stripsIn),
];

/** Each procedure once, however many files reach it. */
const found = new Map<string, Performance>();
for (const file of files)
  for (const performance of checkProject(world, [file]).performances) {
    if (performance.order && performance.order.ops.length > 0)
      found.set(`${performance.procedure.at.file} ${performance.procedure.id} ${performance.model.build}`, performance);
  }
const LINES = 1000;

test("there are procedures to try", () => expect(found.size).toBeGreaterThan(5));

for (const [name, performance] of found) {
  const shown = name.trim();
  test(`${shown}: the printed line is a line of the order, and every op is in it`, () => {
    expect(isLine(performance.order!, performance.order!.line)).toBe(true);
    expect(performLine(performance, performance.order!.line).map((p) => p.rule)).toEqual([]);
  });
  test(`${shown}: ${LINES} random lines are performed without a word`, { timeout: 60_000 }, () => {
    const refused = firstRefusedLine(performance, LINES);
    expect(
      refused && {
        rule: refused.problem.rule,
        about: refused.problem.about.map((t) => performance.model.things[t]?.id),
        words: refused.problem.reasons.flatMap((r) => r.words),
        line: refused.line,
      },
    ).toBeUndefined();
  });
}
