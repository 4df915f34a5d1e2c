// Findings over the wire: pulled or pushed, never both; with the chain of facts, the page of the check, and the data of the remedy.

import { expect, test, vi } from "vitest";
import {
  CancellationTokenSource,
  type CodeAction,
  type Diagnostic,
  type TextEdit,
  type WorkspaceDiagnosticReport,
  type WorkspaceEdit,
} from "vscode-languageserver/node";
import { client, edited, editsOf, everything, winch } from "./client.ts";

const settled = (ms = 120): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, ms);
  });

test("a refused act is a diagnostic at its line, with the facts as related places", async () => {
  const c = await client(winch("undo cover-screws\n    remove cover\n    remove pack"));
  const [finding, ...rest] = await c.findings("main.strip");
  expect(rest).toEqual([]);
  expect(finding).toMatchObject({
    code: "sequence/still-held",
    severity: 1,
    source: "stripdown",
    message: "Brake pack cannot come off: still held by 8 of 8 Pack bolts",
    codeDescription: { href: "stripdown-check:/sequence/still-held.md" },
  });
  expect(finding!.range).toEqual({
    start: c.find("main.strip", "remove pack"),
    end: c.find("main.strip", "remove pack", 11),
  });
  expect(finding!.relatedInformation![0]).toMatchObject({
    location: { uri: c.uri("unit.strip"), range: { start: c.find("unit.strip", "pack-bolts") } },
  });
  expect(finding!.data).toEqual({ fixes: [{ title: "Insert: undo pack-bolts", certain: false }] });
  expect(c.pushes).toEqual([]);
  await c.close();
});

test("mended text has no finding any more, and a pull with the last result's id is answered as unchanged", async () => {
  const c = await client(winch("remove cover"));
  const first = await c.request<{ resultId: string; items: Diagnostic[] }>("textDocument/diagnostic", {
    textDocument: { uri: c.uri("main.strip") },
  });
  expect(first.items.length).toBeGreaterThan(0);
  expect(
    await c.request("textDocument/diagnostic", {
      textDocument: { uri: c.uri("main.strip") },
      previousResultId: first.resultId,
    }),
  ).toEqual({ kind: "unchanged", resultId: first.resultId });
  await c.change(
    "main.strip",
    c
      .text("main.strip")
      .replace("remove cover", "undo cover-screws\n    remove cover\n    undo pack-bolts\n    remove pack"),
  );
  expect(await c.findings("main.strip")).toEqual([]);
  await c.close();
});

test("without pull they are pushed with the version, and vanish when mended", async () => {
  const { diagnostic: _, ...textDocument } = everything.textDocument!;
  const c = await client(winch("remove cover"), { ...everything, textDocument });
  await settled();
  expect(c.pushed.get(c.uri("main.strip"))!.map((one) => one.code)).toContain("sequence/still-held");
  await c.change(
    "main.strip",
    c
      .text("main.strip")
      .replace("remove cover", "undo cover-screws\n    remove cover\n    undo pack-bolts\n    remove pack"),
  );
  await settled();
  expect(c.pushed.get(c.uri("main.strip"))).toEqual([]);
  expect(c.pushes.filter((one) => one.uri === c.uri("main.strip")).at(-1)).toMatchObject({ version: 2, count: 0 });
  await c.close();
});

test("a burst of keys is answered once", async () => {
  const { diagnostic: _, ...textDocument } = everything.textDocument!;
  const c = await client(winch("undo cover-screws"), { ...everything, textDocument });
  await settled();
  const before = c.pushes.filter((one) => one.uri === c.uri("main.strip")).length;
  const text = c.text("main.strip"),
    word = "remove drum";
  for (let i = 1; i <= word.length; i++)
    void c.change("main.strip", text.replace("undo cover-screws", `undo cover-screws\n    ${word.slice(0, i)}`));
  await settled(250);
  const after = c.pushes.filter((one) => one.uri === c.uri("main.strip")).slice(before);
  expect(after.length).toBeLessThanOrEqual(3);
  expect(after.at(-1)!.version).toBe(1 + word.length);
  await c.close();
});

test("workspace diagnostics speak of closed files: a library edit shows in a procedure that is not open", async () => {
  const c = await client(
    winch("undo cover-screws\n    remove cover\n    undo pack-bolts\n    remove pack")
      .replace("#- main.strip", "#- closed/main.strip")
      .replace('use "unit.strip"', 'use "../unit.strip"'),
  );
  const codes = async (): Promise<Record<string, unknown>> =>
    Object.fromEntries(
      (await c.request<WorkspaceDiagnosticReport>("workspace/diagnostic", { previousResultIds: [] })).items.map(
        (one) => [one.uri, "items" in one ? one.items.map((item) => item.code) : one.kind],
      ),
    );
  expect((await codes())[c.uri("closed/main.strip")]).toEqual([]);
  await c.change(
    "unit.strip",
    c.text("unit.strip").replace("behind cover }\n  part drum", "behind cover, drum }\n  part drum"),
  );
  expect((await codes())[c.uri("closed/main.strip")]).toEqual(["sequence/blocked"]);
  await c.close();
});

/** The procedure in a folder of its own, with one finding, and closed. */
const closed = winch("undo cover-screws\n    remove cover\n    remove pack")
  .replace("#- main.strip", "#- closed/main.strip")
  .replace('use "unit.strip"', 'use "../unit.strip"');

test('a folder that is renamed takes its findings along, and its "use" lines lead where they led', async () => {
  const c = await client(closed),
    from = c.uri("closed/main.strip"),
    to = c.uri("jobs/spring/main.strip"),
    files = [{ oldUri: c.uri("closed"), newUri: c.uri("jobs/spring") }];
  let previousResultIds: { uri: string; value: string }[] = [];
  const codes = async (): Promise<Record<string, unknown>> => {
    const { items } = await c.request<WorkspaceDiagnosticReport>("workspace/diagnostic", { previousResultIds });
    previousResultIds = items.flatMap(({ uri, resultId }) =>
      resultId === undefined ? [] : [{ uri, value: resultId }],
    );
    return Object.fromEntries(
      items.map((one) => [one.uri, "items" in one ? one.items.map((item) => item.code) : one.kind]),
    );
  };
  expect((await codes())[from]).toEqual(["sequence/still-held"]);
  const edit = await c.request<WorkspaceEdit>("workspace/willRenameFiles", { files }),
    [[uri, edits]] = [...editsOf(edit)] as [[string, TextEdit[]]];
  expect([uri, edits.map(({ newText }) => newText)]).toEqual(["closed/main.strip", ['"../../unit.strip"']]);
  // The client puts it in, moves the folder, and tells.
  c.disk.put("/shop/jobs/spring/main.strip", edited(c.text("closed/main.strip"), edits));
  c.disk.remove("/shop/closed/main.strip");
  await c.rpc.sendNotification("workspace/didRenameFiles", { files });
  const after = await codes();
  expect(after[to]).toEqual(["sequence/still-held"]);
  expect(after[from]).toEqual([]);
  expect(await codes()).not.toHaveProperty(from);
  await c.close();
});

test("an open file is asked for again though its new findings were told with those of the folder", async () => {
  const c = await client(winch("undo cover-screws\n    remove cover\n    undo pack-bolts\n    remove pack"), {
      ...everything,
      workspace: { ...everything.workspace, diagnostics: { refreshSupport: true } },
    }),
    unit = c.text("unit.strip");
  let refreshed = 0;
  c.rpc.onRequest("workspace/diagnostic/refresh", () => {
    refreshed++;
    return null;
  });
  expect(await c.findings("main.strip")).toEqual([]);
  const had = refreshed;
  await c.change("unit.strip", unit.replace("behind cover }\n  part drum", "behind cover, drum }\n  part drum"));
  const { items } = await c.request<WorkspaceDiagnosticReport>("workspace/diagnostic", { previousResultIds: [] });
  expect(items.find(({ uri }) => uri === c.uri("main.strip"))).toMatchObject({ items: [{ code: "sequence/blocked" }] });
  await vi.waitFor(() => expect(refreshed).toBeGreaterThan(had), 3000);
  await c.close();
});

test("pushed findings of a folder that is deleted are taken back", async () => {
  const c = await client(closed, { ...everything, textDocument: { publishDiagnostics: {} } }),
    uri = c.uri("closed/main.strip");
  await vi.waitFor(() => expect(c.pushed.get(uri)).toHaveLength(1), 5000);
  c.disk.remove("/shop/closed/main.strip");
  await c.rpc.sendNotification("workspace/didDeleteFiles", { files: [{ uri: c.uri("closed") }] });
  await vi.waitFor(() => expect(c.pushed.get(uri)).toEqual([]), 5000);
  await c.close();
});

test("what is unused is tagged, and settings in stripdown.json weigh", async () => {
  const text =
    'tool mallet "Mallet"\nunit box "Box" {\n  base foot\n  part foot "Foot"\n  part lid "Lid" { rests on foot }\n}\nprocedure strip "Strip" for box {\n  aim lid off\n  step "Lid off" { remove lid }\n}\n';
  const c = await client(`#- main.strip\n${text}`);
  expect(await c.findings("main.strip")).toMatchObject([{ code: "names/unused", severity: 4, tags: [1] }]);
  c.disk.put("/shop/stripdown.json", '{ "severity": { "names/unused": "error" } }');
  await c.rpc.sendNotification("workspace/didChangeWatchedFiles", {
    changes: [{ uri: c.uri("stripdown.json"), type: 1 }],
  });
  expect(await c.findings("main.strip")).toMatchObject([{ code: "names/unused", severity: 1 }]);
  c.disk.put("/shop/stripdown.json", '{ "severity": ');
  await c.rpc.sendNotification("workspace/didChangeWatchedFiles", {
    changes: [{ uri: c.uri("stripdown.json"), type: 2 }],
  });
  const report = await c.request<WorkspaceDiagnosticReport>("workspace/diagnostic", { previousResultIds: [] });
  expect(report.items.find((one) => one.uri === c.uri("stripdown.json"))).toMatchObject({
    items: [{ message: expect.stringContaining("These settings are not read") as string }],
  });
  await c.close();
});

test("a file that did not change is not read again", async () => {
  const c = await client(
    winch("undo cover-screws")
      .replace("#- unit.strip", "#- closed/unit.strip")
      .replace('use "unit.strip"', 'use "closed/unit.strip"'),
  );
  await c.findings("main.strip");
  await settled();
  const project = c.session.projects()[0]!,
    before = project.reads();
  for (let i = 0; i < 20; i++) {
    await c.change("main.strip", `${c.text("main.strip")}# ${i}\n`);
    await c.findings("main.strip");
  }
  expect(project.reads()).toBe(before);
  await c.close();
});

test("an edit in a library: what uses it is performed again, once; no file is read again, and what does not use it is left", async () => {
  const unit = (name: string): string =>
      `unit ${name} "Box" {\n  base foot\n  part foot "Foot"\n  part lid "Lid" { mass 2 kg  rests on foot }\n}\n`,
    job = (name: string): string =>
      `use "../${name}.strip"\nprocedure job-${name} "Job" for ${name} {\n  aim lid off\n  step "Lid" {\n    note "Both hands."\n    remove lid\n  }\n}\n`;
  const c = await client(
      [
        "#- box.strip",
        unit("box"),
        ...[1, 2, 3].flatMap((i) => [`#- closed/job-${i}.strip`, job("box").replace("job-box", `job-${i}`)]),
        "#- closed/other/case.strip",
        unit("case"),
        "#- closed/other/jobs/job.strip",
        job("case"),
        "",
      ].join("\n"),
    ),
    project = c.session.projects()[0]!,
    settle = async (): Promise<void> => {
      await c.findings("box.strip"); // behind it every change that was sent has been read
      await vi.waitFor(() => expect(project.whole()).toBeDefined(), 5000);
    };
  await settle();
  // Two acts of the strip and one line of the way back, in each of four files.
  expect(project.work()).toBe(4 * 3);
  const reads = project.reads(),
    other = project.whole()!.performances.find(({ model }) => model.unit === "case")!;
  await c.change("box.strip", c.text("box.strip").replace("2 kg", "3 kg"));
  await settle();
  expect(project.work()).toBe(4 * 3 + 3 * 3);
  expect(project.reads()).toBe(reads);
  expect(project.whole()!.performances.find(({ model }) => model.unit === "case")).toBe(other);
  // Asked again and again it is not worked out again.
  for (let i = 0; i < 3; i++) await c.request("workspace/diagnostic", { previousResultIds: [] });
  expect(project.work()).toBe(4 * 3 + 3 * 3);
  await c.close();
});

test("a question right after a change is answered for the new text, whatever was pulled and taken back in between", async () => {
  const clean = "undo cover-screws\n    remove cover\n    undo pack-bolts\n    remove pack",
    c = await client(winch(clean)),
    whole = c.text("main.strip");
  expect(await c.findings("main.strip")).toEqual([]);
  for (let i = 0; i < 30; i++) {
    const taken = new CancellationTokenSource();
    await c.change("main.strip", whole.replace("undo cover-screws\n    ", ""));
    const pulled = c.rpc
      .sendRequest("textDocument/diagnostic", { textDocument: { uri: c.uri("main.strip") } }, taken.token)
      .then(
        () => undefined,
        (error: { code?: number }) => error.code,
      );
    // Before the pull is begun, while it runs, or after it was answered.
    if (i % 3 === 1) await new Promise((resolve) => setTimeout(resolve, 0));
    if (i % 3 === 2) await pulled;
    taken.cancel();
    const start = c.find("main.strip", "remove cover"),
      actions = await c.request<CodeAction[]>("textDocument/codeAction", {
        textDocument: { uri: c.uri("main.strip") },
        range: { start, end: { line: start.line, character: start.character + 12 } },
        context: { diagnostics: [], only: ["quickfix"] },
      });
    expect(actions.map((one) => one.title)).toContain("Insert: undo cover-screws");
    expect([undefined, -32800]).toContain(await pulled);
    expect((await c.findings("main.strip")).map((one) => one.code)).toEqual(["sequence/still-held"]);
    await c.change("main.strip", whole);
    expect(await c.findings("main.strip")).toEqual([]);
  }
  await c.close();
});
