// The server behind a connection: what it can do, and which feature answers which request. A fault in one feature is answered as such
// and ends nothing.

import {
  CodeActionKind, DiagnosticRefreshRequest, DidChangeWatchedFilesNotification, DocumentDiagnosticReportKind, ErrorCodes, ResponseError, TextDocumentSyncKind, TextEdit, type Connection, type InitializeParams,
} from "vscode-languageserver";
import { TextDocument } from "vscode-languageserver-textdocument";
import { benchRequest, type BenchParams } from "../shared/protocol.ts";
import { format } from "../language/index.ts";
import { benchAt } from "./features/bench.ts";
import { codeActions } from "./features/code-actions.ts";
import { completion } from "./features/completion.ts";
import { diagnosticsOf } from "./features/diagnostics.ts";
import { hover } from "./features/hover.ts";
import { inlayHints } from "./features/hints.ts";
import { definition, highlights, prepareRename, references, rename } from "./features/names.ts";
import { documentSymbols, foldingRanges, workspaceSymbols } from "./features/outline.ts";
import { semanticTokens, tokenModifiers, tokenTypes } from "./features/tokens.ts";
import { pathOf } from "./places.ts";
import { newWorkspace, type Disk } from "./workspace.ts";

/** Keys that come in one burst are answered together: the only delay of our own, in ms. */
const BURST = 15;

export function serve(connection: Connection, disk: Disk): void {
  const workspace = newWorkspace(disk);
  let pulls = false, watches = false, timer: ReturnType<typeof setTimeout> | undefined;

  connection.onInitialize((params: InitializeParams) => {
    pulls = params.capabilities.textDocument?.diagnostic !== undefined;
    watches = params.capabilities.workspace?.didChangeWatchedFiles?.dynamicRegistration === true;
    workspace.folders = (params.workspaceFolders ?? []).map((folder) => pathOf(folder.uri));
    return {
      serverInfo: { name: "stripdown" },
      capabilities: {
        textDocumentSync: TextDocumentSyncKind.Incremental, hoverProvider: true, definitionProvider: true, referencesProvider: true, documentHighlightProvider: true, documentSymbolProvider: true,
        workspaceSymbolProvider: true, foldingRangeProvider: true, documentFormattingProvider: true, inlayHintProvider: true, renameProvider: { prepareProvider: true },
        completionProvider: { triggerCharacters: [" "] }, codeActionProvider: { codeActionKinds: [CodeActionKind.QuickFix, CodeActionKind.SourceFixAll] },
        semanticTokensProvider: { legend: { tokenTypes, tokenModifiers }, full: true },
        workspace: { workspaceFolders: { supported: true, changeNotifications: true } },
        ...(pulls ? { diagnosticProvider: { identifier: "stripdown", interFileDependencies: true, workspaceDiagnostics: false } } : {}),
      },
    };
  });
  connection.onInitialized(() => {
    if (watches) void connection.client.register(DidChangeWatchedFilesNotification.type, { watchers: [{ globPattern: "**/*.strip" }, { globPattern: "**/stripdown.json" }] });
    connection.workspace.onDidChangeWorkspaceFolders?.(({ added, removed }) => {
      const gone = new Set(removed.map((folder) => pathOf(folder.uri)));
      workspace.folders = [...workspace.folders.filter((folder) => !gone.has(folder)), ...added.map((folder) => pathOf(folder.uri))];
      changed();
    });
  });

  /** Something changed: what was found is found anew, once a burst. */
  function changed(): void {
    workspace.changed();
    clearTimeout(timer);
    timer = setTimeout(() => {
      if (pulls) { connection.sendRequest(DiagnosticRefreshRequest.type).catch(() => undefined); return; }
      const checked = workspace.open();
      for (const document of workspace.documents.values()) void connection.sendDiagnostics({ uri: document.uri, version: document.version, diagnostics: diagnosticsOf(checked, pathOf(document.uri)) });
    }, BURST);
  }

  connection.onShutdown(() => clearTimeout(timer));

  connection.onDidOpenTextDocument(({ textDocument: { uri, languageId, version, text } }) => { workspace.documents.set(uri, TextDocument.create(uri, languageId, version, text)); changed(); });
  connection.onDidChangeTextDocument(({ textDocument: { uri, version }, contentChanges }) => {
    const document = workspace.documents.get(uri);
    if (document) { workspace.documents.set(uri, TextDocument.update(document, contentChanges, version)); changed(); }
  });
  connection.onDidCloseTextDocument(({ textDocument: { uri } }) => { workspace.documents.delete(uri); if (!pulls) void connection.sendDiagnostics({ uri, diagnostics: [] }); changed(); });
  connection.onDidChangeWatchedFiles(changed);

  /** A fault of ours in one feature is told in one line and ends nothing. */
  const guarded = <P, R>(name: string, answer: (params: P) => R) => (params: P): R | ResponseError<void> => {
    try { return answer(params); } catch (error) {
      connection.console.error(`${name}: ${error instanceof Error ? error.message : String(error)}`);
      return new ResponseError(ErrorCodes.InternalError, `${name} could not be answered for this text; the rest goes on`);
    }
  };
  type At = { textDocument: { uri: string } };
  const path = ({ textDocument: { uri } }: At): string => pathOf(uri);

  const findings = guarded("findings", (p: At) => diagnosticsOf(workspace.open(), path(p)));
  connection.languages.diagnostics.on((p) => { const items = findings(p); return { kind: DocumentDiagnosticReportKind.Full, items: items instanceof ResponseError ? [] : items }; });
  connection.onHover(guarded("hover", (p) => hover(workspace.open(), path(p), p.position, workspace.settings.assumptions)));
  connection.onCompletion(guarded("completion", (p) => completion(workspace.open(), path(p), p.position)));
  connection.onDefinition(guarded("definition", (p) => definition(workspace.open(), path(p), p.position)));
  connection.onReferences(guarded("references", (p) => references(workspace.all(), path(p), p.position, p.context.includeDeclaration)));
  connection.onDocumentHighlight(guarded("highlight", (p) => highlights(workspace.open(), path(p), p.position)));
  connection.onPrepareRename(guarded("rename", (p) => prepareRename(workspace.open(), path(p), p.position)));
  connection.onRenameRequest(guarded("rename", (p) => { const edit = rename(workspace.all(), path(p), p.position, p.newName); return typeof edit === "string" ? new ResponseError<void>(ErrorCodes.InvalidParams, edit) : edit; }));
  connection.onDocumentSymbol(guarded("outline", (p) => documentSymbols(workspace.open(), path(p))));
  connection.onWorkspaceSymbol(guarded("symbols", (p) => workspaceSymbols(workspace.all(), p.query)));
  connection.onFoldingRanges(guarded("folding", (p) => foldingRanges(workspace.open(), path(p))));
  connection.onCodeAction(guarded("remedies", (p) => codeActions(workspace.open(), path(p), p.range)));
  connection.languages.inlayHint.on(guarded("hints", (p) => inlayHints(workspace.open(), path(p), p.range)));
  connection.languages.semanticTokens.on(guarded("colours", (p) => semanticTokens(workspace.open(), path(p))));
  connection.onDocumentFormatting(guarded("format", (p) => {
    const document = workspace.documents.get(p.textDocument.uri), text = document?.getText() ?? "", next = format(text);
    return document && next !== text ? [TextEdit.replace({ start: { line: 0, character: 0 }, end: document.positionAt(text.length) }, next)] : [];
  }));
  connection.onRequest(benchRequest, guarded("bench", (p: BenchParams) => benchAt(workspace.open(), pathOf(p.uri), { line: p.line, character: p.character })));
  connection.listen();
}
