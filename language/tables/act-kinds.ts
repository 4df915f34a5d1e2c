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
  /** What is done, as it stands before the thing in a sentence: "setting Gap". Empty of a verb that is not listed. */
  readonly doing: string;
};

const usual: ActKind = {
  moves: true,
  handles: false,
  touches: false,
  isTold: false,
  why: "what it changes is told by the bench, and it may move what it names",
  doing: "",
};

const apart = { ...usual, handles: true, why: "it takes apart, moves or puts together" },
  onIt = { ...usual, moves: false, touches: true, why: "a hand is on it, and it stays where it is, held as it is" },
  atWork = { ...usual, touches: true, why: "a hand or a tool works on it, and it may give" },
  closing = { ...apart, moves: false, why: "an end is closed or opened where it is" },
  told = { ...usual, isTold: true, why: "it is for the reader or the record" };

const table = {
  undo: { ...apart, doing: "undoing" },
  loosen: { ...apart, doing: "loosening" },
  "back-out": { ...apart, doing: "backing out" },
  remove: { ...apart, doing: "removing" },
  lift: { ...apart, doing: "lifting" },
  slide: { ...apart, doing: "sliding" },
  swing: { ...apart, doing: "swinging" },
  open: { ...apart, doing: "opening" },
  fit: { ...apart, doing: "fitting" },
  tighten: { ...apart, doing: "tightening" },
  press: { ...apart, doing: "pressing" },
  support: { ...apart, why: "its weight is taken", doing: "supporting" },
  release: { ...apart, why: "its weight is let go", doing: "letting go" },
  hold: {
    ...apart,
    moves: false,
    why: "it is kept from turning: nothing is carried, nothing comes free",
    doing: "holding",
  },
  rotate: { ...atWork, handles: true, why: "a shaft is turned by hand", doing: "rotating" },
  mark: { ...onIt, doing: "marking" },
  tag: { ...onIt, doing: "tagging" },
  clean: { ...onIt, doing: "cleaning" },
  apply: { ...onIt, doing: "applying to" },
  put: { ...onIt, why: "something is laid on it", doing: "laying on" },
  take: {
    ...usual,
    moves: false,
    why: "what was laid on for the work comes off; the thing below stays",
    doing: "taking off",
  },
  set: { ...atWork, doing: "setting" },
  work: { ...atWork, doing: "working on" },
  heat: { ...atWork, doing: "heating" },
  align: { ...atWork, doing: "aligning" },
  cap: { ...closing, doing: "capping" },
  uncap: { ...closing, doing: "uncapping" },
  measure: {
    ...onIt,
    isTold: true,
    why: "an instrument is held to what it is on; what else it names is told",
    doing: "measuring",
  },
  inspect: { ...told, moves: false, why: "to look is no touch", doing: "inspecting" },
  test: { ...told, why: "it is run, mostly under power, with nobody's hand on it", doing: "testing" },
  note: { ...told, doing: "the note on" },
  photo: { ...told, doing: "the photo of" },
  video: { ...told, doing: "the recording of" },
  time: { ...told, doing: "the time of" },
  people: { ...told, doing: "the people for" },
  "second-check": { ...told, doing: "the second check of" },
  "hold-point": { ...told, doing: "the hold point for" },
  danger: { ...told, doing: "the message on" },
  warning: { ...told, doing: "the message on" },
  caution: { ...told, doing: "the message on" },
  notice: { ...told, doing: "the message on" },
  wait: { ...told, doing: "waiting for" },
  do: { ...told, why: "each act of the procedure that is done speaks for itself", doing: "doing" },
  turn: { ...usual, doing: "turning" },
  drain: { ...usual, doing: "draining" },
  recover: { ...usual, doing: "recovering" },
  fill: { ...usual, doing: "filling" },
  bleed: { ...usual, doing: "bleeding" },
  purge: { ...usual, doing: "purging" },
  evacuate: { ...usual, doing: "evacuating" },
  restore: { ...usual, doing: "restoring" },
  renew: { ...usual, doing: "renewing" },
  reuse: { ...usual, doing: "reusing" },
  scrap: { ...usual, doing: "scrapping" },
} satisfies Record<string, ActKind>;

export const actKinds: Readonly<Record<string, ActKind>> = table;

/** What a verb does; of one that is no listed act, what is usual. */
export const actKind = (verb: string): ActKind => (Object.hasOwn(table, verb) ? actKinds[verb]! : usual);
