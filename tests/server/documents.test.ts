// Manual, sheets and labels as the editor writes them: made by the server, and nothing replaced that is not ours.

import { expect, test } from "vitest";
import { manual } from "../../language/outputs/manual/manual.ts";
import { write } from "../../language/outputs/output.ts";
import { defaultWording } from "../../language/outputs/wording/languages.ts";
import { checkProject } from "../../language/workspace/check-project.ts";
import type { DocumentNamesAnswer, DocumentsAnswer, DocumentsParams } from "../../shared/protocol.ts";
import { memoryWorld } from "../support/memory-world.ts";
import { client, winch, type Client } from "./client.ts";

const good = winch("undo cover-screws\n    remove cover\n    undo pack-bolts  into tray A\n    remove pack"),
  all = ["manual", "sheets", "labels"];
const ask = (c: Client, more: Partial<DocumentsParams> = {}): Promise<DocumentsAnswer | null> =>
  c.request("stripdown/documents", { uri: c.uri("main.strip"), kinds: all, there: {}, list: undefined, ...more });
const base64 = (text: string): string => Buffer.from(text).toString("base64");

test("names and texts of what is asked for, each the same bytes as the outputs give", async () => {
  const c = await client(good);
  const names = await c.request<DocumentNamesAnswer>("stripdown/documentNames", {
    uri: c.uri("main.strip"),
    kinds: all,
  });
  expect(names.names).toEqual([
    "main-manual.html",
    "main-torques.html",
    "main-layout.html",
    "main-preparation.html",
    "main-isolation.html",
    "main-lifting.html",
    "main-handover.html",
    "main-waiting.html",
    "main-waste.html",
    "main-labels.html",
  ]);
  const made = (await ask(c))!;
  expect(made.files.map(({ name }) => name)).toEqual(names.names);
  expect(made.left).toEqual([]);
  for (const { text } of made.files) expect(text).toMatch(/^<!doctype html>/i);
  const files = new Map(["unit.strip", "main.strip"].map((name) => [`/shop/${name}`, c.text(name)])),
    checked = checkProject(memoryWorld(files), ["/shop/main.strip"]);
  expect(made.files[0]!.text).toBe(
    write(
      manual,
      "html",
      {
        performances: checked.performances,
        texts: checked.texts,
        openFindings: checked.findings.filter(({ severity }) => severity !== "hint").length,
        allowed: [],
      },
      { wording: defaultWording, system: "metric", showPath: (path) => path.replace("/shop/", "") },
    ),
  );
  expect((await ask(c, { kinds: ["labels"] }))!.files.map(({ name }) => name)).toEqual(["main-labels.html"]);
  expect((await ask(c, { kinds: ["program"] }))!.files).toEqual([]);
  await c.close();
});

test("what we made is written over; what is somebody's own, or was changed since, is left with its reason", async () => {
  const c = await client(good),
    first = (await ask(c))!,
    [page] = first.files;
  const there = Object.fromEntries(first.files.map(({ name, text }) => [name, base64(text)]));
  // The text changes, and with it every page that prints it.
  await c.change("main.strip", c.text("main.strip").replace("Take the pack out", "Take the brake pack out"));
  const again = (await ask(c, { there, list: first.list }))!;
  expect(again.left).toEqual([]);
  expect(again.files[0]!.text).not.toBe(page!.text);

  const changed = (await ask(c, {
    there: { ...there, [page!.name]: base64(`${page!.text}<!-- my note -->`) },
    list: first.list,
  }))!;
  expect(changed.left).toEqual([
    { name: page!.name, why: "is there already and was not made by this tool, or was changed since" },
  ]);
  expect(changed.files.map(({ name }) => name)).not.toContain(page!.name);
  // It is not taken for ours from then on.
  expect(JSON.parse(changed.list)[page!.name]).toBe(JSON.parse(first.list)[page!.name]);

  for (const list of [undefined, "", "spoilt", "[]", '"text"', "null"])
    expect((await ask(c, { there: { [page!.name]: base64("somebody's own") }, list }))!.left).toHaveLength(1);
  // The same bytes may stand there: nothing is lost.
  expect((await ask(c, { there: { [page!.name]: base64(again.files[0]!.text) }, list: undefined }))!.left).toEqual([]);
  await c.close();
});

test("a draft says so, findings elsewhere in the folder make none, and a file without a procedure gives nothing", async () => {
  const c = await client(`${good}\n#- other.strip\nprocedure lost "Lost" for nothing {\n  aim none\n}\n`);
  expect((await ask(c))!.open).toBe(0);
  await c.change("main.strip", c.text("main.strip").replace("    undo pack-bolts  into tray A\n", ""));
  expect((await ask(c))!.open).toBeGreaterThan(0);
  expect(await ask(c, { uri: c.uri("unit.strip") })).toBeNull();
  expect(await ask(c, { uri: c.uri("none.strip") })).toBeNull();
  await c.close();
});

test("where the project says the manual will lie, each step has its code, as from the command line", async () => {
  const c = await client(good),
    codes = async (): Promise<number> =>
      (await ask(c, { kinds: ["manual"] }))!.files[0]!.text.match(/<svg[^>]*class="[^"]*code/g)?.length ?? 0;
  expect(await codes()).toBe(0);
  c.disk.put("/shop/stripdown.json", '{ "baseAddress": "https://manuals.example/winch.html" }');
  await c.rpc.sendNotification("workspace/didChangeWatchedFiles", {
    changes: [{ uri: c.uri("stripdown.json"), type: 1 }],
  });
  expect(await codes()).toBeGreaterThan(1);
  await c.close();
});
