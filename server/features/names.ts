// Definition, references, highlight and rename, all from what a name stands for.

import { DocumentHighlightKind, type DocumentHighlight, type Location, type Position, type Range, type WorkspaceEdit } from "vscode-languageserver";
import { reservedNames, type Checked } from "../../language/index.ts";
import { locationOf, offsetOf, rangeOf, uriOf } from "../places.ts";
import { occurrencesIn, occurrencesOf, symbolAt } from "../symbols.ts";

export function definition(checked: Checked, path: string, position: Position): Location | undefined {
  const at = symbolAt(checked, path, offsetOf(checked, path, position));
  return at && locationOf(checked, at.declaration);
}

export function references(checked: Checked, path: string, position: Position, withDeclaration: boolean): Location[] {
  const at = symbolAt(checked, path, offsetOf(checked, path, position));
  return at ? occurrencesOf(checked, at.symbol).filter((one) => withDeclaration || !one.declares).map((one) => locationOf(checked, one.span)) : [];
}

export function highlights(checked: Checked, path: string, position: Position): DocumentHighlight[] {
  const at = symbolAt(checked, path, offsetOf(checked, path, position));
  if (!at) return [];
  return occurrencesIn(checked, path).filter((one) => one.symbol === at.symbol).map((one) => ({ range: rangeOf(checked, one.span), kind: one.declares ? DocumentHighlightKind.Write : DocumentHighlightKind.Read }));
}

export function prepareRename(checked: Checked, path: string, position: Position): { range: Range; placeholder: string } | undefined {
  const at = symbolAt(checked, path, offsetOf(checked, path, position));
  return at && { range: rangeOf(checked, at.span), placeholder: at.id };
}

/** In every file, closed ones too. A text says why it cannot be done. */
export function rename(checked: Checked, path: string, position: Position, newName: string): WorkspaceEdit | string {
  const at = symbolAt(checked, path, offsetOf(checked, path, position)), name = newName.normalize("NFC");
  if (!at) return "Nothing here has a name that can be changed";
  if (!/^\p{L}[\p{L}\p{M}\p{N}]*(?:-[\p{L}\p{M}\p{N}]+)*$/u.test(name)) return `${newName} is no name: a letter, then letters, digits and single hyphens`;
  if (reservedNames.has(name)) return `${name} cannot be a name: the language needs it as a word`;
  const places = occurrencesOf(checked, at.symbol), files = new Set(places.map((one) => one.span.file));
  for (const file of files) if (occurrencesIn(checked, file).some((one) => one.id === name && one.declares && one.symbol !== at.symbol)) return `${name} is declared already`;
  const changes: NonNullable<WorkspaceEdit["changes"]> = {};
  for (const one of places) (changes[uriOf(one.span.file)] ??= []).push({ range: rangeOf(checked, one.span), newText: name });
  return { changes };
}
