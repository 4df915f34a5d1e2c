// A file or folder that gets another name: every `use`, photo and video that names it follows, and so do the paths of a file that moves.

import {
  DidCreateFilesNotification,
  DidDeleteFilesNotification,
  DidRenameFilesNotification,
  FileOperationPatternKind,
  type WorkspaceEdit,
} from "vscode-languageserver";
import { eachItem, relativeTo, textOf, type TextEdit } from "../../language/index.ts";
import { feature } from "../feature.ts";
import { isBelow, pathOf, resolvePath } from "../uris.ts";

const folders = { filters: [{ pattern: { glob: "**/*", matches: FileOperationPatternKind.folder } }] };

export default feature({
  name: "file renames",
  abilities: () => ({
    workspace: {
      fileOperations: {
        willRename: {
          filters: [
            {
              pattern: {
                glob: "**/*.{strip,jpg,jpeg,png,svg,webp,gif,mp4,webm,mov}",
                matches: FileOperationPatternKind.file,
              },
            },
            { pattern: { glob: "**/*", matches: FileOperationPatternKind.folder } },
          ],
        },
        didCreate: folders,
        didRename: folders,
        didDelete: folders,
      },
    },
  }),
  start(session, answer) {
    // Of a folder that came, went or moved the watcher of files may tell nothing.
    const again = (): void => {
      const changed = session.projects().filter((project) => project.reread());
      if (changed.length > 0) session.changed();
    };
    for (const type of [
      DidCreateFilesNotification.type,
      DidRenameFilesNotification.type,
      DidDeleteFilesNotification.type,
    ])
      session.connection.onNotification(type.method, again);
    session.connection.workspace.onWillRenameFiles(
      answer("File renames", ({ files }): WorkspaceEdit | null => {
        const moves = files.map(({ oldUri, newUri }) => [pathOf(oldUri), pathOf(newUri)] as const);
        const moved = (path: string): string => {
          const move = moves.find(([from]) => isBelow(path, from));
          return move ? move[1] + path.slice(move[0].length) : path;
        };
        const first = moves[0] && session.projectOf(moves[0][0]);
        if (!first) return null;
        const checked = { project: first.texts(true) },
          edits: TextEdit[] = [];
        for (const file of checked.project.files.values()) {
          const { tokens } = file.tree.scan,
            home = moved(file.path);
          eachItem(file.tree.items, ({ entry, first: at }) => {
            const token = tokens[at + 1];
            if (
              (entry?.word !== "use" && entry?.word !== "photo" && entry?.word !== "video") ||
              !token?.image.startsWith('"') ||
              token.image.startsWith('"""')
            )
              return;
            const written = textOf(token),
              target = resolvePath(file.path, written),
              to = moved(target);
            if (written === "" || (to === target && home === file.path)) return;
            const next = relativeTo(home, to);
            if (next !== written && resolvePath(home, written) !== to)
              edits.push({
                file: file.path,
                start: token.startOffset,
                end: token.endOffset! + 1,
                text: JSON.stringify(next),
              });
          });
        }
        return edits.length === 0 ? null : session.edit(checked, edits);
      }),
    );
  },
});
