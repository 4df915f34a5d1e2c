// How much room the engine leaves for what is thrown away. Left to itself it lets a heap of 20 MB grow to 130 MB before it collects, since
// a check leaves much behind. Collecting costs by what is kept, and that goes by the texts: where they are short the room is small.

import { setFlagsFromString } from "node:v8";
import type { Files } from "./files.ts";

export interface Room {
  /** For texts of up to so many characters. */
  readonly texts: number;
  /** Room on top of what is kept. */
  readonly percent: number;
  /** By how much the room for new objects may grow at a time. */
  readonly young: 1 | 2;
}

/** The engine of Node 22 keeps nearer to what it is told: with less than 150 % for thousands of lines it collected half as much again. */
export const roomsOf = (node: number): readonly Room[] => [
  { texts: 20_000, percent: 20, young: 1 },
  { texts: 100_000, percent: node < 24 ? 150 : 45, young: 2 },
  { texts: Infinity, percent: node < 24 ? 150 : 70, young: 2 },
];
export const rooms = roomsOf(Number.parseInt(process.versions.node, 10));

export interface Rooms {
  /** The same files; what is read of them counts. */
  readonly counting: (files: Files) => Files;
  /** Counts the open texts as they are now. */
  readonly open: (documents: ReadonlyMap<string, { readonly text: string }>) => void;
}

/** Takes the smallest room, and others as more or less is read, for as long as the process runs. */
export function roomByTexts(take: (room: Room) => void = takeRoom): Rooms {
  const read = new Map<string, number>();
  let now: Room | undefined,
    opened = 0,
    total = 0;
  const choose = (): void => {
    const next = rooms.find(({ texts }) => total + opened <= texts)!;
    if (next !== now) take((now = next));
  };
  choose();
  return {
    counting: (files) => ({
      ...files,
      read(path) {
        const got = files.read(path),
          length = "text" in got ? got.text.length : 0;
        total += length - (read.get(path) ?? 0);
        read.set(path, length);
        choose();
        return got;
      },
    }),
    open(documents) {
      opened = 0;
      for (const [path, { text }] of documents) opened += text.length - (read.get(path) ?? 0);
      choose();
    },
  };
}

/** Both are asked by the engine whenever it has collected, and so may change while it runs; other flags of its heap may not. */
function takeRoom({ percent, young }: Room): void {
  setFlagsFromString(`--heap-growing-percent=${percent}`);
  setFlagsFromString(`--semi-space-growth-factor=${young}`);
}
