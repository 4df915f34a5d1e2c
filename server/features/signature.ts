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
                  : `<${leaf.is === "unit" || leaf.is === "kind" ? leaf.text : leaf.slot || leaf.is}>`,
              ),
          ),
        ].slice(0, 8);
        if (parts.length === 0) return null;
        // The line as it stands, and behind it what is due: that is the part the cursor is in.
        const { scan } = looked.file.tree,
          typed = scan.text.slice(scan.tokens[slot.item!.first]!.startOffset, slot.from).trim().replace(/\s+/g, " "),
          due = parts.join(" | "),
          byOffset =
            session.client.textDocument?.signatureHelp?.signatureInformation?.parameterInformation
              ?.labelOffsetSupport === true;
        const label = `${typed} ${due}`;
        return {
          signatures: [
            {
              label,
              documentation: { kind: MarkupKind.Markdown, value: `${entry.meaning}\n\n\`${entry.example}\`` },
              parameters: [{ label: byOffset ? [typed.length + 1, label.length] : due }],
            },
          ],
          activeSignature: 0,
          activeParameter: 0,
        };
      }),
    );
  },
});
