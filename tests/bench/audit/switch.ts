// What the marked text asks when it runs: which mutant is on, and, in the run before, which ones would have made a difference.

/** The mutant that is on; -1 for none. */
let on = -1;
/** How often a switch may still be asked before the run is given up as endless. */
let left = Infinity;
let asked = 0;
let seen: Set<number> | undefined;

export class Endless extends Error {}

function count(): void {
  if (++asked > left) throw new Endless("endless");
}

/** The condition, or what it is held to be. */
export function $held<T>(yes: number, no: number, value: T): T | boolean {
  count();
  if (seen) {
    if (value) {
      if (no >= 0) seen.add(no);
    } else if (yes >= 0) seen.add(yes);
    return value;
  }
  return on < 0 ? value : on === yes ? true : on === no ? false : value;
}

/** Is the line still there? */
export function $kept(number: number): boolean {
  count();
  seen?.add(number);
  return on !== number;
}

/** Runs with one mutant, at most so many switches long. */
export async function mutated(number: number, limit: number, run: () => Promise<void>): Promise<void> {
  on = number;
  asked = 0;
  left = limit;
  try {
    await run();
  } finally {
    on = -1;
    left = Infinity;
  }
}

/** Runs as it is; which mutants would have made a difference, and how many switches were asked. */
export async function observed(run: () => Promise<void>): Promise<{ seen: Set<number>; asked: number }> {
  const found = (seen = new Set<number>());
  asked = 0;
  try {
    await run();
  } finally {
    seen = undefined;
  }
  return { seen: found, asked };
}
