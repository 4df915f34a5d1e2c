// The box of a line: ticked only when nothing is missing, with what is missing said in its place.

import { entryOf, withLine } from "../../language/outputs/manual/tablet/entries.ts";
import { leaningOn, missingFor } from "../../language/outputs/manual/tablet/judge.ts";
import type { PlanLine } from "../../language/outputs/manual/tablet/plan.ts";
import { linkTo, made, say, told } from "./dom.ts";
import type { Sheet } from "./sheet.ts";

export function wireTick(sheet: Sheet, { id }: PlanLine, line: HTMLElement): () => void {
  const box = line.querySelector<HTMLInputElement>("input[type=checkbox]")!;
  box.addEventListener("click", (event) => {
    if (!box.checked) {
      sheet.entries = withLine(sheet.entries, id, { done: false });
      explain(sheet, line, sheet.words.leaning, leaningOn(id, sheet.plan, sheet.entries));
      return;
    }
    const missing = missingFor(id, sheet.plan, sheet.entries);
    if (missing.length > 0) {
      event.preventDefault();
      const place = told(line);
      place.replaceChildren(
        ...missing.flatMap(({ is, lines }) => [
          made("p", { class: "missing" }, sheet.words.missing[is]),
          ...(lines.length > 0 ? [made("ul", {}, ...lines.map(linkTo))] : []),
        ]),
      );
      box.setAttribute("aria-describedby", place.id);
      say(place.innerText);
      return;
    }
    told(line).replaceChildren();
    box.removeAttribute("aria-describedby");
    sheet.entries = withLine(sheet.entries, id, { done: true });
  });
  return () => {
    const { done } = entryOf(sheet.entries, id);
    box.checked = done === true;
    line.classList.toggle("done", done === true);
    line.classList.toggle("not-yet", done !== true && missingFor(id, sheet.plan, sheet.entries).length > 0);
  };
}

/** A tick that stood on something that is no longer so is taken away, and whoever leaned on it is told. */
export function untick(sheet: Sheet, line: HTMLElement): void {
  const { done } = entryOf(sheet.entries, line.id);
  if (done !== true) return;
  sheet.entries = withLine(sheet.entries, line.id, { done: false });
  explain(sheet, line, sheet.words.leaning, leaningOn(line.id, sheet.plan, sheet.entries));
}

function explain(_: Sheet, line: HTMLElement, says: string, lines: readonly string[]): void {
  const place = told(line);
  place.replaceChildren(
    ...(lines.length > 0 ? [made("p", { class: "missing" }, says), made("ul", {}, ...lines.map(linkTo))] : []),
  );
  if (lines.length > 0) say(place.innerText);
}
