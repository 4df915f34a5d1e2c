// Names of tools and consumables that no file declares, worded alike. Each name is said once a file, at its first line.

import type { Project, SourceFile } from "../names/project.ts";
import type { Fix } from "../findings/finding.ts";
import type { Draft } from "./check.ts";
import { nearestName } from "./near-names.ts";
import { surveyOf } from "./survey-of-names.ts";

export function missingFrom(
  project: Project,
  file: SourceFile,
  due: "tool" | "stores",
  word: "tool" | "consumable",
): Draft[] {
  const found: Draft[] = [],
    said = new Set<string>();
  for (const unknown of surveyOf(project, file).unknown) {
    if (unknown.due !== due || unknown.is !== undefined || unknown.pieces !== undefined || said.has(unknown.text))
      continue;
    said.add(unknown.text);
    const at = { file: file.path, start: unknown.start, end: unknown.end },
      near = nearestName(unknown.text, unknown.candidates),
      fixes: Fix[] = [];
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
    found.push({
      at,
      says: `${unknown.text} is no ${word} that this file or any that it uses declares${near === undefined ? "" : `, but ${near} is`}`,
      fixes,
    });
  }
  return found;
}
