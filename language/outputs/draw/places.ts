// Where the fasteners of a group stand and which turn each has, from what the author gives. Where he gives no place or no order,
// there is none: nothing is made up.

import {
  centreOutOrder,
  circleOrder,
  listedOrder,
  rectanglePoints,
  type Point,
} from "../../figures/tightening-order.ts";
import type { Tie } from "../../model/model.ts";
import { si } from "../../quantities/index.ts";

/** Places in metres, x to the right, y down, in the order in which they are counted. Undefined without a pattern that fits the count. */
export function placesOf({ pattern, count, countUnknown }: Tie): readonly Point[] | undefined {
  if (!pattern || countUnknown || count < 1) return undefined;
  switch (pattern.is) {
    case "circle": {
      const radius = si(pattern.diameter).high / 2;
      return Array.from({ length: count }, (_, i) => ({
        x: radius * Math.sin((2 * Math.PI * i) / count),
        y: -radius * Math.cos((2 * Math.PI * i) / count),
      }));
    }
    case "rectangle": {
      const [width, height] = pattern.sides;
      return width && height ? rectanglePoints(count, si(width).high, si(height).high) : undefined;
    }
    // The author measures y upwards, as on a drawing.
    case "at":
      return pattern.points.length === count
        ? pattern.points.map(([x, y]) => ({ x: x ? si(x).high : 0, y: y ? 0 - si(y).high : 0 }))
        : undefined;
  }
}

/** For each turn the number of the fastener, from 1, in the order of `placesOf`; empty where the author gives no order or it cannot be numbered. */
export function turnsOf(tie: Tie): readonly number[] {
  const given = statedOrder(tie),
    places = placesOf(tie);
  if (given.length > 0 || !tie.sequence || tie.sequence.listed.length > 0 || !places || places.length < 3) return given;
  switch (tie.sequence.kind) {
    case "circle":
      return round(places).map((i) => i + 1);
    case "rows":
      return inRows(places).map((i) => i + 1);
    // Each next one as nearly opposite as can be: the cross order of as many on a circle, taken round the outline.
    case "star": {
      const around = round(places),
        cross = circleOrder(places.length)?.order ?? [];
      return around.length === places.length ? cross.map((turn) => around[turn - 1]! + 1) : [];
    }
    default:
      return [];
  }
}

/** Clockwise from the top; empty where one stands in the middle of the others, which has no place round it. */
function round(places: readonly Point[]): number[] {
  const middle = { x: mean(places.map(({ x }) => x)), y: mean(places.map(({ y }) => y)) },
    arms = places.map(({ x, y }) => ({ x: x - middle.x, y: y - middle.y }));
  const longest = Math.max(...arms.map(({ x, y }) => Math.hypot(x, y)));
  if (arms.some(({ x, y }) => Math.hypot(x, y) < 1e-6 * longest) || longest === 0) return [];
  const angle = arms.map(({ x, y }) => {
    const a = Math.atan2(x, -y);
    return a < -1e-9 ? a + 2 * Math.PI : Math.max(0, a);
  });
  return [...places.keys()].sort((a, b) => (Math.abs(angle[a]! - angle[b]!) < 1e-9 ? a - b : angle[a]! - angle[b]!));
}

/** Row by row from the top, each from the left. Less than a thousandth of the spread apart in height is one row. */
function inRows(places: readonly Point[]): number[] {
  const spread = Math.max(...places.map(({ y }) => y)) - Math.min(...places.map(({ y }) => y)),
    row = (i: number): number => Math.round(places[i]!.y / (spread / 1000 || 1));
  return [...places.keys()].sort((a, b) => row(a) - row(b) || places[a]!.x - places[b]!.x);
}

const mean = (values: readonly number[]): number => values.reduce((sum, each) => sum + each, 0) / values.length;

/** As listed, or by the published orders for a circle and for rows; empty where neither says it. */
function statedOrder(tie: Tie): readonly number[] {
  const { sequence, pattern, count } = tie;
  if (!sequence || count < 3) return [];
  if (sequence.listed.length > 0) {
    const listed = listedOrder(count, sequence.listed);
    return "order" in listed ? listed.order : [];
  }
  if (sequence.kind === "star" && pattern?.is === "circle") return circleOrder(count)?.order ?? [];
  if (sequence.kind === "centre-out" && pattern?.is === "rectangle" && pattern.sides.length === 2) {
    return centreOutOrder(rectanglePoints(count, si(pattern.sides[0]!).high, si(pattern.sides[1]!).high));
  }
  if (sequence.kind === "centre-out" && pattern?.is === "at" && pattern.points.length === count) {
    return centreOutOrder(pattern.points.map(([x, y]) => ({ x: x ? si(x).high : 0, y: y ? si(y).high : 0 })));
  }
  return [];
}
