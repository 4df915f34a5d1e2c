// What a printed line asks its reader to write down beside the tick. The manual shows these boxes, and the record is held against them:
// one rule for both.

import type { Model, Tie } from "../../model/model.ts";
import type { ActionLine, LineReading } from "../lines/line.ts";

export interface AskedCount {
  readonly item: string;
  readonly name: string;
  /** Undefined where the author gives no number: any count is an answer. */
  readonly count: number | undefined;
}

export interface AskedTorque {
  readonly item: string;
  readonly name: string;
  readonly tie: Tie;
}

export interface Asked {
  readonly counts: readonly AskedCount[];
  readonly torques: readonly AskedTorque[];
  readonly readings: readonly LineReading[];
  readonly signature: boolean;
}

/** Acts that move pieces: what is cleaned or inspected is not counted. */
const moving: ReadonlySet<string> = new Set([
  "undo",
  "loosen",
  "back-out",
  "remove",
  "lift",
  "fit",
  "tighten",
  "finger-tighten",
  "press",
]);

export function askedOf(line: ActionLine, { ties }: Pick<Model, "ties">): Asked {
  const pieces = moving.has(line.verb)
    ? line.items.filter(
        (item) => (item.is === "part" || item.is === "fastener") && (item.count === undefined || item.count > 1),
      )
    : [];
  const turned =
    line.torque === undefined || !(moving.has(line.verb) || line.verb === "fill")
      ? []
      : line.items.flatMap((item) => {
          const tie = ties.find(({ id }) => id === item.id);
          return (tie?.fastener && !tie.torques.every(({ is }) => is === "none")) ||
            (tie?.fastener && tie.torques.length === 0)
            ? [{ item: tie.id, name: tie.name, tie }]
            : [];
        });
  return {
    counts: pieces.map(({ id, name, count }) => ({ item: id, name, count })),
    torques: turned,
    readings: line.readings,
    signature: line.sign,
  };
}
