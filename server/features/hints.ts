// Short facts beside the lines; one setting turns them all off.

import { InlayHintKind, InlayHintRefreshRequest, type InlayHint } from "vscode-languageserver";
import { hintsIn } from "../../language/index.ts";
import { feature } from "../feature.ts";

export default feature({
  name: "hints",
  abilities: () => ({ inlayHintProvider: true }),
  start(session, answer) {
    let on = session.editor.hints;
    session.onChange.push(() => {
      if (on === session.editor.hints) return;
      on = session.editor.hints;
      if (session.client.workspace?.inlayHint?.refreshSupport)
        void session.connection.sendRequest(InlayHintRefreshRequest.type).catch(() => undefined);
    });
    session.connection.languages.inlayHint.on(
      answer("Hints", ({ textDocument: { uri }, range }): InlayHint[] => {
        const looked = session.editor.hints ? session.watch(uri) : undefined;
        if (!looked) return [];
        const { checked, file, project } = looked;
        return hintsIn(
          checked,
          file,
          session.offset(file, range.start),
          session.offset(file, range.end),
          session.units(project),
        ).map((hint): InlayHint => ({
          position: session.position(file.text, hint.at),
          label: hint.says,
          tooltip: hint.why,
          kind: InlayHintKind.Parameter,
          paddingLeft: true,
        }));
      }),
    );
  },
});
