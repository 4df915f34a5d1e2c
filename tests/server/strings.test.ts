// What the extension says can be put into other languages: every string of the client stands in its bundle, every one of the manifest in its
// table, and neither holds what is no longer said.

import { globSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import type { BenchAnswer } from "../../shared/protocol.ts";
import { client, winch } from "./client.ts";

const read = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), "utf8"),
  table = (path: string): Record<string, string> => JSON.parse(read(path)) as Record<string, string>;
/** Titles that the server gives and the client words; of the bench view. */
const titles = [...read("server/features/views.ts").matchAll(/\btitle: "([^"]+)"/g)].map((match) => match[1]!);

test("every string of the client stands in its bundle, and no other", () => {
  const root = new URL("../../client/", import.meta.url),
    said = new Set(titles);
  for (const file of globSync("**/*.ts", { cwd: root })) {
    const text = read(`client/${file}`),
      calls = [...text.matchAll(/l10n\.t\(\s*([^\s])/g)];
    for (const [, first = ""] of calls)
      expect(first === '"' || text.includes("l10n.t(section.title)"), `${file}: a string that can be listed`).toBe(
        true,
      );
    for (const [, literal = ""] of text.matchAll(/l10n\.t\(\s*("(?:[^"\\]|\\.)*")/g))
      said.add(JSON.parse(literal) as string);
  }
  expect(Object.keys(table("client/l10n/bundle.l10n.json")).sort()).toEqual([...said].sort());
});

test("the titles of the bench view are among them", async () => {
  const c = await client(winch("undo cover-screws\n    remove co<|>ver"));
  const bench = (await c.request<BenchAnswer | null>("stripdown/bench", {
    uri: c.at.textDocument.uri,
    position: c.at.position,
  }))!;
  for (const { title } of bench.sections) expect(titles).toContain(title);
  await c.close();
});

test("every placeholder of the manifest has its text, and no text is left over", () => {
  const named = new Set([...read("package.json").matchAll(/"%([\w.]+)%"/g)].map((match) => match[1]!));
  expect(named.size).toBeGreaterThan(20);
  expect([...named].sort()).toEqual(Object.keys(table("client/package.nls.json")).sort());
});
