// What is kept is worked out once, with the object that it follows from, and no copy of that object takes it along.

import { expect, test } from "vitest";
import { bySpelling, kept } from "../../language/model/kept.ts";

test("worked out once for each object and each place", () => {
  const sizes = kept<{ readonly name: string }, { readonly size: number }>(),
    others = kept<{ readonly name: string }, { readonly size: number }>();
  let worked = 0;
  const sizeOf = (of: { readonly name: string }): number =>
    sizes(of, () => {
      worked++;
      return { size: of.name.length };
    }).size;
  const cover = { name: "cover" },
    lid = { name: "lid" };
  expect([sizeOf(cover), sizeOf(lid), sizeOf(cover), sizeOf(lid)]).toEqual([5, 3, 5, 3]);
  expect(worked).toBe(2);
  expect(others(cover, () => ({ size: 0 })).size).toBe(0);
  expect(sizeOf(cover)).toBe(5);
});

test("a copy of the object starts anew, and nothing of it shows", () => {
  const sizes = kept<{ readonly name: string }, { readonly size: number }>(),
    cover = { name: "cover" };
  sizes(cover, () => ({ size: 5 }));
  expect({ ...cover }).toEqual({ name: "cover" });
  expect(Reflect.ownKeys({ ...cover })).toEqual(["name"]);
  expect(JSON.stringify(cover)).toBe('{"name":"cover"}');
  expect(sizes({ ...cover, name: "lid" }, () => ({ size: 3 })).size).toBe(3);
});

test("a spelling is read once, what has no meaning too", () => {
  const read: string[] = [],
    numberOf = bySpelling((text) => {
      read.push(text);
      const value = Number(text);
      return Number.isNaN(value) ? undefined : value;
    });
  expect(["8", "x", "8", "x", "13"].map(numberOf)).toEqual([8, undefined, 8, undefined, 13]);
  expect(read).toEqual(["8", "x", "13"]);
});

test("no more spellings are kept than is set: then they are read again", () => {
  let reads = 0;
  const numberOf = bySpelling((text) => {
    reads++;
    return Number(text);
  });
  for (let k = 0; k <= 20_000; k++) numberOf(String(k));
  expect(numberOf("0")).toBe(0);
  expect(reads).toBe(20_002);
});
