// The bench at one moment: a value that is never changed in place and shares what did not change with the moments around it.

import type { Model, ThingIndex } from "../model/model.ts";
import { lumps, type Lumps } from "./lumps.ts";
import { vector, type Vector } from "./vector.ts";

/** No event: a fact that stands since the start, or was assumed. */
export const NEVER = -1;
/** The sub-assembly that is the unit on its base. A parting with event number e makes sub-assembly e + 1. */
export const ON_BASE = 0;

/** How far a tie is undone that is not out. */
export const TIGHT = 0,
  LOOSE = 1,
  FINGER_TIGHT = 2,
  BACKED_OUT = 3;

/** Bits of `State.flags`. */
export const ASIDE = 1,
  HELD = 2,
  RENEWED = 4,
  SCRAP = 8,
  DRAINED = 16,
  LAPSED = 32,
  CAPPED = 64,
  EVACUATED = 128;

/** Bits of `State.assumed`: facts that no act made. What rests on them alone is not reported. */
export const A_OFF = 1,
  A_OUT = 2,
  A_ON = 4,
  A_AWAY = 8,
  A_SLACK = 16,
  A_DOUBT = 32,
  A_HAZARD = 64,
  A_DRAINED = 128;

export interface State {
  /** Part -> its sub-assembly. */
  readonly lump: Vector;
  /**
   * Sub-assembly -> the part that plays the base on the bench (its carrier), the sub-assembly that it left, and the one that it was
   * joined to since, if it was. Those made before this procedure have negative numbers.
   */
  readonly carriers: Lumps;
  /** Tie -> how many are out (a joint: broken). Part -> how many of several are off while others are on. */
  readonly out: Vector;
  readonly slack: Vector;
  readonly flags: Vector;
  readonly assumed: Vector;
  /** Number of things with any assumption: 0 lets the common case go fast. */
  readonly assumptions: number;
  /** Name of the position, "?" once it is assumed. */
  readonly position: string;
  /** Of parts that are units with positions of their own: where they were turned by themselves. */
  readonly inside: ReadonlyMap<ThingIndex, string>;
  /** Precaution number -> the event that made it stand + 1, 0 where it does not stand. Since the start: -1. */
  readonly standing: Vector;
  readonly temporaries: ReadonlyMap<string, { readonly on: readonly ThingIndex[]; readonly event: number }>;
  readonly marks: ReadonlyMap<string, { readonly things: readonly ThingIndex[]; readonly event: number }>;
  // The events that made a fact so, by thing; NEVER where none did.
  readonly outBy: Vector;
  readonly slackBy: Vector;
  readonly lumpBy: Vector;
  readonly offBy: Vector;
  readonly asideBy: Vector;
  readonly heldBy: Vector;
  readonly drainedBy: Vector;
  readonly metBy: Vector;
}

/** Everything on, tight and full, in the position that it arrives in. */
export function startState(model: Model): State {
  const n = model.things.length,
    none = vector(n, NEVER),
    zero = vector(n, 0);
  return {
    lump: zero,
    carriers: lumps(),
    out: zero,
    slack: zero,
    flags: zero,
    assumed: zero,
    assumptions: 0,
    position: model.positions[0] ?? "",
    inside: new Map(),
    standing: vector(model.precautions.length, 0),
    temporaries: new Map(),
    marks: new Map(),
    outBy: none,
    slackBy: none,
    lumpBy: none,
    offBy: none,
    asideBy: none,
    heldBy: none,
    drainedBy: none,
    metBy: none,
  };
}
