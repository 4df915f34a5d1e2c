// The server behind a connection: documents in, answers out. What it can do is the sum of its features.

import {
  DidChangeConfigurationNotification,
  DidChangeWatchedFilesNotification,
  FileChangeType,
  PositionEncodingKind,
  TextDocumentSyncKind,
  WatchKind,
  type Connection,
  type InitializeParams,
  type InitializeResult,
} from "vscode-languageserver";
import { filesNotification, type FilesParams, type StartOptions } from "../shared/protocol.ts";
import { readEditorSettings } from "../shared/settings.ts";
import { changed as afterChanges } from "./documents.ts";
import { answerer, type Feature } from "./feature.ts";
import { features as allFeatures } from "./features/index.ts";
import { bothFiles, memoryFiles, type Files } from "./files.ts";
import { newSession, type Session } from "./session.ts";
import { isBelow, pathOf } from "./uris.ts";

/** Starts serving. `disk` undefined: there is none, and the client sends the texts of its folders. */
export function serve(
  connection: Connection,
  disk: Files | undefined,
  features: readonly Feature[] = allFeatures,
): Session {
  const memory = memoryFiles(),
    session = newSession(connection, disk ? bothFiles(disk, memory) : memory, pathOf),
    answer = answerer(session);

  connection.onInitialize((params: InitializeParams): InitializeResult => {
    session.client = params.capabilities;
    session.start = (params.initializationOptions ?? {}) as StartOptions;
    const offered = params.capabilities.general?.positionEncodings ?? [],
      taken = offered.find((one) => one === PositionEncodingKind.UTF8 || one === PositionEncodingKind.UTF16);
    session.encoding = taken === PositionEncodingKind.UTF8 ? "utf-8" : "utf-16";
    // A client that knows no folders names the one root.
    const root = (params as { rootUri?: string | null }).rootUri;
    session.setFolders(
      (params.workspaceFolders ?? (root ? [{ uri: root, name: "" }] : [])).map(({ uri }) =>
        pathOf(uri).replace(/(?<=.)\/$/, ""),
      ),
    );
    return {
      serverInfo: { name: "Stripdown" },
      capabilities: Object.assign(
        {
          positionEncoding: session.encoding === "utf-8" ? PositionEncodingKind.UTF8 : PositionEncodingKind.UTF16,
          textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
        },
        ...mergedWorkspace(features.map((one) => one.abilities?.(session) ?? {})),
      ) as InitializeResult["capabilities"],
    };
  });

  connection.onInitialized(() => {
    const { workspace } = session.client;
    if (workspace?.didChangeWatchedFiles?.dynamicRegistration) {
      void connection.client.register(DidChangeWatchedFilesNotification.type, {
        watchers: [
          { globPattern: "**/*.{strip,jpg,jpeg,png,svg,webp,gif,mp4,webm,mov}" },
          { globPattern: "**/stripdown.json" },
          // Of a folder that comes or goes as a whole nothing is told but its own name.
          { globPattern: "**/*", kind: WatchKind.Create | WatchKind.Delete },
        ],
      });
    }
    if (workspace?.configuration) {
      if (workspace.didChangeConfiguration?.dynamicRegistration)
        void connection.client.register(DidChangeConfigurationNotification.type, { section: "stripdown" });
      void readConfiguration();
    }
    if (workspace?.workspaceFolders) {
      connection.workspace.onDidChangeWorkspaceFolders(({ added, removed }) => {
        const gone = new Set(removed.map(({ uri }) => pathOf(uri)));
        session.setFolders([
          ...session.folders().filter((folder) => !gone.has(folder)),
          ...added.map(({ uri }) => pathOf(uri)),
        ]);
        session.changed();
      });
    }
    session.changed();
  });

  async function readConfiguration(): Promise<void> {
    const given: unknown = await connection.workspace.getConfiguration("stripdown").catch(() => undefined);
    session.editor = readEditorSettings(given);
    session.changed();
  }
  connection.onDidChangeConfiguration(({ settings }: { settings?: { stripdown?: unknown } }) => {
    if (session.client.workspace?.configuration) {
      void readConfiguration();
      return;
    }
    session.editor = readEditorSettings(settings?.stripdown);
    session.changed();
  });

  connection.onDidOpenTextDocument(({ textDocument: { uri, version, text } }) => {
    const path = pathOf(uri);
    session.documents.set(path, { uri, path, version, text });
    session.projectOf(path).forget([path]);
    session.changed();
  });
  connection.onDidChangeTextDocument(({ textDocument: { uri, version }, contentChanges }) => {
    const path = pathOf(uri),
      document = session.documents.get(path);
    if (!document) return;
    session.documents.set(path, {
      ...document,
      version,
      text: afterChanges(document.text, contentChanges, session.encoding),
    });
    session.projectOf(path).touch(path);
    session.changed();
  });
  connection.onDidCloseTextDocument(({ textDocument: { uri } }) => {
    const path = pathOf(uri);
    session.documents.delete(path);
    session.projectOf(path).forget([path]);
    session.changed();
  });
  connection.onDidChangeWatchedFiles(({ changes }) => {
    const paths = new Set<string>();
    for (const { uri, type } of changes) {
      const path = pathOf(uri);
      if (isWatched(path)) {
        // What is open is as the editor says, whatever the disk holds; that a picture was written again changes nothing.
        if (!session.documents.has(path) && (type !== FileChangeType.Changed || /\.(?:strip|json)$/.test(path)))
          paths.add(path);
      } else if (type !== FileChangeType.Changed)
        for (const project of session.projects()) {
          if (isBelow(path, project.folder) && isPassedOver(path.slice(project.folder.length))) continue;
          for (const one of project.below(path)) paths.add(one);
          if (type === FileChangeType.Created && isBelow(path, project.folder))
            for (const one of session.files.list(path, ".strip")) paths.add(one);
        }
    }
    if (paths.size === 0) return;
    for (const path of paths) session.projectOf(path).forget([path]);
    session.changed();
  });
  connection.onNotification(filesNotification, ({ files }: FilesParams) => {
    for (const { uri, text, gone } of files) {
      const path = pathOf(uri);
      if (gone) memory.remove(path);
      else memory.put(path, text);
      session.projectOf(path).forget([path]);
    }
    session.changed();
  });

  connection.onShutdown(() => {
    session.ended = true;
  });

  for (const one of features) one.start(session, answer);
  connection.listen();
  return session;
}

/** Files that a project asks for; any other name may be that of a folder. */
const isWatched = (path: string): boolean =>
  /\.(?:strip|jpe?g|png|svg|webp|gif|mp4|webm|mov)$|\/stripdown\.json$/i.test(path);
/** Nothing of a project lies there. */
const isPassedOver = (path: string): boolean => /\/(?:node_modules|\.[^/]*)(?:\/|$)/.test(path);

/** Abilities that live under `workspace` are laid together; all others are of one feature. */
function mergedWorkspace(
  parts: readonly Partial<InitializeResult["capabilities"]>[],
): Partial<InitializeResult["capabilities"]>[] {
  const workspace = Object.assign(
    { workspaceFolders: { supported: true, changeNotifications: true } },
    ...parts.map((part) => part.workspace ?? {}),
  ) as InitializeResult["capabilities"]["workspace"];
  return [...parts, { workspace: workspace ?? {} }];
}
