// The bill as plain values: the lines of the bill with their amounts in words, and where each is used.

import { billOf, type Bill, type BillLine, type Need, type UsesOf } from "../../bill/bill.ts";
import { usesOf, type Use } from "../../bill/uses.ts";
import type { Performance } from "../../bench/trace.ts";
import { defaultAssumptions } from "../../figures/assumptions.ts";
import type { Quantity } from "../../quantities/index.ts";
import { provenanceOf, type Provenance } from "../draft.ts";
import { buildText } from "../lines/build-text.ts";
import { amountText, figureText, sizeIn, type Units } from "../lines/figures.ts";
import type { OutputInput, OutputOptions } from "../output.ts";
import { placesIn, type Place } from "../places.ts";
import { capital } from "../wording/phrases.ts";
import type { Wording } from "../wording/wording.ts";

export interface BillNeed {
  readonly pieces: number;
  readonly amounts: readonly { readonly value: number; readonly unit: string }[];
  /** Uses that name no amount. */
  readonly notGiven: number;
  /** As printed; never empty. */
  readonly text: string;
}

export interface SupplyRow {
  readonly id: string;
  readonly name: string;
  /** The units that it is a part of, where another line of this grade is called the same and is of another unit; "" else. */
  readonly within: string;
  readonly what: BillLine["what"];
  readonly grade: BillLine["grade"];
  readonly reasons: BillLine["reasons"];
  readonly why: string;
  readonly size?: string;
  readonly partNo?: string;
  readonly standard?: string;
  /** Bought in whole pairs, or whole sets of so many pieces. */
  readonly lot?: {
    readonly is: "pair" | "set";
    readonly of: number;
    /** The other lines of a set that has several. */
    readonly with?: readonly string[];
  };
  readonly perUnit: BillNeed;
  readonly total: BillNeed;
  readonly pack?: string;
  readonly packs?: { readonly count: number; readonly atLeast: boolean; readonly text: string };
  readonly lead?: string;
  readonly shelfLife?: string;
}

export interface BillRow extends SupplyRow {
  /** All that it goes on, by name, each once. */
  readonly usedOn: readonly string[];
  readonly usedAt: readonly {
    readonly on: string;
    readonly procedure: string;
    readonly step: string;
    readonly at: Place;
  }[];
}

export interface BillData {
  readonly format: "stripdown-bill";
  readonly version: 1;
  readonly provenance: Provenance;
  readonly units: number;
  readonly procedures: readonly (Bill["procedures"][number] & { readonly buildText: string })[];
  readonly lines: readonly BillRow[];
}

const beadWasteIn = ({ beadWaste = defaultAssumptions["bead-waste"] }: OutputOptions): number => beadWaste;

/** For one document: what each performance uses is found once for all of its bills. */
export function usesOnce(options: OutputOptions): UsesOf {
  const found = new Map<Performance, readonly Use[]>();
  return (performance) => {
    const uses = found.get(performance) ?? usesOf(performance, beadWasteIn(options));
    found.set(performance, uses);
    return uses;
  };
}

const reckoned = (performances: readonly Performance[], options: OutputOptions, uses?: UsesOf): Bill =>
  billOf(performances, { units: options.units ?? 1, beadWaste: beadWasteIn(options) }, uses);

/** The lines alone, for a table among others: what is asked for, without where. */
export const supplyRows = (performance: Performance, options: OutputOptions, uses?: UsesOf): SupplyRow[] => {
  const { lines } = reckoned([performance], options, uses),
    within = withinOf(lines, options);
  return lines.map((line) => ({ ...supplyRow(line, lines, options), within: within(line) }));
};

/** The unit of a line, where the name alone could be two things. */
function withinOf(lines: readonly BillLine[], { wording }: OutputOptions): (line: BillLine) => string {
  const alike = Map.groupBy(lines, headOf),
    withins = ({ uses }: BillLine): string => wording.acts.list([...new Set(uses.map((use) => use.within))]);
  return (line) => (new Set(alike.get(headOf(line))!.map(withins)).size > 1 ? withins(line) : "");
}

/** What somebody at the shelf tells a line by. */
const headOf = ({ name, size, partNo, standard, grade }: BillLine): string =>
  JSON.stringify([name, size, partNo, standard, grade]);

/** As printed: with the unit where the name alone could be two things. */
export const billName = ({ name, within }: Pick<BillRow, "name" | "within">, { lines }: Wording): string =>
  within === "" ? name : lines.only(name, within);

export function billData(input: OutputInput, options: OutputOptions, uses?: UsesOf): BillData {
  const bill = reckoned(input.performances, options, uses),
    within = withinOf(bill.lines, options),
    place = placesIn(input.texts, options.showPath);
  return {
    format: "stripdown-bill",
    version: 1,
    provenance: provenanceOf(input),
    units: bill.units,
    procedures: bill.procedures.map((procedure, i) => ({
      ...procedure,
      buildText: buildText(input.performances[i]!.model, options.wording),
    })),
    lines: bill.lines.map((line) => ({
      ...supplyRow(line, bill.lines, options),
      within: within(line),
      usedOn: [...new Set(line.uses.flatMap(({ on }) => on))],
      usedAt: line.uses.map((use) => ({
        on: use.on.join(", "),
        procedure: use.procedure,
        step: use.step,
        at: place(use.at),
      })),
    })),
  };
}

function supplyRow(line: BillLine, lines: readonly BillLine[], options: OutputOptions): Omit<SupplyRow, "within"> {
  const { wording } = options,
    { bill: words } = wording,
    time = (quantity: Quantity): string => figureText(quantity, options),
    lot = lotText(line, lines, wording);
  const why = line.reasons.map((reason) =>
    reason === "every" ? words.every(line.strips ?? 1) : words.reasons[reason],
  );
  return {
    id: line.id,
    name: line.general === undefined ? line.name : capital(wording.kinds.jointUse(line.general)),
    what: line.what,
    grade: line.grade,
    reasons: line.reasons,
    why: why.join(", "),
    ...(line.size === undefined ? {} : { size: sizeIn(line.size, wording) }),
    ...(line.partNo === undefined ? {} : { partNo: line.partNo }),
    ...(line.standard === undefined ? {} : { standard: line.standard }),
    ...(line.lot === undefined
      ? {}
      : {
          lot: {
            is: line.lot.is,
            of: line.lot.of,
            ...(line.lot.lines.length > 1 ? { with: line.lot.lines.filter((id) => id !== line.id) } : {}),
          },
        }),
    perUnit: needOf(line.perUnit, lot, options),
    total: needOf(line.total, lot, options),
    ...(line.pack === undefined
      ? {}
      : {
          pack:
            "pieces" in line.pack
              ? words.pieces(line.pack.pieces)
              : amountText(line.pack.value, line.pack.unit, wording),
        }),
    ...(line.packs === undefined
      ? {}
      : { packs: { ...line.packs, text: words.packs(line.packs.count, line.packs.atLeast) } }),
    ...(line.lead === undefined ? {} : { lead: time(line.lead) }),
    ...(line.shelfLife === undefined ? {} : { shelfLife: time(line.shelfLife) }),
  };
}

/**
 * Pieces in words, with the pairs or sets that they make. A set that has several lines is counted at the first of them, which names the
 * others; each of these names the first, so that nobody buys a set by every line.
 */
function lotText(
  { id, grade, lot }: BillLine,
  lines: readonly BillLine[],
  { bill: words, acts }: Wording,
): (pieces: number) => string {
  if (!lot) return words.pieces;
  const { is, of, key } = lot,
    ofSet = is === "set" ? lines.filter((one) => one.grade === grade && one.lot?.key === key) : [];
  if (ofSet.length < 2) return (pieces) => words.lots[is](pieces, pieces / of);
  const [first, ...others] = ofSet.map(({ name }) => name);
  return ofSet[0]!.id === id
    ? (pieces) => words.lots.setWith(pieces, pieces / of, acts.list(others))
    : (pieces) => words.lots.inSet(pieces, first!);
}

/** "12 off", "4.98 ml, and amount not given for 2 uses". Amounts are rounded up. */
function needOf(need: Need, pieces: (count: number) => string, { wording }: Units): BillNeed {
  const { bill: words } = wording;
  const parts = [
    ...(need.pieces > 0 ? [pieces(need.pieces)] : []),
    ...need.amounts.map(({ value, unit }) => amountText(value, unit, wording)),
    ...(need.notGiven > 0 ? [words.notGiven(need.notGiven)] : []),
  ];
  return { ...need, text: words.and(parts) };
}
