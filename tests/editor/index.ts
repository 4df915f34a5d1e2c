// The tests that run inside VS Code's extension host, on the packed extension and a copy of the flagship example. Only the `vscode` API is
// used, so that every host is served alike.

import * as assert from "node:assert/strict";
import { writeFile } from "node:fs/promises";
import * as vscode from "vscode";
import { until } from "./until.ts";
import { strip, winch, lockOff, api, open, fromTheStart, told, errors, replace, insert, revert } from "./workbench.ts";
import { tasks } from "./tasks.ts";
import { views } from "./views.ts";

const text: Readonly<Record<string, () => Promise<void>>> = {
  async "the flagship opens without an error"() {
    const document = await open(strip);
    assert.equal(document.languageId, "strip");
    await api();
    await until(
      () => vscode.commands.executeCommand<vscode.CodeLens[]>("vscode.executeCodeLensProvider", document.uri),
      (lenses) => lenses.length > 10,
    );
    assert.deepEqual(errors(document), []);
  },
  async "a finding with related places appears and vanishes on edit"() {
    const document = await open(strip);
    await replace(document, "    undo brake-guard-bolts into tray A\n", "");
    const found = await told(document, /^Brake guard cannot come off: still held by/);
    assert.equal(
      found[0]!.range.start.line,
      document.positionAt(document.getText().indexOf("remove brake-guard")).line,
    );
    assert.ok(
      found[0]!.relatedInformation!.some((one) => one.location.uri.path.endsWith("/winch.strip")),
      "a related place lies in the unit's file",
    );
    assert.ok(
      typeof found[0]!.code === "object" && found[0]!.code.target.scheme === "stripdown-check",
      "the code leads to the page of the check",
    );
    const page = await vscode.workspace.openTextDocument(found[0]!.code.target);
    assert.match(page.getText(), /sequence\/still-held/);
    // Whoever follows the link reads a page, not its markup.
    await vscode.commands.executeCommand("vscode.open", found[0]!.code.target, vscode.ViewColumn.Beside);
    await until(
      () => vscode.window.tabGroups.all.flatMap(({ tabs }) => tabs.map(({ input }) => input)),
      (inputs) =>
        inputs.some((one) => one instanceof vscode.TabInputCustom && one.viewType === "vscode.markdown.preview.editor"),
    );
    await vscode.commands.executeCommand("workbench.action.closeActiveEditor");
    await replace(
      document,
      "    remove brake-guard\n",
      "    undo brake-guard-bolts into tray A\n    remove brake-guard\n",
    );
    await until(
      () => errors(document),
      (list) => list.length === 0,
    );
    await revert(document);
  },
  async "a remedy makes the file clean"() {
    const document = await open(strip);
    await replace(document, "    undo rope-clamp-screws into tray B\n", "");
    const [finding] = await told(document, /^Rope clamps cannot come off: still held by/);
    const actions = await vscode.commands.executeCommand<vscode.CodeAction[]>(
      "vscode.executeCodeActionProvider",
      document.uri,
      finding!.range,
      vscode.CodeActionKind.QuickFix.value,
    );
    const fix = actions.find((one) => one.title === "Insert: undo rope-clamp-screws");
    assert.ok(fix?.edit, `no such remedy among: ${actions.map((one) => one.title).join("; ")}`);
    assert.ok(await vscode.workspace.applyEdit(fix.edit));
    await until(
      () => errors(document),
      (list) => list.length === 0,
    );
    await revert(document);
  },
  async "everything that must come first is written by one remedy"() {
    const document = await open(strip);
    await replace(
      document,
      "    undo drum-guard-bolts into tray A\n    remove drum-guard\n",
      "    remove drum-guard\n",
    );
    const [finding] = await told(document, /^Drum guard cannot come off: still held by/);
    const actions = await vscode.commands.executeCommand<vscode.CodeAction[]>(
      "vscode.executeCodeActionProvider",
      document.uri,
      finding!.range,
      vscode.CodeActionKind.QuickFix.value,
      10,
    );
    const fix = actions.find((one) => /frees drum-guard|free drum-guard|come before this/.test(one.title));
    assert.ok(fix?.edit, `not worked out: ${actions.map((one) => one.title).join("; ")}`);
    assert.ok(await vscode.workspace.applyEdit(fix.edit));
    await until(
      () => errors(document),
      (list) => list.length === 0,
    );
    await revert(document);
  },
  async "completion knows the bench: what is out is not proposed"() {
    const document = await open(strip),
      at = document.positionAt(document.getText().indexOf("    remove brake-guard"));
    await insert(document, at, "    undo \n");
    const list = await vscode.commands.executeCommand<vscode.CompletionList>(
      "vscode.executeCompletionItemProvider",
      document.uri,
      at.translate(0, 9),
    );
    const labels = list.items.map((item) => (typeof item.label === "string" ? item.label : item.label.label));
    assert.ok(labels.includes("motor-flange-screws"), labels.join());
    assert.ok(!labels.includes("brake-guard-bolts"), "out already");
    await revert(document);
  },
  async "hover, definition and references"() {
    const document = await open(strip),
      at = document.positionAt(document.getText().indexOf("motor-flange-screws") + 3);
    const hovers = await vscode.commands.executeCommand<vscode.Hover[]>(
      "vscode.executeHoverProvider",
      document.uri,
      at,
    );
    assert.match(
      hovers.flatMap((one) => one.contents.map((part) => (typeof part === "string" ? part : part.value))).join("\n"),
      /Motor flange screws[\s\S]*yield/,
    );
    const [definition] = await vscode.commands.executeCommand<(vscode.Location | vscode.LocationLink)[]>(
      "vscode.executeDefinitionProvider",
      document.uri,
      at,
    );
    assert.ok(("targetUri" in definition! ? definition.targetUri : definition!.uri).path.endsWith("/winch.strip"));
    const references = await vscode.commands.executeCommand<vscode.Location[]>(
      "vscode.executeReferenceProvider",
      document.uri,
      at,
    );
    assert.ok(new Set(references.map((one) => one.uri.path)).size > 1);
  },
  async "rename goes through every file, closed ones too"() {
    const document = await open(strip),
      at = document.positionAt(document.getText().indexOf("brake-hub") + 2);
    const edit = await vscode.commands.executeCommand<vscode.WorkspaceEdit>(
      "vscode.executeDocumentRenameProvider",
      document.uri,
      at,
      "hub-of-the-brake",
    );
    const files = edit
      .entries()
      .map(([uri]) => uri.path.split("/").pop()!)
      .sort((a, b) => (a < b ? -1 : 1));
    assert.deepEqual(files, ["strip.strip", "winch.strip"]);
    assert.ok(await vscode.workspace.applyEdit(edit));
    assert.ok(!document.getText().includes("brake-hub"));
    await until(
      () => errors(document),
      (list) => list.length === 0,
    );
    const unit = await open(winch);
    assert.ok(unit.getText().includes("hub-of-the-brake"));
    await revert(unit);
    await revert(await open(strip));
    // Nothing of it may be left for the tests after this one.
    assert.ok(
      document.getText().includes("brake-hub") && !unit.getText().includes("hub-of-the-brake"),
      "both files are as they were",
    );
    await until(
      () => errors(document),
      (list) => list.length === 0,
    );
  },
  async "layout changes nothing that is laid out already"() {
    const document = await open(lockOff),
      edits = await vscode.commands.executeCommand<vscode.TextEdit[] | undefined>(
        "vscode.executeFormatDocumentProvider",
        document.uri,
        { tabSize: 2, insertSpaces: true },
      );
    assert.deepEqual(edits ?? [], []);
  },
  async "layout of two selected places at once leaves the rest as it is"() {
    const document = await open(strip),
      lines = ["    undo drum-guard-bolts", "    remove drum-guard", "    remove brake-guard"];
    for (const line of lines) await replace(document, line, `  ${line}`);
    const editor = vscode.window.activeTextEditor!,
      whole = (line: string): vscode.Selection => {
        const { range } = document.lineAt(document.positionAt(document.getText().indexOf(`  ${line}`)));
        return new vscode.Selection(range.start, range.end);
      };
    editor.selections = [whole(lines[0]!), whole(lines[2]!)];
    await vscode.commands.executeCommand("editor.action.formatSelection");
    await until(
      () => lines.map((line) => document.getText().includes(`\n  ${line}`)),
      (shifted) => !shifted[0] && !shifted[2],
    );
    assert.ok(document.getText().includes(`\n  ${lines[1]!}`), "what was not selected stays");
    await revert(document);
  },
  async "outline, folding, colours, hints and links are there"() {
    const document = await open(strip),
      { uri } = document,
      whole = new vscode.Range(0, 0, document.lineCount, 0);
    assert.equal(
      (await vscode.commands.executeCommand<vscode.DocumentSymbol[]>("vscode.executeDocumentSymbolProvider", uri))[0]!
        .name,
      "winch-strip",
    );
    assert.ok(
      (await vscode.commands.executeCommand<vscode.FoldingRange[]>("vscode.executeFoldingRangeProvider", uri)).length >
        10,
    );
    assert.ok(
      (await vscode.commands.executeCommand<vscode.SemanticTokens>("vscode.provideDocumentSemanticTokens", uri)).data
        .length > 500,
    );
    assert.ok(
      (await vscode.commands.executeCommand<vscode.InlayHint[]>("vscode.executeInlayHintProvider", uri, whole)).some(
        (hint) => hint.label === "6 of 8 out",
      ),
    );
    assert.ok(
      (await vscode.commands.executeCommand<vscode.DocumentLink[]>("vscode.executeLinkProvider", uri)).length >= 2,
    );
  },
};

/** VS Code calls this in the extension host; a rejection makes the host exit with 1. */
export async function run(): Promise<void> {
  const results: { name: string; error?: string }[] = [];
  const only = new RegExp(process.env["EDITOR_TEST_ONLY"] ?? "");
  for (const [name, test] of Object.entries({ ...text, ...views, ...tasks })) {
    if (!only.test(name)) continue;
    try {
      await fromTheStart();
      await test();
      results.push({ name });
    } catch (error) {
      results.push({ name, error: error instanceof Error ? (error.stack ?? error.message) : String(error) });
    }
  }
  const file = process.env["EDITOR_TEST_RESULT"];
  if (file)
    await writeFile(file, JSON.stringify({ vscode: vscode.version, host: vscode.env.appName, results }, null, 2));
  const failed = results.filter((result) => result.error);
  if (failed.length > 0) throw new Error(failed.map((result) => `${result.name}\n${result.error}`).join("\n\n"));
}
