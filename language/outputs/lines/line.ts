// The printed lines of a procedure as plain values: what is said, to what, with what, how tight, where it goes. All wording,
// numbers and units are decided here; templates only lay them out.

import type { Span } from "../../findings/finding.ts";
import type { SignalName } from "../../tables/index.ts";

/** A small line under an action. The sort lets a template set it apart; it changes no meaning. */
export interface Detail {
  readonly sort:
    | "tool"
    | "torque"
    | "passes"
    | "order"
    | "comes-away"
    | "mass"
    | "goes-to"
    | "new"
    | "discard"
    | "mark"
    | "with"
    | "hazard"
    | "wait"
    | "limits"
    | "otherwise"
    | "thread"
    | "how";
  readonly says: string;
}

export interface LineItem {
  readonly id: string;
  readonly name: string;
  readonly is: "part" | "fastener" | "joint" | "fluid" | "hazard";
  /** Pieces in this act and in all; undefined where the author gives no number. */
  readonly count: number | undefined;
  readonly of: number | undefined;
  /** It goes back in new: for certain, or if found worn. */
  readonly fresh: "certain" | "worn" | undefined;
}

export interface LineReading {
  readonly id: string;
  readonly what: string;
  readonly limits: string;
  readonly unit: string;
  readonly otherwise: readonly string[];
  /** A look or a trial without a figure: passes or fails by its words. */
  readonly isFigure: boolean;
  /** A text to compare a typed figure with; in `unit`. */
  readonly low: number | undefined;
  readonly high: number | undefined;
  /** Ids of the things whose size is chosen by it. */
  readonly chooses: readonly string[];
}

export interface LineTorque {
  /** As printed, both systems. */
  readonly text: string;
  readonly passes: string;
  readonly sequence: string;
  /** Numbers in tightening order, counted along the pattern; empty where nothing numbers them. */
  readonly order: readonly number[];
  /** How many times round: passes, or stages; 1 where neither is given. */
  readonly rounds: number;
}

interface Common {
  /** `3.2`, `R1.4`, `F2`: unique in the document. */
  readonly id: string;
  readonly half: "strip" | "refit" | "finish";
  readonly at: Span;
  /** "if cabinet heater": conditions around it. */
  readonly given: readonly string[];
}

export interface ActionLine extends Common {
  readonly is: "action";
  /** The word of the language, or the verb of the refit line. */
  readonly verb: string;
  readonly says: string;
  /** The author's own words with it. */
  readonly text: string;
  readonly items: readonly LineItem[];
  readonly details: readonly Detail[];
  readonly torque: LineTorque | undefined;
  readonly readings: readonly LineReading[];
  /** Signed by a second person, or a point to stop at. */
  readonly sign: boolean;
  /** A wait that belongs to it, s, as told: rounded up. No wait stands for a proof. */
  readonly wait: number | undefined;
  /** The bench refused it: the finding says why. */
  readonly refused: boolean;
  /** Numbers of the ops or of the performed acts that it prints. */
  readonly of: readonly number[];
}

export interface MessageLine extends Common {
  readonly is: "message";
  readonly signal: SignalName;
  readonly text: string;
  /** The things that it was declared on; "" for one that stands at its own place. */
  readonly on: string;
}

/** A hazard where it first matters in this half: before the first of its precautions and of the acts that it asks something of. */
export interface HazardLine extends Common {
  readonly is: "hazard";
  readonly hazard: HazardText;
}

/** A hazard in words. */
export interface HazardText {
  readonly id: string;
  /** As the author gave it; undefined where there is none. */
  readonly signal: SignalName | undefined;
  readonly kind: string;
  readonly kindTitle: string;
  readonly name: string;
  readonly about: string;
  /** What a hazard of its kind can do to people; "" where it hurts nobody. */
  readonly harm: string;
  /** Voltage, force and the like, as printed with their word. */
  readonly figures: readonly string[];
  readonly source: string;
  readonly keepOut: string;
  readonly wear: readonly string[];
  readonly who: string;
  readonly pushes: string;
  /** Before the line that takes a precaution of it back, or the first one on the way back. */
  readonly isTakenBack?: true;
  /** In the author's order: what is done, and what with. */
  readonly precautions: readonly {
    readonly kind: string;
    readonly title: string;
    readonly text: string;
    readonly details: readonly Detail[];
  }[];
}

export interface NoteLine extends Common {
  readonly is: "note";
  readonly says: string;
  /** It tells what a record holds, not what the procedure says. */
  readonly recorded?: true;
}

/** A picture with what is pointed at. */
export interface Shot {
  readonly at: Common["at"];
  readonly file: string;
  readonly alt: string;
  readonly points: readonly {
    readonly id: string;
    readonly name: string;
    /** Number in the parts list, or a letter for what is no part. */
    readonly mark: string;
    readonly across: number;
    readonly down: number;
  }[];
}

export interface PhotoLine extends Common, Shot {
  readonly is: "photo";
}

export interface VideoLine extends Common {
  readonly is: "video";
  readonly file: string | undefined;
  readonly says: string;
  readonly from: number | undefined;
  readonly to: number | undefined;
}

export type Line = ActionLine | HazardLine | MessageLine | NoteLine | PhotoLine | VideoLine;

/** A run of lines of one step. A step that is broken off by a called procedure has several. */
export interface LineGroup {
  readonly id: string;
  readonly number: string;
  readonly title: string;
  /** Number of the strip step that it belongs to; undefined outside any. */
  readonly step: number | undefined;
  readonly procedure: string;
  readonly lines: readonly Line[];
}
