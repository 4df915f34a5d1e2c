// The layout of layered graphs, by laws that hold for any graph without a ring.

import fc from "fast-check";
import { expect, test } from "vitest";
import { columns, type Slot } from "../../../language/outputs/draw/columns.ts";
import { rowsOf, type Box, type Layout, type Link } from "../../../language/outputs/draw/layers.ts";

const options = { rowWidth: 600, gap: 18, rowGap: 40 };
const graph = fc.integer({ min: 2, max: 24 }).chain((count) =>
  fc.record({
    boxes: fc.array(fc.record({ width: fc.integer({ min: 20, max: 200 }), height: fc.integer({ min: 16, max: 90 }) }), {
      minLength: count,
      maxLength: count,
    }),
    links: fc.uniqueArray(
      fc.tuple(fc.nat(count - 1), fc.nat(count - 1)).filter(([a, b]) => a < b),
      { maxLength: 40, selector: ([a, b]) => `${a} ${b}` },
    ),
  }),
);
const layered = (...of: Parameters<typeof rowsOf>): Layout => rowsOf(...of).placed();
const check = (law: (boxes: readonly Box[], links: readonly Link[]) => void): void =>
  fc.assert(
    fc.property(graph, ({ boxes, links }) => law(boxes, links)),
    { seed: 6, numRuns: 100 },
  );

test("no two boxes overlap and all lie inside the drawing", () =>
  check((boxes, links) => {
    const { boxes: placed, width, height } = layered(boxes, links, options);
    placed.forEach((a, i) => {
      expect(a.x - boxes[i]!.width / 2).toBeGreaterThanOrEqual(-1e-6);
      expect(a.x + boxes[i]!.width / 2).toBeLessThanOrEqual(width + 1e-6);
      expect(a.y + boxes[i]!.height).toBeLessThanOrEqual(height + 1e-6);
      placed.slice(0, i).forEach((b, j) => {
        const apartX = Math.abs(a.x - b.x) >= (boxes[i]!.width + boxes[j]!.width) / 2 - 1e-6,
          apartY = a.y + boxes[i]!.height <= b.y + 1e-6 || b.y + boxes[j]!.height <= a.y + 1e-6;
        expect(apartX || apartY, `${i} and ${j}`).toBe(true);
      });
    });
  }));

test("what is told before the boxes are placed holds: the height as it is, the width at least", () =>
  check((boxes, links) => {
    const { height, least, placed } = rowsOf(boxes, links, options),
      layout = placed();
    expect(height).toBeCloseTo(layout.height, 6);
    expect(least).toBeLessThanOrEqual(layout.width + 1e-6);
  }));

test("every link runs down from the foot of its first box to the head of its second", () =>
  check((boxes, links) => {
    const { boxes: placed, routes } = layered(boxes, links, options);
    links.forEach(([from, to], i) => {
      const route = routes[i]!,
        first = route[0]!,
        last = route.at(-1)!;
      expect([first.x, first.y]).toEqual([placed[from]!.x, placed[from]!.y + boxes[from]!.height]);
      expect([last.x, last.y]).toEqual([placed[to]!.x, placed[to]!.y]);
      for (let k = 1; k < route.length; k++) expect(route[k]!.y).toBeGreaterThanOrEqual(route[k - 1]!.y - 1e-6);
    });
  }));

test("no link runs through a box that it does not belong to, where it passes the box's row", () =>
  check((boxes, links) => {
    const { boxes: placed, routes } = layered(boxes, links, options);
    links.forEach(([from, to], i) => {
      for (let k = 1; k < routes[i]!.length - 1; k += 2) {
        const { x, y } = routes[i]![k]!,
          low = routes[i]![k + 1]?.y ?? y;
        placed.forEach((box, other) => {
          if (other === from || other === to || box.y > low || box.y + boxes[other]!.height < y) return;
          expect(Math.abs(box.x - x), `link ${from} to ${to} by box ${other}`).toBeGreaterThanOrEqual(
            boxes[other]!.width / 2,
          );
        });
      }
    });
  }));

test("a ring is refused", () => {
  const box = { width: 10, height: 10 };
  expect(() =>
    layered(
      [box, box],
      [
        [0, 1],
        [1, 0],
      ],
      options,
    ),
  ).toThrow("ring");
});

test("no row is wider than asked, but for a single box", () =>
  check((boxes, links) => {
    const { boxes: placed } = layered(boxes, links, options),
      middle = (i: number): number => Math.round((placed[i]!.y + boxes[i]!.height / 2) * 100);
    for (const row of Map.groupBy(boxes.keys(), middle).values())
      if (row.length > 1)
        expect(row.reduce((sum, i) => sum + boxes[i]!.width, (row.length - 1) * options.gap)).toBeLessThanOrEqual(
          options.rowWidth,
        );
  }));

test("a box stands over its only neighbour", () => {
  const slots: Slot[] = [
    { width: 80, up: [], down: [2] },
    { width: 80, up: [], down: [3] },
    { width: 80, up: [0], down: [] },
    { width: 200, up: [1], down: [] },
  ];
  const xs = columns(
    [
      [0, 1],
      [2, 3],
    ],
    slots,
    10,
  );
  expect(Math.abs(xs[0]! - xs[2]!)).toBeLessThan(1);
  expect(Math.abs(xs[1]! - xs[3]!)).toBeLessThan(1);
});
