// Several folders, each a project of its own: own settings, own bounds. Nothing outside a folder is read.

import { expect, test } from "vitest";
import type { WorkspaceDiagnosticReport } from "vscode-languageserver/node";
import { client, everything, winch } from "./client.ts";

const withFolders = { ...everything, workspace: { ...everything.workspace, workspaceFolders: true } };

test("a folder that is added is checked by its own settings, and forgotten when it goes", async () => {
  const c = await client(winch("undo cover-screws"), withFolders),
    folder = { uri: "file:///other", name: "other" };
  c.disk.put(
    "/other/a.strip",
    'tool mallet "Mallet"\nunit box "Box" { base foot  part foot "Foot" }\nprocedure p "P" for box { aim none  step "S" { note "n" } }\n',
  );
  c.disk.put("/other/stripdown.json", '{ "severity": { "names/unused": "warning" } }');
  await c.rpc.sendNotification("workspace/didChangeWorkspaceFolders", { event: { added: [folder], removed: [] } });
  const report = async (): Promise<WorkspaceDiagnosticReport> =>
    await c.request("workspace/diagnostic", { previousResultIds: [] });
  expect((await report()).items.find(({ uri }) => uri === "file:///other/a.strip")).toMatchObject({
    items: [{ code: "names/unused", severity: 2 }],
  });
  await c.rpc.sendNotification("workspace/didChangeWorkspaceFolders", { event: { added: [], removed: [folder] } });
  expect((await report()).items.map(({ uri }) => uri)).not.toContain("file:///other/a.strip");
  await c.close();
});

test("a use that leads out of the folder is told and not followed", async () => {
  const c = await client('#- main.strip\nuse "../secret/unit.strip"\nuse "/etc/unit.strip"\n', withFolders);
  c.disk.put("/secret/unit.strip", "unit box { base foot  part foot }\n");
  c.disk.put("/etc/unit.strip", "unit box { base foot  part foot }\n");
  expect((await c.findings("main.strip")).map((one) => one.code)).toEqual([
    "names/import-outside",
    "names/import-outside",
  ]);
  expect(c.session.projects()[0]!.near().texts.size).toBe(1);
  await c.close();
});

test("addresses in every spelling are one file", async () => {
  const { pathOf, uriOf, resolvePath } = await import("../../server/uris.ts");
  expect(pathOf("file:///c%3A/My%20Shop/a.strip")).toBe("/c:/My Shop/a.strip");
  expect(pathOf("file:///C:/My%20Shop/a.strip")).toBe("/c:/My Shop/a.strip");
  expect(uriOf("/c:/My Shop/ä#.strip")).toBe("file:///c%3A/My%20Shop/%C3%A4%23.strip");
  expect(pathOf(uriOf("/c:/My Shop/ä#.strip"))).toBe("/c:/My Shop/ä#.strip");
  expect(pathOf("vscode-vfs://github/x/a.strip")).toBe("vscode-vfs://github/x/a.strip");
  expect(resolvePath("vscode-vfs://github/x/y/a.strip", "../b.strip")).toBe("vscode-vfs://github/x/b.strip");
  expect(resolvePath("/a/b/c.strip", "../../../../d.strip")).toBe("/d.strip");
  expect(resolvePath("/a/b.strip", "sub\\c.strip")).toBe("/a/sub/c.strip");
});
