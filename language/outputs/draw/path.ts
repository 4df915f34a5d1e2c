// The way of a fluid through the machine, from part to part as the author names them, with the places where it is let out, filled and
// bled. It knows nothing of pipes that the author does not name.

import type { Fluid, Model, ThingIndex } from "../../model/model.ts";
import type { Wording } from "../wording/wording.ts";
import { html, type Markup, type Value } from "../text/markup.ts";
import { lines, n, text, type Drawing } from "./drawing.ts";
import { textLines } from "./text-box.ts";

const perRow = 4,
  boxWidth = 136,
  gapX = 30,
  gapY = 40,
  size = 12,
  small = 11.5;

/** Undefined for a fluid without a path. */
export function pathDrawing(
  model: Model,
  fluid: Fluid,
  id: string,
  name: string,
  { draw }: Wording,
): Drawing | undefined {
  if (fluid.path.length === 0) return undefined;
  const closed = fluid.path.length > 2 && fluid.path[0] === fluid.path.at(-1),
    stations = closed ? fluid.path.slice(0, -1) : fluid.path;
  const nameOf = (thing: ThingIndex): string => model.things[thing]?.name ?? "",
    ports = portsOf(model, fluid, draw);
  const boxes = stations.map((thing) => ({
    label: textLines(nameOf(thing), size, boxWidth - 20),
    notes: ports.filter((port) => port.on === thing).flatMap((port) => textLines(port.says, small, boxWidth - 20)),
  }));
  const rows = Math.ceil(boxes.length / perRow),
    heights = Array.from({ length: rows }, (_, row) =>
      Math.max(
        ...boxes
          .slice(row * perRow, (row + 1) * perRow)
          .map(({ label, notes }) => label.length * size * 1.25 + notes.length * small * 1.25 + 18),
      ),
    );
  const left = closed ? 26 : 2,
    tops = heights.map((_, row) => 2 + heights.slice(0, row).reduce((sum, height) => sum + height + gapY, 0));
  const at = boxes.map((_, i) => {
    const row = Math.floor(i / perRow),
      place = i % perRow,
      column = row % 2 === 0 ? place : perRow - 1 - place;
    return { x: left + column * (boxWidth + gapX), y: tops[row]!, height: heights[row]! };
  });
  const parts: Value[] = boxes.map(({ label, notes }, i) => {
    const { x, y, height } = at[i]!,
      block = label.length * size * 1.25 + notes.length * small * 1.25,
      first = y + (height - block) / 2 + size * 0.95,
      middle = x + boxWidth / 2;
    return html`<rect x="${n(x)}" y="${n(y)}" width="${boxWidth}" height="${n(height)}" stroke-width="2"/>${lines(middle, first, size, label, { anchor: "middle", bold: true })}${lines(
      middle,
      first + label.length * size * 1.25,
      small,
      notes,
      { anchor: "middle" },
    )}
`;
  });
  for (let i = 1; i < at.length; i++) parts.push(between(at[i - 1]!, at[i]!));
  let bottom = tops[rows - 1]! + heights[rows - 1]!;
  if (closed) {
    const last = at[at.length - 1]!,
      first = at[0]!,
      low = bottom + 18;
    parts.push(
      html`<path d="M${n(last.x + boxWidth / 2)} ${n(last.y + last.height)}V${n(low)}H8V${n(first.y + first.height / 2)}H${n(first.x - 6)}"/>`,
      head(first.x, first.y + first.height / 2, "right"),
    );
    bottom = low;
  }
  const elsewhere = ports
    .filter(({ on }) => on === undefined || !stations.includes(on))
    .flatMap(({ says }) => textLines(says, size, 560));
  bottom += elsewhere.length > 0 ? 26 : 0;
  parts.push(elsewhere.map((says, i) => text(left, bottom + i * size * 1.3, size, says)));
  const width = left + Math.min(boxes.length, perRow) * (boxWidth + gapX) - gapX + 2;
  return {
    id,
    title: name,
    width: elsewhere.length > 0 ? Math.max(width, 600) : width,
    height: bottom + elsewhere.length * size * 1.3 + 6,
    body: html`${parts}`,
    description: [
      draw.pathAbout(stations.map(nameOf), closed),
      ...ports.map(({ says, on }) => draw.port(says, on === undefined ? "" : nameOf(on))),
    ].join(" "),
  };
}

interface Port {
  readonly on: ThingIndex | undefined;
  readonly says: string;
}

/** Where it is let out, filled and bled, each at the part that its plug or cap sits in. */
function portsOf(model: Model, fluid: Fluid, draw: Wording["draw"]): Port[] {
  const host = (index: ThingIndex): ThingIndex | undefined => {
    const thing = model.things[index];
    return thing?.is === "tie"
      ? (thing.into ?? thing.uppers[0] ?? thing.seat)
      : thing?.is === "part"
        ? fluid.path.includes(index)
          ? index
          : (thing.hosts[0] ?? index)
        : undefined;
  };
  const of = (things: readonly ThingIndex[], says: (name: string) => string): Port[] =>
    things.map((thing) => ({ on: host(thing), says: says(model.things[thing]?.name ?? "") }));
  return [
    ...of(fluid.fillsAt, draw.fillsAt),
    ...of(fluid.bleedsAt, draw.bleedsAt),
    ...of(fluid.drainsAt, draw.drainsAt),
  ];
}

interface Spot {
  readonly x: number;
  readonly y: number;
  readonly height: number;
}

/** To the next box of the row, or down to the row below, which runs the other way. */
function between(a: Spot, b: Spot): Markup {
  if (a.y !== b.y) {
    const x = a.x + boxWidth / 2;
    return html`<path d="M${n(x)} ${n(a.y + a.height)}V${n(b.y - 6)}"/>${head(x, b.y, "down")}`;
  }
  const y = a.y + a.height / 2,
    right = b.x > a.x;
  return html`<path d="M${n(right ? a.x + boxWidth : a.x)} ${n(y)}H${n(right ? b.x - 6 : b.x + boxWidth + 6)}"/>${head(right ? b.x : b.x + boxWidth, y, right ? "right" : "left")}`;
}

function head(x: number, y: number, way: "right" | "left" | "down"): Markup {
  const shape = { right: "l-9 -4.500v9z", left: "l9 -4.500v9z", down: "l-4.500 -9h9z" }[way];
  return html`<path d="M${n(x)} ${n(y)}${shape}" fill="currentColor" stroke="none"/>`;
}
