// Rows of the manual's tables of parts, fasteners, joints and fluids. What is not given says so where it matters for lifting or
// tightening, and is left empty elsewhere.

import { sizeText, threadText } from "../../bill/uses.ts";
import type { ThingIndex, Tie } from "../../model/model.ts";
import { toolName, type LineContext } from "../lines/context.ts";
import { figureText } from "../lines/figures.ts";
import { volumeText } from "../lines/say-plain.ts";
import { spannerOf } from "../lines/spanner.ts";
import { torqueOf } from "../lines/torque.ts";
import type { FluidRow, PartRow, TieRow } from "./document.ts";

export function partRows(context: LineContext): PartRow[] {
  const { acts, kinds, figures } = context.wording;
  return context.model.parts.map((part, i) => ({
    number: i + 1,
    id: part.id,
    name: part.name,
    kind: kinds.part(part.kind),
    count: part.countUnknown ? acts.countNotGiven : String(part.count),
    mass: part.mass ? figureText(part.mass, context, "up") : acts.massNotGiven,
    size: [figures.number(sizeText(part) ?? ""), part.supply && figureText(part.supply, context)]
      .filter(Boolean)
      .join(", "),
    partNo: part.partNo ?? "",
    standard: part.standard ?? "",
    fresh: freshText(context, part.index),
  }));
}

export function tieRows(context: LineContext, fasteners: boolean): TieRow[] {
  const { acts, kinds, figures, document, manual } = context.wording;
  return context.model.ties
    .filter((tie) => tie.fastener === fasteners)
    .map((tie) => {
      const torque = torqueOf(tie, tie.count, context);
      return {
        id: tie.id,
        name: tie.name,
        kind: fasteners ? "" : kinds.joint(tie.kind),
        count: tie.countUnknown ? acts.countNotGiven : String(tie.count),
        size: [
          [figures.number(threadText(tie) ?? ""), tie.propertyClass ?? tie.grade].filter(Boolean).join(" "),
          tie.standard,
          tie.partNo && document.titled(manual.partNo, tie.partNo),
        ]
          .filter(Boolean)
          .join(", "),
        tool: spannerOf(tie, context)?.says ?? "",
        torque: torque?.text ?? "",
        passes: document.parts([torque?.passes ?? "", torque?.sequence ?? ""].filter(Boolean)),
        joins: joinsText(context, tie),
        fresh: freshText(context, tie.index),
      };
    });
}

function joinsText(context: LineContext, tie: Tie): string {
  const names = (things: readonly ThingIndex[]): string =>
    things.map((thing) => context.model.things[thing]!.name).join(", ");
  // On the base part of a sub-assembly nothing is named.
  if (tie.lowers.length > 0)
    return tie.uppers.length === 0
      ? names(tie.lowers)
      : context.wording.manual.hangsOn(names(tie.lowers), names(tie.uppers));
  return tie.into === undefined ? "" : names([tie.into]);
}

function freshText({ fresh, wording }: LineContext, thing: ThingIndex): string {
  const grade = fresh.get(thing)?.grade;
  return grade ? wording.manual.freshGrades[grade] : "";
}

export function fluidRows(context: LineContext): FluidRow[] {
  const { kinds } = context.wording,
    names = (things: readonly ThingIndex[]): string =>
      things.map((thing) => context.model.things[thing]!.name).join(", ");
  return context.model.fluids.map((fluid) => ({
    name: fluid.name,
    kind: kinds.fluid(fluid.kind),
    volume: volumeText(context, fluid),
    drainsAt: names(fluid.drainsAt),
    fillsAt: names(fluid.fillsAt),
    bleedsAt: names(fluid.bleedsAt),
    uses: fluid.uses ? toolName(context, fluid.uses.text) : "",
    waste: kinds.fluidWaste(fluid.kind) ?? "",
  }));
}
