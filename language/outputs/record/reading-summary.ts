// One reading over many records, as plain data.

import type { Spread } from "./spread.ts";

export interface ReadingSummary {
  readonly procedure: string;
  readonly line: string;
  /** Which reading of the line, from 1. */
  readonly reading: number;
  readonly what: string;
  readonly limits: string;
  readonly unit: string;
  readonly low?: number;
  readonly high?: number;
  /** The last try of each unit, in the order of the records. */
  readonly values: readonly {
    readonly file: string;
    readonly serial: string;
    readonly value: number;
    readonly outside: boolean;
    readonly tries: number;
  }[];
  readonly spread?: Spread;
  readonly outside: number;
  /** Of looks and trials: how many were as they should be, and how many not. */
  readonly answers?: { readonly yes: number; readonly no: number };
  /** Records without a usable answer to it. */
  readonly missing: number;
}
