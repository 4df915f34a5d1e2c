// Damaged texts: no exception, the same bytes back, and at most one finding for one mistake, at its place.

import { expect, test } from "vitest";
import { parse, print } from "../../language/syntax/index.ts";
import { coreExample, everyWord, examples, prefixes, withOneTokenGone } from "./texts.ts";

const own = [{ path: "every-word.strip", text: everyWord }, { path: "core.strip", text: coreExample }];

test("text -> tree -> text is the same bytes, for every text and with any one token gone", () => {
  for (const { path, text } of [...own, ...examples]) {
    expect(print(parse(text)), path).toBe(text);
    let lost = 0;
    for (const damaged of withOneTokenGone(text)) if (print(parse(damaged)) !== damaged) lost++;
    expect(lost, path).toBe(0);
  }
}, 120_000);

test("every beginning of the first example, and many of every other, parse and come back whole", () => {
  for (const { path, text } of [...own, ...examples]) {
    let lost = 0, most = 0;
    for (const damaged of prefixes(text, text === coreExample ? 1 : 7)) {
      const tree = parse(damaged);
      if (print(tree) !== damaged) lost++;
      most = Math.max(most, tree.errors.length);
    }
    expect(lost, path).toBe(0);
    if (path === "core.strip") expect(most, "findings in a half-typed text").toBeLessThanOrEqual(2);
  }
}, 120_000);

for (const { path, text } of own) {
  test(`one token gone, or written twice: at most one finding, at its line or its neighbours' (${path})`, () => {
    const { tokens } = parse(text).scan, wrong: string[] = [];
    for (const [i, token] of tokens.entries()) {
      const gone = text.slice(0, token.startOffset) + text.slice(token.endOffset! + 1), twice = `${text.slice(0, token.endOffset! + 1)} ${text.slice(token.startOffset)}`;
      for (const { errors } of [parse(gone), parse(twice)]) {
        const near = errors.every(({ line }) => line >= (tokens[i - 1]?.endLine ?? 0) && line <= (tokens[i + 1]?.line ?? token.line));
        if (errors.length > 1 || !near) wrong.push(`line ${token.line + 1}, ${token.image}: ${errors.map((error) => `${error.line + 1} ${error.says}`).join(" | ")}`);
      }
    }
    expect(wrong).toEqual([]);
  });

  test(`a misspelt first word costs one finding at its line (${path})`, () => {
    const { tokens } = parse(text).scan, wrong: string[] = [];
    for (const token of tokens.filter((one) => one.opensLine && /^[a-z]{5,}$/.test(one.text))) {
      const { errors } = parse(`${text.slice(0, token.startOffset)}${token.image.slice(0, -1)}${text.slice(token.endOffset! + 1)}`);
      if (errors.length > 1 || errors.some((error) => error.line !== token.line)) wrong.push(`line ${token.line + 1}, ${token.image}: ${errors.map((error) => `${error.line + 1} ${error.says}`).join(" | ")}`);
    }
    expect(wrong).toEqual([]);
  });
}
