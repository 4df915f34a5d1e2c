// The texts that the laws of the syntax are held to, and ways to damage them.

import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parse } from "../../language/syntax/index.ts";

const folder = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** Every word of the language, with every shape it has; nonsense as a procedure. */
export const everyWord = readFileSync(folder("every-word.strip"), "utf8");
/** A whole first procedure, of the simple words. */
export const coreExample = readFileSync(folder("core.strip"), "utf8");

/** Every example of the project, by path, in a fixed order. */
export const examples: readonly { readonly path: string; readonly text: string }[] = [
  folder("../../examples/"),
  folder("../procedures/"),
].flatMap(stripsIn);

function stripsIn(root: string): { path: string; text: string }[] {
  return readdirSync(root, { recursive: true, encoding: "utf8" })
    .filter((path) => path.endsWith(".strip"))
    .sort()
    .map((path) => ({ path, text: readFileSync(root + path, "utf8") }));
}

/** The text with one token taken out, for each of its tokens. */
export function* withOneTokenGone(text: string): Generator<string> {
  for (const { startOffset, endOffset } of parse(text).scan.tokens)
    yield text.slice(0, startOffset) + text.slice(endOffset! + 1);
}

/** Every `step`th beginning of a text. */
export function* prefixes(text: string, step = 1): Generator<string> {
  for (let end = 0; end <= text.length; end += step) yield text.slice(0, end);
}
