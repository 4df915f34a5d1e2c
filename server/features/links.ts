// `use`, photos and videos as links to their files, inside the folder only.

import type { DocumentLink } from "vscode-languageserver";
import { eachItem, textOf } from "../../language/index.ts";
import { feature } from "../feature.ts";
import { isBelow, resolvePath, uriOf } from "../uris.ts";

export default feature({
  name: "links",
  abilities: () => ({ documentLinkProvider: { resolveProvider: false } }),
  start(session, answer) {
    session.connection.onDocumentLinks(
      answer("Links", ({ textDocument: { uri } }): DocumentLink[] => {
        const looked = session.see(uri),
          links: DocumentLink[] = [];
        if (!looked) return [];
        const { file, checked, project, path } = looked,
          { tokens } = file.tree.scan;
        eachItem(file.tree.items, (item) => {
          const word = item.entry?.word,
            token = tokens[item.first + 1];
          if (
            (word !== "use" && word !== "photo" && word !== "video") ||
            !token?.image.startsWith('"') ||
            token.image.startsWith('"""')
          )
            return;
          const target = resolvePath(path, textOf(token));
          if (!isBelow(target, project.folder) || (!session.documents.has(target) && !session.files.isFile(target)))
            return;
          links.push({
            range: session.range(checked, { file: path, start: token.startOffset + 1, end: token.endOffset! }),
            target: session.documents.get(target)?.uri ?? uriOf(target),
          });
        });
        return links;
      }),
    );
  },
});
