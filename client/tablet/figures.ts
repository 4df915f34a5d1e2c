// Counts, torques and signatures of a line, kept as typed; a count or a torque that is not the procedure's says so at once.

import { entryOf, numberOf, withLine, type TorqueEntry } from "../../language/outputs/manual/tablet/entries.ts";
import { judgedTyped } from "../../language/outputs/manual/tablet/judge.ts";
import type { PlanLine } from "../../language/outputs/manual/tablet/plan.ts";
import { filled } from "../../language/outputs/manual/tablet/words.ts";
import { made, say } from "./dom.ts";
import { overdueText } from "./instruments.ts";
import type { Sheet } from "./sheet.ts";

export function wireCount(
  sheet: Sheet,
  { id }: PlanLine,
  { item, due }: { readonly item: string; readonly due?: number },
  line: HTMLElement,
): () => void {
  const input = byData(line, "count", item),
    said = made("span", { class: "outside" });
  input.after(said);
  input.addEventListener("change", () => {
    sheet.entries = withLine(sheet.entries, id, {
      counts: { ...entryOf(sheet.entries, id).counts, [item]: input.value },
    });
    if (said.textContent !== "") say(said.textContent);
  });
  return () => {
    const typed = entryOf(sheet.entries, id).counts?.[item] ?? "",
      count = numberOf(typed);
    if (document.activeElement !== input) input.value = typed;
    said.textContent =
      typed.trim() === ""
        ? ""
        : count === undefined || !Number.isInteger(count) || count < 0
          ? sheet.words.torqueNoNumber
          : due !== undefined && count !== due
            ? filled(sheet.words.countDiffers, due)
            : "";
  };
}

export function wireTorque(sheet: Sheet, plan: PlanLine, item: string, line: HTMLElement): () => void {
  const place = [...line.querySelectorAll<HTMLElement>("[data-torque]")].find(
      (each) => each.dataset["torque"] === item,
    )!,
    part = (name: string): HTMLInputElement | HTMLSelectElement =>
      place.querySelector<HTMLInputElement | HTMLSelectElement>(`[data-part="${name}"]`)!;
  const value = part("value"),
    unit = part("unit"),
    wrench = part("wrench"),
    initials = part("initials"),
    said = made("p", { class: "outside" });
  place.append(said);
  const given = line.querySelector(".side .torque")?.textContent ?? "";
  place.addEventListener("change", () => {
    const entry: TorqueEntry = {
      value: value.value,
      unit: unit.value,
      wrench: wrench.value,
      initials: initials.value,
      ...(sheet.entries.on === undefined ? {} : { on: sheet.entries.on }),
    };
    sheet.entries = withLine(sheet.entries, plan.id, {
      torques: { ...entryOf(sheet.entries, plan.id).torques, [item]: entry },
    });
    if (said.textContent !== "") say(said.textContent);
  });
  return () => {
    const entry = entryOf(sheet.entries, plan.id).torques?.[item];
    for (const [input, text] of [
      [value, entry?.value ?? ""],
      [wrench, entry?.wrench ?? ""],
      [initials, entry?.initials ?? ""],
    ] as const)
      if (document.activeElement !== input) input.value = text;
    if (entry) unit.value = entry.unit;
    const is = judgedTyped(plan, item, entry?.value ?? "", entry?.unit ?? "");
    const late = wrench.value.trim() === "" ? "" : overdueText(sheet, wrench.value, entry?.on ?? sheet.entries.on);
    const judgement =
      is === "other"
        ? `${sheet.words.torqueOther} ${given}`
        : is === "no-number"
          ? sheet.words.torqueNoNumber
          : is === "not-given"
            ? sheet.words.torqueNotGiven
            : "";
    said.textContent = [judgement, late].filter(Boolean).join(" ");
  };
}

export function wireSignature(sheet: Sheet, { id }: PlanLine, line: HTMLElement): () => void {
  const input = line.querySelector<HTMLInputElement>("[data-signed]")!;
  input.addEventListener("change", () => {
    sheet.entries = withLine(sheet.entries, id, { signed: input.value });
  });
  return () => {
    if (document.activeElement !== input) input.value = entryOf(sheet.entries, id).signed ?? "";
  };
}

/** Ids of authors stand in the data: they are compared, never put into a selector. */
const byData = (line: HTMLElement, name: string, value: string): HTMLInputElement =>
  [...line.querySelectorAll<HTMLInputElement>(`[data-${name}]`)].find((each) => each.dataset[name] === value)!;
