// The tests that run inside VS Code's extension host, on the packed extension and a copy of the flagship example. Only the `vscode` API is
// used, so that every host is served alike.

import * as assert from "node:assert/strict";
import { readFile, rm, writeFile } from "node:fs/promises";
import * as vscode from "vscode";
import type { Written } from "../../client/documents.ts";
import type { Api } from "../../client/start.ts";
import { until } from "./until.ts";

const strip = "mooring-winch/strip.strip",
  winch = "mooring-winch/winch.strip",
  lockOff = "mooring-winch/lock-off.strip";

/** Where the one who holds mouse and page tells what the page showed; undefined where nobody does. */
const rig = process.env["EDITOR_RIG"];
const rigSaw = async (): Promise<{ progress?: string }> =>
  JSON.parse(await readFile(rig!, "utf8").catch(() => "{}")) as { progress?: string };

const tests: Readonly<Record<string, () => Promise<void>>> = {
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
  async "the bench view at three places of the procedure"() {
    const document = await open(strip),
      { benchText } = await api();
    const at = async (line: string): Promise<string> => {
      cursor(document, line);
      let text = "";
      await until(
        () => text,
        (now) => now !== "" && now.includes("Still in"),
        async () => {
          text = await benchText();
        },
      );
      return text;
    };
    const shown = async (line: string, ...parts: RegExp[]): Promise<void> => {
      await until(
        () => parts.filter((part) => !part.test(last)),
        (missing) => missing.length === 0,
        async () => {
          last = await at(line);
        },
      );
    };
    let last = "";
    await shown("    cool hot-skin", /Drum guard bolts/, /Precautions taken: \d+/);
    await shown("    undo 6 of motor-flange-screws", /Motor flange screws: 2 of 8 in/, /Off: \d+/, /Drum guard: line/);
    await shown(
      "    remove brake-cover by 2 people",
      /Position: motor-up/,
      /Brake cover: line/,
      /Hazards that nobody considered|Precautions taken/,
    );
    assert.doesNotMatch(last, /\b(safe|OK|passed|complies)\b/i);
  },
  async "the live manual follows the cursor"() {
    const document = await open(strip),
      { manualShows } = await api();
    cursor(document, "    undo drum-guard-bolts");
    await vscode.commands.executeCommand("stripdown.showManual");
    const first = await until(
      () => manualShows()?.id,
      (id) => id !== undefined,
    );
    await vscode.window.showTextDocument(document, vscode.ViewColumn.One);
    cursor(document, "    remove hub-circlip");
    const second = await until(
      () => manualShows()?.id,
      (id) => id !== undefined && id !== first,
    );
    assert.match(second!, /line-/);
    assert.match(manualShows()!.title, /Mooring winch/);
    await vscode.commands.executeCommand("workbench.action.closeEditorsInOtherGroups");
  },
  async "the source follows the page of the manual when that is scrolled"() {
    if (!rig) return; // nobody there to turn the wheel
    const document = await open(strip),
      { manualShows } = await api();
    cursor(document, "    undo drum-guard-bolts");
    await vscode.commands.executeCommand("stripdown.showManual");
    await until(
      () => manualShows()?.id,
      (id) => id !== undefined,
    );
    await vscode.window.showTextDocument(document, vscode.ViewColumn.One);
    const top = (): number => vscode.window.activeTextEditor!.visibleRanges[0]!.start.line,
      before = top(),
      asked = vscode.window.setStatusBarMessage("rig:wheel");
    await until(top, (now) => now > before + 20);
    asked.dispose();
    await vscode.commands.executeCommand("workbench.action.closeEditorsInOtherGroups");
  },
  async "long work shows that it goes on"() {
    if (!rig) return;
    const folder = vscode.Uri.joinPath(vscode.workspace.workspaceFolders![0]!.uri, "long");
    try {
      for (const [name, text] of longTexts(80))
        await vscode.workspace.fs.writeFile(vscode.Uri.joinPath(folder, name), new TextEncoder().encode(text));
      const unit = await open("long/unit.strip");
      // The first edits may come before the watcher of the disk has told of all files, and then there is not much to do.
      let isShown = false;
      for (let i = 0; i < 12 && !isShown; i++) {
        await replace(unit, `count ${4 + i}`, `count ${5 + i}`);
        isShown = await until(
          async () => (await rigSaw()).progress ?? "",
          (text) => /Stripdown: Performing the procedures of the folder/.test(text),
          undefined,
          5_000,
        ).then(
          () => true,
          () => false,
        );
      }
      assert.ok(isShown, "no progress in twelve edits");
    } finally {
      await revert(await open("long/unit.strip"));
      await vscode.commands.executeCommand("workbench.action.closeActiveEditor");
      await vscode.workspace.fs.delete(folder, { recursive: true });
    }
  },
  async "manual, sheets and labels are written, and nothing of somebody's own is written over"() {
    const document = await open(lockOff),
      folder = vscode.Uri.joinPath(document.uri, "..", "papers"),
      of = (name: string): vscode.Uri => vscode.Uri.joinPath(folder, name),
      text = async (name: string): Promise<string> =>
        new TextDecoder().decode(await vscode.workspace.fs.readFile(of(name)));
    const write = (kinds: string[]): Thenable<Written | undefined> =>
      vscode.commands.executeCommand("stripdown.writeDocuments", { kinds, folder });
    try {
      await vscode.workspace.fs.writeFile(of("lock-off-labels.html"), new TextEncoder().encode("my own"));
      const first = await write(["manual", "sheets", "labels"]);
      assert.equal(first!.written.length, 9);
      assert.deepEqual(first!.left, ["lock-off-labels.html"]);
      assert.equal(await text("lock-off-labels.html"), "my own");
      assert.match(await text("lock-off-manual.html"), /^<!doctype html>/i);
      assert.match(await text(".stripdown-made.json"), /"lock-off-manual\.html": "[0-9a-f]{64}"/);
      // What we made may be made again; what was changed since may not.
      assert.deepEqual((await write(["manual"]))!.left, []);
      await vscode.workspace.fs.writeFile(of("lock-off-manual.html"), new TextEncoder().encode("changed"));
      assert.deepEqual(await write(["manual"]), { written: [], left: ["lock-off-manual.html"] });
      assert.equal(await text("lock-off-manual.html"), "changed");
      const names = (await vscode.workspace.fs.readDirectory(folder)).map(([name]) => name);
      assert.deepEqual(
        names.filter((name) => name.endsWith(".new")),
        [],
        "nothing half written is left",
      );
    } finally {
      await vscode.workspace.fs.delete(folder, { recursive: true });
    }
  },
  async "the diagram of the strip"() {
    const document = await open(strip),
      { diagramText } = await api();
    cursor(document, "    undo drum-guard-bolts");
    await vscode.commands.executeCommand("stripdown.showDiagram");
    let text = "";
    await until(
      () => text,
      (now) => /Brake cover after .*Brake cover screws/.test(now),
      async () => {
        text = await diagramText();
      },
    );
    assert.match(text, /^0 /m);
    await vscode.commands.executeCommand("workbench.action.closeEditorsInOtherGroups");
  },
  async "the computed way back is a document that nobody wrote"() {
    const document = await open(strip);
    await vscode.commands.executeCommand("stripdown.showRefit", document.uri.toString());
    const page = await until(
      () => vscode.workspace.textDocuments.find((one) => one.uri.scheme === "stripdown-refit"),
      (one) => one !== undefined,
    );
    assert.match(page!.getText(), /WAY BACK[\s\S]*Mooring winch|Mooring winch[\s\S]*WAY BACK/);
    // It follows the text that it comes from, saved or not.
    const unit = await open(winch);
    await replace(unit, '"Brake cover"', '"Cover of brake"');
    await until(
      () => page!.getText(),
      (text) => /cover\s+of\s+brake/i.test(text),
    );
    await revert(unit);
    await until(
      () => page!.getText(),
      (text) => !/cover\s+of\s+brake/i.test(text),
    );
    await vscode.commands.executeCommand("workbench.action.closeEditorsInOtherGroups");
  },
  async "the check of the folder runs as a task, and what it prints is listed as problems"() {
    await onTrial(async (trial) => {
      const [task] = await vscode.tasks.fetchTasks({ type: "stripdown" });
      assert.ok(task, "the extension offers a task");
      assert.equal(await ends(task), 1, "findings end it with 1");
      const problems = await until(
        () => listed(trial),
        (list) => list.length > 1,
      );
      assert.deepEqual(
        problems
          .map(
            ({ range, severity, message }) => `${range.start.line} ${vscode.DiagnosticSeverity[severity]} ${message}`,
          )
          .sort((a, b) => (a < b ? -1 : 1)),
        [
          "10 Error Lid cannot come off: still held by 4 of 4 Lid screws",
          "11 Information Nothing says whether Lid ring goes back new or used",
        ],
      );
    });
  },
  async "a task that tasks.json names is found, with what it says there"() {
    const file = vscode.Uri.joinPath(vscode.workspace.workspaceFolders![0]!.uri, ".vscode", "tasks.json");
    await vscode.workspace.fs.writeFile(
      file,
      new TextEncoder().encode(
        '{ "version": "2.0.0", "tasks": [{ "type": "stripdown", "strict": true, "label": "look at all", "problemMatcher": ["$stripdown"] }] }',
      ),
    );
    try {
      const task = await until(
        async () => (await vscode.tasks.fetchTasks()).find((one) => one.name === "look at all"),
        (found) => found !== undefined,
      );
      // Made a moment ago by who is not the editor: the task reads the folder, and waits for nobody who watches the disk.
      const { fsPath } = vscode.Uri.joinPath(vscode.workspace.workspaceFolders![0]!.uri, "late.strip");
      await writeFile(fsPath, trialText);
      try {
        assert.equal(await ends(task!), 1);
      } finally {
        await rm(fsPath);
      }
      assert.equal(await ends(task!), 0, "what is gone again is not told of");
    } finally {
      await vscode.workspace.fs.delete(vscode.Uri.joinPath(file, ".."), { recursive: true });
    }
  },
  async "every step of the walkthrough leads to a command and a page that are there"() {
    const extension = vscode.extensions.getExtension("stripdown.stripdown")!,
      known = new Set(await vscode.commands.getCommands(true));
    const { contributes } = extension.packageJSON as {
      contributes: {
        walkthroughs: {
          steps: { id: string; description: string; media: { markdown?: string }; completionEvents?: string[] }[];
        }[];
      };
    };
    const steps = contributes.walkthroughs.flatMap((one) => one.steps);
    assert.ok(steps.length >= 4);
    for (const { id, description, media, completionEvents = [] } of steps) {
      const named = [...description.matchAll(/\(command:([\w.-]+)/g)].map((match) => match[1]!);
      for (const event of completionEvents) if (event.startsWith("onCommand:")) named.push(event.slice(10));
      for (const command of named) assert.ok(known.has(command), `${id} names ${command}`);
      if (media.markdown !== undefined)
        await vscode.workspace.fs.stat(vscode.Uri.joinPath(extension.extensionUri, media.markdown));
    }
  },
  async "the walkthrough's sample has its one mistake"() {
    await vscode.commands.executeCommand("stripdown.openSample");
    const document = vscode.window.activeTextEditor!.document;
    assert.equal(document.languageId, "strip");
    const found = await until(
      () => errors(document),
      (list) => list.length > 0,
    );
    assert.deepEqual(
      found.map((one) => one.message.split("\n")[0]),
      ["Wheel guard cannot come off: still held by 1 of 3 Guard screws"],
    );
    await vscode.commands.executeCommand("workbench.action.revertAndCloseActiveEditor");
  },
};

/** A file with one finding in the folder, for as long as it is wanted. */
async function onTrial(work: (trial: vscode.Uri) => Promise<void>): Promise<void> {
  const trial = vscode.Uri.joinPath(vscode.workspace.workspaceFolders![0]!.uri, "trial.strip");
  await vscode.workspace.fs.writeFile(trial, new TextEncoder().encode(trialText));
  try {
    await work(trial);
  } finally {
    await vscode.workspace.fs.delete(trial);
  }
}

/** With one finding. */
const trialText =
  'unit box "Box" {\n  base foot\n  part foot "Foot"\n  part lid "Lid" { mass 2 kg }\n' +
  '  part ring o-ring "Lid ring" { between lid and foot }\n' +
  '  fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }\n}\n' +
  'procedure open "Open" for box {\n  aim ring off\n  step "Lid off" {\n    remove lid\n    remove ring\n  }\n}\n';

/** A unit with many parts, and procedures that use it: a change in the unit makes all of them be performed again. */
function longTexts(count: number): [name: string, text: string][] {
  const groups = Array.from({ length: 600 }, (_, i) => i);
  const unit = [
    'unit rig "Rig" {\n  base frame\n  part frame "Frame"',
    ...groups.map(
      (i) => `  part p${i} "Part ${i}"\n  fastener s${i} bolt "Bolts ${i}" { count 4  joins p${i} to frame }`,
    ),
    "}\n",
  ];
  const acts = groups.map((i) => `    undo s${i}\n    remove p${i}`).join("\n");
  return [
    ["unit.strip", unit.join("\n")],
    ...Array.from({ length: count }, (_, i): [string, string] => [
      `job-${i}.strip`,
      `use "unit.strip"\nprocedure job-${i} "Job" for rig {\n  aim all apart\n  step "All" {\n${acts}\n  }\n}\n`,
    ]),
  ];
}

/** What the process of a task ends with. */
async function ends(task: vscode.Task): Promise<number | undefined> {
  let code: number | undefined,
    done = false;
  const ended = vscode.tasks.onDidEndTaskProcess((event) => {
    if (event.execution.task.name !== task.name) return;
    done = true;
    code = event.exitCode;
  });
  await vscode.tasks.executeTask(task);
  await until(
    () => done,
    (now) => now,
  );
  ended.dispose();
  return code;
}

/** What the problem matcher made of a task's lines: the findings of the server carry the page of their check, these a bare code. */
const listed = (uri: vscode.Uri): vscode.Diagnostic[] =>
  vscode.languages.getDiagnostics(uri).filter((one) => typeof one.code !== "object");

/** VS Code calls this in the extension host; a rejection makes the host exit with 1. */
export async function run(): Promise<void> {
  const results: { name: string; error?: string }[] = [];
  const only = new RegExp(process.env["EDITOR_TEST_ONLY"] ?? "");
  for (const [name, test] of Object.entries(tests)) {
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

async function api(): Promise<Api> {
  const extension = vscode.extensions.getExtension<Api>("stripdown.stripdown");
  assert.ok(extension, "the extension is installed");
  return await extension.activate();
}

async function open(name: string): Promise<vscode.TextDocument> {
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
async function fromTheStart(): Promise<void> {
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
async function told(document: vscode.TextDocument, says: RegExp): Promise<vscode.Diagnostic[]> {
  const list = await until(
    () => errors(document),
    (now) => now.some((one) => says.test(one.message)),
  );
  return [...list].sort((a, b) => Number(says.test(b.message)) - Number(says.test(a.message)));
}

const errors = (document: vscode.TextDocument): vscode.Diagnostic[] =>
  vscode.languages.getDiagnostics(document.uri).filter((one) => one.severity === vscode.DiagnosticSeverity.Error);

function cursor(document: vscode.TextDocument, line: string): void {
  const at = document.getText().indexOf(line),
    editor = vscode.window.visibleTextEditors.find((one) => one.document === document);
  assert.ok(at >= 0, `"${line}" stands in the file`);
  assert.ok(editor, "an editor shows it");
  const position = document.positionAt(at + line.length - 1);
  editor.selection = new vscode.Selection(position, position);
}

async function replace(document: vscode.TextDocument, what: string, by: string): Promise<void> {
  const at = document.getText().indexOf(what),
    edit = new vscode.WorkspaceEdit();
  assert.ok(at >= 0, `"${what}" stands in the file`);
  edit.replace(document.uri, new vscode.Range(document.positionAt(at), document.positionAt(at + what.length)), by);
  assert.ok(await vscode.workspace.applyEdit(edit));
}

async function insert(document: vscode.TextDocument, at: vscode.Position, text: string): Promise<void> {
  const edit = new vscode.WorkspaceEdit();
  edit.insert(document.uri, at, text);
  assert.ok(await vscode.workspace.applyEdit(edit));
}

async function revert(document: vscode.TextDocument): Promise<void> {
  await vscode.window.showTextDocument(document, vscode.ViewColumn.One);
  await vscode.commands.executeCommand("workbench.action.files.revert");
  await until(
    () => document.isDirty,
    (dirty) => !dirty,
  );
}
