// Pictures that an author names: read only from inside the project, only when they are what their name says, and never as they are. Each
// is turned upright, made no larger than a page needs, and written anew without what the camera put in: place, time, owner, thumbnail.
// The image library is an optional package and loaded for the first picture; without it a picture is refused.

import { readFileSync, statSync } from "node:fs";
import type { Picture } from "../outputs/output.ts";
import type { World } from "../workspace/world.ts";

/** Larger files are no photo of a workshop. */
const largestFile = 40 * 1024 * 1024;
/** The longer side, pixels: sharp on paper at 15 cm, and a manual of fifty pictures still opens on a tablet. */
const longestSide = 1400;
/** More pixels than this are a file made to fill the memory. */
const mostPixels = 120_000_000;

const begins: Readonly<Record<string, (bytes: Buffer) => boolean>> = {
  png: (b) => b.subarray(0, 8).equals(Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])),
  jpg: (b) => b[0] === 0xff && b[1] === 0xd8,
  gif: (b) => /^GIF8[79]a$/.test(b.subarray(0, 6).toString("latin1")),
  webp: (b) => b.subarray(0, 4).toString("latin1") === "RIFF" && b.subarray(8, 12).toString("latin1") === "WEBP",
  svg: (b) =>
    /^(?:\uFEFF)?\s*(?:<\?xml[^>]*\?>\s*)?(?:<!--[\s\S]*?-->\s*)*<svg[\s>]/.test(b.subarray(0, 4096).toString("utf8")),
};

export type Shown = Picture | { readonly problem: string };

/** Loads the library; undefined where it is not installed. For tests it can be another. */
export type Library = () => Promise<(typeof import("sharp"))["default"] | undefined>;

const installed: Library = async () => {
  try {
    return (await import("sharp")).default;
  } catch {
    return undefined;
  }
};

/** The picture in base64, or in words why it cannot be shown. */
export async function readPicture(
  world: World,
  fromFile: string,
  written: string,
  library: Library = installed,
): Promise<Shown> {
  const path = world.resolve(fromFile, written),
    ending = /\.([a-z]+)$/i.exec(path)?.[1]?.toLowerCase() ?? "",
    isKind = begins[ending === "jpeg" ? "jpg" : ending];
  if (!world.inside(path)) return { problem: "it lies outside the project" };
  if (!isKind) return { problem: `it is none of ${Object.keys(begins).join(", ")}` };
  if (!world.exists(path)) return { problem: "there is no such file" };
  let bytes: Buffer;
  try {
    if (statSync(path).size > largestFile)
      return { problem: `it is too large (at most ${largestFile / 1048576} MB are read)` };
    bytes = readFileSync(path);
  } catch {
    return { problem: "it cannot be read" };
  }
  if (!isKind(bytes)) return { problem: `it is no ${ending} picture inside` };
  const sharp = await library();
  if (!sharp)
    return {
      problem: "the package sharp, which takes the camera's data out of it, is not installed (npm install sharp)",
    };
  return await cleaned(sharp, bytes);
}

/** Nothing of the file is passed on: the pixels are read and a new file is written, without any data beside them. */
export async function cleaned(sharp: NonNullable<Awaited<ReturnType<Library>>>, bytes: Buffer): Promise<Shown> {
  try {
    const upright = sharp(bytes, { limitInputPixels: mostPixels, failOn: "error" })
      .autoOrient()
      .resize({ width: longestSide, height: longestSide, fit: "inside", withoutEnlargement: true });
    // Photos become JPEG; drawings, and what one can see through, stay sharp as PNG.
    const { format, hasAlpha } = await sharp(bytes, { limitInputPixels: mostPixels }).metadata(),
      isPhoto = format === "jpeg" || (format === "webp" && !hasAlpha);
    const { data, info } = await (
      isPhoto ? upright.jpeg({ quality: 82, mozjpeg: false }) : upright.png({ compressionLevel: 9 })
    ).toBuffer({ resolveWithObject: true });
    return {
      type: isPhoto ? "image/jpeg" : "image/png",
      base64: data.toString("base64"),
      width: info.width,
      height: info.height,
    };
  } catch {
    return { problem: "it cannot be read as a picture" };
  }
}

/** What an output asks for in one go, since it may not wait itself. */
export interface Pictures {
  readonly picture: (path: string, fromFile: string) => Shown;
  /** Reads what was asked for and not yet there; false when nothing was. */
  fetch(): Promise<boolean>;
}

export function picturesOf(world: World): Pictures {
  const had = new Map<string, Shown>(),
    wanted = new Map<string, readonly [path: string, fromFile: string]>(),
    key = (path: string, fromFile: string): string => `${fromFile}\n${path}`;
  return {
    picture: (path, fromFile) => {
      const found = had.get(key(path, fromFile));
      if (!found) wanted.set(key(path, fromFile), [path, fromFile]);
      return found ?? { problem: "" };
    },
    fetch: async () => {
      const asked = [...wanted];
      wanted.clear();
      for (const [name, [path, fromFile]] of asked) had.set(name, await readPicture(world, fromFile, path));
      return asked.length > 0;
    },
  };
}
