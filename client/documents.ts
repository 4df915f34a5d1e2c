// Manual, sheets and labels written from the editor, beside the text or into a folder of the author's choice. The server makes them and
// says what may be written over; here is read what stands there, and written, through the editor's own file system: no program is run.

import { FileType, l10n, Uri, window, workspace, type QuickPickItem, type TextEditor } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import {
  documentNamesRequest,
  documentsRequest,
  type DocumentNamesAnswer,
  type DocumentNamesParams,
  type DocumentsAnswer,
  type DocumentsParams,
} from "../shared/protocol.ts";
import { shownWhenLong } from "./progress.ts";

/** What a caller may say instead of being asked. */
export interface WriteAsked {
  readonly kinds?: readonly string[];
  readonly folder?: Uri;
  /** Instead of the settings: the tag of a language, and whom the manual is for. */
  readonly language?: string;
  readonly reader?: string;
}

/** Names of the files that were written, and of those that were left as they are. */
export interface Written {
  readonly written: readonly Uri[];
  readonly left: readonly string[];
}

export async function writeDocuments(
  client: BaseLanguageClient,
  editor: TextEditor | undefined,
  asked: WriteAsked = {},
): Promise<Written | undefined> {
  if (!editor) {
    void window.showInformationMessage(l10n.t("Open a .strip file first"));
    return undefined;
  }
  const source = editor.document.uri,
    kinds = asked.kinds ?? (await pickKinds());
  if (!kinds || kinds.length === 0) return undefined;
  const folder = asked.folder ?? (await pickFolder(source));
  if (!folder) return undefined;
  const uri = client.code2ProtocolConverter.asUri(source);
  const ask = <R>(method: string, params: object): Promise<R | null | undefined> =>
    shownWhenLong(l10n.t("Stripdown: making the papers"), (token) =>
      client.sendRequest<R | null>(method, params, token),
    );
  const names = await ask<DocumentNamesAnswer>(documentNamesRequest, { uri, kinds } satisfies DocumentNamesParams);
  if (names === undefined) return undefined;
  const there: Record<string, string> = {};
  for (const name of names?.names ?? []) {
    const old = await read(Uri.joinPath(folder, name));
    if (old) there[name] = base64(old);
  }
  const listAt = names && Uri.joinPath(folder, names.list),
    list = listAt ? await read(listAt) : undefined;
  let made: DocumentsAnswer | null | undefined;
  try {
    made = await ask<DocumentsAnswer>(documentsRequest, {
      uri,
      kinds,
      there,
      list: list && new TextDecoder().decode(list),
      ...(asked.language === undefined ? {} : { language: asked.language }),
      ...(asked.reader === undefined ? {} : { reader: asked.reader }),
    } satisfies DocumentsParams);
  } catch (error) {
    void window.showErrorMessage(l10n.t("Not written: {0}", error instanceof Error ? error.message : String(error)));
    return undefined;
  }
  // Broken off: nothing was written yet.
  if (made === undefined) return undefined;
  if (!made || !listAt) {
    void window.showInformationMessage(l10n.t("This file has no procedure to print"));
    return undefined;
  }
  const written: Uri[] = [];
  try {
    await workspace.fs.createDirectory(folder);
    for (const { name, text } of made.files) {
      await replace(folder, name, text);
      written.push(Uri.joinPath(folder, name));
    }
    if (written.length > 0) await replace(folder, names.list, made.list);
  } catch (error) {
    void window.showErrorMessage(
      l10n.t("Not written into {0}: {1}", shown(folder), error instanceof Error ? error.message : String(error)),
    );
    return { written, left: made.left.map(({ name }) => name) };
  }
  tell(folder, made, kinds, written);
  return { written, left: made.left.map(({ name }) => name) };
}

async function pickKinds(): Promise<readonly string[] | undefined> {
  const all: readonly (QuickPickItem & { readonly asks: string })[] = [
    { label: l10n.t("Manual"), description: asSet(), asks: "manual", picked: true },
    {
      label: l10n.t("Sheets"),
      description: l10n.t("Torques, layout, preparation, isolation, lifting, handover, waiting, waste"),
      asks: "sheets",
    },
    { label: l10n.t("Labels"), description: l10n.t("For bags and trays"), asks: "labels" },
  ];
  const picked = await window.showQuickPick(all, {
    title: l10n.t("Write as HTML files"),
    placeHolder: l10n.t("What is to be written?"),
    canPickMany: true,
  });
  return picked?.map(({ asks }) => asks);
}

/** What the settings say of the papers, so that nobody has to look there first. */
function asSet(): string {
  const settings = workspace.getConfiguration("stripdown.manual"),
    readers: Readonly<Record<string, string>> = {
      teacher: l10n.t("For a teacher"),
      customer: l10n.t("For a customer"),
    },
    reader = readers[settings.get<string>("reader") ?? ""] ?? l10n.t("For a technician");
  return l10n.t("{0}, in {1} (settings: stripdown.manual)", reader, settings.get<string>("language") || "en-GB");
}

async function pickFolder(source: Uri): Promise<Uri | undefined> {
  // A text that was never saved has no folder of its own.
  const beside = source.scheme === "untitled" ? undefined : Uri.joinPath(source, "..");
  if (beside) {
    const here = { label: l10n.t("Beside the text"), description: shown(beside) },
      other = { label: l10n.t("Into another folder…") };
    const picked = await window.showQuickPick([here, other], { title: l10n.t("Where to?") });
    if (picked !== other) return picked && beside;
  }
  const chosen = await window.showOpenDialog({
    canSelectFiles: false,
    canSelectFolders: true,
    openLabel: l10n.t("Write here"),
    ...(beside ? { defaultUri: beside } : {}),
  });
  return chosen?.[0];
}

function tell(folder: Uri, made: DocumentsAnswer, kinds: readonly string[], written: readonly Uri[]): void {
  const [first] = written;
  if (made.left.length > 0)
    void window.showWarningMessage(
      l10n.t(
        "Left as it is: {0}. It was not made by Stripdown, or was changed since: rename it, or write into another folder",
        made.left.map(({ name }) => name).join(", "),
      ),
    );
  if (!first) return;
  const says = [
    written.length === 1
      ? l10n.t("Written: {0}", shown(first))
      : l10n.t("{0} files written into {1}", written.length, shown(folder)),
    ...(made.open > 0 ? [l10n.t("Findings are open, so this is a draft")] : []),
    ...(made.pictures > 0
      ? [
          made.pictures === 1
            ? l10n.t("1 picture is named and not shown: stripdown manual on the command line takes it in")
            : l10n.t(
                "{0} pictures are named and not shown: stripdown manual on the command line takes them in",
                made.pictures,
              ),
        ]
      : []),
    ...(kinds.includes("manual")
      ? [l10n.t("For a PDF: stripdown manual --as pdf on the command line, where its renderer is installed")]
      : []),
  ];
  void window.showInformationMessage(`${says.join(". ")}.`);
  for (const line of made.says) void window.showWarningMessage(line);
}

const shown = (uri: Uri): string => workspace.asRelativePath(uri, false);

/** Undefined where no file stands. What stands there and cannot be read is an error: it must not be taken for free. */
async function read(uri: Uri): Promise<Uint8Array | undefined> {
  try {
    if ((await workspace.fs.stat(uri)).type === FileType.Directory) return new Uint8Array();
  } catch {
    return undefined;
  }
  return await workspace.fs.readFile(uri);
}

/** Beside it first and then renamed, so that a reader never sees half a file. */
async function replace(folder: Uri, name: string, text: string): Promise<void> {
  const beside = Uri.joinPath(folder, `.${name}.new`);
  await workspace.fs.writeFile(beside, new TextEncoder().encode(text));
  await workspace.fs.rename(beside, Uri.joinPath(folder, name), { overwrite: true });
}

/** In pieces: a call takes no million arguments. */
function base64(bytes: Uint8Array): string {
  let signs = "";
  for (let at = 0; at < bytes.length; at += 8192) signs += String.fromCharCode(...bytes.subarray(at, at + 8192));
  return btoa(signs);
}
