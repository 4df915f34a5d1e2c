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

test("a folder that another program renames is told of by its name alone: its files and what uses them follow", async () => {
  const c = await client(
      winch("undo cover-screws\n    remove cover\n    undo pack-bolts\n    remove pack")
        .replace("#- unit.strip", "#- closed/unit.strip")
        .replace('use "unit.strip"', 'use "closed/unit.strip"'),
    ),
    told = async (changes: { uri: string; type: number }[]): Promise<void> =>
      await c.rpc.sendNotification("workspace/didChangeWatchedFiles", { changes }),
    files = async (): Promise<string[]> =>
      (await c.request<WorkspaceDiagnosticReport>("workspace/diagnostic", { previousResultIds: [] })).items
        .map(({ uri }) => uri.replace("file:///shop/", ""))
        .sort();
  expect(await c.findings("main.strip")).toEqual([]);
  expect(await files()).toEqual(["closed/unit.strip", "main.strip"]);
  const project = c.session.projects()[0]!,
    reads = project.reads();
  c.disk.put("/shop/lib/unit.strip", c.text("closed/unit.strip"));
  c.disk.remove("/shop/closed/unit.strip");
  await told([
    { uri: c.uri("lib"), type: 1 },
    { uri: c.uri("closed"), type: 3 },
  ]);
  expect((await c.findings("main.strip")).map(({ code }) => code)).toEqual(["names/import-missing"]);
  // What went is told once more, as empty: the client keeps what it was told.
  await files();
  expect(await files()).toEqual(["lib/unit.strip", "main.strip"]);
  await c.change("main.strip", c.text("main.strip").replace("closed/unit.strip", "lib/unit.strip"));
  expect(await c.findings("main.strip")).toEqual([]);
  expect(project.reads() - reads, "nothing else is read again").toBeLessThanOrEqual(3);
  // Folders that are none of a project, and files that it never asks for, change nothing.
  const last = project.last();
  await told([
    { uri: c.uri("node_modules/x"), type: 1 },
    { uri: c.uri(".git/refs"), type: 3 },
    { uri: c.uri("notes.txt"), type: 1 },
  ]);
  expect(await c.findings("main.strip")).toEqual([]);
  expect(project.last()).toBe(last);
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

test("in a long folder nothing is held of what closed files do, and they answer all the same", async () => {
  const c = await client(winch("undo cover-screws\n    remove cover\n    undo pack-bolts\n    remove pack")),
    text = `${`# ${"x".repeat(97)}\n`.repeat(10_500)}unit box "Box" {
  base foot
  part foot "Foot"
  part lid "Lid"
  fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
}
procedure open "Open" for box {
  aim lid off
  step "Open" {
    undo lid-screws
    remove lid
  }
}
`;
  c.disk.put("/shop/long.strip", text);
  await c.rpc.sendNotification("workspace/didChangeWatchedFiles", {
    changes: [{ uri: c.uri("long.strip"), type: 1 }],
  });
  await c.request<WorkspaceDiagnosticReport>("workspace/diagnostic", { previousResultIds: [] });
  const isHeld = (file: string): boolean[] =>
    c.session
      .projects()[0]!
      .whole()!
      .performances.filter(({ procedure }) => procedure.at.file === file)
      .map((one) => Object.getOwnPropertyDescriptor(one, "events")!.get === undefined);
  expect(isHeld("/shop/long.strip")).toEqual([false]);
  expect(new Set(isHeld("/shop/main.strip"))).toEqual(new Set([true]));
  const line = text.slice(0, text.indexOf("remove lid")).split("\n").length - 1;
  expect(
    await c.request("textDocument/hover", {
      textDocument: { uri: c.uri("long.strip") },
      position: { line, character: 6 },
    }),
  ).toMatchObject({ contents: { value: expect.stringContaining("Comes away: Lid") as string } });
  await c.close();
});
