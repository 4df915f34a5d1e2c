// Damaged texts: no exception, the same bytes back, and at most one finding for one mistake, at its place.

import { expect, test } from "vitest";
import { parse, print } from "../../language/syntax/index.ts";
import { coreExample, everyWord, examples, prefixes, withOneTokenGone } from "./texts.ts";

const own = [
  { path: "every-word.strip", text: everyWord },
  { path: "core.strip", text: coreExample },
];

test("text -> tree -> text is the same bytes, for every text and with any one token gone; what is gone costs at most one finding", () => {
  for (const { path, text } of [...own, ...examples]) {
    const whole = parse(text),
      several: string[] = [];
    expect(print(whole), path).toBe(text);
    let lost = 0;
    for (const damaged of withOneTokenGone(text)) {
      const tree = parse(damaged);
      if (print(tree) !== damaged) lost++;
      if (whole.errors.length === 0 && tree.errors.length > 1)
        several.push(tree.errors.map((error) => `${error.line + 1} ${error.says}`).join(" | "));
    }
    expect([lost, several], path).toEqual([0, []]);
  }
}, 120_000);

test("every beginning of a short text, and of a long one a beginning for each token (whole or cut in the middle), comes back whole", () => {
  for (const { path, text } of [...own, ...examples]) {
    let lost = 0,
      most = 0;
    for (const damaged of text.length < 6000 ? prefixes(text) : cuts(text)) {
      const tree = parse(damaged);
      if (print(tree) !== damaged) lost++;
      most = Math.max(most, tree.errors.length);
    }
    expect(lost, path).toBe(0);
    if (path === "core.strip") expect(most, "findings in a half-typed text").toBeLessThanOrEqual(2);
  }
}, 120_000);

function* cuts(text: string): Generator<string> {
  for (const { startOffset, endOffset, index } of parse(text).scan.tokens)
    yield text.slice(0, index % 2 === 0 ? endOffset! + 1 : (startOffset + endOffset! + 1) >> 1);
}

for (const { path, text } of own) {
  test(`one token gone, or written twice: at most one finding, at its line or its neighbours' (${path})`, () => {
    const { tokens } = parse(text).scan,
      wrong: string[] = [];
    for (const [i, token] of tokens.entries()) {
      const gone = text.slice(0, token.startOffset) + text.slice(token.endOffset! + 1),
        twice = `${text.slice(0, token.endOffset! + 1)} ${text.slice(token.startOffset)}`;
      for (const { errors } of [parse(gone), parse(twice)]) {
        const near = errors.every(
          ({ line }) => line >= (tokens[i - 1]?.endLine ?? 0) && line <= (tokens[i + 1]?.line ?? token.line),
        );
        if (errors.length > 1 || !near)
          wrong.push(
            `line ${token.line + 1}, ${token.image}: ${errors.map((error) => `${error.line + 1} ${error.says}`).join(" | ")}`,
          );
      }
    }
    expect(wrong).toEqual([]);
  });

  test(`a misspelt first word costs one finding at its line (${path})`, () => {
    const { tokens } = parse(text).scan,
      wrong: string[] = [];
    for (const token of tokens.filter((one) => one.opensLine && /^[a-z]{5,}$/.test(one.text))) {
      const { errors } = parse(
        `${text.slice(0, token.startOffset)}${token.image.slice(0, -1)}${text.slice(token.endOffset! + 1)}`,
      );
      if (errors.length > 1 || errors.some((error) => error.line !== token.line))
        wrong.push(
          `line ${token.line + 1}, ${token.image}: ${errors.map((error) => `${error.line + 1} ${error.says}`).join(" | ")}`,
        );
    }
    expect(wrong).toEqual([]);
  });
}
