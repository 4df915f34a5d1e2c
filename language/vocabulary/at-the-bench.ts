// What each word does at the bench, what its way back is, and what is printed of it: for the reference page. Apart from the table of
// words, so that the compiler starts without these texts; a test holds that every word in every place has its own. Decides nothing.

import { precautions } from "../tables/precautions.ts";
import { signals } from "../tables/signals.ts";
import type { Entry } from "./entry.ts";

export interface BenchText {
  /** What the bench takes from it, or does. */
  readonly bench: string;
  /** What answers it in the other half. */
  readonly back: string;
  /** What a reader of the outputs sees. */
  readonly prints: string;
}

type Row = readonly [bench: string, back: string, prints: string];

const none = "nothing",
  asWritten = "where a refit block or `finish` says it";
/** Facts that only figures and outputs read. */
const told = (prints: string, bench = "no rule of the bench reads it"): Row => [bench, none, prints];
/** Facts of a thing that hold in both halves. */
const fact = (bench: string, prints: string, back = "holds in both halves"): Row => [bench, back, prints];
/** A line for the reader or the record. */
const reading = (prints: string, bench: string): Row => [bench, asWritten, prints];

const outside = "nothing changes; in the builds where it fails, what follows `else` is renewed or scrapped";

/** By word, or by `word@place` where places differ. */
const rows: Readonly<Record<string, Row>> = {
  // At the top of a file.
  use: fact("all that the file declares is known here", "nothing of its own", none),
  unit: fact(
    "one bench: parts, ties, fluids and hazards that belong together",
    "the title of every output",
    "the end of the way back is its start",
  ),
  tool: fact(
    "a name after `with`; a container after `into`; its range, capacity and angle are held against torques and lifts",
    "in the tools list where an act uses it",
  ),
  consumable: fact(
    "a name after `apply`, `uses`, `thread-locker`, `lubricant`",
    "in the bill and the list of consumables",
  ),
  procedure: fact(
    "performed from its start to its aim, then back",
    "a chapter: strip and way back",
    "computed, unless `refit by` names a written one",
  ),
  "role@file": told("who may do what, in the safety chapter"),
  "torque-table": fact("the torque of fasteners that follow it, by thread size", "as the torque of each fastener"),
  "size@torque-table": fact("one row of the table", "as the torque of each fastener of that size"),
  fastener: fact(
    "a tie that holds while one of its pieces is in and not backed out; at the top of a file, a type for `like`",
    "in the fastener table; at each act with its spanner",
    "the way back of `undo` is fit and tighten",
  ),
  hazard: fact(
    "touching what it is `on` asks for its precautions; at the top of a file, a type for `like`",
    "before the first act that it is about, in each half and in the final tests; again before `restore`",
    "each precaution is taken back at the mirrored place",
  ),
  "hazard@consumable": told("with the consumable, in the safety chapter"),
  temporary: fact(
    "a name for `put` and `take`",
    "at the acts that put it on and take it off",
    "it must be off at the end of the half in which it was put on",
  ),
  warn: fact("a message on things or on a kind", "before the first act of each step that handles them, in both halves"),
  // Conditions.
  if: fact(
    "its items are there in the builds where the condition holds; every build is performed",
    "`If …:` before it, or left out in a manual for one build",
    "as its items",
  ),
  unless: fact(
    "its items are there in the builds where the condition does not hold",
    "`If not …:` before it, or left out in a manual for one build",
    "as its items",
  ),
  about: told("in the chapter on how it works, or beside the thing"),
  revision: told("on the title page and in every footer"),
  maker: told("name and address on the title page"),
  serial: told("on the title page: the numbers that the manual is about"),
  "intended-use": told("in the chapter on what the machine is for"),
  "wrong-use": told("in the chapter on what the machine is for, as what must not be done"),
  mishap: told("in the chapter on when it goes wrong"),
  waste: told("in the chapter on waste, beside the fluids"),
  author: told("name and address on the title page"),
  date: told("on the title page, where the command line gives no other"),
  original: told("`Original instructions` on the title page"),
  translated: told("`Translation` with what it is made from, on the title page"),
  prepared: told("name and date on the title page"),
  checked: told("name and date on the title page"),
  approved: told("name and date on the title page; a revision that is not the one approved stays a draft"),
  photo: told("the picture with its words, under the act before it"),
  point: told("the item's number beside the picture, with a line to its place"),
  // A unit.
  "mass@unit": fact("the mass of the whole, where it is a part of another unit", "on the title page"),
  positions: fact(
    "the first is how it arrives; `turn` and `needs` name the others",
    "at each turn",
    "it lies at the end as it did at the start, unless `leaves turned`",
  ),
  base: fact(
    "what stays on the stand: a part is off when it is not with the base",
    "nothing of its own",
    "its parts are where the way back begins",
  ),
  "base@refit": fact(
    "the way back is built up on this part",
    "as the first line of the way back",
    "only in a way back",
  ),
  "base@procedure": fact("a written way back is built up on this part", "as the first line", "only with `aim all in`"),
  "renew@unit": fact(
    "parts of these kinds are always new",
    "`Do not keep` in the strip, `new` on the way back, certain in the bill",
    "a new one goes in",
  ),
  no: fact("this kind of hazard is answered for", "with its reason, in the safety chapter"),
  part: fact(
    "something that comes off; it hangs on what it is joined to, fits, lies on or lies between",
    "in the parts table, under this name everywhere",
    "the way back of its removal is fitting it",
  ),
  joint: fact(
    "a tie whose kind says how it parts and whether it can be made again",
    "with the verb of its kind at both ends",
    "made again, or named in the strip where that cannot be",
  ),
  fluid: fact(
    "aboard until it is drained: what opens it asks that it is out",
    "in the fluids table, at drain and fill",
    "filled where it has a kind, a place to fill, or something to fill with",
  ),
  "torque@unit": fact("the torque of every fastener here that names none", "as the torque of each"),
  variants: fact("the machine is exactly one of these; each is performed", "`If …:`, or a manual for one"),
  option: fact("fitted or not; both are performed", "`If fitted:`, or a manual for one"),
  pieces: fact(
    "pieces with names: those of the same name belong together; `own-place`: each goes back where it was",
    "with the piece named",
  ),
  order: fact(
    "a fact of the machine: it binds every way back",
    "nothing of its own",
    "an edge of the order; one that contradicts the bench is a finding",
  ),
  "order@refit": [none, "moves a whole step, or all of a part, in this way back", "nothing of its own"],
  // A tool, a consumable.
  kind: fact("a torque wrench is one by this word", "in the tools list"),
  range: fact("held against the torque or the reading that it is used for", "in the tools list"),
  capacity: fact("held against the mass on the hook, or the volume let into it", "in the tools list"),
  "count@tool": told("in the tools list"),
  accuracy: told("in the list of torque wrenches"),
  calibration: told("in the list of torque wrenches and on the record sheet"),
  legs: fact("the load is shared by them; the capacity is that of one leg, straight", "in the tools list"),
  angle: fact("a flatter leg carries more: held against the capacity", "in the tools list"),
  pack: told("the bill is rounded up to whole packs"),
  "shelf-life": told("in the bill"),
  lead: told("in the bill"),
  // A part.
  mass: fact(
    "over the lifting guideline it must be held; what hangs on it counts with it",
    "before a lift, with how many masses are not given",
  ),
  "size@part": told("in the parts table; of an O-ring, held against its groove"),
  fits: fact(
    "held by this one; lets go in passing when it is removed",
    "with the verb of its kind",
    "fitted back to it",
  ),
  rests: fact(
    "lies on these: comes off freely, goes with the lower one, slides off when the unit is turned",
    "nothing of its own",
    "set down on it again",
  ),
  matched: fact(
    "one set with these, piece by piece of the same name; `renew as-a-set` on one of them holds for all; fitted to one of another set it is a finding",
    "`Keep together:` where it comes off",
    "`Together again:` where it goes back",
  ),
  between: fact(
    "clamped while a tie holds between the two; afterwards it lies on the first",
    "nothing of its own",
    "in before the first tie between the two is made",
  ),
  hangs: fact("must be supported before its last group of ties is touched", "nothing of its own"),
  "lift@part": fact("so many people, or a holder, at every removal and fit of it", "at the lift"),
  supply: fact("asks that the electrical hazard is declared or dismissed", "in the parts table"),
  is: fact(
    "its own parts, ties and hazards are inside, named `PART.THING` from outside; `do PROCEDURE on PART` works there",
    "a chapter of its own",
  ),
  "align@part": fact("lined up without a mark", "where it goes back", "`Alignment:` at its fitting"),
  dry: fact("nothing is applied to it", "`Fit dry` at its fitting"),
  groove: told("the squeeze is worked out from it"),
  reach: told("the lifting limit is worked out from it"),
  // A fluid.
  volume: told("at drain and fill, in the bill"),
  amount: told("at drain and fill, in the bill"),
  drains: fact("`drain` opens these", "`Open for it:` at the drain", "closed before the fill"),
  fills: fact(
    "filling opens these and closes them again: they are reached, on, and the unit lies as they need",
    "`Open for it:` and `Close it again:` with the torque, at the fill",
    "filled while they can be reached; one that was undone by an act of its own is closed after the fill",
  ),
  "uses@fluid": fact("it is filled again, with this", "in the bill"),
  bleeds: told("at the bleeding"),
  "recover@fluid": fact("`drain` of it is a finding", "with what it is recovered"),
  path: fact(
    "opening one of these parts lets it out; it is filled after all of them are closed",
    "in the drawing of its way",
  ),
  // What parts, fasteners and joints share.
  count: fact("how many: undoing more is a finding, fewer leaves it held", "`the 8 casing nuts`"),
  behind: fact("no act on it before each of these is away", "nothing of its own", "in its place before these go back"),
  needs: fact("acts on it only while the unit lies so", "nothing of its own", "the way back turns the unit for it"),
  renew: fact(
    "new every time, or under this condition",
    "`Do not keep`, `new`, `New if worn`; in the bill",
    "a new one goes in",
  ),
  like: fact("all that is said of that one, save what is said again", "as if written here"),
  piece: fact("holds for this piece alone", "with the piece named"),
  into: fact("sits in this one and ties nothing", "nothing of its own"),
  "part-no": told("in the tables and in the bill"),
  standard: told("in the tables and in the bill"),
  // A fastener.
  joins: fact(
    "the first hangs on the second: still held while one of these is in",
    "nothing of its own",
    "made after every meeting between its sides",
  ),
  size: fact("spanner, torque and length are held against it", "at every act on it"),
  class: fact("the torque is held against its yield", "in the fastener table"),
  grade: fact("the torque is held against its yield", "in the fastener table"),
  drive: fact("held against the thread", "the spanner, at every act on it"),
  torque: fact(
    "held against thread and wrench",
    "at the tightening, in both systems of units",
    "goes with the tightening",
  ),
  passes: told("at the tightening"),
  sequence: told("at the tightening, with the order drawn where a pattern is given"),
  pattern: told("the drawing of the tightening order"),
  with: fact(
    "follow their fastener out and in; held to the rules of new parts",
    "with the fastener",
    "with the fastener",
  ),
  "thread-locker": told("at the fitting; in the bill"),
  lubricant: told("at the fitting"),
  stages: fact("gone up one by one: skipping one is a finding", "at the tightening", "goes with the tightening"),
  "back-out@fastener": told("after the torque, at the tightening"),
  "reuse@fastener": told("how often it may be used again, at the fitting"),
  friction: told("the torque is judged with it"),
  clamps: told("the length is judged with it"),
  tapped: told("torque and engagement are judged with it"),
  // A joint.
  how: told("at the parting and at the making"),
  uses: told("at the making; in the bill"),
  force: fact("of a spring or magnetic joint: asks for its hazard", "in the joint table"),
  bead: told("at the sealing; how much of the consumable"),
  opens: fact(
    "parting it asks that these are out, or capped",
    "nothing of its own",
    "they are filled after it is made",
  ),
  // A hazard.
  on: fact("touching these asks for every precaution, in order", "nothing of its own"),
  source: fact(
    "a generator feeds again when it is turned; a battery has no proof at its own terminals",
    "with the hazard",
  ),
  voltage: told("with the hazard; the wait is worked out from it"),
  capacitance: told("with the hazard; the wait is worked out from it"),
  bleeder: told("the wait is worked out from it"),
  pressure: told("with the hazard"),
  temperature: told("with the hazard"),
  "mass@hazard": told("with the hazard"),
  "force@hazard": told("with the hazard"),
  flux: told("with the hazard"),
  precaution: fact(
    "stands once its act is done, in this order; `behind`: the act waits until that is open",
    "its words at its act",
    "its `back` words at the mirrored place",
  ),
  wear: told("in the safety chapter and with the hazard"),
  pushes: fact("the hazard is on the last ties of this part", "with the hazard"),
  "keep-out": told("with the hazard"),
  role: told("who may do it, with the hazard or the procedure"),
  // A procedure.
  aim: fact("judged at the end of the strip: what is still on is a finding", "on the title page"),
  crew: fact("so many people at every lift", "on the title page"),
  "video@procedure": told("on the title page"),
  finish: fact("performed after the way back", "`Final tests`", "stands after everything"),
  "needs@procedure": fact(
    "the bench starts as that one leaves it; called without it is a finding",
    "before the first step",
  ),
  starts: fact("this is so at the start, and need not be so at the end", "before the first step"),
  leaves: fact("this may be so at the end; `until P`: P begins there, and must put it right", "after the last step"),
  task: fact(
    "its steps are performed alone as well, in every build: what only then fails is a finding at this line",
    "nothing in the whole; alone with `--task`: manual, way back, bill and sheets of its steps",
    "the way back of these steps",
  ),
  step: fact(
    "acts that belong together; its refit block speaks of its events",
    "a heading with its acts",
    "`Refit of step …`",
  ),
  refit: [none, "adds to the computed way back, or with `by` replaces it", "in the way back"],
  do: fact(
    "another procedure performed here; in words, a plain act",
    "its lines, or `Do: …`",
    "its way back, at the mirrored place",
  ),
  note: told("where it stands"),
  repeat: fact(
    "its block for each of these pieces; `from`: the steps from there are done again, and must be possible from the bench as it is",
    "once for each piece; `Repeat from step 2, …`",
  ),
  optional: fact("performed with and without", "`If required:`", "as its items"),
  either: fact("performed for each choice", "as a choice", "as its items"),
  or: fact("the other choice", "as a choice", "as its items"),
  otherwise: fact("performed where the reading before fails", "`If not:`", "as its items"),
  reverse: [none, "the computed acts of this step, or of all, stand here", "nothing of its own"],
  instead: [none, "replaces the computed acts of its step", "as written"],
  reuse: [
    none,
    "insists on the old one, with the reason; without one, of what secures a fastener, and of what a hazard is on it is a question; of what must be new it is an error",
    "`Use the old one again`, with the reason",
  ],
  // Actions.
  undo: [
    "fasteners out, a joint broken; asks that they can be reached, the position, the precautions, the fluids, and that nothing falls",
    "fit and tighten",
    "`Undo the 8 casing nuts`, or the verb of its kind: `Unplug …`",
  ],
  loosen: [
    "loose and still in: it still holds, and a part may be moved aside on it",
    "tighten",
    "`Loosen …. Leave in.`",
  ],
  "back-out": ["in its hole, holds nothing, hides nothing", "tighten", "`Back out …. Leave in the hole.`"],
  remove: [
    "off with all that hangs on it; refused while a tie that is undone holds it",
    "fit",
    "`Remove …`, or the verb of its kind: `Press off …`",
  ],
  lift: [
    "off, with a holder: capacity and people are held against the mass",
    "lower in",
    "`Lift off … with the hoist`",
  ],
  support: ["its weight is carried until it is released or off", "release", "`Support …. Keep it held.`"],
  release: [
    "carried no more; a generator that is freed to turn ends its proof",
    "support",
    "`Take the support from …`",
  ],
  hold: [
    "kept from turning for the acts of its step; carries no weight",
    "held again before the same tie is made",
    "`Hold … so that it does not turn`",
  ],
  slide: ["aside: still attached, hides nothing", "back", "`Slide … aside. Leave attached.`"],
  swing: ["aside: still attached, hides nothing", "back", "`Swing … aside. Leave attached.`"],
  open: ["aside: still attached, hides nothing", "closed", "`Open …. Leave attached.`"],
  turn: [
    "the unit lies so; what only rests, or would run out, is a finding",
    "turned where an act needs it, and back at the end",
    "`Turn the unit: on side`",
  ],
  rotate: ["a shaft turned by hand; a generator that is turned ends its proof", none, "`Turn … by hand`"],
  drain: ["opens what it drains at; the fluid is out", "closed, then filled", "`Drain … (0.8 L) into …`"],
  recover: [
    "opens what it drains at; the fluid is out and caught",
    "closed, then filled",
    "`Recover …; let nothing out`",
  ],
  cap: ["what is opened there lets nothing out", "uncap", "`Cap …`"],
  uncap: ["open again", "cap", "`Take the cap off …`"],
  fill: [
    "aboard again; opens and closes what it is filled at; asks that this can be reached and that every joint of it is made",
    "in a strip: not mirrored",
    "`Fill … (4.2 L)`",
  ],
  bleed: reading("`Bleed …`", "nothing changes"),
  purge: reading("`Purge the circuit of …`", "a finding in a strip on what has to be recovered and is still aboard"),
  evacuate: reading(
    "`Evacuate the circuit of …`",
    "pumped out: what a refrigerant's fill asks for; a finding in a strip on what has to be recovered and is still aboard",
  ),
  restore: [
    "all precautions of the hazard lapse; every guard must be on",
    "taken again",
    "`End the precautions … for the powered test`",
  ],
  mark: [
    "a match mark; asks that the things can be reached",
    "lined up at the first tie after they meet",
    "`Mark … (mark M1)`",
  ],
  tag: ["tags; a finding on a tie that is already undone", "`By the tags:` where it is made", "`Tag …: L1, L2`"],
  align: [
    "the marks are lined up; one that was never made is a finding",
    "only in a way back",
    "`Line up the marks …`",
  ],
  measure: reading("`Measure on … with …`, its limits, and a place to write", outside),
  inspect: reading("`Inspect …: the good state`, and a tick", outside),
  test: reading("`Test: …`, its limits, and a tick", outside),
  set: reading("`Set … with …`, its limits, and a place to write", outside),
  clean: reading("`Clean …`", "nothing changes"),
  apply: reading("`Apply … to …`; in the bill", "nothing changes; a finding on a part that goes on dry"),
  heat: reading("`Heat … to 80 °C`", "nothing changes; a hot hazard must be declared or dismissed"),
  wait: reading("`Wait at least 5 min`", "nothing changes; it stands for no proof"),
  "renew@step": ["it counts as new from here on", asWritten, "`Renew …: fit new`; in the bill"],
  scrap: ["it counts as not to be used again", asWritten, "`Scrap …: mark it, keep it apart`"],
  work: ["asks that the thing can be reached; nothing changes", asWritten, "its own words"],
  fit: [
    "a part goes back to the side that it parted from; a fastener is in, both its sides together",
    "in a strip: undo, remove",
    "`Fit …`, or the verb of its kind: `Press on …`",
  ],
  tighten: [
    "tight; a stage that is not the last leaves it less than that, and none is skipped",
    "in a strip: not mirrored",
    "`Tighten …`, with its torque",
  ],
  press: ["on, as `fit`", "in a strip: remove", "`Press … onto …`"],
  video: told("the part of the recording, under the act before it"),
  time: told("`Time: about 12 min`"),
  people: told("`People: 2`"),
  "second-check": reading("`A second person looks, and signs`, and a place to sign", "nothing changes"),
  "hold-point": reading("`Stop here until this point is released`, and a place to sign", "nothing changes"),
  put: ["a temporary thing is on", none, "`Put … on … (temporary: it comes off again)`"],
  take: ["the temporary thing is off; one that was never put on is a finding", none, "`Take off …`"],
};

/** Places where a fact belongs to a thing, a word, or an act share one key. */
const placeKeys: Readonly<Record<string, readonly string[]>> = {
  refit: ["refit", "step"],
  finish: ["finish", "step"],
  unit: ["unit", "file"],
};

/** The texts of a word in its place. Throws where the table has none: a gap is a fault of ours. */
export function benchTextOf({ word, place }: Entry): BenchText {
  if (Object.hasOwn(precautions, word) && rows[word] === undefined)
    return precautionText(word as keyof typeof precautions);
  if (Object.hasOwn(signals, word))
    return text(
      fact(
        "printed only",
        "before the work that it stands in, or before each step that handles the thing that it stands on",
        "in the half that it stands in; on a thing: in both halves",
      ),
    );
  for (const key of [...(placeKeys[place] ?? [place]).map((one) => `${word}@${one}`), word])
    if (rows[key] !== undefined) return text(rows[key]);
  throw new Error(`the table at-the-bench.ts has no text for ${word} ${place}`);
}

const text = ([bench, back, prints]: Row): BenchText => ({ bench, back, prints });

function precautionText(name: keyof typeof precautions): BenchText {
  const { isProof, back, verb, title } = precautions[name];
  return {
    bench: isProof
      ? "the hazard is proved at this moment; `restore`, a turned generator or a freed one ends that"
      : "this precaution of the hazard stands from here on; out of its declared order is a finding",
    back: isProof
      ? "none: a proof is no state that lasts"
      : back === undefined
        ? "none, unless the precaution has `back` words"
        : `the \`back\` words, else \`${back}\``,
    prints: `\`${title}:\` and the words of the precaution${verb === title ? "" : ` (\`${verb} …\`)`}`,
  };
}
