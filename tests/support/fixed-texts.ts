// The texts that a file of ours holds, as a reader would see them: string literals and the fixed pieces of templates.

import { readFileSync } from "node:fs";

/** Each with the line that it begins in. Comments, imports and what stands in `${…}` as code are left out; texts in it are not. */
export function fixedTexts(path: string): { readonly text: string; readonly line: number }[] {
  const source = readFileSync(path, "utf8").replace(/^import\b[^;]*;$/gm, (all) => all.replace(/[^\n]/g, " ")),
    found: { text: string; line: number }[] = [],
    /** Open templates: how many braces are open in the code of each. */
    braces: number[] = [];
  let at = 0;
  const lineOf = (offset: number): number => source.slice(0, offset).split("\n").length;
  const template = (): void => {
    const start = at;
    while (at < source.length) {
      if (source[at] === "\\") at += 2;
      else if (source[at] === "`" || source.startsWith("${", at)) break;
      else at++;
    }
    found.push({ text: unescaped(source.slice(start, at)), line: lineOf(start) });
    if (source[at] === "`") at++;
    else {
      at += 2;
      braces.push(0);
    }
  };
  while (at < source.length) {
    const sign = source[at]!;
    if (source.startsWith("//", at)) at = end(source.indexOf("\n", at), source);
    else if (source.startsWith("/*", at)) at = end(source.indexOf("*/", at), source) + 2;
    else if (sign === '"') {
      const match = /"((?:\\.|[^"\\\n])*)"/y;
      match.lastIndex = at;
      const text = match.exec(source)?.[1] ?? "";
      found.push({ text: unescaped(text), line: lineOf(at) });
      at += text.length + 2;
    } else if (sign === "`") {
      at++;
      template();
    } else if (sign === "{" && braces.length > 0) {
      braces[braces.length - 1]!++;
      at++;
    } else if (sign === "}" && braces.length > 0) {
      at++;
      if (braces[braces.length - 1] === 0) {
        braces.pop();
        template();
      } else braces[braces.length - 1]!--;
    } else at++;
  }
  return found.filter(({ text }) => text.trim() !== "");
}

const end = (found: number, source: string): number => (found < 0 ? source.length : found);

const unescaped = (text: string): string =>
  text
    .replace(/\\u([0-9a-fA-F]{4})/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)))
    .replace(/\\(.)/g, "$1");
