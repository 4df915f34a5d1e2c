// What a hand would see of a bench, for laws that hold one moment against another.

import type { State } from "../../language/bench/state.ts";
import type { Performance } from "../../language/bench/trace.ts";
import { at } from "../../language/bench/vector.ts";

/** What is told of a strip beside what is refused: nothing of the order hangs on it. */
export const asides: ReadonlySet<string> = new Set([
  "removal/left-loose",
  "removal/nothing-between",
  "removal/old-stays",
  "refit/seal-reused",
  "sequence/loose-when-turned",
]);

const lapsed = 32;

/** What is on what, what is in, what stands. */
export const seen = ({ model }: Performance, s: State): unknown => ({
  on: model.parts.map(({ index }) => at(s.lump, index) <= 0),
  in: model.ties.map(({ index }) => [at(s.out, index), at(s.slack, index)]),
  flags: model.things.map(({ index }) => at(s.flags, index) & ~lapsed),
  standing: model.precautions.map(({ number, back }) => back !== "" && at(s.standing, number) !== 0),
});
