// The code beside a step leads to that step: read back by a decoder of others from the picture, as a camera would.

import jsQR from "jsqr";
import sharp from "sharp";
import { expect, test } from "vitest";
import { pdfOf } from "../../language/cli/pdf/pdf.ts";
import { isBaseAddress } from "../../language/world/base-address.ts";
import { svg } from "../../language/outputs/draw/drawing.ts";
import { qrDrawing } from "../../language/outputs/draw/qr.ts";
import { manual } from "../../language/outputs/manual/manual.ts";
import { write } from "../../language/outputs/output.ts";
import type { Heading } from "../../language/outputs/pdf/print.ts";
import { readSettings } from "../../language/workspace/settings-schema.ts";
import { good } from "../cli/machines.ts";
import { folderWith, stripdown } from "../support/command-line.ts";
import { compiledExample, options } from "./outputs-of.ts";
import { checkUa } from "./pdf/ua-check.ts";

/** What stands in a picture of a code, drawn on a grey page. */
async function decoded(markup: string): Promise<string | undefined> {
  const { data, info } = await sharp(Buffer.from(markup), { density: 300 })
    .flatten({ background: "#777" })
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return jsQR.default(new Uint8ClampedArray(data), info.width, info.height)?.data;
}

const input = compiledExample("mooring-winch/strip.strip", "mooring-winch/insulation.strip"),
  base = "https://manuals.example/winch%20MW-16.html?rev=B&x=1",
  withBase = { ...options, baseAddress: base };

test("every step of the page has one code, and it leads to that step", async () => {
  const html = write(manual, "html", input, withBase),
    codes = [...html.matchAll(/<svg [^>]*class="code"[^]*?<\/svg>/g)].map(([markup]) => markup),
    groups = [...html.matchAll(/<div class="group" role="group" id="([^"]+)"/g)].map(([, id]) => id!);
  expect(groups.length).toBeGreaterThan(20);
  expect(codes).toHaveLength(groups.length);
  for (const [i, id] of groups.entries()) expect(await decoded(codes[i]!)).toBe(`${base}#${id}`);
}, 60_000);

test("the PDF has the same codes, with their address in words, and is tagged", async () => {
  const document = manual.print!(manual.data(input, withBase), withBase),
    heads = document.blocks.filter((block): block is Heading => block.is === "heading" && block.code !== undefined);
  expect(heads.length).toBeGreaterThan(20);
  for (const { code } of heads.slice(0, 6)) {
    const address = await decoded(code!.svg);
    expect(address).toMatch(
      /^https:\/\/manuals\.example\/winch%20MW-16\.html\?rev=B&x=1#(?:p\d-)?(?:strip|refit|finish)-/,
    );
    expect(code!.alt).toContain(address);
  }
  const { findings, tags } = await checkUa((await pdfOf(document)).bytes);
  expect(findings).toEqual([]);
  expect(tags["Figure"]).toBeGreaterThanOrEqual(heads.length);
}, 60_000);

test("without an address there is no code anywhere", () => {
  expect(write(manual, "html", input, options)).not.toMatch(/<svg [^>]*class="code"/);
  const document = manual.print!(manual.data(input, options), options);
  expect(document.blocks.some((block) => block.is === "heading" && block.code !== undefined)).toBe(false);
});

// ISO/IEC 18004: a code of version v has 17 + 4 v modules on a side, and four of white around it (from memory).
test("the longest address that is taken can still be read, and keeps its margin", async () => {
  const address = `https://m.example/${"a".repeat(282)}`;
  expect([isBaseAddress(address), isBaseAddress(`${address}aaaaaaaaaaaaaaaaaaaaaaa`)]).toEqual([true, false]);
  const drawing = qrDrawing(`${address}#p12-refit-r99`, "c", "Code");
  expect((drawing.width - 2 * 4 - 17) % 4).toBe(0);
  expect(await decoded(svg(drawing).source)).toBe(`${address}#p12-refit-r99`);
});

test.each([
  "",
  "winch.html",
  "file:///x",
  "javascript:alert(1)",
  "https://x y",
  "https://x#y",
  'https://"x',
  "https://",
])("%j is no address for a code", async (text) => {
  expect(isBaseAddress(text)).toBe(false);
  expect(readSettings(JSON.stringify({ baseAddress: text }), "stripdown.json")).toHaveProperty(
    "problem",
    "baseAddress: an address as https://manuals.example/winch.html, without #, is due",
  );
  const { status, err } = await stripdown(folderWith({ "a.strip": good }), [
    "manual",
    `--base-address=${text}`,
    "a.strip",
  ]);
  expect([status, err]).toEqual([
    2,
    `stripdown: --base-address ${text}: an address as https://manuals.example/winch.html, without #, is due\n`,
  ]);
});

test("the address comes from stripdown.json, and the command line overrides it", async () => {
  const folder = folderWith({
      "a.strip": good,
      "stripdown.json": JSON.stringify({ baseAddress: "https://manuals.example/box.html" }),
    }),
    first = async (...argv: string[]): Promise<string | undefined> => {
      const { out } = await stripdown(folder, ["manual", "a.strip", ...argv]);
      return await decoded(/<svg [^>]*class="code"[^]*?<\/svg>/.exec(out)![0]);
    };
  expect(await first()).toBe("https://manuals.example/box.html#strip-1");
  expect(await first("--base-address", "http://other.example/b")).toBe("http://other.example/b#strip-1");
});
