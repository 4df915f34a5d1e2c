// A file system that lies in memory, brought by an extension of the tests: a folder that is no disk, without a search of its own.

import * as vscode from "vscode";

const files = new Map<string, Uint8Array>(
    Object.entries({
      "/shop/unit.strip":
        'unit box "Box" {\n  base foot\n  part foot "Foot"\n  part lid "Lid"\n  fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }\n}\n',
      "/shop/jobs/main.strip":
        'use "../unit.strip"\nprocedure strip "Strip" for box {\n  aim lid off\n  step "Lid off" {\n    undo lid-screws\n    remove lid\n  }\n}\n',
    }).map(([path, text]) => [path, new TextEncoder().encode(text)]),
  ),
  folders = new Set(["/", "/shop", "/shop/jobs"]),
  changes = new vscode.EventEmitter<vscode.FileChangeEvent[]>();

const told = (uri: vscode.Uri, type: vscode.FileChangeType): void => changes.fire([{ uri, type }]);
const above = (path: string): string => path.slice(0, Math.max(1, path.lastIndexOf("/")));

const disk: vscode.FileSystemProvider = {
  onDidChangeFile: changes.event,
  watch: () => new vscode.Disposable(() => undefined),
  stat(uri) {
    const bytes = files.get(uri.path);
    if (!bytes && !folders.has(uri.path)) throw vscode.FileSystemError.FileNotFound(uri);
    return {
      type: bytes ? vscode.FileType.File : vscode.FileType.Directory,
      ctime: 0,
      mtime: bytes?.length ?? 0,
      size: bytes?.length ?? 0,
    };
  },
  readDirectory: ({ path }) => [
    ...[...folders]
      .filter((one) => one !== "/" && above(one) === path)
      .map((one): [string, vscode.FileType] => [one.slice(one.lastIndexOf("/") + 1), vscode.FileType.Directory]),
    ...[...files.keys()]
      .filter((one) => above(one) === path)
      .map((one): [string, vscode.FileType] => [one.slice(one.lastIndexOf("/") + 1), vscode.FileType.File]),
  ],
  createDirectory: ({ path }) => {
    folders.add(path);
  },
  readFile(uri) {
    const bytes = files.get(uri.path);
    if (!bytes) throw vscode.FileSystemError.FileNotFound(uri);
    return bytes;
  },
  writeFile(uri, bytes) {
    const type = files.has(uri.path) ? vscode.FileChangeType.Changed : vscode.FileChangeType.Created;
    files.set(uri.path, bytes);
    told(uri, type);
  },
  delete(uri) {
    files.delete(uri.path);
    told(uri, vscode.FileChangeType.Deleted);
  },
  rename(from, to) {
    files.set(to.path, disk.readFile(from) as Uint8Array);
    files.delete(from.path);
    told(to, vscode.FileChangeType.Changed);
  },
};

export const activate = (context: vscode.ExtensionContext): void => {
  context.subscriptions.push(vscode.workspace.registerFileSystemProvider("memory-disk", disk));
};
