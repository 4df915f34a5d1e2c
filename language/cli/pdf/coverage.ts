// Which characters a font has: read from its table of characters.

import { tablesOf } from "./private-font.ts";

/** Code points, each with a glyph. */
export function charactersOf(font: Buffer): Set<number> {
  const cmap = tablesOf(font).find(({ tag }) => tag === "cmap")?.data,
    found = new Set<number>();
  if (!cmap) return found;
  for (let i = 0; i < cmap.readUInt16BE(2); i++) {
    const platform = cmap.readUInt16BE(4 + 8 * i),
      encoding = cmap.readUInt16BE(6 + 8 * i),
      at = cmap.readUInt32BE(8 + 8 * i);
    const isUnicode = platform === 0 || (platform === 3 && (encoding === 1 || encoding === 10));
    if (!isUnicode) continue;
    const table = cmap.subarray(at),
      format = table.readUInt16BE(0);
    if (format === 4) segments(table, found);
    else if (format === 12) groups(table, found);
  }
  return found;
}

/** Format 4: ranges of the first 65,536. */
function segments(table: Buffer, found: Set<number>): void {
  const twice = table.readUInt16BE(6),
    ends = 14,
    starts = ends + twice + 2,
    deltas = starts + twice,
    offsets = deltas + twice;
  for (let i = 0; i < twice; i += 2) {
    const end = table.readUInt16BE(ends + i),
      start = table.readUInt16BE(starts + i),
      delta = table.readUInt16BE(deltas + i),
      offset = table.readUInt16BE(offsets + i);
    for (let code = start; code <= end && code !== 0xffff; code++) {
      const glyph =
        offset === 0 ? (code + delta) & 0xffff : table.readUInt16BE(offsets + i + offset + 2 * (code - start));
      if (glyph !== 0) found.add(code);
    }
  }
}

/** Format 12: ranges of all. */
function groups(table: Buffer, found: Set<number>): void {
  const count = table.readUInt32BE(12);
  for (let i = 0; i < count; i++) {
    const at = 16 + 12 * i,
      start = table.readUInt32BE(at),
      glyph = table.readUInt32BE(at + 8);
    for (let code = start; code <= table.readUInt32BE(at + 4); code++) if (glyph + code - start !== 0) found.add(code);
  }
}
