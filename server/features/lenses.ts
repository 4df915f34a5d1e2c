// Above each step what undoes it, above each procedure how many findings are open.

import { CodeLensRefreshRequest, type CodeLens } from "vscode-languageserver";
import { ownPerformances, stepRefits } from "../../language/index.ts";
import { commandNames } from "../../shared/protocol.ts";
import { feature } from "../feature.ts";

export default feature({
  name: "lenses",
  abilities: () => ({ codeLensProvider: { resolveProvider: false } }),
  start(session, answer) {
    let on = session.editor.lenses;
    session.onChange.push(() => {
      if (on === session.editor.lenses) return;
      on = session.editor.lenses;
      if (session.client.workspace?.codeLens?.refreshSupport)
        void session.connection.sendRequest(CodeLensRefreshRequest.type).catch(() => undefined);
    });
    session.connection.onCodeLens(
      answer("Lenses", ({ textDocument: { uri } }): CodeLens[] => {
        const looked = session.editor.lenses ? session.look(uri) : undefined,
          lenses: CodeLens[] = [];
        if (!looked) return [];
        const { checked, path, project } = looked,
          named = (command: string): string => (session.start.commands ? command : "");
        for (const performance of ownPerformances(checked, path)) {
          const { procedure } = performance,
            open = checked.findings.filter(
              ({ at, severity }) =>
                severity !== "hint" &&
                at.file === path &&
                procedure.whole.start <= at.start &&
                at.end <= procedure.whole.end,
            ).length;
          const range = session.range(checked, procedure.at);
          lenses.push({
            range,
            command: {
              title: `${open === 1 ? "1 finding" : `${open} findings`} open`,
              command: named(commandNames.showFindings),
              arguments: [],
            },
          });
          if (performance.refit.length > 0)
            lenses.push({
              range,
              command: {
                title: `Way back: ${performance.refit.length} acts, computed`,
                command: named(commandNames.showRefit),
                arguments: [uri],
              },
            });
          for (const step of stepRefits(performance, session.units(project))) {
            if (
              step.at.file !== path ||
              step.at.start < procedure.whole.start ||
              step.at.end > procedure.whole.end ||
              step.groups.length === 0
            )
              continue;
            lenses.push({
              range: session.range(checked, step.at),
              command: {
                title: `Undone by ${step.groups.join(", ")}`,
                command: named(commandNames.showRefit),
                arguments: [uri, session.range(checked, step.at).start],
              },
            });
          }
        }
        return lenses;
      }),
    );
  },
});
