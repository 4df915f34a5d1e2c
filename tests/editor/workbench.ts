// What the tests inside VS Code do by hand: open a file of the flagship example, put the cursor, type, take back.

import * as assert from "node:assert/strict";
import * as vscode from "vscode";
import type { Api } from "../../client/start.ts";
import { until } from "./until.ts";

export const strip = "mooring-winch/strip.strip",
  winch = "mooring-winch/winch.strip",
  lockOff = "mooring-winch/lock-off.strip";

export async function api(): Promise<Api> {
  const extension = vscode.extensions.getExtension<Api>("stripdown.stripdown");
  assert.ok(extension, "the extension is installed");
  return await extension.activate();
}

export async function open(name: string): Promise<vscode.TextDocument> {
  const folder = vscode.workspace.workspaceFolders?.[0];
  assert.ok(folder, "no folder is open");
  const document = await vscode.workspace.openTextDocument(vscode.Uri.joinPath(folder.uri, name));
  await vscode.window.showTextDocument(document, vscode.ViewColumn.One);
  return document;
}

/**
 * Both files as they lie on disk and nothing told of them: what a test before left, or its findings that are still on their way, must
 * not be taken for those of the next one.
 */
export async function fromTheStart(): Promise<void> {
  for (const name of [winch, strip]) {
    const document = await open(name);
    if (document.isDirty) await revert(document);
    await until(
      () => errors(document),
      (list) => list.length === 0,
    );
  }
}

/** The errors of a file once the one expected is among them, that one first: any error at all may be of the text before. */
export async function told(document: vscode.TextDocument, says: RegExp): Promise<vscode.Diagnostic[]> {
  const list = await until(
    () => errors(document),
    (now) => now.some((one) => says.test(one.message)),
  );
  return [...list].sort((a, b) => Number(says.test(b.message)) - Number(says.test(a.message)));
}

export const errors = (document: vscode.TextDocument): vscode.Diagnostic[] =>
  vscode.languages.getDiagnostics(document.uri).filter((one) => one.severity === vscode.DiagnosticSeverity.Error);

export function cursor(document: vscode.TextDocument, line: string): void {
  const at = document.getText().indexOf(line),
    editor = vscode.window.visibleTextEditors.find((one) => one.document === document);
  assert.ok(at >= 0, `"${line}" stands in the file`);
  assert.ok(editor, "an editor shows it");
  const position = document.positionAt(at + line.length - 1);
  editor.selection = new vscode.Selection(position, position);
}

export async function replace(document: vscode.TextDocument, what: string, by: string): Promise<void> {
  const at = document.getText().indexOf(what),
    edit = new vscode.WorkspaceEdit();
  assert.ok(at >= 0, `"${what}" stands in the file`);
  edit.replace(document.uri, new vscode.Range(document.positionAt(at), document.positionAt(at + what.length)), by);
  assert.ok(await vscode.workspace.applyEdit(edit));
}

export async function insert(document: vscode.TextDocument, at: vscode.Position, text: string): Promise<void> {
  const edit = new vscode.WorkspaceEdit();
  edit.insert(document.uri, at, text);
  assert.ok(await vscode.workspace.applyEdit(edit));
}

export async function revert(document: vscode.TextDocument): Promise<void> {
  await vscode.window.showTextDocument(document, vscode.ViewColumn.One);
  await vscode.commands.executeCommand("workbench.action.files.revert");
  await until(
    () => document.isDirty,
    (dirty) => !dirty,
  );
}
