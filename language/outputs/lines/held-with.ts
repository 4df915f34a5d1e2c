// The tools that a holder of the way back holds with.

import type { Event } from "../../bench/trace.ts";
import type { Act } from "../../model/act.ts";
import type { LineContext } from "./context.ts";

/** What the inverse of a holder holds with: a weight that was let go is taken again with what had carried it. */
export function heldWith({ performance }: LineContext, event: Event): Pick<Act, "tools"> {
  if (event.kind === "gripped") return event.act;
  if (event.kind !== "let-go") return { tools: [] };
  const taken = event.needs
    .map((need) => performance.events[need]!)
    .find((before) => before.kind === "held" && before.thing === event.thing);
  return event.act.tools.length > 0 || !taken ? event.act : taken.act;
}
