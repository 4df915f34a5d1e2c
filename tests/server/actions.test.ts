// Remedies and changes: each applied gives the text that it promises, and the finding is gone.

import { expect, test } from "vitest";
import { CodeActionTriggerKind, type CodeAction, type Range } from "vscode-languageserver/node";
import { client, edited, editsOf, everything, winch, type Client } from "./client.ts";

async function actions(c: Client, only?: string[], triggerKind?: CodeActionTriggerKind): Promise<CodeAction[]> {
  const range: Range = { start: c.at.position, end: c.at.position };
  return await c.request<CodeAction[]>("textDocument/codeAction", {
    textDocument: c.at.textDocument,
    range,
    context: { diagnostics: [], ...(only ? { only } : {}), ...(triggerKind ? { triggerKind } : {}) },
  });
}
const apply = (c: Client, name: string, action: CodeAction): string =>
  edited(c.text(name), editsOf(action.edit!).get(name)!);

test("the remedy of a finding, applied, makes the file clean", async () => {
  const c = await client(winch("undo cover-screws\n    remove cover\n    remove pack<|>"));
  const fix = (await actions(c)).find((one) => one.title === "Insert: undo pack-bolts")!;
  await c.change("main.strip", apply(c, "main.strip", fix));
  expect(c.text("main.strip")).toContain("    undo pack-bolts\n    remove pack\n");
  expect(await c.findings("main.strip")).toEqual([]);
  await c.close();
});

test("everything that has to come first is worked out when it is chosen, and makes the file clean", async () => {
  const c = await client(winch("remove pack<|>"));
  const late = (await actions(c)).find((one) => one.title === "Insert all that has to come before this")!;
  expect(late.edit).toBeUndefined();
  const done = await c.request<CodeAction>("codeAction/resolve", late);
  expect(done.title).toBe("Insert the 3 acts that free pack");
  await c.change("main.strip", apply(c, "main.strip", done));
  expect(c.text("main.strip")).toContain(
    "    undo cover-screws\n    remove cover\n    undo pack-bolts\n    remove pack\n",
  );
  expect(await c.findings("main.strip")).toEqual([]);
  await c.close();
});

test("a client that resolves nothing gets it at once", async () => {
  const c = await client(winch("remove drum<|>"), {
    ...everything,
    textDocument: { ...everything.textDocument, codeAction: {} },
  });
  const fix = (await actions(c)).find((one) => one.title.startsWith("Insert the 2 acts"))!;
  expect(apply(c, "main.strip", fix)).toMatch(
    /turn to on-side\n\s+undo drum-bolts\n\s+remove drum|undo drum-bolts\n\s+turn to on-side\n\s+remove drum/,
  );
  await c.close();
});

test("every certain remedy of the file at once", async () => {
  const c = await client(
    "#- main.strip\nunit box \u201cBox\u201d {\n  base foot\n  part foot \u201cFoot\u201d {<|>}\n}\n",
  );
  const [all] = await actions(c, ["source.fixAll"]);
  await c.change("main.strip", apply(c, "main.strip", all!));
  expect(c.text("main.strip")).toContain('unit box "Box"');
  expect(await c.findings("main.strip")).toEqual([]);
  await c.close();
});

test("the frame of a missing hazard has neither words nor figures; the cursor is left in it", async () => {
  const c = await client(
    '#- main.strip\nunit box "Box" {\n  base foot\n  part foo<|>t "Foot" { supply 400 V ac }\n}\n',
  );
  const fix = (await actions(c)).find((one) => one.title.startsWith("Declare the hazard"))!,
    text = apply(c, "main.strip", fix);
  expect(text).toContain('  hazard foot-electrical electrical "" {\n    on foot\n  }\n}');
  expect(fix.command).toMatchObject({
    command: "stripdown.goTo",
    arguments: [c.uri("main.strip"), { line: 3, character: '  hazard foot-electrical electrical "'.length }],
  });
  await c.close();
});

test("two steps change places", async () => {
  const c = await client(
    '#- main.strip\nunit box "Box" { base foot  part foot }\nprocedure p "P" for box {\n  aim none\n  step a<|> "A" { note "1" }\n  step b "B" { note "2" }\n}\n',
  );
  const swap = (await actions(c, ["refactor.rewrite"])).find(
    (one) => one.title === "Change places with the next step",
  )!;
  expect(apply(c, "main.strip", swap)).toMatch(/step b "B" \{ note "2" \}\n {2}step a "A" \{ note "1" \}/);
  await c.close();
});

test("no sign beside each line: what changes the whole file is offered to who asks", async () => {
  const unit = await client('#- main.strip\nunit box "Box" { base foot  part foot<|> { mass 2 kg } }\n');
  expect((await actions(unit, undefined, CodeActionTriggerKind.Invoked)).map(({ title }) => title)).toContain(
    "Put US units first in this file",
  );
  expect((await actions(unit, undefined, CodeActionTriggerKind.Automatic)).map(({ title }) => title)).not.toContain(
    "Put US units first in this file",
  );
  await unit.close();
});

test("US units first: the author's own figure stays in brackets, and nothing new is found", async () => {
  const c = await client(
    winch("undo cover-<|>screws")
      .replace("#- main.strip", "#- other.strip")
      .replace("undo cover-<|>screws", "undo cover-screws")
      .replace("mass 20 kg", "mass 20 k<|>g"),
  );
  const us = (await actions(c, ["refactor.rewrite"])).find((one) => one.title === "Put US units first in this file")!,
    before = (await c.findings("unit.strip")).length;
  await c.change("unit.strip", apply(c, "unit.strip", us));
  expect(c.text("unit.strip")).toMatch(/mass 44(?:\.\d+)? lb \(20 kg\)/);
  expect(c.text("unit.strip")).toMatch(/torque [\d.]+ lbf·\w+ \(24 N·m\)/);
  expect((await c.findings("unit.strip")).length).toBe(before);
  await c.close();
});

test("fasteners that say the same become a type", async () => {
  const c = await client(
    '#- main.strip\nunit box "Box" {\n  base foot\n  part foot\n  part lid\n  part door\n  fastener a<|> screw "A" { size M6x20  torque 9 N·m  drive hex 10  joins lid to foot }\n  fastener b screw "B" { count 2  size M6x20  drive hex 10  torque 9 N·m  joins door to foot }\n}\n',
  );
  const type = (await actions(c, ["refactor.extract"]))[0]!,
    before = (await c.findings("main.strip")).map((one) => one.code);
  await c.change("main.strip", apply(c, "main.strip", type));
  expect(c.text("main.strip")).toContain("fastener a-type screw { size M6x20  torque 9 N·m  drive hex 10 }");
  expect(c.text("main.strip").match(/like a-type/g)).toHaveLength(2);
  expect((await c.findings("main.strip")).map((one) => one.code)).toEqual(before);
  await c.close();
});
