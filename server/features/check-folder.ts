// The check of a folder as text, for the task of the client: the same lines as the command line prints.

import { codeOf, findingsAsText, reportOf } from "../../language/index.ts";
import { checkFolderRequest, type CheckFolderAnswer, type CheckFolderParams } from "../../shared/protocol.ts";
import { feature } from "../feature.ts";
import { baseName, isBelow, pathOf } from "../uris.ts";

export default feature({
  name: "check of a folder",
  start(session, answer) {
    session.connection.onRequest(
      checkFolderRequest,
      answer(
        "The check of the folder",
        async ({ uri, strict }: CheckFolderParams, token): Promise<CheckFolderAnswer | null> => {
          const folder = pathOf(uri).replace(/(?<=.)\/$/, ""),
            project = session.projects().find((one) => one.folder === folder);
          if (!project) return null;
          // What was written by another program a moment ago has not been told of yet.
          if (project.reread()) session.changed();
          while (!project.whole() && !token.isCancellationRequested)
            await project.complete(() => token.isCancellationRequested);
          const checked = project.whole(),
            settings = project.settingsFile();
          if (!checked) return null;
          const report = reportOf(
            settings
              ? {
                  ...checked,
                  findings: [...checked.findings, ...settings.findings],
                  unreadable: [
                    ...checked.unreadable,
                    ...(settings.problem === undefined ? [] : [{ path: settings.path, says: settings.problem }]),
                  ],
                }
              : checked,
            (path) => (isBelow(path, folder) ? path.slice(folder.length).replace(/^\//, "") : baseName(path)),
            new Map(settings ? [[settings.path, settings.text]] : []),
          );
          return { text: findingsAsText(report, { colour: true, quiet: false }), code: codeOf(report, strict) };
        },
      ),
    );
  },
});
