// Layout of a file, a range, several ranges, or the line just ended: the least edits, comments kept.

import type { FormattingOptions, Range, TextEdit } from "vscode-languageserver";
import { formatEdits } from "../../language/index.ts";
import { feature } from "../feature.ts";
import type { Seen, Session } from "../session.ts";

export default feature({
  name: "formatting",
  abilities: (session) => ({
    documentFormattingProvider: true,
    documentRangeFormattingProvider: session.client.textDocument?.rangeFormatting?.rangesSupport
      ? { rangesSupport: true }
      : true,
    documentOnTypeFormattingProvider: { firstTriggerCharacter: "}", moreTriggerCharacter: ["\n"] },
  }),
  start(session, answer) {
    session.connection.onDocumentFormatting(
      answer(
        "Layout",
        ({ textDocument: { uri } }: { textDocument: { uri: string }; options: FormattingOptions }): TextEdit[] => {
          const looked = session.see(uri);
          return looked ? edits(session, looked) : [];
        },
      ),
    );
    session.connection.onDocumentRangeFormatting(
      answer("Layout", ({ textDocument: { uri }, range }): TextEdit[] => {
        const looked = session.see(uri);
        return looked ? edits(session, looked, range) : [];
      }),
    );
    session.connection.onDocumentRangesFormatting(
      answer("Layout", ({ textDocument: { uri }, ranges }): TextEdit[] => {
        const looked = session.see(uri),
          all = new Map<string, TextEdit>();
        if (looked)
          for (const range of ranges)
            for (const edit of edits(session, looked, range)) all.set(JSON.stringify(edit.range), edit);
        return [...all.values()];
      }),
    );
    // The brace's own line, or the line above the new one; where the cursor is stays as it is.
    session.connection.onDocumentOnTypeFormatting(
      answer("Layout", ({ textDocument: { uri }, position, ch }): TextEdit[] => {
        const looked = session.see(uri);
        if (!looked) return [];
        const line = ch === "\n" ? position.line - 1 : position.line;
        if (line < 0) return [];
        const found = edits(session, looked, {
          start: { line, character: 0 },
          end: { line, character: ch === "\n" ? Number.MAX_SAFE_INTEGER : position.character },
        });
        return found.filter(
          ({ range }) =>
            range.start.line >= Math.max(0, line - 1) &&
            range.end.line <= line &&
            (range.end.line < position.line || range.end.character <= position.character),
        );
      }),
    );
  },
});

function edits(session: Session, { file, checked }: Seen, range?: Range): TextEdit[] {
  const found = range
    ? formatEdits(file.tree, { start: session.offset(file, range.start), end: session.offset(file, range.end) })
    : formatEdits(file.tree);
  return found.map(({ start, end, text }) => ({
    range: session.range(checked, { file: file.path, start, end }),
    newText: text,
  }));
}
