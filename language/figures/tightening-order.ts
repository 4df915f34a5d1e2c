// The order in which the fasteners of a joint are tightened and loosened, and the shares of the passes. Numbers run from 1, clockwise from the
// top on a circle, row by row in a grid. Every order is a permutation.

import {
  aidCaution,
  argument,
  missing,
  numberIn,
  plain,
  siIn,
  quantityIn,
  step,
  textIn,
  type Figure,
} from "./figure.ts";

/** Starts of the groups of four in the published cross orders, by the number of groups. */
const groupStarts: Readonly<Record<number, readonly number[]>> = {
  1: [1],
  2: [1, 2],
  3: [1, 2, 3],
  4: [1, 3, 2, 4],
  5: [1, 3, 5, 2, 4],
  6: [1, 4, 2, 5, 3, 6],
};

export interface CircleOrder {
  readonly order: readonly number[];
  /** Bolts that count as one; 1 up to 24 bolts. */
  readonly groupSize: number;
}

/**
 * Cross order on a round joint of n bolts. n = 4k up to 24: groups s, s + n/2, s + n/4, s + 3n/4, each bolt at an odd place followed by the
 * one opposite. n = 4k + 2: opposite pairs. Odd n: steps of almost half a turn. Above 24, bolts within 30 degrees count as one where n divides so.
 * Error: `undefined` unless n is a whole number from 1 to 1000.
 * Source: ASME PCC-1 legacy cross pattern (4 to 24 read second-hand; 20 bolts are also printed in another order); pairs and odd n common practice.
 */
export function circleOrder(n: number): CircleOrder | undefined {
  if (!Number.isInteger(n) || n < 1 || n > 1000) return undefined;
  if (n <= 24) return { order: crossOrder(n), groupSize: 1 };
  let groupSize = 1;
  for (let size = 2; n / size >= 12; size++) if (n % size === 0 && (n / size) % 2 === 0) groupSize = size;
  const order = crossOrder(n / groupSize).flatMap((group) =>
    Array.from({ length: groupSize }, (_, i) => (group - 1) * groupSize + i + 1),
  );
  return { order, groupSize };
}

function crossOrder(n: number): readonly number[] {
  if (n <= 2) return Array.from({ length: n }, (_, i) => i + 1);
  if (n % 4 === 0) {
    const starts = groupStarts[n / 4] ?? halves(n / 4);
    return starts.flatMap((start) => [start, start + n / 2, start + n / 4, start + (3 * n) / 4]);
  }
  if (n % 2 === 0) return strided(n / 2).flatMap((start) => [start, start + n / 2]);
  return strided(n);
}

/** 1..m in strides of just under half: for odd m that visits all. */
const strided = (m: number): readonly number[] =>
  Array.from({ length: m }, (_, i) => ((i * Math.max(1, (m - 1) / 2)) % m) + 1);

/** 1..k with the two halves in turn: 1 4 2 5 3 6. */
const halves = (k: number): readonly number[] =>
  Array.from({ length: k }, (_, i) => (i % 2 === 0 ? i / 2 + 1 : Math.ceil(k / 2) + (i + 1) / 2));

export interface Point {
  readonly x: number;
  readonly y: number;
}

/**
 * From the middle of the joint to its free edges: by distance from the centre of all fasteners; at equal distance the one most nearly
 * opposite the last comes next, then the lower number. Units: any one length.
 * Source: AISC FAQ 6.6.4 (stiffest part first, to the free edges; read second-hand); the alternation is common practice.
 */
export function centreOutOrder(points: readonly Point[]): readonly number[] {
  const n = points.length,
    centre = { x: points.reduce((sum, p) => sum + p.x, 0) / n, y: points.reduce((sum, p) => sum + p.y, 0) / n };
  const arms = points.map((p, i) => ({
    number: i + 1,
    x: p.x - centre.x,
    y: p.y - centre.y,
    distance: Math.hypot(p.x - centre.x, p.y - centre.y),
  }));
  const slack = 1e-9 * Math.max(1e-300, ...arms.map((arm) => arm.distance)),
    left = [...arms],
    order: number[] = [];
  let last = { x: 0, y: 0 };
  while (left.length > 0) {
    const nearest = Math.min(...left.map((arm) => arm.distance)),
      ring = left.filter((arm) => arm.distance <= nearest + slack);
    const opposite = (arm: Point): number => arm.x * last.x + arm.y * last.y;
    const next = ring.reduce((best, arm) => (opposite(arm) < opposite(best) - slack * slack ? arm : best));
    order.push(next.number);
    left.splice(left.indexOf(next), 1);
    last = next;
  }
  return order;
}

/** Rows of fasteners as points, row by row from the top left. Units: any one length. Source: geometry. */
export const gridPoints = (rows: number, perRow: number, rowPitch = 1, pitch = 1): readonly Point[] =>
  Array.from({ length: rows * perRow }, (_, i) => ({ x: (i % perRow) * pitch, y: Math.floor(i / perRow) * rowPitch }));

/**
 * n fasteners round a rectangle, clockwise from its top left corner: one at each corner, the others spread over the sides so that the widest
 * gap is least; the odd one stands in the top side. Fewer than four stand in the top side. Units: any one length.
 * Source: geometry.
 */
export function rectanglePoints(n: number, width: number, height: number): readonly Point[] {
  if (n < 4) return Array.from({ length: n }, (_, i) => ({ x: n === 1 ? width / 2 : (width * i) / (n - 1), y: 0 }));
  let across = 0,
    down = 0;
  for (let pair = 0; pair < Math.floor((n - 4) / 2); pair++)
    if (width / (across + 1) >= height / (down + 1)) across++;
    else down++;
  const top = across + (n % 2),
    along = (count: number, at: (share: number) => Point): readonly Point[] =>
      Array.from({ length: count + 1 }, (_, i) => at(i / (count + 1)));
  return [
    ...along(top, (share) => ({ x: width * share, y: 0 })),
    ...along(down, (share) => ({ x: width, y: height * share })),
    ...along(across, (share) => ({ x: width * (1 - share), y: height })),
    ...along(down, (share) => ({ x: 0, y: height * (1 - share) })),
  ];
}

/** Row by row: the middle row first, each row from its middle out, sides in turn. Source: common practice, after AISC FAQ 6.6.4. */
export function rowsOrder(rows: number, perRow: number): readonly number[] {
  const outward = (n: number): readonly number[] =>
    centreOutOrder(Array.from({ length: n }, (_, i) => ({ x: i, y: 0 })));
  return outward(rows).flatMap((row) => outward(perRow).map((place) => (row - 1) * perRow + place));
}

/**
 * A printed order as it stands, if it names each of n fasteners once before any of them again; else what is wrong with it, in a clause.
 * What follows the first n goes over some again, as where the first of a ring have settled under the last.
 * Source: the maker, whose order it is.
 */
export function listedOrder(
  n: number,
  listed: readonly number[],
): { readonly order: readonly number[] } | { readonly wrong: string } {
  const round = listed.slice(0, n),
    outside = listed.find((each) => !Number.isInteger(each) || each < 1 || each > n),
    twice = round.find((each, i) => round.indexOf(each) !== i);
  if (outside !== undefined) return { wrong: `${outside} is not among 1 to ${n}` };
  if (twice !== undefined) return { wrong: `${twice} stands twice` };
  const lacking = Array.from({ length: n }, (_, i) => i + 1).filter((each) => !round.includes(each));
  return lacking.length > 0
    ? { wrong: `${lacking.join(", ")} ${lacking.length > 1 ? "are" : "is"} left out` }
    : { order: listed };
}

/**
 * Order of loosening: on a circle the same cross order, in steps; from the edges inward where tightening went outward.
 * Source: common practice (from memory).
 */
export const looseningOrder = (tightening: readonly number[], pattern: "circle" | "outward"): readonly number[] =>
  pattern === "circle" ? tightening : [...tightening].reverse();

/**
 * Shares of the target in n passes. 2: 70, 100; 3: 30, 60, 100; 4: 20, 40, 80, 100; others evenly up. Each in the order, and on a circle a last
 * round bolt by bolt at full torque until none turns.
 * Error: `undefined` unless n is a whole number from 1 to 10. Source: TB 9-2320-279-13&P-2 (2), gasket makers' rule (3), piping guide (4): all read.
 */
export function passShares(n: number): readonly number[] | undefined {
  if (!Number.isInteger(n) || n < 1 || n > 10) return undefined;
  const published: Readonly<Record<number, readonly number[]>> = {
    1: [1],
    2: [0.7, 1],
    3: [0.3, 0.6, 1],
    4: [0.2, 0.4, 0.8, 1],
  };
  return published[n] ?? Array.from({ length: n }, (_, i) => Number(((i + 1) / n).toFixed(2)));
}

/** Passes that the sources ask of a round joint with a gasket: 3 up to 8 bolts, 4 from 12. Source: piping guide (read). */
export const usualPasses = (n: number): number => (n < 12 ? 3 : 4);

export const tighteningFigure: Figure = {
  name: "tightening",
  title: "Tightening order and passes",
  arguments: [
    argument("count", "number", "fasteners in the joint, 1 to 1000"),
    argument("pattern", "word", "how they stand", {
      optional: true,
      default: "circle; what the sides or rows say",
      words: ["circle", "rectangle", "rows"],
    }),
    argument("width", "length", "of a rectangle", { optional: true, default: "a square" }),
    argument("height", "length", "of a rectangle", { optional: true, default: "a square" }),
    argument("rows", "number", "rows of a grid", { optional: true, default: "1", whole: true }),
    argument("passes", "number", "1 to 10", { optional: true, default: "3, from 12 bolts 4" }),
    argument("torque", "torque", "the full torque", { optional: true, default: "shares only" }),
  ],
  validity: "where the maker gives no order; a maker's order or figure stands above this one",
  source:
    "ASME PCC-1 legacy cross pattern and published gasket and piping guides (read second-hand); rectangles and rows common practice after AISC FAQ 6.6.4",
  examples: ["12", "8 torque 30 N·m", "6 pattern rows rows 2"],
  run(inputs) {
    const lacking = missing(tighteningFigure, inputs),
      count = numberIn(inputs, "count");
    if (lacking || count === undefined) return lacking ?? { says: "tightening needs a count" };
    // A side or a number of rows says how they stand; one that the pattern has no use for would be an answer to another question.
    const sides = inputs["width"] !== undefined || inputs["height"] !== undefined,
      grid = inputs["rows"] !== undefined,
      pattern = textIn(inputs, "pattern") ?? (grid ? "rows" : sides ? "rectangle" : "circle");
    if (sides && pattern !== "rectangle")
      return { says: `width and height belong to a rectangle, not to ${pattern}`, nearest: ["pattern rectangle"] };
    if (grid && pattern !== "rows")
      return { says: `rows belong to pattern rows, not to ${pattern}`, nearest: ["pattern rows"] };
    const circle = circleOrder(count),
      rows = numberIn(inputs, "rows") ?? 1;
    if (!circle) return { says: `count ${count}: a whole number from 1 to 1000 is due` };
    if (pattern === "rows" && (!Number.isInteger(rows) || rows < 1 || count % rows !== 0))
      return { says: `${count} fasteners do not stand in ${rows} equal rows` };
    const passes = numberIn(inputs, "passes") ?? usualPasses(count),
      shares = passShares(passes);
    if (!shares) return { says: `passes ${passes}: a whole number from 1 to 10 is due` };
    const order =
      pattern === "circle"
        ? circle.order
        : pattern === "rows"
          ? rowsOrder(rows, count / rows)
          : centreOutOrder(rectanglePoints(count, siIn(inputs, "width") ?? 1, siIn(inputs, "height") ?? 1));
    const torque = quantityIn(inputs, "torque"),
      full = torque ? (torque.nominal ?? torque.high) : undefined;
    return {
      values: [
        plain("order", order),
        plain("loosening order", looseningOrder(order, pattern === "circle" ? "circle" : "outward")),
        plain(
          "passes",
          shares.map((share) => Number((share * (full ?? 100)).toPrecision(6))),
          torque ? torque.unit : "%",
        ),
        ...(circle.groupSize > 1 && pattern === "circle" ? [plain("bolts that count as one", circle.groupSize)] : []),
        ...(pattern === "circle"
          ? [plain("last round", "bolt by bolt round the circle at full torque until none turns")]
          : []),
      ],
      formula:
        pattern === "circle" ? "groups s, s + n/2, s + n/4, s + 3n/4" : "by distance from the middle, opposite next",
      steps: [
        step(
          "numbered",
          pattern === "circle" ? "clockwise from the top" : "clockwise from the top left; rows one after the other",
        ),
      ],
      assumptions: numberIn(inputs, "passes") === undefined ? [`${passes} passes: usual with a gasket`] : [],
      source: tighteningFigure.source,
      caution: aidCaution,
    };
  },
};
