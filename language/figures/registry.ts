// Every figure there is, one line each, sorted by name. It holds no figure of its own.

import type { Figure } from "./figure.ts";

/** All figures, by name. */
export const figures: readonly Figure[] = [
];

/** The figure of this name, or the names that are nearest to it. */
export function findFigure(name: string): Figure | undefined {
  return figures.find((figure) => figure.name === name);
}
