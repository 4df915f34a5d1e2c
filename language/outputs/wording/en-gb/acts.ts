// The printed sentences of acts, strip and refit, in British English. Each takes phrases that are already in the language (see
// phrases.ts) and texts of the tables; the author's own words never pass through here.

import { inside, list, looksPlural, sentence, some, the, verbWith } from "./phrases.ts";

const withTool = (tool: string | undefined): string => (tool ? ` with ${the(tool)}` : "");
const byPeople = (people: number | undefined): string =>
  people ? `, ${people === 1 ? "1 person" : `${people} people`}` : "";
const ifAny = (before: string, text: string | undefined): string => (text ? `${before}${text}` : "");

/** What a fitting says beside its verb and its thing. */
interface FitWords {
  readonly fresh: boolean;
  readonly facing?: string | undefined;
  readonly how?: string | undefined;
  readonly tool?: string | undefined;
  readonly onto?: string | undefined;
  readonly people?: number | undefined;
}

export const acts = {
  the,
  some,
  list,
  givenOtherwise: "if the reading before is not as it should be",
  givenState: (title: string, state: "" | "fails" | "removed") =>
    `${inside(title)}${{ "": "", fails: " is not as it should be", removed: " removed" }[state]}`,
  givenPieces: (unless: boolean, any: boolean, pieces: readonly string[]) =>
    unless ? `not for ${pieces.join(any ? " or " : " and ")}` : `for ${pieces.join(any ? " or " : " and ")} only`,
  givenCondition: (unless: boolean, any: boolean, states: readonly string[]) =>
    `${unless ? "unless" : "if"} ${states.join(any ? " or " : " and ")}`,

  undo: (verb: string, what: string, tool?: string) => sentence(verbWith(verb, what) + withTool(tool)),
  loosen: (what: string, amount?: string, tool?: string) =>
    sentence(`Loosen ${what}${ifAny(" by ", amount)}${withTool(tool)}. Leave in`),
  backOut: (what: string, amount?: string, tool?: string) =>
    sentence(`Back out ${what}${ifAny(" by ", amount)}${withTool(tool)}. Leave in the hole`),
  remove: (verb: string, what: string, how?: string, tool?: string, people?: number) =>
    sentence(`${verbWith(verb, what)}${withTool(tool)}${byPeople(people)}${ifAny(": ", how)}`),
  removeTogether: (what: string, tool?: string, people?: number) =>
    sentence(`Remove ${what} together, as one${withTool(tool)}${byPeople(people)}`),
  lift: (what: string, tool?: string, people?: number) =>
    sentence(`Lift off ${what}${withTool(tool)}${byPeople(people)}`),
  support: (what: string, tool?: string) => sentence(`Support ${what}${withTool(tool)}. Keep it held`),
  hold: (what: string, tool?: string) => sentence(`Hold ${what}${withTool(tool)} so that it does not turn`),
  release: (what: string, tool?: string) => sentence(`Take the support from ${what}${ifAny(": ", tool && the(tool))}`),
  aside: (verb: "slide" | "swing" | "open", what: string, amount?: string) =>
    sentence(
      verb === "open"
        ? `Open ${what}. Leave attached`
        : `${verb === "swing" ? "Swing" : "Slide"} ${what} aside${ifAny(" by ", amount)}. Leave attached`,
    ),
  back: (verb: "slide" | "swing" | "open", what: string) =>
    sentence(verb === "open" ? `Close ${what}` : `${verb === "swing" ? "Swing" : "Slide"} ${what} back into place`),
  turn: (position: string, part?: string) => sentence(`Turn ${part ?? "the unit"}: ${position}`),
  turnBack: (position: string) => sentence(`Turn the unit back: ${position}`),
  rotate: (what: string, amount?: string) => sentence(`Turn ${what} by hand${ifAny(" by ", amount)}`),
  drain: (what: string, volume: string, into?: string) =>
    sentence(`Drain ${what} (${volume})${ifAny(" into ", into && the(into))}`),
  recover: (what: string, volume: string, into?: string, tool?: string) =>
    sentence(`Recover ${what} (${volume})${ifAny(" into ", into && the(into))}${withTool(tool)}. Let nothing out`),
  fill: (what: string, volume: string, at?: string) => sentence(`Fill ${what} (${volume})${ifAny(" at ", at)}`),
  topUp: (what: string, at?: string) => sentence(`Top up ${what}${ifAny(" at ", at)}`),
  bleed: (what: string, at?: string) => sentence(`Bleed ${what}${ifAny(" at ", at)}`),
  evacuate: (what: string, tool?: string) => sentence(`Evacuate the circuit of ${what}${withTool(tool)}`),
  purge: (what: string, tool?: string) => sentence(`Purge the circuit of ${what}${withTool(tool)}`),
  cap: (what: string) => sentence(`Cap ${what}`),
  uncap: (what: string) => sentence(`Take the cap off ${what}`),
  restore: (hazard: string) =>
    sentence(`End the precautions against this hazard for the powered test: ${inside(hazard)}`),
  precaution: (title: string, hazard: string) => sentence(`${title}: ${inside(hazard)}`),
  precautionTitle: (title: string) => `${title}:`,
  mark: (what: string, label: string) => sentence(`Mark ${what} (mark ${label})`),
  tag: (what: string, labels: string) => sentence(labels ? `Tag ${what}: ${labels}` : `Tag ${what}`),
  align: (labels: string) => sentence(`Line up the marks ${labels}`),
  measure: (what: string, on?: string, tool?: string) =>
    sentence(`Measure${ifAny(" on ", on)}${withTool(tool)}: ${what}`),
  inspect: (what: string, on?: string) => sentence(`Inspect${ifAny(" ", on)}: ${what}`),
  test: (what: string, tool?: string) => sentence(`Test${withTool(tool)}: ${what}`),
  set: (on: string, what: string, tool?: string) => sentence(`Set ${on}${withTool(tool)}${ifAny(": ", what)}`),
  clean: (what: string, tool?: string) => sentence(`Clean ${what}${withTool(tool)}`),
  apply: (consumable: string, what: string, amount?: string) =>
    sentence(`Apply ${inside(consumable)}${ifAny(", ", amount)}${ifAny(" to ", what)}`),
  heat: (what: string, to?: string, tool?: string) => sentence(`Heat ${what}${ifAny(" to ", to)}${withTool(tool)}`),
  wait: (time: string) => sentence(`Wait at least ${time}`),
  renew: (what: string) => sentence(`Renew ${what}: fit new`),
  scrap: (what: string) => sentence(`Scrap ${what}: mark it, keep it apart`),
  reuse: (what: string) => sentence(`Use the old one again: ${what.replace(/^the /, "")}`),
  work: (what: string) => sentence(`At ${what}:`),
  put: (thing: string, on: string) => sentence(`Put ${the(thing)} on ${on} (temporary: it comes off again)`),
  take: (thing: string) => sentence(`Take off ${the(thing)}`),
  press: (what: string, onto?: string, tool?: string) =>
    sentence(`Press ${what}${ifAny(" onto ", onto)}${withTool(tool)}`),
  fit: (verb: string, what: string, of: FitWords) => {
    // A verb such as "Set new" says itself that the thing is new.
    const isNew = verb.endsWith(" new") || of.fresh;
    const says =
      isNew && !what.startsWith("the ")
        ? `new ${what}`
        : isNew
          ? what.replace(/^the (\d+ )?/, (_, count: string | undefined) => (count ? `${count}new ` : "a new "))
          : what;
    const more = `${ifAny(" to ", of.onto)}${ifAny(", facing ", of.facing)}${withTool(of.tool)}${byPeople(of.people)}${ifAny(": ", of.how)}`;
    return sentence(verbWith(verb.replace(/ new$/, ""), says) + more);
  },
  lowerIn: (what: string, tool?: string, people?: number) =>
    sentence(`Lower ${what} into place${withTool(tool)}${byPeople(people)}`),
  fingerTight: (what: string) => sentence(`Fit ${what} finger-tight`),
  tighten: (what: string, stage?: number) =>
    sentence(`Tighten ${what}${stage === undefined ? "" : ` to stage ${stage}`}`),
  precautionBackTitle: (title: string) => `Take back (${title.toLowerCase()}):`,
  starts: {
    without: (what: string) => sentence(`At the start: without ${what}`),
    drained: (what: string) => sentence(`At the start: ${what} drained`),
    with: (title: string, hazard: string) =>
      sentence(`At the start this stands already: ${title.toLowerCase()}, ${hazard.replace(/^the /, "")}`),
    onBench: "At the start: on the bench, off the unit.",
  },
  leaves: (
    how: "out" | "finger-tight" | "off" | "drained" | "turned",
    what: string,
    until: string | undefined,
    words: string,
  ) =>
    [
      sentence(
        `Left at the end: ${how === "turned" ? "the unit turned, " : ""}${what}${how === "turned" ? "" : ` ${how}`}${ifAny(", until: ", until)}`,
      ),
      words,
    ]
      .filter(Boolean)
      .join(" "),
  afterwards: (text: string) => `Afterwards: ${text}`,
  stillStands: (title: string, hazard: string) =>
    sentence(`Not taken back here, work is left open: ${title.toLowerCase()}, ${inside(hazard)}`),
  standAgain: (title: string, hazard: string) =>
    sentence(`Take the precaution again: ${title.toLowerCase()}, ${inside(hazard)}`),
  repeatFrom: (step: string) => sentence(`Repeat from ${step}`),
  doProcedure: (title: string) => sentence(`Do: ${title}`),
  secondCheck: "A second person looks, and signs.",
  holdPoint: "Stop here until this point is released.",
  time: (time: string) => sentence(`Time: about ${time}`),
  people: (count: number) => sentence(`People: ${count}`),
  video: (from: string, to: string, file: string | undefined) => sentence(`Video${ifAny(" ", file)}: ${from} to ${to}`),

  // Details under an action.
  spanner: (tool: string, size: string) =>
    size ? (tool === "spanner" || tool.endsWith("key") ? `${size} ${tool}` : `${tool} ${size}`) : tool,
  leftHand: "Left-hand thread: clockwise undoes, anticlockwise tightens.",
  comesAway: (what: string) => sentence(`Comes away with it: ${what}`),
  withWashers: (what: string) => sentence(`With ${what}`),
  massHere: (mass: string, notGiven: number) =>
    sentence(
      notGiven === 0
        ? `Mass as it hangs: ${mass}`
        : mass
          ? `Mass as it hangs: ${mass} and ${notGiven === 1 ? "1 part" : `${notGiven} parts`} with mass not given`
          : "Mass not given: weigh or ask before you lift",
    ),
  into: (kind: "tray" | "bag" | "container", label: string) =>
    sentence(kind === "container" ? `Into ${the(label)}` : `Into ${kind} ${label}`),
  opens: (what: string) => sentence(`Open for it: ${what}`),
  closesAfter: (what: string) => sentence(`Close it again: ${what}`),
  against: (hazard: string) => sentence(`Against: ${inside(hazard)}`),
  waitLeast: (time: string, why: string) => sentence(`Wait at least ${time}${ifAny(" (", why)}${why ? ")" : ""}`),
  waitWhy: {
    maker: "as given with the precaution",
    "to-60-V": "computed, to 60 V dc; no wait stands for a proof",
    "to-0.2-J": "computed, to 0.2 J; no wait stands for a proof",
  },
  inPasses: (count: number, shares: string) =>
    shares ? `in ${count} passes: ${shares}` : `in ${count === 1 ? "1 pass" : `${count} passes`}`,
  undoInPasses: (count: number) => sentence(`In ${count === 1 ? "1 pass" : `${count} passes`}, each a little`),
  sequence: (title: string) => title.toLowerCase(),
  order: (order: string, round: boolean) =>
    sentence(round ? `Order, counted clockwise from any one: ${order}` : `Order, counted along the pattern: ${order}`),
  torqueNone: "no torque asked",
  torqueNotGiven: "torque not given",
  torqueFor: (value: string, forWhat: number | "rest" | undefined, whileText: string | undefined) =>
    `${value}${forWhat === undefined ? "" : forWhat === "rest" ? " for the rest" : ` for ${forWhat}`}${ifAny(", while ", whileText)}`,
  stages: (stages: readonly string[]) => stages.join(", then "),
  backOutAfter: (angle: string, until: string | undefined) => `then back out ${angle}${ifAny(" until ", until)}`,
  torqueLine: (torque: string) => sentence(/^(?:no )?torque\b/.test(torque) ? torque : `Torque: ${torque}`),
  tightenLater: "The torque comes later.",
  threadLocker: (name: string) => sentence(`On the thread: ${inside(name)}`),
  lubricant: (name: string) => sentence(`Lubricate: ${inside(name)}`),
  newIf: {
    worn: "New if worn.",
    damaged: "New if damaged.",
    "as-a-set": "If new: the whole set.",
    "by-pairs": "If new: in pairs.",
    reading: "New if the reading asked for it.",
    chosen: "Of the size that the reading asked for.",
    "kind-not-said": "Of a kind that is used once: the procedure does not say new or old.",
  },
  isNew: "Fit new.",
  aNew: (name: string, count: number) => (count > 1 ? `${count} new ${inside(name)}` : `a new ${inside(name)}`),
  /** How several joints let go or go together, in one phrase. */
  hows: (verbs: readonly string[]) => (verbs.length === 0 ? undefined : verbs.map(lowerFirst).join(", ")),
  limitsLine: (limits: string) => sentence(`Limits: ${limits}`),
  newEvery: (strips: number) => sentence(strips === 1 ? "New at every strip" : `New every ${strips} strips`),
  reuseTimes: (times: number) =>
    sentence(`May be used again ${times === 1 ? "once" : `${times} times`}: count it, then new`),
  ownPlace: "Keep each with its place: it goes back there.",
  ownPlaceBack: "Back in its own place.",
  keepTogether: (sets: readonly string[]) => sentence(`Keep together: ${sets.join("; ")}`),
  togetherAgain: (sets: readonly string[]) => sentence(`Together again: ${sets.join("; ")}`),
  newWasher: (what: string) => sentence(`With new ${what.replace(/^the /, "")}`),
  discardOf: (what: string) =>
    sentence(
      `Do not keep ${what}: ${looksPlural(what) || / and /.test(what) ? "new ones go" : "a new one goes"} back in`,
    ),
  discard: "Do not keep: a new one goes back in.",
  lineUp: (label: string, text: string) => sentence(`Line up the mark ${label}${ifAny(": ", text)}`),
  tagged: (labels: string) => sentence(`By the tags: ${labels}`),
  alignBy: (text: string) => `Alignment: ${text}`,
  goesOnDry: "Fit dry: nothing on the faces.",
  seal: (joint: string, consumable: string, bead: string) =>
    sentence(`Before the parts meet, on ${inside(joint)}: ${inside(consumable)}${ifAny(", ", bead)}`),
  usesUp: (what: string) => sentence(`Uses: ${what}`),
  bead: (width: string, length: string | undefined) =>
    length ? `bead ${width} x ${length}` : `bead ${width}, length not given`,
  piecesNamed: (name: string, pieces: readonly string[]) => `${inside(name)} ${list(pieces)}`,
  each: (what: string, count: number) => `${what}, ${count} each`,
  volumeNotGiven: "volume not given",
  massNotGiven: "mass not given",
  countNotGiven: "count not given",

  // Readings.
  limits: {
    atLeast: (value: string) => `at least ${value}`,
    atMost: (value: string) => `at most ${value}`,
    both: (low: string, high: string) => `${low} to ${high}`,
    condition: (value: string) => ` at ${value}`,
  },
  range: (low: string, high: string, unit: string) => `${low} to ${high} ${unit}`,
  noLimits: "no limits given: write it down",
  asFound: "as found",
  otherwiseLine: (what: string) => (what.startsWith("If not:") ? what : sentence(`If not: ${what}`)),
  otherwise: (what: string) => sentence(`If not: ${what}`),
  consequence: {
    renew: (what: string) => `renew ${what}`,
    scrap: (what: string) => `scrap ${what}`,
    repeat: (what: string) => `repeat from ${what}`,
    choose: (what: string, from: string) => `choose ${what} from ${from}`,
    standardSize: "the standard size",
    further: (build: string) => `go on by the papers of the build "${build}"`,
  },
};

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
