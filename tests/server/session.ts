// A session with the server over real JSON-RPC, in one process: two streams, the server on one end, the test on the other. `<|>` in a
// text marks the cursor.

import { PassThrough } from "node:stream";
import { createConnection, createProtocolConnection, StreamMessageReader, StreamMessageWriter, type Diagnostic, type InitializeParams, type ProtocolConnection } from "vscode-languageserver/node";
import { serve } from "../../server/server.ts";
import type { Disk } from "../../server/workspace.ts";

export interface Session {
  readonly client: ProtocolConnection;
  /** Opens a document; the marks are taken out. Returns its address and the marked places. */
  open(path: string, marked: string): { uri: string; places: { line: number; character: number }[]; text: string };
  /** The newest pushed findings of a document, once some came. */
  pushed(uri: string): Promise<readonly Diagnostic[]>;
  close(): Promise<void>;
}

/** `files` lie on the server's disk. */
export async function session(files: Readonly<Record<string, string>> = {}, capabilities: InitializeParams["capabilities"] = {}): Promise<Session> {
  const up = new PassThrough(), down = new PassThrough(), texts = new Map(Object.entries(files));
  const disk: Disk = {
    readText: (path) => { const text = texts.get(path); return text === undefined ? { problem: "missing" } : { text }; },
    isFile: (path) => texts.has(path), real: (path) => path, list: (folder) => [...texts.keys()].filter((path) => path.startsWith(`${folder}/`) && path.endsWith(".strip")).sort(),
  };
  serve(createConnection(new StreamMessageReader(up), new StreamMessageWriter(down)), disk);
  const client = createProtocolConnection(new StreamMessageReader(down), new StreamMessageWriter(up)), latest = new Map<string, readonly Diagnostic[]>(), waiting = new Map<string, (list: readonly Diagnostic[]) => void>();
  client.onNotification("textDocument/publishDiagnostics", ({ uri, diagnostics }: { uri: string; diagnostics: Diagnostic[] }) => {
    const wait = waiting.get(uri);
    if (wait) { waiting.delete(uri); wait(diagnostics); } else latest.set(uri, diagnostics);
  });
  client.listen();
  await client.sendRequest("initialize", { processId: null, rootUri: null, capabilities, workspaceFolders: [{ uri: "file:///p", name: "p" }] } satisfies InitializeParams);
  await client.sendNotification("initialized", {});
  let version = 0;
  return {
    client,
    open(path, marked) {
      const places: { line: number; character: number }[] = [];
      let text = marked;
      for (let at = text.indexOf("<|>"); at >= 0; at = text.indexOf("<|>")) {
        const before = text.slice(0, at).split("\n");
        places.push({ line: before.length - 1, character: before[before.length - 1]!.length });
        text = text.slice(0, at) + text.slice(at + 3);
      }
      const uri = `file://${path}`;
      void client.sendNotification("textDocument/didOpen", { textDocument: { uri, languageId: "strip", version: ++version, text } });
      return { uri, places, text };
    },
    pushed: (uri) => { const had = latest.get(uri); latest.delete(uri); return had ? Promise.resolve(had) : new Promise((resolve) => waiting.set(uri, resolve)); },
    async close() { await client.sendRequest("shutdown"); client.dispose(); up.end(); down.end(); },
  };
}
