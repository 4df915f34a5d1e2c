// The bill of consumables and spares: what the procedures fit new, use up, apply and fill, for so many units, rounded up to packs
// so that it is never short. An amount that nobody gave is counted as such; nothing is guessed.

import type { Performance } from "../bench/trace.ts";
import { packsFor } from "../figures/bead.ts";
import { convert, findUnit, fromSi, si, toSi, type Quantity } from "../quantities/index.ts";
import { usesOf, type Use } from "./uses.ts";
import type { Grade, NewReason } from "./new-things.ts";

/** A plain amount in a unit of the table. */
export interface Amount {
  readonly value: number;
  readonly unit: string;
}

export interface Need {
  /** Things counted by the piece. */
  readonly pieces: number;
  /** Measured things: mostly one amount; two where the author measured the same thing in two ways that cannot be added (g and ml). */
  readonly amounts: readonly Amount[];
  /** Uses that name no amount. */
  readonly notGiven: number;
}

export interface BillLine {
  readonly id: string;
  readonly name: string;
  readonly general: Use["general"];
  readonly what: Use["what"];
  readonly grade: Grade;
  readonly reasons: readonly NewReason[];
  /** For `every`: the number of strips or uses. */
  readonly strips: number | undefined;
  readonly partNo: string | undefined;
  readonly standard: string | undefined;
  readonly size: string | undefined;
  readonly perUnit: Need;
  readonly total: Need;
  /** It is bought by the pair or by the set, so that its count is rounded up to whole ones; undefined where it is bought by the piece. */
  readonly lot: Use["lot"];
  readonly pack: { readonly pieces: number } | Amount | undefined;
  /** `atLeast`: some uses name no amount, or one that cannot be held against the pack. Undefined without a pack. */
  readonly packs: { readonly count: number; readonly atLeast: boolean } | undefined;
  readonly lead: Quantity | undefined;
  readonly shelfLife: Quantity | undefined;
  readonly uses: readonly Use[];
}

export interface Bill {
  readonly units: number;
  readonly procedures: readonly {
    readonly id: string;
    readonly title: string;
    readonly unit: string;
    readonly unitTitle: string;
    readonly build: string;
  }[];
  readonly lines: readonly BillLine[];
}

export type UsesOf = (performance: Performance) => readonly Use[];

export interface BillOptions {
  /** How many units are stripped and refitted; 1 or more, whole. */
  readonly units: number;
  /** Sealant that stays in the nozzle and the pack, as a share: the figures' assumption `bead-waste`. */
  readonly beadWaste: number;
}

/**
 * Throws RangeError for a number of units that is not whole or below 1.
 * @param uses what a performance uses, for whoever makes several bills of it.
 */
export function billOf(
  performances: readonly Performance[],
  options: BillOptions,
  uses: UsesOf = (performance) => usesOf(performance, options.beadWaste),
): Bill {
  if (!Number.isInteger(options.units) || options.units < 1)
    throw new RangeError(`units must be a whole number from 1, got ${options.units}`);
  const groups = new Map<string, Use[]>();
  for (const performance of performances) {
    for (const use of uses(performance)) {
      const key = `${use.grade} ${use.what} ${use.key}`,
        had = groups.get(key);
      if (had) had.push(use);
      else groups.set(key, [use]);
    }
  }
  const lines = [...groups.values()].map((uses) => lineOf(uses, options.units));
  const rank = (line: BillLine): number =>
    (line.grade === "certain" ? 0 : 10) + ["part", "fastener", "joint", "consumable", "fluid"].indexOf(line.what);
  return {
    units: options.units,
    procedures: performances.map(({ model, procedure }) => ({
      id: procedure.id,
      title: procedure.title || procedure.id,
      unit: model.unit,
      unitTitle: model.title,
      build: model.build,
    })),
    lines: lines
      .map((line, order) => ({ line, order }))
      .sort((a, b) => rank(a.line) - rank(b.line) || a.order - b.order)
      .map(({ line }) => line),
  };
}

function lineOf(uses: readonly Use[], units: number): BillLine {
  const first = uses[0]!,
    pack = uses.find((use) => use.pack)?.pack,
    perUnit = needOf(uses, pack, 1),
    total = needOf(uses, pack, units);
  const packUnit = pack && !("pieces" in pack) ? { value: pack.high, unit: pack.unit } : undefined;
  return {
    id: first.id,
    name: first.name,
    general: first.general,
    what: first.what,
    grade: first.grade,
    reasons: [...new Set(uses.map((use) => use.reason).filter((reason) => reason !== undefined))],
    strips: uses.find((use) => use.strips !== undefined)?.strips,
    partNo: first.partNo,
    standard: first.standard,
    size: first.size,
    perUnit,
    total,
    lot: first.lot,
    pack: packUnit ?? (pack && "pieces" in pack ? pack : undefined),
    packs: pack ? packsOf(total, pack) : undefined,
    lead: first.lead,
    shelfLife: first.shelfLife,
    uses,
  };
}

function needOf(uses: readonly Use[], pack: Use["pack"], units: number): Need {
  let pieces = 0,
    notGiven = 0;
  const sums = new Map<string, { sum: number; unit: string }>();
  for (const use of uses) {
    if (use.pieces !== undefined) pieces += use.pieces;
    else if (use.amount) {
      // Of a range the upper end is bought.
      const wanted = pack && !("pieces" in pack) && convert(use.amount, pack.unit) ? pack.unit : undefined;
      const had = [...sums.entries()].find(([, { unit }]) => convert(use.amount!, unit));
      if (had) sums.set(had[0], { ...had[1], sum: had[1].sum + si(use.amount).high });
      else sums.set(use.amount.dimension, { sum: si(use.amount).high, unit: wanted ?? use.amount.unit });
    } else notGiven += 1;
  }
  // One unit is never given half of a pair or of a set.
  const lot = uses[0]?.lot?.of ?? 1;
  return {
    pieces: Math.ceil(pieces / lot) * lot * units,
    amounts: [...sums.values()].map(({ sum, unit }) => ({ value: tidy(fromSi(sum * units, unit)), unit })),
    notGiven,
  };
}

/** Whole packs, never short. */
function packsOf(total: Need, pack: NonNullable<Use["pack"]>): NonNullable<BillLine["packs"]> {
  if ("pieces" in pack)
    return { count: Math.ceil(total.pieces / pack.pieces), atLeast: total.amounts.length > 0 || total.notGiven > 0 };
  const dimension = findUnit(pack.unit)?.dimension;
  const same = total.amounts.find((amount) => findUnit(amount.unit)?.dimension === dimension);
  // The smaller end of a pack given as a range, or the sum would come out short.
  const packs = same ? (packsFor(toSi(same.value, same.unit), toSi(pack.low, pack.unit)) ?? 0) : 0;
  const atLeast = total.notGiven > 0 || total.pieces > 0 || total.amounts.length > (same ? 1 : 0);
  return { count: Math.max(packs, 1), atLeast };
}

/** Takes the last bits of a sum away: 0.1 L three times is 0.3 L. */
const tidy = (value: number): number => Number(value.toPrecision(12));
