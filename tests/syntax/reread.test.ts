// After an edit only the block around it is read again: the tree is the one that a fresh reading gives, whatever is typed, and nothing of
// the tree before is changed.

import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { expect, test } from "vitest";
import { parse, type Tree } from "../../language/syntax/index.ts";
import { reread } from "../../language/syntax/reread.ts";
import { StripRules } from "../../language/syntax/rules.ts";
import { coreExample, everyWord, examples } from "./texts.ts";

/** Numbers from a fixed seed. */
function dice(seed: number): (below: number) => number {
  let state = seed >>> 0;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

const typed = [
  " ", "\n", "\r\n", "\t", "x", "1", "12", "N·m", " 10 N·m", ",", ".", "-", "x\n4", "{", "}", "{ }", "\n}\n", '"', '""', '"""', "#", "# note\n",
  "undo", "\n    undo a, b\n", "\n  step \"Do\" {\n    remove p1\n  }\n", "step", "part q { mass 2 kg }\n", "if late ", "unit", "optional", "M8x30", "°", "°C",
  "safe", "or", "by 2 people", "é", "\u00a0", "1) ", "- ", "<<<<<<<\n",
]; // prettier-ignore

/** One edit, as a hand makes it: something typed, taken out, written twice, or lines that change their place. */
function edited(text: string, roll: (below: number) => number): string {
  const at = roll(text.length + 1),
    to = Math.min(text.length, at + 1 + roll(roll(4) === 0 ? 80 : 6)),
    line = text.lastIndexOf("\n", at) + 1,
    below = text.indexOf("\n", at) + 1 || text.length;
  switch (roll(7)) {
    case 0:
      return text.slice(0, at) + text.slice(to);
    case 1:
      return text.slice(0, at) + text.slice(at, to) + text.slice(at);
    case 2:
      return text.slice(0, line) + text.slice(below);
    case 3:
      return text.slice(0, line) + text.slice(line, below) + text.slice(line);
    case 4:
      return text.slice(0, line) + " ".repeat(roll(4)) + text.slice(line);
    default:
      return text.slice(0, at) + typed[roll(typed.length)]! + text.slice(at);
  }
}

/** Compared as values, and fast: what a token is made of is the same object for all of its kind. */
function same(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  if ("PATTERN" in a) return false;
  const keys = Object.keys(a);
  return (
    Array.isArray(a) === Array.isArray(b) &&
    keys.length === Object.keys(b).length &&
    keys.every((key) => same((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]))
  );
}

const texts = [{ path: "every-word.strip", text: everyWord }, { path: "core.strip", text: coreExample }, ...examples];

test("random edits, one on top of the other and taken back again: tree, tokens, comments and errors are those of a fresh reading", () => {
  const rules = new StripRules();
  parse("");
  let again = 0,
    all = 0;
  for (const [i, { path, text: start }] of texts.entries()) {
    const roll = dice(i + 1);
    let tree: Tree = parse(start),
      before = start;
    for (let k = 0; k < 60; k++) {
      // Many a mistake is mended by the next key: the text goes back now and then, to one that has none.
      const text = roll(2) === 0 ? before : edited(tree.scan.text, roll),
        fresh = parse(text),
        older = tree.errors.length === 0 ? JSON.stringify(tree.items) : "";
      before = roll(3) > 0 ? start : tree.scan.text;
      const next = parse(text, "file", tree);
      all++;
      if (tree.scan.text !== text && reread(tree, text, rules)) again++;
      if (!same(next, fresh)) expect(next, `${path}, edit ${k}`).toEqual(fresh);
      if (older !== "") expect(JSON.stringify(tree.items) === older, `${path}, edit ${k}: the tree before`).toBe(true);
      tree = next;
    }
  }
  // Else this would hold nothing.
  expect(again / all).toBeGreaterThan(0.3);
}, 60_000);

test("an act that is typed leaves the items and tokens in front of it as the very same objects, and gives new ones where they moved", () => {
  const tree = parse(coreExample),
    at = coreExample.lastIndexOf("\n    undo "),
    text = `${coreExample.slice(0, at)}\n    note "Look"${coreExample.slice(at)}`,
    next = parse(text, "file", tree);
  expect(next).toEqual(parse(text));
  expect(next.items[0]).toBe(tree.items[0]);
  expect(next.scan.tokens[5]).toBe(tree.scan.tokens[5]);
  expect(next.scan.tokens.at(-1)).not.toBe(tree.scan.tokens.at(-1));
});

test("texts of before are not held by what was typed into them", () => {
  setFlagsFromString("--expose-gc");
  const collect = runInNewContext("gc") as () => void,
    held = (): number => {
      collect();
      return process.memoryUsage().heapUsed / 1e6;
    };
  const filler = `# ${"a comment of some length ".repeat(200)}\n`.repeat(200),
    acts = Array.from({ length: 60 }, (_, i) => `    note "${"n".repeat(20)}${i}"\n`);
  const start = `${filler}procedure strip "Strip" for rig {\n  step "All" {\n${acts.join("")}  }\n}\n`;
  let tree = parse(start);
  const before = held();
  for (let i = 0; i < 50; i++) {
    const text = tree.scan.text.replace(`${"n".repeat(20)}${i}"`, `a longer text of its own, the ${i}th"`);
    tree = parse(text, "file", tree);
  }
  expect(tree).toEqual(parse(tree.scan.text));
  // Fifty texts of a megabyte each stood there one after the other.
  expect(held() - before).toBeLessThan(10);
});
