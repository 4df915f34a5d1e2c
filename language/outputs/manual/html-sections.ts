// The sections of the HTML manual in their order. A section without content has no body and does not appear.

import { billName } from "../bill/data.ts";
import type { OutputOptions } from "../output.ts";
import { signals, type SignalName } from "../../tables/index.ts";
import { html, type Markup, type Value } from "../text/markup.ts";
import { paragraphs } from "../text/shown.ts";
import type { Chapter, ManualDocument } from "./document.ts";
import { groupHtml, hazardPanel, messagePanel, photoHtml } from "./html-lines.ts";
import { drawingsBody, glossaryBody, indexBody, mishapsBody, purposeBody, wasteBody } from "./html-instructions.ts";
import { factsTable } from "./html-facts.ts";
import { layoutHtml } from "../layout-sheet/layout-sheet.ts";
import { sheetHtml } from "../sheet/table-html.ts";
import { torqueHtml } from "../torque-sheet/torque-sheet.ts";
import { layoutSheetHead, tableSheetHead, torqueSheetHead, type SheetHead, type TableSheetName } from "./sheets.ts";
import { own } from "./html-own.ts";
import { filesHtml } from "./html-tablet.ts";
import { closingBody, recordedBody } from "./html-book.ts";
import { table, type Column } from "./html-table.ts";
import type { SectionName } from "./sections.ts";
import { recordFields } from "./tablet/entries.ts";

export interface Section {
  readonly name: SectionName;
  /** In the page: several procedures have a section of one name each. */
  readonly id: string;
  readonly title: string;
  readonly body: Value;
  /** Printed on pages that lie on their side, its heading too. */
  readonly lies?: boolean;
}

const named = (name: SectionName, prefix = ""): Pick<Section, "name" | "id"> => ({ name, id: prefix + name });

export function frontSections(document: ManualDocument, options: OutputOptions): Section[] {
  const { manual: words, instructions, draw } = options.wording,
    { sections: titles } = words,
    { sections: more } = instructions;
  return [
    {
      ...named("identification"),
      title: titles.identification,
      body: factsTable(document.identification),
    },
    { ...named("recorded"), title: options.wording.refitBook.sections.recorded, body: recordedBody(document, options) },
    { ...named("purpose"), title: more.purpose, body: purposeBody(document, options) },
    { ...named("who"), title: titles.who, body: html`<ul>${document.who.map((line) => html`<li>${line}</li>`)}</ul>` },
    { ...named("use"), title: titles.use, body: useBody(options) },
    { ...named("safety"), title: titles.safety, body: safetyBody(document, options) },
    {
      ...named("works"),
      title: titles.works,
      body:
        document.works.length + document.paths.length > 0
          ? [
              document.works.map(({ name, text }) => html`<h3>${own(name)}</h3>${aboutHtml(text)}`),
              drawingsBody(document.paths, ""),
            ]
          : undefined,
    },
    { ...named("tools"), title: titles.tools, body: toolsBody(document, options) },
    { ...named("bill"), title: titles.bill, body: billBody(document, options) },
    {
      ...named("parts"),
      title: titles.parts,
      body: [
        table(
          titles.parts,
          [
            { head: words.number, cell: (row) => row.number, is: "n" },
            { head: words.name, cell: (row) => own(row.name), isHead: true },
            { head: words.kind, cell: (row) => row.kind },
            { head: words.count, cell: (row) => row.count, is: "n" },
            { head: words.massColumn, cell: (row) => row.mass },
            { head: words.size, cell: (row) => row.size },
            { head: words.partNo, cell: (row) => own(row.partNo) },
            { head: words.fresh, cell: (row) => row.fresh },
          ],
          document.parts,
        ),
        document.pictures.map((shot) => photoHtml(shot, options)),
      ],
    },
    {
      ...named("fasteners"),
      title: titles.fasteners,
      body: [
        document.fasteners.length > 0 &&
          table(
            words.fastenersCaption,
            [
              { head: words.name, cell: (row) => own(row.name), isHead: true },
              { head: words.count, cell: (row) => row.count, is: "n" },
              { head: words.size, cell: (row) => row.size },
              { head: words.tool, cell: (row) => row.tool },
              { head: words.torque, cell: (row) => row.torque },
              { head: words.passes, cell: (row) => row.passes },
              { head: words.joins, cell: (row) => own(row.joins) },
              { head: words.fresh, cell: (row) => row.fresh },
            ],
            document.fasteners,
          ),
        document.joints.length > 0 &&
          table(
            words.jointsCaption,
            [
              { head: words.name, cell: (row) => own(row.name), isHead: true },
              { head: words.kind, cell: (row) => row.kind },
              { head: words.count, cell: (row) => row.count, is: "n" },
              { head: words.joins, cell: (row) => own(row.joins) },
            ],
            document.joints,
          ),
      ],
    },
    {
      ...named("fluids"),
      title: titles.fluids,
      body:
        document.fluids.length === 0
          ? undefined
          : table(
              titles.fluids,
              [
                { head: words.fluid, cell: (row) => own(row.name), isHead: true },
                { head: words.kind, cell: (row) => row.kind },
                { head: words.volume, cell: (row) => row.volume },
                { head: words.drainsAt, cell: (row) => own(row.drainsAt) },
                { head: words.fillsAt, cell: (row) => own(row.fillsAt) },
                { head: words.bleedsAt, cell: (row) => own(row.bleedsAt) },
                { head: words.uses, cell: (row) => own(row.uses) },
                { head: words.waste, cell: (row) => row.waste },
              ],
              document.fluids,
            ),
    },
    { ...named("diagram"), title: more.diagram, body: drawingsBody(document.diagrams, draw.stripAbout) },
  ];
}

export function chapterSections(document: ManualDocument, options: OutputOptions): Section[] {
  const { manual: words } = options.wording,
    { sections: titles } = words,
    plan = new Map(document.plan.lines.map((line) => [line.id, line])),
    several = document.chapters.length > 1,
    titleIn = (section: string, chapter: Chapter): string => (several ? words.of(section, chapter.title) : section);
  const laidOut = (name: SectionName, chapter: Chapter, { title, note, lies }: SheetHead, body: Markup): Section => ({
    ...named(name, chapter.prefix),
    title: titleIn(title, chapter),
    lies,
    body: html`<div class="sheet"><p>${note}</p>${body}</div>`,
  });
  const sheet = (name: Exclude<TableSheetName, "waste">, chapter: Chapter): Section =>
    laidOut(name, chapter, tableSheetHead(name, options), sheetHtml(chapter.sheets.tables[name]));
  const sections = document.chapters.flatMap((chapter): Section[] => {
    const title = (section: string): string => titleIn(section, chapter),
      groups = (of: Chapter["strip"]): Value => of.map((group) => groupHtml(group, { chapter, plan, options }));
    return [
      sheet("preparation", chapter),
      sheet("isolation", chapter),
      {
        ...named("strip", chapter.prefix),
        title: title(titles.strip),
        body: html`${beforeBody(chapter, options)}${chapter.strip.length > 0 ? groups(chapter.strip) : html`<p>${words.noStrip}</p>`}`,
      },
      {
        ...named("refit", chapter.prefix),
        title: title(titles.refit),
        body: html`${chapter.refitIs === "none" && chapter.strip.length > 0 && html`<p class="draft">${words.noRefit}</p>`}${chapter.refitIs === "written" && html`<p>${words.writtenRefit}</p>`}${groups(chapter.refit)}`,
      },
      {
        ...named("finish", chapter.prefix),
        title: title(titles.finish),
        body: chapter.finish.length > 0 ? groups(chapter.finish) : undefined,
      },
    ];
  });
  const { sections: more } = options.wording.instructions;
  return [
    ...sections,
    { ...named("closing"), title: options.wording.refitBook.sections.closing, body: closingBody(document, options) },
    { ...named("mishaps"), title: more.mishaps, body: mishapsBody(document, options) },
    { ...named("waste"), title: more.waste, body: wasteBody(document, options) },
    { ...named("record"), title: titles.record, body: recordBody(options) },
    ...document.chapters.flatMap((chapter): Section[] => {
      const { torque, layout } = chapter.sheets;
      return [
        sheet("lifting", chapter),
        ...(chapter.strip.length > 0 ? [sheet("handover", chapter)] : []),
        ...(torque.rows.length > 0
          ? [laidOut("torque", chapter, torqueSheetHead(options), torqueHtml(torque, options))]
          : []),
        ...(layout.rows.length > 0
          ? [laidOut("layout", chapter, layoutSheetHead(options), layoutHtml(layout, options))]
          : []),
      ];
    }),
    { ...named("glossary"), title: more.glossary, body: glossaryBody(options) },
    { ...named("index"), title: more.index, body: indexBody(document, options) },
  ];
}

function useBody(options: OutputOptions): Markup {
  const { manual: words } = options.wording;
  return html`<ul>${words.useLines.map((line) => html`<li>${line}</li>`)}<li>${words.torqueNote}</li></ul>`;
}

function signalWords({ wording: { manual: words, kinds } }: OutputOptions): Markup {
  return table(
    words.signalTable,
    [
      { head: words.signalWord, cell: (signal) => kinds.signal(signal), isHead: true },
      { head: words.signalMeans, cell: (signal) => kinds.signalAbout(signal) },
    ],
    Object.keys(signals) as SignalName[],
  );
}

function safetyBody({ safety }: ManualDocument, options: OutputOptions): Markup {
  const { manual: words, document } = options.wording;
  const messages = safety.messages.map(({ signal, on, text }) =>
    messagePanel(signal, [on && html`<p class="title">${document.on(on)}</p>`, html`<p>${own(text)}</p>`], options),
  );
  const hazards = html`<p>${words.inSteps}</p>${safety.hazards.map((hazard) => hazardPanel(hazard, options))}`;
  const dismissed: readonly Column<(typeof safety.dismissed)[number]>[] = [
    { head: words.dismissedKind, cell: (row) => row.kind, isHead: true },
    { head: words.unit, cell: (row) => own(row.unit) },
    { head: words.dismissedWhy, cell: (row) => own(row.why) },
  ];
  const allowed: readonly Column<(typeof safety.allowed)[number]>[] = [
    { head: words.allowedWhat, cell: (row) => html`<span lang="en-GB">${row.what}</span>`, isHead: true },
    { head: words.allowedWhere, cell: (row) => own(row.where) },
    { head: words.dismissedWhy, cell: (row) => own(row.why) },
  ];
  const open = html`<h3>${words.notConsidered}</h3>
<p><strong>${words.notConsideredNote}</strong> ${words.notConsideredList(safety.notConsidered)}</p>`;
  // What the signal words mean is said where they are met first.
  return html`<p class="caution-line">${words.cautions}</p>
${signalWords(options)}
${messages.length > 0 && html`<h3>${words.messages}</h3>${messages}`}
<h3>${words.hazards}</h3>
${safety.hazards.length > 0 ? hazards : html`<p>${words.noHazards}</p>`}
${
  safety.stores.length > 0 &&
  html`<h3>${words.storesHazards}</h3>${safety.stores.map(({ hazard, from }) => html`<p>${own(from.join(", "))}${options.wording.document.colon}</p>${hazardPanel(hazard, options)}`)}`
}
${safety.notConsidered.length > 0 && open}
${safety.allowed.length > 0 && html`<h3>${words.allowed}</h3>${table(words.allowed, allowed, safety.allowed, true)}`}
${safety.dismissed.length > 0 && html`<h3>${words.dismissed}</h3>${table(words.dismissed, dismissed, safety.dismissed, true)}`}`;
}

function toolsBody({ tools }: ManualDocument, options: OutputOptions): Markup {
  const { manual: words, document } = options.wording,
    join = (texts: readonly string[]): Value => own(document.parts(texts));
  const tool = {
    head: words.tool,
    cell: (row: { readonly name: string }): Value => own(row.name),
    isHead: true,
  } as const;
  const spanners: readonly Column<(typeof tools.spanners)[number]>[] = [
    tool,
    { head: words.forWhat, cell: (row) => join(row.for) },
    { head: words.note, cell: (row) => own(row.note) },
  ];
  const wrenches: readonly Column<(typeof tools.wrenches)[number]>[] = [
    tool,
    { head: words.range, cell: (row) => row.range },
    { head: words.accuracy, cell: (row) => row.accuracy },
    { head: words.calibration, cell: (row) => own(row.calibration) },
    { head: words.forWhat, cell: (row) => join(row.for) },
  ];
  const uncovered: readonly Column<(typeof tools.uncovered)[number]>[] = [
    { head: words.torque, cell: (row) => row.torque },
    { head: words.forWhat, cell: (row) => own(row.for) },
  ];
  const others: readonly Column<(typeof tools.others)[number]>[] = [
    tool,
    { head: words.note, cell: (row) => own(row.note) },
    { head: words.line, cell: (row) => row.for.join(", ") },
  ];
  return html`${tools.spanners.length > 0 ? table(words.spanners, spanners, tools.spanners) : html`<p>${words.noTools}</p>`}
${tools.wrenches.length > 0 && table(words.wrenches, wrenches, tools.wrenches)}
${tools.uncovered.length > 0 && table(words.wrenchNone, uncovered, tools.uncovered)}
${tools.others.length > 0 && table(words.otherTools, others, tools.others)}
${tools.wear.length > 0 && html`<h3>${words.wear}</h3><ul>${tools.wear.map((thing) => html`<li>${own(thing)}</li>`)}</ul>`}`;
}

function billBody({ bill, units }: ManualDocument, options: OutputOptions): Markup {
  const { manual: words, bill: billWords, document } = options.wording;
  if (bill.length === 0) return html`<p>${billWords.nothing}</p>`;
  const columns: readonly Column<(typeof bill)[number]>[] = [
    { head: words.item, cell: (row) => own(billName(row, options.wording)), isHead: true },
    { head: words.size, cell: (row) => [row.size, row.standard].filter(Boolean).join(", ") },
    { head: words.partNo, cell: (row) => own(row.partNo ?? "") },
    { head: words.amount, cell: (row) => row.total.text },
    { head: words.packs, cell: (row) => (row.packs ? billWords.packsOf(row.packs.text, row.pack ?? "") : "") },
    {
      head: words.why,
      cell: (row) => {
        const on = document.parts(row.usedOn);
        return own(row.why !== "" && on !== "" ? document.titled(row.why, on) : row.why || on);
      },
    },
  ];
  return html`<p>${billWords.forUnits(units)}</p>${(["certain", "worn"] as const).map((grade) => {
    const rows = bill.filter((row) => row.grade === grade);
    return rows.length > 0 && table(billWords.grades[grade], columns, rows);
  })}
${bill.some((row) => row.total.notGiven > 0) && html`<p>${billWords.notGivenNote}</p>`}`;
}

const aboutHtml = (text: string): readonly Markup[] =>
  paragraphs(text).map((each) => html`<p class="about">${own(each)}</p>`);

function beforeBody(chapter: Chapter, options: OutputOptions): Value {
  const { manual: words } = options.wording;
  return [
    aboutHtml(chapter.about),
    chapter.needs.length > 0 &&
      html`<h3>${words.before}</h3><ul>${chapter.needs.map((need) => html`<li>${own(need.words)}${need.alone && ` ${need.alone}`}</li>`)}</ul>`,
    chapter.messages.map(({ signal, text }) => messagePanel(signal, html`<p>${own(text)}</p>`, options)),
    chapter.pictures.map((shot) => photoHtml(shot, options)),
  ];
}

function recordBody(options: OutputOptions): Markup {
  const { manual: words, tablet } = options.wording,
    [instruments, notAsWritten] = words.recordLines.slice(recordFields.length);
  const columns = [
    ["name", tablet.instrument],
    ["number", tablet.instrumentNumber],
    ["due", tablet.due],
  ] as const;
  const cell = (row: number, name: string, head: string): Markup =>
    html`<td><input type="text" autocomplete="off" aria-label="${head} ${row}" data-part="${name}"/>${name === "due" && html`<p class="outside" data-part="told"></p>`}</td>`;
  return html`<p>${words.recordNote}</p>${filesHtml(options)}<div>${recordFields.map((name, i) => html`<p class="write"><label for="record-${i + 1}">${words.recordLines[i]}</label><input id="record-${i + 1}" type="text" autocomplete="off" data-field="${name}"/></p>`)}<p class="write" data-script="" hidden=""><label for="record-on">${tablet.readingsOn}</label><input id="record-on" type="text" autocomplete="off" data-on=""/></p><p class="outside" id="record-on-told"></p></div>
<div class="scroll short" role="group" tabindex="0" aria-label="${instruments ?? tablet.instruments}"><table class="fill"><caption>${instruments ?? tablet.instruments}</caption><thead><tr>${columns.map(([, head]) => html`<th scope="col">${head}</th>`)}</tr></thead>
<tbody>${[1, 2, 3, 4].map((row) => html`<tr data-instrument="${row}">${columns.map(([name, head]) => cell(row, name, head))}</tr>`)}</tbody></table></div>
${table(
  notAsWritten ?? tablet.notAsWritten,
  [
    ...[words.line, tablet.whatThing, tablet.what, tablet.whatDone, tablet.agreedBy, tablet.wanted].map((head) => ({
      head,
      cell: () => html`<span class="pen"></span>`,
    })),
  ],
  [1, 2, 3, 4],
)}`;
}
