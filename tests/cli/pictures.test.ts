// Pictures on their way into an output: upright, scaled, without the camera's data, or refused with a reason.

import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { afterAll, expect, test } from "vitest";
import { picturesOf, readPicture, type Shown } from "../../language/cli/pictures.ts";
import { calloutPicture } from "../../language/outputs/draw/callouts.ts";
import type { World } from "../../language/world/world.ts";
import { memoryWorld } from "../support/memory-world.ts";

const folder = mkdtempSync(join(tmpdir(), "stripdown-pictures-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const put = (name: string, bytes: Buffer | string): string => {
  writeFileSync(join(folder, name), bytes);
  return name;
};
const world: World = {
  ...memoryWorld(new Map(), [], `${folder}/`),
  resolve: (_, path) => join(folder, path),
  inside: (path) => path.startsWith(folder),
  exists: () => true,
};
const shown = (name: string): Promise<Shown> => readPicture(world, join(folder, "a.strip"), name);
const bytesOf = (picture: Shown): Buffer => {
  if ("problem" in picture) throw new Error(picture.problem);
  return Buffer.from(picture.base64, "base64");
};

/** Red above blue, 60 x 40, as a camera would write it that was held on its side: with place and owner. */
async function photo(orientation: number, scale = 1): Promise<Buffer> {
  const width = 60 * scale,
    height = 40 * scale;
  const top = await sharp({ create: { width, height: height / 2, channels: 3, background: "#ff0000" } })
    .png()
    .toBuffer();
  return await sharp({ create: { width, height, channels: 3, background: "#0000ff" } })
    .composite([{ input: top, top: 0, left: 0 }])
    .jpeg({ quality: 95 })
    .withExif({
      IFD0: { Copyright: "Owner Of The Camera", Artist: "Owner Of The Camera" },
      IFD3: { GPSLatitudeRef: "N", GPSLatitude: "53/1 33/1 0/1", GPSLongitudeRef: "E", GPSLongitude: "9/1 59/1 0/1" },
    })
    .withMetadata({ orientation })
    .toBuffer();
}

test("the camera's data are in the file and not in what goes out", async () => {
  const bytes = await photo(6);
  expect((await sharp(bytes).metadata()).exif).toBeDefined();
  const out = bytesOf(await shown(put("gps.jpg", bytes))),
    metadata = await sharp(out).metadata();
  for (const data of ["exif", "icc", "iptc", "xmp", "comments"] as const) expect(metadata[data], data).toBeUndefined();
  expect(metadata.orientation ?? 1).toBe(1);
  expect(out.includes("Owner")).toBe(false);
  expect(out.includes("Exif")).toBe(false);
});

// Exif 2.3, tag 0112h: where row 0 and column 0 of the file lie in the scene.
test.each([
  [1, 60, 40, "top"],
  [3, 60, 40, "bottom"],
  [6, 40, 60, "right"],
  [8, 40, 60, "left"],
])("orientation %i is turned upright", async (orientation, width, height, redAt) => {
  const picture = await shown(put(`turned-${orientation}.jpg`, await photo(orientation)));
  expect(picture).toMatchObject({ type: "image/jpeg", width, height });
  const { data, info } = await sharp(bytesOf(picture)).raw().toBuffer({ resolveWithObject: true }),
    red = (x: number, y: number): number => data[(y * info.width + x) * info.channels]!;
  const places = {
    top: red(width / 2, 4),
    bottom: red(width / 2, height - 5),
    left: red(4, height / 2),
    right: red(width - 5, height / 2),
  };
  for (const [place, value] of Object.entries(places)) if (place === redAt) expect(value, place).toBeGreaterThan(200);
  const opposite = { top: "bottom", bottom: "top", left: "right", right: "left" } as const;
  expect(places[opposite[redAt as keyof typeof opposite]]).toBeLessThan(60);
});

test("a large picture is made smaller, a small one is not made larger", async () => {
  expect(await shown(put("large.jpg", await photo(1, 50)))).toMatchObject({ width: 1400, height: 933 });
  expect(await shown(put("small.jpg", await photo(1)))).toMatchObject({ width: 60, height: 40 });
});

test("a drawing becomes pixels: nothing that it could load or run is passed on", async () => {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="80" height="40"><script>alert(1)</script><image href="file:///etc/hostname" width="9" height="9"/><rect width="80" height="40" fill="#080"/></svg>`,
    picture = await shown(put("drawing.svg", svg));
  expect(picture).toMatchObject({ type: "image/png", width: 80, height: 40 });
  expect(bytesOf(picture).includes("script")).toBe(false);
});

test("without the library a picture is refused in one line, never passed on as it is", async () => {
  const refused = await readPicture(world, "a.strip", put("plain.jpg", await photo(1)), () =>
    Promise.resolve(undefined),
  );
  expect(Object.keys(refused)).toEqual(["problem"]);
  expect((refused as { problem: string }).problem).toMatch(/^the package sharp, .* is not installed/);
});

test("what is no picture is refused in words", async () => {
  expect(await shown(put("text.jpg", "no picture"))).toEqual({ problem: "it is no jpg picture inside" });
  const cut = (await photo(1, 10)).subarray(0, 700);
  expect(await shown(put("cut.jpg", cut))).toEqual({ problem: "it cannot be read as a picture" });
  expect(await shown("notes.txt")).toEqual({ problem: "it is none of png, jpg, gif, webp, svg" });
  expect(await readPicture({ ...world, inside: () => false }, "a.strip", "plain.jpg")).toEqual({
    problem: "it lies outside the project",
  });
});

test("an output asks once, and has each picture the second time", async () => {
  put("one.jpg", await photo(1));
  const pictures = picturesOf(world);
  expect(pictures.picture("one.jpg", "a.strip")).toEqual({ problem: "" });
  expect(await pictures.fetch()).toBe(true);
  expect(pictures.picture("one.jpg", "a.strip")).toMatchObject({ width: 60 });
  expect(await pictures.fetch()).toBe(false);
});

test("numbers stand outside the picture, none on another, each led to its place", () => {
  const points = Array.from({ length: 9 }, (_, i) => ({
    mark: String(i + 1),
    across: i % 2 === 0 ? 30 : 70,
    down: 50,
  }));
  const drawn = calloutPicture({ type: "image/png", base64: "AAAA", width: 400, height: 300 }, points, "alt")!.source;
  const image = /<image [^>]*x="([\d.]+)" y="0" width="([\d.]+)" height="([\d.]+)"/.exec(drawn)!.slice(1).map(Number),
    [left = 0, wide = 0, high = 0] = image;
  const numbers = [...drawn.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)" r="15"/g)].map(
    ([, x, y]) => [Number(x), Number(y)] as const,
  );
  expect(numbers).toHaveLength(9);
  for (const [i, [x, y]] of numbers.entries()) {
    expect(x + 15 < left || x - 15 > left + wide).toBe(true);
    expect(y - 15).toBeGreaterThanOrEqual(0);
    expect(y + 15).toBeLessThanOrEqual(high);
    for (const [ox, oy] of numbers.slice(0, i)) expect(Math.hypot(x - ox, y - oy)).toBeGreaterThan(30);
  }
  expect(calloutPicture({ type: "image/png", base64: "AAAA" }, points, "alt")).toBeUndefined();
});
