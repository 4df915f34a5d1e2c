// What helps while reading: hover, hints, lenses, folding, selections, colours, layout, links, pages, and what the views ask.

import { expect, test, vi } from "vitest";
import type {
  CodeLens,
  FoldingRange,
  Hover,
  InlayHint,
  SelectionRange,
  SemanticTokens,
  SignatureHelp,
  TextEdit,
} from "vscode-languageserver/node";
import { tokenModifiers, tokenTypes } from "../../language/index.ts";
import { refitScheme } from "../../shared/protocol.ts";
import type { BenchAnswer, ManualAnswer, RefitOfStepAnswer, StripDiagramAnswer } from "../../shared/protocol.ts";
import { client, edited, everything, winch, type Client } from "./client.ts";

const hover = async (text: string): Promise<string> => {
  const c = await client(text),
    found = await c.request<Hover | null>("textDocument/hover", c.at);
  await c.close();
  return (found?.contents as { value: string } | undefined)?.value ?? "";
};
const place = (c: Client) => ({ uri: c.at.textDocument.uri, position: c.at.position });

test("a part: mass in both systems, what holds it, when it comes off", async () => {
  const said = await hover(
    winch("undo 3 of cover-screws\n    mark co<|>ver, frame as M1\n    undo rest of cover-screws\n    remove cover"),
  );
  expect(said).toContain("2 kg (4.4 lb)");
  expect(said).toContain("Still held by 1 of 4 Cover screws");
  expect(said).toContain("Comes off at line 8");
});

test("a fastener: drive, stress area, preload and share of yield, with source and what it rests on", async () => {
  const said = await hover(winch("undo pack-bo<|>lts"));
  // ISO 898-1 Table 4: stress area of M8 is 36.6 mm². At 90 % of the yield and friction 0.12, VDI 2230-1 Table A1 gives M8-8.8 18.6 kN and 24.6 N·m
  // (tests/reference/tightening-torque-published.csv).
  expect(said).toContain("Stress area 36.6 mm²");
  const share = Number(/(\d+) % of the yield stress/.exec(said)![1]),
    preload = Number(/preload about ([\d.]+) kN/.exec(said)![1]);
  expect(Math.abs(share - (24 / 24.6) * 90)).toBeLessThan(2);
  expect(Math.abs(preload - (24 / 24.6) * 18.6)).toBeLessThan(0.5);
  expect(said).toContain("VDI 2230");
  expect(said).toContain("24 N·m (");
});

test("a hazard: the computed wait, and no word that it is over", async () => {
  const said = await hover(
    `#- main.strip\nunit drive "Drive" {\n  base frame\n  part frame "Frame"\n  part lid "Lid" { rests on frame }\n  part bus capacitor "Bus" { rests on frame  behind lid }\n  hazard cha<|>rge electrical danger "Capacitors" {\n    on bus  source capacitor  voltage 560 V dc  capacitance 1200 uF  bleeder 22 kohm\n    precaution isolate "Open it."\n    precaution discharge "Leave it alone."\n    precaution prove-dead behind lid "Test." at most 50 V dc\n  }\n}\n`,
  );
  // 22 kohm x 1.05 x 1200 uF x 1.2 x ln(560 V / V at 0.2 J) = 117 s, as the check's own text has it; by hand: 33.264 s x 3.52.
  expect(said).toMatch(/Wait 117 s|Wait 2 min/);
  expect(said).not.toMatch(/\b(safe|OK|passed|complies)\b/i);
});

test("an act: the bench before and after; a figure in the other system", async () => {
  expect(await hover(winch("undo cover-screws\n    rem<|>ove cover"))).toContain("| Parts on | 4 | 3 |");
  expect(await hover(winch('note "x"').replace("torque 24 N·m", "torque 2<|>4 N·m"))).toContain("lbf·ft");
  expect(
    await hover(winch("undo cover-screws").replace("part pack", "part pack ").replace("mass 4 kg", "mas<|>s 4 kg")),
  ).toContain("Mass of one");
});

test("a thread's size tells its pitch, its area and the tools that heads for it take, each with its standard", async () => {
  const size = (text: string): Promise<string> =>
    hover(`#- main.strip\nunit box "Box" {\n  base foot\n  part foot "Foot"\n  fastener a bolt { ${text} }\n}\n`);
  const metric = await size("size M1<|>2x40");
  // ISO 261: M12 coarse has a pitch of 1.75 mm; ISO 898-1, table of stress areas: 84.3 mm².
  expect(metric).toContain("Pitch 1.75 mm · stress area 84.3 mm²");
  // ISO 4014: 18 mm across flats. ISO 4762: 10 mm key.
  expect(metric).toMatch(/Hexagon: 18 mm \([^)]*ISO 4014/);
  expect(metric).toMatch(/Hexagon socket: [^\n]*10 mm \(ISO 4762/);
  expect(await size("size M1<|>6x1.5-LH")).toContain("fine, left-hand");
  // ASME B1.1: 1/2-13 UNC has 0.1419 in².
  expect(await size("size 1/<|>2-13 UNC")).toContain("13 threads per inch · stress area 0.142 in²");
  expect(await size("size G1<|>/4")).toContain("pipe thread");
  expect(await size("size M1<|>3")).toContain("not in ISO 261");
});

test("what is under the pointer is performed only where it is something on the bench, and never judged", async () => {
  const c = await client(winch("undo cover-screws\n    rem<|>ove cover")),
    [project] = c.session.projects();
  await c.findings("main.strip");
  const judged = project!.last(),
    before = project!.work();
  /** Acts that are performed for a hover behind an edit of the text of the strip. */
  const acts = async (edit: string, name: string, what: string, more = 1): Promise<number> => {
    const since = project!.work();
    await c.change("main.strip", c.text("main.strip").replace("undo cover-screws", edit));
    expect(
      await c.request("textDocument/hover", {
        textDocument: { uri: c.uri(name) },
        position: c.find(name, what, more),
      }),
    ).not.toBeNull();
    return project!.work() - since;
  };
  expect(await acts("wait 1 min  undo cover-screws", "unit.strip", "4 kg")).toBe(0);
  expect(await acts("wait 1 min  undo cover-screws", "unit.strip", "mass 4")).toBe(0);
  expect(project!.work()).toBe(before);
  expect(await acts("wait 1 min  undo cover-screws", "main.strip", "remove")).toBeGreaterThan(0);
  expect(await acts("wait 2 min  undo cover-screws", "main.strip", "cover\n", 1)).toBeGreaterThan(0);
  expect(project!.last(), "nothing is judged for it").toBe(judged);
  // What was performed for it is not performed again for the check.
  const since = project!.work();
  await c.findings("main.strip");
  expect(project!.work()).toBe(since);
  await c.close();
});

test("an author's text is never markup", async () => {
  expect(
    await hover(winch("remove co<|>ver").replace('"Brake cover"', '"**bold** <b>x</b> [a](command:x)"')),
  ).not.toMatch(/(?<!\\)\[a\]|<b>|(?<!\\)\*\*bold/);
});

test("hints count, tell torque and the other system; one setting turns them off", async () => {
  const c = await client(winch("undo 6 of pack-b<|>olts")),
    all = {
      textDocument: c.at.textDocument,
      range: { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } },
    };
  expect((await c.request<InlayHint[]>("textDocument/inlayHint", all)).map((one) => one.label)).toEqual(["6 of 8 out"]);
  expect(
    (
      await c.request<InlayHint[]>("textDocument/inlayHint", { ...all, textDocument: { uri: c.uri("unit.strip") } })
    ).map((one) => one.label),
  ).toEqual(["80 lbf·in", "18 lbf·ft", "33 lbf·ft"]);
  await c.rpc.sendNotification("workspace/didChangeConfiguration", {
    settings: { stripdown: { hints: false, lenses: false } },
  });
  expect(await c.request("textDocument/inlayHint", all)).toEqual([]);
  expect(await c.request("textDocument/codeLens", { textDocument: c.at.textDocument })).toEqual([]);
  await c.close();
});

test("lenses name what undoes a step and how many findings are open", async () => {
  const c = await client(winch("undo cover-screws\n    remove co<|>ver"));
  expect(
    (await c.request<CodeLens[]>("textDocument/codeLens", { textDocument: c.at.textDocument })).map(
      (one) => one.command!.title,
    ),
  ).toEqual(["1 finding open", "Way back: 2 acts, computed", "Undone by R1"]);
  await c.close();
});

test("folding keeps the closing brace in sight; selections grow", async () => {
  const c = await client(winch("undo cover-screws\n    remove co<|>ver"));
  expect(await c.request<FoldingRange[]>("textDocument/foldingRange", { textDocument: c.at.textDocument })).toEqual([
    { startLine: 1, endLine: 7 },
    { startLine: 3, endLine: 5 },
  ]);
  const [selection] = await c.request<SelectionRange[]>("textDocument/selectionRange", {
    textDocument: c.at.textDocument,
    positions: [c.at.position],
  });
  const texts: string[] = [];
  for (let one: SelectionRange | undefined = selection; one; one = one.parent)
    texts.push(
      edited(c.text("main.strip"), [])
        .split("\n")
        .slice(one.range.start.line, one.range.end.line + 1)
        .join("\n")
        .length.toString(),
    );
  expect(selection!.range).toEqual({ start: c.find("main.strip", "cover\n"), end: c.find("main.strip", "cover\n", 5) });
  expect(texts.length).toBeGreaterThan(4);
  await c.close();
});

test("colours: whole, range and delta agree", async () => {
  const c = await client(winch("undo cover-screws\n    remove co<|>ver")),
    full = await c.request<SemanticTokens>("textDocument/semanticTokens/full", { textDocument: c.at.textDocument });
  const read = (data: number[], text: string): string[] => {
    let line = 0,
      at = 0;
    const out: string[] = [];
    for (let i = 0; i < data.length; i += 5) {
      if (data[i]! > 0) {
        line += data[i]!;
        at = 0;
      }
      at += data[i + 1]!;
      out.push(
        `${text.split("\n")[line]!.slice(at, at + data[i + 2]!)} ${tokenTypes[data[i + 3]!]} ${tokenModifiers.filter((_, bit) => data[i + 4]! & (1 << bit)).join()}`.trim(),
      );
    }
    return out;
  };
  expect(read(full.data, c.text("main.strip"))).toContain("cover-screws fastener undone");
  const range = await c.request<SemanticTokens>("textDocument/semanticTokens/range", {
    textDocument: c.at.textDocument,
    range: { start: { line: 4, character: 0 }, end: { line: 4, character: 99 } },
  });
  expect(read(range.data, c.text("main.strip"))).toEqual(["undo keyword", "cover-screws fastener undone"]);
  await c.change("main.strip", c.text("main.strip").replace("remove cover", "remove pack"));
  const delta = await c.request<{ edits?: { start: number; deleteCount: number; data?: number[] }[]; data?: number[] }>(
      "textDocument/semanticTokens/full/delta",
      { textDocument: c.at.textDocument, previousResultId: full.resultId },
    ),
    data = [...full.data];
  for (const { start, deleteCount, data: put = [] } of delta.edits ?? []) data.splice(start, deleteCount, ...put);
  expect(delta.data ?? data).toEqual(
    (await c.request<SemanticTokens>("textDocument/semanticTokens/full", { textDocument: c.at.textDocument })).data,
  );
  await c.close();
});

test("layout: whole, a range, and the line just closed; comments kept", async () => {
  const c = await client(
      '#- main.strip\nunit box "Box" {\nbase foot   # the base\n part   foot {\nmass 2 kg\n}<|>\n}\n',
    ),
    options = { tabSize: 2, insertSpaces: true };
  const whole = await c.request<TextEdit[]>("textDocument/formatting", { textDocument: c.at.textDocument, options });
  expect(edited(c.text("main.strip"), whole)).toBe(
    'unit box "Box" {\n  base foot  # the base\n  part foot {\n    mass 2 kg\n  }\n}\n',
  );
  const range = await c.request<TextEdit[]>("textDocument/rangeFormatting", {
    textDocument: c.at.textDocument,
    options,
    range: { start: { line: 1, character: 0 }, end: { line: 1, character: 9 } },
  });
  expect(edited(c.text("main.strip"), range).split("\n").slice(3)).toEqual(c.text("main.strip").split("\n").slice(3));
  const typed = await c.request<TextEdit[]>("textDocument/onTypeFormatting", { ...c.at, ch: "}", options });
  expect(edited(c.text("main.strip"), typed).split("\n")[4]).toBe("  }");
  await c.close();
});

test("the refit and the page of a check as documents that nobody wrote", async () => {
  const c = await client(winch("undo cover-screws\n    remove co<|>ver"));
  const refit = await c.request<{ text: string }>("workspace/textDocumentContent", {
    uri: `stripdown-refit:/shop/main.strip.txt?${encodeURIComponent(c.uri("main.strip"))}`,
  });
  expect(refit.text).toContain("REFIT");
  expect(
    (
      await c.request<{ text: string }>("workspace/textDocumentContent", {
        uri: "stripdown-check:/sequence/still-held.md",
      })
    ).text,
  ).toContain("`sequence/still-held`");
  await c.close();
});

test("the bench at three places of a procedure", async () => {
  const said = async (body: string): Promise<Record<string, string[]> | null> => {
    const c = await client(winch(body)),
      bench = await c.request<BenchAnswer | null>("stripdown/bench", place(c));
    await c.close();
    return (
      bench &&
      Object.fromEntries(
        bench.sections.map(({ title, items }) => [
          title,
          items.map((one) => `${one.name}${one.detail ? `: ${one.detail}` : ""}`),
        ]),
      )
    );
  };
  expect(await said("<|>undo 2 of cover-screws  into tray A")).toMatchObject({
    "Still in": ["Cover screws: 2 of 4 in", "Pack bolts: 8 of 8 in", "Drum bolts: 2 of 2 in"],
  });
  const later = await said("undo cover-screws  into tray A\n    remove cover<|>\n    undo pack-bolts");
  expect(later).toMatchObject({
    "Still in": ["Pack bolts: 8 of 8 in", "Drum bolts: 2 of 2 in"],
    Off: ["Brake cover: line 6"],
    Out: ["Cover screws: tray A, line 5"],
  });
  const c = await client(`<|>${winch('note "x"').trimStart()}`.replace("<|>#- unit.strip\n", "#- unit.strip\n<|>"));
  expect(await c.request("stripdown/bench", place(c))).toBeNull();
  await c.close();
});

test("the refit of a step, the diagram and the manual with the places of its source", async () => {
  const c = await client(winch("undo cover-screws\n    remove cover\n    undo pack-bolts\n    remove pa<|>ck"));
  const refit = await c.request<RefitOfStepAnswer>("stripdown/refitOfStep", place(c));
  expect(refit.groups).toEqual(["R1"]);
  expect(refit.lines.length).toBeGreaterThanOrEqual(4);
  const diagram = await c.request<StripDiagramAnswer>("stripdown/stripDiagram", place(c)),
    named = new Map(diagram.nodes.map((node) => [node.number, node.name]));
  expect(
    diagram.nodes.map((node) => `${node.row} ${node.name} after ${node.after.map((n) => named.get(n)).join()}`),
  ).toEqual([
    "0 Cover screws after ",
    "1 Brake cover after Cover screws",
    "2 Pack bolts after Brake cover",
    "3 Brake pack after Pack bolts",
  ]);
  const manual = await c.request<ManualAnswer>("stripdown/manual", { uri: c.uri("main.strip") });
  expect(manual.body).not.toMatch(/<script|onclick|https?:\/\/(?!www\.w3\.org)/);
  for (const { id } of manual.marks) expect(manual.body).toContain(`id="${id}"`);
  expect(manual.marks.some(({ spot }) => spot.start.line === c.at.position.line)).toBe(true);
  await c.close();
});

test("links lead to files inside the folder only", async () => {
  const c = await client(
    winch("remove co<|>ver").replace('use "unit.strip"', 'use "unit.strip"\nuse "../../etc/other.strip"'),
  );
  expect(
    (await c.request<{ target: string }[]>("textDocument/documentLink", { textDocument: c.at.textDocument })).map(
      (one) => one.target,
    ),
  ).toEqual([c.uri("unit.strip")]);
  await c.close();
});

test("how a line goes on, while it is typed: what is due next is the part the cursor is in", async () => {
  const c = await client(winch("undo cover-screws with <|>"));
  const help = (await c.request<SignatureHelp | null>("textDocument/signatureHelp", c.at))!,
    { label, parameters } = help.signatures[0]!;
  expect(label).toMatch(/^undo cover-screws with \S/);
  expect(help.activeParameter).toBe(0);
  expect(`undo cover-screws with ${parameters![0]!.label as string}`).toBe(label);
  await c.close();
});

test("what is due is told as a place to fill in, and nothing is told where nothing is due", async () => {
  const help = async (line: string): Promise<string | undefined> => {
    const c = await client(`#- main.strip\nunit box "Box" {\n  base foot\n  part foot "Foot" { ${line} }\n}\n`),
      found = await c.request<SignatureHelp | null>("textDocument/signatureHelp", c.at);
    await c.close();
    return found?.signatures[0]?.label;
  };
  expect(await help("mass <|>")).toBe("mass <mass>");
  expect(await help("mass 8 <|>")).toBe("mass 8 <mass>");
  expect(await help("between foot <|>")).toBe("between foot and");
  expect(await help("mass 8 kg <|>")).toBeUndefined();
});

test("lenses count the procedures that use a unit and what a library declares", async () => {
  const c = await client(
    winch("undo cover-screws with <|>key\n    remove cover")
      .replace('use "unit.strip"', 'use "unit.strip"\nuse "tools.strip"')
      .concat('#- tools.strip\ntool key "Key" { drive hex-socket 5 }\ntool spare "Spare" { drive hex 10 }\n'),
  );
  await c.request("workspace/diagnostic", { previousResultIds: [] });
  const lenses = async (name: string): Promise<string[]> =>
    (await c.request<CodeLens[]>("textDocument/codeLens", { textDocument: { uri: c.uri(name) } })).map(
      (one) => `${one.range.start.line} ${one.command!.title}`,
    );
  expect(await lenses("unit.strip")).toEqual(["0 Used in 1 procedure"]);
  expect(await lenses("tools.strip")).toEqual(["0 Used in 1 procedure", "1 Used in 0 procedures"]);
  await c.close();
});

test("a client without Markdown is answered in plain text", async () => {
  const c = await client(winch("remove co<|>ver"), {
    ...everything,
    textDocument: { ...everything.textDocument, hover: { contentFormat: ["plaintext"] } },
  });
  const found = await c.request<Hover>("textDocument/hover", c.at);
  expect(found.contents).toMatchObject({ kind: "plaintext" });
  expect((found.contents as { value: string }).value).not.toContain("**");
  await c.close();
});

test("an open page of the way back is told of when its source changes, and then says what the new text says", async () => {
  const c = await client(winch("undo cover-screws\n    remove co<|>ver")),
    told: string[] = [],
    page = `${refitScheme}:/shop/main%20%28way%20back%29.txt?${encodeURIComponent(c.uri("main.strip"))}`;
  c.rpc.onRequest("workspace/textDocumentContent/refresh", ({ uri }: { uri: string }) => {
    told.push(uri);
    return null;
  });
  const text = async (): Promise<string> =>
    (await c.request<{ text: string }>("workspace/textDocumentContent", { uri: page })).text;
  expect(await text()).toContain("brake cover"); // a name within a sentence is not written large
  for (const [from, to] of [
    ["Brake cover", "Cover of the brake"],
    ["Cover of the brake", "Lid of the brake"],
  ] as const) {
    told.length = 0;
    await c.change("unit.strip", c.text("unit.strip").replaceAll(from, to));
    await vi.waitFor(() => expect(told).toContain(page));
    expect((await text()).toLowerCase()).toContain(to.toLowerCase());
  }
  await c.close();
});
