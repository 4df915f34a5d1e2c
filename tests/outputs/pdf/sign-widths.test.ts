// The widths that tables are laid out with, held against the font that they are printed with.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { expect, test } from "vitest";
import { wordings } from "../../../language/outputs/wording/languages.ts";
import { printedWidth } from "../../../language/outputs/pdf/sign-widths.ts";

/** The advance width of each sign, as a share of the size: from `cmap` (format 4), `hhea` and `hmtx` of the font's file (OpenType 1.9). */
function advances(weight: string): (sign: string) => number {
  const bytes = readFileSync(createRequire(import.meta.url).resolve(`@expo-google-fonts/noto-sans/${weight}.ttf`)),
    tables = new Map(
      Array.from({ length: bytes.readUInt16BE(4) }, (_, i) => 12 + 16 * i).map((at) => [
        bytes.toString("latin1", at, at + 4),
        bytes.readUInt32BE(at + 8),
      ]),
    );
  const at = (table: string): number => tables.get(table)!,
    perEm = bytes.readUInt16BE(at("head") + 18),
    widths = bytes.readUInt16BE(at("hhea") + 34);
  const map = Array.from({ length: bytes.readUInt16BE(at("cmap") + 2) }, (_, i) => at("cmap") + 4 + 8 * i)
      .map((record) => at("cmap") + bytes.readUInt32BE(record + 4))
      .find((each) => bytes.readUInt16BE(each) === 4)!,
    segments = bytes.readUInt16BE(map + 6) / 2;
  const glyph = (code: number): number => {
    for (let i = 0; i < segments; i++) {
      if (code > bytes.readUInt16BE(map + 14 + 2 * i)) continue;
      const start = bytes.readUInt16BE(map + 16 + 2 * (segments + i)),
        delta = bytes.readUInt16BE(map + 16 + 2 * (2 * segments + i)),
        range = map + 16 + 2 * (3 * segments + i),
        offset = bytes.readUInt16BE(range);
      if (code < start) return 0;
      if (offset === 0) return (code + delta) & 0xffff;
      return (bytes.readUInt16BE(range + offset + 2 * (code - start)) + delta) & 0xffff;
    }
    return 0;
  };
  return (sign) => bytes.readUInt16BE(at("hmtx") + 4 * Math.min(glyph(sign.codePointAt(0)!), widths - 1)) / perEm;
}

const regular = advances("400Regular/NotoSans_400Regular"),
  bold = advances("700Bold/NotoSans_700Bold");
const usual = Array.from({ length: 0x180 }, (_, code) => String.fromCodePoint(code)).filter((sign) =>
  /[\p{L} !-~]/u.test(sign),
);

test("no sign is wider on paper than it is held to be, and none much narrower", () => {
  for (const sign of usual) {
    const width = regular(sign),
      held = printedWidth(sign, 1);
    expect(held, sign).toBeGreaterThanOrEqual(width - 0.001);
    if (/[\p{L}\p{N}]/u.test(sign) && sign < "\u0080") expect(held, sign).toBeLessThan(width + 0.05);
  }
});

test("no word that we print is wider in bold than it is held to be", () => {
  const words = new Set(
    Object.values(wordings).flatMap(({ manual, torqueSheet, benchSheets }) =>
      [...JSON.stringify([manual, torqueSheet, benchSheets]).matchAll(/\p{L}{3,}/gu)].map(([word]) => word),
    ),
  );
  expect(words.size).toBeGreaterThan(300);
  for (const word of words)
    expect(
      [...word].reduce((sum, sign) => sum + bold(sign), 0),
      word,
    ).toBeLessThanOrEqual(printedWidth(word, 1, true) * 1.02);
});
