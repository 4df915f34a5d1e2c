// Pictures in the live manual: named to the page by number, only what lies in the folder and is what its name says; else one line tells why not.

import { mkdtempSync, mkdirSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { disk } from "../../server/disk.ts";
import { memoryFiles } from "../../server/files.ts";
import { picturesFor } from "../../server/pictures.ts";
import type { ManualAnswer } from "../../shared/protocol.ts";
import { client, winch } from "./client.ts";

/** One pixel. */
const png = Buffer.from(
  "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==",
  "base64",
);
const place = mkdtempSync(join(tmpdir(), "pictures-")),
  shop = join(place, "shop");
mkdirSync(join(shop, "img"), { recursive: true });
writeFileSync(join(shop, "img", "a b.png"), png);
writeFileSync(join(shop, "no.png"), "GIF89a");
writeFileSync(join(shop, "drawing.svg"), '<svg xmlns="http://www.w3.org/2000/svg"/>');
writeFileSync(join(place, "secret.png"), png);
symlinkSync(join(place, "secret.png"), join(shop, "link.png"));
afterAll(() => rmSync(place, { recursive: true, force: true }));

test("what lies in the folder is loaded from there, by number, each file once", () => {
  const { picture, uris } = picturesFor(disk, shop, "shown"),
    from = join(shop, "a.strip");
  expect(picture("img/a b.png", from)).toEqual({
    type: "image/png",
    base64: "",
    address: "picture:0",
    width: 1,
    height: 1,
  });
  expect(picture("drawing.svg", from)).toMatchObject({ type: "image/svg+xml", address: "picture:1" });
  expect(picture("./img/a b.png", from)).toMatchObject({ address: "picture:0" });
  expect(uris).toHaveLength(2);
  expect(uris[0]).toMatch(/^file:\/\/\/.*\/shop\/img\/a%20b\.png$/);
});

test.each([
  ["../secret.png", /outside/],
  ["link.png", /outside/],
  ["/etc/hostname", /outside/],
  ["https://example.com/a.png", /outside/],
  ["data:image/png;base64,AA", /outside/],
  ["missing.png", /no such file/],
  ["no.png", /no png picture inside/],
  ["a.strip", /none of png, jpg/],
])("%s is not named to the page", (written, why) => {
  const { picture, uris } = picturesFor(disk, shop, "shown");
  expect(picture(written, join(shop, "a.strip"))).toEqual({ problem: expect.stringMatching(why) as string });
  expect(uris).toEqual([]);
});

test("in a folder that nobody trusts, or that is no disk, one line says why", () => {
  const from = join(shop, "a.strip");
  for (const allowed of ["untrusted", "no disk", undefined] as const) {
    const { picture, uris } = picturesFor(disk, shop, allowed);
    expect(picture("img/a b.png", from)).toEqual({
      problem: expect.stringMatching(allowed === "untrusted" ? /trusted/ : /on a disk/) as string,
    });
    expect(uris).toEqual([]);
  }
  const memory = memoryFiles();
  memory.put("/shop/a.png", undefined);
  expect(picturesFor(memory, "/shop", "shown").picture("a.png", "/shop/a.strip")).toEqual({
    problem: expect.stringMatching(/on a disk/) as string,
  });
});

test("the manual says it where the picture would stand", async () => {
  const c = await client(winch('photo "lid.png" "The cover"\n    undo cover-screws\n    remove co<|>ver')),
    manual = async (pictures: string): Promise<ManualAnswer> =>
      await c.request("stripdown/manual", { uri: c.uri("main.strip"), pictures });
  expect((await manual("shown")).body).toContain("Picture lid.png is not shown: there is no such file");
  c.disk.put("/shop/lid.png", undefined);
  await c.rpc.sendNotification("workspace/didChangeWatchedFiles", { changes: [{ uri: c.uri("lid.png"), type: 1 }] });
  expect((await manual("untrusted")).body).toMatch(/Picture lid\.png is not shown: nobody has said yet/);
  const { body, pictures } = await manual("no disk");
  expect(body).toMatch(/Picture lid\.png is not shown: the live manual shows only what lies on a disk/);
  expect(body).not.toContain("<img");
  expect(pictures).toEqual([]);
  await c.close();
});
