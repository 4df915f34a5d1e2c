// What things a unit has in one build: each declaration, piece by piece, with units inside parts opened up. Facts are not read here.

import type { Project } from "../names/project.ts";
import type { Item } from "../syntax/index.ts";
import { absentIn, holdingLines } from "./conditions.ts";
import type { Choice } from "./conditions.ts";
import { accept, cursorOf, headSpan, linesIn, takeName, takeNames, takeString, wordOf } from "./cursor.ts";
import type { Line } from "./cursor.ts";
import { declareThing, linesOf, typesSeen } from "./declared-thing.ts";
import type { DeclaredThing } from "./declared-thing.ts";
import type { Absence, RenewRule, ThingIndex } from "./model.ts";
import { textOf } from "../names/strings.ts";
import { readSpan } from "./read-entries.ts";
import { atPiece } from "./named-inside.ts";
import { readCount } from "./read-tie.ts";

/** A thing before its facts: one piece of one declaration, in the unit or in a unit inside a part. */
export interface Draft {
  readonly id: string;
  readonly piece: string;
  readonly thing: DeclaredThing;
  readonly unit: UnitDraft;
  index: ThingIndex;
}

export interface UnitDraft {
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
  /** It says it in words, and names no table. */
  readonly torqueInWords: boolean;
  /** What it declares for other builds only. */
  readonly absent: ReadonlyMap<string, Absence>;
  /** Of a unit inside a part: its base, which is that part. */
  base: DeclaredThing | undefined;
}

const nothing: ReadonlyMap<string, Absence> = new Map();

const thingWords = new Set(["part", "fastener", "joint", "fluid", "hazard"]);

/** Things before their facts, by sort, in the order that numbers them. */
export interface Drafts {
  readonly part: Draft[];
  readonly tie: Draft[];
  readonly fluid: Draft[];
  readonly hazard: Draft[];
}

/** The unit and the units inside its parts, outermost first, with every thing named and numbered. */
export function draftThings(
  project: Project,
  unitLine: Line,
  chosen: Choice["chosen"],
): { top: UnitDraft; units: UnitDraft[]; drafts: Drafts } {
  const drafts: Drafts = { part: [], tie: [], fluid: [], hazard: [] },
    units: UnitDraft[] = [];
  const top = draftUnit(unitLine, "", { chosen, variant: "" }, undefined, []);
  [...drafts.part, ...drafts.tie, ...drafts.fluid, ...drafts.hazard].forEach((draft, index) => {
    draft.index = index;
  });
  return { top, units, drafts };

  function draftUnit(
    line: Line,
    prefix: string,
    choice: Choice,
    host: Draft | undefined,
    inside: readonly Item[],
  ): UnitDraft {
    const all = linesIn(line),
      lines = holdingLines(all, choice);
    const standard = lines.find((l) => wordOf(l) === "torque"),
      renewKinds = new Map<string, RenewRule>();
    for (const l of lines)
      if (wordOf(l) === "renew") {
        const c = cursorOf(l);
        accept(c, "always");
        for (const name of takeNames(c))
          renewKinds.set(name.text, {
            when: "always",
            together: undefined,
            strips: undefined,
            said: false,
            at: headSpan(l),
          });
      }
    const unit: UnitDraft = {
      prefix,
      host,
      item: line.item,
      choice,
      lines,
      names: new Map(),
      labels: new Map(),
      renewKinds,
      torqueStandard: standard && standardOf(standard)?.says,
      torqueInWords: standard !== undefined && standardOf(standard)?.inWords === true,
      absent: lines === all ? nothing : absentIn(all, choice, declaredBy),
      base: undefined,
    };
    units.push(unit);
    // The base of a unit inside a part is that part itself.
    const baseLine = lines.find((l) => wordOf(l) === "base"),
      base = baseLine && takeName(cursorOf(baseLine))?.text;
    const types = {
      find: (word: string, name: string): Line | undefined =>
        lines.find((l) => wordOf(l) === word && idOf(l) === name) ?? typesSeen(project, line.source.path, word, name),
    };
    const declared = lines
      .filter((l) => thingWords.has(wordOf(l)) && l.item.arguments.length > 0)
      .map((l) => declareThing(l, choice, types));
    for (const thing of declared) {
      const pieces = linesOf(thing, "pieces", "")[0];
      unit.labels.set(thing.id, pieces ? readSpan(cursorOf(pieces)).filter((label) => label !== "own-place") : []);
    }
    // `count 2 per cap` has the pieces of cap, wherever that is declared.
    for (const thing of declared) {
      const count = linesOf(thing, "count", "")[0],
        per = count && readCount(count).per;
      if (per !== undefined && unit.labels.get(thing.id)!.length === 0)
        unit.labels.set(thing.id, unit.labels.get(per) ?? []);
    }
    for (const thing of declared) {
      if (unit.names.has(thing.id)) continue; // declared twice: the first counts
      const labels = unit.labels.get(thing.id)!,
        list =
          drafts[
            thing.word === "fastener" || thing.word === "joint" ? "tie" : (thing.word as "part" | "fluid" | "hazard")
          ];
      const make = (piece: string): Draft => {
        if (host && thing.word === "part" && thing.id === base && piece === "") {
          unit.base = thing;
          return host;
        }
        const id = `${prefix}${thing.id}${piece === "" ? "" : `.${piece}`}`,
          draft: Draft = { id, piece, thing, unit, index: -1 };
        list.push(draft);
        return draft;
      };
      const made = labels.length > 0 ? labels.map(make) : [make("")];
      unit.names.set(thing.id, made);
      labels.forEach((label, k) => unit.names.set(`${thing.id}.${label}`, [made[k]!]));
      if (thing.word !== "part") continue;
      for (const draft of made) {
        const is = linesOf(thing, "is", draft.piece)[0],
          inner = is && unitOf(is, line.source.path);
        if (inner && inner.item !== line.item && !inside.includes(inner.item) && draft !== host) {
          const opened = draftUnit(inner, `${draft.id}/`, { chosen: choice.chosen, variant: draft.piece }, draft, [
            ...inside,
            line.item,
          ]);
          nameFromOutside(unit, draft, opened);
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
}

/**
 * What is inside a part that is a unit is named from outside by that part: `gearbox.lid`, `gearbox.left.lid` of several; `gearbox.lid`
 * then stands for all of them. A piece of the part goes before a thing inside of that name.
 */
function nameFromOutside(unit: UnitDraft, part: Draft, opened: UnitDraft): void {
  const own = unit.names.get(part.thing.id)!;
  const add = (name: string, drafts: readonly Draft[]): void => {
    const had = unit.names.get(name);
    if (!had) unit.names.set(name, [...drafts]);
    else if (
      own.length > 1 &&
      !drafts.some((draft) => had.includes(draft)) &&
      had.every((draft) => draft.unit !== unit)
    )
      had.push(...drafts);
  };
  for (const [name, drafts] of opened.names) {
    const inside = drafts.filter((draft) => draft !== part);
    if (inside.length === 0) {
      // Its base is the part itself.
      if (part.piece !== "") unit.names.set(`${part.thing.id}.${part.piece}.${name}`, [part]);
      if (!unit.names.has(`${part.thing.id}.${name}`)) unit.names.set(`${part.thing.id}.${name}`, own);
      continue;
    }
    if (part.piece !== "") unit.names.set(`${part.thing.id}.${part.piece}.${name}`, inside);
    add(`${part.thing.id}.${name}`, inside);
  }
}

/** All things of that name; where things of one name have pieces, only the one with the piece that the line is for. */
export function indexesOf(unit: UnitDraft, name: string, piece: string): ThingIndex[] {
  const found = (piece === "" ? undefined : atPiece(unit.names, name, piece)) ?? unit.names.get(name);
  return found ? found.map((draft) => draft.index) : [];
}

const declaredBy = (line: Line): { readonly id: string; readonly name: string } | undefined => {
  if (!thingWords.has(wordOf(line)) || line.item.arguments.length === 0) return undefined;
  const id = idOf(line),
    title = line.item.arguments.find((argument) => argument.slot === "string"),
    token = title && line.source.tree.scan.tokens[title.first];
  return { id, name: token ? textOf(token) : id };
};

const idOf = (line: Line): string => {
  const first = line.item.arguments[0];
  return first ? line.source.tree.scan.tokens[first.first]!.text : "";
};
function standardOf(line: Line): { readonly says: string; readonly inWords: boolean } | undefined {
  const c = cursorOf(line);
  accept(c, "standard");
  const name = takeName(c)?.text,
    says = name ?? takeString(c);
  return says === undefined ? undefined : { says, inWords: name === undefined };
}
