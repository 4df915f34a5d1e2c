// What must not end a server: a fault in one feature, questions taken back, texts that are none of ours, a client that can do little.

import { expect, test, vi } from "vitest";
import { CancellationTokenSource, type CompletionItem } from "vscode-languageserver/node";
import { feature } from "../../server/feature.ts";
import { features } from "../../server/features/index.ts";
import { client, winch } from "./client.ts";

test("a fault in one feature is an error of that request alone, told in words", async () => {
  const broken = feature({
    name: "broken",
    start(session, answer) {
      session.connection.onDocumentColor(
        answer("Colour", () => {
          throw new Error("a bug of ours");
        }),
      );
    },
  });
  const c = await client(winch("remove co<|>ver"), undefined, [...features, broken]);
  await expect(c.request("textDocument/documentColor", { textDocument: c.at.textDocument })).rejects.toThrow(
    "Colour could not be answered for this text; the rest goes on",
  );
  expect(c.notes.join()).toContain("a bug of ours");
  expect(await c.request("textDocument/hover", c.at)).not.toBeNull();
  await c.close();
});

test("questions that are taken back end as cancelled, and later ones are answered", async () => {
  const c = await client(winch("remove co<|>ver")),
    sources = Array.from({ length: 20 }, () => new CancellationTokenSource());
  const asked = sources.map((source) =>
    c.rpc.sendRequest("textDocument/completion", c.at, source.token).then(
      () => "answered",
      (error: { code: number }) => error.code,
    ),
  );
  for (const source of sources) source.cancel();
  for (const end of await Promise.all(asked)) expect([-32800, "answered"]).toContain(end);
  expect((await Promise.all(asked)).filter((end) => end === -32800).length).toBeGreaterThan(10);
  expect((await c.request<{ items: CompletionItem[] }>("textDocument/completion", c.at)).items.length).toBeGreaterThan(
    0,
  );
  await c.close();
});

test("documents that nobody opened, and places outside a text", async () => {
  const c = await client(winch("remove co<|>ver")),
    nowhere = { textDocument: { uri: "file:///elsewhere/nothing.strip" }, position: { line: 9, character: 9 } };
  for (const method of [
    "hover",
    "completion",
    "definition",
    "documentSymbol",
    "foldingRange",
    "codeLens",
    "documentLink",
    "semanticTokens/full",
    "signatureHelp",
  ]) {
    await expect(c.request(`textDocument/${method}`, nowhere)).resolves.toBeDefined();
    await expect(
      c.request(`textDocument/${method}`, { ...c.at, position: { line: 9999, character: 9999 } }),
    ).resolves.toBeDefined();
  }
  await c.close();
});

test("every prefix of a file is answered by every feature", async () => {
  const c = await client(winch('undo 2 of cover-screws with x  into tray A\n    remove co<|>ver "Words."')),
    text = c.text("main.strip"),
    at = { textDocument: c.at.textDocument };
  for (let end = 0; end <= text.length; end += 3) {
    await c.change("main.strip", text.slice(0, end));
    const lines = text.slice(0, end).split("\n"),
      position = { line: lines.length - 1, character: lines[lines.length - 1]!.length };
    await Promise.all(
      [
        "hover",
        "completion",
        "definition",
        "documentSymbol",
        "codeLens",
        "semanticTokens/full",
        "signatureHelp",
        "foldingRange",
      ].map((method) => c.request(`textDocument/${method}`, { ...at, position })),
    );
    await c.request("stripdown/bench", { uri: at.textDocument.uri, position });
  }
  expect(c.notes).toEqual([]);
  await c.close();
});

test("a client that says nothing of itself still gets findings, pushed", async () => {
  const c = await client(winch("remove co<|>ver"), {});
  await new Promise((resolve) => {
    setTimeout(resolve, 150);
  });
  expect(c.pushed.get(c.uri("main.strip"))!.length).toBeGreaterThan(0);
  expect(c.started.capabilities.positionEncoding).toBe("utf-16");
  await c.close();
});

test("texts come from the client where the server has no disk", async () => {
  const c = await client(
    '#- main.strip\nuse "lib.strip"\nunit box "Box" { base foot  part foot  fastener a { torque standard dr<|>y } }\n',
  );
  expect((await c.findings("main.strip")).map((one) => one.code)).toContain("names/import-missing");
  await c.rpc.sendNotification("stripdown/files", {
    files: [
      { uri: "vscode-vfs://host/lib.strip", text: "" },
      { uri: c.uri("lib.strip"), text: "torque-table dry { size M6 9 N·m }\n" },
    ],
  });
  c.disk.put("/shop/lib.strip", "torque-table dry { size M6 9 N·m }\n");
  await c.rpc.sendNotification("stripdown/files", {
    files: [{ uri: c.uri("lib.strip"), text: "torque-table dry { size M6 9 N·m }\n" }],
  });
  expect((await c.findings("main.strip")).map((one) => one.code)).not.toContain("names/import-missing");
  await c.close();
});

test("what is asked behind a key about the text alone is answered before its check, and the check comes by itself", async () => {
  const c = await client(winch("undo cover-sc<|>rews\n    remove cover")),
    [project] = c.session.projects();
  await c.findings("main.strip");
  for (const method of ["foldingRange", "semanticTokens/full", "documentLink"]) {
    const before = project!.last();
    await c.change("main.strip", `${c.text("main.strip")}\n`);
    await c.request(`textDocument/${method}`, { textDocument: c.at.textDocument });
    expect(project!.last(), method).toBe(before);
    await vi.waitFor(() => expect(project!.whole()).toBeDefined(), 5000);
    expect(project!.last()).not.toBe(before);
  }
  await c.close();
});
