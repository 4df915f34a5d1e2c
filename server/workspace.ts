// The open documents and the disk as one world, and what the last check found. A file whose text and imports did not change is not
// read, parsed or performed again: the memo of the check sees to that.

import type { TextDocument } from "vscode-languageserver-textdocument";
import { checkProject, defaultSettings, newMemo, type Checked, type Settings, type World } from "../language/index.ts";
import { pathOf, uriOf } from "./places.ts";

/** What a server may ask of the disk; a browser's worker gives one that has none. */
export interface Disk {
  readText(path: string): ReturnType<World["read"]>;
  isFile(path: string): boolean;
  /** Links resolved. */
  real(path: string): string;
  /** Every `.strip` file below a folder. */
  list(folder: string): readonly string[];
}

export interface Workspace {
  readonly documents: Map<string, TextDocument>;
  folders: readonly string[];
  settings: Settings;
  /** Forgets what was found; the memo stays. */
  changed(): void;
  /** The open documents checked, with all that they use. */
  open(): Checked;
  /** Every file of the folders beside the open ones: for references and renames. */
  all(): Checked;
}

export function newWorkspace(disk: Disk): Workspace {
  let openChecked: Checked | undefined, allChecked: Checked | undefined, memo = newMemo();
  const documents = new Map<string, TextDocument>();
  const world: World = {
    read: (path) => { const document = documents.get(uriOf(path)); return document ? { text: document.getText() } : disk.readText(path); },
    exists: (path) => disk.isFile(path),
    // Outside the workspace's folders nothing is read; a document opened alone may use its neighbours.
    inside: (path) => {
      const at = disk.real(path), within = (folder: string): boolean => at === folder || at.startsWith(folder.endsWith("/") ? folder : `${folder}/`);
      return workspace.folders.some((folder) => within(disk.real(folder))) || (workspace.folders.length === 0 && [...documents.keys()].some((uri) => within(disk.real(pathOf(uri).replace(/\/[^/]*\/[^/]*$/, "")))));
    },
    resolve: (fromFile, written) => resolvePath(fromFile, written),
  };
  const workspace: Workspace = {
    documents, folders: [], settings: defaultSettings,
    changed: () => { openChecked = allChecked = undefined; },
    open: () => (openChecked ??= checkProject(world, openPaths(), { settings: workspace.settings, memo })),
    all: () => (allChecked ??= checkProject(world, [...new Set([...openPaths(), ...workspace.folders.flatMap((folder) => disk.list(folder))])].sort(), { settings: workspace.settings, memo })),
  };
  const openPaths = (): string[] => [...documents.keys()].map(pathOf).sort();
  return workspace;
}

/** `..` and `.` taken out; both use slashes. */
function resolvePath(fromFile: string, written: string): string {
  const parts = written.startsWith("/") ? [] : fromFile.split("/").slice(0, -1);
  for (const part of written.split("/")) {
    if (part === "" || part === ".") continue;
    if (part === "..") parts.pop(); else parts.push(part);
  }
  return written.startsWith("/") ? `/${parts.join("/")}` : parts.join("/");
}
