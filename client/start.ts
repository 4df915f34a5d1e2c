// What every host of the extension begins with: the client started, the folders sent where the server cannot read them, views and
// commands put in place.

import { commands, window, workspace, type ExtensionContext } from "vscode";
import {
  RevealOutputChannelOn,
  State,
  WorkDoneProgressCancelNotification,
  type BaseLanguageClient,
  type LanguageClientOptions,
} from "vscode-languageclient";
import { changedNotification } from "../shared/protocol.ts";
import { registerCommands } from "./commands.ts";
import { sendFolders } from "./folders.ts";
import { buttonWhereItGoesOn } from "./progress.ts";
import { showStatus } from "./status.ts";
import { provideTasks } from "./tasks.ts";
import { BenchView } from "./views/bench-view.ts";
import { DiagramView } from "./views/diagram-view.ts";
import { ManualView, type ManualShows } from "./views/manual-view.ts";

/** What the extension gives to others, and to its own tests: what its views show, as text. */
export interface Api {
  readonly benchText: () => Promise<string>;
  readonly manualShows: () => ManualShows | undefined;
  readonly diagramText: () => Promise<string>;
}

export function clientOptions(): LanguageClientOptions {
  return {
    documentSelector: [{ language: "strip" }],
    initializationOptions: { commands: true },
    middleware: {},
    revealOutputChannelOn: RevealOutputChannelOn.Never,
  };
}

export async function begin(context: ExtensionContext, client: BaseLanguageClient, isBrowser: boolean): Promise<Api> {
  const bench = new BenchView(client),
    manual = new ManualView(context.extensionUri, client),
    diagram = new DiagramView(context.extensionUri, client),
    { hears, gone } = buttonWhereItGoesOn((token) => {
      void client.sendNotification(WorkDoneProgressCancelNotification.type, { token });
    });
  client.middleware.handleWorkDoneProgress = hears;
  context.subscriptions.push(
    bench,
    manual,
    diagram,
    window.onDidChangeTextEditorSelection(({ textEditor }) => {
      if (textEditor.document.languageId !== "strip") return;
      bench.follow(textEditor);
      manual.follow(textEditor);
      diagram.follow(textEditor);
    }),
    window.onDidChangeActiveTextEditor((editor) => {
      if (editor?.document.languageId !== "strip") return;
      bench.follow(editor);
      manual.follow(editor);
      diagram.follow(editor);
    }),
    workspace.onDidGrantWorkspaceTrust(() => manual.again()),
    client.onNotification(changedNotification, () => {
      bench.again();
      manual.again();
      diagram.again();
    }),
    ...registerCommands(context, client, { bench, manual, diagram }),
    ...provideTasks(client),
    ...showStatus(),
    client.onDidChangeState(({ newState }) => {
      if (newState === State.Stopped) gone();
    }),
  );
  await client.start();
  context.subscriptions.push(...(await sendFolders(client, isBrowser)));
  await commands.executeCommand("setContext", "stripdown.active", true);
  if (window.activeTextEditor?.document.languageId === "strip") bench.follow(window.activeTextEditor);
  return { benchText: () => bench.text(), manualShows: () => manual.shows(), diagramText: () => diagram.text() };
}
