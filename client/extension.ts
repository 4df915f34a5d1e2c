// The extension in a desktop or remote VS Code: starts the server as a process of its own. Runs nothing of the workspace.

import { join } from "node:path";
import type { ExtensionContext } from "vscode";
import { LanguageClient, TransportKind } from "vscode-languageclient/node";
import { begin, clientOptions } from "./start.ts";

let client: LanguageClient | undefined;

export async function activate(context: ExtensionContext): Promise<void> {
  const module = join(context.extensionPath, "dist", "server.cjs");
  client = new LanguageClient("stripdown", "Stripdown", { run: { module, transport: TransportKind.ipc }, debug: { module, transport: TransportKind.ipc } }, clientOptions());
  await begin(context, client);
}

export function deactivate(): Promise<void> | undefined {
  return client?.stop();
}
