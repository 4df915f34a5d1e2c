// Colours beyond the grammar's: whole, a range, or what changed since the last answer.

import { SemanticTokensBuilder } from "vscode-languageserver";
import { colouredTokens, tokenModifiers, linesOf, tokenTypes, type Lines } from "../../language/index.ts";
import { toPosition } from "../documents.ts";
import { feature } from "../feature.ts";
import type { Seen, Session } from "../session.ts";

const typeNumbers = new Map(tokenTypes.map((type, i) => [type, i])),
  modifierBits = new Map(tokenModifiers.map((modifier, i) => [modifier, 1 << i]));

export default feature({
  name: "colours",
  abilities: () => ({
    semanticTokensProvider: {
      legend: { tokenTypes: [...tokenTypes], tokenModifiers: [...tokenModifiers] },
      full: { delta: true },
      range: true,
    },
  }),
  start(session, answer) {
    /** The last answer of each open document, so that only what changed is sent. */
    const builders = new Map<string, SemanticTokensBuilder>();
    session.onChange.push(() => {
      const open = new Set([...session.documents.values()].map(({ uri }) => uri));
      for (const uri of builders.keys()) if (!open.has(uri)) builders.delete(uri);
    });
    const builderOf = (uri: string): SemanticTokensBuilder => {
      let builder = builders.get(uri);
      if (!builder) builders.set(uri, (builder = new SemanticTokensBuilder()));
      return builder;
    };
    session.connection.languages.semanticTokens.on(
      answer("Colours", ({ textDocument: { uri } }) => {
        const looked = session.see(uri),
          builder = new SemanticTokensBuilder();
        if (!looked) return { data: [] };
        builders.set(uri, builder);
        fill(session, looked, builder);
        return builder.build();
      }),
    );
    session.connection.languages.semanticTokens.onDelta(
      answer("Colours", ({ textDocument: { uri }, previousResultId }) => {
        const looked = session.see(uri),
          builder = builderOf(uri);
        if (!looked) return { data: [] };
        builder.previousResult(previousResultId);
        fill(session, looked, builder);
        return builder.buildEdits();
      }),
    );
    session.connection.languages.semanticTokens.onRange(
      answer("Colours", ({ textDocument: { uri }, range }) => {
        const looked = session.see(uri),
          builder = new SemanticTokensBuilder();
        if (looked)
          fill(
            session,
            looked,
            builder,
            session.offset(looked.file, range.start),
            session.offset(looked.file, range.end),
          );
        return builder.build();
      }),
    );
  },
});

function fill(
  session: Session,
  { checked, file }: Seen,
  builder: SemanticTokensBuilder,
  from?: number,
  to?: number,
): void {
  const lines: Lines = linesOf(file.text);
  for (const { start, end, type, modifiers } of colouredTokens(checked.project, file, from, to)) {
    const at = toPosition(file.text, start, session.encoding, lines),
      length =
        session.encoding === "utf-16"
          ? end - start
          : toPosition(file.text, end, session.encoding, lines).character - at.character;
    builder.push(
      at.line,
      at.character,
      length,
      typeNumbers.get(type)!,
      modifiers.reduce((bits, modifier) => bits | modifierBits.get(modifier)!, 0),
    );
  }
}
