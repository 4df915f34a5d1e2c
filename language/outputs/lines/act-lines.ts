// The lines of an act that somebody wrote, in the strip, on a written way back, or in the final tests.

import type { Performance, Performed } from "../../bench/trace.ts";
import type { Part, Tie } from "../../model/model.ts";
import { thingOf, type LineContext } from "./context.ts";
import type { Doing, LineDraft } from "./draft.ts";
import { withMeans } from "./means.ts";
import { plainLines } from "./say-plain.ts";
import { fitLine, makeLine } from "./say-refit.ts";
import { removeLines, undoLines } from "./say-strip.ts";

/** `of`: its number in the list that it stands in. `events`: what it made happen. */
export function actLines(
  context: LineContext,
  performed: Performed,
  of: number,
  half: Doing["half"],
  events: Performance["events"],
): readonly LineDraft[] {
  const { act, around, refused, before } = performed,
    doing: Doing = { act, around, half, of, refused, before };
  const lines = (): readonly LineDraft[] => {
    switch (act.verb) {
      case "undo":
      case "loosen":
      case "back-out":
        return undoLines(context, doing, performed, events);
      case "remove":
      case "lift":
        return removeLines(context, doing, performed, events);
      case "fit":
      case "tighten":
      case "press":
        return writtenFit(context, doing, performed);
      default:
        return plainLines(context, doing, performed.things) ?? [];
    }
  };
  return withMeans(context, act, lines());
}

/** `fit`, `tighten`, `press` as acts: parts in one line, fasteners by their torque. */
function writtenFit(
  context: LineContext,
  doing: Doing,
  { act, things, before, after }: Pick<Performed, "act" | "things" | "before" | "after">,
): readonly LineDraft[] {
  const parts = things.map((thing) => thingOf(context, thing)).filter((thing): thing is Part => thing.is === "part");
  const ties = things.map((thing) => thingOf(context, thing)).filter((thing): thing is Tie => thing.is === "tie"),
    lines: LineDraft[] = [];
  if (parts.length > 0) lines.push(fitLine(context, doing, parts, { before, after, moved: [], lifted: undefined }));
  for (const tie of ties)
    lines.push(
      makeLine(context, doing, [tie], {
        how: act.verb === "tighten" ? "tighten" : act.fingerTight ? "finger-tight" : "fit",
        count: act.count ?? tie.count,
        stage: act.stage,
      }),
    );
  return lines;
}
