// The tests in a folder that is no disk: another extension brings its file system, and VS Code has no search for it.

import * as assert from "node:assert/strict";
import { writeFile } from "node:fs/promises";
import * as vscode from "vscode";
import type { Written } from "../../client/documents.ts";
import { until } from "./until.ts";

const errors = (uri: vscode.Uri): string[] =>
  vscode.languages
    .getDiagnostics(uri)
    .filter((one) => one.severity === vscode.DiagnosticSeverity.Error)
    .map((one) => one.message.split("\n")[0]!);

const tests: Readonly<Record<string, (folder: vscode.Uri) => Promise<void>>> = {
  async "in a folder that is no disk: what a file uses is read, a finding comes and goes"(folder) {
    const document = await vscode.workspace.openTextDocument(vscode.Uri.joinPath(folder, "jobs", "main.strip"));
    await vscode.window.showTextDocument(document);
    await vscode.extensions.getExtension("stripdown.stripdown")!.activate();
    const change = async (what: string, by: string): Promise<void> => {
      const at = document.getText().indexOf(what),
        edit = new vscode.WorkspaceEdit();
      edit.replace(document.uri, new vscode.Range(document.positionAt(at), document.positionAt(at + what.length)), by);
      assert.ok(await vscode.workspace.applyEdit(edit));
    };
    await change("    undo lid-screws\n", "");
    await until(
      () => errors(document.uri),
      (list) => list.join() === "Lid cannot come off: still held by 4 of 4 Lid screws",
    );
    await change("    remove lid\n", "    undo lid-screws\n    remove lid\n");
    await until(
      () => errors(document.uri),
      (list) => list.length === 0,
    );
  },
  async "in a folder that is no disk: a file that changes outside the editor is read again"(folder) {
    const unit = vscode.Uri.joinPath(folder, "unit.strip"),
      main = vscode.Uri.joinPath(folder, "jobs", "main.strip"),
      text = new TextDecoder().decode(await vscode.workspace.fs.readFile(unit));
    await vscode.workspace.fs.writeFile(unit, new TextEncoder().encode(text.replace("lid-screws", "cover-screws")));
    await until(
      () => errors(main),
      (list) => list.some((one) => one.includes("lid-screws")),
    );
    await vscode.workspace.fs.writeFile(unit, new TextEncoder().encode(text));
    await until(
      () => errors(main),
      (list) => list.length === 0,
    );
  },
  async "in a folder that is no disk: the check runs as a task, and documents are written there"(folder) {
    const [task] = await vscode.tasks.fetchTasks({ type: "stripdown" });
    let code: number | undefined;
    vscode.tasks.onDidEndTaskProcess((event) => {
      code = event.exitCode;
    });
    await vscode.tasks.executeTask(task!);
    await until(
      () => code,
      (now) => now !== undefined,
    );
    assert.equal(code, 0);
    const papers = vscode.Uri.joinPath(folder, "papers"),
      done = await vscode.commands.executeCommand<Written>("stripdown.writeDocuments", {
        kinds: ["manual"],
        folder: papers,
      });
    assert.equal(done.written.length, 1);
    assert.match(new TextDecoder().decode(await vscode.workspace.fs.readFile(done.written[0]!)), /^<!doctype html>/i);
  },
};

export async function run(): Promise<void> {
  const results: { name: string; error?: string }[] = [],
    folder = vscode.workspace.workspaceFolders![0]!.uri;
  for (const [name, test] of Object.entries(tests)) {
    try {
      await test(folder);
      results.push({ name });
    } catch (error) {
      results.push({ name, error: error instanceof Error ? (error.stack ?? error.message) : String(error) });
    }
  }
  await writeFile(process.env["EDITOR_TEST_RESULT"]!, JSON.stringify({ vscode: vscode.version, results }));
}
