// Writes the marks of the failing example of every check into its file, from what the check says today: `node
// tests/support/write-marks.ts [CODE …]`. For review: a mark is a promise, so read what changed.

import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { checks } from "../../language/checks/registry.ts";
import { defaultSettings } from "../../language/world/settings.ts";
import { checkText, type CheckedText } from "./check-text.ts";
import { isMarkLine, unmarked } from "./marked.ts";

const only = process.argv.slice(2);
for (const check of checks) {
  if (only.length > 0 && !only.includes(check.code)) continue;
  const path = fileURLToPath(new URL(`../../language/checks/${check.code}.ts`, import.meta.url)),
    source = readFileSync(path, "utf8");
  const literal = /\bfails: `\n([\s\S]*?)\n?( *)`,/.exec(source);
  if (!literal) {
    console.log(`${check.code}: no text of several lines after fails`);
    continue;
  }
  const lines = literal[1]!.split("\n").filter((line) => !isMarkLine(line.trimEnd())),
    indent = literal[1]!.match(/^ */)![0]!;
  const { found } = checkText(unmarked(check.fails), {
    ...defaultSettings,
    severity: check.severity === "off" ? { [check.code]: "warning" } : {},
  });
  if (found.length !== 1 || found[0]!.code !== check.code)
    console.log(`${check.code}: gives ${found.map((one) => `${one.code} (${one.says})`).join(", ") || "nothing"}`);
  const own = found.filter((one) => one.code === check.code);
  for (const mark of own.toReversed()) lines.splice(lineOf(mark, lines) + 1, 0, indent + written(mark));
  const next =
    source.slice(0, literal.index) +
    `fails: \`\n${lines.join("\n")}\n${literal[2]}\`,` +
    source.slice(literal.index + literal[0].length);
  if (next !== source) writeFileSync(path, next);
}

/** Where the marked line of a file stands in the literal, whose files begin with `#- NAME`. */
function lineOf(mark: CheckedText["found"][number], lines: readonly string[]): number {
  const headings = lines.flatMap((line, i) => (/^\s*#- (\S+)$/.exec(line)?.[1] === mark.file ? [i + 1] : []));
  return (headings[0] ?? 0) + mark.line;
}

function written(mark: CheckedText["found"][number]): string {
  const says = mark.says.replaceAll("\\", "\\\\").replaceAll("`", "\\`").replaceAll("${", "\\${"),
    width = mark.end - mark.start;
  if (mark.start === 0) return `#<${"^".repeat(width - 1)} ${says}`;
  if (mark.start === 1) return `#${"^".repeat(width)} ${says}`;
  return `#${" ".repeat(mark.start - 1)}${"^".repeat(width)} ${says}`;
}
