// The texts of folders that the server cannot read itself: of a browser, or of a file system that is no disk. Only `.strip` files,
// their translations and settings are read; of pictures it is told that they are there.

import { FileType, RelativePattern, Uri, workspace, type Disposable } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import { filesNotification, type FilesParams } from "../shared/protocol.ts";

const texts = "**/{*.strip,*.texts.json,stripdown.json}",
  isText = /(?:\.strip|\.texts\.json|(?:^|\/)stripdown\.json)$/,
  isOther = /\.(?:jpe?g|png|svg|webp|gif|mp4|webm|mov)$/i;
/** Files that are told of, and folders that are looked into: a folder without an end is no project. */
const most = 5000;

/**
 * What lies in a folder, by reading folder after folder: the editor's own search knows only file systems that bring a search of their own.
 */
async function filesIn(folder: Uri): Promise<Uri[]> {
  const found: Uri[] = [],
    queue = [folder];
  for (let i = 0; i < queue.length && i < most && found.length < most; i++) {
    let entries: [string, FileType][] = [];
    try {
      entries = await workspace.fs.readDirectory(queue[i]!);
    } catch {
      /* it went, or may not be read: what it holds is then told as missing where it is used */
    }
    for (const [name, type] of entries) {
      const uri = Uri.joinPath(queue[i]!, name);
      // A link to a folder could lead round in a circle.
      if (type === FileType.Directory && !name.startsWith(".") && name !== "node_modules") queue.push(uri);
      else if ((type & FileType.File) !== 0) found.push(uri);
    }
  }
  return found;
}

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
    const found = await filesIn(folder.uri);
    await send([
      ...(await Promise.all(found.filter(({ path }) => isText.test(path)).map(textOf))),
      ...found
        .filter(({ path }) => isOther.test(path))
        .map((uri) => ({ uri: client.code2ProtocolConverter.asUri(uri) })),
    ]);
    const watcher = workspace.createFileSystemWatcher(new RelativePattern(folder, texts)),
      again = async (uri: Uri): Promise<void> => {
        await send([await textOf(uri)]);
      };
    // One after the other: of two readings of one file the later must not be overtaken by the earlier.
    let last: Promise<void> = Promise.resolve();
    const inTurn = (tell: () => Promise<void>): void => {
      // A file that went in between is told of by its own event.
      last = last.then(tell).catch(() => undefined);
    };
    made.push(
      watcher,
      watcher.onDidChange((uri) => inTurn(() => again(uri))),
      watcher.onDidCreate((uri) => inTurn(() => again(uri))),
      watcher.onDidDelete((uri) => inTurn(() => send([{ uri: client.code2ProtocolConverter.asUri(uri), gone: true }]))),
    );
  }
  return made;
}
