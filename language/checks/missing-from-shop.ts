// Names of tools and consumables that no file declares, worded alike. Each name is said once a file, at its first line.

import type { Project, SourceFile } from "../names/project.ts";
import type { Fix } from "../findings/finding.ts";
import type { Say } from "./check.ts";
import { nearestName } from "./near-names.ts";
import { surveyOf } from "./survey-of-names.ts";
import { declaredUnused, linkOf, useAnswer } from "./unused-files.ts";

export function missingFrom(
  project: Project,
  file: SourceFile,
  due: "tool" | "stores",
  word: "tool" | "consumable",
  say: Say,
): void {
  const said = new Set<string>();
  for (const unknown of surveyOf(project, file).unknown) {
    if (unknown.due !== due || unknown.is !== undefined || unknown.pieces !== undefined || said.has(unknown.text))
      continue;
    said.add(unknown.text);
    const at = { file: file.path, start: unknown.start, end: unknown.end },
      near = nearestName(unknown.text, unknown.candidates),
      fixes: Fix[] = [];
    const other = declaredUnused(project, file, unknown);
    if (other) fixes.push(other.fix);
    if (near !== undefined) fixes.push({ title: `Write ${near}`, edits: [{ ...at, text: near }], certain: false });
    fixes.push({
      title: `Declare ${word} ${unknown.text}`,
      edits: [
        {
          file: file.path,
          start: file.text.length,
          end: file.text.length,
          text: `${file.text.endsWith("\n") ? "" : "\n"}${word} ${unknown.text}\n`,
        },
      ],
      certain: false,
    });
    const says = `${unknown.text} is no ${word} that this file or any that it uses declares${near === undefined ? "" : `, but ${near} is`}`;
    say({
      at,
      says:
        other === undefined ? says : `${unknown.text} is declared in ${other.written}, which this file does not use`,
      // In files that hang together one declaration answers.
      answer: useAnswer(project, file, unknown) ?? { key: `${unknown.text} ${linkOf(project, file.path)}` },
      fixes,
    });
  }
}
