// A document for paper as plain data: blocks in their order, with every word and number decided. The one template prints it and
// decides nothing but places. Texts are data to it: what an author writes can never be read as anything else.

import type { SignalName } from "../../tables/index.ts";

/** A piece of a text. `cut`: one long word that may break anywhere. */
export interface Run {
  readonly t: string;
  readonly b?: true;
  readonly cut?: true;
  /** Its language, where it is another than the document's. */
  readonly l?: string;
}
export type Words = string | readonly Run[];

/** A place to write: what goes there, and what stands behind the line. */
export interface Blank {
  readonly label: Words;
  readonly after: string;
  /** Where one of a few words is struck or ringed instead of a figure written. */
  readonly choices?: readonly string[];
  /** mm. */
  readonly width: number;
}

export interface Heading {
  readonly is: "heading";
  readonly level: 1 | 2 | 3;
  readonly says: Words;
  /** Begins a page. */
  readonly page: boolean;
  /** Stands in the list of contents; all stand among the bookmarks. */
  readonly listed: boolean;
  /** A code beside it. */
  readonly code?: { readonly svg: string; readonly alt: string };
}
export interface Par {
  readonly is: "par";
  readonly says: Words;
  /** `frame` for what must be seen first, `bar` for what holds throughout, `lead` for what stays with the next block. */
  readonly look?: "frame" | "bar" | "note" | "lead";
}
export interface List {
  readonly is: "list";
  readonly items: readonly Words[];
}
export interface Facts {
  readonly is: "facts";
  readonly rows: readonly (readonly [Words, Words])[];
}
export interface Table {
  readonly is: "table";
  /** "" where the heading just above says the same. */
  readonly caption: Words;
  readonly heads: readonly Words[];
  /** Shares of the width. */
  readonly widths: readonly number[];
  readonly aligns: readonly ("left" | "right")[];
  readonly rows: readonly (readonly Words[])[];
  /** A row of it is so high that it may go over a page's end. */
  readonly high: boolean;
  /** So short that it stays on one page. */
  readonly whole: boolean;
  /** Points. */
  readonly size: number;
}
export interface Panel {
  readonly is: "panel";
  readonly signal: SignalName | "none";
  readonly word: string;
  /** With the safety alert symbol: a person may be hurt. */
  readonly hurts: boolean;
  /** The sign and what stands under it; an ornament: the words say it. */
  readonly sign?: { readonly svg: string; readonly under: string };
  readonly title: Words;
  readonly lines: readonly Words[];
  readonly precautions?: { readonly head: string; readonly items: readonly Words[] };
  /** Stays on the page of the next block: the line that it belongs to. */
  readonly keep: boolean;
  readonly high: boolean;
}
export interface Picture {
  readonly is: "picture";
  /** Name of a file in `files`. */
  readonly file: string;
  readonly alt: string;
  readonly caption: Words;
  /** Where each number's line ends on the picture, as shares of its width and height. */
  readonly points: readonly { readonly mark: string; readonly across: number; readonly down: number }[];
}
export interface Drawn {
  readonly is: "drawing";
  readonly svg: string;
  readonly alt: string;
  readonly title: Words;
  /** Width as printed, points. */
  readonly width: number;
}
export interface ActionRow {
  /** Name for links. */
  readonly id: string;
  readonly number: string;
  readonly says: Words;
  /** What is at hand in doing it: tool, torque, order, bag. */
  readonly side: readonly Words[];
  readonly under: readonly Words[];
  readonly blanks: readonly Blank[];
  readonly drawing?: Drawn;
  readonly high: boolean;
}
export interface Actions {
  readonly is: "actions";
  readonly rows: readonly ActionRow[];
}
export interface Blanks {
  readonly is: "blanks";
  readonly rows: readonly Blank[];
}
export interface Index {
  readonly is: "index";
  readonly rows: readonly {
    readonly name: Words;
    readonly lines: readonly { readonly id: string; readonly line: string }[];
  }[];
}
/** Boxes beside one another, each with its number: a place for each part. */
export interface Places {
  readonly is: "places";
  readonly boxes: readonly { readonly number: string; readonly name: Words; readonly facts: readonly Words[] }[];
}
/** Pages that lie on their side. */
export interface Lying {
  readonly is: "lying";
  readonly blocks: readonly Block[];
}
/** Labels at their places on a sheet; lengths in mm. */
export interface LabelSheet {
  readonly is: "labels";
  readonly left: number;
  readonly top: number;
  readonly columns: number;
  readonly rows: number;
  readonly width: number;
  readonly height: number;
  readonly gapX: number;
  readonly gapY: number;
  readonly labels: readonly { readonly head: Words; readonly mark: string; readonly lines: readonly Words[] }[];
}

export type Block =
  | Heading
  | Par
  | List
  | Facts
  | Table
  | Panel
  | Picture
  | Drawn
  | Actions
  | Blanks
  | Index
  | Places
  | Lying
  | LabelSheet;

export interface PrintDocument {
  readonly title: string;
  readonly subtitle: string;
  /** BCP 47. */
  readonly lang: string;
  /** Year, month, day, where the date given is one. */
  readonly date?: readonly [number, number, number];
  /** mm, as it lies. */
  readonly page: { readonly width: number; readonly height: number; readonly margin: "book" | "narrow" | "none" };
  /** Behind a label, with the blank that a language puts before it. */
  readonly colon: string;
  /** On every page of a draft; "" where it is none. */
  readonly draftMark: string;
  readonly foot: string;
  /** Over the list of contents; "" for a document without. */
  readonly contents: string;
  /** Under the title, before the contents. */
  readonly front: readonly Block[];
  readonly blocks: readonly Block[];
  /** Pictures by the names that the blocks use. */
  readonly files: readonly { readonly name: string; readonly base64: string; readonly shownAs: string }[];
}

/** What of a page is left for the text, mm. */
export function roomOf({ width, height, margin }: PrintDocument["page"]): {
  readonly width: number;
  readonly height: number;
} {
  return margin === "book"
    ? { width: width - 43, height: height - 46 }
    : margin === "narrow"
      ? { width: width - 24, height: height - 30 }
      : { width, height };
}
