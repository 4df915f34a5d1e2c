// What the hands do in an act, as data: whether it may move a thing, whether it handles the thing as such, whether it only tells or looks.
// Where a warning stands before an act, and which act asks for precautions though it changes nothing, follow from it. A verb that is not
// listed (a precaution, a call) does what `usual` says.

export type ActKind = {
  /**
   * It may move or free what it names, or take its weight: what warns of a load stands before it. Of an act in the author's own words
   * nobody knows, so that it may.
   */
  readonly moves: boolean;
  /** It is about the thing as such, so that the thing's own messages stand before it even where nothing came of it. */
  readonly handles: boolean;
  /** Hands or tools are on what it names though nothing is changed by it: precautions are asked for. */
  readonly touches: boolean;
  /** It tells, looks or runs: what it names is not touched by that. */
  readonly isTold: boolean;
  readonly why: string;
};

const usual: ActKind = {
  moves: true,
  handles: false,
  touches: false,
  isTold: false,
  why: "what it changes is told by the bench, and it may move what it names",
};

const apart = { ...usual, handles: true, why: "it takes apart, moves or puts together" },
  onIt = { ...usual, moves: false, touches: true, why: "a hand is on it, and it stays where it is, held as it is" },
  atWork = { ...usual, touches: true, why: "a hand or a tool works on it, and it may give" },
  closing = { ...apart, moves: false, why: "an end is closed or opened where it is" },
  told = { ...usual, isTold: true, why: "it is for the reader or the record" };

const table = {
  undo: apart,
  loosen: apart,
  "back-out": apart,
  remove: apart,
  lift: apart,
  slide: apart,
  swing: apart,
  open: apart,
  fit: apart,
  tighten: apart,
  press: apart,
  support: { ...apart, why: "its weight is taken" },
  release: { ...apart, why: "its weight is let go" },
  hold: { ...apart, moves: false, why: "it is kept from turning: nothing is carried, nothing comes free" },
  rotate: { ...atWork, handles: true, why: "a shaft is turned by hand" },
  mark: onIt,
  tag: onIt,
  clean: onIt,
  apply: onIt,
  put: { ...onIt, why: "something is laid on it" },
  take: { ...usual, moves: false, why: "what was laid on for the work comes off; the thing below stays" },
  set: atWork,
  work: atWork,
  heat: atWork,
  align: atWork,
  cap: closing,
  uncap: closing,
  measure: { ...onIt, isTold: true, why: "an instrument is held to what it is on; what else it names is told" },
  inspect: { ...told, moves: false, why: "to look is no touch" },
  test: { ...told, why: "it is run, mostly under power, with nobody's hand on it" },
  note: told,
  photo: told,
  video: told,
  time: told,
  people: told,
  "second-check": told,
  "hold-point": told,
  danger: told,
  warning: told,
  caution: told,
  notice: told,
  wait: told,
  do: { ...told, why: "each act of the procedure that is done speaks for itself" },
  turn: usual,
  drain: usual,
  recover: usual,
  fill: usual,
  bleed: usual,
  purge: usual,
  evacuate: usual,
  restore: usual,
  renew: usual,
  reuse: usual,
  scrap: usual,
} satisfies Record<string, ActKind>;

export const actKinds: Readonly<Record<string, ActKind>> = table;

/** What a verb does; of one that is no listed act, what is usual. */
export const actKind = (verb: string): ActKind => (Object.hasOwn(table, verb) ? actKinds[verb]! : usual);
