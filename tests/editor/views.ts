// What is shown beside the text, and the papers that the editor writes.

import * as assert from "node:assert/strict";
import { mkdir, readFile, rm, writeFile } from "node:fs/promises";
import * as vscode from "vscode";
import type { Written } from "../../client/documents.ts";
import { longTexts } from "./long-texts.ts";
import { until } from "./until.ts";
import { strip, winch, lockOff, api, open, cursor, replace, revert } from "./workbench.ts";

/** Where the one who holds mouse and page tells what the page showed; undefined where nobody does. */
const rig = process.env["EDITOR_RIG"];
/** Nothing while it is being written. */
const rigSaw = async (): Promise<{ progress?: string; buttons?: number }> => {
  try {
    return JSON.parse(await readFile(rig!, "utf8")) as { progress?: string; buttons?: number };
  } catch {
    return {};
  }
};

/** A picture of one point. */
const pixel = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";

export const views: Readonly<Record<string, () => Promise<void>>> = {
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
  async "the live manual shows the pictures that the text names, and none from outside of the folder"() {
    const folder = vscode.workspace.workspaceFolders![0]!.uri,
      at = (name: string): vscode.Uri => vscode.Uri.joinPath(folder, name),
      text =
        'unit box "Box" {\n  base foot\n  part foot "Foot"\n}\nprocedure look "Look" for box {\n  aim none\n  step "Look" {\n' +
        '    photo "a b.png" "The foot"\n    photo "c.svg" "The drawing"\n    photo "../outside.png" "Elsewhere"\n    note "n"\n  }\n}\n';
    const { manualShows } = await api();
    try {
      await vscode.workspace.fs.writeFile(at("a b.png"), Buffer.from(pixel, "base64"));
      await vscode.workspace.fs.writeFile(
        at("c.svg"),
        new TextEncoder().encode(
          '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><path d="M0 0h9"/></svg>',
        ),
      );
      await vscode.workspace.fs.writeFile(at("pictures.strip"), new TextEncoder().encode(text));
      const document = await open("pictures.strip");
      await vscode.commands.executeCommand("stripdown.showManual");
      await until(
        () => manualShows()?.pictures,
        (shown) => shown?.loaded === 2 && shown.failed === 0,
      );
      await vscode.commands.executeCommand("workbench.action.closeEditorsInOtherGroups");
      // The editor keeps a text for minutes that was opened by a program: nothing may be found in it then.
      await replace(document, text, text.replace(/ *photo .*\n/g, ""));
      await document.save();
      await vscode.commands.executeCommand("workbench.action.closeActiveEditor");
    } finally {
      for (const name of ["a b.png", "c.svg", "pictures.strip"]) await vscode.workspace.fs.delete(at(name));
    }
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
  async "long work that goes on has a button that breaks it off"() {
    if (!rig) return;
    const folder = vscode.Uri.joinPath(vscode.workspace.workspaceFolders![0]!.uri, "longer"),
      last = vscode.Uri.joinPath(folder, "job-99.strip"); // by its name the last one of all
    let asked: vscode.Disposable | undefined;
    try {
      await mkdir(folder.fsPath);
      await writeFile(vscode.Uri.joinPath(folder, "unit.strip").fsPath, longTexts(0, 800)[0]![1]);
      const unit = await open("longer/unit.strip");
      const seen = (shown: number): Promise<boolean> =>
        until(
          async () => (await rigSaw()).buttons ?? 0,
          (count) => count > shown,
          undefined,
          10_000,
        ).then(
          () => true,
          () => false,
        );
      // As many as this machine needs to be busy for so long that there is something left to break off.
      let isBrokenOff = false;
      for (let count = 120; count <= 960 && !isBrokenOff; count *= 2) {
        for (const [name, text] of longTexts(count, 800).slice(1))
          await writeFile(vscode.Uri.joinPath(folder, name).fsPath, text);
        // The watcher of the disk has told of all files.
        await until(
          () =>
            vscode.commands.executeCommand<vscode.SymbolInformation[]>(
              "vscode.executeWorkspaceSymbolProvider",
              `job-${count - 1}`,
            ),
          (found) => found.some(({ location }) => location.uri.path.endsWith(`/job-${count - 1}.strip`)),
        );
        // Work that was done to its end before has told of it: that is gone again, or what is broken off would leave it standing.
        await until(
          () => vscode.languages.getDiagnostics(last).length,
          (told) => told === 0,
          undefined,
          60_000,
        );
        asked = vscode.window.setStatusBarMessage("rig:cancel");
        // A test's window shows no notification by itself; the list of them does, until it is empty again.
        await vscode.commands.executeCommand("notifications.showList");
        await rm(rig, { force: true });
        // Every procedure has something to tell now, and not before.
        await replace(unit, "joins p0 to frame", "joins p0 to frame  behind p1");
        if (await seen(1)) {
          // Both signs go.
          await until(
            async () => {
              await rm(rig, { force: true });
              await new Promise((resolve) => {
                setTimeout(resolve, 700);
              });
              return await rigSaw();
            },
            (saw) => saw.buttons === undefined,
          );
          isBrokenOff = vscode.languages.getDiagnostics(last).length === 0;
        }
        asked.dispose();
        await revert(unit);
      }
      assert.ok(isBrokenOff, "a button is there, and the last procedure is not performed once it is pressed");
    } finally {
      asked?.dispose();
      await vscode.commands.executeCommand("notifications.hideList");
      await revert(await open("longer/unit.strip"));
      await vscode.commands.executeCommand("workbench.action.closeActiveEditor");
      await rm(folder.fsPath, { recursive: true });
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
    assert.match(page!.getText(), /REFIT[\s\S]*Mooring winch|Mooring winch[\s\S]*REFIT/);
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
};
