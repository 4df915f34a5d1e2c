// The texts of folders that the server cannot read itself: of a browser, or of a file system that is no disk. Only `.strip` files and
// settings are read; of pictures it is told that they are there.

import { RelativePattern, Uri, workspace, type Disposable } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import { filesNotification, type FilesParams } from "../shared/protocol.ts";

const texts = "**/{*.strip,stripdown.json}",
  others = "**/*.{jpg,jpeg,png,svg,webp,gif,mp4,webm,mov}";
const most = 5000;

export async function sendFolders(client: BaseLanguageClient, all: boolean): Promise<Disposable[]> {
  const mine = (uri: Uri): boolean => all || uri.scheme !== "file",
    made: Disposable[] = [];
  const send = (files: FilesParams["files"]): Promise<void> =>
    files.length > 0 ? client.sendNotification(filesNotification, { files } satisfies FilesParams) : Promise.resolve();
  const textOf = async (uri: Uri): Promise<FilesParams["files"][number]> => ({
    uri: client.code2ProtocolConverter.asUri(uri),
    text: new TextDecoder().decode(await workspace.fs.readFile(uri)),
  });
  for (const folder of workspace.workspaceFolders ?? []) {
    if (!mine(folder.uri)) continue;
    const found = await workspace.findFiles(new RelativePattern(folder, texts), undefined, most),
      pictures = await workspace.findFiles(new RelativePattern(folder, others), undefined, most);
    await send([
      ...(await Promise.all(found.map(textOf))),
      ...pictures.map((uri) => ({ uri: client.code2ProtocolConverter.asUri(uri) })),
    ]);
    const watcher = workspace.createFileSystemWatcher(new RelativePattern(folder, texts)),
      again = async (uri: Uri): Promise<void> => {
        await send([await textOf(uri)]);
      };
    made.push(
      watcher,
      watcher.onDidChange((uri) => void again(uri)),
      watcher.onDidCreate((uri) => void again(uri)),
      watcher.onDidDelete((uri) => void send([{ uri: client.code2ProtocolConverter.asUri(uri), gone: true }])),
    );
  }
  return made;
}
