// Generated files say what their sources say. When this fails: npm run generate, then read what changed.

import { expect, test } from "vitest";
import { drift } from "../language/generate/main.ts";

test("every generated file is as `npm run generate` writes it", async () => {
  const changed = (await drift()).map(({ path, text, had }) => ({
    path,
    difference: firstDifference(had ?? "", text),
  }));
  expect(changed, "run: npm run generate").toEqual([]);
}, 300_000);

/** The first line that differs, as it is and as it should be. */
function firstDifference(
  had: string,
  text: string,
): { readonly line: number; readonly is: string; readonly shouldBe: string } {
  const a = had.split("\n"),
    b = text.split("\n");
  let line = 0;
  while (line < Math.max(a.length, b.length) && a[line] === b[line]) line++;
  return { line: line + 1, is: a[line] ?? "(end of file)", shouldBe: b[line] ?? "(end of file)" };
}
