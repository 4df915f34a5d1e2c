// The facts of one thing, read from its declaration once every thing has its number, since they speak of each other.

import type { Quantity, ThreadSize } from "../quantities/index.ts";
import { fastenerKinds, fluidKinds, jointKinds, kindIn } from "../tables/index.ts";
import type { Name } from "./act.ts";
import {
  accept,
  cursorOf,
  firstOf,
  headSpan,
  takeLabel,
  takeName,
  takeNames,
  takeNumber,
  takeOf,
  takeQuantity,
  takeString,
} from "./cursor.ts";
import type { Cursor, Line } from "./cursor.ts";
import { linesOf, messagesOfPiece } from "./declared-thing.ts";
import { indexesOf } from "./draft.ts";
import type { Draft, Drafts, UnitDraft } from "./draft.ts";
import type { Fluid, Hazard, Library, Part, Precaution, RenewRule, ThingIndex, Tie } from "./model.ts";
import { hazardFigures, readPrecaution } from "./read-hazard.ts";
import { readBetween, readFits, readLift } from "./read-part.ts";
import { readPhoto } from "./read-procedure.ts";
import type { StandingMessage } from "./read-statement.ts";
import {
  fromTable,
  readBackOut,
  readBead,
  readCount,
  readDrive,
  readJoins,
  readPasses,
  readPattern,
  readRenew,
  readSequence,
  readSize,
  readStages,
  readTorque,
  readWasher,
} from "./read-tie.ts";
import { saidInside } from "./unit-as-part.ts";

/** What the facts are read against. */
export interface Reading {
  readonly drafts: Drafts;
  readonly units: readonly UnitDraft[];
  readonly library: Library;
  readonly standing: readonly StandingMessage[];
  /** Filled as hazards are read: a precaution's number is its place here. */
  readonly precautions: Precaution[];
}

// Made once: most things say none of these, and would make a function for nothing.
const takeMass = takeOf("mass"),
  takeVoltage = takeOf("voltage"),
  takeLength = takeOf("length"),
  takeForce = takeOf("force"),
  takeVolume = takeOf("volume");
const takeAlign = (c: Cursor): string | undefined => {
  accept(c, "by");
  return takeString(c);
};
const takeUnit = (c: Cursor): string | undefined => {
  accept(c, "unit");
  return takeName(c)?.text;
};
const takeRests = (c: Cursor): readonly Name[] => {
  accept(c, "on");
  return takeNames(c);
};
const takeMatched = (c: Cursor): readonly Name[] => {
  accept(c, "with");
  return takeNames(c);
};

function refs(draft: Draft, word: string, take: (c: Cursor) => readonly Name[] = takeNames): ThingIndex[] {
  const found: ThingIndex[] = [];
  for (const one of linesOf(draft.thing, word, draft.piece))
    for (const name of take(cursorOf(one)))
      for (const index of indexesOf(draft.unit, name.text, draft.piece)) if (!found.includes(index)) found.push(index);
  return found;
}
function one<T>(draft: Draft, word: string, take: (c: Cursor) => T | undefined): T | undefined {
  return firstOf(linesOf(draft.thing, word, draft.piece), take);
}
function line<T>(draft: Draft, word: string, read: (line: Line) => T): T | undefined {
  const found = linesOf(draft.thing, word, draft.piece)[0];
  return found && read(found);
}
function isPartIndex(r: Reading, index: ThingIndex): boolean {
  return index < r.drafts.part.length;
}
/** Stations of a way in their order, that of a closed one with its first station again at the end. */
function stations(draft: Draft, word: string): ThingIndex[] {
  return linesOf(draft.thing, word, draft.piece)
    .flatMap((l) => takeNames(cursorOf(l)))
    .flatMap((name) => indexesOf(draft.unit, name.text, draft.piece))
    .filter((thing, i, all) => thing !== all[i - 1]);
}
function partRefs(r: Reading, draft: Draft, word: string, take?: (c: Cursor) => readonly Name[]): ThingIndex[] {
  const found = refs(draft, word, take);
  return found.length === 0 ? found : found.filter((index) => isPartIndex(r, index));
}

function partsNamed(r: Reading, { unit, piece }: Draft, names: readonly string[]): ThingIndex[] {
  const found: ThingIndex[] = [];
  for (const name of names)
    for (const index of indexesOf(unit, name, piece)) if (isPartIndex(r, index)) found.push(index);
  return found;
}

/**
 * What all things have. A part or a tie takes it field by field: an object that begins with a spread has no room for the forty fields
 * behind it, and moves them all to a larger place for every three that are added.
 */
function base(r: Reading, draft: Draft) {
  const { thing, piece, unit, index, id } = draft,
    name = thing.name === "" ? thing.id : thing.name;
  const of = placeOf(r, unit),
    messages = [...thing.messages, ...messagesOfPiece(thing, piece)];
  for (const s of r.standing)
    if (
      (s.name === thing.kind && thing.kind !== "") ||
      (s.prefix === unit.prefix && s.name === thing.id) ||
      (s.prefix === unit.prefix && piece !== "" && s.name === `${thing.id}.${piece}`)
    )
      messages.push(s.message);
  return {
    index,
    id,
    declared: thing.id,
    name: `${name}${of === "" ? "" : ` (${of})`}${piece === "" ? "" : ` ${piece}`}`,
    piece,
    prefix: unit.prefix,
    at: thing.at,
    whole: thing.whole,
    about: thing.about,
    messages,
  };
}
/** Of one of several alike units inside parts: the part that it is, so that its things are told from those of the others. */
function placeOf(r: Reading, unit: UnitDraft): string {
  if (unit.host === undefined || !r.units.some((other) => other !== unit && other.item === unit.item)) return "";
  const { thing, piece } = unit.host,
    name = thing.name === "" ? thing.id : thing.name;
  return piece === "" ? name : `${name} ${piece}`;
}
/** What it is behind; of several pieces the others. */
function behindOf(draft: Draft): ThingIndex[] {
  const found = refs(draft, "behind");
  return found.length === 0 || draft.piece === "" ? found : found.filter((index) => index !== draft.index);
}
function renewOf(draft: Draft, kind: string): RenewRule | undefined {
  const lines = linesOf(draft.thing, "renew", draft.piece),
    own = lines.length === 0 ? undefined : readRenew(lines),
    standing = kind === "" ? undefined : draft.unit.renewKinds.get(kind);
  if (own === undefined) return standing;
  // What goes with it says nothing of when: the standing rule holds beside it.
  return own.when === undefined && standing ? { ...standing, together: own.together } : own;
}

export function readPart(r: Reading, draft: Draft): Part {
  const { thing, piece } = draft,
    count = line(draft, "count", readCount),
    pieces = linesOf(thing, "pieces", "")[0];
  const lift = line(draft, "lift", readLift),
    size = line(draft, "size", readSize),
    fits = line(draft, "fits", readFits),
    mass = one(draft, "mass", takeMass),
    is = one(draft, "is", takeUnit),
    inside = is === undefined ? undefined : saidInside(r.units, draft),
    between = line(draft, "between", readBetween);
  const sides = between && ([partsNamed(r, draft, between[0]), partsNamed(r, draft, between[1])] as const);
  const of = base(r, draft);
  return {
    index: of.index,
    id: of.id,
    declared: of.declared,
    name: of.name,
    piece: of.piece,
    prefix: of.prefix,
    at: of.at,
    whole: of.whole,
    about: of.about,
    messages: of.messages,
    is: "part",
    kind: thing.kind,
    count: count?.count ?? 1,
    countUnknown: count?.unknown ?? false,
    ownPlace: pieces !== undefined && headText(pieces).endsWith("own-place"),
    hosts: fits ? partsNamed(r, draft, fits.hosts) : [],
    fitsBy: fits?.by,
    rests: partRefs(r, draft, "rests", takeRests),
    matched: partRefs(r, draft, "matched", takeMatched),
    between: sides?.every((things) => things.length > 0) ? sides : undefined,
    behind: behindOf(draft),
    positions: names(draft, "needs"),
    hangs: linesOf(thing, "hangs", piece).length > 0,
    into: refs(draft, "into")[0],
    renew: renewOf(draft, thing.kind),
    liftPeople: lift?.people,
    liftWith: lift?.tools ?? [],
    mass: mass ?? inside?.mass,
    massFrom: mass !== undefined || !inside ? "part" : inside.massFrom,
    size,
    supply: one(draft, "supply", takeVoltage) ?? inside?.supply,
    groove: one(draft, "groove", takeLength),
    reach: one(draft, "reach", takeLength),
    dry: linesOf(thing, "dry", piece).length > 0,
    alignBy: one(draft, "align", takeAlign),
    partNo: one(draft, "part-no", takeString),
    standard: one(draft, "standard", takeString),
    photos: linesOf(thing, "photo", piece).map(readPhoto),
    unit: is,
  };
}

export function readTie(r: Reading, draft: Draft): Tie {
  const { thing, piece, unit } = draft,
    fastener = thing.word === "fastener",
    kind = thing.kind === "" && fastener ? "screw" : thing.kind;
  const count = line(draft, "count", readCount),
    joins = line(draft, "joins", readJoins),
    joint = fastener ? undefined : kindIn(jointKinds, kind),
    pieces = count?.count ?? 1;
  let lowers = joins ? partsNamed(r, draft, joins.lowers) : [];
  const uppers = joins ? partsNamed(r, draft, joins.uppers) : [];
  // As many pieces as names: one each, in order.
  const labels = unit.labels.get(thing.id) ?? [];
  if (joins?.each && joins.lowers.length > 1 && joins.lowers.length === labels.length)
    lowers = partsNamed(r, draft, [joins.lowers[labels.indexOf(piece)]!]);
  const into = refs(draft, "into")[0],
    size = line(draft, "size", readSize),
    thread: ThreadSize | undefined = size && !Array.isArray(size) ? (size as ThreadSize) : undefined;
  const torques = linesOf(thing, "torque", piece)
    .map(readTorque)
    .map((torque) => fromTable(torque, thread, r.library));
  if (
    torques.length === 0 &&
    fastener &&
    linesOf(thing, "stages", piece).length === 0 &&
    unit.torqueStandard !== undefined &&
    kindIn(fastenerKinds, kind)?.turned
  ) {
    torques.push(
      fromTable(
        {
          is: unit.torqueInWords ? "words" : "standard",
          value: undefined,
          table: unit.torqueInWords ? undefined : unit.torqueStandard,
          words: unit.torqueInWords ? unit.torqueStandard : undefined,
          forCount: undefined,
          while: undefined,
          at: thing.at,
        },
        thread,
        r.library,
      ),
    );
  }
  const of = base(r, draft);
  return {
    index: of.index,
    id: of.id,
    declared: of.declared,
    name: of.name,
    piece: of.piece,
    prefix: of.prefix,
    at: of.at,
    whole: of.whole,
    about: of.about,
    messages: of.messages,
    is: "tie",
    fastener,
    kind,
    count: pieces,
    countUnknown: count?.unknown ?? false,
    lowers,
    uppers,
    seat: lowers[0] ?? (into !== undefined && isPartIndex(r, into) ? into : undefined),
    into,
    passing: joint?.parts === "in passing",
    oneWay: joint?.remade === "never",
    behind: behindOf(draft),
    positions: names(draft, "needs"),
    opens: opensOf(r, draft, joint?.opens === "fluid", lowers, uppers),
    renew: renewOf(draft, kind),
    reuseTimes: one(draft, "reuse", takeNumber),
    washers: linesOf(thing, "with", piece)
      .map(readWasher)
      .flatMap((w) =>
        indexesOf(unit, w.name, piece)
          .filter((index) => isPartIndex(r, index))
          .map((part) => ({ part, count: w.count === undefined ? pieces : shareOf(w.count, labels, piece) })),
      ),
    size: thread,
    propertyClass: one(draft, "class", takeLabel) ?? thread?.propertyClass,
    grade: one(draft, "grade", takeLabel),
    strengthAt: line(draft, "class", headSpan) ?? line(draft, "grade", headSpan),
    drive: line(draft, "drive", readDrive),
    torques,
    stages: line(draft, "stages", readStages) ?? [],
    backOut: line(draft, "back-out", readBackOut),
    passes: line(draft, "passes", readPasses),
    sequence: line(draft, "sequence", readSequence),
    pattern: line(draft, "pattern", readPattern),
    threadLocker: one(draft, "thread-locker", takeName),
    lubricant: one(draft, "lubricant", takeName),
    how: one(draft, "how", takeString),
    force: one(draft, "force", takeForce),
    uses: linesOf(thing, "uses", piece).flatMap((l) => takeNames(cursorOf(l))),
    bead: line(draft, "bead", readBead),
    partNo: one(draft, "part-no", takeString),
    standard: one(draft, "standard", takeString),
    figures: extraFigures(draft),
  };
}

/** The fluids that it says it opens; a joint in a fluid's way that says nothing opens what runs through both of its sides. */
function opensOf(
  r: Reading,
  draft: Draft,
  isLine: boolean,
  lowers: readonly ThingIndex[],
  uppers: readonly ThingIndex[],
): ThingIndex[] {
  const said = refs(draft, "opens");
  if (said.length > 0 || !isLine) return said;
  return r.drafts.fluid
    .filter((fluid) => {
      const path = refs(fluid, "path");
      return lowers.some((part) => path.includes(part)) && uppers.some((part) => path.includes(part));
    })
    .map((fluid) => fluid.index);
}

/** Properties that only a figure reads, by word: all that the table lists for fasteners and joints beyond those read above. */
function extraFigures(draft: Draft): ReadonlyMap<string, Quantity | number | string> {
  let map: Map<string, Quantity | number | string> | undefined;
  for (const word of draft.thing.lines.keys()) {
    if (knownTieWords.has(word)) continue;
    const value = one(draft, word, (c): Quantity | number | string | undefined => {
      accept(c, "in");
      const at = c.at,
        quantity = takeQuantity(c);
      if (quantity) return quantity;
      c.at = at;
      return takeNumber(c) ?? takeLabel(c) ?? takeString(c);
    });
    if (value !== undefined) (map ??= new Map()).set(word, value);
  }
  return map ?? noFigures;
}

export function readFluid(r: Reading, draft: Draft): Fluid {
  const { thing, piece } = draft,
    at = (c: Cursor): readonly Name[] => {
      accept(c, "at");
      return takeNames(c);
    };
  const kind = kindIn(fluidKinds, thing.kind),
    recover = linesOf(thing, "recover", piece)[0];
  return {
    ...base(r, draft),
    is: "fluid",
    kind: thing.kind,
    volume: one(draft, "volume", takeVolume),
    amount: one(draft, "amount", takeQuantity),
    drainsAt: refs(draft, "drains", at),
    fillsAt: refs(draft, "fills", at),
    bleedsAt: refs(draft, "bleeds", at),
    recover: recover !== undefined || kind?.recover === true,
    recoverWith:
      recover &&
      one(draft, "recover", (c) => {
        accept(c, "with");
        return takeName(c);
      }),
    uses: one(draft, "uses", takeName),
    path: stations(draft, "path"),
    filled: thing.kind !== "" || linesOf(thing, "fills", piece).length > 0 || linesOf(thing, "uses", piece).length > 0,
  };
}

export function readHazard(r: Reading, draft: Draft): Hazard {
  const { thing, unit } = draft,
    figures: [string, Quantity][] = [],
    signal = thing.signal;
  for (const [word, dimension] of hazardFigures) {
    const value = one(draft, word, takeOf(dimension));
    if (value) figures.push([word, value]);
  }
  const own = linesOf(thing, "precaution", "")
    .map(readPrecaution)
    .map((facts): Precaution => {
      const { behindNames, ...rest } = facts;
      const precaution: Precaution = {
        ...rest,
        number: r.precautions.length,
        hazard: draft.index,
        behind: behindNames.flatMap((name) => indexesOf(unit, name.text, "")),
      };
      r.precautions.push(precaution);
      return precaution;
    });
  return {
    ...base(r, draft),
    is: "hazard",
    kind: thing.kind,
    signal:
      signal === "danger" || signal === "warning" || signal === "caution" || signal === "notice" ? signal : undefined,
    source: one(draft, "source", takeLabel),
    on: refs(draft, "on"),
    precautions: own,
    pushes: refs(draft, "pushes"),
    figures: new Map(figures),
    wear: linesOf(thing, "wear", "").flatMap((l) => takeNames(cursorOf(l))),
    role: one(draft, "role", takeName),
  };
}

/** So many in all, shared out over the pieces: the first get what is left over. */
function shareOf(all: number, labels: readonly string[], piece: string): number {
  if (labels.length === 0) return all;
  return Math.floor(all / labels.length) + (labels.indexOf(piece) < all % labels.length ? 1 : 0);
}

const noFigures: ReadonlyMap<string, never> = new Map<string, never>();
const knownTieWords = new Set([
  "about",
  "back-out",
  "bead",
  "behind",
  "class",
  "count",
  "danger",
  "warning",
  "caution",
  "notice",
  "drive",
  "force",
  "grade",
  "how",
  "into",
  "joins",
  "like",
  "lubricant",
  "needs",
  "opens",
  "part-no",
  "passes",
  "pattern",
  "pieces",
  "renew",
  "reuse",
  "sequence",
  "size",
  "stages",
  "standard",
  "thread-locker",
  "torque",
  "uses",
  "with",
  "photo",
]);

const headText = ({ item, source }: Line): string =>
  source.tree.scan.tokens[item.block ? item.block.first - 1 : item.last]!.text;
function names(draft: Draft, word: string): string[] {
  const lines = linesOf(draft.thing, word, draft.piece);
  return lines.length === 0 ? [] : lines.flatMap((l) => takeNames(cursorOf(l)).map((n) => n.text));
}
