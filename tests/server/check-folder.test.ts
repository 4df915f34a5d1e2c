// The check of a folder for the task of the client: the lines that the command line prints, and what it ends with.

import { expect, test } from "vitest";
import type { CheckFolderAnswer } from "../../shared/protocol.ts";
import { client, winch, type Client } from "./client.ts";

const check = (c: Client, strict = false): Promise<CheckFolderAnswer | null> =>
  c.request("stripdown/checkFolder", { uri: "file:///shop", strict });
/** The form that the problem matcher of the manifest reads, with the colours taken out as the editor does it. */
const line = /^(.+):(\d+):(\d+): (error|warning|question|hint) (.*?)  ([a-z][a-z-]*\/[a-z][a-z-]*)$/gm,
  // oxlint-disable-next-line no-control-regex
  plain = (text: string): string => text.replace(/\u001b\[\d+m/g, "");

test("each finding is a line with its place, of the text as it stands in the editor", async () => {
  const c = await client(winch("undo cover-screws\n    remove cover\n    remove pack"));
  const found = (await check(c))!;
  expect(found.code).toBe(1);
  expect(
    [...plain(found.text).matchAll(line)].map(([, file, at, column, weight]) => [file, at, column, weight]),
  ).toEqual([["main.strip", "7", "5", "error"]]);
  await c.change("main.strip", c.text("main.strip").replace("    remove pack", "    undo pack-bolts\n    remove pack"));
  const mended = (await check(c))!;
  expect(mended.code).toBe(0);
  expect(plain(mended.text)).not.toMatch(line);
  expect(mended.text).toMatch(/no risk assessment/);
  await c.close();
});

test("questions end it with 1 only where that is asked for; a folder that is not open is not checked", async () => {
  const c = await client(
    winch("undo cover-screws\n    remove cover\n    undo pack-bolts\n    remove pack\n    remove ring")
      .replace(
        "  fastener cover-screws",
        '  part ring o-ring "Ring" { between pack and frame }\n  fastener cover-screws',
      )
      .replace("aim pack off", "aim ring off"),
  );
  expect((await check(c))!.code).toBe(0);
  expect((await check(c, true))!.code).toBe(1);
  expect(await c.request("stripdown/checkFolder", { uri: "file:///elsewhere", strict: false })).toBeNull();
  await c.close();
});

test("a file that another program wrote, changed or took away, and nobody told of, is seen", async () => {
  const c = await client(winch("undo cover-screws\n    remove cover\n    undo pack-bolts\n    remove pack"));
  expect((await check(c))!.code).toBe(0);
  const acts = c.session.projects()[0]!.work();
  expect((await check(c))!.code).toBe(0);
  expect(c.session.projects()[0]!.work(), "nothing is performed again where nothing changed").toBe(acts);
  c.disk.put(
    "/shop/late.strip",
    'use "unit.strip"\nprocedure late "Late" for winch {\n  aim none\n  step "S" {\n    remove pack\n  }\n}\n',
  );
  expect(plain((await check(c))!.text)).toMatch(/^late\.strip:5:5: error /m);
  c.disk.put("/shop/late.strip", 'use "unit.strip"\nprocedure late "Late" for winch { aim none }\n');
  expect((await check(c))!.code).toBe(0);
  c.disk.put("/shop/late.strip", "procedure");
  expect((await check(c))!.code).toBe(1);
  c.disk.remove("/shop/late.strip");
  expect((await check(c))!.code).toBe(0);
  await c.close();
});
