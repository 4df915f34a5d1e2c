// Completion proposes only what can stand there, first what the bench would take now.

import { expect, test, vi } from "vitest";
import type { CompletionItem } from "vscode-languageserver/node";
import { client, drives, everything, winch, type Client } from "./client.ts";

async function proposed(text: string): Promise<{ items: CompletionItem[]; labels: string[]; c: Client }> {
  const c = await client(text);
  await c.request("workspace/diagnostic", { previousResultIds: [] });
  const { items } = await c.request<{ items: CompletionItem[] }>("textDocument/completion", c.at);
  items.sort((a, b) => (a.sortText! < b.sortText! ? -1 : 1));
  await c.close();
  return { items, labels: items.map((one) => one.label), c };
}

test("after undo: what is still made, with its count, the workable first", async () => {
  const { items, labels } = await proposed(winch("undo 1 of cover-screws\n    undo <|>"));
  expect(labels.slice(0, 3)).toEqual(["cover-screws", "drum-bolts", "pack-bolts"]);
  expect(items.find((one) => one.label === "cover-screws")!.detail).toBe("Cover screws · 3 of 4 in");
  expect(items.find((one) => one.label === "pack-bolts")!.detail).toBe("Pack bolts · 8 in, not yet");
  expect(labels).not.toContain("cover");
});

test("what is out already is not proposed again", async () => {
  const { labels } = await proposed(winch("undo cover-screws\n    undo <|>"));
  expect(labels).not.toContain("cover-screws");
});

test("after remove: what comes off now before what does not; no base", async () => {
  const { items, labels } = await proposed(winch("undo cover-screws\n    remove <|>"));
  expect(labels[0]).toBe("cover");
  expect(items[0]!.detail).toBe("Brake cover · comes off now");
  expect(labels).not.toContain("frame");
});

test("positions after turn to, save the one it is in", async () => {
  const { labels } = await proposed(winch("turn to <|>"));
  expect(labels).toEqual(["on-side"]);
});

test("units after a figure, of its dimension alone", async () => {
  const { labels } = await proposed('#- main.strip\nunit box "Box" { base foot  part foot "Foot" { mass 2 <|> } }\n');
  expect(labels).toContain("kg");
  expect(labels).not.toContain("mm");
  const torque = await proposed(
    '#- main.strip\nunit box "Box" { base foot  part foot  fastener a { torque 9 <|> } }\n',
  );
  expect(torque.labels).toContain("N·m");
  expect(torque.items.find((one) => one.label === "N·m")!.filterText).toContain("Nm");
});

test("words of the block at the start of a line, by the trade's other words too, blocks as snippets", async () => {
  const { items, labels } = await proposed(winch("<|>"));
  expect(labels).toContain("undo");
  expect(labels).not.toContain("unit");
  expect(items.find((one) => one.label === "undo")!.filterText).toContain("unscrew");
  const top = await proposed("#- main.strip\n<|>\n");
  expect(top.items.find((one) => one.label === "procedure")).toMatchObject({ insertTextFormat: 2 });
});

test("kinds behind the name of a fastener", async () => {
  const { labels } = await proposed('#- main.strip\nunit box "Box" { base foot  part foot  fastener a <|> }\n');
  expect(labels).toContain("lock-nut");
});

test("no proposal fills in a torque, a wait or a voltage", async () => {
  for (const line of ["torque <|>", "count <|>"])
    expect(
      (
        await proposed(`#- main.strip\nunit box "Box" { base foot  part foot  fastener a { ${line} } }\n`)
      ).labels.filter((label) => /\d/.test(label)),
    ).toEqual([]);
});

test("a tool of a library that is not used yet brings its use line along", async () => {
  const { items } = await proposed(
    `#- closed/shop.strip\ntool puller "Puller"\n${winch("remove cover with <|>").replace("#- unit.strip", "#- unit.strip")}`,
  );
  expect(items.find((one) => one.label === "puller")!.additionalTextEdits![0]!.newText).toBe(
    '\nuse "closed/shop.strip"',
  );
});

test("paths inside the text of use", async () => {
  const { labels } = await proposed('#- unit.strip\nunit a "A" { base b  part b }\n#- main.strip\nuse "<|>"\n');
  expect(labels).toEqual(["unit.strip"]);
});

test("nothing inside a comment", async () => {
  expect((await proposed(winch("# undo <|>"))).labels).toEqual([]);
});

test("typing in a line performs nothing: the bench before it is that of the last check", async () => {
  const c = await client(winch("undo cover-screws\n    undo <|>"));
  await c.request("workspace/diagnostic", { previousResultIds: [] });
  const { textDocument, position } = c.at,
    project = c.session.projects()[0]!,
    best = vi.spyOn(project, "best");
  const ask = async (body: string): Promise<string[]> => {
    await c.change("main.strip", c.text("main.strip").replace(/undo cover-screws\n.*\n/, `${body}\n`));
    const { items } = await c.request<{ items: CompletionItem[] }>("textDocument/completion", {
      textDocument,
      position: { line: position.line, character: body.split("\n")[1]!.length },
    });
    return items.map((one) => one.label);
  };
  const labels = await ask("undo cover-screws\n    undo p");
  expect(labels).toContain("pack-bolts");
  expect(labels).not.toContain("cover-screws");
  expect(best).not.toHaveBeenCalled();
  // Not so when something before it changed, which the last check did not see.
  expect(await ask('note "none"\n    undo p')).toContain("cover-screws");
  await c.close();
});

test("blanks and comments before it perform nothing either", async () => {
  const c = await client(winch("undo cover-screws\n    remove co<|>ver"));
  await c.request("workspace/diagnostic", { previousResultIds: [] });
  const project = c.session.projects()[0]!,
    at = c.at,
    acts = vi.spyOn(project, "bestActs"),
    had = project.work();
  await c.change("main.strip", c.text("main.strip").replace("undo cover-screws", "  undo cover-screws # all four"));
  const { items } = await c.request<{ items: CompletionItem[] }>("textDocument/completion", at);
  expect(items.find((one) => one.label === "cover")!.detail).toBe("Brake cover · comes off now");
  expect(acts).not.toHaveBeenCalled();
  expect(project.work()).toBe(had);
  await c.close();
});

test("a client that shows more beside a name is told there what is still in", async () => {
  const c = await client(winch("undo <|>"), {
    ...everything,
    textDocument: {
      ...everything.textDocument,
      completion: { completionItem: { snippetSupport: true, labelDetailsSupport: true } },
    },
  });
  const { items } = await c.request<{ items: CompletionItem[] }>("textDocument/completion", c.at),
    one = items.find(({ label }) => label === "pack-bolts")!;
  expect(one.labelDetails).toEqual({ description: "Pack bolts · 8 in, not yet" });
  expect(one.detail).toBeUndefined();
  await c.close();
});

test("a client that takes the place once is told it once", async () => {
  const told = async (itemDefaults: string[]): Promise<{ items: CompletionItem[]; itemDefaults?: object }> => {
    const c = await client(winch("<|>"), {
      ...everything,
      textDocument: {
        ...everything.textDocument,
        completion: { ...everything.textDocument!.completion, completionList: { itemDefaults } },
      },
    });
    const list = await c.request<{ items: CompletionItem[] }>("textDocument/completion", c.at);
    await c.close();
    return list;
  };
  const each = await told([]),
    once = await told(["editRange"]),
    wait = (list: { items: CompletionItem[] }): CompletionItem => list.items.find((one) => one.label === "wait")!;
  expect(each.itemDefaults).toBeUndefined();
  expect(once.itemDefaults).toEqual({ editRange: (wait(each).textEdit as { range: object }).range });
  expect(once.items.some((one) => one.textEdit !== undefined)).toBe(false);
  // What is put in is not always the label.
  expect(once.items.map((one) => one.textEditText ?? one.label)).toEqual(
    each.items.map((one) => one.textEdit!.newText),
  );
  expect(once.items.some((one) => one.textEditText !== undefined)).toBe(true);
});

test("what is inside a unit that is used several times is proposed by the part that it is", async () => {
  const { items, labels } = await proposed(drives("remove <|>"));
  expect(labels).toContain("gearbox.left.lid");
  expect(labels).toContain("gearbox.right.lid");
  expect(items.find((one) => one.label === "gearbox.left.lid")!.detail).toContain("Gearbox lid");
  const screws = await proposed(drives("undo gearbox.left.lid-screws\n    undo <|>"));
  expect(screws.labels).toContain("gearbox.right.lid-screws");
  expect(screws.labels).not.toContain("gearbox.left.lid-screws");
});

test("behind `rest of` as behind a count: fasteners that are still in", async () => {
  const { labels } = await proposed(winch("undo 1 of cover-screws\n    undo rest of <|>"));
  expect(labels).toEqual(["cover-screws", "drum-bolts", "pack-bolts"]);
});

test("what cannot be handled so is not proposed: no hazard is renewed or let go, no part is tightened", async () => {
  const text = (body: string): string =>
    winch(body).replace(
      "  fastener cover-screws",
      '  fluid oil oil "Oil" { volume 1 L }\n  hazard skin hot caution "Hot" { on cover  precaution cool "Wait." }\n  fastener cover-screws',
    );
  for (const verb of ["renew", "release", "reuse"]) {
    const { labels } = await proposed(text(`${verb} <|>`));
    expect(labels, verb).toContain("cover");
    expect(labels, verb).not.toContain("skin");
    expect(labels, verb).not.toContain("oil");
  }
  expect((await proposed(text("cool <|>"))).labels).toContain("skin");
  const { labels } = await proposed(text('note "n"\n    refit { tighten <|> }'));
  expect(labels).toContain("cover-screws");
  expect(labels).not.toContain("cover");
});

test("a thing does not lie behind, between or in itself", async () => {
  const unit = (line: string): string =>
    `#- main.strip\nunit box "Box" {\n  base foot\n  part foot "Foot"\n  part lid "Lid"\n  part ring "Ring" { ${line} }\n}\n`;
  for (const line of ["behind <|>", "between <|>", "fits <|>", "rests on <|>", "matched with <|>"])
    expect(
      (await proposed(unit(line))).labels.filter((one) => ["foot", "lid", "ring"].includes(one)),
      line,
    ).toEqual(["foot", "lid"]);
});

test("in a text that is not closed yet, and behind a head whose brace is due, nothing else is proposed", async () => {
  const { labels } = await proposed('#- main.strip\nunit box "Hand <|>\n');
  expect(labels).toEqual([]);
  for (const line of ["unit box <|>", 'unit box "Box" <|>', 'unit box "Box" { part lid "Lid" <|> }'])
    expect(
      (await proposed(`#- main.strip\n${line}\n`)).labels.filter((one) => one === "fastener"),
      line,
    ).toEqual([]);
  // Where a line may hold several acts, or properties, the next one may follow.
  expect((await proposed(winch("undo cover-screws  <|>"))).labels).toContain("remove");
  expect((await proposed('#- main.strip\nunit box "Box" { part lid "Lid" { mass 2 kg <|> } }\n')).labels).toContain(
    "behind",
  );
  expect((await proposed(winch("if cover removed <|>"))).labels).toContain("undo");
});

test("strength classes and grades by their standards", async () => {
  const unit = (line: string): string =>
    `#- main.strip\nunit box "Box" {\n  base foot\n  part foot "Foot"\n  fastener a bolt { ${line} }\n}\n`;
  const classes = await proposed(unit("class <|>"));
  expect(classes.labels).toEqual(expect.arrayContaining(["8.8", "10.9", "12.9"]));
  expect(classes.items.find((one) => one.label === "10.9")!.detail).toBe("ISO 898-1");
  expect((await proposed(unit("grade <|>"))).labels).toContain("5");
});

test("at the start of a line in a step: what is done most, then the precautions that the unit asks for; others last", async () => {
  const text = (hazard: string): string =>
    winch("<|>").replace("  fastener cover-screws", `  ${hazard}\n  fastener cover-screws`);
  const { labels } = await proposed(
    text(
      'hazard start rotating danger "Start" { on cover  precaution lock-out "Lock it."  precaution try-start "Try." }',
    ),
  );
  expect(labels.slice(0, 8)).toEqual(["drain", "lift", "remove", "support", "turn", "undo", "lock-out", "try-start"]);
  expect(labels.indexOf("prove-dead")).toBeGreaterThan(labels.indexOf("wait"));
  // Nobody can tell what a hazard takes over from elsewhere: then none of them comes last.
  const other = await proposed(text('hazard start rotating danger "Start" { like shop-start }'));
  expect(other.labels.indexOf("prove-dead")).toBeLessThan(other.labels.indexOf("wait"));
});

test("kinds of precaution in the order in which they are taken, proofs of other kinds of hazard last", async () => {
  const { labels } = await proposed(
    '#- main.strip\nunit box "Box" { base foot  part foot  hazard live electrical danger "Live" { precaution <|> } }\n',
  );
  const order = ["shut-down", "isolate", "lock-out", "discharge", "prove-dead", "earth", "try-start"];
  expect(labels.filter((one) => order.includes(one))).toEqual(order);
});

test("behind a drive the sizes that the head standards give this thread; none without a size", async () => {
  const unit = (line: string): string =>
    `#- main.strip\nunit box "Box" {\n  base foot\n  part foot "Foot"\n  fastener a bolt { ${line} }\n}\n`;
  const hex = await proposed(unit("size M12x40  drive hex <|>"));
  // ISO 4014 gives M12 a head of 18 mm across flats; older bolts to DIN 931 have 19.
  expect(hex.items[0]).toMatchObject({ label: "18", detail: expect.stringContaining("ISO 4014") as string });
  const socket = await proposed(unit("size M12x40  drive hex-socket <|>"));
  // ISO 4762: 10 mm.
  expect(socket.items.find(({ detail }) => detail?.includes("ISO 4762"))!.label).toBe("10");
  expect((await proposed(unit("drive hex <|>"))).labels.filter((one) => /^\d/.test(one))).toEqual([]);
});

test("no hazard is an aim, and none is cleaned or looked over", async () => {
  const text = (line: string): string =>
    winch(line).replace(
      "  fastener cover-screws",
      '  hazard skin hot caution "Hot" { on cover  precaution cool "Wait." }\n  fastener cover-screws',
    );
  for (const verb of ["clean", "inspect"]) {
    const { labels } = await proposed(text(`${verb} <|>`));
    expect(labels, verb).toContain("cover");
    expect(labels, verb).not.toContain("skin");
  }
  const { labels } = await proposed(text('note "n"').replace(/aim [^\n]*/, "aim <|>"));
  expect(labels).toContain("cover");
  expect(labels).not.toContain("skin");
});
