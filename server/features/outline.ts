// The outline of a file and the declared names of the whole folder.

import { SymbolKind, type DocumentSymbol, type SymbolInformation, type WorkspaceSymbol } from "vscode-languageserver";
import { outlineOf, type OutlineEntry } from "../../language/index.ts";
import { feature } from "../feature.ts";

const kinds: Readonly<Record<string, SymbolKind>> = {
  unit: SymbolKind.Class,
  procedure: SymbolKind.Function,
  tool: SymbolKind.Module,
  consumable: SymbolKind.Package,
  role: SymbolKind.Interface,
  "torque-table": SymbolKind.Array,
  fastener: SymbolKind.Property,
  hazard: SymbolKind.Event,
  temporary: SymbolKind.Variable,
  part: SymbolKind.Field,
  joint: SymbolKind.Interface,
  fluid: SymbolKind.Variable,
  step: SymbolKind.Method,
  finish: SymbolKind.Method,
  refit: SymbolKind.Method,
  task: SymbolKind.Function,
  option: SymbolKind.EnumMember,
  measure: SymbolKind.Number,
  test: SymbolKind.Number,
  repeat: SymbolKind.Array,
  optional: SymbolKind.Boolean,
};
/** More names than this are no list any more. */
const most = 500;

export default feature({
  name: "outline",
  abilities: () => ({ documentSymbolProvider: true, workspaceSymbolProvider: true }),
  start(session, answer) {
    session.connection.onDocumentSymbol(
      answer("Outline", ({ textDocument: { uri } }): DocumentSymbol[] | SymbolInformation[] => {
        const looked = session.see(uri);
        if (!looked) return [];
        const range = (start: number, end: number): DocumentSymbol["range"] =>
          session.range(looked.checked, { file: looked.path, start, end });
        const symbol = (entry: OutlineEntry): DocumentSymbol => ({
          name: entry.name,
          detail: entry.detail,
          kind: kinds[entry.word] ?? SymbolKind.Object,
          range: range(entry.start, entry.end),
          selectionRange: range(entry.nameStart, entry.nameEnd),
          children: entry.inside.map(symbol),
        });
        const tree = outlineOf(looked.file.tree);
        if (session.client.textDocument?.documentSymbol?.hierarchicalDocumentSymbolSupport !== false)
          return tree.map(symbol);
        const flat = (entries: readonly OutlineEntry[], container: string): SymbolInformation[] =>
          entries.flatMap((entry) => [
            {
              name: entry.name,
              kind: kinds[entry.word] ?? SymbolKind.Object,
              location: { uri, range: range(entry.start, entry.end) },
              containerName: container,
            },
            ...flat(entry.inside, entry.name),
          ]);
        return flat(tree, "");
      }),
    );
    session.connection.onWorkspaceSymbol(
      answer("Symbols", ({ query }): WorkspaceSymbol[] => {
        const found: WorkspaceSymbol[] = [],
          wanted = query.toLowerCase();
        for (const project of session.projects()) {
          const checked = { project: project.texts(true) };
          for (const file of checked.project.files.values()) {
            const visit = (entries: readonly OutlineEntry[], container: string): void => {
              for (const entry of entries) {
                if (found.length >= most) return;
                const isNamed = entry.word !== "refit" && entry.word !== "finish" && entry.word !== "repeat";
                if (isNamed && `${entry.name} ${entry.detail}`.toLowerCase().includes(wanted)) {
                  found.push({
                    name: entry.name,
                    kind: kinds[entry.word] ?? SymbolKind.Object,
                    containerName: container,
                    location: session.location(checked, {
                      file: file.path,
                      start: entry.nameStart,
                      end: entry.nameEnd,
                    }),
                  });
                }
                visit(entry.inside, entry.name);
              }
            };
            visit(outlineOf(file.tree), "");
          }
        }
        return found;
      }),
    );
  },
});
