// Gives a TrueType or OpenType font a family name of ours, so that no font of the machine can take its place: the same bytes everywhere.
// The SIL Open Font License and the Bitstream Vera licence allow it, and ask for another name on a changed font.

/** Tables lie at offsets that four divides. */
const padded = (length: number): number => (length + 3) & ~3;

interface FontTable {
  readonly tag: string;
  readonly data: Buffer;
}

/** The tables of a font file in their order. Throws where the bytes are no such file. */
export function tablesOf(font: Buffer): FontTable[] {
  const kind = font.length > 12 ? font.readUInt32BE(0) : 0;
  if (kind !== 0x00010000 && kind !== 0x4f54544f) throw new RangeError("no TrueType or OpenType font");
  return Array.from({ length: font.readUInt16BE(4) }, (_, i) => {
    const at = 12 + 16 * i,
      offset = font.readUInt32BE(at + 8);
    return {
      tag: font.toString("latin1", at, at + 4),
      data: font.subarray(offset, offset + font.readUInt32BE(at + 12)),
    };
  });
}

/** @param style "Regular", "Bold" or "Italic". */
export function withPrivateName(font: Buffer, family: string, style: string): Buffer {
  const names = nameTable([
    [1, family],
    [2, style],
    [3, `${family} ${style}`],
    [4, `${family} ${style}`],
    [6, `${family}-${style}`.replaceAll(" ", "")],
  ]);
  // A signature would no longer hold.
  const tables = tablesOf(font)
    .filter(({ tag }) => tag !== "DSIG")
    .map(({ tag, data }) => ({ tag, data: tag === "name" ? names : data }));
  const head = Buffer.alloc(12 + 16 * tables.length),
    power = 2 ** Math.floor(Math.log2(tables.length)),
    parts = [head];
  font.copy(head, 0, 0, 4);
  head.writeUInt16BE(tables.length, 4);
  head.writeUInt16BE(power * 16, 6);
  head.writeUInt16BE(Math.log2(power), 8);
  head.writeUInt16BE((tables.length - power) * 16, 10);
  let offset = head.length,
    headTable = 0;
  tables.forEach(({ tag, data }, i) => {
    const part = Buffer.alloc(padded(data.length)),
      at = 12 + 16 * i;
    data.copy(part);
    if (tag === "head") {
      part.writeUInt32BE(0, 8);
      headTable = offset;
    }
    head.write(tag, at, "latin1");
    head.writeUInt32BE(checksum(part), at + 4);
    head.writeUInt32BE(offset, at + 8);
    head.writeUInt32BE(data.length, at + 12);
    parts.push(part);
    offset += part.length;
  });
  const whole = Buffer.concat(parts);
  // The constant of the format's own rule for the sum of a whole file.
  whole.writeUInt32BE((0xb1b0afba - checksum(whole)) >>> 0, headTable + 8);
  return whole;
}

function checksum(bytes: Buffer): number {
  let sum = 0;
  for (let i = 0; i < bytes.length; i += 4) sum = (sum + bytes.readUInt32BE(i)) >>> 0;
  return sum;
}

function nameTable(names: readonly (readonly [id: number, text: string])[]): Buffer {
  const texts = names.map(([, text]) => Buffer.from(text, "utf16le").swap16()),
    header = Buffer.alloc(6 + 12 * names.length);
  header.writeUInt16BE(names.length, 2);
  header.writeUInt16BE(header.length, 4);
  let offset = 0;
  names.forEach(([id], i) => {
    // Windows, Unicode, English of the United States.
    [3, 1, 0x409, id, texts[i]!.length, offset].forEach((value, k) => header.writeUInt16BE(value, 6 + 12 * i + 2 * k));
    offset += texts[i]!.length;
  });
  return Buffer.concat([header, ...texts]);
}
