// Two thousand random edits of the flagship from a fixed seed: after every twenty-fifth the server says what a fresh check of the same texts
// says. Nothing of it depends on the clock.

import { readFileSync, readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { checkProject, defaultSettings } from "../../language/index.ts";
import { client, type Client } from "./client.ts";
import { memoryWorld } from "../support/memory-world.ts";
import { numbers } from "../support/numbers.ts";

const pieces = [
  "\n",
  " ",
  "{",
  "}",
  '"',
  "undo ",
  "remove ",
  "motor",
  "brake-cover",
  "cover-screws",
  " N·m",
  "12",
  "°C",
  "# ",
  ",",
  'step "x" {\n',
  "}\n",
  '"""',
  "not there",
];

function next(text: string, random: (below: number) => number): string {
  const at = random(text.length + 1);
  switch (random(6)) {
    case 0:
      return text.slice(0, at) + text.slice(at + 1 + random(3));
    case 1: {
      const from = text.lastIndexOf("\n", at),
        to = text.indexOf("\n", at);
      return to < 0 ? text : text.slice(0, from + 1) + text.slice(to + 1);
    } // a line out
    case 2: {
      const lines = text.split("\n"),
        i = random(lines.length),
        j = random(lines.length);
      [lines[i], lines[j]] = [lines[j]!, lines[i]!];
      return lines.join("\n");
    }
    default:
      return text.slice(0, at) + pieces[random(pieces.length)]! + text.slice(at);
  }
}

test("2,000 edits of the mooring winch", { timeout: 280_000 }, async () => {
  const root = new URL("../../examples/", import.meta.url),
    names = ["mooring-winch", "workshop"].flatMap((folder) =>
      readdirSync(new URL(`${folder}/`, root))
        .filter((name) => name.endsWith(".strip"))
        .map((name) => `${folder}/${name}`),
    );
  const original = new Map(names.map((name) => [name, readFileSync(new URL(name, root), "utf8")]));
  const c = await client([...original].map(([name, text]) => `#- ${name}\n${text}`).join("\n"));
  const random = numbers(20260105),
    texts = new Map(names.map((name) => [name, c.text(name)])),
    edits = ["mooring-winch/winch.strip", "mooring-winch/strip.strip", "mooring-winch/gearbox.strip"];
  for (let i = 1; i <= 2000; i++) {
    const name = edits[random(edits.length)]!;
    // Broken beyond reading says little: now and then a file is as it was.
    texts.set(name, i % 40 === 0 ? original.get(name)! : next(texts.get(name)!, random));
    await c.change(name, texts.get(name)!);
    if (i % 25 === 0) await compare(c, texts, i);
  }
  expect(c.notes.filter((note) => !note.startsWith("findings settled"))).toEqual([]);
  await c.close();
});

async function compare(c: Client, texts: ReadonlyMap<string, string>, i: number): Promise<void> {
  const report = await c.request<{
    items: {
      uri: string;
      items: { code: string; message: string; range: { start: { line: number; character: number } } }[];
    }[];
  }>("workspace/diagnostic", { previousResultIds: [] });
  const said = report.items
    .flatMap(({ uri, items }) =>
      items.map(
        (one) =>
          `${uri.replace("file:///shop/", "")}:${one.range.start.line}:${one.range.start.character} ${one.code} ${one.message.split("\n")[0]!.replace(/ \([^()]*\)$/, "")}`,
      ),
    )
    .sort();
  const files = new Map([...texts].map(([name, text]) => [`/shop/${name}`, text])),
    checked = checkProject(memoryWorld(files), [...files.keys()], { settings: defaultSettings });
  const due = checked.findings
    .map((finding) => {
      const before = files
        .get(finding.at.file)!
        .slice(0, finding.at.start)
        .split(/\r\n|\r|\n/);
      return `${finding.at.file.slice(6)}:${before.length - 1}:${before[before.length - 1]!.length} ${finding.code} ${finding.says.split("\n")[0]!.replace(/ \([^()]*\)$/, "")}`;
    })
    .sort();
  expect(said, `after edit ${i}`).toEqual(due);
}
