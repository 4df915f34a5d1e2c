// What the head of a picture says of its size is what an image library finds when it reads the whole of it.

import { expect, test } from "vitest";
import { pictureKindOf, pictureSize } from "../../language/outputs/picture-kinds.ts";

const sharp = await import("sharp").then(
  (loaded) => loaded.default,
  () => undefined,
);

test.runIf(sharp)("sizes of every kind, upright, and of none that is cut off", async () => {
  const plain = (): ReturnType<NonNullable<typeof sharp>> =>
    sharp!({ create: { width: 301, height: 47, channels: 4, background: { r: 9, g: 99, b: 9, alpha: 0.5 } } });
  const made: [name: string, bytes: Buffer][] = [
    ["a.png", await plain().png().toBuffer()],
    ["a.gif", await plain().gif().toBuffer()],
    ["a.jpg", await plain().jpeg().toBuffer()],
    ["a.JPEG", await plain().jpeg({ progressive: true }).toBuffer()],
    ["a.webp", await plain().webp({ lossless: true }).toBuffer()],
    ["b.webp", await plain().flatten().webp().toBuffer()],
    ["c.webp", await plain().webp({ quality: 60 }).withMetadata({ orientation: 1 }).toBuffer()],
  ];
  for (const orientation of [1, 2, 3, 4, 5, 6, 7, 8])
    made.push([`turned-${orientation}.jpg`, await plain().flatten().jpeg().withMetadata({ orientation }).toBuffer()]);
  for (const [name, bytes] of made) {
    const { info } = await sharp!(bytes).autoOrient().toBuffer({ resolveWithObject: true });
    expect(pictureKindOf(name)?.begins(bytes), name).toBe(true);
    expect(pictureSize(bytes), name).toEqual({ width: info.width, height: info.height });
    expect(pictureSize(bytes.subarray(0, 15)), name).toSatisfy(
      (size) => size === undefined || (name.endsWith(".gif") && size !== null),
    );
  }
});

test("a name says what a file has to be; what it is not begins otherwise", () => {
  expect(pictureKindOf("a/b.txt")).toBeUndefined();
  expect(pictureKindOf("constructor")).toBeUndefined();
  expect(
    pictureKindOf("a.svg")!.begins(new TextEncoder().encode('\uFEFF<?xml version="1.0"?>\n<svg width="1"/>')),
  ).toBe(true);
  expect(pictureKindOf("a.svg")!.begins(new TextEncoder().encode("<html>"))).toBe(false);
  expect(pictureKindOf("a.png")!.begins(new TextEncoder().encode("GIF89a"))).toBe(false);
  expect(pictureSize(new TextEncoder().encode("no picture"))).toBeUndefined();
});
