// The extension in a desktop or remote host: starts the server as a process of its own. Nothing of the workspace is ever run.

import type { ExtensionContext } from "vscode";
import { Uri } from "vscode";
import { LanguageClient, TransportKind } from "vscode-languageclient/node";
import { begin, clientOptions, type Api } from "./start.ts";

let client: LanguageClient | undefined;

export async function activate(context: ExtensionContext): Promise<Api> {
  const module = Uri.joinPath(context.extensionUri, "dist", "server.cjs").fsPath;
  // A check leaves much behind that is thrown away at once. The server keeps the room for that small by itself, but for the largest that
  // the part for new objects may become: the engine asks that once, when a process begins.
  const server = { module, transport: TransportKind.ipc, options: { execArgv: ["--max-semi-space-size=8"] } };
  client = new LanguageClient("stripdown", "Stripdown", { run: server, debug: server }, clientOptions());
  return await begin(context, client, false);
}

export function deactivate(): Promise<void> | undefined {
  return client?.stop();
}
