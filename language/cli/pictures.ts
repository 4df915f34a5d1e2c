// Pictures that an author names: read only from inside the project, only when they are what their name says, and never as they are. Each
// is turned upright, made no larger than a page needs, and written anew without what the camera put in: place, time, owner, thumbnail.
// The image library is an optional package and loaded for the first picture; without it a picture is refused.

import { readFileSync, statSync } from "node:fs";
import type { Picture } from "../outputs/output.ts";
import { pictureEndings, pictureKindOf } from "../outputs/picture-kinds.ts";
import type { World } from "../world/world.ts";

/** Larger files are no photo of a workshop. */
const largestFile = 40 * 1024 * 1024;
/** The longer side, pixels: sharp on paper at 15 cm, and a manual of fifty pictures still opens on a tablet. */
const longestSide = 1400;
/** More pixels than this are a file made to fill the memory. */
const mostPixels = 120_000_000;

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
    kind = pictureKindOf(path);
  if (!world.inside(path)) return { problem: "it lies outside the project" };
  if (!kind) return { problem: `it is none of ${pictureEndings.join(", ")}` };
  if (!world.exists(path)) return { problem: "there is no such file" };
  let bytes: Buffer;
  try {
    if (statSync(path).size > largestFile)
      return { problem: `it is too large (at most ${largestFile / 1048576} MB are read)` };
    bytes = readFileSync(path);
  } catch {
    return { problem: "it cannot be read" };
  }
  if (!kind.begins(bytes))
    return { problem: `it is no ${path.slice(path.lastIndexOf(".") + 1).toLowerCase()} picture inside` };
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
