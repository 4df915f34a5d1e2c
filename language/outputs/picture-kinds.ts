// The kinds of picture that an author may name: how a file of each begins, and how large it is as its head says, without decoding it.
// PNG: W3C PNG specification, 5.2 and 11.2.2. GIF: GIF89a specification, 17 and 18. JPEG: ITU-T T.81, B.2. Orientation: CIPA DC-008 (Exif), 4.6.4,
// tag 274. WebP: RFC 9649, 2.5 to 2.7. All from memory; held against an image library in tests/outputs/picture-kinds.test.ts.

import type { Picture } from "./output.ts";

export interface PictureKind {
  readonly type: Picture["type"];
  readonly begins: (bytes: Uint8Array) => boolean;
}

const latin1 = (bytes: Uint8Array, from: number, to: number): string =>
  String.fromCharCode(...bytes.subarray(from, to));

const png: PictureKind = { type: "image/png", begins: (b) => latin1(b, 0, 8) === "\x89PNG\r\n\x1a\n" },
  jpeg: PictureKind = { type: "image/jpeg", begins: (b) => b[0] === 0xff && b[1] === 0xd8 },
  gif: PictureKind = { type: "image/gif", begins: (b) => /^GIF8[79]a$/.test(latin1(b, 0, 6)) },
  webp: PictureKind = {
    type: "image/webp",
    begins: (b) => latin1(b, 0, 4) === "RIFF" && latin1(b, 8, 12) === "WEBP",
  },
  svg: PictureKind = {
    type: "image/svg+xml",
    begins: (b) =>
      /^\s*(?:<\?xml[^>]*\?>\s*)?(?:<!--[\s\S]*?-->\s*)*<svg[\s>]/.test(new TextDecoder().decode(b.subarray(0, 4096))),
  };
const byEnding: Readonly<Record<string, PictureKind>> = { png, jpg: jpeg, jpeg, gif, webp, svg };

/** As they are told: png, jpg … */
export const pictureEndings: readonly string[] = Object.keys(byEnding).filter((ending) => ending !== "jpeg");

/** By the ending of a file's name; undefined where no picture ends so. */
export const pictureKindOf = (path: string): PictureKind | undefined => {
  const ending = /\.([a-z]+)$/i.exec(path)?.[1]?.toLowerCase() ?? "";
  return Object.hasOwn(byEnding, ending) ? byEnding[ending] : undefined;
};

/** Pixels as the picture is shown, upright; undefined where the head does not say it. An SVG has no pixels. */
export function pictureSize(bytes: Uint8Array): { readonly width: number; readonly height: number } | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  try {
    if (png.begins(bytes)) return { width: view.getUint32(16), height: view.getUint32(20) };
    if (gif.begins(bytes)) return { width: view.getUint16(6, true), height: view.getUint16(8, true) };
    if (webp.begins(bytes)) return webpSize(bytes, view);
    if (jpeg.begins(bytes)) return jpegSize(bytes, view);
  } catch {
    /* it ends before its head does */
  }
  return undefined;
}

function webpSize(bytes: Uint8Array, view: DataView): { width: number; height: number } | undefined {
  const u24 = (at: number): number => view.getUint16(at, true) + view.getUint8(at + 2) * 0x10000;
  switch (latin1(bytes, 12, 16)) {
    case "VP8 ":
      return { width: view.getUint16(26, true) & 0x3fff, height: view.getUint16(28, true) & 0x3fff };
    case "VP8L": {
      const bits = view.getUint32(21, true);
      return { width: (bits & 0x3fff) + 1, height: ((bits >>> 14) & 0x3fff) + 1 };
    }
    case "VP8X":
      return { width: u24(24) + 1, height: u24(27) + 1 };
    default:
      return undefined;
  }
}

function jpegSize(bytes: Uint8Array, view: DataView): { width: number; height: number } | undefined {
  let isTurned = false;
  for (let at = 2; at < bytes.length;) {
    if (view.getUint8(at) !== 0xff) return undefined;
    const marker = view.getUint8(at + 1);
    // Filling, and markers without a length.
    if (marker === 0xff || marker === 0x01 || (marker >= 0xd0 && marker <= 0xd7)) {
      at += marker === 0xff ? 1 : 2;
      continue;
    }
    if (marker === 0xe1 && latin1(bytes, at + 4, at + 10) === "Exif\0\0") isTurned ||= orientation(view, at + 10) >= 5;
    // Start of frame, of any way of coding; c4, c8 and cc are other things.
    if (marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc) {
      const height = view.getUint16(at + 5),
        width = view.getUint16(at + 7);
      return isTurned ? { width: height, height: width } : { width, height };
    }
    at += 2 + view.getUint16(at + 2);
  }
  return undefined;
}

/** From 1 to 8, from 5 on lying on its side; 1 where it is not said. */
function orientation(view: DataView, start: number): number {
  const little = view.getUint16(start) === 0x4949,
    table = start + view.getUint32(start + 4, little),
    entries = view.getUint16(table, little);
  for (let i = 0; i < entries; i++) {
    const at = table + 2 + 12 * i;
    if (view.getUint16(at, little) === 274) return view.getUint16(at + 8, little);
  }
  return 1;
}
