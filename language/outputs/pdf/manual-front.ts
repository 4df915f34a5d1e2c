// The chapters of the manual before the work, as blocks for paper: the same document, in the same order, as in the browser.

import { billName } from "../bill/data.ts";
import type { ManualDocument } from "../manual/document.ts";
import type { SectionName } from "../manual/sections.ts";
import { recorded } from "./book.ts";
import { signals, type SignalName } from "../../tables/index.ts";
import { hazardPanel, messagePanel, photoBlocks, type Layout } from "./lines.ts";
import { drawn, heading, list, par, when } from "./pieces.ts";
import type { Block } from "./print.ts";
import { table, type Column } from "./table.ts";
import { paragraphs } from "../text/shown.ts";
import { bold, joined, words } from "./words.ts";

/** A chapter; one without blocks does not appear. */
export interface Section {
  readonly name: SectionName;
  readonly title: string;
  /** Begins a page. */
  readonly page?: true;
  /** Stands on pages of its own that lie on their side. */
  readonly lies?: true;
  readonly blocks: readonly Block[];
}

export function frontSections(document: ManualDocument, layout: Layout): Section[] {
  const { wording } = layout.options,
    { sections: titles } = wording.manual,
    { sections: more } = wording.instructions;
  return [
    {
      name: "identification",
      title: titles.identification,
      blocks: [
        { is: "facts", rows: document.identification.map(({ label, value }) => [words(label), words(value)] as const) },
      ],
    },
    {
      name: "recorded",
      title: wording.refitBook.sections.recorded,
      blocks: recorded(document, wording),
    },
    { name: "purpose", title: more.purpose, blocks: purpose(document, layout) },
    { name: "who", title: titles.who, blocks: [list(document.who)] },
    { name: "use", title: titles.use, blocks: [list([...wording.manual.useLines, wording.manual.torqueNote])] },
    { name: "safety", title: titles.safety, page: true, blocks: safety(document, layout) },
    { name: "works", title: titles.works, blocks: works(document, layout) },
    { name: "tools", title: titles.tools, blocks: tools(document, layout) },
    { name: "bill", title: titles.bill, blocks: bill(document, layout) },
    ...tables(document, layout),
    {
      name: "diagram",
      title: more.diagram,
      blocks: when(
        document.diagrams.length > 0,
        par(words(wording.draw.stripAbout), "lead"),
        document.diagrams.map((drawing) => drawn(drawing, layout.room, drawing.title)),
      ),
    },
  ];
}

function purpose({ purpose: { intended, wrong } }: ManualDocument, { options }: Layout): Block[] {
  const { instructions } = options.wording;
  return [
    heading(2, instructions.intended),
    intended.length > 0 ? list(intended) : par(words(instructions.intendedNotGiven)),
    ...when(wrong.length > 0, heading(2, instructions.wrong), list(wrong)),
  ];
}

function signalWords({ options: { wording }, room }: Layout): Block {
  const { manual, kinds } = wording,
    rows = Object.keys(signals) as SignalName[];
  const columns: readonly Column<SignalName>[] = [
    { head: manual.signalWord, cell: (signal) => kinds.signal(signal), isHead: true },
    { head: manual.signalMeans, cell: (signal) => kinds.signalAbout(signal) },
  ];
  return table(manual.signalTable, columns, rows, room.width);
}

function safety(
  { safety: { messages, hazards, stores, allowed, dismissed, notConsidered } }: ManualDocument,
  layout: Layout,
): Block[] {
  const { options, room } = layout,
    { manual, document } = options.wording;
  const columns: readonly Column<(typeof dismissed)[number]>[] = [
    { head: manual.dismissedKind, cell: (row) => row.kind, isHead: true },
    { head: manual.unit, cell: (row) => row.unit },
    { head: manual.dismissedWhy, cell: (row) => row.why },
  ];
  const allows: readonly Column<(typeof allowed)[number]>[] = [
    { head: manual.allowedWhat, cell: (row) => row.what, isHead: true, lang: "en-GB" },
    { head: manual.allowedWhere, cell: (row) => row.where },
    { head: manual.dismissedWhy, cell: (row) => row.why },
  ];
  return [
    par(words(manual.cautions), "bar"),
    // What the words mean is said where they are met first.
    signalWords(layout),
    ...when(
      messages.length > 0,
      heading(2, manual.messages),
      messages.map(({ signal, on, text }) =>
        messagePanel(signal, on === "" ? "" : words(document.on(on)), text, options),
      ),
    ),
    heading(2, manual.hazards),
    ...(hazards.length > 0
      ? [par(words(manual.inSteps), "lead"), ...hazards.map((hazard) => hazardPanel(hazard, options))]
      : [par(words(manual.noHazards))]),
    ...when(
      stores.length > 0,
      heading(2, manual.storesHazards),
      stores.flatMap(({ hazard, from }) => [
        par(words(`${from.join(", ")}${document.colon}`), "lead"),
        hazardPanel(hazard, options),
      ]),
    ),
    ...when(
      notConsidered.length > 0,
      heading(2, manual.notConsidered),
      par(joined(bold(manual.notConsideredNote), words(manual.notConsideredList(notConsidered)))),
    ),
    ...when(allowed.length > 0, heading(2, manual.allowed), table("", allows, allowed, room.width)),
    ...when(dismissed.length > 0, heading(2, manual.dismissed), table("", columns, dismissed, room.width)),
  ];
}

function works(document: ManualDocument, { room }: Layout): Block[] {
  return [
    ...document.works.flatMap(({ name, text }): Block[] => [
      heading(2, name),
      ...paragraphs(text).map((each) => par(words(each))),
    ]),
    ...document.paths.map((drawing) => drawn(drawing, room, drawing.title)),
  ];
}

function tools({ tools: all }: ManualDocument, { options, room }: Layout): Block[] {
  const { manual, document } = options.wording,
    tool = { head: manual.tool, cell: (row: { readonly name: string }): string => row.name, isHead: true } as const;
  const some = <Row>(
    caption: string,
    columns: readonly Column<NoInfer<Row>>[],
    rows: readonly Row[],
  ): readonly Block[] => (rows.length === 0 ? [] : [table(caption, columns, rows, room.width)]);
  const spanners = some(
    manual.spanners,
    [
      tool,
      { head: manual.forWhat, cell: (row) => document.parts(row.for) },
      { head: manual.note, cell: (row) => row.note },
    ],
    all.spanners,
  );
  return [
    ...(spanners.length > 0 ? spanners : [par(words(manual.noTools))]),
    ...some(
      manual.wrenches,
      [
        tool,
        { head: manual.range, cell: (row) => row.range },
        { head: manual.accuracy, cell: (row) => row.accuracy },
        { head: manual.calibration, cell: (row) => row.calibration },
        { head: manual.forWhat, cell: (row) => document.parts(row.for) },
      ],
      all.wrenches,
    ),
    ...some(
      manual.wrenchNone,
      [
        { head: manual.torque, cell: (row) => row.torque, isHead: true },
        { head: manual.forWhat, cell: (row) => row.for },
      ],
      all.uncovered,
    ),
    ...some(
      manual.otherTools,
      [tool, { head: manual.note, cell: (row) => row.note }, { head: manual.line, cell: (row) => row.for.join(", ") }],
      all.others,
    ),
    ...when(all.wear.length > 0, heading(2, manual.wear), list(all.wear)),
  ];
}

function bill({ bill: rows, units }: ManualDocument, { options, room }: Layout): Block[] {
  const { manual, bill: said } = options.wording;
  if (rows.length === 0) return [par(words(said.nothing))];
  const columns: readonly Column<(typeof rows)[number]>[] = [
    { head: manual.item, cell: (row) => billName(row, options.wording), isHead: true },
    { head: manual.size, cell: (row) => [row.size, row.standard].filter(Boolean).join(", ") },
    { head: manual.partNo, cell: (row) => row.partNo ?? "" },
    { head: manual.amount, cell: (row) => row.total.text },
    { head: manual.packs, cell: (row) => (row.packs ? said.packsOf(row.packs.text, row.pack ?? "") : "") },
    {
      head: manual.why,
      cell: (row) =>
        [row.why, options.wording.document.parts([...new Set(row.usedAt.map(({ on }) => on).filter(Boolean))])]
          .filter(Boolean)
          .join(`${options.wording.document.colon} `),
    },
  ];
  return [
    par(words(said.forUnits(units)), "lead"),
    ...(["certain", "worn"] as const).flatMap((grade) => {
      const mine = rows.filter((row) => row.grade === grade);
      return mine.length > 0 ? [table(said.grades[grade], columns, mine, room.width)] : [];
    }),
    ...when(
      rows.some((row) => row.total.notGiven > 0),
      par(words(said.notGivenNote)),
    ),
  ];
}

function tables({ parts, pictures, fasteners, joints, fluids }: ManualDocument, layout: Layout): Section[] {
  const { options, room } = layout;
  const { manual } = options.wording,
    { sections: titles } = manual;
  const some = <Row>(
    caption: string,
    columns: readonly Column<NoInfer<Row>>[],
    rows: readonly Row[],
  ): readonly Block[] => (rows.length === 0 ? [] : [table(caption, columns, rows, room.width, 8.5)]);
  return [
    {
      name: "parts",
      title: titles.parts,
      blocks: [
        ...some(
          "",
          [
            { head: manual.number, cell: (row) => row.number, is: "n" },
            { head: manual.name, cell: (row) => row.name, isHead: true },
            { head: manual.kind, cell: (row) => row.kind },
            { head: manual.count, cell: (row) => row.count, is: "n" },
            { head: manual.massColumn, cell: (row) => row.mass },
            { head: manual.size, cell: (row) => row.size },
            { head: manual.partNo, cell: (row) => row.partNo },
            { head: manual.fresh, cell: (row) => row.fresh },
          ],
          parts,
        ),
        ...pictures.flatMap((shot) => photoBlocks(shot, "", layout)),
      ],
    },
    {
      name: "fasteners",
      title: titles.fasteners,
      blocks: [
        ...some(
          manual.fastenersCaption,
          [
            { head: manual.name, cell: (row) => row.name, isHead: true },
            { head: manual.count, cell: (row) => row.count, is: "n" },
            { head: manual.size, cell: (row) => row.size },
            { head: manual.tool, cell: (row) => row.tool },
            { head: manual.torque, cell: (row) => row.torque },
            { head: manual.passes, cell: (row) => row.passes },
            { head: manual.joins, cell: (row) => row.joins },
            { head: manual.fresh, cell: (row) => row.fresh },
          ],
          fasteners,
        ),
        ...some(
          manual.jointsCaption,
          [
            { head: manual.name, cell: (row) => row.name, isHead: true },
            { head: manual.kind, cell: (row) => row.kind },
            { head: manual.count, cell: (row) => row.count, is: "n" },
            { head: manual.joins, cell: (row) => row.joins },
          ],
          joints,
        ),
      ],
    },
    {
      name: "fluids",
      title: titles.fluids,
      blocks: some(
        "",
        [
          { head: manual.fluid, cell: (row) => row.name, isHead: true },
          { head: manual.kind, cell: (row) => row.kind },
          { head: manual.volume, cell: (row) => row.volume },
          { head: manual.drainsAt, cell: (row) => row.drainsAt },
          { head: manual.fillsAt, cell: (row) => row.fillsAt },
          { head: manual.bleedsAt, cell: (row) => row.bleedsAt },
          { head: manual.uses, cell: (row) => row.uses },
          { head: manual.waste, cell: (row) => row.waste },
        ],
        fluids,
      ),
    },
  ];
}
