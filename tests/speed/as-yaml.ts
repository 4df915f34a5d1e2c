// Plain values as YAML, as a shop writes it: a key a line at the top, each item of a list on one line in braces. With a key a line all
// through it takes six times the lines and, within the noise, the same time to read.

import type { Content } from "./make-procedures.ts";

/** `content` as one YAML document; what the top keys hold is a value, a list or a record. */
export function asYaml(content: { readonly [key: string]: Content }): string {
  const out: string[] = [];
  for (const [key, value] of Object.entries(content)) {
    if (isList(value) && value.some((one) => one instanceof Object))
      out.push(`${key}:`, ...value.map((one) => `  - ${inBraces(one)}`));
    else out.push(`${key}: ${inBraces(value)}`);
  }
  return `${out.join("\n")}\n`;
}

const isList = (value: Content): value is readonly Content[] => Array.isArray(value);

function inBraces(value: Content): string {
  if (isList(value)) return `[${value.map(inBraces).join(", ")}]`;
  if (value instanceof Object)
    return `{ ${Object.entries(value)
      .map(([key, one]) => `${key}: ${inBraces(one)}`)
      .join(", ")} }`;
  // Quoted where the plain form would end early or be a number.
  return typeof value === "number" || /^[A-Za-z0-9][\w.· -]*$/.test(value) ? String(value) : JSON.stringify(value);
}
