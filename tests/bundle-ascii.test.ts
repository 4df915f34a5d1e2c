// A bundle is written with the signs of ASCII alone: the engine keeps a text with any other sign at two bytes a sign.

import { runInNewContext } from "node:vm";
import { expect, test } from "vitest";
// @ts-expect-error a script of the build, without types
import { asAscii } from "../.build/ascii.mjs";

const ascii = asAscii as (program: string) => string;

test("patterns with other signs match what they matched", () => {
  const program =
    '[/^\\d+ ?(?:N·m|°C|µF)$/.test("24 N·m"), /[×±]/.test("3 ± 1"), /^[^µ]$/.test("µ"), /^[😀x]$/u.test("😀"), "Ω 😀", `é`]';
  const written = ascii(program);
  // oxlint-disable-next-line no-control-regex
  expect(written).toMatch(/^[\0-\x7f]*$/);
  expect([...(runInNewContext(written) as unknown[])]).toEqual([true, true, false, true, "Ω 😀", "é"]);
});

test("a sign behind a backslash has no other spelling and is refused", () => {
  expect(() => ascii("/\\µ/")).toThrow(/cannot be written by its number/);
});
