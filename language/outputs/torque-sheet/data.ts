// Every fastener that the way back tightens, in the order of tightening, with what it is tightened to in both systems of units. Nothing
// is filled in that the author does not give.

import { onThread } from "../../bill/on-thread.ts";
import type { Performance } from "../../bench/trace.ts";
import { threadText } from "../../bill/uses.ts";
import type { Torque, Tie } from "../../model/model.ts";
import { format, quantityOf, si, type Quantity } from "../../quantities/index.ts";
import { provenanceOf, type Provenance } from "../draft.ts";
import { toolName, type LineContext } from "../lines/context.ts";
import { figureText, shareText, writtenText } from "../lines/figures.ts";
import { linesOf, type Lines } from "../lines/groups.ts";
import type { ActionLine } from "../lines/line.ts";
import { spannerOf } from "../lines/spanner.ts";
import { isTurned, sequenceText } from "../lines/torque.ts";
import type { OutputInput, OutputOptions } from "../output.ts";
import { procedureHead, type ProcedureHead } from "../sheet/of-procedures.ts";
import { figureData } from "../torque-data.ts";
import { turnsOf } from "../draw/places.ts";
import { wrenchesIn, wrenchFor, type Wrench } from "./wrench.ts";

export interface TorqueRow {
  readonly line: string;
  readonly step: string;
  readonly id: string;
  readonly name: string;
  /** Pieces that this line tightens; undefined where the author gives no number. */
  readonly count: number | undefined;
  readonly thread: string;
  readonly class: string;
  /** One text for each value of the author's, as printed; "not given" where there is none. */
  readonly metric: readonly string[];
  readonly us: readonly string[];
  readonly passes: readonly string[];
  readonly sequence: string;
  /** Numbers of the fasteners in the order of tightening; empty where it cannot be numbered. */
  readonly order: readonly number[];
  readonly tool: string;
  readonly wrenches: readonly string[];
  readonly notes: readonly string[];
}

export interface TorqueSheetData {
  readonly format: "stripdown-torque-sheet";
  readonly version: 1;
  readonly provenance: Provenance;
  readonly procedures: readonly (ProcedureHead & { readonly id: string; readonly rows: readonly TorqueRow[] })[];
}

export function torqueSheetData(input: OutputInput, options: OutputOptions): TorqueSheetData {
  return {
    format: "stripdown-torque-sheet",
    version: 1,
    provenance: provenanceOf(input),
    procedures: input.performances.map((performance) =>
      torqueSheetOf(performance, linesOf(performance, options), options),
    ),
  };
}

/** Of one procedure. */
export function torqueSheetOf(
  performance: Performance,
  lines: Lines,
  options: OutputOptions,
): TorqueSheetData["procedures"][number] {
  const { context, refit, finish } = lines,
    { model, procedure } = performance,
    wrenches = wrenchesIn(model.library),
    ties = new Map(model.ties.map((tie) => [tie.id, tie]));
  return {
    id: procedure.id,
    ...procedureHead(performance, options),
    rows: [...refit, ...finish].flatMap((group) =>
      group.lines.flatMap((line) =>
        line.is !== "action" || !line.torque
          ? []
          : line.items.flatMap(({ id, count }) => {
              const tie = ties.get(id);
              return tie ? [rowOf(context, wrenches, tie, line, group.title, count)] : [];
            }),
      ),
    ),
  };
}

function rowOf(
  context: LineContext,
  list: readonly Wrench[],
  tie: Tie,
  line: ActionLine,
  step: string,
  count: number | undefined,
): TorqueRow {
  const { torqueSheet: words } = context.wording,
    values = valuesOf(tie, context),
    whole = count === undefined || count >= tie.count;
  const torques = [
    ...tie.torques.flatMap(({ value }) => value ?? []),
    ...tie.stages.filter(({ dimension }) => dimension === "torque"),
  ];
  const wrenches =
    list.length > 0
      ? torques.map((torque) => {
          const wrench = wrenchFor(list, torque);
          return wrench ? [wrench.name || wrench.id, figureText(wrench.range!, context)].join(", ") : words.noWrench;
        })
      : [];
  const fresh = context.fresh.get(tie.index)?.grade,
    { locker, lubricant } = onThread(tie);
  return {
    line: line.id,
    step,
    id: tie.id,
    name: tie.name,
    count,
    thread: context.wording.figures.number(threadText(tie) ?? ""),
    class: tie.propertyClass ?? tie.grade ?? "",
    metric: values.map(({ metric }) => metric),
    us: values.map(({ us }) => us),
    passes: passesOf(tie, context),
    sequence: isTurned(tie) ? sequenceText(tie, context) : "",
    order: whole ? turnsOf(tie) : [],
    tool: spannerOf(tie, context)?.says ?? "",
    wrenches: [...new Set(wrenches)],
    notes: [
      ...(fresh ? [words.fresh[fresh]] : []),
      ...(lubricant ? [words.lubricant(toolName(context, lubricant.text))] : []),
      ...(locker ? [words.threadLocker(toolName(context, locker.text))] : []),
      ...(tie.size?.leftHand ? [words.leftHand] : []),
    ],
  };
}

type Both = { readonly metric: string; readonly us: string };

function valuesOf(tie: Tie, context: LineContext): Both[] {
  const { torqueSheet: words, acts } = context.wording,
    both = (change: (text: string) => string, { metric, us }: Both): Both => ({
      metric: change(metric),
      us: change(us),
    });
  const stages = tie.stages.map((stage, i) => both((text) => words.stage(i + 1, text), inBoth(stage, context)));
  const torques = tie.torques.map((torque) => {
    const value = torqueIn(torque, context),
      of = torque.forCount === undefined ? value : both((text) => words.forPieces(text, torque.forCount!), value);
    return torque.while === undefined ? of : both((text) => words.whileDoing(text, torque.while!), of);
  });
  const all = [
    ...stages,
    ...torques,
    ...(tie.backOut
      ? [same(acts.backOutAfter(writtenText(tie.backOut.angle.written, context.wording), tie.backOut.until))]
      : []),
  ];
  return stages.length + torques.length === 0 ? [same(words.notGiven), ...all] : all;
}

const same = (text: string): Both => ({ metric: text, us: text });
const torqueIn = ({ is, value, words }: Torque, context: LineContext): Both =>
  is === "none"
    ? same(context.wording.torqueSheet.none)
    : is === "words"
      ? same(words ?? "")
      : value
        ? inBoth(value, context)
        : same(context.wording.torqueSheet.notGiven);

/** The author's own figure and bracket as written, the rest converted. */
function inBoth(quantity: Quantity, { wording }: LineContext): Both {
  const shown = (each: Quantity): Both => {
    const { metric, us } = figureData(each);
    return { metric: writtenText(metric, wording), us: writtenText(us, wording) };
  };
  const { metric, us } = shown({ ...quantity, pair: undefined }),
    pair = quantity.pair && shown(quantity.pair);
  if (!pair) return { metric, us };
  const plain = { ...quantity, pair: undefined },
    ownIsMetric = format(plain, "metric") === plain.written;
  return ownIsMetric ? { metric, us: pair.us } : { metric: pair.metric, us };
}

/** Each pass with its share of the torque where there is one torque and the author gives the shares. */
function passesOf({ passes, torques, stages }: Tie, { wording }: LineContext): string[] {
  const { torqueSheet: words } = wording;
  if (!passes) return [];
  const [only] = torques,
    value = torques.length === 1 && stages.length === 0 ? only!.value : undefined;
  if (!value || passes.shares.length === 0) return [words.passes(passes.count)];
  const full = si(value).nominal ?? si(value).high;
  return passes.shares.map((share, i) => {
    const value = Number((full * share).toPrecision(3)),
      part = quantityOf(value, "N·m", /\.(\d+)/.exec(String(value))?.[1]!.length ?? 0);
    return words.pass(
      i + 1,
      shareText(share, wording),
      writtenText(part.written, wording),
      writtenText(format(part, "us"), wording),
    );
  });
}
