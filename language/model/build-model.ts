// The model of one unit in one build, from its declaration. Two passes: first every thing gets its name and number, then its facts
// are read, since they speak of each other. Never fails: what cannot be read or found is left out; the checks say so.

import { fastenerKinds, fluidKinds, jointKinds, kindIn } from "../tables/index.ts";
import type { Project, SourceFile } from "../names/project.ts";
import type { Item } from "../syntax/index.ts";
import type { Name } from "./act.ts";
import type { Build } from "./builds.ts";
import { accept, cursorOf, headSpan, linesIn, takeLabel, takeName, takeNames, takeNumber, takeOf, takeQuantity, takeString, wordOf, type Cursor, type Line } from "./cursor.ts";
import { holdingLines, type Choice } from "./conditions.ts";
import { declareThing, linesOf, messagesOfPiece, typesSeen, type DeclaredThing } from "./declared-thing.ts";
import type { Fluid, Hazard, Message, Model, Part, Precaution, Procedure, RenewRule, Scope, Statement, Thing, ThingIndex, Tie } from "./model.ts";
import { kept } from "./kept.ts";
import { readLibrary } from "./read-library.ts";
import { readPhoto, readProcedure } from "./read-procedure.ts";
import { readSpan } from "./read-entries.ts";
import { hazardFigures, readPrecaution } from "./read-hazard.ts";
import { fromTable, readBackOut, readBead, readCount, readDrive, readJoins, readPasses, readPattern, readRenew, readSequence, readSize, readStages, readTorque, readWasher } from "./read-tie.ts";
import type { Quantity, ThreadSize } from "../quantities/index.ts";

/** A thing before its facts: one piece of one declaration, in the unit or in a unit inside a part. */
interface Draft {
  readonly id: string;
  readonly piece: string;
  readonly thing: DeclaredThing;
  readonly unit: UnitDraft;
  index: ThingIndex;
}

interface UnitDraft {
  readonly prefix: string;
  /** The part that this unit is, undefined at the top; and its declaration. */
  readonly host: Draft | undefined;
  readonly item: Item;
  readonly choice: Choice;
  readonly lines: readonly Line[];
  /** Names to drafts, pieces of one name in order. */
  readonly names: Map<string, Draft[]>;
  /** The pieces of a name, empty for a thing without. */
  readonly labels: Map<string, string[]>;
  readonly renewKinds: Map<string, RenewRule>;
  readonly torqueStandard: string | undefined;
}

const thingWords = new Set(["part", "fastener", "joint", "fluid", "hazard"]);

/** Undefined where the file sees no such unit. */
export function buildModel(project: Project, file: string, unitId: string, build: Build): Model | undefined {
  const declaration = project.seen(file).get(unitId)?.find((d) => d.word === "unit");
  if (!declaration) return undefined;
  const unitLine = { item: declaration.item, source: project.files.get(declaration.file)! };
  const drafts: Record<"part" | "tie" | "fluid" | "hazard", Draft[]> = { part: [], tie: [], fluid: [], hazard: [] };
  const units: UnitDraft[] = [], top = draftUnit(unitLine, "", { chosen: build.chosen, variant: "" }, undefined, []);
  const all = [...drafts.part, ...drafts.tie, ...drafts.fluid, ...drafts.hazard];
  all.forEach((draft, index) => { draft.index = index; });

  const library = readLibrary(project, file), precautions: Precaution[] = [], standing = standingMessages(project, file, units);
  const parts = drafts.part.map(readPart), ties = drafts.tie.map(readTie), fluids = drafts.fluid.map(readFluid), hazards = drafts.hazard.map(readHazard);
  const things: Thing[] = [...parts, ...ties, ...fluids, ...hazards];
  const of = (word: string): Line[] => top.lines.filter((l) => wordOf(l) === word), first = <T>(word: string, take: (c: Cursor) => T | undefined): T | undefined => firstOf(of(word), take);
  return {
    unit: unitId, title: declaration.name, at: declaration.at, build: build.name, chosen: build.chosen, things, parts, ties, fluids, hazards, precautions,
    base: of("base").flatMap((l) => takeNames(cursorOf(l))).flatMap((name) => indexesOf(top, name.text, "")),
    positions: of("positions").flatMap((l) => takeNames(cursorOf(l)).map((n) => n.text)), mass: first("mass", takeOf("mass")), revision: first("revision", takeLabel), about: first("about", takeString) ?? "",
    temporaries: temporariesOf(project, file, units), orders: of("order").map(readStatement),
    scopes: new Map(units.map((unit): [string, Scope] => [unit.prefix, scopeOf(unit)])),
    dismissed: new Map(of("no").map((l) => { const c = cursorOf(l), kind = takeLabel(c) ?? ""; return [kind, { why: takeString(c) ?? "", at: headSpan(l) }]; })),
    standingMessages: standing.map((s) => s.message), torqueStandard: top.torqueStandard, procedures: proceduresIn(project, file, { chosen: build.chosen, variant: "" }), library,
  };

  // --- first pass: names and pieces ------------------------------------------------------------------------------------------

  function draftUnit(line: Line, prefix: string, choice: Choice, host: Draft | undefined, inside: readonly Item[]): UnitDraft {
    const lines = holdingLines(linesIn(line), choice);
    const standard = lines.find((l) => wordOf(l) === "torque"), renewKinds = new Map<string, RenewRule>();
    for (const l of lines) if (wordOf(l) === "renew") {
      const c = cursorOf(l);
      accept(c, "always");
      for (const name of takeNames(c)) renewKinds.set(name.text, { when: "always", strips: undefined, said: false, at: headSpan(l) });
    }
    const unit: UnitDraft = { prefix, host, item: line.item, choice, lines, names: new Map(), labels: new Map(), renewKinds, torqueStandard: standard && standardOf(standard) };
    units.push(unit);
    // The base of a unit inside a part is that part itself.
    const baseLine = lines.find((l) => wordOf(l) === "base"), base = baseLine && takeName(cursorOf(baseLine))?.text;
    const types = { find: (word: string, name: string): Line | undefined => lines.find((l) => wordOf(l) === word && idOf(l) === name) ?? typesSeen(project, line.source.path, word, name) };
    const declared = lines.filter((l) => thingWords.has(wordOf(l)) && l.item.arguments.length > 0).map((l) => declareThing(l, choice, types));
    for (const thing of declared) {
      const pieces = linesOf(thing, "pieces", "")[0];
      unit.labels.set(thing.id, pieces ? readSpan(cursorOf(pieces)).filter((label) => label !== "own-place") : []);
    }
    // `count 2 per cap` has the pieces of cap, wherever that is declared.
    for (const thing of declared) {
      const count = linesOf(thing, "count", "")[0], per = count && readCount(count).per;
      if (per !== undefined && unit.labels.get(thing.id)!.length === 0) unit.labels.set(thing.id, unit.labels.get(per) ?? []);
    }
    for (const thing of declared) {
      if (unit.names.has(thing.id)) continue;                               // declared twice: the first counts
      const labels = unit.labels.get(thing.id)!, list = drafts[thing.word === "fastener" || thing.word === "joint" ? "tie" : (thing.word as "part" | "fluid" | "hazard")];
      const make = (piece: string): Draft => {
        if (host && thing.word === "part" && thing.id === base && piece === "") return host;
        const id = `${prefix}${thing.id}${piece === "" ? "" : `.${piece}`}`, draft: Draft = { id, piece, thing, unit, index: -1 };
        list.push(draft);
        return draft;
      };
      const made = labels.length > 0 ? labels.map(make) : [make("")];
      unit.names.set(thing.id, made);
      labels.forEach((label, k) => unit.names.set(`${thing.id}.${label}`, [made[k]!]));
      if (thing.word !== "part") continue;
      for (const draft of made) {
        const is = linesOf(thing, "is", draft.piece)[0], inner = is && unitOf(is, line.source.path);
        if (inner && inner.item !== line.item && !inside.includes(inner.item) && draft !== host) {
          draftUnit(inner, `${draft.id}/`, { chosen: choice.chosen, variant: draft.piece }, draft, [...inside, line.item]);
        }
      }
    }
    return unit;
  }

  function unitOf(line: Line, from: string): Line | undefined {
    const c = cursorOf(line);
    accept(c, "unit");
    const name = takeName(c);
    return name && typesSeen(project, from, "unit", name.text);
  }

  // --- second pass: facts ------------------------------------------------------------------------------------------------------

  /** Things by name; pieces of the same name pair up with the piece at hand. */
  function indexesOf(unit: UnitDraft, name: string, piece: string): ThingIndex[] {
    const found = (piece === "" ? undefined : unit.names.get(`${name}.${piece}`)) ?? unit.names.get(name) ?? [];
    return found.map((draft) => draft.index);
  }
  function refs(draft: Draft, word: string, take: (c: Cursor) => readonly Name[] = takeNames): ThingIndex[] {
    const lines = linesOf(draft.thing, word, draft.piece);
    if (lines.length === 0) return [];
    return [...new Set(lines.flatMap((l) => take(cursorOf(l))).flatMap((name) => indexesOf(draft.unit, name.text, draft.piece)))];
  }
  function one<T>(draft: Draft, word: string, take: (c: Cursor) => T | undefined): T | undefined {
    return firstOf(linesOf(draft.thing, word, draft.piece), take);
  }
  function line<T>(draft: Draft, word: string, read: (line: Line) => T): T | undefined {
    const found = linesOf(draft.thing, word, draft.piece)[0];
    return found && read(found);
  }
  function isPartIndex(index: ThingIndex): boolean { return index < drafts.part.length; }
  function partRefs(draft: Draft, word: string, take?: (c: Cursor) => readonly Name[]): ThingIndex[] { return refs(draft, word, take).filter(isPartIndex); }

  function base(draft: Draft) {
    const { thing, piece, unit, index, id } = draft, name = thing.name === "" ? thing.id : thing.name;
    const said = standing.filter((s) => (s.name === thing.kind && thing.kind !== "") || (s.prefix === unit.prefix && s.name === thing.id) || (s.prefix === unit.prefix && piece !== "" && s.name === `${thing.id}.${piece}`));
    const of = placeOf(unit);
    return {
      index, id, declared: thing.id, name: `${name}${of === "" ? "" : ` (${of})`}${piece === "" ? "" : ` ${piece}`}`, piece, prefix: unit.prefix, at: thing.at, whole: thing.whole, about: thing.about,
      messages: [...thing.messages, ...messagesOfPiece(thing, piece), ...said.map((s) => s.message)],
    };
  }
  /** Of one of several alike units inside parts: the part that it is, so that its things are told from those of the others. */
  function placeOf(unit: UnitDraft): string {
    if (unit.host === undefined || !units.some((other) => other !== unit && other.item === unit.item)) return "";
    const { thing, piece } = unit.host, name = thing.name === "" ? thing.id : thing.name;
    return piece === "" ? name : `${name} ${piece}`;
  }
  function renewOf(draft: Draft, kind: string): RenewRule | undefined {
    return line(draft, "renew", readRenew) ?? (kind === "" ? undefined : draft.unit.renewKinds.get(kind));
  }

  function readPart(draft: Draft): Part {
    const { thing, piece } = draft, count = line(draft, "count", readCount), pieces = linesOf(thing, "pieces", "")[0];
    const lift = line(draft, "lift", readLift), size = line(draft, "size", readSize), fits = line(draft, "fits", readFits), between = line(draft, "between", readBetween);
    const side = (name: string | undefined): ThingIndex[] => (name === undefined ? [] : indexesOf(draft.unit, name, piece).filter(isPartIndex));
    return {
      ...base(draft), is: "part", kind: thing.kind, count: count?.count ?? 1, countUnknown: count?.unknown ?? false,
      ownPlace: pieces !== undefined && headText(pieces).endsWith("own-place"),
      hosts: fits ? fits.hosts.flatMap((name) => side(name)) : [], fitsBy: fits?.by,
      rests: partRefs(draft, "rests", (c) => { accept(c, "on"); return takeNames(c); }),
      between: between && side(between[0]).length > 0 && side(between[1]).length > 0 ? [side(between[0]), side(between[1])] : undefined,
      behind: refs(draft, "behind").filter((i) => i !== draft.index), positions: names(draft, "needs"), hangs: linesOf(thing, "hangs", piece).length > 0, into: refs(draft, "into")[0],
      renew: renewOf(draft, thing.kind), liftPeople: lift?.people, liftWith: lift?.tool, mass: one(draft, "mass", takeOf("mass")), size, supply: one(draft, "supply", takeOf("voltage")),
      groove: one(draft, "groove", takeOf("length")), reach: one(draft, "reach", takeOf("length")), dry: linesOf(thing, "dry", piece).length > 0, alignBy: one(draft, "align", (c) => { accept(c, "by"); return takeString(c); }), partNo: one(draft, "part-no", takeString),
      standard: one(draft, "standard", takeString), photos: linesOf(thing, "photo", piece).map(readPhoto), unit: one(draft, "is", (c) => { accept(c, "unit"); return takeName(c)?.text; }),
    };
  }

  function readTie(draft: Draft): Tie {
    const { thing, piece, unit } = draft, fastener = thing.word === "fastener", kind = thing.kind === "" && fastener ? "screw" : thing.kind;
    const count = line(draft, "count", readCount), joins = line(draft, "joins", readJoins), joint = fastener ? undefined : kindIn(jointKinds, kind), pieces = count?.count ?? 1;
    const near = (names: readonly string[]): ThingIndex[] => names.flatMap((name) => indexesOf(unit, name, piece)).filter(isPartIndex);
    let lowers = joins ? near(joins.lowers) : [];
    // As many pieces as names: one each, in order.
    const labels = unit.labels.get(thing.id) ?? [];
    if (joins?.each && joins.lowers.length > 1 && joins.lowers.length === labels.length) lowers = near([joins.lowers[labels.indexOf(piece)]!]);
    const into = refs(draft, "into")[0], size = line(draft, "size", readSize), thread: ThreadSize | undefined = size && !Array.isArray(size) ? (size as ThreadSize) : undefined;
    const torques = linesOf(thing, "torque", piece).map(readTorque).map((torque) => fromTable(torque, thread, library));
    if (torques.length === 0 && fastener && linesOf(thing, "stages", piece).length === 0 && unit.torqueStandard !== undefined && kindIn(fastenerKinds, kind)?.turned) {
      torques.push(fromTable({ is: "standard", value: undefined, table: unit.torqueStandard, words: undefined, forCount: undefined, while: undefined, at: thing.at }, thread, library));
    }
    return {
      ...base(draft), is: "tie", fastener, kind, count: pieces, countUnknown: count?.unknown ?? false, lowers, uppers: joins ? near(joins.uppers) : [],
      seat: lowers[0] ?? (into !== undefined && isPartIndex(into) ? into : undefined), into, passing: joint?.parts === "in passing", oneWay: joint?.remade === "never",
      behind: refs(draft, "behind").filter((i) => i !== draft.index), positions: names(draft, "needs"),
      opens: opensOf(draft, joint?.opens === "fluid", lowers, joins ? near(joins.uppers) : []), renew: renewOf(draft, kind), reuseTimes: one(draft, "reuse", takeNumber),
      washers: linesOf(thing, "with", piece).map(readWasher).flatMap((w) => indexesOf(unit, w.name, piece).filter(isPartIndex).map((part) => ({ part, count: w.count === undefined ? pieces : shareOf(w.count, labels, piece) }))),
      size: thread, propertyClass: one(draft, "class", takeLabel) ?? thread?.propertyClass, grade: one(draft, "grade", takeLabel), drive: line(draft, "drive", readDrive), torques,
      stages: line(draft, "stages", readStages) ?? [], backOut: line(draft, "back-out", readBackOut), passes: line(draft, "passes", readPasses), sequence: line(draft, "sequence", readSequence),
      pattern: line(draft, "pattern", readPattern), threadLocker: one(draft, "thread-locker", takeName), lubricant: one(draft, "lubricant", takeName), how: one(draft, "how", takeString),
      force: one(draft, "force", takeOf("force")), uses: linesOf(thing, "uses", piece).flatMap((l) => takeNames(cursorOf(l))), bead: line(draft, "bead", readBead),
      partNo: one(draft, "part-no", takeString), standard: one(draft, "standard", takeString), figures: extraFigures(draft),
    };
  }

  /** The fluids that it says it opens; a joint in a fluid's way that says nothing opens what runs through both of its sides. */
  function opensOf(draft: Draft, isLine: boolean, lowers: readonly ThingIndex[], uppers: readonly ThingIndex[]): ThingIndex[] {
    const said = refs(draft, "opens");
    if (said.length > 0 || !isLine) return said;
    return drafts.fluid.filter((fluid) => {
      const path = refs(fluid, "path");
      return lowers.some((part) => path.includes(part)) && uppers.some((part) => path.includes(part));
    }).map((fluid) => fluid.index);
  }

  /** Properties that only a figure reads, by word: all that the table lists for fasteners and joints beyond those read above. */
  function extraFigures(draft: Draft): ReadonlyMap<string, Quantity | number | string> {
    let map: Map<string, Quantity | number | string> | undefined;
    for (const word of draft.thing.lines.keys()) {
      if (knownTieWords.has(word)) continue;
      const value = one(draft, word, (c): Quantity | number | string | undefined => { accept(c, "in"); const at = c.at, quantity = takeQuantity(c); if (quantity) return quantity; c.at = at; return takeNumber(c) ?? takeLabel(c) ?? takeString(c); });
      if (value !== undefined) (map ??= new Map()).set(word, value);
    }
    return map ?? noFigures;
  }

  function readFluid(draft: Draft): Fluid {
    const { thing, piece } = draft, at = (c: Cursor): readonly Name[] => { accept(c, "at"); return takeNames(c); };
    const kind = kindIn(fluidKinds, thing.kind), recover = linesOf(thing, "recover", piece)[0];
    return {
      ...base(draft), is: "fluid", kind: thing.kind, volume: one(draft, "volume", takeOf("volume")), amount: one(draft, "amount", takeQuantity), drainsAt: refs(draft, "drains", at), fillsAt: refs(draft, "fills", at),
      bleedsAt: refs(draft, "bleeds", at), recover: recover !== undefined || kind?.recover === true, recoverWith: recover && one(draft, "recover", (c) => { accept(c, "with"); return takeName(c); }),
      uses: one(draft, "uses", takeName), path: refs(draft, "path"), filled: thing.kind !== "" || linesOf(thing, "fills", piece).length > 0 || linesOf(thing, "uses", piece).length > 0,
    };
  }

  function readHazard(draft: Draft): Hazard {
    const { thing, unit } = draft, figures: [string, Quantity][] = [], signal = thing.signal;
    for (const [word, dimension] of hazardFigures) { const value = one(draft, word, takeOf(dimension)); if (value) figures.push([word, value]); }
    const own = linesOf(thing, "precaution", "").map(readPrecaution).map((facts): Precaution => {
      const { behindNames, ...rest } = facts;
      const precaution: Precaution = { ...rest, number: precautions.length, hazard: draft.index, behind: behindNames.flatMap((name) => indexesOf(unit, name.text, "")) };
      precautions.push(precaution);
      return precaution;
    });
    return {
      ...base(draft), is: "hazard", kind: thing.kind, signal: signal === "danger" || signal === "warning" || signal === "caution" || signal === "notice" ? signal : undefined,
      source: one(draft, "source", takeLabel), on: refs(draft, "on"), precautions: own, pushes: refs(draft, "pushes"), figures: new Map(figures),
      wear: linesOf(thing, "wear", "").flatMap((l) => takeNames(cursorOf(l))), role: one(draft, "role", takeName),
    };
  }
}

/** So many in all, shared out over the pieces: the first get what is left over. */
function shareOf(all: number, labels: readonly string[], piece: string): number {
  if (labels.length === 0) return all;
  return Math.floor(all / labels.length) + (labels.indexOf(piece) < all % labels.length ? 1 : 0);
}

const noFigures: ReadonlyMap<string, never> = new Map<string, never>();
const knownTieWords = new Set([
  "about", "back-out", "bead", "behind", "class", "count", "danger", "warning", "caution", "notice", "drive", "force", "grade", "how", "into", "joins", "like", "lubricant", "needs", "opens",
  "part-no", "passes", "pattern", "pieces", "renew", "reuse", "sequence", "size", "stages", "standard", "thread-locker", "torque", "uses", "with", "photo",
]);

function firstOf<T>(lines: readonly Line[], take: (c: Cursor) => T | undefined): T | undefined {
  const line = lines[0];
  return line && take(cursorOf(line));
}
const idOf = (line: Line): string => { const first = line.item.arguments[0]; return first ? line.source.tree.scan.tokens[first.first]!.text : ""; };
const headText = ({ item, source }: Line): string => source.tree.scan.tokens[item.block ? item.block.first - 1 : item.last]!.text;
function names(draft: Draft, word: string): string[] {
  const lines = linesOf(draft.thing, word, draft.piece);
  return lines.length === 0 ? [] : lines.flatMap((l) => takeNames(cursorOf(l)).map((n) => n.text));
}
function standardOf(line: Line): string | undefined {
  const c = cursorOf(line);
  accept(c, "standard");
  return takeName(c)?.text ?? takeString(c);
}
function readFits(line: Line): { hosts: string[]; by: string | undefined } {
  const c = cursorOf(line), hosts = takeNames(c).map((n) => n.text);
  return { hosts, by: accept(c, "by") ? takeLabel(c) : undefined };
}
function readBetween(line: Line): [string | undefined, string | undefined] {
  const c = cursorOf(line), a = takeName(c)?.text;
  accept(c, "and");
  return [a, takeName(c)?.text];
}
function readLift(line: Line): { people: number | undefined; tool: Name | undefined } {
  const c = cursorOf(line);
  let people: number | undefined, tool: Name | undefined;
  while (c.at < c.stop) {
    if (accept(c, "by")) { people = takeNumber(c); accept(c, "people"); }
    else if (accept(c, "with")) tool = takeName(c);
    else c.at++;
  }
  return { people, tool };
}

export function readStatement(line: Line): Statement {
  const c = cursorOf(line), names = takeNames(c);
  let after: Name[] = [], before: Name[] = [], first = false, last = false;
  if (accept(c, "after")) after = takeNames(c);
  else if (accept(c, "before")) before = takeNames(c);
  else if (accept(c, "first")) first = true;
  else last = accept(c, "last");
  return { names, after, before, first, last, at: headSpan(line) };
}

/** `warn SIGNAL "…" on KIND or THING`, at the top of a seen file and in the units: a kind anywhere, a name in its own unit. */
function standingMessages(project: Project, file: string, units: readonly UnitDraft[]): { name: string; prefix: string; message: Message }[] {
  const found: { name: string; prefix: string; message: Message }[] = [];
  const read = (line: Line, prefix: string): void => {
    const c = cursorOf(line), signal = takeLabel(c), text = takeString(c) ?? "";
    accept(c, "on");
    if (signal !== "danger" && signal !== "warning" && signal !== "caution" && signal !== "notice") return;
    for (const name of takeNames(c)) found.push({ name: name.text, prefix, message: { signal, text, at: headSpan(line) } });
  };
  for (const unit of units) for (const line of unit.lines) if (wordOf(line) === "warn") read(line, unit.prefix);
  for (const declaration of project.seen(file).get("") ?? []) if (declaration.word === "warn") read({ item: declaration.item, source: project.files.get(declaration.file)! }, "");
  return found;
}

function temporariesOf(project: Project, file: string, units: readonly UnitDraft[]): Model["temporaries"] {
  const found: [string, { name: string; at: DeclaredThing["at"] }][] = [];
  for (const list of project.seen(file).values()) for (const d of list) if (d.word === "temporary") found.push([d.id, { name: d.name, at: d.at }]);
  for (const unit of units) for (const line of unit.lines) {
    if (wordOf(line) !== "temporary") continue;
    const c = cursorOf(line), id = takeName(c);
    if (id) found.push([id.text, { name: takeString(c) ?? id.text, at: { file: line.source.path, start: id.start, end: id.end } }]);
  }
  return new Map(found);
}

function scopeOf(unit: UnitDraft): Scope {
  return new Map([...unit.names].map(([name, drafts]): [string, ThingIndex[]] => [name, drafts.map((draft) => draft.index)]));
}

/** The procedures as they stand in one build: those whose head depends on a condition are read for it. */
function proceduresIn(project: Project, file: string, choice: Choice): ReadonlyMap<string, Procedure> {
  const all = proceduresSeen(project, file);
  if (![...all.values()].some((procedure) => procedure.conditional)) return all;
  const inBuild = new Map<string, Procedure>();
  for (const list of project.seen(file).values()) {
    const declaration = list.find((d) => d.word === "procedure");
    if (declaration) inBuild.set(declaration.id, readProcedure(declaration, project.files.get(declaration.file)!, choice));
  }
  return inBuild;
}

const procedures = kept<Project, Map<string, ReadonlyMap<string, Procedure>>>();

/** Every procedure that a file sees, by id; the nearest where two have one id. */
export function proceduresSeen(project: Project, file: string): ReadonlyMap<string, Procedure> {
  const byFile = procedures(project, () => new Map());
  const had = byFile.get(file);
  if (had) return had;
  const seen = new Map<string, Procedure>();
  for (const list of project.seen(file).values()) {
    const declaration = list.find((d) => d.word === "procedure"), source: SourceFile | undefined = declaration && project.files.get(declaration.file);
    if (declaration && source) seen.set(declaration.id, readProcedure(declaration, source));
  }
  byFile.set(file, seen);
  return seen;
}

