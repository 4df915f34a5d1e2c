// Documents that nobody wrote: the computed refit of a file, which follows its source, and the page of a check.

import { TextDocumentContentRefreshRequest, type TextDocumentContentResult } from "vscode-languageserver";
import { checks, explainMarkdown, refitText } from "../../language/index.ts";
import { checkScheme, refitScheme } from "../../shared/protocol.ts";
import { feature } from "../feature.ts";

export default feature({
  name: "pages",
  abilities: (session) =>
    session.client.workspace?.textDocumentContent
      ? { workspace: { textDocumentContent: { schemes: [refitScheme, checkScheme] } } }
      : {},
  start(session, answer) {
    /** Refits that the client has asked for: told when their source changes. */
    const shown = new Set<string>();
    let timer: ReturnType<typeof setTimeout> | undefined;
    session.onChange.push(() => {
      clearTimeout(timer);
      if (shown.size > 0)
        timer = setTimeout(() => {
          if (!session.ended)
            for (const uri of shown)
              void session.connection.sendRequest(TextDocumentContentRefreshRequest.type, { uri }).catch(() => {
                shown.delete(uri);
              });
        }, 150);
    });
    session.connection.onRequest(
      "workspace/textDocumentContent",
      answer("Page", ({ uri }: { uri: string }): TextDocumentContentResult => {
        if (uri.startsWith(`${checkScheme}:`)) {
          const code = decodeURIComponent(uri.slice(checkScheme.length + 1)).replace(/^\/+|\.md$/g, ""),
            check = checks.find((one) => one.code === code);
          return { text: check ? explainMarkdown(check) : `There is no check ${code}\n` };
        }
        shown.add(uri);
        const source = decodeURIComponent(/\?([^#]*)/.exec(uri)?.[1] ?? ""),
          looked = session.look(source);
        if (!looked) return { text: "The source of this page is not open\n" };
        return { text: refitText(looked.checked, looked.path, session.units(looked.project)) };
      }),
    );
  },
});
