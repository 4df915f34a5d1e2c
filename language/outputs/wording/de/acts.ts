// Die gedruckten Sätze der Handgriffe, beim Zerlegen und beim Zusammenbau.

import type { Wording } from "../wording.ts";
import { ifAny, joined, lowerFirst, sentence } from "../phrases.ts";
import { counted, list, people, some, the, verbWith } from "./phrases.ts";

const withTool = (what: string, tool: string | undefined): string => `${what}${ifAny(" mit ", tool)}`;
const by = (count: number | undefined): string => (count ? `, ${people(count)}` : "");
const passes = (count: number): string => counted(count, "Durchgang", "Durchgängen");

export const acts: Wording["acts"] = {
  the,
  some,
  list,
  givenOtherwise: "nur wenn das Ergebnis davor nicht wie vorgesehen ist",
  givenState: (title, state) =>
    `${title}${{ "": "", fails: " (nicht wie vorgesehen)", removed: " (ausgebaut)" }[state]}`,
  givenPieces: (unless, any, pieces) =>
    `${unless ? "nicht für: " : "nur für: "}${pieces.join(any ? " oder " : " und ")}`,
  givenCondition: (unless, any, states) =>
    `${unless ? "nicht bei: " : "nur bei: "}${states.join(any ? " oder " : " und ")}`,

  undo: (verb, what, tool) => sentence(verbWith(verb, withTool(what, tool))),
  loosen: (what, amount, tool) =>
    sentence(`${withTool(what, tool)}${ifAny(" um ", amount)} lockern; nicht herausnehmen`),
  backOut: (what, amount, tool) =>
    sentence(`${withTool(what, tool)}${ifAny(" um ", amount)} zurückdrehen; im Loch lassen`),
  remove: (verb, what, how, tool, count) =>
    sentence(`${verbWith(verb, withTool(what, tool))}${by(count)}${ifAny(": ", how)}`),
  removeTogether: (what, tool, count) =>
    sentence(`${withTool(what, tool)} zusammen als ein Stück ausbauen${by(count)}`),
  lift: (what, tool, count) => sentence(`${withTool(what, tool)} abheben${by(count)}`),
  support: (what, tool) => sentence(`${withTool(what, tool)} abstützen; so gehalten lassen`),
  hold: (what, tool) => sentence(`${withTool(what, tool)} gegen Mitdrehen halten`),
  release: (what, tool) => sentence(`Stütze wegnehmen: ${what}${ifAny(", ", tool)}`),
  aside: (verb, what, amount) =>
    sentence(
      `${what} ${verb === "open" ? "öffnen" : `${ifAny("um ", amount)}${amount ? " " : ""}zur Seite ${verb === "swing" ? "schwenken" : "schieben"}`}; nicht abnehmen`,
    ),
  back: (verb, what) =>
    sentence(
      verb === "open"
        ? `${what} schließen`
        : `${what} an den Platz zurück${verb === "swing" ? "schwenken" : "schieben"}`,
    ),
  turn: (position, part) => sentence(`${part ?? "Einheit"} drehen: ${position}`),
  turnBack: (position) => sentence(`Einheit zurückdrehen: ${position}`),
  rotate: (what, amount) => sentence(`${what} von Hand drehen${ifAny(", ", amount)}`),
  drain: (what, volume, into) => sentence(`${what} (${volume}) ablassen${ifAny(" in: ", into)}`),
  recover: (what, volume, into, tool) =>
    sentence(
      `${withTool(`${what} (${volume})`, tool)} zurückgewinnen${ifAny(" in: ", into)}; nichts entweichen lassen`,
    ),
  fill: (what, volume, at) => sentence(`${what} (${volume}) einfüllen${ifAny(" bei: ", at)}`),
  topUp: (what, at) => sentence(`${what} nachfüllen${ifAny(" bei: ", at)}`),
  bleed: (what, at) => sentence(`${what} entlüften${ifAny(" bei: ", at)}`),
  evacuate: (what, tool) => sentence(`Kreislauf ${withTool("", tool).trim()}${tool ? " " : ""}evakuieren: ${what}`),
  purge: (what, tool) => sentence(`Kreislauf ${withTool("", tool).trim()}${tool ? " " : ""}spülen: ${what}`),
  cap: (what) => sentence(`${what} verschließen`),
  uncap: (what) => sentence(`Verschlusskappe abnehmen: ${what}`),
  restore: (hazard) => sentence(`Vorkehrungen gegen diese Gefährdung für den Probelauf aufheben: ${hazard}`),
  precaution: (title, hazard) => sentence(`${title}: ${hazard}`),
  precautionTitle: (title) => `${title}:`,
  mark: (what, label) => sentence(`${what} kennzeichnen (Zeichen ${label})`),
  tag: (what, labels) => sentence(`${what} mit Anhänger versehen${ifAny(": ", labels)}`),
  align: (labels) => sentence(`Zeichen zur Deckung bringen: ${labels}`),
  measure: (what, on, tool) => sentence(`Messen${ifAny(" an ", on)}${ifAny(" mit ", tool)}: ${what}`),
  inspect: (what, on) => sentence(`Sichtprüfung${ifAny(" an ", on)}: ${what}`),
  test: (what, tool) => sentence(`Prüfen${ifAny(" mit ", tool)}: ${what}`),
  set: (on, what, tool) => sentence(`${withTool(on, tool)} einstellen${ifAny(": ", what)}`),
  clean: (what, tool) => sentence(`${withTool(what, tool)} reinigen`),
  apply: (consumable, what, amount) =>
    sentence(`${consumable}${ifAny(", ", amount)}${amount ? "," : ""} auftragen${ifAny(" auf: ", what)}`),
  heat: (what, to, tool) => sentence(`${withTool(what, tool)}${ifAny(" auf ", to)} erwärmen`),
  wait: (time) => sentence(`Mindestens ${time} warten`),
  renew: (what) => sentence(`${what} erneuern: neu einsetzen`),
  scrap: (what) => sentence(`${what} aussondern: kennzeichnen, getrennt aufbewahren`),
  reuse: (what) => sentence(`Altteil wieder verwenden: ${what}`),
  work: (what) => sentence(`An ${what}:`),
  put: (thing, on) => sentence(`${thing} anbringen an: ${on} (vorübergehend: kommt wieder ab)`),
  take: (thing) => sentence(`${thing} abnehmen`),
  press: (what, onto, tool) => sentence(`${withTool(what, tool)} aufpressen${ifAny(" auf: ", onto)}`),
  fit: (verb, what, of) => {
    const isNew = of.fresh && !verb.startsWith("neu ");
    return sentence(
      `${verbWith(verb, withTool(`${what}${isNew ? " (neu)" : ""}`, of.tool))}${joined(
        [
          "",
          of.onto && `an: ${of.onto}`,
          of.facing && `Richtung: ${of.facing}`,
          of.people ? people(of.people) : "",
        ].map((each) => (each ? `, ${each}` : "")),
        "",
      )}${ifAny(": ", of.how)}`,
    );
  },
  lowerIn: (what, tool, count) => sentence(`${withTool(what, tool)} einsetzen und absenken${by(count)}`),
  fingerTight: (what) => sentence(`${what} handfest anziehen`),
  tighten: (what, stage) => sentence(`${what}${stage === undefined ? "" : ` auf Stufe ${stage}`} anziehen`),
  precautionBackTitle: (title) => `Aufheben (${title}):`,
  starts: {
    without: (what) => sentence(`Zu Beginn: ohne ${what}`),
    drained: (what) => sentence(`Zu Beginn abgelassen: ${what}`),
    with: (title, hazard) => sentence(`Zu Beginn gilt schon: ${title}, ${hazard}`),
    onBench: "Zu Beginn: auf der Werkbank, aus der Einheit ausgebaut.",
  },
  leaves: (how, what, until, words) =>
    joined(
      [
        sentence(
          `Bleibt am Ende: ${how === "turned" ? "Einheit gedreht, " : ""}${what}${{ turned: "", out: ", ausgebaut", "finger-tight": ", nur handfest", off: ", abgenommen", drained: ", abgelassen" }[how]}${ifAny(", bis: ", until)}`,
        ),
        words,
      ],
      " ",
    ),
  afterwards: (text) => `Danach: ${text}`,
  stillStands: (title, hazard) => sentence(`Hier nicht aufgehoben, weil Arbeit offen bleibt: ${title}, ${hazard}`),
  standAgain: (title, hazard) => sentence(`Vorkehrung erneut treffen: ${title}, ${hazard}`),
  repeatFrom: (step) => sentence(`Wiederholen ab ${step}`),
  doProcedure: (title) => sentence(`Ausführen: ${title}`),
  secondCheck: "Eine zweite Person kontrolliert und unterschreibt.",
  holdPoint: "Hier anhalten, bis dieser Punkt freigegeben ist.",
  time: (time) => sentence(`Zeit: etwa ${time}`),
  people: (count) => sentence(`Personen: ${count}`),
  video: (from, to, file) => sentence(`Video${ifAny(" ", file)}: ${from} bis ${to}`),

  spanner: (tool, size) => joined([tool, size], " "),
  leftHand: "Linksgewinde: Lösen im Uhrzeigersinn, Anziehen gegen den Uhrzeigersinn.",
  comesAway: (what) => sentence(`Kommt mit ab: ${what}`),
  withWashers: (what) => sentence(`Dazu: ${what}`),
  massHere: (mass, notGiven) =>
    sentence(
      notGiven === 0
        ? `Masse, die hier hängt: ${mass}`
        : mass
          ? `Masse, die hier hängt: ${mass} und ${counted(notGiven, "Teil", "Teile")} ohne Angabe der Masse`
          : "Masse nicht angegeben: vor dem Heben wiegen oder fragen",
    ),
  into: (kind, label) =>
    sentence(kind === "container" ? `In: ${label}` : `In ${kind === "tray" ? "Schale" : "Beutel"} ${label}`),
  opens: (what) => sentence(`Dafür öffnen: ${what}`),
  closesAfter: (what) => sentence(`Danach wieder schließen: ${what}`),
  against: (hazard) => sentence(`Gegen: ${hazard}`),
  waitLeast: (time, why) => sentence(`Mindestens ${time} warten${why ? ` (${why})` : ""}`),
  waitWhy: {
    maker: "wie bei der Vorkehrung angegeben",
    "to-60-V": "berechnet, bis 60 V DC; kein Warten ersetzt die Feststellung",
    "to-0.2-J": "berechnet, bis 0,2 J; kein Warten ersetzt die Feststellung",
  },
  inPasses: (count, shares) => `in ${passes(count)}${ifAny(": ", shares)}`,
  undoInPasses: (count) => sentence(`In ${passes(count)}, jedes Mal ein wenig`),
  sequence: (title) => lowerFirst(title),
  order: (order, round) =>
    sentence(
      round
        ? `Reihenfolge, im Uhrzeigersinn gezählt, Beginn beliebig: ${order}`
        : `Reihenfolge, am Muster entlang gezählt: ${order}`,
    ),
  torqueNone: "kein Anziehdrehmoment verlangt",
  torqueNotGiven: "Anziehdrehmoment nicht angegeben",
  torqueFor: (value, forWhat, whileText) =>
    `${value}${forWhat === undefined ? "" : forWhat === "rest" ? " für die übrigen" : ` für ${forWhat}`}${ifAny(", dabei: ", whileText)}`,
  stages: (stages) => stages.join(", dann "),
  backOutAfter: (angle, until) => `dann ${angle} zurückdrehen${ifAny(", bis: ", until)}`,
  torqueLine: (torque) =>
    sentence(/^(?:kein )?Anziehdrehmoment\b/.test(torque) ? torque : `Anziehdrehmoment: ${torque}`),
  tightenLater: "Das Anziehdrehmoment folgt später.",
  threadLocker: (name) => sentence(`Auf das Gewinde: ${name}`),
  lubricant: (name) => sentence(`Schmieren mit: ${name}`),
  newIf: {
    worn: "Neu, wenn verschlissen.",
    damaged: "Neu, wenn beschädigt.",
    "as-a-set": "Wenn neu: der ganze Satz.",
    "by-pairs": "Wenn neu: paarweise.",
    reading: "Neu, wenn der Messwert es verlangt hat.",
    chosen: "In der Größe, die der Messwert verlangt hat.",
    "kind-not-said": "Von einer Art, die einmal verwendet wird: Die Anleitung sagt nicht, ob neu oder alt.",
  },
  isNew: "Neu einsetzen.",
  aNew: (name, count) => `${name} (${count > 1 ? `${count} Stück, ` : ""}neu)`,
  hows: (verbs) => (verbs.length === 0 ? undefined : verbs.join(", ")),
  limitsLine: (limits) => sentence(`Grenzen: ${limits}`),
  newEvery: (strips) => sentence(`Neu nach ${strips === 1 ? "jeder Zerlegung" : `je ${strips} Zerlegungen`}`),
  reuseTimes: (times) => sentence(`Darf ${times}-mal wieder verwendet werden: mitzählen, danach neu`),
  ownPlace: "Jedes Teil seinem Platz zuordnen: Dorthin kommt es zurück.",
  ownPlaceBack: "Zurück an den eigenen Platz.",
  keepTogether: (sets: readonly string[]) => sentence(`Zusammen halten: ${sets.join("; ")}`),
  togetherAgain: (sets: readonly string[]) => sentence(`Wieder zusammen: ${sets.join("; ")}`),
  newWasher: (what) => sentence(`Neu dazu: ${what}`),
  discardOf: (what) => sentence(`Nicht wieder verwenden: ${what}. Neu einsetzen`),
  discard: "Nicht wieder verwenden: neu einsetzen.",
  lineUp: (label, text) => sentence(`Zeichen ${label} zur Deckung bringen${ifAny(": ", text)}`),
  tagged: (labels) => sentence(`Nach den Anhängern: ${labels}`),
  alignBy: (text) => `Ausrichtung: ${text}`,
  goesOnDry: "Trocken einsetzen: nichts auf die Flächen.",
  seal: (joint, consumable, bead) =>
    sentence(`Bevor die Teile sich berühren, auf ${joint}: ${consumable}${ifAny(", ", bead)}`),
  usesUp: (what) => sentence(`Braucht: ${what}`),
  bead: (width, length) => (length ? `Raupe ${width} x ${length}` : `Raupe ${width}, Länge nicht angegeben`),
  piecesNamed: (name, pieces) => `${name} ${list(pieces)}`,
  each: (what, count) => `${what}, je ${count} Stück`,
  volumeNotGiven: "Volumen nicht angegeben",
  massNotGiven: "Masse nicht angegeben",
  countNotGiven: "Anzahl nicht angegeben",

  limits: {
    atLeast: (value) => `mindestens ${value}`,
    atMost: (value) => `höchstens ${value}`,
    both: (low, high) => `${low} bis ${high}`,
    condition: (value) => ` bei ${value}`,
  },
  range: (low, high, unit) => `${low} bis ${high} ${unit}`,
  noLimits: "keine Grenzen angegeben: aufschreiben",
  asFound: "wie vorgefunden",
  otherwiseLine: (what) => (what.startsWith("Wenn nicht:") ? what : sentence(`Wenn nicht: ${what}`)),
  otherwise: (what) => sentence(`Wenn nicht: ${what}`),
  consequence: {
    renew: (what) => `${what} erneuern`,
    scrap: (what) => `${what} aussondern`,
    repeat: (what) => `wiederholen ab ${what}`,
    choose: (what, from) => `${what} auswählen aus ${from}`,
    standardSize: "Normalmaß",
    further: (build) => `weiter nach den Unterlagen der Ausführung „${build}“`,
  },
};
