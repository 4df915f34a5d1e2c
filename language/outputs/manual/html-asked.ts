// Places to write under a line, for a pen and for a finger: counts, torques as set, readings, signatures. They are what the record is held
// against, no more and no less; the page's script finds them by their data.

import { systemOf, unitText } from "../lines/figures.ts";
import type { ActionLine, LineReading } from "../lines/line.ts";
import type { OutputOptions } from "../output.ts";
import { html, type Markup, type Value } from "../text/markup.ts";
import { own } from "./html-own.ts";
import type { PlanLine } from "./tablet/plan.ts";

export function askedHtml(line: ActionLine, plan: PlanLine | undefined, options: OutputOptions): Value {
  const { tablet: words, manual } = options.wording,
    { counts = [], torques = [], readings = [] } = plan ?? {},
    id = plan?.id ?? line.id;
  if (counts.length + torques.length + readings.length === 0 && plan?.sign !== true) return undefined;
  const nameOf = (item: string): string => line.items.find((each) => each.id === item)?.name ?? item,
    label = (all: readonly unknown[], alone: string, of: (name: string) => string, item: string): string =>
      all.length === 1 ? alone : of(nameOf(item));
  return [
    (counts.length > 0 || torques.length > 0) &&
      html`<div class="written">${counts.map(
        ({ item, due }, i) =>
          html`<p class="write small"><label for="${id}-count-${i + 1}">${label(counts, words.counted, words.countedOf, item)}</label><input id="${id}-count-${i + 1}" type="text" inputmode="numeric" autocomplete="off" data-count="${item}"/>${due !== undefined && html`<span>/ ${due}</span>`}</p>`,
      )}${torques.map(({ item, given }, i) =>
        torqueHtml(
          item,
          `${id}-set-${i + 1}`,
          label(torques, words.setAt, words.setAtOf, item),
          given.map(({ unit }) => unit),
          options,
        ),
      )}</div>`,
    readings.map(
      ({ chooses }, i) =>
        line.readings[i] && [
          readingHtml(line.readings[i], i + 1, `${id}-reading-${i + 1}`, options),
          chooses === true &&
            html`<p class="write"><label for="${id}-chosen-${i + 1}">${words.chosen}</label><input id="${id}-chosen-${i + 1}" type="text" autocomplete="off" data-chosen="${i + 1}"/></p>`,
        ],
    ),
    plan?.sign === true &&
      html`<p class="write"><label for="${id}-sign">${manual.signed}</label><input id="${id}-sign" type="text" autocomplete="off" data-signed=""/></p>`,
  ];
}

function torqueHtml(
  item: string,
  id: string,
  label: string,
  given: readonly string[],
  { wording: { tablet: words }, system }: OutputOptions,
): Markup {
  const units = [...new Set(given.length > 0 ? given : ["N·m", "lbf·ft"])].sort(
    (a, b) => Number(systemOf({ unit: a }) !== system) - Number(systemOf({ unit: b }) !== system),
  );
  return html`<div class="set" data-torque="${item}"><p class="write small"><label for="${id}">${label}</label><input id="${id}" type="text" inputmode="decimal" autocomplete="off" data-part="value"/><select aria-label="${words.unit}" data-part="unit">${units.map((unit) => html`<option>${unit}</option>`)}</select></p><p class="write small"><label for="${id}-wrench">${words.wrench}</label><input id="${id}-wrench" type="text" autocomplete="off" data-part="wrench"/></p><p class="write small"><label for="${id}-initials">${words.initials}</label><input id="${id}-initials" type="text" autocomplete="off" data-part="initials"/></p></div>`;
}

function readingHtml(reading: LineReading, number: number, id: string, { wording }: OutputOptions): Markup {
  const { manual: words, acts, tablet } = wording;
  const box = reading.isFigure
    ? html`<p class="write"><label for="${id}">${words.reading}</label><input id="${id}" type="text" autocomplete="off"${reading.unit !== "" && html` inputmode="decimal"`}/>${unitText(reading.unit, wording)}</p>`
    : html`<fieldset class="answer"><legend>${tablet.asItShouldBe}</legend><label><input type="radio" name="${id}" value="yes"/>${tablet.yes}</label><label><input type="radio" name="${id}" value="no"/>${tablet.no}</label></fieldset>`;
  return html`<div class="reading" data-reading="${number}">${reading.limits !== "" && html`<p class="limits">${acts.limitsLine(reading.limits)}</p>`}${reading.otherwise.map((text) => html`<p class="otherwise">${own(acts.otherwiseLine(text))}</p>`)}
${box}</div>`;
}
