// Counts the fasteners of a group off in their order, pass by pass, beside their drawing.

import { entryOf, withLine } from "../../language/outputs/manual/tablet/entries.ts";
import { tightening } from "../../language/outputs/manual/tablet/judge.ts";
import type { PlanLine } from "../../language/outputs/manual/tablet/plan.ts";
import { filled } from "../../language/outputs/manual/tablet/words.ts";
import { button, made, say } from "./dom.ts";
import type { Sheet } from "./sheet.ts";

export function wireBolts(sheet: Sheet, plan: PlanLine, line: HTMLElement): () => void {
  const { words } = sheet,
    shows = made("p", { class: "clock" }),
    count = (): number => entryOf(sheet.entries, plan.id).tightened ?? 0;
  const move = (by: number) => (): void => {
    sheet.entries = withLine(sheet.entries, plan.id, { tightened: Math.max(0, count() + by) });
    say(shows.textContent ?? "");
  };
  const more = button(words.oneMore, move(1)),
    back = button(words.oneBack, move(-1));
  line.querySelector(".under")?.append(made("div", { class: "bolts" }, shows, more, back));
  return () => {
    const { next, pass, inPass, of } = tightening(plan, count());
    shows.textContent =
      next === 0
        ? words.allCounted
        : [
            (plan.passes ?? 1) > 1 ? filled(words.inPass, pass, plan.passes ?? 1) : "",
            // The drawing numbers the turns: what is said is the number that stands in the circle.
            filled(words.nextBolt, line.querySelector(".pattern") ? inPass + 1 : next, inPass, of),
          ]
            .filter(Boolean)
            .join(" ");
    more.disabled = next === 0;
    back.disabled = count() === 0;
  };
}
