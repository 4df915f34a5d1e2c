// What is taken back while it is worked out ends there, and the rest goes on; what is asked behind a key is answered for the newest text.

import { expect, test, vi } from "vitest";
import { CancellationTokenSource, type Hover } from "vscode-languageserver/node";
import { client, everything, winch, type Client } from "./client.ts";

/** A unit that many procedures use, closed all of them. */
function manyTexts(files: number, groups: number): string {
  const each = Array.from({ length: groups }, (_, i) => i),
    acts = each.map((i) => `    undo s${i}\n    remove p${i}`).join("\n");
  return [
    '#- unit.strip\nunit rig "Rig" {\n  base frame\n  part frame "Frame"',
    ...each.map((i) => `  part p${i} "Part"\n  fastener s${i} bolt "Bolts" { count 4  joins p${i} to frame }`),
    "}",
    ...Array.from(
      { length: files },
      (_, i) =>
        `#- closed/job-${i}.strip\nuse "../unit.strip"\nprocedure job-${i} "Job" for rig {\n  aim all apart\n  step "All" {\n${acts}\n  }\n}`,
    ),
    "",
  ].join("\n");
}

/** So much that on a busy machine most of it is still to do when the word to stop arrives. */
const files = 480,
  groups = 60;

/** What a question ends with that is taken back as soon as something was performed for it. */
async function takenBack(c: Client, method: string, params: object): Promise<number | string> {
  const project = c.session.projects()[0]!,
    source = new CancellationTokenSource(),
    since = project.work(),
    asked = c.rpc.sendRequest(method, params, source.token).then(
      () => "answered",
      (error: { code: number }) => error.code,
    );
  await vi.waitFor(() => expect(project.work()).toBeGreaterThan(since), { timeout: 5000, interval: 1 });
  source.cancel();
  return await asked;
}

test.each([
  ["stripdown/checkFolder", { uri: "file:///shop", strict: false }],
  ["workspace/diagnostic", { previousResultIds: [] }],
])(
  "%s that is taken back midway ends as cancelled with most of its work undone; asked again it goes on from there",
  async (method, params) => {
    const c = await client(manyTexts(files, groups)),
      project = c.session.projects()[0]!;
    // What the server does by itself would do the same work.
    if (method === "workspace/diagnostic") await vi.waitFor(() => expect(project.whole()).toBeDefined(), 20_000);
    else project.halt();
    const done = project.work();
    if (method === "workspace/diagnostic") {
      await c.change("unit.strip", c.text("unit.strip").replaceAll("count 4", "count 5"));
      expect(await takenBack(c, method, params)).toBe(-32800);
    } else expect(await takenBack(c, method, params)).toBe(-32800);
    const some = project.work() - done;
    expect(project.whole()).toBeUndefined();
    // Meanwhile everything else is answered.
    expect(
      await c.request("textDocument/documentSymbol", { textDocument: { uri: c.uri("unit.strip") } }),
    ).not.toHaveLength(0);
    await c.request("stripdown/checkFolder", { uri: "file:///shop", strict: false });
    const all = project.work() - done;
    expect(project.whole()).toBeDefined();
    expect(some).toBeLessThan(all / 2);
    // Acts of a strip and lines of its way back, each once in all: nothing that was done before it was broken off is done again.
    expect(all).toBe(files * groups * 4);
    await c.close();
  },
);

test("long work is shown with a button, and what that breaks off is left until something changes", async () => {
  const c = await client(manyTexts(120, 400), { ...everything, window: { workDoneProgress: true } }),
    project = c.session.projects()[0]!,
    told: { kind: string; cancellable?: boolean }[] = [];
  let token: unknown;
  c.rpc.onRequest("window/workDoneProgress/create", (made: { token: unknown }) => {
    ({ token } = made);
    return null;
  });
  c.rpc.onNotification("$/progress", ({ value }: { value: { kind: string; cancellable?: boolean } }) => {
    told.push(value);
    // Pressed as soon as it is there: the work may be done a moment later.
    if (value.kind === "begin") void c.rpc.sendNotification("window/workDoneProgress/cancel", { token });
  });
  await c.change("unit.strip", `${c.text("unit.strip")}\n`);
  await vi.waitFor(() => expect(told.at(-1)).toMatchObject({ kind: "end" }), 20_000);
  expect(told[0]).toMatchObject({ kind: "begin", cancellable: true });
  expect(project.whole()).toBeUndefined();
  const done = project.work();
  expect(done).toBeLessThan(120 * 400 * 4);
  await c.request("workspace/diagnostic", { previousResultIds: [] });
  expect(project.work()).toBe(done);
  await c.change("unit.strip", `${c.text("unit.strip")}\n`);
  await vi.waitFor(() => expect(project.work()).toBeGreaterThan(done), 5000);
  project.halt();
  await c.close();
}, 60_000);

test("of questions behind a burst of keys only the last one is worked out, for the text as it is then", async () => {
  const c = await client(winch("undo 2 of cover-screws")),
    text = c.text("main.strip"),
    [project] = c.session.projects();
  await c.findings("main.strip");
  await vi.waitFor(() => expect(project!.whole()).toBeDefined());
  const before = project!.work(),
    ends: Promise<number | Hover | null>[] = [];
  let last: CancellationTokenSource | undefined;
  for (let i = 1; i <= 20; i++) {
    last?.cancel();
    last = new CancellationTokenSource();
    void c.change(
      "main.strip",
      text.replace("undo 2 of cover-screws", `wait ${i} min\n    undo ${1 + (i % 4)} of cover-screws`),
    );
    ends.push(
      c.rpc
        .sendRequest<Hover | null>(
          "textDocument/hover",
          { textDocument: { uri: c.uri("main.strip") }, position: c.find("main.strip", "cover-screws", 2) },
          last.token,
        )
        .catch((error: { code: number }) => error.code),
    );
  }
  const answers = await Promise.all(ends);
  expect(answers.slice(0, -1).filter((one) => one === -32800).length).toBeGreaterThan(15);
  expect(JSON.stringify(answers.at(-1))).toContain("1 of 4 undone at this line");
  // One performance of two acts and the lines of its way back, not twenty.
  expect(project!.work() - before).toBeLessThan(20);
  await c.close();
});
