// The extension in a browser's worker: the server is another worker, and gets the texts of the folders from here.

import { Uri, type ExtensionContext } from "vscode";
import { LanguageClient } from "vscode-languageclient/browser";
import { begin, clientOptions, type Api } from "./start.ts";

/** A worker's host gives it; the types of a page are not loaded here. */
declare const Worker: new (url: string) => ConstructorParameters<typeof LanguageClient>[2];

let client: LanguageClient | undefined;

export async function activate(context: ExtensionContext): Promise<Api> {
  const worker = new Worker(Uri.joinPath(context.extensionUri, "dist", "server-worker.js").toString(true));
  client = new LanguageClient("stripdown", "Stripdown", worker, clientOptions());
  return await begin(context, client, true);
}

export function deactivate(): Promise<void> | undefined {
  return client?.stop();
}
