// How the end differs from the start, as it was promised. Types only.

import type { ThingIndex } from "../model/model.ts";

/** What the author promised to leave otherwise than it was. */
export interface Leaves {
  readonly off: ReadonlySet<ThingIndex>;
  /** The partings, by number, by which those came off for good: others that they were part of before go back without them. */
  readonly partings: ReadonlySet<number>;
  /** Are these two together at the end, with those off? */
  readonly together: (a: ThingIndex, b: ThingIndex) => boolean;
  /** Out, finger-tight: how many, undefined for all. */
  readonly out: ReadonlyMap<ThingIndex, number | undefined>;
  readonly fingerTight: ReadonlySet<ThingIndex>;
  readonly drained: ReadonlySet<ThingIndex>;
  readonly turned: string | undefined;
}
