// Turns of speech, as data: what a hand in the trade writes where the language has another way to say it. Read by messages alone; none
// of them compiles. Other words for ours stand in synonyms.ts.

import { signalNames } from "./signals.ts";

/** Small words of speech for one that joins the arguments of an item. */
export const linkWords: Readonly<Record<string, string>> = { in: "into", using: "with", via: "with" };

/** Two words of speech for one of ours. */
export const phrases: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries({
    remove:
      "take off, take out, take away, pull off, pull out, knock out, drive out, tap out, push out, press off, slide off, slide out, drive off, tap off, knock off, lever off, lever out, draw out, cut off, jack off, jack out, draw off, prise off, prise out, pry off, pry out, press out, drift out, hook out",
    lift: "lift off, lift out, jack up, set down, put down",
    undo: "screw out, screw off, wind out, wind off, turn out, drill out",
    loosen: "back off, slack off, ease off, break loose",
    tighten: "do up, nip up",
    cap: "blank off, plug up",
    align: "line up",
    fit: "screw in, wind in, wind on, push in, push on, push back, slide in, slide on, slide back, drive in, tap in, knock in, put on, put in, put back",
    press: "press in, press on",
    open: "open up",
    swing: "swing out, swing away",
    scrap: "throw away",
    drain: "let out, drain off, drain out, pump out",
    fill: "top up, fill up",
    clean: "blow out, blow off, clean off, wipe off, wipe out, scrape off, brush off",
    cool: "let cool",
    "lock-out": "lock out, tag out, lock off",
    "shut-down": "shut down, power down",
    isolate: "switch off, turn off, shut off",
    "let-down": "let down",
    "try-start": "try start",
    "prove-dead": "prove dead, test dead",
    "prove-zero": "prove zero",
    if: "only if",
    behind: "covered by, hidden by, blocked by",
    fits: "attached to, pressed on, pressed onto, pressed into, mounted on",
  }).flatMap(([is, all]) => all.split(", ").map((says) => [says, is])),
);

/** A word of another place of the language that a hand writes for ours here: where `is` may stand and `says` may not. */
export type Elsewhere = {
  readonly says: string;
  readonly is: string;
  readonly why: string;
  /** What goes into its place, where that alone mends the line. */
  readonly write?: string;
};
const warned = (says: string): Elsewhere => ({
  says,
  is: "warn",
  why: `of a thing it is said in its block, ${says} "…", or with warn: warn ${says} "…" on THING`,
  write: `warn ${says}`,
});
const toolBehind = (says: string): Elsewhere => ({
  says,
  is: "undo",
  why: "a tool stands behind its action, undo X with TOOL",
});
export const wordsFromElsewhere: readonly Elsewhere[] = [
  { says: "torque", is: "tighten", why: "its figure stands with the fastener, torque 9 N·m", write: "tighten" },
  { says: "tighten", is: "torque", why: "the act stands in a step, the figure here", write: "torque" },
  ...signalNames.map(warned),
  { says: "capacity", is: "volume", why: "what is aboard", write: "volume" },
  { says: "dry", is: "clean", why: 'how, in quotes: clean X "Wipe it dry."', write: "clean" },
  { says: "drive", is: "press", why: "press X onto Y goes in; what is driven out is removed, remove X with TOOL" },
  toolBehind("use"),
  toolBehind("with"),
  { says: "on", is: "fits", why: "fits HOST, or rests on HOST for what only lies there", write: "fits" },
  { says: "note", is: "about", why: "what a reader has to know of it", write: "about" },
  { says: "order", is: "sequence", why: "in which order they are tightened", write: "sequence" },
  { says: "set", is: "part", why: "parts of one set say so in the block of one of them, matched with PART" },
  { says: "set", is: "matched", why: "parts of one set", write: "matched" },
  { says: "drain", is: "drains", why: "drains at PLUG; the act stands in a step", write: "drains" },
  { says: "fill", is: "uses", why: "what it is filled with is written uses OIL, where, fills at PLUG" },
  {
    says: "torque",
    is: "how",
    why: "a union nut with a torque is a fastener of its own, fastener NAME nut { torque 90 N·m  joins A to B }",
  },
];

/** A turn of speech inside a line. */
export type Turn = {
  /** Words of the language whose lines it may stand in: those named, or all acts that take a manner (with, into, words in quotes). */
  readonly in: readonly string[] | "act";
  /** The token that does not fit, in small letters; /…/ for a form. */
  readonly says: string | RegExp;
  /** The token before it. */
  readonly after?: RegExp;
  /** The token behind it. */
  readonly then?: RegExp;
  /** What is written instead, as the second half of a sentence. */
  readonly instead: string;
  /** What goes into its place, where that alone mends the line; "" takes it out. */
  readonly write?: string;
};

const readings = ["measure", "test", "set", "inspect", "precaution"],
  number = /^(?:one|two|three|four|five|six|seven|eight|nine|ten|twelve)$/,
  figure = /^\d+$/,
  some = "how many of them comes first, in figures: 4 of X",
  ordered = "in which order they are turned is said in their block: sequence star",
  howDone = 'how it is done stands in quotes at the end of the line: "Gently."';

export const turns: readonly Turn[] = [
  {
    in: ["measure", "test", "set", "inspect"],
    says: /^\p{L}/u,
    after: /^else$/,
    instead:
      "what follows a bad reading is renew X, choose SHIM from 0.10, 0.20 mm, repeat from STEP, scrap X or words in quotes; any other act stands in otherwise { … }",
  },
  {
    in: ["measure", "inspect"],
    says: "on",
    after: /^"/,
    instead: 'what is measured or looked at stands before the words: measure gap on bearing "Clearance"',
  },
  {
    in: ["measure", "test", "set", "inspect", "repeat", "order"],
    says: '"',
    after: /^(?:from|order)$/,
    instead:
      'a step is called by a name of its own, without quotes: step make-still "Make still", then repeat from make-still',
  },
  {
    in: ["precaution"],
    says: "limit",
    instead: "an upper limit is written at most, with its figure behind it",
  },
  {
    in: ["hazard", "part", "fastener", "joint", "fluid"],
    says: /^\p{L}/u,
    after: /^"/,
    instead: "what is said of it stands in its block: { … }",
  },
  { in: readings, says: /^min(?:imum)?$/, instead: "a lower limit is written at least 2.5 mm", write: "at least" },
  { in: readings, says: /^max(?:imum)?$/, instead: "an upper limit is written at most 0.2 mm", write: "at most" },
  { in: readings, says: /^(?:less|below|up|under)$/, instead: "an upper limit is written at most 0.2 mm" },
  { in: readings, says: /^(?:more|above|over|greater)$/, instead: "a lower limit is written at least 2.5 mm" },
  { in: readings, says: /^(?:not|no)$/, instead: "a limit is written at most 0.2 mm or at least 2.5 mm" },
  { in: readings, says: "between", instead: "a range is written with two points: 0.1..0.2 mm" },
  { in: ["inspect"], says: "for", instead: 'what is good stands in quotes: inspect disc "No cracks"' },
  {
    in: ["inspect"],
    says: /^(?:that|turns|moves|is)$/,
    instead: 'what is good stands in quotes: inspect disc "Turns freely"',
  },
  {
    in: readings,
    says: /^(?:ok|okay|good|fine|passes|yes)$/,
    instead: 'what is good stands in the quotes: test "Runs freely"',
  },
  {
    in: ["if", "unless"],
    says: /^\p{L}/u,
    instead:
      'a condition is a variant, an option or a reading taken before: inspect bore on liner "No scores", then if bore fails',
  },
  {
    in: ["loosen", "back-out"],
    says: /^turns?$/,
    after: figure,
    instead: "how far is written without by: loosen X 2 turns",
  },
  { in: ["loosen", "back-out"], says: /^(?:half|quarter)$/, instead: "how far is written in figures: 1/2 turn" },
  {
    in: ["undo"],
    says: /^\d/,
    then: /^(?:turns?|deg|°)$/,
    instead: "undo takes it out; what is only slackened is loosened, loosen X 2 turns",
  },
  {
    in: ["undo", "loosen", "tighten", "fit"],
    says: /^(?:anti|counter-?)?-?clockwise$/,
    instead:
      "which way it turns follows from its thread, a left-hand one is size M16x1.5-LH; the order of several is sequence circle",
  },
  {
    in: ["slide", "swing"],
    says: /^\d/,
    after: /^back$/,
    instead: "back is to where it was before; how far it goes away is slide X 20 mm",
  },
  { in: ["align"], says: "to", instead: "marks are lined up by their name, align M1; a figure is measured or set" },
  { in: ["apply"], says: /^\d/, instead: 'how much and how often stands in quotes: apply C to X "Two coats."' },
  {
    in: ["do"],
    says: /^(?:step|steps|only|until)$/,
    instead: "do is all of a procedure: what two have in common becomes a procedure of its own, and both do it",
  },
  { in: ["needs"], says: /^\d/, instead: "needs is a position of the unit; tools stand at the act, lift X with TOOL" },
  {
    in: ["turn"],
    says: /^(?:\d.*|clockwise|anticlockwise|counterclockwise|by)$/,
    instead:
      "turn brings the whole unit into another position; a screw is loosened, loosen X 2 turns, a shaft is rotated, rotate X",
  },
  { in: ["fill", "drain"], says: /^\d/, instead: "how much is aboard stands with the fluid: volume 1 L" },
  { in: ["fill"], says: "to", instead: 'how far stands in quotes: fill X "To the mark."' },
  { in: ["fit", "apply"], says: /^on(?:to)?$/, instead: "here it is called to", write: "to" },
  { in: ["joins"], says: /^(?:on|onto|with)$/, instead: "what it hangs on stands behind to", write: "to" },
  {
    in: ["drains", "fills", "bleeds"],
    says: /^(?:through|from|via|by|on)$/,
    instead: "here it is called at",
    write: "at",
  },
  {
    in: ["support", "lift", "hold"],
    says: /^(?:on|from|by)$/,
    instead: "what holds it stands behind with",
    write: "with",
  },
  { in: ["drain", "recover", "undo"], says: "to", instead: "here it is called into", write: "into" },
  {
    in: ["mark"],
    says: "to",
    instead: "what is marked together is parted by commas: mark lid, frame as M1",
    write: ",",
  },
  {
    in: ["mark"],
    says: '"',
    instead: 'a mark has a name, as M1, before its words: mark lid, frame as M1 "One punch mark."',
  },
  { in: ["tag"], says: /^\p{L}*\d+$/u, instead: "what is on the tag stands behind as: tag leads as L1, L2" },
  {
    in: ["heat"],
    says: /^max/,
    instead: 'what it is brought to is the figure; a limit stands in quotes: heat X to 80 °C "No more than 120 °C."',
  },
  { in: ["heat"], says: "with", instead: "the temperature comes first: heat X to 80 °C with TOOL" },
  {
    in: ["put", "set"],
    says: "aside",
    instead: "what is moved and stays attached is slid, slide X; what comes off is removed, remove X",
  },
  { in: ["put"], says: "back", instead: "what goes back is fitted: fit X" },
  { in: ["refit"], says: "in", instead: "the way back is computed: only what differs from it stands in refit { … }" },
  {
    in: ["refit"],
    says: /^\p{L}/u,
    instead: "refit is the way back of a step, in a block; one part goes back by fit: fit X",
  },
  { in: ["repeat"], says: "step", instead: "a step is repeated by its name: repeat from NAME", write: "from" },
  {
    in: ["repeat"],
    says: /^(?:\d+|\p{L}.*)$/u,
    instead: "what is done again has a name: repeat from STEP, or for pieces repeat for left, right { … }",
  },
  {
    in: ["renew"],
    says: /^(?:when|if|always)$/,
    instead: "for a part it is said once, in its block: renew when damaged",
  },
  {
    in: ["precaution"],
    says: "wait",
    after: /^precaution$/,
    instead: 'a wait belongs to what is done against it: precaution discharge "Let it stand." wait 10 min',
  },
  {
    in: ["precaution"],
    says: /^\p{L}/u,
    after: /^(?!precaution$)/,
    instead: 'what is done stands in quotes: precaution lock-out "Open the isolator, lock it."',
  },
  {
    in: ["wait"],
    says: /^(?!until$)\p{L}/u,
    after: /^wait$/,
    instead:
      'a wait is a time, wait 5 min; that of a hazard stands with its precaution, precaution discharge "…" wait 10 min, and the step says discharge HAZARD',
  },
  {
    in: ["wait"],
    says: "until",
    instead: 'a wait is a time; what has to be so first is a hold-point "Cool enough to touch."',
  },
  { in: ["aim"], says: /^(?:off|out)$/, after: /^all$/, instead: "of all it is written all apart", write: "apart" },
  { in: ["aim"], says: /^(?:removed|out|away)$/, instead: "here it is called off", write: "off" },
  { in: ["aim"], says: ",", after: /^(?:off|apart)$/, instead: "all names stand before it: aim bearing, ring off" },
  { in: ["aim"], says: "but", instead: "here it is called except", write: "except" },
  {
    in: ["aim"],
    says: /^\p{L}/u,
    after: /^(?:change|renew|replace)$/,
    instead: "an aim says what is off at the end: aim ring off",
  },
  { in: ["step"], says: figure, instead: "steps are numbered in print: leave the number out", write: "" },
  {
    in: ["renew"],
    says: /^(?:in|as|on|each|every|if|sets?|pairs?)$/,
    instead: "when is written always, when worn or every 3 strips; what goes with it by pairs or as-a-set",
  },
  {
    in: ["torque"],
    says: /^[+-]\d/,
    instead: "a tolerance stands before the unit, in that unit: 24 ± 2 N·m",
  },
  { in: ["wait"], says: "for", instead: 'what it is for stands in quotes: wait 5 min "To cool."' },
  {
    in: ["caution", "warning", "danger", "notice", "note"],
    says: /^\p{L}/u,
    instead: 'its words stand in quotes: caution "Hot."',
  },
  { in: ["photo"], says: /\./, instead: 'the file stands in quotes, its words behind it: photo "lid.jpg" "Lid off"' },
  { in: ["count"], says: "each", instead: "how many each has is written count 2 per cap" },
  { in: ["count"], says: number, instead: "how many is written in figures: count 4" },
  { in: ["count"], says: /^(?:pcs|off|nos|x)$/, instead: "how many is a figure alone: count 4", write: "" },
  {
    in: ["part", "fastener", "joint"],
    says: /^x?\d+$/,
    after: /^"/,
    instead: "what it is like and how many there are stands in its block: { mass 2 kg  count 2 }",
  },
  {
    in: ["part", "fastener", "joint"],
    says: figure,
    instead: 'a name begins with a letter; a number of the maker stands in its block: part-no "6204"',
  },
  {
    in: ["part", "fastener", "joint"],
    says: "(",
    after: /^"/,
    instead: "what it is like stands in its block: { mass 2 kg }",
  },
  {
    in: ["part", "fastener", "joint"],
    says: ",",
    instead: "each is declared on a line of its own; several alike are one with a count",
  },
  { in: ["mass", "size", "volume"], says: /^(?:×|x\d+)$/, instead: "how many there are is written count 3" },
  { in: ["finish"], says: /^\p{L}/u, instead: 'what is done at the end stands in its block: finish { test "Runs" }' },
  {
    in: ["pattern"],
    says: /^(?:star|cross|crosswise|diagonal)$/,
    instead: "pattern tells where they sit; the order is written sequence star",
  },
  { in: ["size"], says: /^\d+\/\d+$/, instead: "an inch thread is written 1/4-20 UNC x 1 in" },
  {
    in: ["size"],
    says: figure,
    instead: "a thread is written with its letter, M8x35; the spanner stands in drive hex 13",
  },
  { in: ["size"], says: "mm", instead: "a metric size has no unit: M8x35", write: "" },
  { in: ["drive"], says: /^(?:torx|tx|t)-?\d+$/, instead: "a six-lobe drive is written hexalobular 30" },
  { in: ["drive"], says: /^hex\d+$/, instead: "a blank parts the kind and its size: drive hex 13" },
  { in: ["torque"], says: /^(?:then|plus|and)$/, instead: "more than one stage is written stages 25 N·m, 90 deg" },
  {
    in: ["torque", "tighten"],
    says: /^(?:lbs?|pounds?)$/,
    after: /^(?:ft|foot|in|inch)$/,
    instead: "foot-pounds are written ft-lb, inch-pounds in-lb",
  },
  {
    in: ["torque", "measure", "set", "test"],
    says: "±",
    instead: "a tolerance stands before the unit, in that unit: 24 ± 2 N·m",
  },
  {
    in: ["volume", "mass", "torque", "pressure", "voltage"],
    says: /^(?:ca|circa|approx|approximately|around|roughly|some)$/,
    instead: 'a figure stands alone; how sure it is is told in about "…"',
  },
  {
    in: ["fit", "tighten"],
    says: /^(?:hand|finger)(?:-?tight)?$/,
    instead: "by hand only is written fit X finger-tight",
  },
  { in: ["drive"], says: "cross", instead: "of the two cross recesses one is named: cross-ph 2 or cross-pz 2" },
  {
    in: "act",
    says: "hand",
    after: /^by$/,
    instead: 'how it is done stands in quotes at the end of the line: "By hand."',
  },
  { in: "act", says: "in", then: figure, instead: "how many passes is written passes 3" },
  {
    in: "act",
    says: "in",
    then: /^(?:star|circle|sequence|order|reverse|steps|stages|cross\p{L}*|diagonal\p{L}*)$/u,
    instead: ordered,
  },
  { in: "act", says: /^(?:crosswise|cross-wise|criss-cross|diagonally|star)$/, instead: ordered },
  {
    in: "act",
    says: figure,
    after: /^with$/,
    then: /^(?:people|persons|men|helpers)$/,
    instead: "how many do it is written by 2 people",
  },
  {
    in: "act",
    says: /^\d/,
    after: /^with$/,
    then: /./,
    instead: "a tool has a name, and is declared at the top of a file: with spanner-13",
  },
  {
    in: "act",
    says: /^\p{L}/u,
    after: /^by$/,
    instead: "who does it is written by 2 people, what holds or moves it with TOOL",
  },
  { in: "act", says: ",", then: figure, instead: "a further tool has a with of its own, and a name" },
  { in: "act", says: /^(?:and|plus)$/, instead: "a further tool has a with of its own", write: "with" },
  { in: "act", says: /^(?:x|×|off|pcs|nos)$/, after: figure, instead: some, write: "of" },
  { in: "act", says: /^x?\d+$/, after: /^[^"]/, instead: some },
  { in: "act", says: /^\p{L}/u, after: number, instead: some },
  { in: "act", says: /^(?:off|out|away)$/, instead: "the word alone says it: leave it out", write: "" },
  {
    in: "act",
    says: /^(?:from|on|onto|at|of|holding|where)$/,
    instead: "what it sits on or holds is known from its declaration: leave it out",
  },
  { in: "act", says: /^(?:\p{L}+ly|gradually|slow|one)$/u, instead: howDone },
  {
    in: "act",
    says: /^(?:up|down|towards?|over|under|below|above|beside|through|along|against|sideways|(?:for|back|in|out|up|down)wards?|further|until|till|only|lip|within|without)$/,
    instead: howDone,
  },
  {
    in: ["remove", "lift", "support", "hold", "open", "fit", "clean", "press", "put"],
    says: /^\d/,
    then: /^\p{L}|^°/u,
    instead:
      'a figure is measured or set: set X "Gap" 0.2 mm with TOOL; else it stands in quotes at the end of the line',
  },
  { in: ["slide", "swing", "open", "press", "remove"], says: "to", instead: howDone },
  { in: "act", says: "(", instead: "a remark stands in quotes at the end of the line" },
  {
    in: "act",
    says: '"',
    after: /^(?:tray|bag)$/,
    instead: "a tray is told by its letter or figure alone: into tray A",
  },
  {
    in: "act",
    says: '"',
    after: /^\p{L}/u,
    instead: "things are called by their name, without quotes; what is printed stands at their declaration",
  },
];
