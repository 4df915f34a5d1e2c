// The same row of numbers for the same seed: Numerical Recipes' linear congruential generator.

/** Whole numbers from 0 up to `below`, without it. */
export function numbers(seed: number): (below: number) => number {
  let state = seed >>> 0;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}
