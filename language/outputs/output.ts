// The shape of an output: data made from performed procedures, and formats that turn the data into text. An output decides nothing
// about files, arguments or the machine that it runs on, and the same input gives the same bytes.

import type { Performance } from "../bench/trace.ts";
import type { Reader } from "./manual/sections.ts";
import type { PrintDocument } from "./pdf/print.ts";
import type { Wording } from "./wording/wording.ts";

/** An output refuses what it was given: a sentence for the user that says why, and what to do. */
export class CannotMake extends Error {}

/** What an output is made from. */
export interface OutputInput {
  /** In the order in which they are printed; each in one build. */
  readonly performances: readonly Performance[];
  /** The text of every file that was read, by path: for lines of places, and for the content hash. */
  readonly texts: ReadonlyMap<string, string>;
  /** How many findings (errors, warnings, questions) are open. Anything but 0 makes every output a draft. */
  readonly openFindings: number;
  /** Findings that the authors allowed, with their reasons: printed where somebody works by the document. */
  readonly allowed?: readonly {
    readonly code: string;
    readonly title: string;
    readonly reason: string;
    readonly file: string;
    /** From 1. */
    readonly line: number;
  }[];
}

/** A picture as it may be shown: its type and its bytes as base64. */
export interface Picture {
  readonly type: "image/png" | "image/jpeg" | "image/svg+xml" | "image/webp" | "image/gif";
  readonly base64: string;
  /** Where the page loads it from instead, if it may. */
  readonly address?: string;
  /** Pixels; without them no numbers are set beside it. */
  readonly width?: number;
  readonly height?: number;
}

/** Labels on a page, by their dimensions. Lengths in millimetres. */
export interface LabelGrid {
  readonly columns: number;
  readonly rows: number;
  readonly width: number;
  readonly height: number;
  readonly pageWidth: number;
  readonly pageHeight: number;
  /** Distance between two labels, across and down; 0 where they touch. */
  readonly gapX: number;
  readonly gapY: number;
}

export interface OutputOptions {
  readonly wording: Wording;
  /** The tag of the language that the authors' texts were translated from, where they are printed as translated; else left out. */
  readonly textsFrom?: string;
  /** The system of units that is shown first. */
  readonly system: "metric" | "us";
  /** How many units the bill is for; 1 if left out. */
  readonly units?: number;
  /** This drawing of the set alone, from 1; all if left out. */
  readonly sheet?: number;
  /** The paper of a PDF; A4 if left out. */
  readonly paper?: "a4" | "letter";
  /** Size of the labels and how many stand on a page. */
  readonly labelGrid?: LabelGrid;
  /** Sealant left in nozzle and pack, as a share; the figures' default if left out. */
  readonly beadWaste?: number;
  /** Date of the document as given by the caller, printed as it stands; never read from a clock. */
  readonly date?: string;
  /**
   * The picture that an author names in a file, or why it cannot be shown; undefined where pictures are named and not shown. Without this
   * function none is shown.
   */
  readonly picture?: (path: string, fromFile: string) => Picture | { readonly problem: string } | undefined;
  /** Whom the manual is for: a technician if left out. */
  readonly reader?: Reader;
  /** Where the manual lies, for the codes beside its steps; without it no code is drawn. */
  readonly baseAddress?: string;
  /** Where a link to a recording leads from the output: a relative address, undefined where there is none. */
  readonly recording?: (path: string, fromFile: string) => string | undefined;
  /** How a path is shown, so that no folder of this machine stands in a file; as it is if left out. */
  readonly showPath?: (path: string) => string;
}

export interface Format<Data> {
  /** Without the dot. */
  readonly extension: string;
  readonly title: string;
  write(data: Data, options: OutputOptions): string;
}

export interface Output<Data> {
  /** As on the command line. */
  readonly name: string;
  readonly title: string;
  data(input: OutputInput, options: OutputOptions): Data;
  /** How many sheets `OutputOptions.sheet` chooses from; left out where there is nothing to choose. */
  sheets?(input: OutputInput, options: OutputOptions): number;
  /** By name; the first is the usual one. */
  readonly formats: Readonly<Record<string, Format<Data>>>;
  /** The document for paper, which a renderer outside turns into a PDF; left out where the output has none. */
  print?(data: Data, options: OutputOptions): PrintDocument;
}

/** Identity, for the types. */
export function output<Data>(of: Output<Data>): Output<Data> {
  return of;
}

/** Data and text in one go. Throws for a format that the output does not have. */
export function write<Data>(of: Output<Data>, formatName: string, input: OutputInput, options: OutputOptions): string {
  const format = Object.hasOwn(of.formats, formatName) ? of.formats[formatName] : undefined;
  if (!format) throw new Error(`${of.name} has no format ${formatName}`);
  return format.write(of.data(input, options), options);
}
