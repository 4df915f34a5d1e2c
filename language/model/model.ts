// The model of one unit in one build, resolved and frozen: things with their facts, and the procedures for it.
// Conditions, `like`, pieces, counts `per` and units inside parts are decided by whoever builds it; nothing later knows of them.
//
// Parts, ties (fasteners and joints), fluids and hazards share one numbering, so that a state can keep facts in plain vectors:
// parts come first, then ties, then fluids, then hazards. A piece of a thing (`cap.3`) is a thing of its own.

import type { Span } from "../findings/finding.ts";
import type { Quantity } from "../quantities/quantity.ts";
import type { ThreadSize } from "../quantities/thread-size.ts";
import type { SignalName } from "../tables/signals.ts";
import type { Act, Name } from "./act.ts";
import type { Issue, Plate } from "./instructions.ts";

/** Index of a thing in `Model.things`. */
export type ThingIndex = number;

interface ThingBase {
  readonly index: ThingIndex;
  /** Full id, with the unit part that it is inside and its piece: `gearbox/cap.3`. */
  readonly id: string;
  /** The id as declared, without prefix and piece: `cap`. Things of one declaration share it. */
  readonly declared: string;
  /** Display name, the id where the author gave none; with the piece: `Bearing cap 3`. */
  readonly name: string;
  /** `3`, `left`; "" for a thing without pieces. */
  readonly piece: string;
  /** Prefix of the unit part that it is inside: `gearbox/`; "" at the top. */
  readonly prefix: string;
  /** The declaration's name token. */
  readonly at: Span;
  /** The whole declaration, block included. */
  readonly whole: Span;
  readonly about: string;
  readonly messages: readonly Message[];
}

/** A signal word with its text, on a thing, a kind, a step. */
export interface Message {
  readonly signal: SignalName;
  readonly text: string;
  readonly at: Span;
}

/** When a thing must be new at refit, and what goes with it. `said` tells a statement on the thing itself from the unit's standing rule. */
export interface RenewRule {
  /** Undefined where only what goes with it is said. */
  readonly when: "always" | "worn" | "damaged" | "every" | undefined;
  /** What is renewed with it, whatever the reason, so that no old one stays beside a new one. */
  readonly together: "as-a-set" | "by-pairs" | undefined;
  readonly strips: number | undefined;
  readonly said: boolean;
  readonly at: Span;
}

export interface Photo {
  readonly file: string;
  readonly alt: string;
  readonly points: readonly { readonly name: Name; readonly across: number; readonly down: number }[];
  readonly at: Span;
}

export interface Part extends ThingBase {
  readonly is: "part";
  /** A word of the part-kind table, "" for none. */
  readonly kind: string;
  readonly count: number;
  readonly countUnknown: boolean;
  readonly ownPlace: boolean;
  /** `fits HOST [by JOINT-KIND]`: held by these, lets go in passing. */
  readonly hosts: readonly ThingIndex[];
  readonly fitsBy: string | undefined;
  readonly rests: readonly ThingIndex[];
  /** `matched with`: as it is said at this part; the set that it makes, see bench/matched.ts. */
  readonly matched: readonly ThingIndex[];
  readonly between: readonly [readonly ThingIndex[], readonly ThingIndex[]] | undefined;
  readonly behind: readonly ThingIndex[];
  readonly positions: readonly string[];
  readonly hangs: boolean;
  readonly into: ThingIndex | undefined;
  readonly renew: RenewRule | undefined;
  /** `lift by N people / with T`. */
  readonly liftPeople: number | undefined;
  readonly liftWith: readonly Name[];
  readonly mass: Quantity | undefined;
  /** Of a part that is a unit: the part says its mass, its unit does, or it is that of its base alone and what is inside counts beside it. */
  readonly massFrom: "part" | "unit" | "base";
  readonly size: ThreadSize | readonly Quantity[] | undefined;
  readonly supply: Quantity | undefined;
  /** Depth of the groove of an O-ring; how far from the body it is lifted. */
  readonly groove: Quantity | undefined;
  readonly reach: Quantity | undefined;
  readonly dry: boolean;
  readonly alignBy: string | undefined;
  readonly partNo: string | undefined;
  readonly standard: string | undefined;
  readonly photos: readonly Photo[];
  /** `is unit g4-gearbox`: the id of that unit. */
  readonly unit: string | undefined;
}

export interface Torque {
  /** `none`, the value, a standard table, or the author's words. */
  readonly is: "none" | "value" | "standard" | "words";
  readonly value: Quantity | undefined;
  readonly table: string | undefined;
  readonly words: string | undefined;
  /** `for 2`, `for rest`; undefined: for all. */
  readonly forCount: number | "rest" | undefined;
  readonly while: string | undefined;
  readonly at: Span;
}

export interface Tie extends ThingBase {
  readonly is: "tie";
  readonly fastener: boolean;
  /** A word of the fastener- or joint-kind table; fasteners without a kind are `screw`. */
  readonly kind: string;
  readonly count: number;
  readonly countUnknown: boolean;
  /** `joins A to B`: A hangs on B. */
  readonly lowers: readonly ThingIndex[];
  readonly uppers: readonly ThingIndex[];
  /** The part that the tie is worked on at: its first lower, else what it sits in. */
  readonly seat: ThingIndex | undefined;
  readonly into: ThingIndex | undefined;
  /** It lets go when the part is removed; from the joint-kind table. */
  readonly passing: boolean;
  /** It cannot be made again (weld, stake …), from the table. */
  readonly oneWay: boolean;
  readonly behind: readonly ThingIndex[];
  readonly positions: readonly string[];
  /** Fluids that run out when it is open. */
  readonly opens: readonly ThingIndex[];
  /** Small parts under each head: part index and how many in all. */
  readonly washers: readonly { readonly part: ThingIndex; readonly count: number }[];
  readonly renew: RenewRule | undefined;
  readonly reuseTimes: number | undefined;
  readonly size: ThreadSize | undefined;
  readonly propertyClass: string | undefined;
  readonly grade: string | undefined;
  /** Where class or grade is said; undefined where the size holds it, or nothing does. */
  readonly strengthAt: Span | undefined;
  /** Drive kind of the table and its size as a length; the size may be missing. */
  readonly drive: { readonly kind: string; readonly size: Quantity | undefined; readonly at: Span } | undefined;
  readonly torques: readonly Torque[];
  readonly stages: readonly Quantity[];
  readonly backOut: { readonly angle: Quantity; readonly until: string | undefined } | undefined;
  readonly passes: { readonly count: number; readonly shares: readonly number[] } | undefined;
  readonly sequence:
    | {
        readonly kind: string;
        readonly listed: readonly number[];
        readonly words: string | undefined;
        readonly at: Span;
      }
    | undefined;
  readonly pattern:
    | { readonly is: "circle"; readonly diameter: Quantity }
    | { readonly is: "rectangle"; readonly sides: readonly Quantity[] }
    | { readonly is: "at"; readonly points: readonly (readonly Quantity[])[] }
    | undefined;
  readonly threadLocker: Name | undefined;
  readonly lubricant: Name | undefined;
  readonly how: string | undefined;
  readonly force: Quantity | undefined;
  readonly uses: readonly Name[];
  readonly bead: { readonly width: Quantity; readonly length: Quantity | undefined } | undefined;
  readonly partNo: string | undefined;
  readonly standard: string | undefined;
  /** Any further property of the vocabulary that a figure reads (`friction`, `clamps` …), by word. */
  readonly figures: ReadonlyMap<string, Quantity | number | string>;
}

export interface Fluid extends ThingBase {
  readonly is: "fluid";
  readonly kind: string;
  readonly volume: Quantity | undefined;
  readonly amount: Quantity | undefined;
  readonly drainsAt: readonly ThingIndex[];
  readonly fillsAt: readonly ThingIndex[];
  readonly bleedsAt: readonly ThingIndex[];
  /** Must be caught: by its kind or by its own statement. */
  readonly recover: boolean;
  readonly recoverWith: Name | undefined;
  /** The bill's name for it. */
  readonly uses: Name | undefined;
  readonly path: readonly ThingIndex[];
  /** It is filled again: it has a kind, `fills at` or `uses`. */
  readonly filled: boolean;
}

export interface Precaution {
  /** Position among all precautions of the model: facts about it are kept under this number. */
  readonly number: number;
  /** A word of the precaution table. */
  readonly kind: string;
  readonly hazard: ThingIndex;
  readonly behind: readonly ThingIndex[];
  readonly text: string;
  readonly wait: Quantity | undefined;
  readonly tools: readonly Name[];
  readonly limits: { readonly value?: Quantity; readonly atLeast?: Quantity; readonly atMost?: Quantity } | undefined;
  readonly back: string;
  readonly at: Span;
}

export interface Hazard extends ThingBase {
  readonly is: "hazard";
  readonly kind: string;
  readonly signal: SignalName | undefined;
  readonly source: string | undefined;
  readonly on: readonly ThingIndex[];
  readonly precautions: readonly Precaution[];
  readonly pushes: readonly ThingIndex[];
  /** voltage, capacitance, bleeder, force, pressure, temperature, mass, flux, keep-out … by word. */
  readonly figures: ReadonlyMap<string, Quantity>;
  readonly wear: readonly Name[];
  readonly role: Name | undefined;
}

export type Thing = Part | Tie | Fluid | Hazard;

/** What an author states about order, at a unit, in a refit block, or behind an act. */
export interface Statement {
  readonly names: readonly Name[];
  readonly after: readonly Name[];
  readonly before: readonly Name[];
  readonly first: boolean;
  readonly last: boolean;
  readonly at: Span;
}

/** One thing that sets a build apart from the plain one. */
export type BuildChoice =
  /** A variant or an option, by its name. */
  | { readonly is: "named"; readonly name: string }
  /** A reading that fails, by its name. */
  | { readonly is: "fails"; readonly name: string }
  | { readonly is: "reading-before-fails" }
  /** An optional block by its title, "" without. */
  | { readonly is: "optional"; readonly title: string }
  /** Of a free choice the n-th way, from 1. */
  | { readonly is: "choice"; readonly number: number };

export interface Condition {
  /** `bore fails`, `seal removed`, `heater`. */
  readonly states: readonly { readonly name: Name; readonly state: "" | "fails" | "removed" }[];
  readonly any: boolean;
  /** `unless` turns it round. */
  readonly unless: boolean;
}

/** A thing that the unit declares and that is not there in this build, with the condition that does not hold. */
export interface Absence {
  readonly name: string;
  readonly condition: Condition;
  readonly at: Span;
}

/**
 * A line of a procedure's body: an act, or a block of such. Procedures are the same in every build: conditions, optional blocks and
 * free choices are decided while performing, from `Model.chosen`, the pieces at hand and what was removed.
 */
export type Entry = { readonly is: "act"; readonly act: Act } | BlockEntry;

export interface BlockEntry {
  readonly is: "block";
  readonly kind: "step" | "repeat" | "refit" | "instead" | "if" | "otherwise" | "optional" | "either" | "choice";
  /** Id of a step, "" where it has none; the procedure of `refit by`. */
  readonly name: string;
  readonly title: string;
  /** The pieces of `repeat for`. */
  readonly over: readonly string[];
  readonly body: readonly Entry[];
  readonly condition: Condition | undefined;
  /** What `Model.chosen` calls it: of an optional block, of one choice of an `either` (whose body holds its choices). */
  readonly key: string;
  /** The head of the block, and all of it with its braces. */
  readonly at: Span;
  readonly whole: Span;
}

export interface Aim {
  readonly is: "all-apart" | "all-in" | "none" | "off" | "apart";
  readonly names: readonly Name[];
  readonly except: readonly Name[];
  readonly at: Span;
}

export interface Need {
  /** A procedure of this unit, or words. */
  readonly names: readonly Name[];
  readonly words: string | undefined;
  readonly then: string | undefined;
  readonly at: Span;
}

export type Start =
  | { readonly is: "without"; readonly count: number | undefined; readonly names: readonly Name[]; readonly at: Span }
  | { readonly is: "drained"; readonly names: readonly Name[]; readonly at: Span }
  | { readonly is: "with"; readonly precaution: string; readonly names: readonly Name[]; readonly at: Span }
  | { readonly is: "on-bench"; readonly at: Span };

export interface Leave {
  readonly is: "out" | "finger-tight" | "off" | "drained" | "turned";
  readonly count: number | undefined;
  readonly names: readonly Name[];
  readonly words: string | undefined;
  readonly until: Name | undefined;
  readonly at: Span;
}

export interface Task {
  readonly id: string;
  readonly title: string;
  readonly does: readonly Name[];
  readonly at: Span;
}

export interface Procedure {
  readonly id: string;
  readonly title: string;
  readonly unit: string;
  readonly at: Span;
  readonly whole: Span;
  readonly aims: readonly Aim[];
  readonly needs: readonly Need[];
  readonly starts: readonly Start[];
  readonly leaves: readonly Leave[];
  readonly tasks: readonly Task[];
  readonly bases: readonly Name[];
  /** As the author says it, and where; undefined where he does not: `bench/crew.ts` knows what holds then. */
  readonly crew: number | undefined;
  readonly crewAt: Span | undefined;
  readonly role: Name | undefined;
  readonly revision: string | undefined;
  /** Who wrote it and who answers for it. */
  readonly issue: Issue;
  readonly video: string | undefined;
  readonly about: string;
  readonly messages: readonly Message[];
  readonly photos: readonly Photo[];
  readonly body: readonly Entry[];
  readonly finish: readonly Entry[];
  /** Some of its head stands in a condition: it is read for each build. */
  readonly conditional: boolean;
  /** The refit block of the procedure itself. */
  readonly refit: readonly Entry[];
  readonly refitAt: Span | undefined;
  /** `refit by PROCEDURE`. */
  readonly refitBy: Name | undefined;
  /** Where that name stands. */
  readonly refitByAt: Span | undefined;
}

/** A part that is a unit with positions of its own; the first is how it is mounted. */
export interface Frame {
  readonly host: ThingIndex;
  readonly positions: readonly string[];
}

/** Names of one unit as seen from inside it: every name and `name.piece` to the things that it stands for, in declared order. */
export type Scope = ReadonlyMap<string, readonly ThingIndex[]>;

export interface Model {
  /** Id and display name of the unit. */
  readonly unit: string;
  readonly title: string;
  readonly at: Span;
  /** "" where the unit has one build only; else what is chosen, as `late-62 with heater`. */
  readonly build: string;
  /** What that name is made of, for those who say it in another language. */
  readonly choices: readonly BuildChoice[];
  /** The chosen variants, options, failing readings (`bore fails`) and taken optional blocks. */
  readonly chosen: ReadonlySet<string>;
  /** Titles of variants and options, by id; those of units inside it as well. */
  readonly choiceTitles: ReadonlyMap<string, string>;
  readonly things: readonly Thing[];
  readonly parts: readonly Part[];
  readonly ties: readonly Tie[];
  readonly fluids: readonly Fluid[];
  readonly hazards: readonly Hazard[];
  readonly precautions: readonly Precaution[];
  readonly base: readonly ThingIndex[];
  /** The first is how it arrives; empty where the author names none. */
  readonly positions: readonly string[];
  /** By prefix: the units inside parts that have positions of their own. */
  readonly frames: ReadonlyMap<string, Frame>;
  readonly mass: Quantity | undefined;
  readonly revision: string | undefined;
  /** Maker, serial numbers, what it is for, what to do when it goes wrong. */
  readonly plate: Plate;
  readonly about: string;
  readonly temporaries: ReadonlyMap<string, { readonly name: string; readonly at: Span }>;
  readonly orders: readonly Statement[];
  /** By prefix: "" for the unit itself, `gearbox/` for a unit inside it. */
  readonly scopes: ReadonlyMap<string, Scope>;
  /** By prefix: what is declared there for other builds only, by id. Prefixes without such are left out. */
  readonly absent: ReadonlyMap<string, ReadonlyMap<string, Absence>>;
  /** Hazard kinds that the author dismissed, with the reason. */
  readonly dismissed: ReadonlyMap<string, { readonly why: string; readonly at: Span }>;
  /** `warn … on KIND or THING`, already laid on the things (Thing.messages); kept for the reference. */
  readonly standingMessages: readonly Message[];
  readonly torqueStandard: string | undefined;
  /** All procedures that can be reached from the file, of this unit and of the units inside it, by id; the same in every build. */
  readonly procedures: ReadonlyMap<string, Procedure>;
  readonly library: Library;
}

export interface Tool {
  readonly id: string;
  readonly name: string;
  readonly kind: string | undefined;
  readonly range: Quantity | undefined;
  readonly capacity: Quantity | undefined;
  readonly accuracy: number | undefined;
  readonly count: number | undefined;
  readonly calibration: string | undefined;
  /** Of a sling: its legs, and their angle to the horizontal. */
  readonly legs: number | undefined;
  readonly angle: Quantity | undefined;
  readonly about: string;
  readonly at: Span;
}

export interface Consumable {
  readonly id: string;
  readonly name: string;
  readonly pack: Quantity | { readonly pieces: number } | undefined;
  readonly shelfLife: Quantity | undefined;
  readonly lead: Quantity | undefined;
  readonly hazard: Name | undefined;
  readonly partNo: string | undefined;
  readonly standard: string | undefined;
  readonly about: string;
  readonly at: Span;
}

/** A hazard at the top of a file, as far as a consumable that brings it needs it. */
export interface HazardType {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  /** As the author gave it; undefined where there is none. */
  readonly signal: SignalName | undefined;
  readonly about: string;
  readonly wear: readonly Name[];
  readonly precautions: readonly { readonly kind: string; readonly text: string }[];
  readonly at: Span;
}

/** What the workshop has, over all files that can be reached. */
export interface Library {
  /** Hazards at the top of a file by id: what consumables bring, and types for `like`. */
  readonly hazards: ReadonlyMap<string, HazardType>;
  readonly tools: ReadonlyMap<string, Tool>;
  readonly consumables: ReadonlyMap<string, Consumable>;
  readonly roles: ReadonlyMap<string, { readonly name: string; readonly at: Span }>;
  readonly torqueTables: ReadonlyMap<
    string,
    {
      readonly name: string;
      readonly rows: readonly { readonly size: ThreadSize; readonly torque: Quantity }[];
      readonly at: Span;
    }
  >;
}
