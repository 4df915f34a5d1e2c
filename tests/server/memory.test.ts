// The room for garbage goes by the texts that are read or open, and back when they go.

import { expect, test } from "vitest";
import { memoryFiles } from "../../server/files.ts";
import { roomByTexts, rooms, roomsOf, type Room } from "../../server/memory.ts";

test("from the smallest room to the largest and back, told once each", () => {
  const taken: Room[] = [],
    room = roomByTexts((one) => taken.push(one)),
    disk = memoryFiles(),
    files = room.counting(disk);
  disk.put("/p/long.strip", "x".repeat(90_000));
  disk.put("/p/picture.jpg", undefined);
  room.open(new Map([["/p/a.strip", { text: "x".repeat(9000) }]]));
  expect(files.read("/p/none.strip")).toEqual({ problem: "missing" });
  files.read("/p/picture.jpg");
  expect(taken).toEqual([rooms[0]]);
  expect(files.read("/p/long.strip")).toEqual({ text: "x".repeat(90_000) });
  files.read("/p/long.strip");
  expect(taken).toEqual([rooms[0], rooms[1]]);
  // Read before and open now: it counts once, as it is in the editor.
  const open = { text: "x".repeat(95_000) };
  room.open(new Map([["/p/long.strip", open]]));
  expect(taken).toHaveLength(2);
  room.open(
    new Map([
      ["/p/long.strip", open],
      ["/p/b.strip", { text: "x".repeat(50_000) }],
    ]),
  );
  expect(taken).toEqual([rooms[0], rooms[1], rooms[2]]);
  room.open(new Map());
  disk.put("/p/long.strip", "");
  files.read("/p/long.strip");
  expect(taken).toEqual([rooms[0], rooms[1], rooms[2], rooms[1], rooms[0]]);
});

test.each([22, 24])("more text never gets less room, on Node %i", (node) => {
  const rooms = roomsOf(node);
  for (const [i, one] of rooms.entries()) {
    expect(one.percent).toBeGreaterThanOrEqual(rooms[i - 1]?.percent ?? 0);
    expect(one.texts).toBeGreaterThan(rooms[i - 1]?.texts ?? 0);
  }
  expect(rooms.at(-1)!.texts).toBe(Infinity);
});
