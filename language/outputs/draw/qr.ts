// The QR code of a place in the manual: its address, drawn in black on white whatever the page's colours are.

import { encode } from "uqr";
import { html } from "../text/markup.ts";
import { n, type Drawing } from "./drawing.ts";

/** Modules of white around the code: four, by ISO/IEC 18004 (from memory). */
const quiet = 4;

/** One unit of the drawing is a module; the correction level M restores about 15 % of what is soiled. */
export function qrDrawing(address: string, id: string, title: string): Drawing {
  const { data, size } = encode(address, { ecc: "M", border: quiet }),
    runs: string[] = [];
  data.forEach((row, y) => {
    for (let x = 0; x < size; x++) {
      if (!row[x]) continue;
      const from = x;
      while (row[x + 1]) x++;
      runs.push(`M${from} ${y}h${x - from + 1}v1H${from}z`);
    }
  });
  return {
    id,
    title,
    description: address,
    width: size,
    height: size,
    body: html`<rect width="${n(size)}" height="${n(size)}" fill="#fff" stroke="none"/><path fill="#000" stroke="none" shape-rendering="crispEdges" d="${runs.join("")}"/>`,
  };
}
