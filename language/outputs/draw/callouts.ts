// A picture with the numbers of its points outside it: each number stands beside the picture at the height of its place, and a line leads
// to it. Numbers never lie on the picture, so that nothing of it is hidden, and they never lie on one another.

import type { Picture } from "../output.ts";
import { html, type Markup } from "../text/markup.ts";
import { n, text } from "./drawing.ts";

export interface Callout {
  /** Printed in the circle: the number of the parts list, or a letter for what is no part. */
  readonly mark: string;
  /** Per cent of the picture, from the left and from the top. */
  readonly across: number;
  readonly down: number;
}

const picture = 640,
  margin = 52,
  radius = 15,
  least = 2 * radius + 6;

/** @returns undefined where the size of the picture is not known. */
export function calloutPicture(shown: Picture, callouts: readonly Callout[], alt: string): Markup | undefined {
  const { width, height } = shown;
  if (width === undefined || height === undefined || width < 1 || height < 1) return undefined;
  const scale = picture / width,
    high = height * scale,
    side = callouts.length > 0 ? margin : 0;
  const at = callouts.map((each, i) => ({
    i,
    mark: each.mark,
    x: side + (clamp(each.across) / 100) * picture,
    y: (clamp(each.down) / 100) * high,
    isLeft: clamp(each.across) < 50,
  }));
  const placed = [true, false].flatMap((isLeft) => {
    const here = at.filter((each) => each.isLeft === isLeft).sort((a, b) => a.y - b.y || a.x - b.x || a.i - b.i);
    const ys = spread(
      here.map(({ y }) => y),
      radius + 2,
      high - radius - 2,
    );
    return here.map((each, k) => ({
      ...each,
      numberX: isLeft ? radius + 3 : 2 * side + picture - radius - 3,
      numberY: ys[k]!,
    }));
  });
  // Many numbers on one side of a low picture need more height than it has.
  const lowest = Math.max(high, ...placed.map(({ numberY }) => numberY + radius + 2));
  const line = (each: (typeof placed)[number], stroke: string, wide: string): Markup =>
    html`<path d="M${n(each.numberX + (each.isLeft ? radius : -radius))} ${n(each.numberY)}L${n(each.x)} ${n(each.y)}" stroke="${stroke}" stroke-width="${wide}"/>`;
  return html`<svg xmlns="http://www.w3.org/2000/svg" class="photo" role="img" aria-label="${alt}" viewBox="0 0 ${n(picture + 2 * side)} ${n(lowest)}" width="${n(picture + 2 * side)}" height="${n(lowest)}" font-family="system-ui, sans-serif" fill="none" stroke="currentColor">
<image href="${pictureAddress(shown)}" x="${n(side)}" y="0" width="${n(picture)}" height="${n(high)}"/>
${placed.map(
  (
    each,
  ) => html`${line(each, "#fff", "5")}${line(each, "#000", "1.8")}<circle cx="${n(each.x)}" cy="${n(each.y)}" r="4.500" fill="#000" stroke="#fff" stroke-width="2"/><circle cx="${n(each.numberX)}" cy="${n(each.numberY)}" r="${n(radius)}" fill="#fff" stroke="#000" stroke-width="1.800"/><g color="#000">${text(each.numberX, each.numberY + 5, each.mark.length > 2 ? 11 : 14, each.mark, { anchor: "middle", bold: true })}</g>
`,
)}</svg>`;
}

export const pictureAddress = ({ address, type, base64 }: Picture): string =>
  address ?? `data:${type};base64,${base64}`;

const clamp = (share: number): number => Math.min(100, Math.max(0, share));

/** Heights as near as can be to those wanted, none nearer to another than a circle is high, within the picture where there is room. */
function spread(wanted: readonly number[], top: number, bottom: number): number[] {
  const ys = [...wanted];
  for (let i = 0; i < ys.length; i++) ys[i] = Math.max(ys[i]!, i === 0 ? top : ys[i - 1]! + least);
  const over = ys.length === 0 ? 0 : ys[ys.length - 1]! - bottom;
  if (over > 0 && ys.length > 0) {
    ys[ys.length - 1] = bottom;
    for (let i = ys.length - 2; i >= 0; i--) ys[i] = Math.min(ys[i]!, ys[i + 1]! - least);
    // No room for all: from the top down, past the lower edge.
    if (ys[0]! < top) for (let i = 0; i < ys.length; i++) ys[i] = top + i * least;
  }
  return ys;
}
