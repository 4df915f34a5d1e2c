// A part that is a unit with positions of its own lies on the bench in one of them, whatever position the unit around it is in. Fixed to
// that it cannot be turned by itself, and before it goes back it lies as it came off.

import type { Act } from "../model/act.ts";
import type { Frame, Part, ThingIndex, Tie } from "../model/model.ts";
import { reasonOf, report, type Bench, type Obstacle } from "./bench.ts";
import { ON_BASE } from "./state.ts";
import { lumpOf } from "./ties.ts";
import type { Around } from "./trace.ts";

/** The innermost unit with positions of its own that this is inside; undefined where only those of the whole unit count. */
export function frameOf({ model: { frames } }: Pick<Bench, "model">, prefix: string): Frame | undefined {
  if (frames.size === 0) return undefined;
  for (let inside = prefix; inside !== "";) {
    const found = frames.get(inside);
    if (found) return found;
    inside = inside.slice(0, inside.lastIndexOf("/", inside.length - 2) + 1);
  }
  return undefined;
}

const positionOf = (bench: Bench, { host, positions }: Frame): string => bench.state.inside.get(host) ?? positions[0]!;

function lay(bench: Bench, { host }: Frame, position: string): void {
  bench.state = { ...bench.state, inside: new Map(bench.state.inside).set(host, position) };
}

/** `turn to P` in a procedure that is done on such a part. */
export function turnInside(bench: Bench, frame: Frame, to: string, act: Act, around: Around): void {
  if (to === "" || positionOf(bench, frame) === to) return;
  if (!frame.positions.includes(to)) return lay(bench, frame, "?"); // told at its name
  const { host } = frame;
  if (lumpOf(bench.state, host) === ON_BASE && !bench.machine.isBase(host))
    report(
      bench,
      act.at,
      [host],
      [reasonOf("sequence/turned-in-place", { thing: host, words: [to], at: bench.model.things[host]!.at })],
      act,
      around,
    );
  lay(bench, frame, to);
}

/** `needs P` of what is inside it binds while it is on it. */
export function wrongInside(bench: Bench, item: Part | Tie, frame: Frame, lump: number): Obstacle[] {
  const now = positionOf(bench, frame);
  if (
    item.positions.length === 0 ||
    now === "?" ||
    item.positions.includes(now) ||
    lump !== lumpOf(bench.state, frame.host)
  )
    return [];
  if (bench.computed) {
    lay(bench, frame, item.positions[0]!);
    bench.turnedInside = { part: frame.host, to: item.positions[0]! };
    return [];
  }
  return [
    {
      reason: reasonOf("sequence/wrong-position", {
        thing: item.index,
        by: [frame.host],
        words: [now, ...item.positions],
        at: item.at,
      }),
      assume: () => lay(bench, frame, "?"),
    },
  ];
}

/** Before these go back to what stays, whatever of them was turned by itself is turned back: in a computed way back it is done. */
export function turnedBack(bench: Bench, moving: readonly ThingIndex[], act: Act, around: Around): void {
  if (bench.state.inside.size === 0) return;
  for (const frame of bench.model.frames.values()) {
    const now = positionOf(bench, frame),
      [due] = frame.positions;
    if (due === undefined || now === due || now === "?" || !moving.includes(frame.host)) continue;
    if (bench.computed) bench.turnedInside = { part: frame.host, to: due };
    else
      report(
        bench,
        act.at,
        [frame.host],
        [reasonOf("refit/position", { thing: frame.host, words: [now, due] })],
        act,
        around,
      );
    lay(bench, frame, due);
  }
}
