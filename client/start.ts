// What every host of the extension begins with: the client started, the views and commands registered.

import { commands, window, workspace, l10n, type ExtensionContext } from "vscode";
import type { BaseLanguageClient, LanguageClientOptions } from "vscode-languageclient";
import { BenchView } from "./views/bench-view.ts";

export function clientOptions(): LanguageClientOptions {
  return { documentSelector: [{ language: "strip" }], synchronize: { fileEvents: workspace.createFileSystemWatcher("**/{*.strip,stripdown.json}") } };
}

export async function begin(context: ExtensionContext, client: BaseLanguageClient): Promise<void> {
  const view = new BenchView(client);
  context.subscriptions.push(
    window.createTreeView("stripdown.bench", { treeDataProvider: view, showCollapseAll: true }),
    window.onDidChangeTextEditorSelection(({ textEditor }) => { if (textEditor.document.languageId === "strip") view.follow(textEditor); }),
    window.onDidChangeActiveTextEditor((editor) => { if (editor?.document.languageId === "strip") view.follow(editor); }),
    commands.registerCommand("stripdown.restart", async () => {
      await client.stop();
      await client.start();
      void window.showInformationMessage(l10n.t("The Stripdown server was started again"));
    }),
  );
  await client.start();
  if (window.activeTextEditor?.document.languageId === "strip") view.follow(window.activeTextEditor);
}
