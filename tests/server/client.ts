// A client over real JSON-RPC in one process: two streams, the server at one end, the test at the other. Texts come in the notation of
// the marked tests: `<|>` is the cursor, `#- NAME` starts another file.

import { PassThrough } from "node:stream";
import {
  createConnection,
  createProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
  type ClientCapabilities,
  type Diagnostic,
  type InitializeResult,
  type Position,
  type ProtocolConnection,
  type TextEdit,
  type WorkspaceEdit,
} from "vscode-languageserver/node";
import type { Feature } from "../../server/feature.ts";
import { memoryFiles, type MemoryFiles } from "../../server/files.ts";
import { serve } from "../../server/server.ts";
import type { Session } from "../../server/session.ts";
import { pathOf } from "../../server/uris.ts";
import { marked } from "../support/marked.ts";
import { linesOf, offsetAt, positionAt } from "../../language/index.ts";

export interface Client {
  readonly rpc: ProtocolConnection;
  readonly session: Session;
  readonly disk: MemoryFiles;
  readonly started: InitializeResult;
  /** Where the cursor was in the marked text. */
  readonly at: { readonly textDocument: { readonly uri: string }; readonly position: Position };
  uri(name: string): string;
  text(name: string): string;
  open(name: string): Promise<void>;
  change(name: string, text: string): Promise<void>;
  /** Position of a place in a file, by what stands there. */
  find(name: string, what: string, more?: number): Position;
  request<R>(method: string, params: unknown): Promise<R>;
  /** The findings of a file, once the server is done: pulled. */
  findings(name: string): Promise<Diagnostic[]>;
  /** The newest pushed findings by address. */
  readonly pushed: Map<string, Diagnostic[]>;
  readonly pushes: { readonly uri: string; readonly version: number | undefined; readonly count: number }[];
  readonly notes: string[];
  close(): Promise<void>;
}

export const everything: ClientCapabilities = {
  general: { positionEncodings: ["utf-16"] },
  textDocument: {
    diagnostic: {},
    publishDiagnostics: { relatedInformation: true },
    completion: { completionItem: { snippetSupport: true, documentationFormat: ["markdown"] } },
    hover: { contentFormat: ["markdown", "plaintext"] },
    rename: { prepareSupport: true },
    documentSymbol: { hierarchicalDocumentSymbolSupport: true },
    codeAction: { resolveSupport: { properties: ["edit"] } },
    rangeFormatting: { rangesSupport: true },
  },
  workspace: { textDocumentContent: {}, workspaceEdit: { documentChanges: true } },
};

export async function client(
  text: string,
  capabilities: ClientCapabilities = everything,
  features?: readonly Feature[],
): Promise<Client> {
  const { files, cursor } = marked(text),
    texts = new Map(files),
    disk = memoryFiles(),
    pushed = new Map<string, Diagnostic[]>(),
    pushes: { uri: string; version: number | undefined; count: number }[] = [],
    notes: string[] = [];
  const folder = "/shop",
    pathFor = (name: string): string => `${folder}/${name}`,
    uri = (name: string): string => `file://${pathFor(name)}`;
  for (const [name, one] of texts) disk.put(pathFor(name), one);
  const up = new PassThrough(),
    down = new PassThrough();
  const session = serve(
    createConnection(new StreamMessageReader(up), new StreamMessageWriter(down)),
    disk,
    ...(features ? [features] : []),
  );
  const rpc = createProtocolConnection(new StreamMessageReader(down), new StreamMessageWriter(up));
  rpc.onNotification(
    "textDocument/publishDiagnostics",
    ({ uri: of, diagnostics, version }: { uri: string; diagnostics: Diagnostic[]; version?: number }) => {
      pushed.set(of, diagnostics);
      pushes.push({ uri: of, version, count: diagnostics.length });
    },
  );
  rpc.onNotification("window/logMessage", ({ message }: { message: string }) => {
    notes.push(message);
  });
  for (const method of [
    "client/registerCapability",
    "workspace/diagnostic/refresh",
    "workspace/textDocumentContent/refresh",
  ])
    rpc.onRequest(method, () => null);
  rpc.listen();
  const started = await rpc.sendRequest<InitializeResult>("initialize", {
    processId: null,
    rootUri: null,
    capabilities,
    workspaceFolders: [{ uri: `file://${folder}`, name: "shop" }],
    initializationOptions: { commands: true },
  });
  await rpc.sendNotification("initialized", {});
  const versions = new Map<string, number>();
  const it: Client = {
    rpc,
    session,
    disk,
    started,
    pushed,
    pushes,
    notes,
    uri,
    get at() {
      if (!cursor) throw new Error("no <|> in the text");
      const { line, column } = positionAt(linesOf(texts.get(cursor.file)!), cursor.start);
      return { textDocument: { uri: uri(cursor.file) }, position: { line, character: column } };
    },
    text: (name) => texts.get(name)!,
    async open(name) {
      versions.set(name, 1);
      await rpc.sendNotification("textDocument/didOpen", {
        textDocument: { uri: uri(name), languageId: "strip", version: 1, text: texts.get(name)! },
      });
    },
    async change(name, next) {
      const version = (versions.get(name) ?? 0) + 1;
      versions.set(name, version);
      texts.set(name, next);
      await rpc.sendNotification("textDocument/didChange", {
        textDocument: { uri: uri(name), version },
        contentChanges: [{ text: next }],
      });
    },
    find(name, what, more = 0) {
      const at = texts.get(name)!.indexOf(what);
      if (at < 0) throw new Error(`"${what}" does not stand in ${name}`);
      const { line, column } = positionAt(linesOf(texts.get(name)!), at + more);
      return { line, character: column };
    },
    request: <R>(method: string, params: unknown) => rpc.sendRequest<R>(method, params),
    async findings(name) {
      return (
        await rpc.sendRequest<{ items: Diagnostic[] }>("textDocument/diagnostic", { textDocument: { uri: uri(name) } })
      ).items;
    },
    async close() {
      await rpc.sendRequest("shutdown");
      rpc.dispose();
      up.end();
      down.end();
    },
  };
  for (const name of texts.keys()) if (name.endsWith(".strip") && !name.startsWith("closed/")) await it.open(name);
  return it;
}

/** The text after edits of one file. */
export function edited(text: string, edits: readonly TextEdit[]): string {
  const lines = linesOf(text),
    at = ({ line, character }: Position): number => offsetAt(lines, { line, column: character });
  let out = text;
  for (const { range, newText } of [...edits].sort((a, b) => at(b.range.start) - at(a.range.start)))
    out = out.slice(0, at(range.start)) + newText + out.slice(at(range.end));
  return out;
}

/** The edits of a workspace edit by the name of the file. */
export function editsOf(edit: WorkspaceEdit): Map<string, TextEdit[]> {
  const name = (uri: string): string => pathOf(uri).replace("/shop/", "");
  if (edit.changes) return new Map(Object.entries(edit.changes).map(([uri, list]) => [name(uri), list]));
  return new Map(
    (edit.documentChanges ?? []).flatMap((change) =>
      "edits" in change ? [[name(change.textDocument.uri), change.edits as TextEdit[]] as const] : [],
    ),
  );
}

/** A small machine and a procedure for it; `body` stands in its step. */
export const winch = (body: string, finish = ""): string => `
#- unit.strip
unit winch "Winch" {
  base frame
  positions upright, on-side
  part frame "Frame" { mass 20 kg }
  part cover "Brake cover" { mass 2 kg }
  part pack "Brake pack" { mass 4 kg  behind cover }
  part drum "Drum" { mass 12 kg  needs on-side }
  fastener cover-screws screw "Cover screws" { count 4  size M6x20  class 8.8  drive hex-socket 5  torque 9 N·m  joins cover to frame }
  fastener pack-bolts bolt "Pack bolts" { count 8  size M8x30  class 8.8  drive hex 13  torque 24 N·m  joins pack to frame  behind cover }
  fastener drum-bolts bolt "Drum bolts" { count 2  size M10x40  class 8.8  drive hex 16  torque 45 N·m  joins drum to frame }
}
#- main.strip
use "unit.strip"
procedure strip "Strip the brake" for winch {
  aim pack off
  step out "Take the pack out" {
    ${body}
  }
  ${finish}
}
`;

/** Two alike gearboxes in one drive, and a step of a procedure on the drive. */
export const drives = (body: string): string => `
#- unit.strip
unit gear "Gearbox" {
  base case
  part case "Gearbox case" { mass 6 kg }
  part lid "Gearbox lid" { mass 1 kg }
  fastener lid-screws screw "Gearbox lid screws" { count 4  size M6x20  class 8.8  drive hex 10  torque 9 N·m  joins lid to case }
}
#- main.strip
use "unit.strip"
unit drive "Drive" {
  base frame
  part frame "Frame" { mass 30 kg }
  part gearbox "Gearbox" { is unit gear  pieces left, right  rests on frame }
}
procedure strip "Strip" for drive {
  aim none
  step out "Lids off" {
    ${body}
  }
}
`;
