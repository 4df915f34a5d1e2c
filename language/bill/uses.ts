// Every single use that one performance makes of something from the stores, with the place that asks for it.

import { renewedTogether } from "../bench/renewed-sets.ts";
import type { Around, Performance } from "../bench/trace.ts";
import type { Span } from "../findings/finding.ts";
import type { Name } from "../model/act.ts";
import type { Part, ThingIndex, Tie } from "../model/model.ts";
import { quantityOf, type Quantity } from "../quantities/index.ts";
import { jointKinds, kindIn, type JointUse } from "../tables/index.ts";
import { beadAmount } from "./bead.ts";
import { onThread } from "./on-thread.ts";
import { fittings, jointsMade, type Fitting } from "./fittings.ts";
import { isInPart, newThings, saidActs, type Grade, type NewReason, type NewThing } from "./new-things.ts";

/** What is bought in pairs, or in sets: `of` pieces of this line go to one. */
export interface Lot {
  readonly is: "pair" | "set";
  readonly of: number;
  /** The lines of a set of several declarations, which is one set however many lines it has: their ids, in the order of the model. */
  readonly lines: readonly string[];
  /** Equal for all lines of one set. */
  readonly key: string;
}

export interface Use {
  /** What it is bought as: uses of the same key are one line of the bill. */
  readonly key: string;
  readonly id: string;
  /** The author's; of what only the kind of a joint names, that word as the table writes it: `general` tells. */
  readonly name: string;
  readonly general: JointUse | undefined;
  readonly what: "part" | "fastener" | "joint" | "consumable" | "fluid";
  readonly grade: Grade;
  readonly reason: NewReason | undefined;
  readonly strips: number | undefined;
  /** It is bought in pairs, or in sets of so many pieces. */
  readonly lot: Lot | undefined;
  /** Counted by the piece; else `amount`; with neither, nobody gave an amount. */
  readonly pieces: number | undefined;
  readonly amount: Quantity | undefined;
  readonly pack: Quantity | { readonly pieces: number } | undefined;
  readonly partNo: string | undefined;
  readonly standard: string | undefined;
  readonly size: string | undefined;
  readonly lead: Quantity | undefined;
  readonly shelfLife: Quantity | undefined;
  /** Where it goes: the things that it is used on, by name; of a spare the unit part that it is inside, if there is one. */
  readonly on: readonly string[];
  /** Of a spare the unit that it is a part of, a unit part's own name before the unit's; "" else. */
  readonly within: string;
  readonly procedure: string;
  /** Title of the step, "" outside any. */
  readonly step: string;
  readonly at: Span;
}

/** In the order of doing; a use is one piece or one application. */
export function usesOf(performance: Performance, beadWaste: number): readonly Use[] {
  const { model } = performance,
    made = fittings(performance),
    fresh = newThings(performance),
    uses: Use[] = [];
  const renewed = new Set<ThingIndex>(),
    ownLine = new Set(made.map(({ thing }) => thing));
  for (const fitting of made) {
    const item = model.things[fitting.thing];
    if (item?.is !== "part" && item?.is !== "tie") continue;
    const rule = fresh.get(fitting.thing);
    if (rule) {
      renewed.add(fitting.thing);
      uses.push(spare(performance, item, rule, fitting.count, fitting));
    }
    if (item.is === "tie") {
      uses.push(
        ...washersOf(performance, item, fresh, fitting, ownLine),
        ...lockerAndLubricant(performance, item, fitting),
        ...usedUp(performance, item, fitting, beadWaste),
      );
    }
  }
  for (const fitting of jointsMade(performance))
    uses.push(...usedUp(performance, model.things[fitting.thing] as Tie, fitting, beadWaste));
  uses.push(...byActs(performance, renewed, fresh), ...fills(performance));
  return uses;
}

interface Place {
  readonly around: Around;
  readonly at: Span;
}

const placeOf = ({ around, at }: Place): Pick<Use, "procedure" | "step" | "at"> => ({
  procedure: around.procedure.id,
  step: around.step?.title ?? "",
  at,
});

/** The name that all pieces of a declaration share. */
const nameOfAll = ({ name, piece }: Part | Tie): string =>
  piece === "" ? name : name.slice(0, name.length - piece.length).trimEnd() || name;

const lineId = ({ prefix, declared }: Part | Tie): string => `${prefix}${declared}`;

/** A part or a fastener bought as itself. Pieces of one declaration are one line. */
function spare(performance: Performance, item: Part | Tie, rule: NewThing, count: number, place: Place): Use {
  const { model } = performance;
  return {
    key: item.partNo !== undefined && item.partNo !== "" ? `no ${item.partNo}` : `${model.unit} ${lineId(item)}`,
    id: lineId(item),
    name: nameOfAll(item),
    general: undefined,
    what: item.is === "part" ? "part" : item.fastener ? "fastener" : "joint",
    grade: rule.grade,
    reason: rule.reason,
    strips: rule.strips,
    lot: lotOf(performance, item),
    pieces: count,
    amount: undefined,
    pack: undefined,
    partNo: item.partNo,
    standard: item.standard,
    size: sizeText(item),
    lead: undefined,
    shelfLife: undefined,
    on: [unitPartOf(performance, item.prefix)].filter(Boolean),
    within: unitPartOf(performance, item.prefix) || model.title || model.unit,
    ...placeOf(place),
  };
}

function lotOf({ model }: Performance, item: Part | Tie): Use["lot"] {
  const group = renewedTogether(model).get(item.index);
  if (!group) return undefined;
  const lines = [...new Set(group.things.map(lineId))],
    key = `${model.unit} ${lines.join(" ")}`;
  if (group.when === "by-pairs") return { is: "pair", of: 2, lines, key };
  // A set may be made of several declarations, each of which is a line of the bill: counted here is how many of this one a set holds.
  const own = group.things.filter((one) => lineId(one) === lineId(item));
  return group.pieces === undefined
    ? undefined
    : { is: "set", of: own.reduce((sum, { count }) => sum + count, 0), lines, key };
}

/** The unit part that a thing is inside, in words: stores tell two alike spares of two sub-assemblies apart by it. */
const unitPartOf = ({ model }: Performance, prefix: string): string =>
  prefix === "" ? "" : (model.parts.find((part) => `${part.id}/` === prefix)?.name ?? prefix);

/** Washers follow their screw: as many as go with the pieces that are fitted. One that is fitted by a line of its own is counted there. */
function washersOf(
  performance: Performance,
  tie: Tie,
  fresh: ReadonlyMap<ThingIndex, NewThing>,
  fitting: Fitting,
  ownLine: ReadonlySet<ThingIndex>,
): Use[] {
  return tie.washers.flatMap(({ part, count }) => {
    const rule = ownLine.has(part) ? undefined : fresh.get(part),
      washer = performance.model.parts[part];
    return rule && washer
      ? [spare(performance, washer, rule, Math.ceil((count * fitting.count) / Math.max(tie.count, 1)), fitting)]
      : [];
  });
}

function lockerAndLubricant(performance: Performance, tie: Tie, fitting: Fitting): Use[] {
  const { locker, lubricant } = onThread(tie);
  return [locker, lubricant].flatMap((name) =>
    name ? [stores(performance, name.text, { on: [tie.name], place: fitting })] : [],
  );
}

/** What a joint uses up when it is made: the shop's consumables where the author names them, else the general words of its kind. */
function usedUp(performance: Performance, tie: Tie, fitting: Fitting, beadWaste: number): Use[] {
  if (tie.fastener) return [];
  const kind = kindIn(jointKinds, tie.kind),
    general = tie.uses.length > 0 ? [] : (kind?.uses ?? []),
    names = tie.uses.length > 0 ? tie.uses.map((name) => name.text) : general;
  const volume = tie.bead ? beadAmount(tie.bead.width, tie.bead.length, beadWaste) : undefined;
  return names.map((name, i) =>
    stores(performance, name, {
      on: [tie.name],
      place: fitting,
      general: general[i],
      amount: i === 0 ? volume : undefined,
      // A clamp or a tie is one a joint; a paste is measured.
      pieces:
        kind?.oneTime === true ||
        (kind?.appliedBefore === false &&
          kind.remade === "with new" &&
          !performance.model.library.consumables.has(name))
          ? fitting.count
          : undefined,
    }),
  );
}

interface StoresOf {
  readonly on: readonly string[];
  readonly place: Place;
  readonly amount?: Quantity | undefined;
  readonly pieces?: number | undefined;
  readonly what?: "consumable" | "fluid";
  readonly general?: JointUse | undefined;
  readonly grade?: Grade;
  readonly name?: string;
}

function stores(performance: Performance, name: string, of: StoresOf): Use {
  const known = performance.model.library.consumables.get(name);
  const pieces = of.pieces ?? (known?.pack && "pieces" in known.pack && of.amount === undefined ? 1 : undefined);
  return {
    key: known?.partNo ? `no ${known.partNo}` : name,
    id: name,
    name: known?.name || of.name || name.replaceAll("-", " "),
    general: known ? undefined : of.general,
    what: of.what ?? "consumable",
    grade: of.grade ?? "certain",
    reason: undefined,
    strips: undefined,
    lot: undefined,
    pieces,
    amount: of.amount,
    pack: known?.pack,
    partNo: known?.partNo,
    standard: known?.standard,
    size: undefined,
    lead: known?.lead,
    shelfLife: known?.shelfLife,
    on: of.on,
    within: "",
    ...placeOf(of.place),
  };
}

/** `apply C to X`, `clean X with C`, `purge F with C`; `renew X` of what is not fitted by any line of the refit; spares that a reading may ask for. */
function byActs(performance: Performance, fitted: ReadonlySet<ThingIndex>, fresh: ReturnType<typeof newThings>): Use[] {
  const { model } = performance,
    uses: Use[] = [],
    named = new Set<ThingIndex>(fitted);
  const namesOf = (things: readonly ThingIndex[]): string[] =>
    things.flatMap((thing) => model.things[thing]?.name || []);
  const wears = new Set<string>();
  for (const { act, around, things } of saidActs(performance)) {
    const place = { around, at: act.at };
    if (act.verb === "apply")
      for (const name of act.names)
        uses.push(
          stores(performance, name.text, {
            on: namesIn(performance, act.on, around),
            place,
            amount: shelfAmount(act.amount),
          }),
        );
    else
      for (const { text } of act.tools)
        if (model.library.consumables.has(text)) uses.push(stores(performance, text, { on: namesOf(things), place }));
    for (const thing of act.verb === "renew" || act.verb === "scrap" ? things : []) {
      const item = model.things[thing],
        rule = fresh.get(thing);
      if ((item?.is === "part" || item?.is === "tie") && isInPart(model, act, thing)) {
        uses.push(
          spare(performance, item, { thing, grade: "certain", reason: "act", strips: undefined }, act.count!, place),
        );
        continue;
      }
      if (!rule || named.has(thing) || (item?.is !== "part" && item?.is !== "tie")) continue;
      named.add(thing);
      uses.push(spare(performance, item, rule, act.count ?? item.count, place));
    }
    for (const hazard of things.map((thing) => model.things[thing])) {
      if (hazard?.is !== "hazard") continue;
      for (const wear of hazard.wear)
        if (model.library.consumables.has(wear.text) && !wears.has(wear.text)) {
          wears.add(wear.text);
          uses.push(stores(performance, wear.text, { on: [hazard.name], place }));
        }
    }
  }
  for (const { thing, grade, reason, strips } of fresh.values()) {
    const item = model.things[thing];
    if (
      (reason !== "reading" && reason !== "chosen") ||
      named.has(thing) ||
      (item?.is !== "part" && item?.is !== "tie")
    )
      continue;
    uses.push(
      spare(performance, item, { thing, grade, reason, strips }, item.count, {
        around: {
          procedure: performance.procedure,
          prefix: "",
          pieces: [],
          on: undefined,
          step: undefined,
          crew: undefined,
          bench: undefined,
          given: [],
        },
        at: item.at,
      }),
    );
  }
  return uses;
}

const shelfAmount = (amount: Quantity | undefined): Quantity | undefined =>
  amount && ["volume", "mass", "length"].includes(amount.dimension) ? amount : undefined;

function namesIn(performance: Performance, names: readonly Name[], around: Around): string[] {
  const scope = performance.model.scopes.get(around.prefix);
  const { things } = performance.model;
  return names.map((name) => {
    const found = scope?.get(name.text) ?? [],
      first = things[found[0] ?? -1];
    // Of several pieces the first one alone would read as if the others went without.
    return found.length > 1 && (first?.is === "part" || first?.is === "tie")
      ? nameOfAll(first)
      : (first?.name ?? name.text);
  });
}

/** Fluids that are filled on the way back. */
function fills(performance: Performance): Use[] {
  const { model } = performance,
    uses: Use[] = [];
  const fill = (thing: ThingIndex, said: Quantity | undefined, place: Place): void => {
    const fluid = model.things[thing];
    if (fluid?.is !== "fluid") return;
    uses.push(
      stores(performance, fluid.uses?.text ?? fluid.id, {
        on: [fluid.name],
        place,
        amount: said ?? fluid.volume ?? fluid.amount,
        what: fluid.uses ? "consumable" : "fluid",
        name: fluid.uses ? "" : fluid.name,
      }),
    );
  };
  for (const { op } of performance.refit) {
    if (op.verb === "fill" || (op.verb === "written" && op.act?.verb === "fill"))
      for (const thing of op.things) fill(thing, shelfAmount(op.act?.amount), { around: op.around, at: op.at });
  }
  for (const { act, around, things } of performance.written)
    if (act.verb === "fill") for (const thing of things) fill(thing, shelfAmount(act.amount), { around, at: act.at });
  return uses;
}

/** The size as it is ordered: `M8x35`, `183.82 x 2.62 mm`, with class or grade. */
export function sizeText(item: Part | Tie): string | undefined {
  const { size } = item,
    parts: string[] = [],
    thread = threadText(item);
  if (thread !== undefined) parts.push(thread);
  else if (size && !("designation" in size) && size.length > 0) parts.push(planeText(size));
  if (item.is === "tie") {
    if (item.propertyClass) parts.push(item.propertyClass);
    else if (item.grade) parts.push(item.grade);
  }
  return parts.length > 0 ? parts.join(" ") : undefined;
}

/** The thread with its length: `M8x35`, `M16x1.5-LH`, `3/8-16 UNC x 1.25 in`; undefined for what has no thread. */
export function threadText({ size }: Part | Tie): string | undefined {
  if (!size || !("designation" in size)) return undefined;
  return `${size.designation}${size.length === undefined ? "" : lengthText(size.length, size.system)}${size.leftHand ? "-LH" : ""}`;
}

const lengthText = (metres: number, system: "metric" | "unified" | "pipe"): string =>
  system === "metric"
    ? `x${Number((metres * 1000).toPrecision(6))}`
    : ` x ${quantityOf(metres / 0.0254, "in", 3).written.replace(/\.?0+ in$/, " in")}`;

function planeText(size: readonly Quantity[]): string {
  const unit = size[size.length - 1]!.unit,
    same = size.every((each) => each.unit === unit);
  return same
    ? `${size.map((each) => each.written.slice(0, each.written.length - unit.length).trim()).join(" x ")} ${unit}`
    : size.map((each) => each.written).join(" x ");
}
