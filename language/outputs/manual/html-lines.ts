// Printed lines as HTML: one action a line with its box, warnings before it, readings with a place to write.

import { hazardFacts, mustStand } from "../lines/hazard-facts.ts";
import type { ActionLine, Detail, HazardLine, HazardText, Line, LineGroup, Shot, VideoLine } from "../lines/line.ts";
import type { OutputOptions } from "../output.ts";
import type { SignalName } from "../../tables/index.ts";
import { signals } from "../../tables/index.ts";
import { html, type Markup, type Value } from "../text/markup.ts";
import type { Chapter } from "./document.ts";
import { calloutPicture, pictureAddress } from "../draw/callouts.ts";
import { svg } from "../draw/drawing.ts";
import { askedHtml } from "./html-asked.ts";
import { own } from "./html-own.ts";
import { lineElement, type PlanLine } from "./tablet/plan.ts";
import { alertSymbol, signNumber, warningSign } from "./signs.ts";

/** What a line is laid out with. */
export interface Layout {
  readonly chapter: Chapter;
  readonly plan: ReadonlyMap<string, PlanLine>;
  readonly options: OutputOptions;
}

export function groupHtml(group: LineGroup, layout: Layout): Markup {
  const code = layout.chapter.codes[group.id];
  return html`<div class="group" role="group" id="${group.id}" aria-labelledby="${group.id}-title">
${code && svg(code, "code")}<h3 id="${group.id}-title">${group.number} ${own(group.title)}</h3>
<ol class="lines">${group.lines.map((line) => lineHtml(line, layout))}</ol>
</div>
`;
}

function lineHtml(line: Line, layout: Layout): Value {
  const { options } = layout,
    { manual: words, document } = options.wording,
    given = line.given.length > 0 ? html`<span class="given">${words.given(line.given)}</span> ` : false;
  switch (line.is) {
    case "action":
      return actionHtml(line, layout, given);
    case "hazard":
      return html`<li class="told">${given}${hazardPanel(line.hazard, options, line)}</li>`;
    case "message":
      return html`<li class="told">${given}${messagePanel(line.signal, [line.on && html`<p class="title">${document.on(line.on)}</p>`, html`<p>${own(line.text)}</p>`], options)}</li>`;
    case "note":
      return html`<li class="told note${line.recorded === true && " recorded"}">${given}${own(line.says)}</li>`;
    case "video":
      return html`<li class="told note">${given}${videoHtml(line, options)}</li>`;
    case "photo":
      return html`<li class="told">${given}${photoHtml(line, options)}</li>`;
  }
}

/** What stands beside the sentence, where the hand is; the rest stands under it. */
const beside: ReadonlySet<Detail["sort"]> = new Set(["tool", "torque", "passes", "order", "goes-to"]);

function actionHtml(line: ActionLine, { chapter, plan, options }: Layout, given: Value): Markup {
  const { manual: words } = options.wording,
    id = lineElement(chapter.prefix, line.id),
    drawing = chapter.drawings[line.id];
  const detail = ({ sort, says }: Detail): Markup => html`<p class="${sort}">${says}</p>`;
  // Where the group is drawn, the drawing says the order: two ways of counting side by side would mislead.
  const side = line.details.filter((each) => beside.has(each.sort) && !(drawing && each.sort === "order")),
    under = line.details.filter(
      (each) =>
        !beside.has(each.sort) && !(line.readings.length > 0 && (each.sort === "limits" || each.sort === "otherwise")),
    );
  const below: readonly Value[] = [
    line.refused && html`<p><strong>${words.problem}</strong></p>`,
    under.map(detail),
    askedHtml(line, plan.get(id), options),
    drawing && html`<div class="pattern">${svg(drawing)}</div>`,
  ];
  return html`<li class="act${line.refused ? " refused" : ""}" id="${id}"><div class="row">
<input type="checkbox" id="${id}-done" aria-label="${words.done(line.id)}"/><span class="no">${line.id}</span>
<label for="${id}-done">${given}<span class="says">${line.says}</span> ${line.text !== "" && html`<span class="own">${own(line.text)}</span>`}</label>
<div class="side">${side.map(detail)}</div>
<div class="under">${below}</div>
</div></li>
`;
}

/** A part of a recording by its times, as the W3C's Media Fragments write them; a name alone where nothing can be linked to. */
function videoHtml({ says, file, from, to, at }: VideoLine, { recording }: OutputOptions): Markup {
  const address = file === undefined ? undefined : recording?.(file, at.file),
    times = from === undefined ? "" : `#t=${from}${to === undefined ? "" : `,${to}`}`;
  if (address === undefined) return html`${says} ${file !== undefined && own(file)}`;
  return html`<a href="${address}${times}">${says} ${own(file!)}</a>`;
}

export function photoHtml({ file, alt, points, at }: Shot, { picture, wording }: OutputOptions): Markup {
  const { manual: words } = wording,
    got = picture?.(file, at.file);
  if (!got) return html`<p class="note">${words.pictureOff(alt || file)}</p>`;
  if ("problem" in got) return html`<p class="note">${words.pictureMissing(file, got.problem)} ${own(alt)}</p>`;
  const listed = html`<figcaption${points.length === 0 && html` aria-hidden="true"`}>${own(alt || file)}${points.length > 0 && html`${wording.document.colon} ${points.map((point, i) => html`${i > 0 && ", "}<b>${point.mark}</b> ${own(point.name)}`)}`}</figcaption>`;
  return html`<figure>${calloutPicture(got, points, alt || file) ?? html`<img src="${pictureAddress(got)}" alt="${alt || file}"/>`}${listed}</figure>`;
}

// --- panels ------------------------------------------------------------------------------------------------------------------------

export function hazardPanel(hazard: HazardText, options: OutputOptions, line?: HazardLine): Markup {
  const { manual: words, document } = options.wording,
    facts = hazardFacts(hazard, options.wording),
    sign = signNumber(hazard.kind),
    isNotice = hazard.signal === "notice";
  const numbered = html`<p><strong>${words.precautions}</strong></p>
<ol>${hazard.precautions.map((each) => html`<li>${each.title}${document.colon} ${own(each.text)} ${each.details.map(({ says }) => html`${says} `)}</li>`)}</ol>`;
  const body = html`${!isNotice && html`<div class="sign-box">${warningSign(hazard.kind, words.signAlt(hazard.kindTitle))}<small>${words.hazardMark(sign)}</small></div>`}
<div class="words"><p class="title">${hazard.kindTitle}${document.colon} ${own(hazard.name)}</p>${facts.map((fact) => html`<p>${fact}</p>`)}${[
    line &&
      line.half !== "strip" &&
      mustStand(hazard, options.wording).map((text) => html`<p><strong>${text}</strong></p>`),
    line === undefined && hazard.precautions.length > 0 && numbered,
  ]}</div>`;
  return panel(hazard.signal, body, options);
}

export const messagePanel = (signal: SignalName, body: Value, options: OutputOptions): Markup =>
  panel(signal, html`<div class="words">${body}</div>`, options);

function panel(signal: SignalName | undefined, body: Markup, { wording }: OutputOptions): Markup {
  const word = signal ? wording.kinds.signal(signal) : wording.document.noSignal,
    hurts = signal === undefined || signals[signal].people;
  return html`<div class="panel ${signal ?? "none"}" role="note" aria-label="${word}"><p class="head">${hurts && alertSymbol}<span>${word}</span></p><div class="body">${body}</div></div>`;
}
