// The figures of one reading on a line with its limits: a ring for each unit inside them, a filled square for each outside.

import { n, lines, text, type Drawing } from "../draw/drawing.ts";
import { textLines } from "../draw/text-box.ts";
import { html, type Value } from "../text/markup.ts";
import type { Wording } from "../wording/wording.ts";
import { figureOf } from "./spread.ts";
import type { ReadingSummary } from "./reading-summary.ts";

const width = 700,
  left = 30,
  right = width - 30,
  dot = 4.5;

/** Undefined without figures. */
export function plotOf(reading: ReadingSummary, id: string, { record: words, figures }: Wording): Drawing | undefined {
  const { spread, low, high, unit, values } = reading;
  if (!spread) return undefined;
  const ends = [
      spread.lowest,
      spread.highest,
      ...(low === undefined ? [] : [low]),
      ...(high === undefined ? [] : [high]),
    ],
    least = Math.min(...ends),
    most = Math.max(...ends);
  const range = most - least || Math.abs(most) * 0.1 || 1,
    step = niceStep(range / 5),
    from = Math.floor((least - range * 0.05) / step) * step,
    to = Math.ceil((most + range * 0.05) / step) * step;
  const x = (value: number): number => left + ((value - from) / (to - from)) * (right - left);
  // Those that would lie on one another are piled up.
  const piles = new Map<number, number>(),
    dots = [...values]
      .sort((a, b) => a.value - b.value)
      .map(({ value, outside }) => {
        const column = Math.round(x(value) / (2 * dot + 1)),
          level = piles.get(column) ?? 0;
        piles.set(column, level + 1);
        return { x: x(value), level, outside };
      });
  const top = 34,
    tall = Math.max(1, ...piles.values()) * (2 * dot + 2) + 12,
    base = top + tall,
    parts: Value[] = [];
  for (const { x: at, level, outside } of dots) {
    const y = base - 9 - level * (2 * dot + 2);
    parts.push(
      outside
        ? html`<rect x="${n(at - dot)}" y="${n(y - dot)}" width="${2 * dot}" height="${2 * dot}" fill="currentColor"/>`
        : html`<circle cx="${n(at)}" cy="${n(y)}" r="${dot}" stroke-width="1.4"/>`,
    );
  }
  const places = Math.max(0, -Math.floor(Math.log10(step) + 1e-9)),
    count = Math.round((to - from) / step);
  for (let i = 0; i <= count; i++) {
    const value = from + i * step,
      says = value.toFixed(Math.min(12, places)).replace(/^-(0(?:\.0*)?)$/, "$1");
    parts.push(
      html`<path d="M${n(x(value))} ${n(base)}v6"/>`,
      text(x(value), base + 20, 11, figures.number(says), { anchor: "middle" }),
    );
  }
  parts.push(html`<path d="M${left} ${n(base)}H${right}"/>`, text(right, base + 38, 11, unit, { anchor: "end" }));
  for (const [limit, says, side] of [
    [low, words.atLeast, "start"],
    [high, words.atMost, "end"],
  ] as const) {
    if (limit === undefined) continue;
    const inward = side === "start" ? 1 : -1;
    // A bar with teeth towards the inside of the limits: it reads without colour.
    parts.push(
      html`<path d="M${n(x(limit))} ${n(top - 16)}V${n(base)}M${n(x(limit))} ${n(top - 16)}h${inward * 7}" stroke-width="2.2"/>`,
      text(x(limit) + inward * 11, top - 12, 11, says, {
        anchor: x(limit) > right - 70 ? "end" : x(limit) < left + 70 ? "start" : side,
      }),
    );
  }
  parts.push(html`<path d="M${n(x(spread.median))} ${n(base)}l-5 10h10z" fill="currentColor" stroke="none"/>`);
  const notes = [
    words.plotLegend(reading.outside > 0),
    ...textLines(reading.limits === "" ? "" : words.limits(reading.limits), 11, width - 60),
  ];
  parts.push(lines(left, base + 38, 11, notes));
  return {
    id,
    title: words.plotTitle(reading.line, reading.what),
    width,
    height: base + 42 + notes.length * 14,
    body: html`${parts}`,
    description: words.plotAbout(
      spread.count,
      figures.number(figureOf(spread.lowest)),
      figures.number(figureOf(spread.highest)),
      figures.number(figureOf(spread.median)),
      unit,
      reading.outside,
      reading.limits,
    ),
  };
}

/** 1, 2 or 5 times a power of ten, at least so large. */
function niceStep(rough: number): number {
  const power = 10 ** Math.floor(Math.log10(rough)),
    share = rough / power;
  return Number(((share <= 1 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10) * power).toPrecision(12));
}
