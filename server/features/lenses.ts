// Above each step what undoes it, above each procedure how many findings are open, above a unit and what a library declares how many
// procedures use it.

import { CodeLensRefreshRequest, type CodeLens } from "vscode-languageserver";
import { mentionsIn, mentionsOf, ownPerformances, placeAt, stepRefits, type Span } from "../../language/index.ts";
import { commandNames } from "../../shared/protocol.ts";
import { feature } from "../feature.ts";
import type { Seen } from "../session.ts";

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
        // Of a folder that is not all read yet the number would be too small.
        if (project.whole() === checked)
          for (const { declaration, procedures } of usersOf(looked))
            lenses.push({
              range: session.range(checked, declaration),
              command: {
                title: procedures === 1 ? "Used in 1 procedure" : `Used in ${procedures} procedures`,
                command: named(commandNames.showUses),
                arguments: [uri, session.range(checked, declaration).start],
              },
            });
        return lenses;
      }),
    );
  },
});

const counted: ReadonlySet<string> = new Set(["unit", "tool", "consumable", "procedure"]);

/** What a file declares at its top for others, and how many other procedures name it; of a unit, how many are for it. */
function usersOf({ checked: { project }, file }: Seen): { declaration: Span; procedures: number }[] {
  return file.declarations
    .filter(({ word }) => counted.has(word))
    .flatMap((one) => {
      const own = mentionsIn(project, file).find(
        (mention) => mention.role === "declared" && mention.item === one.item && mention.id === one.id,
      );
      if (!own) return [];
      const procedures = new Set<string>();
      for (const mention of mentionsOf(project, own.symbol)) {
        if (mention.role === "declared") continue;
        const tree = project.files.get(mention.file)!.tree,
          [top] = placeAt(tree, mention.start).path;
        if (top?.entry?.word === "procedure" && top !== one.item) procedures.add(`${mention.file} ${top.first}`);
      }
      // A procedure that no other does is not a thing to remark upon.
      return procedures.size === 0 && one.word === "procedure"
        ? []
        : [{ declaration: { file: file.path, start: own.start, end: own.end }, procedures: procedures.size }];
    });
}
