// The instruments on the page: the day that is entered for now, when each calibration falls due, and what a reading was taken with. All
// dates are the reader's own; the page asks no clock.

import { entryOf, withInstrument } from "../../language/outputs/manual/tablet/entries.ts";
import type { PlanLine } from "../../language/outputs/manual/tablet/plan.ts";
import { filled } from "../../language/outputs/manual/tablet/words.ts";
import {
  instrumentName,
  instrumentNamed,
  isDate,
  isDue,
  isOverdue,
} from "../../language/outputs/record/calibration.ts";
import type { Instrument } from "../../language/outputs/record/record.ts";
import { made, say } from "./dom.ts";
import type { Sheet } from "./sheet.ts";

/** What is to be said of an instrument that was used on a day; "" where there is nothing. */
export function overdueText(
  { entries, words }: Sheet,
  name: string | undefined,
  on: string | undefined = entries.on,
): string {
  const instrument = name === undefined ? undefined : instrumentNamed(entries.instruments, name);
  return instrument ? overdueOf(words, instrument, on) : "";
}

const overdueOf = (words: Sheet["words"], instrument: Instrument, on: string | undefined): string =>
  instrument.due !== undefined && on !== undefined && isOverdue(instrument.due, on) === true
    ? filled(words.overdue, instrumentName(instrument), instrument.due, on)
    : "";

/** The day, and the table of instruments. */
export function wireInstruments(sheet: Sheet): () => void {
  const day = document.querySelector<HTMLInputElement>("[data-on]"),
    dayTold = document.getElementById("record-on-told"),
    tell = (place: Element | null, text: string): void => {
      if (place) place.textContent = text;
      if (text !== "") say(text);
    };
  day?.addEventListener("change", () => {
    const typed = day.value.trim(),
      { on: _, ...rest } = sheet.entries;
    const taken = typed === "" || isDate(typed);
    sheet.entries = isDate(typed) ? { ...rest, on: typed } : rest;
    tell(dayTold, taken ? "" : sheet.words.noDate);
  });
  const rows = [...document.querySelectorAll<HTMLElement>("[data-instrument]")].map((row) => {
    const part = <T extends HTMLElement>(name: string): T => row.querySelector<T>(`[data-part="${name}"]`)!;
    return {
      name: part<HTMLInputElement>("name"),
      number: part<HTMLInputElement>("number"),
      due: part<HTMLInputElement>("due"),
      told: part("told"),
    };
  });
  rows.forEach(({ name, number, due, told }, changed) => {
    for (const input of [name, number, due])
      input.addEventListener("change", () => {
        const isNone = due.value.trim() !== "" && !isDue(due.value.trim());
        sheet.entries = {
          ...sheet.entries,
          instruments: rows.map((row, i): Instrument => {
            const typed = row.due.value.trim(),
              { note } = sheet.entries.instruments[i] ?? {};
            return {
              name: row.name.value,
              ...(row.number.value.trim() === "" ? {} : { number: row.number.value.trim() }),
              ...(typed === "" || (i === changed && isNone) ? {} : { due: typed }),
              ...(note === undefined ? {} : { note }),
            };
          }),
        };
        if (isNone) tell(told, sheet.words.noDue);
        else if (told.textContent !== "") say(told.textContent);
      });
  });
  return () => {
    if (day && document.activeElement !== day) day.value = sheet.entries.on ?? "";
    rows.forEach(({ name, number, due, told }, i) => {
      const own = sheet.entries.instruments[i];
      for (const [input, text] of [
        [name, own?.name],
        [number, own?.number],
        [due, own?.due],
      ] as const)
        if (document.activeElement !== input) input.value = text ?? "";
      told.textContent = own ? overdueOf(sheet.words, own, sheet.entries.on) : "";
    });
  };
}

/** With what a reading was taken: asked as soon as an instrument is entered. */
export function wireTakenWith(sheet: Sheet, { id }: PlanLine, reading: number, place: HTMLElement): () => void {
  const { words } = sheet,
    control = made("select", { id: `${id}-with-${reading}` }),
    label = made("p", { class: "write" }, made("label", { for: control.id }, words.takenWith), control),
    told = made("p", { class: "overdue" });
  place.append(label, told);
  control.addEventListener("change", () => {
    sheet.entries = withInstrument(sheet.entries, id, reading, control.value);
    if (told.textContent !== "") say(told.textContent);
  });
  return () => {
    const entry = entryOf(sheet.entries, id),
      last = entry.readings?.[reading]?.at(-1),
      chosen = last?.instrument ?? entry.takenWith?.[reading] ?? "";
    const names = sheet.entries.instruments.map(instrumentName).filter((name) => name.trim() !== "");
    if (chosen !== "" && !names.includes(chosen)) names.push(chosen);
    label.hidden = names.length === 0;
    control.replaceChildren(
      ...["", ...names].map((name) => made("option", { value: name }, name === "" ? words.notSaid : name)),
    );
    control.value = chosen;
    told.textContent = overdueText(sheet, chosen === "" ? undefined : chosen, last?.on ?? sheet.entries.on);
  };
}
