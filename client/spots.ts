// Places as the server tells them, to places of the editor.

import { Position, Range, Selection, TextEditorRevealType, Uri, ViewColumn, window, workspace } from "vscode";
import type { Point } from "../shared/protocol.ts";

export const positionOf = ({ line, character }: Point): Position => new Position(line, character);

/** Shows a place in the editor that shows its file already, else in the first column. */
export async function goTo(uri: string, at: Point, end: Point = at): Promise<void> {
  const target = Uri.parse(uri),
    shown = window.visibleTextEditors.find((editor) => editor.document.uri.toString() === target.toString());
  const document = shown?.document ?? (await workspace.openTextDocument(target)),
    range = new Range(positionOf(at), positionOf(end));
  const editor = await window.showTextDocument(document, {
    viewColumn: shown?.viewColumn ?? ViewColumn.One,
    selection: range,
  });
  editor.selection = new Selection(range.start, range.start);
  editor.revealRange(range, TextEditorRevealType.InCenterIfOutsideViewport);
}
