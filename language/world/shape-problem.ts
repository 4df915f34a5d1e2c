// What is wrong with a file of JSON that a person wrote, in words that person knows: what is due at which place, and what stands there.

import type * as z from "zod";

type Issue = z.core.$ZodIssue;

/** Why a text is no JSON, with the line where the reader of JSON can tell it. */
export function jsonProblem(error: unknown): string {
  const says = (error as Error).message;
  if (/end of JSON input/.test(says)) return "it is no JSON: it ends too early";
  const line = /\(line (\d+) column \d+\)/.exec(says)?.[1];
  return `it is no JSON${line === undefined ? "" : ` in line ${line}`}: look for a missing or doubled comma, quote or bracket, or a comment`;
}

/** The first thing that is not as the shape asks. `value` is what was read. */
export function shapeProblem([first]: readonly Issue[], value: unknown): string {
  if (!first) return "it has not the shape that is due";
  const { issue, path } = inner(first),
    where = path.map(String).join(".");
  return `${where === "" ? "" : `${where}: `}${says(issue, at(value, path))}`;
}

/** Of several shapes the one that was begun, and what is wrong in that. */
function inner(issue: Issue, before: readonly PropertyKey[] = []): { issue: Issue; path: readonly PropertyKey[] } {
  const path = [...before, ...issue.path];
  if (issue.code !== "invalid_union") return { issue, path };
  const begun = issue.errors.find(([one]) => one && (one.path.length > 0 || one.code !== "invalid_type"));
  return begun ? inner(begun[0]!, path) : { issue, path };
}

function says(issue: Issue, there: unknown): string {
  switch (issue.code) {
    case "invalid_type":
      return `${wanted[issue.expected] ?? issue.expected} is due, and ${found(there)} stands there`;
    case "invalid_value":
      return `one of ${issue.values.map(String).join(", ")} is due, and ${found(there)} stands there`;
    case "invalid_union":
      return `${issue.errors
        .flatMap(([one]) => (one?.code === "invalid_type" ? [wanted[one.expected] ?? one.expected] : []))
        .join(" or ")} is due, and ${found(there)} stands there`;
    case "unrecognized_keys":
      return `${issue.keys.map((key) => `"${key}"`).join(", ")} ${issue.keys.length === 1 ? "is" : "are"} not known here`;
    case "invalid_key":
      return `${issue.issues[0]?.message ?? "another name"} is due as its name`;
    default:
      return issue.message;
  }
}

const wanted: Readonly<Record<string, string>> = {
  object: "a group in braces",
  record: "a group in braces",
  array: "a list in square brackets",
  string: "a text in quotes",
  number: "a number",
  boolean: "true or false",
};

function found(there: unknown): string {
  if (there === undefined) return "nothing";
  if (there === null) return "null";
  if (Array.isArray(there)) return "a list";
  if (typeof there === "object") return "a group in braces";
  const text = JSON.stringify(there);
  return text.length > 60 ? `${text.slice(0, 58)}…` : text;
}

const at = (value: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>((within, key) => (within as Readonly<Record<PropertyKey, unknown>> | undefined)?.[key], value);
