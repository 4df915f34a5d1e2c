// What the server answers, over real JSON-RPC.

import { afterEach, beforeEach, expect, test } from "vitest";
import type { CodeAction, CompletionItem, DocumentSymbol, Hover, Location, TextEdit, WorkspaceEdit } from "vscode-languageserver";
import type { BenchAnswer } from "../../shared/protocol.ts";
import { session, type Session } from "./session.ts";

const box = `unit box "Box" {
  base foot
  part foot "Foot"
  part lid "Lid" { mass 2 kg }
  fastener lid-screws screw "Lid screws" { count 4  size M6x20  class 8.8  torque 9 N·m  joins lid to foot }
}
procedure strip "Strip" for box {
  aim lid off
  step "Open, 20 °C at most" {
    undo 2 of lid-screws
    remove lid
  }
}
`;
let s: Session;
beforeEach(async () => { s = await session({ "/p/other.strip": `use "box.strip"\nprocedure other "Other" for box {\n  aim none\n  step "Look" { inspect lid-screws "All four in" }\n}\n`, "/p/box.strip": box }); });
afterEach(() => s.close());

test("a finding comes with its place, its reason and its code, and goes when the text is mended", async () => {
  const { uri, text } = s.open("/p/box.strip", box), [finding] = await s.pushed(uri);
  expect(finding).toMatchObject({ code: "sequence/still-held", message: "Lid cannot come off: still held by 2 of 4 Lid screws", range: { start: { line: 10, character: 4 }, end: { line: 10, character: 14 } } });
  expect(finding!.relatedInformation![0]!.location.range.start.line).toBe(4);
  void s.client.sendNotification("textDocument/didChange", { textDocument: { uri, version: 9 }, contentChanges: [{ text: text.replace("2 of lid-screws", "lid-screws") }] });
  expect(await s.pushed(uri)).toEqual([]);
});

test("a client that pulls is not pushed to", async () => {
  const pulling = await session({}, { textDocument: { diagnostic: {} } });
  const { uri } = pulling.open("/p/box.strip", box), answer = await pulling.client.sendRequest<{ items: { code: string }[] }>("textDocument/diagnostic", { textDocument: { uri } });
  expect(answer.items.map((one) => one.code)).toEqual(["sequence/still-held"]);
  await pulling.close();
});

test("the remedy of a finding mends it", async () => {
  const { uri, text } = s.open("/p/box.strip", box), range = { start: { line: 10, character: 5 }, end: { line: 10, character: 5 } };
  const [action] = await s.client.sendRequest<CodeAction[]>("textDocument/codeAction", { textDocument: { uri }, range, context: { diagnostics: [] } });
  expect(action!.title).toBe("Insert: undo lid-screws");
  const edit = action!.edit!.changes![uri]![0]!;
  const lines = text.split("\n"), at = lines.slice(0, edit.range.start.line).join("\n").length + 1 + edit.range.start.character;
  await s.pushed(uri);
  void s.client.sendNotification("textDocument/didChange", { textDocument: { uri, version: 9 }, contentChanges: [{ text: text.slice(0, at) + edit.newText + text.slice(at) }] });
  expect(await s.pushed(uri)).toEqual([]);
});

test("hover tells torque, preload and share of yield with their source, right of signs beyond ASCII", async () => {
  const { uri, places } = s.open("/p/box.strip", box.replace("joins lid", "joins l<|>id").replace("undo 2 of lid-screws", "undo 2 of lid-sc<|>rews"));
  const part = await s.client.sendRequest<Hover>("textDocument/hover", { textDocument: { uri }, position: places[0] });
  expect((part.contents as { value: string }).value).toContain("Mass 2 kg");
  const bolt = await s.client.sendRequest<Hover>("textDocument/hover", { textDocument: { uri }, position: places[1] });
  expect((bolt.contents as { value: string }).value).toMatch(/Preload .* kN, \d+ % of its yield.*\n\n.*Source: VDI 2230/s);
});

test("behind undo only what is still in can stand, with its count", async () => {
  const { uri, places } = s.open("/p/box.strip", box.replace("    remove lid\n", "    undo <|>\n"));
  const items = await s.client.sendRequest<CompletionItem[]>("textDocument/completion", { textDocument: { uri }, position: places[0] });
  expect(items.map(({ label, detail }) => [label, detail])).toEqual([["lid-screws", "Lid screws: 2 of 4 in, M6x20"]].map(([a, b]) => [a, b!.replace("M6x20", "M6")]));
});

test("definition, references over closed files, highlight", async () => {
  const { uri, places } = s.open("/p/box.strip", box.replace("undo 2 of lid-screws", "undo 2 of lid-<|>screws"));
  const at = { textDocument: { uri }, position: places[0] };
  expect(await s.client.sendRequest<Location>("textDocument/definition", at)).toMatchObject({ uri, range: { start: { line: 4, character: 11 } } });
  expect((await s.client.sendRequest<Location[]>("textDocument/references", { ...at, context: { includeDeclaration: true } })).map((one) => [one.uri.split("/").at(-1), one.range.start.line])).toEqual([["box.strip", 4], ["box.strip", 9], ["other.strip", 3]]);
  expect(await s.client.sendRequest<unknown[]>("textDocument/documentHighlight", at)).toHaveLength(2);
});

test("rename reaches closed files and says why it cannot", async () => {
  const { uri, places } = s.open("/p/box.strip", box.replace("undo 2 of lid-screws", "undo 2 of lid-<|>screws")), at = { textDocument: { uri }, position: places[0] };
  const edit = await s.client.sendRequest<WorkspaceEdit>("textDocument/rename", { ...at, newName: "cover-screws" });
  expect(Object.entries(edit.changes!).map(([file, edits]) => [file.split("/").at(-1), edits.length])).toEqual([["box.strip", 2], ["other.strip", 1]]);
  await expect(s.client.sendRequest("textDocument/rename", { ...at, newName: "tray" })).rejects.toThrow("tray cannot be a name");
  await expect(s.client.sendRequest("textDocument/rename", { ...at, newName: "foot" })).rejects.toThrow("foot is declared already");
  await expect(s.client.sendRequest("textDocument/rename", { ...at, newName: "two words" })).rejects.toThrow("is no name");
});

test("outline, folding and formatting", async () => {
  const { uri } = s.open("/p/box.strip", box.replace("    undo 2", "        undo 2")), document = { textDocument: { uri } };
  const symbols = await s.client.sendRequest<DocumentSymbol[]>("textDocument/documentSymbol", document);
  expect(symbols.map((one) => [one.name, one.children!.map((child) => child.name)])).toEqual([["box", ["foot", "lid", "lid-screws"]], ["strip", ["Open, 20 °C at most"]]]);
  expect(await s.client.sendRequest<unknown[]>("textDocument/foldingRange", document)).toHaveLength(3);
  const [edit] = await s.client.sendRequest<TextEdit[]>("textDocument/formatting", { ...document, options: { tabSize: 2, insertSpaces: true } });
  expect(edit!.newText).toBe(box);
});

test("the bench at the cursor: two screws out, two in, everything on", async () => {
  const { uri } = s.open("/p/box.strip", box), bench = await s.client.sendRequest<BenchAnswer>("stripdown/bench", { uri, line: 10, character: 4 });
  expect(bench.after).toBe("undo 2 of lid-screws");
  expect(bench.sections.map((one) => [one.title, one.items.map((item) => `${item.name} ${item.detail}`.trim())])).toEqual([["On the unit", ["Foot", "Lid"]], ["Still in", ["Lid screws 2 of 4"]]]);
  expect(bench.notConsidered).toContain("electrical");
});

test("hints: how many are out, and the torque in the other system", async () => {
  const { uri } = s.open("/p/box.strip", box), range = { start: { line: 0, character: 0 }, end: { line: 20, character: 0 } };
  const hints = await s.client.sendRequest<{ label: string }[]>("textDocument/inlayHint", { textDocument: { uri }, range });
  expect(hints.map((hint) => hint.label)).toEqual(["80 lbf·in", "2 of 4 out"]);
});
