// Strings of the language as plain text: quotes and escapes gone, text blocks without their indentation.

import type { Token } from "../syntax/index.ts";

/** The text that a string token stands for. Anything else comes back as it is. */
export function textOf(token: Token): string {
  const { image } = token;
  if (image.startsWith('"""')) return blockText(image);
  if (!image.startsWith('"')) return token.text;
  const inner = image.slice(1, image.length > 1 && image.endsWith('"') ? -1 : undefined);
  return inner.includes("\\") ? inner.replace(/\\(["\\])/g, "$1") : inner;
}

/** `"""…"""`: the common indentation of its lines is stripped, and the empty first and last line. */
function blockText(image: string): string {
  const lines = image.slice(3, image.length >= 6 && image.endsWith('"""') ? -3 : undefined).split(/\r\n|\r|\n/);
  if (lines[0]!.trim() === "" && lines.length > 1) lines.shift();
  if (lines[lines.length - 1]!.trim() === "" && lines.length > 1) lines.pop();
  let indent = Infinity;
  for (const line of lines) if (line.trim() !== "") indent = Math.min(indent, line.length - line.trimStart().length);
  return lines.map((line) => line.slice(indent === Infinity ? 0 : indent).trimEnd()).join("\n");
}
