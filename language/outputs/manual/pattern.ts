// A bolt circle with the numbers of the order of tightening, as SVG.

import { html, type Markup } from "../text/markup.ts";

/** @param order pieces in the order of tightening, counted clockwise from the top; each gets its turn as its number. */
export function boltCircle(order: readonly number[], alt: string): Markup {
  const n = order.length,
    radius = n > 16 ? 105 : 90,
    dot = n > 24 ? 9 : n > 12 ? 12 : 15,
    two = (value: number): string => value.toFixed(2);
  const bolts = Array.from({ length: n }, (_, i) => {
    const angle = (2 * Math.PI * i) / n - Math.PI / 2,
      x = 125 + radius * Math.cos(angle),
      y = 125 + radius * Math.sin(angle);
    return html`<circle cx="${two(x)}" cy="${two(y)}" r="${dot}" fill="#fff" stroke="#000" stroke-width="1.500"/><text x="${two(x)}" y="${two(y + dot * 0.36)}" text-anchor="middle" font-size="${dot}">${order.indexOf(i + 1) + 1}</text>`;
  });
  return html`<svg class="pattern" role="img" aria-label="${alt}" viewBox="0 0 250 250" width="200" height="200"><circle cx="125" cy="125" r="${radius}" fill="none" stroke="#666" stroke-dasharray="5 4"/>${bolts}</svg>`;
}
