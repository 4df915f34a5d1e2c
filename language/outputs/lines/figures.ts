// How figures are printed: in the reader's system of units or in both, times in words, ranges with the language's own sign.

import { findUnit, format, fromSi, si, type Quantity, type Rounding } from "../../quantities/index.ts";
import type { Wording } from "../wording/wording.ts";

/** What printing a figure needs to know. */
export interface Units {
  readonly system: "metric" | "us";
  readonly wording: Wording;
}

/** `0.05..0.15 mm` as `0.05 to 0.15 mm`, with the language's decimal sign. */
const asRange = (text: string, wording: Wording): string => {
  // Hardly a figure is a range.
  const match = text.includes("..") ? /^(\S+?)\.\.(\S+) (.+)$/.exec(text) : null,
    { number } = wording.figures;
  return number(match ? wording.acts.range(match[1]!, match[2]!, match[3]!) : text);
};

/** A figure as an author or a program writes it, with the language's signs: for what is printed, never for what a program reads. */
export const writtenText = (written: string, wording: Wording): string => asRange(written, wording);

/** A size with the language's decimal sign. The property class behind a thread (`M8x25 8.8`, ISO 898-1) is a name and keeps its point. */
export function sizeIn(size: string, { figures }: Wording): string {
  const [, body, propertyClass] = /^(.*\S) (\d+\.\d)$/.exec(size) ?? [];
  return body === undefined ? figures.number(size) : `${figures.number(body)} ${propertyClass}`;
}

/** In the reader's system; with the author's own bracket where there is one. A limit, a load and a capacity say to which side they are rounded. */
export function figureText(quantity: Quantity, { system, wording }: Units, rounding?: Rounding): string {
  const bracket = quantity.pair;
  if (bracket) return `${asRange(quantity.written, wording)} (${asRange(bracket.written, wording)})`;
  return asRange(format(quantity, system, undefined, rounding), wording);
}

/** As written and in the other system: `30 N·m (22 lbf·ft)`; the reader's system stands first. The author's own bracket comes before a computed one. */
export function bothSystems(quantity: Quantity, { system, wording }: Units): string {
  const own = systemOf(quantity),
    written = asRange(quantity.written, wording);
  if (own === undefined) return written;
  const other =
    quantity.pair && systemOf(quantity.pair) !== own
      ? asRange(quantity.pair.written, wording)
      : asRange(format(quantity, own === "metric" ? "us" : "metric"), wording);
  return own === system ? `${written} (${other})` : `${other} (${written})`;
}

/** The system that a unit belongs to; undefined where both use it. */
export function systemOf(quantity: Pick<Quantity, "unit">): "metric" | "us" | undefined {
  const counterpart = findUnit(quantity.unit)?.counterpart;
  return counterpart === undefined ? undefined : counterpart.system === "us" ? "metric" : "us";
}

/** Seconds as a wait is told: rounded up, never down. */
export function timeText(seconds: number, wording: Wording): string {
  const told = toldSeconds(seconds);
  if (seconds < 120) return wording.figures.seconds(told);
  if (seconds < 7200) return wording.figures.minutes(told / 60);
  return wording.figures.hours(round(told / 3600));
}

/** The wait that is told, s: a clock that counts it down is never shorter than the words. */
export function toldSeconds(seconds: number): number {
  if (seconds < 120) return Math.ceil(round(seconds));
  if (seconds < 7200) return Math.ceil(round(seconds / 60)) * 60;
  return Math.ceil(round(seconds / 360)) * 360;
}

/** Takes the last bits of a product away before it is rounded up. */
const round = (value: number): number => Number(value.toPrecision(9));

/** A share of 1 as percent. */
export const shareText = (share: number, { figures }: Wording): string =>
  figures.share(figures.number(String(Number((share * 100).toPrecision(6)))));

/** A clock mark of a recording: `12:04`, `1:02:04`. */
export function clock(seconds: number): string {
  const whole = Math.round(seconds),
    two = (n: number): string => String(n).padStart(2, "0");
  return whole >= 3600
    ? `${Math.floor(whole / 3600)}:${two(Math.floor(whole / 60) % 60)}:${two(whole % 60)}`
    : `${two(Math.floor(whole / 60))}:${two(whole % 60)}`;
}

/** A sum of masses in the reader's system. */
export function massText(kg: number, { system, wording }: Units): string {
  return wording.figures.number(system === "us" ? `${tenth(fromSi(kg, "lb"))} lb` : `${tenth(kg)} kg`);
}

const tenth = (value: number): string =>
  value >= 100 ? String(Math.ceil(value)) : String(Number((Math.ceil(round(value) * 10) / 10).toFixed(1)));

/** A plain amount in a unit: three figures, rounded up as everything that is bought. */
export function amountText(value: number, unit: string, wording: Wording): string {
  const places = Math.max(0, 2 - Math.floor(Math.log10(Math.max(value, 1e-9))));
  const factor = 10 ** places;
  return wording.figures.number(`${Number((Math.ceil(round(value) * factor) / factor).toFixed(places))} ${unit}`);
}

export const seconds = (quantity: Quantity): number => si(quantity).high;

/** The unit of a reading as this language writes it (`V dc`), for a place where the figure is written by hand. */
export const unitText = (unit: string, { figures }: Wording): string => figures.number(`1 ${unit}`).replace(/^1 ?/, "");
