// A reading on the page: every try is kept, and one outside its limits says so at once, with what follows.

import { entryOf, numberOf, withLine, withTry } from "../../language/outputs/manual/tablet/entries.ts";
import { judged, lastTry } from "../../language/outputs/manual/tablet/judge.ts";
import type { PlanLine, PlanReading } from "../../language/outputs/manual/tablet/plan.ts";
import { figureText, filled, listed, type TabletWords } from "../../language/outputs/manual/tablet/words.ts";
import type { ReadingTry } from "../../language/outputs/record/record.ts";
import { made, say } from "./dom.ts";
import type { Sheet } from "./sheet.ts";
import { wireTakenWith } from "./instruments.ts";
import { untick } from "./ticks.ts";

export function wireReading(
  sheet: Sheet,
  plan: PlanLine,
  reading: PlanReading,
  number: number,
  line: HTMLElement,
): () => void {
  const { id } = plan,
    place = line.querySelector<HTMLElement>(`[data-reading="${number}"]`)!,
    { words } = sheet,
    said = made("p", { class: "outside" }),
    tries = made("p", { class: "tries" });
  place.append(said, tries);
  const showInstrument = reading.isFigure ? wireTakenWith(sheet, plan, number, place) : undefined,
    chosen = line.querySelector<HTMLInputElement>(`[data-chosen="${number}"]`);
  chosen?.addEventListener("change", () => {
    sheet.entries = withLine(sheet.entries, id, {
      chosen: { ...entryOf(sheet.entries, id).chosen, [number]: chosen.value },
    });
  });
  const limits = place.querySelector(".limits")?.textContent ?? "",
    follows = [...place.querySelectorAll(".otherwise")].map((each) => each.textContent ?? "");
  const consequence = follows.length > 0 ? follows.join(" ") : words.noConsequence;
  const outside = (): string =>
    `${reading.isFigure ? filled(words.outside, limits.replace(/\.$/, "")) : words.notAsItShouldBe} ${consequence}`;

  function take(taken: ReadingTry): void {
    sheet.entries = withTry(sheet.entries, id, number, taken);
    if (judged(reading, taken) !== "outside") return;
    untick(sheet, line);
    say(outside());
  }

  const figure = place.querySelector<HTMLInputElement>("input[type=text]"),
    answers = [...place.querySelectorAll<HTMLInputElement>("input[type=radio]")];
  /** Judged while it is typed, so that nobody goes on before the box is left. */
  figure?.addEventListener("input", () => {
    const taken = typed(figure.value, reading.unit);
    said.textContent = taken && judged(reading, taken) === "outside" ? outside() : "";
  });
  figure?.addEventListener("change", () => {
    if (figure.value.trim() === "") {
      show();
      return;
    }
    const taken = typed(figure.value, reading.unit);
    if (taken) take(taken);
    else {
      said.textContent = words.noNumber;
      say(words.noNumber);
    }
  });
  for (const answer of answers)
    answer.addEventListener("change", () => {
      take({ asItShouldBe: answer.value === "yes" });
    });

  function show(): void {
    const entry = entryOf(sheet.entries, id),
      all = entry.readings?.[number] ?? [],
      last = lastTry(entry, number);
    if (figure && document.activeElement !== figure)
      figure.value = last?.value === undefined ? (last?.note ?? "") : asTyped(last, reading.unit, words);
    for (const answer of answers)
      answer.checked = last?.asItShouldBe !== undefined && (answer.value === "yes") === last.asItShouldBe;
    said.textContent = judged(reading, last) === "outside" ? outside() : "";
    if (chosen && document.activeElement !== chosen) chosen.value = entry.chosen?.[number] ?? "";
    showInstrument?.();
    tries.textContent =
      all.length < 2
        ? ""
        : filled(
            words.titled,
            words.tries,
            listed(
              words,
              all.map((each, i) => filled(words.aTry, i + 1, tryText(each))),
            ),
          );
  }

  const tryText = (taken: ReadingTry): string =>
    [
      taken.value === undefined
        ? taken.asItShouldBe === undefined
          ? (taken.note ?? "")
          : taken.asItShouldBe
            ? words.yes
            : words.no
        : [figureText(taken.value, words), taken.unit].filter((each) => each !== undefined).join(" "),
      judged(reading, taken) === "outside" && reading.isFigure ? `(${words.outsideShort})` : "",
    ]
      .filter(Boolean)
      .join(" ");
  return show;
}

const asTyped = ({ value, unit }: ReadingTry, due: string, words: TabletWords): string =>
  [value === undefined ? undefined : figureText(value, words), due === "" ? unit : undefined]
    .filter((each) => each !== undefined)
    .join(" ");

/** Where the reading has no unit of its own, one may be typed behind the figure; words alone are a note. */
function typed(text: string, unit: string): ReadingTry | undefined {
  if (unit !== "") {
    const value = numberOf(text);
    return value === undefined ? undefined : { value, unit };
  }
  const [, number = "", own = ""] = /^\s*([\u2212\u2013+-]?[\d.,]+)\s*(.*?)\s*$/.exec(text) ?? [],
    value = numberOf(number);
  return value === undefined ? { note: text.trim() } : { value, ...(own === "" ? {} : { unit: own }) };
}
