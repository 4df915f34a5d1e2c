// The manual as plain data: every sentence, number, unit and order is decided here, before any template. HTML takes it now; another
// renderer takes the same.

import type { BillRow } from "../bill/data.ts";
import type { Provenance } from "../draft.ts";
import type { Drawing } from "../draw/drawing.ts";
import type { HazardText, LineGroup, Shot } from "../lines/line.ts";
import type { SignalName } from "../../tables/index.ts";
import type { SheetTable } from "../sheet/sheet-data.ts";
import type { SectionName } from "./sections.ts";
import type { ChapterSheets } from "./sheets.ts";
import type { Stores } from "./stores-hazards.ts";
import type { Plan } from "./tablet/plan.ts";
import type { ToolTables } from "./tool-tables.ts";

export interface Fact {
  readonly label: string;
  readonly value: string;
  /** The author's words, set apart from ours. */ readonly own: boolean;
}

export interface SafetyMessage {
  readonly signal: SignalName;
  readonly on: string;
  readonly text: string;
}

export interface PartRow {
  readonly number: number;
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  readonly count: string;
  readonly mass: string;
  readonly size: string;
  readonly partNo: string;
  readonly standard: string;
  readonly fresh: string;
}

export interface TieRow {
  readonly id: string;
  readonly name: string;
  /** Of a joint; "" for a fastener, which its size and tool tell. */
  readonly kind: string;
  readonly count: string;
  /** Thread and class, standard, part number. */
  readonly size: string;
  readonly tool: string;
  readonly torque: string;
  readonly passes: string;
  readonly joins: string;
  readonly fresh: string;
}

export interface FluidRow {
  readonly name: string;
  readonly kind: string;
  readonly volume: string;
  readonly drainsAt: string;
  readonly fillsAt: string;
  readonly bleedsAt: string;
  readonly uses: string;
  readonly waste: string;
}

/** One procedure: strip, refit and what comes last. */
export interface Chapter {
  /** Before the ids of its lines; "" where the manual has one procedure only. */
  readonly prefix: string;
  readonly title: string;
  readonly about: string;
  /** `alone`: of a procedure, that only its strip is done before; "" else. */
  readonly needs: readonly { readonly words: string; readonly alone: string; readonly then: string }[];
  readonly messages: readonly SafetyMessage[];
  /** Of the procedure as a whole. */
  readonly pictures: readonly Shot[];
  readonly strip: readonly LineGroup[];
  readonly refit: readonly LineGroup[];
  readonly finish: readonly LineGroup[];
  readonly refitIs: "computed" | "written" | "none";
  /** Bolt circles by the id of the line: pieces in the order of tightening. */
  readonly patterns: Readonly<Record<string, readonly number[]>>;
  /** QR codes of the steps by the id of the group; none where no address is set. */
  readonly codes: Readonly<Record<string, Drawing>>;
  /** The sheets for the bench that belong to it. */
  readonly sheets: ChapterSheets;
  /** Drawings of the groups that are tightened in an order, by the number of the line. */
  readonly drawings: Readonly<Record<string, Drawing>>;
}

export interface ManualDocument {
  readonly format: "stripdown-manual";
  readonly version: 1;
  readonly lang: string;
  readonly title: string;
  readonly subtitle: string;
  readonly provenance: Provenance;
  /** The sentence of a draft, "" for what is none. */
  readonly draft: string;
  /** Says that nobody who does the work in this language has read the catalogue; empty for one that was read. */
  readonly review: readonly string[];
  readonly identification: readonly Fact[];
  readonly who: readonly string[];
  readonly safety: {
    readonly messages: readonly SafetyMessage[];
    readonly hazards: readonly HazardText[];
    /** What the consumables of the bill bring with them, and which of them. */
    readonly stores: Stores;
    /** Findings set aside by the authors: what, where, why. */
    readonly allowed: readonly { readonly what: string; readonly where: string; readonly why: string }[];
    /** `unit`: whose author dismissed it, where there are several; a kind that one has not another may have. */
    readonly dismissed: readonly { readonly kind: string; readonly unit: string; readonly why: string }[];
    readonly notConsidered: readonly string[];
  };
  readonly purpose: { readonly intended: readonly string[]; readonly wrong: readonly string[] };
  readonly mishaps: readonly { readonly what: string; readonly then: string }[];
  /** Ways of the fluids, and what comes off before what. */
  readonly paths: readonly Drawing[];
  readonly diagrams: readonly Drawing[];
  /** Things by name with the lines that work on them. */
  readonly index: readonly {
    readonly name: string;
    readonly lines: readonly { readonly id: string; readonly line: string }[];
  }[];
  readonly works: readonly { readonly name: string; readonly text: string }[];
  /** Pictures of parts, for the reader of the parts list. */
  readonly pictures: readonly Shot[];
  readonly tools: ToolTables;
  readonly bill: readonly BillRow[];
  readonly units: number;
  readonly parts: readonly PartRow[];
  readonly fasteners: readonly TieRow[];
  readonly joints: readonly TieRow[];
  readonly fluids: readonly FluidRow[];
  readonly chapters: readonly Chapter[];
  /** What every line asks for and what has to come before it, for whoever keeps a record. */
  readonly plan: Plan;
  /** Those that are shown; one without content is not. */
  readonly sections: readonly SectionName[];
  /** It is filled in by hand: the page keeps nothing. */
  readonly forPen: boolean;
  /** What a record adds to the way back of one unit. */
  readonly book?: {
    readonly facts: readonly Fact[];
    readonly lead: readonly string[];
    /** What no single line is about. */
    readonly whole: readonly string[];
    /** All that is left open, by the procedure that it belongs to. */
    readonly closing: readonly (SheetTable & { readonly of: string })[];
  };
}
