// What performing leaves behind: acts, events, problems. Data only; checks, refit, manual and editor read it.

import type { Span } from "../findings/finding.ts";
import type { Act } from "../model/act.ts";
import type { Entry, Leave, Model, Procedure, Statement, Task, ThingIndex } from "../model/model.ts";
import type { State } from "./state.ts";

/** A step as performed: one of a repeat has several. */
export interface StepRun {
  readonly number: number;
  readonly procedure: Procedure;
  /** Id of the step, "" where it has none. */
  readonly name: string;
  readonly title: string;
  readonly pieces: readonly string[];
  /** The part that its procedure is done on, `do PROCEDURE on PART`. */
  readonly on: ThingIndex | undefined;
  readonly at: Span;
  /** The step of the strip whose refit block it stands in. */
  readonly within?: StepRun;
}

/** Where an act stands: which procedure, on which unit part, for which pieces. */
export interface Around {
  readonly procedure: Procedure;
  /** `gearbox/` while a procedure is done on a part that is a unit. */
  readonly prefix: string;
  readonly pieces: readonly string[];
  /** The part that the procedure is done on; undefined for one that is done on the whole unit. */
  readonly on: ThingIndex | undefined;
  /** Undefined outside any step. */
  readonly step: StepRun | undefined;
  /** The largest that a procedure around says; undefined where none does. */
  readonly crew: number | undefined;
  /** The parting that put the unit part on the bench, for a procedure that `starts on bench`; else undefined. */
  readonly bench: number | undefined;
  /** Conditions that hold here by the blocks around, outermost first. For the reader: outputs word them. */
  readonly given: readonly Given[];
}

/** A condition that an act stands under. `title`: what the author calls the variant, option, reading or thing; its id where he does not. */
export type Given =
  | {
      readonly is: "condition";
      readonly unless: boolean;
      readonly any: boolean;
      readonly states: readonly {
        readonly id: string;
        readonly title: string;
        readonly state: "" | "fails" | "removed";
      }[];
    }
  /** The pieces of `repeat for` that a line is for, or is not for. */
  | { readonly is: "pieces"; readonly unless: boolean; readonly any: boolean; readonly pieces: readonly string[] }
  /** An `optional` block with its title. */
  | { readonly is: "optional"; readonly title: string }
  /** An `otherwise` that follows a reading. */
  | { readonly is: "otherwise" };

/**
 * out: a tie undone · slack: loosened or backed out · off: a parting of two sides · aside, back · drained · capped, uncapped ·
 * stands, lapses: a precaution · held, let-go: a holder from `support` to `release` · gripped: `hold`, kept from turning for the acts of
 * its step on that thing, before which its refit stands too · met: two sides brought together in a strip · in: a tie made in a strip.
 */
export type EventKind =
  | "out"
  | "slack"
  | "off"
  | "aside"
  | "back"
  | "drained"
  | "capped"
  | "uncapped"
  | "stands"
  | "lapses"
  | "held"
  | "let-go"
  | "gripped"
  | "met"
  | "in";

export interface Event {
  readonly index: number;
  readonly kind: EventKind;
  /** The thing that it happened to; for `off` the first of those named. */
  readonly thing: ThingIndex;
  /** All things named at once (`together`). */
  readonly things: readonly ThingIndex[];
  /** Pieces of the tie, or of the part. */
  readonly count: number;
  readonly act: Act;
  readonly around: Around;
  /** Events that made true what this one asked for. */
  readonly needs: readonly number[];
  /** off, met: the parts that moved (all that came along). */
  readonly moved: readonly ThingIndex[];
  /** off: the sub-assembly that they left. met: the one they came to. */
  readonly from: number;
  /** The state just before. */
  readonly before: State;
  /** stands: number of the precaution. lapses: those that stood. */
  readonly precautions: readonly number[];
  /** Hazards whose precautions it asked for. */
  readonly hazards: readonly ThingIndex[];
  /** Not done by any act: taken as done after a refusal. */
  readonly assumed: boolean;
}

/** One fact that stood against an act, or that the bench found amiss. `rule` is the code of the check that words it. */
export interface Reason {
  readonly rule: string;
  /** What could not be worked on: the item of the act, or one that comes along with it. */
  readonly thing: ThingIndex | undefined;
  /** What stands in the way, in order of importance, and how many of each are still in. */
  readonly by: readonly ThingIndex[];
  readonly left: readonly number[];
  /** Positions asked for, precautions missing (by kind), labels of marks, words: what the rule needs to say it. */
  readonly words: readonly string[];
  readonly numbers: readonly number[];
  /** Where the fact is declared, or was made so. */
  readonly at: Span | undefined;
  /** The whole chain from the thing to the base, tie by tie. */
  readonly chain: readonly ThingIndex[];
}

/** What the bench found: a refused act with all its reasons, or a state that must not be. The check of the first reason's rule makes it a finding. */
export interface Problem {
  readonly rule: string;
  readonly phase: "strip" | "refit" | "declared";
  readonly act: Act | undefined;
  readonly around: Around | undefined;
  /** The line to blame. */
  readonly at: Span;
  /** The things that it is about: one finding a pair. */
  readonly about: readonly ThingIndex[];
  readonly reasons: readonly Reason[];
}

/** An act as performed, with the bench before and after it. */
export interface Performed {
  readonly act: Act;
  readonly around: Around;
  readonly things: readonly ThingIndex[];
  /** Things that hands or a tool are on though nothing is undone: the part that grease is applied to, that is cleaned or marked. */
  readonly handled: readonly ThingIndex[];
  /** The events that it made: from, up to and without `to`. */
  readonly from: number;
  readonly to: number;
  readonly before: State;
  readonly after: State;
  readonly refused: boolean;
}

/** A refit block met on the way, to be woven into the computed refit. */
export interface RefitNote {
  readonly entries: readonly Entry[];
  readonly around: Around;
  /** The step that it stands in; undefined: the procedure's own block, which covers the events from..to. */
  readonly step: StepRun | undefined;
  readonly procedure: Procedure;
  readonly from: number;
  readonly to: number;
  /** `refit by PROCEDURE`. */
  readonly by: string | undefined;
  readonly at: Span;
}

/**
 * What a refit line does. `lift`: a precaution is taken away (its `back` text); `stand`: it is put up again (the inverse of `lapses`);
 * `release` is the inverse of `held`, `support` that of `let-go`, `hold` the mirrored `gripped`.
 */
export type RefitVerb =
  | "fit"
  | "tighten"
  | "finger-tighten"
  | "back"
  | "aside"
  | "fill"
  | "cap"
  | "uncap"
  | "lift"
  | "stand"
  | "undo"
  | "remove"
  | "hold"
  | "support"
  | "release"
  | "written";

/** An act of the refit: the inverse of an event, or written by the author, or both (claimed). */
export interface RefitOp {
  readonly number: number;
  readonly verb: RefitVerb;
  /** What the author wrote, for claimed and written ones. */
  readonly act: Act | undefined;
  readonly event: Event | undefined;
  readonly things: readonly ThingIndex[];
  readonly count: number;
  readonly around: Around;
  /** Higher comes first among those that may come next. */
  readonly rank: number;
  /** The text to blame. */
  readonly at: Span;
  /** The author gave it a place (`after`, `first` …). */
  readonly placed: boolean;
}

/** The refit as a partial order, and the line of it that is printed. */
export interface RefitOrder {
  readonly ops: readonly RefitOp[];
  /** `later[a]` lists every op that must come after op a, and `why[a][i]` says why. */
  readonly later: readonly (readonly number[])[];
  readonly why: readonly (readonly string[])[];
  /** Statements of the author against the bench or each other. */
  readonly problems: readonly Problem[];
  /** Ops by number, in printed order. */
  readonly line: readonly number[];
}

export interface TurnedInside {
  readonly part: ThingIndex;
  readonly to: string;
}

export interface RefitPerformed {
  readonly op: RefitOp;
  /** As in `Performed`. */
  readonly handled: readonly ThingIndex[];
  /** The unit is turned to this position before it. */
  readonly turn: string | undefined;
  /** So is this part, which is a unit of its own. */
  readonly turnInside: TurnedInside | undefined;
  readonly before: State;
  readonly after: State;
}

/** Something that is left otherwise than it was: the statement, what of it is meant in this build, and the procedure that says so. */
export interface Promised {
  readonly leave: Leave;
  /** How they are left, by what they are. */
  readonly is: Leave["is"];
  readonly things: readonly ThingIndex[];
  readonly by: Procedure;
}

/** One procedure performed in one build: strip, refit, end. */
export interface Performance {
  readonly model: Model;
  readonly procedure: Procedure;
  /** The task whose steps alone were performed; undefined for the whole. */
  readonly task?: Task;
  readonly start: State;
  readonly strip: readonly Performed[];
  readonly events: readonly Event[];
  readonly notes: readonly RefitNote[];
  readonly stripEnd: State;
  /** Undefined where the refit is a written procedure, or the procedure itself builds up. */
  readonly order: RefitOrder | undefined;
  /** The computed refit as performed, in printed order; of a written one see `written`. */
  readonly refit: readonly RefitPerformed[];
  /** Acts of `refit by`, or of a procedure that builds up (`aim all in`). */
  readonly written: readonly Performed[];
  /** Acts of `finish`. */
  readonly finish: readonly Performed[];
  /** What it leaves, and what the procedures that it does leave. */
  readonly leaves: readonly Promised[];
  /** The unit is turned back to this position at the end of the refit. */
  readonly endTurn: string | undefined;
  readonly end: State;
  readonly problems: readonly Problem[];
}

export type { Statement };
