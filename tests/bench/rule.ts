// The shape of a row of `rules.ts`, and the files of tests by the names that the rows call them.

/** A function of a file in `language/bench` (a path with `/` is one of `language`; without `#` the file as a whole), and its test. */
export type Rule = readonly [place: string, tests: string, test: string];

export const rulePath = (place: string): string => {
  const file = place.split("#")[0]!;
  return `language/${file.includes("/") && !file.startsWith("refit/") ? "" : "bench/"}${file}`;
};

export const ties = "bench/ties-and-removal",
  access = "bench/access-and-position",
  holding = "bench/holding-and-fluids",
  hazards = "bench/hazards",
  precaution = "bench/each-precaution",
  filling = "bench/filling",
  refusal = "bench/each-refusal",
  written = "bench/written-refit",
  back = "bench/put-back",
  ends = "bench/start-and-end",
  once = "bench/one-mistake-one-finding",
  order = "bench/refit/rules",
  trials = "bench/refit/trials",
  sets = "bench/renewed-sets",
  again = "bench/repeat-from",
  riding = "bench/riding-along",
  echoes = "bench/echoes",
  mirrored = "bench/refit/mirrored",
  blocks = "bench/refit/blocks",
  place = "bench/refit/in-place";
