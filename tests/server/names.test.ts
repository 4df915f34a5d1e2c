// Names over the wire: where declared, who speaks of them, a new name in every file, and the outline.

import { expect, test } from "vitest";
import type {
  CallHierarchyItem,
  DocumentHighlight,
  DocumentSymbol,
  Location,
  WorkspaceEdit,
  WorkspaceSymbol,
} from "vscode-languageserver/node";
import { client, drives, edited, editsOf, winch } from "./client.ts";

const line = ({ uri, range }: Location): string => `${uri.slice("file:///shop/".length)}:${range.start.line + 1}`;

test("definition of a part, of a used file, of a word", async () => {
  const c = await client(winch("remove pa<|>ck"));
  expect((await c.request<Location[]>("textDocument/definition", c.at)).map(line)).toEqual(["unit.strip:6"]);
  expect(
    (await c.request<Location[]>("textDocument/definition", { ...c.at, position: { line: 0, character: 8 } })).map(
      line,
    ),
  ).toEqual(["unit.strip:1"]);
  expect(await c.request("textDocument/definition", { ...c.at, position: c.find("main.strip", "remove", 2) })).toEqual(
    [],
  );
  await c.close();
});

test("references in all files, with and without the declaration; those that change it are marked so", async () => {
  const c = await client(winch("undo pack-bolts\n    remove pa<|>ck"));
  expect(
    (await c.request<Location[]>("textDocument/references", { ...c.at, context: { includeDeclaration: true } })).map(
      line,
    ),
  ).toEqual(["main.strip:3", "main.strip:6", "unit.strip:6", "unit.strip:9"]);
  expect(
    await c.request<Location[]>("textDocument/references", { ...c.at, context: { includeDeclaration: false } }),
  ).toHaveLength(3);
  expect((await c.request<Location[]>("textDocument/implementation", c.at)).map(line)).toEqual(["main.strip:6"]);
  expect((await c.request<DocumentHighlight[]>("textDocument/documentHighlight", c.at)).map((one) => one.kind)).toEqual(
    [2, 3],
  );
  await c.close();
});

test("rename goes through closed files, and back is the same text", async () => {
  const c = await client(
    winch("undo cover-screws\n    remove co<|>ver\n    undo pack-bolts\n    remove pack")
      .replace("#- unit.strip", "#- closed/unit.strip")
      .replace('use "unit.strip"', 'use "closed/unit.strip"'),
  );
  expect(await c.request("textDocument/prepareRename", c.at)).toMatchObject({ placeholder: "cover" });
  const there = editsOf(await c.request<WorkspaceEdit>("textDocument/rename", { ...c.at, newName: "housing-lid" }));
  expect([...there.keys()].sort()).toEqual(["closed/unit.strip", "main.strip"]);
  const unit = edited(c.text("closed/unit.strip"), there.get("closed/unit.strip")!),
    main = edited(c.text("main.strip"), there.get("main.strip")!),
    was = c.text("main.strip"),
    wasUnit = c.text("closed/unit.strip");
  expect(unit).toContain("behind housing-lid");
  expect(unit).toContain("joins housing-lid to frame");
  expect(unit).toContain("fastener cover-screws");
  c.disk.put("/shop/closed/unit.strip", unit);
  await c.rpc.sendNotification("workspace/didChangeWatchedFiles", {
    changes: [{ uri: c.uri("closed/unit.strip"), type: 2 }],
  });
  await c.change("main.strip", main);
  expect(await c.findings("main.strip")).toEqual([]);
  const back = editsOf(await c.request<WorkspaceEdit>("textDocument/rename", { ...c.at, newName: "cover" }));
  expect(edited(main, back.get("main.strip")!)).toBe(was);
  expect(edited(unit, back.get("closed/unit.strip")!)).toBe(wasUnit);
  await c.close();
});

test("rename is refused with the reason", async () => {
  const c = await client(winch("remove co<|>ver"));
  await expect(c.request("textDocument/rename", { ...c.at, newName: "pack" })).rejects.toThrow(
    "pack is the name of a part already",
  );
  await expect(c.request("textDocument/rename", { ...c.at, newName: "two words" })).rejects.toThrow("is no name");
  await expect(c.request("textDocument/rename", { ...c.at, newName: "rest" })).rejects.toThrow("word of the language");
  await expect(
    c.request("textDocument/prepareRename", { ...c.at, position: c.find("main.strip", "remove", 2) }),
  ).rejects.toThrow("No name");
  await c.close();
});

test("outline with what tells most, and the names of the folder", async () => {
  const c = await client(winch("remove co<|>ver"));
  const [unit] = await c.request<DocumentSymbol[]>("textDocument/documentSymbol", {
    textDocument: { uri: c.uri("unit.strip") },
  });
  expect(unit!.name).toBe("winch");
  expect(unit!.children!.find((one) => one.name === "pack-bolts")!.detail).toBe("Pack bolts · 8 ×, M8x30, 24 N·m");
  expect(
    (await c.request<WorkspaceSymbol[]>("workspace/symbol", { query: "brake" })).map((one) => one.name).sort(),
  ).toEqual(["cover", "pack", "strip"]);
  await c.close();
});

test("calls of a procedure, both ways", async () => {
  const c = await client(
    '#- main.strip\nunit box "Box" { base foot  part foot }\nprocedure inner "Inner" for box { aim none  step "A" { note "1" } }\nprocedure outer "Outer" for box { aim none  do inn<|>er }\n',
  );
  const [item] = await c.request<CallHierarchyItem[]>("textDocument/prepareCallHierarchy", c.at);
  expect(item!.name).toBe("inner");
  const incoming = await c.request<{ from: CallHierarchyItem }[]>("callHierarchy/incomingCalls", { item });
  expect(incoming.map(({ from }) => from.name)).toEqual(["outer"]);
  const outgoing = await c.request<{ to: CallHierarchyItem }[]>("callHierarchy/outgoingCalls", {
    item: incoming[0]!.from,
  });
  expect(outgoing.map(({ to }) => to.name)).toEqual(["inner"]);
  await c.close();
});

test("a file that gets another name takes its use lines along", async () => {
  const c = await client(winch("remove co<|>ver"));
  const edit = await c.request<WorkspaceEdit>("workspace/willRenameFiles", {
    files: [{ oldUri: c.uri("unit.strip"), newUri: c.uri("machines/winch.strip") }],
  });
  expect(edited(c.text("main.strip"), editsOf(edit).get("main.strip")!)).toContain('use "machines/winch.strip"');
  const folder = await c.request<WorkspaceEdit>("workspace/willRenameFiles", {
    files: [{ oldUri: c.uri("main.strip"), newUri: c.uri("jobs/main.strip") }],
  });
  expect(edited(c.text("main.strip"), editsOf(folder).get("main.strip")!)).toContain('use "../unit.strip"');
  await c.close();
});

test("a thing inside one of several alike units: told, found where it is declared, and renamed in both files", async () => {
  const c = await client(drives("undo gearbox.left.lid-screws\n    remove gearbox.left.l<|>id"));
  const hover = await c.request<{ contents: { value: string } }>("textDocument/hover", c.at);
  expect(hover.contents.value).toContain("Gearbox lid");
  expect((await c.request<Location[]>("textDocument/definition", c.at)).map(line)).toEqual(["unit.strip:4"]);
  expect(await c.request("textDocument/prepareRename", c.at)).toMatchObject({ placeholder: "lid" });
  const edits = editsOf(await c.request<WorkspaceEdit>("textDocument/rename", { ...c.at, newName: "top-cover" }));
  expect(edited(c.text("main.strip"), edits.get("main.strip")!)).toContain("remove gearbox.left.top-cover");
  expect(edited(c.text("unit.strip"), edits.get("unit.strip")!)).toContain('part top-cover "Gearbox lid"');
  expect(edited(c.text("unit.strip"), edits.get("unit.strip")!)).toContain("joins top-cover to case");
  await c.close();
});
