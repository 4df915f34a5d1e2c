// A new name in every file that speaks of the thing, closed ones too; refused with the reason.

import { LSPErrorCodes, ResponseError, type WorkspaceEdit } from "vscode-languageserver";
import { rename, renameTarget } from "../../language/index.ts";
import { feature } from "../feature.ts";

export default feature({
  name: "rename",
  abilities: (session) => ({
    renameProvider: session.client.textDocument?.rename?.prepareSupport ? { prepareProvider: true } : true,
  }),
  start(session, answer) {
    session.connection.onPrepareRename(
      answer("Rename", ({ textDocument: { uri }, position }) => {
        const looked = session.see(uri),
          target = looked && renameTarget(looked.checked.project, looked.file, session.offset(looked.file, position));
        if (!looked || !target)
          throw new ResponseError(LSPErrorCodes.RequestFailed, "No name of the author's stands here");
        return {
          range: session.range(looked.checked, { file: target.file, start: target.start, end: target.end }),
          placeholder: target.id,
        };
      }),
    );
    session.connection.onRenameRequest(
      answer("Rename", ({ textDocument: { uri }, position, newName }): WorkspaceEdit => {
        const looked = session.see(uri, true);
        if (!looked) throw new ResponseError(LSPErrorCodes.RequestFailed, "No name of the author's stands here");
        const done = rename(looked.checked.project, looked.file, session.offset(looked.file, position), newName);
        if ("problem" in done) throw new ResponseError(LSPErrorCodes.RequestFailed, done.problem);
        return session.edit(looked.checked, done.edits);
      }),
    );
  },
});
