// While a line is typed: how the word goes on, and which part of it the cursor is in.

import { MarkupKind, type SignatureHelp } from "vscode-languageserver";
import { slotAt } from "../../language/index.ts";
import { feature } from "../feature.ts";

export default feature({
  name: "signatures",
  abilities: () => ({ signatureHelpProvider: { triggerCharacters: [" "], retriggerCharacters: [","] } }),
  start(session, answer) {
    session.connection.onSignatureHelp(
      answer("How the line goes on", ({ textDocument: { uri }, position }): SignatureHelp | null => {
        const looked = session.see(uri),
          slot = looked && slotAt(looked.file.tree, session.offset(looked.file, position)),
          entry = slot?.item?.entry;
        if (!slot || !entry || slot.next.length === 0) return null;
        // What may come next, in the words of the shape: a part of the label each.
        const parts = [
          ...new Set(
            slot.next
              .filter((leaf) => leaf.is !== "sign")
              .map((leaf) =>
                leaf.is === "word"
                  ? leaf.text
                  : leaf.is === "unit" || leaf.is === "kind"
                    ? leaf.text
                    : leaf.slot || leaf.is,
              ),
          ),
        ].slice(0, 8);
        const label = `${entry.example}`;
        return {
          signatures: [
            {
              label,
              documentation: {
                kind: MarkupKind.Markdown,
                value: `${entry.meaning}${parts.length > 0 ? `\n\nNext: ${parts.join(", ")}` : ""}`,
              },
              parameters: [],
            },
          ],
          activeSignature: 0,
          activeParameter: 0,
        };
      }),
    );
  },
});
