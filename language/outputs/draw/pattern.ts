// A group of fasteners as it lies on its joint, each with its turn in the order of tightening. It computes no order itself.

import type { Tie } from "../../model/model.ts";
import { threadText } from "../../bill/uses.ts";
import { figureText, type Units } from "../lines/figures.ts";
import { torqueOf } from "../lines/torque.ts";
import { html, type Value } from "../text/markup.ts";
import { lines, n, text, type Drawing } from "./drawing.ts";
import { placesOf, turnsOf } from "./places.ts";
import { textLines } from "./text-box.ts";

/** The longer side of the field that the fasteners lie in, and the least distance between two of their middles. */
const least = 34,
  span = 240,
  width = 340,
  noteSize = 13;

/** Undefined where the author gives no pattern that fits the count. `name` may say more than the tie's own name. */
export function patternDrawing(tie: Tie, id: string, name: string, units: Units): Drawing | undefined {
  const places = placesOf(tie);
  if (!places) return undefined;
  const { draw } = units.wording,
    turns = turnsOf(tie),
    // Of one that is gone over again its first turn: the others stand in the order in words.
    turnOf = new Map(turns.map((number, i) => [number, i + 1] as const).reverse());
  const xs = places.map(({ x }) => x),
    ys = places.map(({ y }) => y),
    left = Math.min(...xs),
    top = Math.min(...ys);
  const wide = Math.max(...xs) - left,
    high = Math.max(...ys) - top,
    nearest = nearestOf(places);
  // Large enough that no two circles touch, small enough for a page.
  const dot = 13,
    scale = Math.min(
      Math.max(span / Math.max(wide, high, 1e-9), nearest > 0 ? least / nearest : 0),
      520 / Math.max(wide, high, 1e-9),
    );
  const radius = nearest > 0 ? Math.min(dot, Math.max(6, nearest * scale * 0.46)) : dot;
  const total = Math.max(width, wide * scale + 2 * dot + 8),
    offsetX = (total - wide * scale) / 2,
    offsetY = dot + 4;
  const at = ({ x, y }: { x: number; y: number }): { x: number; y: number } => ({
    x: offsetX + (x - left) * scale,
    y: offsetY + (y - top) * scale,
  });
  const bolts = places.map((place, i) => {
    const { x, y } = at(place),
      turn = turnOf.get(i + 1),
      says = turn === undefined ? "" : String(turn),
      font = radius * (says.length > 2 ? 0.85 : 1.05);
    return html`<circle cx="${n(x)}" cy="${n(y)}" r="${n(radius)}" stroke-width="${turn === 1 ? "3" : "1.6"}"/>${says !== "" && text(x, y + font * 0.36, font, says, { anchor: "middle", bold: turn === 1 })}
`;
  });
  const notes = notesOf(tie, turns.length > 0, units),
    noted = notes.flatMap((note) => textLines(note, noteSize, total)),
    bottom = offsetY + high * scale + dot + 24;
  return {
    id,
    title: name,
    width: total,
    height: bottom + noted.length * noteSize * 1.25,
    description: [draw.patternAbout(tie.count, turns.length > 0 ? turns.join(", ") : undefined), ...notes].join(" "),
    body: html`${outline(tie, at, radius, scale, offsetX + (wide * scale) / 2, offsetY + (high * scale) / 2, { left, top, wide, high })}${bolts}${lines(0, bottom, noteSize, noted)}`,
  };
}

function notesOf(tie: Tie, isNumbered: boolean, units: Units): string[] {
  const { draw, acts, figures } = units.wording,
    torque = torqueOf(tie, tie.count, units),
    { pattern } = tie;
  const size = [figures.number(threadText(tie) ?? ""), tie.propertyClass ?? tie.grade].filter(Boolean).join(", ");
  return [
    draw.groupOf(tie.count, size),
    ...(pattern?.is === "circle" ? [draw.pitchCircle(figureText(pattern.diameter, units))] : []),
    ...(torque
      ? [
          draw.torque(torque.text),
          ...(torque.passes !== "" ? [draw.asSaid(torque.passes)] : []),
          ...(torque.sequence !== "" ? [draw.asSaid(torque.sequence)] : []),
        ]
      : []),
    ...(isNumbered
      ? [pattern?.is === "circle" && tie.sequence?.listed.length === 0 ? draw.turnsAnywhere : draw.turns]
      : [draw.noTurns(acts.torqueNotGiven === torque?.text)]),
  ];
}

/** The line that the fasteners stand on, drawn only between their circles: one that ran through the numbers would make them hard to read. */
function outline(
  { pattern }: Tie,
  at: (point: { x: number; y: number }) => { x: number; y: number },
  radius: number,
  scale: number,
  middleX: number,
  middleY: number,
  box: { left: number; top: number; wide: number; high: number },
): Value {
  if (pattern?.is === "circle") {
    const inner = Math.max(0, scale * pitchRadius(box) - radius - 7);
    return (
      inner > 4 &&
      html`<circle cx="${n(middleX)}" cy="${n(middleY)}" r="${n(inner)}" stroke-dasharray="5 4" stroke-width="0.8"/>`
    );
  }
  if (pattern?.is === "rectangle" && box.high > 0) {
    const a = at({ x: box.left, y: box.top }),
      b = at({ x: box.left + box.wide, y: box.top + box.high }),
      inset = radius + 7;
    return (
      b.x - a.x > 3 * inset &&
      b.y - a.y > 3 * inset &&
      html`<rect x="${n(a.x + inset)}" y="${n(a.y + inset)}" width="${n(b.x - a.x - 2 * inset)}" height="${n(b.y - a.y - 2 * inset)}" stroke-dasharray="5 4" stroke-width="0.8"/>`
    );
  }
  return false;
}

/** Of a ring of any number of bolts the height is a little less than its diameter; the top one stands on it. */
const pitchRadius = ({ wide, high }: { wide: number; high: number }): number => Math.max(wide, high) / 2;

function nearestOf(places: readonly { x: number; y: number }[]): number {
  let nearest = Number.POSITIVE_INFINITY;
  for (let i = 0; i < places.length; i++)
    for (let j = 0; j < i; j++) {
      const distance = Math.hypot(places[i]!.x - places[j]!.x, places[i]!.y - places[j]!.y);
      if (distance > 0) nearest = Math.min(nearest, distance);
    }
  return Number.isFinite(nearest) ? nearest : 0;
}
