// The tests that run in the worker host of VS Code for the web: the server is a worker there and gets the texts from the client. No Node.

import * as vscode from "vscode";
import type { Written } from "../../client/documents.ts";
import type { Api } from "../../client/start.ts";
import { until } from "./until.ts";

const assert = (is: boolean, says: string): void => {
  if (!is) throw new Error(says);
};

const tests: Readonly<Record<string, () => Promise<void>>> = {
  async "in a browser: a file that is used is read through the client, and nothing is found amiss"() {
    const document = await open("main.strip");
    await vscode.extensions.getExtension<Api>("stripdown.stripdown")!.activate();
    await until(
      () => vscode.commands.executeCommand<vscode.CodeLens[]>("vscode.executeCodeLensProvider", document.uri),
      (lenses) => lenses.length > 0,
    );
    await until(
      () => vscode.languages.getDiagnostics(document.uri).map((one) => one.message),
      (list) => list.length === 0,
    );
  },
  async "in a browser: a finding appears, and a remedy clears it"() {
    const document = await open("main.strip"),
      text = document.getText(),
      at = text.indexOf("    undo lid-screws\n"),
      edit = new vscode.WorkspaceEdit();
    edit.delete(
      document.uri,
      new vscode.Range(document.positionAt(at), document.positionAt(at + "    undo lid-screws\n".length)),
    );
    await vscode.workspace.applyEdit(edit);
    const [finding] = await until(
      () => vscode.languages.getDiagnostics(document.uri),
      (list) => list.length > 0,
    );
    assert(finding!.message.startsWith("Lid cannot come off: still held by 4 of 4 Lid screws"), finding!.message);
    const actions = await vscode.commands.executeCommand<vscode.CodeAction[]>(
      "vscode.executeCodeActionProvider",
      document.uri,
      finding!.range,
      vscode.CodeActionKind.QuickFix.value,
    );
    await vscode.workspace.applyEdit(actions.find((one) => one.title === "Insert: undo lid-screws")!.edit!);
    await until(
      () => vscode.languages.getDiagnostics(document.uri),
      (list) => list.length === 0,
    );
  },
  async "in a browser: the manual and the labels are written through the editor's file system"() {
    const document = await open("main.strip"),
      folder = vscode.Uri.joinPath(document.uri, "..", "papers");
    const write = (): Thenable<Written | undefined> =>
      vscode.commands.executeCommand("stripdown.writeDocuments", { kinds: ["manual", "labels"], folder });
    const first = await write();
    assert(first?.written.length === 2, `written: ${JSON.stringify(first)}`);
    const page = vscode.Uri.joinPath(folder, "main-manual.html"),
      text = new TextDecoder().decode(await vscode.workspace.fs.readFile(page));
    assert(/^<!doctype html>/i.test(text), text.slice(0, 100));
    await vscode.workspace.fs.writeFile(page, new TextEncoder().encode("changed"));
    const again = await write();
    assert(again?.left.join() === "main-manual.html", `left: ${JSON.stringify(again)}`);
    assert(new TextDecoder().decode(await vscode.workspace.fs.readFile(page)) === "changed", "it stays");
  },
  async "in a browser: the manual beside the text opens, and a picture of a folder that is no disk is named"() {
    await open("main.strip");
    const { manualShows } = await vscode.extensions.getExtension<Api>("stripdown.stripdown")!.activate();
    await vscode.commands.executeCommand("stripdown.showManual");
    const shows = await until(manualShows, (now) => (now?.title ?? "") !== "");
    assert(/Strip/.test(shows!.title), shows!.title);
    assert(/lid\.png.*shows only what lies on a disk/s.test(shows!.named.join()), `named: ${shows!.named.join()}`);
    assert(shows!.pictures.loaded + shows!.pictures.failed === 0, "nothing is loaded that is not there");
    const tabs = vscode.window.tabGroups.all.flatMap(({ tabs: all }) => all);
    await vscode.window.tabGroups.close(tabs.filter(({ input }) => input instanceof vscode.TabInputWebview));
  },
  async "in a browser: language and reader of the manual by a question"() {
    await open("main.strip");
    const folder = vscode.Uri.joinPath(vscode.workspace.workspaceFolders![0]!.uri, "papiere");
    const made = await vscode.commands.executeCommand<Written | undefined>("stripdown.writeDocuments", {
      kinds: ["manual"],
      folder,
      language: "de",
      reader: "customer",
    });
    assert(made?.written.length === 1, `written: ${JSON.stringify(made)}`);
    const text = new TextDecoder().decode(await vscode.workspace.fs.readFile(made!.written[0]!));
    assert(text.includes('<html lang="de">'), text.slice(0, 100));
    assert(text.includes("lid.png") || text.includes("The lid"), "its picture is named");
  },
  async "in a browser: the check of the folder runs as a task, without a program"() {
    const [task] = await vscode.tasks.fetchTasks({ type: "stripdown" });
    assert(task !== undefined, "the extension offers a task");
    let code: number | undefined;
    const ended = vscode.tasks.onDidEndTaskProcess((event) => {
      code = event.exitCode;
    });
    await vscode.tasks.executeTask(task!);
    await until(
      () => code,
      (now) => now !== undefined,
    );
    ended.dispose();
    assert(code === 0, `nothing is amiss, and it ends with ${code}`);
  },
  async "in a browser: the bench at the cursor"() {
    const document = await open("main.strip"),
      { benchText } = await vscode.extensions.getExtension<Api>("stripdown.stripdown")!.activate();
    const at = document.positionAt(document.getText().indexOf("undo lid-screws") + 4);
    vscode.window.activeTextEditor!.selection = new vscode.Selection(at, at);
    let text = "";
    await until(
      () => text,
      (now) => now.includes("Lid screws: line"),
      async () => {
        text = await benchText();
      },
    );
  },
};

/** The host ends with an error when one fails; each result is a line of the console. */
export async function run(): Promise<void> {
  let failed = 0;
  for (const [name, test] of Object.entries(tests)) {
    try {
      await test();
      console.log(`stripdown-test ${JSON.stringify({ name })}`);
    } catch (error) {
      failed++;
      console.log(
        `stripdown-test ${JSON.stringify({ name, error: error instanceof Error ? error.message : String(error) })}`,
      );
    }
  }
  if (failed > 0) throw new Error(`${failed} failed`);
}

async function open(name: string): Promise<vscode.TextDocument> {
  const document = await vscode.workspace.openTextDocument(
    vscode.Uri.joinPath(vscode.workspace.workspaceFolders![0]!.uri, name),
  );
  await vscode.window.showTextDocument(document, vscode.ViewColumn.One);
  return document;
}
