// Manual, sheets and labels as the editor writes them: made by the server, and nothing replaced that is not ours.

import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { loadProject } from "../../language/index.ts";
import { readers } from "../../language/outputs/manual/sections.ts";
import { stringsOf } from "../../language/outputs/texts/author-texts.ts";
import { manual } from "../../language/outputs/manual/manual.ts";
import { write } from "../../language/outputs/output.ts";
import { defaultWording, wordings } from "../../language/outputs/wording/languages.ts";
import { checkProject } from "../../language/workspace/check-project.ts";
import type { DocumentNamesAnswer, DocumentsAnswer, DocumentsParams } from "../../shared/protocol.ts";
import { manualReaders } from "../../shared/settings.ts";
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

/** Settings as an editor sends them. */
const set = async (c: Client, stripdown: object): Promise<void> => {
  await c.rpc.sendNotification("workspace/didChangeConfiguration", { settings: { stripdown } });
};

test("language and reader by the settings, for once by the question; the live manual goes by the settings too", async () => {
  const c = await client(good),
    page = async (more: Partial<DocumentsParams> = {}): Promise<string> =>
      (await ask(c, { kinds: ["manual"], ...more }))!.files[0]!.text;
  const record = defaultWording.manual.sections.record,
    usual = await page();
  expect(usual).toContain('<html lang="en-GB">');
  expect(usual).toContain(record);
  await set(c, { manual: { language: "de", reader: "customer" } });
  expect(await page()).toContain('<html lang="de">');
  expect(await page({ language: "en-GB" })).not.toContain(record);
  expect(await page({ language: "en-GB", reader: "technician" })).toBe(usual);
  const { body } = await c.request<{ body: string }>("stripdown/manual", { uri: c.uri("main.strip") });
  expect(body).toContain(wordings["de"]!.manual.sections.strip);
  await c.close();
});

test("a language that there is no catalogue of is told, and nothing is written in another one", async () => {
  const c = await client(good);
  await expect(ask(c, { language: "tlh" })).rejects.toThrow(
    /no built-in words in the language tlh: it is one of en-GB/,
  );
  expect((await ask(c, { language: "de-AT" }))!.files[0]!.text).toContain('<html lang="de">');
  await c.close();
});

test("authors' texts in the language asked for, where a file beside the source holds them; what it lacks is told", async () => {
  const c = await client(good),
    source = c.text("main.strip"),
    title = "Take the pack out";
  expect(source).toContain(title);
  const project = loadProject(
    memoryWorld(
      new Map([
        ["/shop/main.strip", source],
        ["/shop/unit.strip", c.text("unit.strip")],
      ]),
    ),
    ["/shop/main.strip"],
  );
  const { id } = stringsOf(project.files.get("/shop/main.strip")!).find(({ text }) => text === title)!;
  const told = {
    format: "stripdown-texts",
    version: 1,
    from: "en",
    lang: "de",
    texts: [{ id, source: title, text: "Das Paket herausnehmen" }],
  };
  c.disk.put("/shop/main.de.texts.json", JSON.stringify(told));
  const made = (await ask(c, { kinds: ["manual"], language: "de" }))!;
  expect(made.files[0]!.text).toContain("Das Paket herausnehmen");
  expect(made.files[0]!.text).not.toContain(title);
  expect(made.says.join()).toMatch(/not translated into de and printed as written/);
  c.disk.put("/shop/main.de.texts.json", "{");
  await expect(ask(c, { kinds: ["manual"], language: "de" })).rejects.toThrow(
    /main\.de\.texts\.json holds no translations: it is no JSON/,
  );
  await c.close();
});

test("pictures that the papers name are counted, each once", async () => {
  const c = await client(
    good.replace(
      "undo cover-screws",
      'photo "a.jpg" "The cover"\n    photo "a.jpg" "Again"\n    photo "b.jpg" "The pack"\n    undo cover-screws',
    ),
  );
  c.disk.put("/shop/a.jpg", undefined);
  c.disk.put("/shop/b.jpg", undefined);
  expect((await ask(c))!.pictures).toBe(2);
  expect((await ask(c, { kinds: ["labels"] }))!.pictures).toBe(0);
  await c.close();
});

test("the settings offer the languages and the readers that there are", () => {
  const { contributes } = JSON.parse(readFileSync(new URL("../../package.json", import.meta.url), "utf8")) as {
    contributes: { configuration: { properties: Record<string, { enum?: string[]; default: unknown }> } };
  };
  const of = contributes.configuration.properties;
  expect(of["stripdown.manual.language"]!.enum).toEqual(Object.keys(wordings));
  expect(of["stripdown.manual.language"]!.default).toBe(defaultWording.tag);
  expect(of["stripdown.manual.reader"]!.enum).toEqual([...readers]);
  expect([...manualReaders]).toEqual([...readers]);
});
