// Where a name is declared, every place that speaks of it, and which of those change it.

import { DocumentHighlightKind, type DocumentHighlight, type Location, type LocationLink } from "vscode-languageserver";
import { mentionAt, mentionsIn, mentionsOf, type Mention } from "../../language/index.ts";
import { feature } from "../feature.ts";
import type { Seen, Session } from "../session.ts";

const spanOf = ({ file, start, end }: Mention): { file: string; start: number; end: number } => ({ file, start, end });

export default feature({
  name: "names",
  abilities: () => ({
    definitionProvider: true,
    declarationProvider: true,
    implementationProvider: true,
    referencesProvider: true,
    documentHighlightProvider: true,
  }),
  start(session, answer) {
    const mention = (looked: Seen | undefined, position: { line: number; character: number }): Mention | undefined =>
      looked && mentionAt(looked.checked.project, looked.file, session.offset(looked.file, position));
    const declared = (uri: string, position: { line: number; character: number }): Location[] | LocationLink[] => {
      const looked = session.see(uri),
        here = mention(looked, position);
      if (!looked || !here) return used(session, looked, position);
      const all = mentionsOf(looked.checked.project, here.symbol).filter((one) => one.role === "declared");
      if (session.client.textDocument?.definition?.linkSupport !== true)
        return all.map((one) => session.location(looked.checked, spanOf(one)));
      return all.map((one): LocationLink => {
        const source = looked.checked.project.files.get(one.file)!,
          { tokens } = source.tree.scan,
          whole = {
            file: one.file,
            start: tokens[one.item.first]!.startOffset,
            end: tokens[one.item.last]!.endOffset! + 1,
          };
        const { uri: targetUri, range: targetSelectionRange } = session.location(looked.checked, spanOf(one));
        return {
          originSelectionRange: session.range(looked.checked, spanOf(here)),
          targetUri,
          targetRange: session.range(looked.checked, whole),
          targetSelectionRange,
        };
      });
    };
    session.connection.onDefinition(
      answer("Definition", ({ textDocument, position }) => declared(textDocument.uri, position)),
    );
    session.connection.onDeclaration(
      answer("Declaration", ({ textDocument, position }) => declared(textDocument.uri, position)),
    );
    // The steps that touch it.
    session.connection.onImplementation(
      answer("Steps that touch it", ({ textDocument: { uri }, position }): Location[] => {
        const looked = session.see(uri, true),
          here = mention(looked, position);
        return looked && here
          ? mentionsOf(looked.checked.project, here.symbol)
              .filter((one) => one.role === "undone" || one.role === "remade")
              .map((one) => session.location(looked.checked, spanOf(one)))
          : [];
      }),
    );
    session.connection.onReferences(
      answer("References", ({ textDocument: { uri }, position, context }): Location[] => {
        const looked = session.see(uri, true),
          here = mention(looked, position);
        return looked && here
          ? mentionsOf(looked.checked.project, here.symbol)
              .filter((one) => context.includeDeclaration || one.role !== "declared")
              .map((one) => session.location(looked.checked, spanOf(one)))
          : [];
      }),
    );
    session.connection.onDocumentHighlight(
      answer("Highlight", ({ textDocument: { uri }, position }): DocumentHighlight[] => {
        const looked = session.see(uri),
          here = mention(looked, position);
        if (!looked || !here) return [];
        return mentionsIn(looked.checked.project, looked.file)
          .filter((one) => one.symbol === here.symbol)
          .map((one) => ({
            range: session.range(looked.checked, spanOf(one)),
            kind:
              one.role === "declared"
                ? DocumentHighlightKind.Text
                : one.role === "named"
                  ? DocumentHighlightKind.Read
                  : DocumentHighlightKind.Write,
          }));
      }),
    );
  },
});

/** The file that a `use` names. */
function used(session: Session, looked: Seen | undefined, position: { line: number; character: number }): Location[] {
  if (!looked) return [];
  const offset = session.offset(looked.file, position),
    use = looked.file.uses.find(({ at }) => at.start <= offset && offset <= at.end);
  return use && looked.checked.project.files.has(use.path)
    ? [session.location(looked.checked, { file: use.path, start: 0, end: 0 })]
    : [];
}
