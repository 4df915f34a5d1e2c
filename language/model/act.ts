// An act as the author wrote it: the same shape for every verb. Names are not resolved here, since a procedure may be done
// on several units and a line may be repeated for several pieces.

import type { Span } from "../findings/finding.ts";
import type { Quantity } from "../quantities/quantity.ts";

/** A name in the text, with the place of its token in the file of the act. */
export interface Name {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/** Limits of a reading. All in the unit that the author wrote. */
export interface Limits {
  /** A range or a single figure. */
  readonly value?: Quantity;
  readonly atLeast?: Quantity;
  readonly atMost?: Quantity;
  /** The condition that it holds at, `at 77 °F`. */
  readonly at?: Quantity;
}

/** What follows from a reading outside its limits. */
export type Consequence =
  | { readonly is: "renew" | "scrap"; readonly names: readonly Name[] }
  | { readonly is: "choose"; readonly names: readonly Name[]; readonly from: readonly (Name | Quantity | number)[] }
  | { readonly is: "repeat"; readonly names: readonly Name[] }
  | { readonly is: "words"; readonly text: string };

export interface Act {
  /** The word of the language: `undo`, `remove`, `lock-out`, `measure`, `note` … */
  readonly verb: string;
  /** What it is done to. For `apply C to X` the names are C and `on` is X; `put T on X` likewise. */
  readonly names: readonly Name[];
  /** `2 of X`. */
  readonly count: number | undefined;
  /** `rest of X`. */
  readonly rest: boolean;
  /** `on X`, `to X`, `onto X`; the position of `turn`. */
  readonly on: readonly Name[];
  /** `as M1`; several for `tag X as L1, L2`. */
  readonly labels: readonly string[];
  /** `to stage 2`. */
  readonly stage: number | undefined;
  /** `tighten F to 9 N·m`, `loosen X 2 turns`, `slide X 20 mm`, `heat X to 80 °C`, `wait 5 min`, `time 12 min`. */
  readonly amount: Quantity | undefined;
  /** What it is done with, one a `with`. */
  readonly tools: readonly Name[];
  readonly into: { readonly kind: "tray" | "bag" | "container"; readonly label: string } | undefined;
  readonly passes: number | undefined;
  readonly people: number | undefined;
  readonly together: boolean;
  readonly back: boolean;
  readonly fingerTight: boolean;
  readonly facing: string | undefined;
  readonly after: readonly Name[];
  readonly before: readonly Name[];
  readonly first: boolean;
  readonly last: boolean;
  readonly limits: Limits | undefined;
  readonly asFound: boolean;
  readonly consequences: readonly Consequence[];
  /** A reading's or an inspection's own name: `measure play on shaft "Play"`. */
  readonly id: Name | undefined;
  /** The string of the act, unquoted; "" when there is none. */
  readonly text: string;
  /** A second string: the alt text of a photo. */
  readonly text2: string;
  /** `photo`: what is pointed at, in percent from the left and from the top. */
  readonly points: readonly { readonly name: Name; readonly across: number; readonly down: number }[];
  /** `video … from 12:04 to 12:40`, in seconds. */
  readonly from: number | undefined;
  readonly to: number | undefined;
  /** The whole head, from its word to its last argument. */
  readonly at: Span;
  /** The same for the verb alone. */
  readonly wordEnd: number;
}

const none: readonly never[] = [];

/** An act of a verb alone, with nothing said beside it. */
export function bareAct(verb: string, at: Span, wordEnd: number): Act {
  return {
    verb,
    names: none,
    count: undefined,
    rest: false,
    on: none,
    labels: none,
    stage: undefined,
    amount: undefined,
    tools: none,
    into: undefined,
    passes: undefined,
    people: undefined,
    together: false,
    back: false,
    fingerTight: false,
    facing: undefined,
    after: none,
    before: none,
    first: false,
    last: false,
    limits: undefined,
    asFound: false,
    consequences: none,
    id: undefined,
    text: "",
    text2: "",
    points: none,
    from: undefined,
    to: undefined,
    at,
    wordEnd,
  };
}
