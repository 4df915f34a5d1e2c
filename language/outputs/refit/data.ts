// Strip and refit as acts with the needs between them, and as printed lines.

import { givenTexts } from "../lines/given.ts";
import { reduced } from "../../bench/refit/freedom.ts";
import type { Around, Performance, Performed, RefitPerformed } from "../../bench/trace.ts";
import type { ThingIndex } from "../../model/model.ts";
import { provenanceOf, type Provenance } from "../draft.ts";
import { buildText } from "../lines/build-text.ts";
import { toolName, type LineContext } from "../lines/context.ts";
import { linesOf } from "../lines/groups.ts";
import { someOfPart } from "../lines/some-of-part.ts";
import { itemsOf } from "../lines/items.ts";
import type { LineGroup, LineItem } from "../lines/line.ts";
import type { OutputInput, OutputOptions } from "../output.ts";
import { placesIn, type Place } from "../places.ts";
import { torqueData, type TorqueData } from "../torque-data.ts";

export interface RefitItem extends LineItem {
  readonly torque?: TorqueData;
}

export interface RefitNeed {
  /** Id of the act that must come before. */
  readonly id: string;
  readonly why: string;
}

export interface RefitAct {
  /** `S3` in the strip, `R7` in the refit, `F1` in the finish: by place in the printed line. */
  readonly id: string;
  /** The word of the language, or the verb of the refit. */
  readonly verb: string;
  /** As printed, one line each; empty where nothing is to be done. */
  readonly says: readonly string[];
  /** The author's own words. */
  readonly text: string;
  readonly items: readonly RefitItem[];
  readonly tool?: string;
  readonly into?: { readonly kind: "tray" | "bag" | "container"; readonly label: string };
  readonly passes?: number;
  readonly turn?: string;
  readonly procedure: string;
  readonly step?: { readonly number: number; readonly name: string; readonly title: string; readonly on?: string };
  readonly given: readonly string[];
  /** The bench refused it. */
  readonly refused: boolean;
  readonly at: Place;
  readonly needs: readonly RefitNeed[];
}

export interface RefitProcedure {
  readonly id: string;
  readonly title: string;
  readonly unit: string;
  readonly unitTitle: string;
  readonly build: string;
  /** `computed`, or the acts of a written one; `none` where the way back could not be performed. */
  readonly refitIs: "computed" | "written" | "none";
  readonly strip: readonly RefitAct[];
  readonly refit: readonly RefitAct[];
  readonly finish: readonly RefitAct[];
}

export interface RefitData {
  readonly format: "stripdown-refit";
  readonly version: 1;
  readonly provenance: Provenance;
  readonly procedures: readonly RefitProcedure[];
  /** For the formats that print: not part of the JSON. */
  readonly printed: readonly {
    readonly buildText: string;
    readonly strip: readonly LineGroup[];
    readonly refit: readonly LineGroup[];
    readonly finish: readonly LineGroup[];
  }[];
}

export function refitData(input: OutputInput, options: OutputOptions): RefitData {
  const place = placesIn(input.texts, options.showPath),
    procedures: RefitProcedure[] = [],
    printed: RefitData["printed"][number][] = [];
  for (const performance of input.performances) {
    const lines = linesOf(performance, options);
    printed.push({
      buildText: buildText(performance.model, options.wording),
      strip: lines.strip,
      refit: lines.refit,
      finish: lines.finish,
    });
    procedures.push(procedureData(performance, lines, place));
  }
  return { format: "stripdown-refit", version: 1, provenance: provenanceOf(input), procedures, printed };
}

function procedureData(
  performance: Performance,
  lines: ReturnType<typeof linesOf>,
  place: (span: Performance["procedure"]["at"]) => Place,
): RefitProcedure {
  const { model, procedure, strip, refit, written, finish } = performance,
    { context } = lines;
  const saysIn = (groups: readonly LineGroup[]): ReadonlyMap<number, string[]> => {
    const says = new Map<number, string[]>();
    for (const line of groups.flatMap((group) => group.lines)) {
      if (line.is !== "action") continue;
      for (const of of line.of)
        says.set(of, [...(says.get(of) ?? []), [line.says, line.text].filter(Boolean).join(" ")]);
    }
    return says;
  };
  const acts = (list: readonly Performed[], letter: string, groups: readonly LineGroup[]): RefitAct[] => {
    const says = saysIn(groups),
      madeBy = new Map<number, number>();
    list.forEach(({ from, to }, i) => {
      for (let event = from; event < to; event++) madeBy.set(event, i);
    });
    return list.map((each, i): RefitAct => ({
      id: `${letter}${i + 1}`,
      verb: each.act.verb,
      says: says.get(i) ?? [],
      text: each.act.text,
      items: items(context, each.things, countIn(performance, each)),
      ...extras(context, each.act),
      ...around(each.around, context),
      refused: each.refused,
      at: place(each.act.at),
      needs: letter === "S" ? stripNeeds(performance, each, i, madeBy) : [],
    }));
  };
  return {
    id: procedure.id,
    title: procedure.title,
    unit: model.unit,
    unitTitle: model.title,
    build: model.build,
    refitIs: performance.order ? "computed" : written.length > 0 ? "written" : "none",
    strip: acts(strip, "S", lines.strip),
    refit: refit.length > 0 ? refitActs(context, refit, saysIn(lines.refit), place) : acts(written, "R", lines.refit),
    finish: acts(finish, "F", lines.finish),
  };
}

const around = (
  { procedure, step, given }: Around,
  { model, wording }: LineContext,
): Pick<RefitAct, "procedure" | "step" | "given"> => ({
  procedure: procedure.id,
  ...(step
    ? {
        step: {
          number: step.number,
          name: step.name,
          title: step.title,
          ...(step.on === undefined ? {} : { on: model.things[step.on]!.id }),
        },
      }
    : {}),
  given: givenTexts(given, wording),
});

const extras = (context: LineContext, act: Performed["act"]): Partial<RefitAct> => ({
  ...(act.tools.length > 0
    ? { tool: context.wording.acts.list(act.tools.map(({ text }) => toolName(context, text))) }
    : {}),
  ...(act.into ? { into: act.into } : {}),
  ...(act.passes === undefined ? {} : { passes: act.passes }),
});

/** Pieces that the act's own event took; undefined where it has none or several. */
function countIn(performance: Performance, { from, to, things, act }: Performed): number | undefined {
  const own = performance.events.slice(from, to).filter((event) => event.kind === "out" || event.kind === "slack");
  return things.length === 1 && own.length === 1 ? own[0]!.count : act.count;
}

function items(context: LineContext, things: readonly ThingIndex[], count: number | undefined): RefitItem[] {
  return itemsOf(context, things, count).map((item, i) => {
    const thing = context.model.things[things[i]!]!,
      torque = thing.is === "tie" ? torqueData(thing, context) : undefined;
    return torque ? { ...item, torque } : item;
  });
}

/** The earlier acts whose events this act's events rest on. */
function stripNeeds(
  performance: Performance,
  { from, to }: Performed,
  self: number,
  madeBy: ReadonlyMap<number, number>,
): RefitNeed[] {
  const needs = new Set<number>();
  for (const event of performance.events.slice(from, to)) {
    for (const earlier of event.needs) {
      const by = madeBy.get(earlier);
      if (by !== undefined && by !== self) needs.add(by);
    }
  }
  return [...needs].sort((a, b) => a - b).map((by) => ({ id: `S${by + 1}`, why: "" }));
}

function refitActs(
  context: LineContext,
  refit: readonly RefitPerformed[],
  says: ReadonlyMap<number, string[]>,
  place: (span: Performance["procedure"]["at"]) => Place,
): RefitAct[] {
  const { order } = context.performance,
    idOf = new Map(refit.map(({ op }, i) => [op.number, `R${i + 1}`])),
    needs = new Map<number, RefitNeed[]>();
  if (order)
    for (const { from, to, why } of reduced(order))
      needs.set(to, [...(needs.get(to) ?? []), { id: idOf.get(from) ?? "", why }]);
  return refit.map(({ op, turn }, i): RefitAct => ({
    id: `R${i + 1}`,
    verb: op.verb === "written" ? (op.act?.verb ?? "") : op.verb,
    says: says.get(op.number) ?? [],
    text: op.act?.text ?? "",
    items: items(
      context,
      op.things,
      op.things.length === 1 && op.event?.kind === "out" ? op.count : someOfPart(context, op),
    ),
    ...(op.act ? extras(context, op.act) : {}),
    ...(turn === undefined ? {} : { turn }),
    ...around(op.around, context),
    refused: false,
    at: place(op.at),
    needs: needs.get(op.number) ?? [],
  }));
}
