// The check as a task, what the problem matcher makes of its lines, and the walkthrough.

import * as assert from "node:assert/strict";
import { mkdir, rename, rm, writeFile } from "node:fs/promises";
import * as vscode from "vscode";
import { until } from "./until.ts";
import { errors, open, replace, revert } from "./workbench.ts";
import { longTexts } from "./long-texts.ts";

export const tasks: Readonly<Record<string, () => Promise<void>>> = {
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
      const code = await ends(task!);
      assert.equal(code, 0, `what is gone again is not told of: ${told()}`);
    } finally {
      await vscode.workspace.fs.delete(vscode.Uri.joinPath(file, ".."), { recursive: true });
    }
  },
  async "the check of a folder is broken off where its terminal is closed, and the rest goes on"() {
    const folder = vscode.Uri.joinPath(vscode.workspace.workspaceFolders![0]!.uri, "long");
    try {
      for (const [name, text] of longTexts(80))
        await vscode.workspace.fs.writeFile(vscode.Uri.joinPath(folder, name), new TextEncoder().encode(text));
      const [task] = await vscode.tasks.fetchTasks({ type: "stripdown" });
      const execution = await vscode.tasks.executeTask(task!);
      await new Promise((resolve) => {
        setTimeout(resolve, 300);
      });
      execution.terminate();
      await until(
        () => vscode.tasks.taskExecutions.length,
        (running) => running === 0,
      );
      const unit = await open("long/unit.strip");
      await replace(unit, "joins p0 to frame", "joins p0 to nothing");
      await until(
        () => errors(unit),
        (list) => list.length > 0,
      );
      await revert(unit);
    } finally {
      await vscode.commands.executeCommand("workbench.action.closeActiveEditor");
      await vscode.workspace.fs.delete(folder, { recursive: true });
    }
  },
  async "a folder that another program renames: what uses its files is told at once, and when it comes back"() {
    const root = vscode.workspace.workspaceFolders![0]!.uri,
      at = (...names: string[]): string => vscode.Uri.joinPath(root, ...names).fsPath;
    await mkdir(at("lent"));
    await writeFile(at("lent", "box.strip"), 'unit box "Box" {\n  base foot\n  part foot "Foot"\n}\n');
    await writeFile(
      at("uses.strip"),
      'use "lent/box.strip"\nprocedure look "Look" for box {\n  aim none\n  step "Look" { note "n" }\n}\n',
    );
    try {
      const document = await open("uses.strip");
      const told = async (count: number): Promise<void> => {
        await until(
          () => errors(document).map(({ message }) => message),
          (list) => (count === 0 ? list.length === 0 : list.length > 0),
        );
      };
      await told(0);
      await rename(at("lent"), at("kept"));
      await told(1);
      await rename(at("kept"), at("lent"));
      await told(0);
      await vscode.commands.executeCommand("workbench.action.closeActiveEditor");
    } finally {
      for (const name of ["lent", "kept", "uses.strip"]) await rm(at(name), { recursive: true, force: true });
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

/** All that is told of the folder now. */
const told = (): string =>
  vscode.languages
    .getDiagnostics()
    .flatMap(([uri, list]) => list.map((one) => `${uri.path}:${one.range.start.line + 1} ${one.message}`))
    .join("\n");

/** What the problem matcher made of a task's lines: the findings of the server carry the page of their check, these a bare code. */
const listed = (uri: vscode.Uri): vscode.Diagnostic[] =>
  vscode.languages.getDiagnostics(uri).filter((one) => typeof one.code !== "object");
