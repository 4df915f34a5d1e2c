// Pictures that an author names: read only from inside the project, only when they are what their name says.

import { readFileSync, statSync } from "node:fs";
import type { Picture } from "../outputs/output.ts";
import type { World } from "../workspace/world.ts";

/** Larger ones would make a manual that no browser opens. */
const largestPicture = 10 * 1024 * 1024;

interface Kind {
  readonly type: Picture["type"];
  /** What the first bytes of such a file are. */
  readonly begins: (bytes: Buffer) => boolean;
}

const kinds: Readonly<Record<string, Kind>> = {
  png: {
    type: "image/png",
    begins: (b) => b.subarray(0, 8).equals(Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])),
  },
  jpg: { type: "image/jpeg", begins: (b) => b[0] === 0xff && b[1] === 0xd8 },
  gif: { type: "image/gif", begins: (b) => /^GIF8[79]a$/.test(b.subarray(0, 6).toString("latin1")) },
  webp: {
    type: "image/webp",
    begins: (b) => b.subarray(0, 4).toString("latin1") === "RIFF" && b.subarray(8, 12).toString("latin1") === "WEBP",
  },
  svg: {
    type: "image/svg+xml",
    begins: (b) =>
      /^(?:\uFEFF)?\s*(?:<\?xml[^>]*\?>\s*)?(?:<!--[\s\S]*?-->\s*)*<svg[\s>]/.test(
        b.subarray(0, 4096).toString("utf8"),
      ),
  },
};

/** The picture as bytes in base64, or in words why it cannot be shown. */
export function readPicture(world: World, fromFile: string, written: string): Picture | { readonly problem: string } {
  const path = world.resolve(fromFile, written),
    ending = /\.([a-z]+)$/i.exec(path)?.[1]?.toLowerCase() ?? "",
    kind = kinds[ending === "jpeg" ? "jpg" : ending];
  if (!world.inside(path)) return { problem: "it lies outside the project" };
  if (!kind) return { problem: `it is none of ${Object.keys(kinds).join(", ")}` };
  if (!world.exists(path)) return { problem: "there is no such file" };
  try {
    if (statSync(path).size > largestPicture)
      return { problem: `it is too large (at most ${largestPicture / 1048576} MB are shown)` };
    const bytes = readFileSync(path);
    return kind.begins(bytes)
      ? { type: kind.type, base64: bytes.toString("base64") }
      : { problem: `it is no ${ending} picture inside` };
  } catch {
    return { problem: "it cannot be read" };
  }
}
