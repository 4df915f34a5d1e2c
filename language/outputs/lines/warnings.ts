// Hazards and messages as lines that stand before an act, where the bench's placement puts them.

import type { Before } from "../../bench/placement.ts";
import type { Hazard, ThingIndex } from "../../model/model.ts";
import { signalRank } from "../../tables/index.ts";
import { phrase, thingOf, toolName, wearName, type LineContext } from "./context.ts";
import type { Doing, LineDraft } from "./draft.ts";
import { figureText } from "./figures.ts";
import type { HazardText } from "./line.ts";
import { precautionDetails } from "./say-plain.ts";

/** Hazards first, the gravest before the others; then messages on the things. */
export function warningLines(
  context: LineContext,
  doing: Pick<Doing, "act" | "around" | "half">,
  before: Before | undefined,
  takenBack: ReadonlySet<ThingIndex> = new Set(),
): readonly LineDraft[] {
  if (!before || before.hazards.length + before.messages.length === 0) return [];
  const common = { half: doing.half, given: doing.around.given };
  const hazards = before.hazards
    .map((index) => thingOf(context, index))
    .filter((thing): thing is Hazard => thing.is === "hazard")
    .sort(byGravity);
  return [
    ...hazards.map((hazard): LineDraft => ({
      ...common,
      is: "hazard",
      at: hazard.at,
      // What is given up here is not asked to stand: that would contradict the line below.
      hazard: { ...hazardText(context, hazard), ...(takenBack.has(hazard.index) ? { isTakenBack: true } : {}) },
    })),
    ...before.messages.map(({ things, message }): LineDraft => ({
      ...common,
      is: "message",
      at: message.at,
      signal: message.signal,
      text: message.text,
      on: phrase(context, things),
    })),
  ];
}

/** The gravest first. */
export const byGravity = (a: Pick<Hazard, "signal">, b: Pick<Hazard, "signal">): number =>
  signalRank(a.signal) - signalRank(b.signal);

/** The same before every act that it is told at, and in the list of all: made once. */
export function hazardText(context: LineContext, hazard: Hazard): HazardText {
  const text = context.hazardTexts.get(hazard) ?? textOf(context, hazard);
  context.hazardTexts.set(hazard, text);
  return text;
}

function textOf(context: LineContext, hazard: Hazard): HazardText {
  const { kinds, document } = context.wording,
    keepOut = hazard.figures.get("keep-out");
  return {
    id: hazard.id,
    signal: hazard.signal,
    kind: hazard.kind,
    kindTitle: kinds.hazard(hazard.kind),
    name: hazard.name,
    about: hazard.about,
    // Where only things can be damaged nobody is hurt.
    harm: hazard.signal === "notice" ? "" : kinds.hazardHarm(hazard.kind),
    figures: [...hazard.figures]
      .filter(([word]) => word !== "keep-out")
      .map(([word, quantity]) => document.hazardFigure(kinds.hazardFigure(word), figureText(quantity, context))),
    source: hazard.source ? kinds.source(hazard.source) : "",
    keepOut: keepOut ? figureText(keepOut, context, "up") : "",
    wear: hazard.wear.map((name) => wearName(context, name.text)),
    who: hazard.role ? toolName(context, hazard.role.text) : "",
    pushes: hazard.pushes.length > 0 ? phrase(context, hazard.pushes) : "",
    precautions: hazard.precautions.map((precaution) => ({
      kind: precaution.kind,
      title: kinds.precautionShort(precaution.kind),
      text: precaution.text,
      details: precautionDetails(context, hazard, precaution),
    })),
  };
}
