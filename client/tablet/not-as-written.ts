// Entries of what was not as the line says: what, what was done, who agreed, what is to be ordered.

import { entryOf, numberOf, withLine } from "../../language/outputs/manual/tablet/entries.ts";
import type { PlanLine } from "../../language/outputs/manual/tablet/plan.ts";
import { filled, listed } from "../../language/outputs/manual/tablet/words.ts";
import { troubles, type NotAsWritten, type Trouble } from "../../language/outputs/record/record.ts";
import { button, made } from "./dom.ts";
import type { Sheet } from "./sheet.ts";

const texts = ["note", "done", "agreedBy", "wanted"] as const;

export function wireNotAsWritten(sheet: Sheet, { id, step, things = [] }: PlanLine, line: HTMLElement): () => void {
  const { words, plan } = sheet,
    // What the line works on first, then the rest of its step.
    ofStep = plan.steps[step] ?? [],
    named = [
      ...ofStep.filter((each) => things.includes(each.id)),
      ...ofStep.filter((each) => !things.includes(each.id)),
    ],
    nameOf = (item: string): string => named.find((each) => each.id === item)?.name ?? item,
    list = made("ul", { class: "entries" }),
    place = made("div", { class: "not-as-written" }, list);
  const open = button(words.notAsWritten, () => {
    if (form) {
      form.remove();
      form = undefined;
    } else {
      form = formOf();
      place.append(form);
      form.querySelector("select")?.focus();
    }
    open.setAttribute("aria-expanded", String(form !== undefined));
  });
  open.setAttribute("aria-expanded", "false");
  open.setAttribute(
    "aria-label",
    filled(words.titled, words.notAsWritten, line.querySelector(".no")?.textContent ?? ""),
  );
  open.className = "open-trouble";
  line.querySelector(".side")?.append(open);
  line.querySelector(".under")?.append(place);
  let form: HTMLElement | undefined;

  function formOf(): HTMLElement {
    const what = select(
        `${id}-trouble`,
        words.what,
        troubles.map((trouble) => [trouble, words.troubles[trouble]]),
      ),
      thing = select(`${id}-trouble-thing`, words.whatThing, [
        ["", words.wholeLine],
        ...named.map((each) => [each.id, each.name] as const),
      ]),
      count = field(`${id}-trouble-count`, words.howMany),
      inputs = new Map(
        texts.map((name) => [
          name,
          field(
            `${id}-trouble-${name}`,
            { note: words.note, done: words.whatDone, agreedBy: words.agreedBy, wanted: words.wanted }[name],
          ),
        ]),
      );
    // The one thing that the line works on is meant, until another is chosen.
    if (things.length === 1) thing.control.value = things[0]!;
    count.control.inputMode = "numeric";
    const save = button(words.add, () => {
      const wantedCount = numberOf(count.control.value) ?? 0;
      const entry: NotAsWritten = {
        what: what.control.value as Trouble,
        ...(thing.control.value === "" ? {} : { item: thing.control.value }),
        ...Object.fromEntries(
          [...inputs].flatMap(([name, { control }]) =>
            control.value.trim() === "" ? [] : [[name, control.value.trim()]],
          ),
        ),
        ...(Number.isInteger(wantedCount) && wantedCount > 0 ? { wantedCount } : {}),
      };
      sheet.entries = withLine(sheet.entries, id, {
        notAsWritten: [...(entryOf(sheet.entries, id).notAsWritten ?? []), entry],
      });
      open.click();
      open.focus();
    });
    return made(
      "div",
      { class: "form" },
      what.label,
      thing.label,
      ...[...inputs.values()].map(({ label }) => label),
      count.label,
      save,
    );
  }

  return () => {
    const entries = entryOf(sheet.entries, id).notAsWritten ?? [];
    list.replaceChildren(
      ...entries.map((entry, i) => {
        const says = [
          entry.item === undefined
            ? words.troubles[entry.what]
            : filled(words.titled, words.troubles[entry.what], nameOf(entry.item)),
          entry.note,
          entry.done && filled(words.titled, words.whatDone, entry.done),
          entry.agreedBy && filled(words.titled, words.agreedBy, entry.agreedBy),
          entry.wanted && filled(words.titled, words.wanted, entry.wanted),
          entry.wantedCount !== undefined && filled(words.titled, words.howMany, entry.wantedCount),
        ].filter((each): each is string => typeof each === "string" && each !== "");
        const out = button(words.takeOut, () => {
          sheet.entries = withLine(sheet.entries, id, { notAsWritten: entries.filter((_, at) => at !== i) });
        });
        return made("li", {}, `${listed(words, says)} `, out);
      }),
    );
    list.hidden = entries.length === 0;
  };
}

interface Field<Control> {
  readonly label: HTMLElement;
  readonly control: Control;
}

const field = (id: string, text: string): Field<HTMLInputElement> => {
  const control = made("input", { type: "text", autocomplete: "off", id });
  return { label: made("p", {}, made("label", { for: id }, text), control), control };
};

function select(id: string, text: string, options: readonly (readonly [string, string])[]): Field<HTMLSelectElement> {
  const control = made("select", { id }, ...options.map(([value, says]) => made("option", { value }, says)));
  return { label: made("p", {}, made("label", { for: id }, text), control), control };
}
