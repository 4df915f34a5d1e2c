// The lines of the computed way back: each op, or a run of ops that reads as one, by what it does again.

import type { Performed, RefitPerformed } from "../../bench/trace.ts";
import type { Fluid, Part, Tie } from "../../model/model.ts";
import { fluidKinds, kindIn } from "../../tables/index.ts";
import { actLines } from "./act-lines.ts";
import { builtOn } from "./built-on.ts";
import { phrase, thingOf, type LineContext } from "./context.ts";
import { action, type Doing, type LineDraft } from "./draft.ts";
import { heldWith } from "./held-with.ts";
import { itemsOf } from "./items.ts";
import { withMeans } from "./means.ts";
import { fillLine, plainLines } from "./say-plain.ts";
import { fitLine, makeLine } from "./say-refit.ts";
import { removeLines, undoLines } from "./say-strip.ts";
import { someOfPart } from "./some-of-part.ts";

export function opLines(context: LineContext, run: readonly RefitPerformed[]): readonly LineDraft[] {
  const { op, before } = run[0]!,
    after = run[run.length - 1]!.after,
    { acts } = context.wording,
    { event, around } = op;
  const things = run.flatMap((each) => each.op.things),
    numbers = run.map((each) => each.op.number);
  // The author's words of the strip act stay in the strip; those of a refit act print here.
  const held = event && heldWith(context, event);
  const base =
    op.act ??
    (event
      ? {
          ...event.act,
          text: "",
          verb: op.verb,
          tools: held!.tools,
          into: undefined,
          passes: undefined,
          count: someOfPart(context, op),
          rest: false,
        }
      : undefined);
  if (!base) return [];
  const doing: Doing = { act: { ...base, at: op.at }, around, half: "refit", of: op.number, refused: false, before },
    items = () => itemsOf(context, things, undefined);
  const all = (drafts: readonly LineDraft[]): readonly LineDraft[] =>
    (op.act && op.event ? withMeans(context, op.act, drafts) : drafts).map((draft) =>
      draft.is === "action" ? { ...draft, of: numbers } : draft,
    );
  switch (op.verb) {
    case "fit":
    case "finger-tighten":
    case "tighten":
      return all(madeLines(context, doing, run));
    case "back":
    case "aside": {
      const verb = event?.act.verb === "swing" || event?.act.verb === "open" ? event.act.verb : "slide",
        what = phrase(context, things);
      return all([
        action(doing, op.verb, op.verb === "back" ? acts.back(verb, what) : acts.aside(verb, what), { items: items() }),
      ]);
    }
    case "fill":
      return all(
        things
          .map((thing) => thingOf(context, thing))
          .flatMap((thing) => (thing.is === "fluid" ? filling(context, doing, thing) : [])),
      );
    case "undo":
      return all(
        undoLines(
          context,
          { ...doing, act: { ...doing.act, count: event?.count } },
          { ...emptyPerformed(doing, before, after), things },
          [],
        ),
      );
    case "remove":
      return all(removeLines(context, doing, { ...emptyPerformed(doing, before, after), things }, []));
    case "cap":
    case "uncap":
    case "hold":
    case "support":
    case "release":
      return all(plainLines(context, { ...doing, act: { ...doing.act, verb: op.verb } }, things) ?? []);
    case "lift":
    case "stand":
      return all(precautionLines(context, doing, op, items()));
    case "written":
      return all(writtenOp(context, doing, run));
  }
}

/** Parts that go back on, and ties that are made: equal ties in one line with the sum of their pieces. */
function madeLines(context: LineContext, doing: Doing, run: readonly RefitPerformed[]): readonly LineDraft[] {
  const { op, before } = run[0]!,
    after = run[run.length - 1]!.after,
    things = run.flatMap((each) => each.op.things.map((thing) => thingOf(context, thing))),
    parts = things.filter((thing): thing is Part => thing.is === "part"),
    ties = things.filter((thing): thing is Tie => thing.is === "tie"),
    [first] = ties;
  if (first && ties.length > 1 && ties.every((tie) => tie === first))
    return [
      makeLine(context, doing, [first], {
        how: "fit",
        count: run.reduce((sum, each) => sum + each.op.count, 0),
        stage: undefined,
      }),
    ];
  if (first)
    return [
      makeLine(context, doing, ties, {
        how: op.verb === "tighten" ? "tighten" : op.verb === "finger-tighten" ? "finger-tight" : "fit",
        count: op.count,
        stage: op.act?.stage,
      }),
    ];
  if (parts.length === 0) return [];
  const built = builtOn(context, run);
  if (built)
    return [
      fitLine(context, { ...doing, act: { ...doing.act, verb: "fit", names: [], tools: [] } }, built.parts, {
        before,
        after,
        moved: built.moved,
        lifted: undefined,
        onto: built.onto,
      }),
    ];
  const { event } = op;
  return [
    fitLine(context, doing, parts, {
      before,
      after,
      moved: run.flatMap((each) => each.op.event?.moved ?? []),
      lifted: event?.act.verb === "lift" ? event.act : undefined,
    }),
  ];
}

/** Precautions that stand again, or that are taken back. */
function precautionLines(
  context: LineContext,
  doing: Doing,
  { verb, event, act }: RefitPerformed["op"],
  items: LineItems,
): readonly LineDraft[] {
  const { acts, kinds } = context.wording,
    asWritten = act?.text ?? "";
  return (event?.precautions ?? []).flatMap((number): LineDraft[] => {
    const precaution = context.model.precautions[number]!,
      hazard = thingOf(context, precaution.hazard),
      short = kinds.precautionShort(precaution.kind);
    if (verb === "stand") {
      const text = [precaution.text, asWritten].filter(Boolean).join(" ");
      return [action({ ...doing, act: { ...doing.act, text } }, verb, acts.standAgain(short, hazard.name), { items })];
    }
    const text = [precaution.back || kinds.precautionBack(precaution.kind), asWritten].filter(Boolean).join(" ");
    // What nobody has to take back prints nothing.
    if (text === "") return [];
    return [
      action({ ...doing, act: { ...doing.act, text } }, verb, acts.precautionBackTitle(short), {
        items,
        details: [{ sort: "hazard", says: acts.against(hazard.name) }],
      }),
    ];
  });
}
type LineItems = ReturnType<typeof itemsOf>;

/** What its kind asks before and after the fill, where no line of the author's says it. */
function filling(context: LineContext, doing: Doing, fluid: Fluid): LineDraft[] {
  const kind = kindIn(fluidKinds, fluid.kind),
    own = { ...doing.act, text: "", tool: undefined };
  const isWritten = (verb: string): boolean =>
    [
      ...context.performance.refit.map(({ op }) => ({ verb: op.event ? "" : op.act?.verb, things: op.things })),
      ...context.performance.finish.map(({ act, things }) => ({ verb: act.verb, things })),
    ].some((each) => each.verb === verb && each.things.includes(fluid.index));
  const plain = (verb: string): readonly LineDraft[] =>
    isWritten(verb) ? [] : (plainLines(context, { ...doing, act: { ...own, verb } }, [fluid.index]) ?? []);
  return [
    ...(kind?.evacuate ? plain("evacuate") : []),
    fillLine(context, doing, fluid, undefined),
    ...(kind?.bleed || fluid.bleedsAt.length > 0 ? plain("bleed") : []),
  ];
}

function writtenOp(context: LineContext, doing: Doing, run: readonly RefitPerformed[]): readonly LineDraft[] {
  const { op, before, after } = run[0]!;
  return actLines(context, { ...emptyPerformed(doing, before, after), things: op.things }, op.number, "refit", []);
}

const emptyPerformed = ({ act, around }: Doing, before: Performed["before"], after: Performed["after"]): Performed => ({
  act,
  around,
  things: [],
  handled: [],
  from: 0,
  to: 0,
  before,
  after,
  refused: false,
});
