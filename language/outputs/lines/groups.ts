// The lines of a whole performance in order: strip, refit, finish, in runs of one step, each line with its number.

import { endTurnBefore, placementOf, type Before } from "../../bench/placement.ts";
import { hazardsMet } from "../../bench/met.ts";
import type { Performance, Performed, RefitPerformed, StepRun } from "../../bench/trace.ts";
import type { ThingIndex } from "../../model/model.ts";
import { at } from "../../bench/vector.ts";
import { lineContext, phrase, stepText, toolName, type LineContext } from "./context.ts";
import { actLines } from "./act-lines.ts";
import { action, type Doing, type LineDraft } from "./draft.ts";
import { givenTexts } from "./given.ts";
import { afterLines, leaveLines, standingLines, startLines } from "./ends.ts";
import type { Units } from "./figures.ts";
import type { Detail, Line, LineGroup } from "./line.ts";
import { isOneLine } from "./one-line.ts";
import { opLines } from "./op-lines.ts";
import { warningLines } from "./warnings.ts";

export interface Lines {
  readonly context: LineContext;
  /** Hazards that the procedure meets. */
  readonly met: ReadonlySet<ThingIndex>;
  readonly strip: readonly LineGroup[];
  /** Of a computed refit, or of a written one. */
  readonly refit: readonly LineGroup[];
  readonly finish: readonly LineGroup[];
}

/** A draft with the place of its act in the half that it belongs to, so that warnings find it. */
interface Placed {
  readonly draft: LineDraft;
  readonly step: StepRun | undefined;
}

export function linesOf(performance: Performance, units: Units): Lines {
  const context = lineContext(performance, units),
    { strip, refit, written, finish, events, endTurn } = performance;
  const warnings = placementOf(performance);
  const said = (
    list: readonly Performed[],
    half: Doing["half"],
    before: readonly Before[],
    inStep: boolean,
  ): Placed[] =>
    list.flatMap((performed, of) =>
      place(inStep ? performed.around.step : undefined, [
        ...warningLines(
          context,
          { ...performed, half },
          before[of],
          half === "finish" ? givenUp(context, performed) : undefined,
        ),
        ...actLines(context, performed, of, half, half === "strip" ? events.slice(performed.from, performed.to) : []),
      ]),
    );
  // Turned back it stands alone, before what is taken away last.
  const last = endTurnBefore(performance),
    turned =
      endTurn === undefined || refit.length === 0
        ? []
        : place(undefined, [turnLine(context, refit[refit.length - 1]!, endTurn, true)]);
  const stripped = said(strip, "strip", warnings.strip, true);
  const back = [
    ...refitLines(context, refit.slice(0, last), warnings.refit.slice(0, last)),
    ...turned,
    ...refitLines(context, refit.slice(last), warnings.refit.slice(last)),
    ...said(written, "refit", warnings.written, true),
  ];
  stripped.unshift(...place(stripped[0]?.step, startLines(context)));
  back.push(...place(back[back.length - 1]?.step, [...leaveLines(context), ...standingLines(context)]));
  const finished = [...said(finish, "finish", warnings.finish, false), ...place(undefined, afterLines(context))];
  return {
    context,
    met: hazardsMet(performance, warnings),
    strip: groupsOf(context, stripped, "strip"),
    refit: groupsOf(context, back, "refit"),
    finish: groupsOf(context, finished, "finish"),
  };
}

/** Hazards whose precautions do not all stand before an act of the final tests, or end with it: none of them is asked to stand. */
const givenUp = (
  { model }: LineContext,
  { act, before, things }: Pick<Performed, "act" | "before" | "things">,
): ReadonlySet<ThingIndex> =>
  new Set([
    ...(act.verb === "restore" ? things : []),
    ...model.precautions.filter(({ number }) => at(before.standing, number) === 0).map(({ hazard }) => hazard),
  ]);

const place = (step: StepRun | undefined, drafts: readonly LineDraft[]): Placed[] =>
  drafts.map((draft) => ({ draft, step }));

// --- the computed refit ----------------------------------------------------------------------------------------------------------

function refitLines(context: LineContext, refit: readonly RefitPerformed[], warnings: readonly Before[]): Placed[] {
  const placed: Placed[] = [];
  for (let i = 0; i < refit.length;) {
    const first = refit[i]!,
      run = [first];
    while (i + run.length < refit.length && isOneLine(context, run[0]!, refit[i + run.length]!))
      run.push(refit[i + run.length]!);
    const step = first.op.around.step;
    const around = first.op.around,
      act = first.op.act ?? first.op.event!.act;
    const says = opLines(context, run);
    i += run.length;
    // What prints nothing, since nobody has to take it back, asks for nothing either.
    if (says.length === 0 && first.turn === undefined && first.turnInside === undefined) continue;
    // All that one line asks stands before it, also where it prints several acts.
    const before = joined(warnings.slice(i - run.length, i));
    placed.push(
      ...place(
        step,
        warningLines(
          context,
          { act, around, half: "refit" },
          before,
          new Set([
            ...run.flatMap(({ op }) => (op.event?.kind === "stands" ? [op.event.thing] : [])),
            ...before.hazards.filter((hazard) => standsNothing(context, hazard, first)),
          ]),
        ),
      ),
    );
    if (first.turn !== undefined) placed.push(...place(step, [turnLine(context, first, first.turn, false)]));
    if (first.turnInside)
      placed.push(...place(step, [turnLine(context, first, first.turnInside.to, false, first.turnInside.part)]));
    placed.push(...place(step, says));
  }
  return placed;
}

/** A hazard of which no precaution was taken before: what a refit block takes first is not "still" in place. */
function standsNothing({ model }: LineContext, hazard: ThingIndex, { before }: RefitPerformed): boolean {
  const thing = model.things[hazard];
  return thing?.is === "hazard" && thing.precautions.every(({ number }) => at(before.standing, number) === 0);
}

/** What stands before any of several acts, each once. */
function joined(all: readonly Before[]): Before {
  const messages = new Map<Before["messages"][number]["message"], Set<ThingIndex>>();
  for (const { message, things } of all.flatMap((before) => before.messages))
    messages.set(message, new Set([...(messages.get(message) ?? []), ...things]));
  return {
    hazards: [...new Set(all.flatMap((before) => before.hazards))],
    messages: [...messages].map(([message, things]) => ({ message, things: [...things] })),
  };
}

/** `part`: a unit of its own that is turned by itself; undefined: the whole. */
function turnLine(
  context: LineContext,
  { op }: RefitPerformed,
  position: string,
  isBack: boolean,
  part?: ThingIndex,
): LineDraft {
  const { acts, kinds } = context.wording,
    to = kinds.position(position),
    doing: Doing = {
      act: { ...(op.act ?? op.event!.act), text: "" },
      around: op.around,
      half: "refit",
      of: op.number,
      refused: false,
    };
  return action(
    doing,
    "turn",
    isBack ? acts.turnBack(to) : acts.turn(to, part === undefined ? undefined : phrase(context, [part])),
    {
      of: part === undefined ? [] : [part],
      details: part === undefined ? turnedWith(context) : [],
    },
  );
}

/** What turned the unit in the strip turns it again, with as many people: nobody writes a turn of the way back. */
function turnedWith(context: LineContext): Detail[] {
  const { performance, wording } = context,
    { acts, lines } = wording;
  const by = performance.strip.find(
    ({ act }) => act.verb === "turn" && (act.tools.length > 0 || act.people !== undefined),
  )?.act;
  if (!by) return [];
  return [
    ...by.tools.map(({ text }) => ({
      sort: "with" as const,
      says: lines.withTool(toolName(context, text)),
    })),
    ...(by.people === undefined ? [] : [{ sort: "with" as const, says: acts.people(by.people) }]),
  ];
}

// --- runs of one step ----------------------------------------------------------------------------------------------------------------

function groupsOf(context: LineContext, placed: readonly Placed[], half: Doing["half"]): LineGroup[] {
  const { lines: words, document } = context.wording,
    groups: LineGroup[] = [],
    seen = new Map<string, number>(),
    { procedure } = context.performance;
  for (let i = 0; i < placed.length;) {
    const { step } = placed[i]!,
      run: LineDraft[] = [];
    while (i < placed.length && placed[i]!.step === step) run.push(placed[i++]!.draft);
    const base =
      half === "strip"
        ? String(step?.number ?? 0)
        : half === "refit"
          ? `R${groups.length + 1}`
          : `F${groups.length > 0 ? groups.length + 1 : ""}`;
    const times = (seen.get(base) ?? 0) + 1;
    seen.set(base, times);
    const number = times > 1 ? `${base}${String.fromCharCode(96 + Math.min(times, 26))}` : base,
      of = step?.procedure;
    const name = step ? stepText(context, step) : "";
    const own = of && of.id !== procedure.id && of.id !== "" ? document.titled(of.title || of.id, name) : name;
    const title =
      half === "strip"
        ? step
          ? times > 1
            ? words.continued(own)
            : own
          : words.outsideSteps
        : half === "refit"
          ? step
            ? words.refitOf(step.number, own)
            : words.refitOutside
          : words.finish;
    groups.push({
      id: `${half}-${number.toLowerCase()}`,
      number,
      title,
      step: step?.number,
      procedure: of?.id ?? procedure.id,
      lines: numbered(run, number, context.wording),
    });
  }
  return groups;
}

/** Actions are counted; what only tells has the number of the action that it stands before, with a letter. */
function numbered(run: readonly LineDraft[], number: string, wording: LineContext["wording"]): Line[] {
  let actions = 0,
    told = 0;
  return run.map((draft): Line => {
    const given = givenTexts(draft.given, wording);
    if (draft.is === "action") {
      actions++;
      told = 0;
      return { ...draft, given, id: `${number}.${actions}` };
    }
    return { ...draft, given, id: `${number}.${actions + 1}${letters(told++)}` } as Line;
  });
}

/** a, b … z, za, zb … */
const letters = (n: number): string => (n < 26 ? String.fromCharCode(97 + n) : `z${letters(n - 26)}`);
