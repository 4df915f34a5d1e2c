// An extension that stands beside ours in a folder that nobody trusts, and tells what ours does there: findings, no program started, nothing
// outside of the folder read. A file says itself when it was read last, where the file system keeps that: a file that is read here shows it.

import * as assert from "node:assert/strict";
import { readdirSync, readFileSync, statSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import * as vscode from "vscode";
import { until } from "./until.ts";

const name =
  "in a folder that nobody trusts findings are told, no program is started and nothing outside of it is read";

export async function activate(): Promise<void> {
  let error: string | undefined;
  try {
    await look();
  } catch (thrown) {
    error = thrown instanceof Error ? `${thrown.message}\n${thrown.stack ?? ""}` : String(thrown);
  }
  writeFileSync(
    process.env["EDITOR_TEST_RESULT"]!,
    JSON.stringify({ results: [{ name, ...(error === undefined ? {} : { error }) }] }),
  );
}

async function look(): Promise<void> {
  assert.equal(vscode.workspace.isTrusted, false);
  const folder = vscode.workspace.workspaceFolders![0]!.uri.fsPath,
    outside = join(folder, "../elsewhere"),
    others = ["other.strip", "lid.jpg"].map((one) => join(outside, one)),
    probe = join(outside, "read.txt");
  // Read last long ago, and before it was written last: the next reading shows in every way of keeping that.
  const before = new Date(2001, 1, 1);
  for (const path of [...others, probe]) utimesSync(path, before, new Date(2002, 1, 1));
  const wasRead = (path: string): boolean => statSync(path).atimeMs !== before.getTime();

  const document = await vscode.workspace.openTextDocument(join(folder, "strip.strip"));
  await vscode.window.showTextDocument(document);
  const found = await until(
    () => vscode.languages.getDiagnostics(document.uri),
    (list) => list.length >= 3,
  );
  const codes = found.map(({ code }) => (typeof code === "object" ? code.value : code));
  for (const code of ["names/import-outside", "sequence/still-held"])
    assert.ok(codes.includes(code), `${code} is among ${codes.join()}`);
  const extension = vscode.extensions.getExtension("stripdown.stripdown");
  assert.ok(extension, "the extension is not held back");
  await extension.activate();
  await vscode.commands.executeCommand("stripdown.showManual");
  const program = join(extension.extensionUri.fsPath, "dist", "server.cjs"),
    servers = processes().filter(({ command }) => command.includes(program));
  assert.equal(servers.length, 1, "the server runs");
  const started = processes().filter(({ parent }) => parent === servers[0]!.id);
  assert.deepEqual(started, [], "the server started no program");

  assert.deepEqual(others.filter(wasRead), [], "what lies outside is not read");
  readFileSync(probe);
  assert.ok(wasRead(probe), "this file system tells when a file was read");
}

/** Every process of this machine. */
function processes(): { readonly id: number; readonly parent: number; readonly command: string }[] {
  return readdirSync("/proc")
    .filter((entry) => /^\d+$/.test(entry))
    .flatMap((entry) => {
      try {
        const command = readFileSync(`/proc/${entry}/cmdline`, "utf8").replaceAll("\0", " "),
          // Behind the name of the program, which stands in brackets and may hold anything.
          [, parent] = /\) \S (\d+)/.exec(readFileSync(`/proc/${entry}/stat`, "utf8"))!;
        return [{ id: Number(entry), parent: Number(parent), command }];
      } catch {
        return []; // it ended
      }
    });
}
