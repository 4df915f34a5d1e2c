// What stands under the pointer: a thing with what holds it, a figure in both systems, a word with its meaning, an act with the bench before and after.

import { MarkupKind, type Hover } from "vscode-languageserver";
import { hoverAt } from "../../language/index.ts";
import { feature } from "../feature.ts";

export default feature({
  name: "hover",
  abilities: () => ({ hoverProvider: true }),
  start(session, answer) {
    session.connection.onHover(
      answer("Hover", ({ textDocument: { uri }, position }): Hover | null => {
        const looked = session.watch(uri);
        if (!looked) return null;
        const { checked, file, project } = looked,
          found = hoverAt(checked, file, session.offset(file, position), project.settings, session.units(project));
        if (!found) return null;
        // A client without Markdown gets the text without its marks.
        const marks = session.client.textDocument?.hover?.contentFormat,
          asText = marks !== undefined && !marks.includes(MarkupKind.Markdown);
        return {
          contents: {
            kind: asText ? MarkupKind.PlainText : MarkupKind.Markdown,
            value: asText ? found.markdown.replace(/\\([\\`*_{}[\]()#+\-.!|<>~&])|\*+/g, "$1") : found.markdown,
          },
          range: session.range(checked, { file: file.path, start: found.start, end: found.end }),
        };
      }),
    );
  },
});
