// The whole model as plain values for other programs: what is declared, what each procedure takes off, renews and does.

import { crewAt } from "../../bench/crew.ts";
import { newThings } from "../../bill/new-things.ts";
import { sizeText, threadText } from "../../bill/uses.ts";
import type { Performance } from "../../bench/trace.ts";
import type { Fluid, Hazard, Message, Model, Part, Precaution, RenewRule, ThingIndex, Tie } from "../../model/model.ts";
import { hazardKinds } from "../../tables/index.ts";
import type { Provenance } from "../draft.ts";
import { lineContext, toolName } from "../lines/context.ts";
import { limitsText } from "../lines/reading.ts";
import { spannerOf } from "../lines/spanner.ts";
import { waitOf } from "../../bench/placement.ts";
import type { OutputInput, OutputOptions } from "../output.ts";
import { placesIn, type Place } from "../places.ts";
import { refitData, type RefitProcedure } from "../refit/data.ts";
import { figureData, torqueData, type FigureData, type TorqueData } from "../torque-data.ts";
import type { LineContext } from "../lines/context.ts";

export interface MessageData {
  readonly signal: Message["signal"];
  readonly text: string;
  readonly at: Place;
}
export interface RenewData {
  readonly when?: NonNullable<RenewRule["when"]>;
  readonly together?: NonNullable<RenewRule["together"]>;
  readonly strips?: number;
  readonly said: boolean;
}

interface ThingData {
  readonly id: string;
  readonly declared: string;
  readonly name: string;
  readonly piece: string;
  readonly about: string;
  readonly messages: readonly MessageData[];
  readonly at: Place;
}

export interface PartData extends ThingData {
  readonly kind: string;
  /** Undefined where the author gives none. */
  readonly count?: number;
  readonly mass?: FigureData;
  readonly size?: string;
  readonly supply?: FigureData;
  readonly hosts: readonly string[];
  readonly fitsBy?: string;
  readonly rests: readonly string[];
  readonly matched: readonly string[];
  readonly between?: readonly [readonly string[], readonly string[]];
  readonly behind: readonly string[];
  readonly positions: readonly string[];
  readonly hangs: boolean;
  readonly renew?: RenewData;
  readonly liftPeople?: number;
  readonly liftWith?: string;
  readonly dry: boolean;
  readonly alignBy?: string;
  readonly partNo?: string;
  readonly standard?: string;
  readonly unit?: string;
}

export interface TieData extends ThingData {
  readonly kind: string;
  readonly count?: number;
  readonly joins: { readonly hanging: readonly string[]; readonly on: readonly string[] };
  readonly into?: string;
  readonly behind: readonly string[];
  readonly positions: readonly string[];
  readonly opens: readonly string[];
  readonly renew?: RenewData;
  readonly partNo?: string;
  readonly standard?: string;
}

export interface FastenerData extends TieData {
  readonly size?: string;
  readonly class?: string;
  readonly grade?: string;
  readonly drive?: { readonly kind: string; readonly size?: string };
  /** Tool in words: from the drive, or by the head standards where the thread leaves no doubt. */
  readonly tool?: { readonly says: string; readonly computed: boolean };
  readonly torque?: TorqueData;
  readonly washers: readonly { readonly part: string; readonly count: number }[];
  readonly threadLocker?: string;
  readonly lubricant?: string;
  readonly reuseTimes?: number;
}

export interface JointData extends TieData {
  readonly parts: "undone" | "in passing";
  readonly how?: string;
  readonly force?: FigureData;
  readonly uses: readonly string[];
  readonly bead?: { readonly width: FigureData; readonly length?: FigureData };
}

export interface FluidData extends ThingData {
  readonly kind: string;
  readonly volume?: FigureData;
  readonly drainsAt: readonly string[];
  readonly fillsAt: readonly string[];
  readonly bleedsAt: readonly string[];
  readonly recover: boolean;
  readonly uses?: string;
  readonly path: readonly string[];
  readonly filled: boolean;
}

export interface PrecautionData {
  readonly kind: string;
  readonly text: string;
  readonly behind: readonly string[];
  readonly waitGiven?: FigureData;
  /** The longest of the given and the computed waits, s, and which it is. No wait stands for a proof. */
  readonly wait?: { readonly seconds: number; readonly decidedBy: "maker" | "to-60-V" | "to-0.2-J" };
  readonly tool?: string;
  readonly limits?: string;
  readonly back: string;
  readonly at: Place;
}

export interface HazardData extends ThingData {
  readonly kind: string;
  readonly signal?: string;
  readonly source?: string;
  readonly on: readonly string[];
  readonly pushes: readonly string[];
  readonly figures: Readonly<Record<string, FigureData>>;
  readonly wear: readonly string[];
  readonly role?: string;
  readonly precautions: readonly PrecautionData[];
}

export interface UnitData {
  readonly id: string;
  readonly title: string;
  readonly build: string;
  readonly revision?: string;
  readonly about: string;
  readonly mass?: FigureData;
  readonly base: readonly string[];
  readonly positions: readonly string[];
  readonly parts: readonly PartData[];
  readonly fasteners: readonly FastenerData[];
  readonly joints: readonly JointData[];
  readonly fluids: readonly FluidData[];
  readonly hazards: readonly HazardData[];
  readonly dismissed: readonly { readonly kind: string; readonly why: string }[];
  /** Hazard kinds neither declared nor dismissed: nobody has answered for them. */
  readonly notConsidered: readonly string[];
}

export interface ProcedureData extends RefitProcedure {
  readonly revision?: string;
  readonly crew: number;
  readonly role?: string;
  readonly about: string;
  readonly needs: readonly string[];
  /** Fasteners that it takes out, with how many of each. */
  readonly fastenersRemoved: readonly { readonly id: string; readonly name: string; readonly count: number }[];
  readonly partsRemoved: readonly { readonly id: string; readonly name: string }[];
  readonly toRenew: readonly {
    readonly id: string;
    readonly name: string;
    readonly grade: "certain" | "worn";
    readonly reason: string;
  }[];
}

export interface ExportData {
  readonly format: "stripdown-model";
  readonly version: 1;
  readonly provenance: Provenance;
  readonly units: readonly UnitData[];
  readonly procedures: readonly ProcedureData[];
  readonly tools: readonly {
    readonly id: string;
    readonly name: string;
    readonly kind?: string;
    readonly range?: FigureData;
    readonly capacity?: FigureData;
    readonly accuracy?: number;
    readonly count?: number;
    readonly calibration?: string;
  }[];
  readonly consumables: readonly {
    readonly id: string;
    readonly name: string;
    readonly pack?: FigureData | { readonly pieces: number };
    readonly partNo?: string;
    readonly standard?: string;
    readonly lead?: FigureData;
    readonly shelfLife?: FigureData;
  }[];
  readonly roles: readonly { readonly id: string; readonly name: string }[];
}

export function exportData(input: OutputInput, options: OutputOptions): ExportData {
  const place = placesIn(input.texts, options.showPath),
    refit = refitData(input, options),
    units = new Map<string, UnitData>();
  const procedures = input.performances.map((performance, i): ProcedureData => {
    const context = lineContext(performance, options),
      { model } = performance,
      key = `${model.unit} ${model.build}`;
    if (!units.has(key)) units.set(key, unitData(context, place));
    return procedureData(performance, refit.procedures[i]!, context);
  });
  const tools = merged(input.performances, (each) => each.library.tools),
    consumables = merged(input.performances, (each) => each.library.consumables),
    roles = merged(input.performances, (each) => each.library.roles);
  return {
    format: "stripdown-model",
    version: 1,
    provenance: refit.provenance,
    units: [...units.values()],
    procedures,
    tools: tools.map(([id, tool]) => ({
      id,
      name: tool.name,
      ...given({
        kind: tool.kind,
        range: fig(tool.range),
        capacity: fig(tool.capacity),
        accuracy: tool.accuracy,
        count: tool.count,
        calibration: tool.calibration,
      }),
    })),
    consumables: consumables.map(([id, each]) => ({
      id,
      name: each.name,
      ...given({
        pack: each.pack && "pieces" in each.pack ? each.pack : fig(each.pack),
        partNo: each.partNo,
        standard: each.standard,
        lead: fig(each.lead),
        shelfLife: fig(each.shelfLife),
      }),
    })),
    roles: roles.map(([id, { name }]) => ({ id, name })),
  };
}

/** By id over all models, in the order of the ids. */
function merged<T>(performances: readonly Performance[], of: (model: Model) => ReadonlyMap<string, T>): [string, T][] {
  const all = new Map<string, T>();
  for (const { model } of performances) for (const [id, value] of of(model)) if (!all.has(id)) all.set(id, value);
  return [...all].sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
}

type Given<T> = { [K in keyof T]?: Exclude<T[K], undefined> };

/** Without what is not given: absence is no value. */
function given<T extends object>(values: T): Given<T> {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as Given<T>;
}

const fig = (quantity: Parameters<typeof figureData>[0] | undefined): FigureData | undefined =>
  quantity && figureData(quantity);
const renewData = (rule: RenewRule | undefined): RenewData | undefined =>
  rule && {
    ...(rule.when === undefined ? {} : { when: rule.when }),
    ...(rule.together === undefined ? {} : { together: rule.together }),
    ...(rule.strips === undefined ? {} : { strips: rule.strips }),
    said: rule.said,
  };

function unitData(context: LineContext, place: ReturnType<typeof placesIn>): UnitData {
  const { model } = context,
    ids = (things: readonly ThingIndex[]): string[] => things.map((thing) => model.things[thing]!.id);
  const base = ({ id, declared, name, piece, about, messages, at }: Part | Tie | Fluid | Hazard): ThingData => ({
    id,
    declared,
    name,
    piece,
    about,
    messages: messages.map((message) => ({ signal: message.signal, text: message.text, at: place(message.at) })),
    at: place(at),
  });
  const tie = (of: Tie): TieData => ({
    ...base(of),
    kind: of.kind,
    joins: { hanging: ids(of.lowers), on: ids(of.uppers) },
    behind: ids(of.behind),
    positions: of.positions,
    opens: ids(of.opens),
    ...given({
      count: of.countUnknown ? undefined : of.count,
      into: of.into === undefined ? undefined : ids([of.into])[0],
      renew: renewData(of.renew),
      partNo: of.partNo,
      standard: of.standard,
    }),
  });
  const declared = new Set(model.hazards.map((hazard) => hazard.kind));
  return {
    id: model.unit,
    title: model.title,
    build: model.build,
    about: model.about,
    ...given({ revision: model.revision, mass: fig(model.mass) }),
    base: ids(model.base),
    positions: model.positions,
    parts: model.parts.map((part): PartData => ({
      ...base(part),
      kind: part.kind,
      hosts: ids(part.hosts),
      rests: ids(part.rests),
      matched: ids(part.matched),
      behind: ids(part.behind),
      positions: part.positions,
      hangs: part.hangs,
      dry: part.dry,
      ...given({
        count: part.countUnknown ? undefined : part.count,
        mass: fig(part.mass),
        size: sizeText(part),
        supply: fig(part.supply),
        fitsBy: part.fitsBy,
        between: part.between ? ([ids(part.between[0]), ids(part.between[1])] as const) : undefined,
        renew: renewData(part.renew),
        liftPeople: part.liftPeople,
        liftWith:
          part.liftWith.length === 0
            ? undefined
            : context.wording.acts.list(part.liftWith.map(({ text }) => toolName(context, text))),
        alignBy: part.alignBy,
        partNo: part.partNo,
        standard: part.standard,
        unit: part.unit,
      }),
    })),
    fasteners: model.ties
      .filter((each) => each.fastener)
      .map((each): FastenerData => {
        const tool = spannerOf(each, context);
        return {
          ...tie(each),
          washers: each.washers.map(({ part, count }) => ({ part: model.things[part]!.id, count })),
          ...given({
            size: threadText(each),
            class: each.propertyClass,
            grade: each.grade,
            drive: each.drive && {
              kind: each.drive.kind,
              ...(each.drive.size ? { size: each.drive.size.written } : {}),
            },
            tool: tool && { says: tool.says, computed: tool.computed },
            torque: torqueData(each, context),
            threadLocker: each.threadLocker && toolName(context, each.threadLocker.text),
            lubricant: each.lubricant && toolName(context, each.lubricant.text),
            reuseTimes: each.reuseTimes,
          }),
        };
      }),
    joints: model.ties
      .filter((each) => !each.fastener)
      .map((each): JointData => ({
        ...tie(each),
        parts: each.passing ? "in passing" : "undone",
        uses: each.uses.map((name) => toolName(context, name.text)),
        ...given({
          how: each.how,
          force: fig(each.force),
          bead: each.bead && {
            width: figureData(each.bead.width),
            ...(each.bead.length ? { length: figureData(each.bead.length) } : {}),
          },
        }),
      })),
    fluids: model.fluids.map((fluid): FluidData => ({
      ...base(fluid),
      kind: fluid.kind,
      drainsAt: ids(fluid.drainsAt),
      fillsAt: ids(fluid.fillsAt),
      bleedsAt: ids(fluid.bleedsAt),
      recover: fluid.recover,
      path: ids(fluid.path),
      filled: fluid.filled,
      ...given({ volume: fig(fluid.volume ?? fluid.amount), uses: fluid.uses && toolName(context, fluid.uses.text) }),
    })),
    hazards: model.hazards.map((hazard): HazardData => ({
      ...base(hazard),
      kind: hazard.kind,
      on: ids(hazard.on),
      pushes: ids(hazard.pushes),
      figures: Object.fromEntries([...hazard.figures].map(([word, quantity]) => [word, figureData(quantity)])),
      wear: hazard.wear.map((name) => toolName(context, name.text)),
      ...given({
        signal: hazard.signal,
        source: hazard.source,
        role: hazard.role && toolName(context, hazard.role.text),
      }),
      precautions: hazard.precautions.map((each) => precautionData(context, hazard, each, ids, place)),
    })),
    dismissed: [...model.dismissed].map(([kind, { why }]) => ({ kind, why })),
    notConsidered: Object.keys(hazardKinds).filter((kind) => !declared.has(kind) && !model.dismissed.has(kind)),
  };
}

function precautionData(
  context: LineContext,
  hazard: Hazard,
  precaution: Precaution,
  ids: (things: readonly ThingIndex[]) => string[],
  place: ReturnType<typeof placesIn>,
): PrecautionData {
  const wait = waitOf(hazard, precaution),
    limits = precaution.limits ? limitsText(precaution.limits, context) : undefined;
  return {
    kind: precaution.kind,
    text: precaution.text,
    behind: ids(precaution.behind),
    back: precaution.back,
    at: place(precaution.at),
    ...given({
      waitGiven: fig(precaution.wait),
      wait:
        wait?.seconds !== undefined && wait.decidedBy
          ? { seconds: Number(wait.seconds.toPrecision(6)), decidedBy: wait.decidedBy.of }
          : undefined,
      tool:
        precaution.tools.length > 0
          ? context.wording.acts.list(precaution.tools.map(({ text }) => toolName(context, text)))
          : undefined,
      limits,
    }),
  };
}

function procedureData(performance: Performance, refit: RefitProcedure, context: LineContext): ProcedureData {
  const { model, procedure, events } = performance,
    removed = new Map<ThingIndex, number>(),
    off = new Set<ThingIndex>();
  for (const event of events) {
    if (event.assumed) continue;
    if (event.kind === "out") removed.set(event.thing, (removed.get(event.thing) ?? 0) + event.count);
    if (event.kind === "off") for (const thing of event.things) off.add(thing);
  }
  // Renewed is what this procedure fits, with the washers of the fasteners that it fits, and what its acts and readings ask for.
  const comesUp = new Set(context.fitted);
  for (const thing of context.fitted) {
    const tie = model.things[thing];
    if (tie?.is === "tie") for (const { part } of tie.washers) comesUp.add(part);
  }
  return {
    ...refit,
    crew: crewAt(procedure),
    about: procedure.about,
    ...given({ revision: procedure.revision, role: procedure.role && toolName(context, procedure.role.text) }),
    needs: procedure.needs.map(
      (need) => need.words ?? need.names.map((name) => model.procedures.get(name.text)?.title || name.text).join(", "),
    ),
    fastenersRemoved: [...removed]
      .map(([thing, count]) => ({ thing: model.things[thing]!, count }))
      .filter(({ thing }) => thing.is === "tie" && thing.fastener)
      .map(({ thing, count }) => ({ id: thing.id, name: thing.name, count })),
    partsRemoved: [...off].map((thing) => ({ id: model.things[thing]!.id, name: model.things[thing]!.name })),
    toRenew: [...newThings(performance).values()]
      .filter(
        ({ thing, reason }) => comesUp.has(thing) || reason === "reading" || reason === "act" || reason === "scrap",
      )
      .map(({ thing, grade, reason }) => ({
        id: model.things[thing]!.id,
        name: model.things[thing]!.name,
        grade,
        reason,
      })),
  };
}
