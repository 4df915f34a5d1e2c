// The remedies of the findings in a range, and all certain ones of the file at once.

import { CodeActionKind, type CodeAction, type Range, type TextEdit } from "vscode-languageserver";
import type { Checked, Fix } from "../../language/index.ts";
import { offsetOf, rangeOf, uriOf } from "../places.ts";
import { diagnosticsOf } from "./diagnostics.ts";

export function codeActions(checked: Checked, path: string, range: Range): CodeAction[] {
  const start = offsetOf(checked, path, range.start), end = offsetOf(checked, path, range.end), own = checked.findings.filter((f) => f.at.file === path), diagnostics = diagnosticsOf(checked, path);
  const actions: CodeAction[] = own.flatMap((finding, i) => {
    if (finding.at.start > end || finding.at.end < start) return [];
    return finding.fixes.map((fix): CodeAction => ({ title: fix.title, kind: CodeActionKind.QuickFix, diagnostics: [diagnostics[i]!], isPreferred: fix.certain, edit: { changes: changesOf(checked, [fix]) } }));
  });
  const certain = own.flatMap((finding) => finding.fixes.filter((fix) => fix.certain).slice(0, 1));
  if (certain.length > 0) actions.push({ title: `Mend all that is certain in this file (${certain.length})`, kind: CodeActionKind.SourceFixAll, edit: { changes: changesOf(checked, certain) } });
  return actions;
}

/** Edits that overlap an earlier one are left out: they are offered again once that one is in. */
function changesOf(checked: Checked, fixes: readonly Fix[]): Record<string, TextEdit[]> {
  const changes: Record<string, TextEdit[]> = {}, taken: { file: string; start: number; end: number }[] = [];
  for (const edit of fixes.flatMap((fix) => fix.edits)) {
    if (taken.some((t) => t.file === edit.file && edit.start < t.end && t.start < edit.end)) continue;
    taken.push(edit);
    (changes[uriOf(edit.file)] ??= []).push({ range: rangeOf(checked, edit), newText: edit.text });
  }
  return changes;
}
