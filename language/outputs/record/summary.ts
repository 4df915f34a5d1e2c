// Many records of one procedure in one table: for each reading its spread over the units. Records of another revision are left out and
// told, since their lines may ask for something else.

import { provenanceOf, type Provenance } from "../draft.ts";
import type { ActionLine } from "../lines/line.ts";
import { output, type Output, type OutputInput, type OutputOptions } from "../output.ts";
import { table, type Column } from "../manual/html-table.ts";
import { svg, svgFile } from "../draw/drawing.ts";
import { headLines, htmlPage, pageHead } from "../page.ts";
import { csv } from "../text/csv.ts";
import { asJson } from "../text/json.ts";
import { html } from "../text/markup.ts";
import { shownOnOneLine } from "../text/shown.ts";
import { wrap } from "../text/wrap.ts";
import { madeOf, type ReadRecord } from "./check-output.ts";
import { judgedTry } from "./judge-reading.ts";
import { plotOf } from "./plot.ts";
import type { ReadingSummary } from "./reading-summary.ts";
import { figureOf, spreadOf } from "./spread.ts";

export interface RecordSummaryData {
  readonly format: "stripdown-record-summary";
  readonly version: 1;
  readonly provenance: Provenance;
  readonly records: number;
  /** Files of records that were made from another revision. */
  readonly leftOut: readonly string[];
  readonly readings: readonly ReadingSummary[];
}

export function summaryData(
  records: readonly ReadRecord[],
  input: OutputInput,
  options: OutputOptions,
): RecordSummaryData {
  const provenance = provenanceOf(input),
    mine = records.filter(({ record }) => record.content === provenance.hash);
  const readings = madeOf(input, options).flatMap((made) =>
    [...made.lines.strip, ...made.lines.refit, ...made.lines.finish]
      .flatMap((group) => group.lines)
      .filter((line): line is ActionLine => line.is === "action")
      .flatMap((line) =>
        line.readings.map((reading, i): ReadingSummary => {
          const taken = mine.flatMap(({ file, record }) => {
            const procedure = record.procedures.find(
              (each) => each.procedure === made.id && each.unit === made.unit && each.build === made.build,
            );
            const tries = (
              procedure?.lines.find((each) => each.line === line.id)?.readings?.find((each) => each.reading === i + 1)
                ?.tries ?? []
            )
              .map((each) => judgedTry(each, reading))
              .filter(({ is }) => is !== "none");
            const last = tries.at(-1);
            return last ? [{ file, serial: record.serial ?? "", last, tries: tries.length }] : [];
          });
          const values = taken.flatMap(({ file, serial, last, tries }) =>
            last.is === "figure"
              ? [{ file, serial, value: last.value, outside: last.outside, tries, unit: last.unit }]
              : [],
          );
          const unit = reading.unit || values[0]?.unit || "",
            same = values.filter((each) => each.unit === unit),
            answers = taken.flatMap(({ last }) => (last.is === "answer" ? [last.asItShouldBe] : []));
          const spread = spreadOf(same.map(({ value }) => value));
          return {
            procedure: made.id,
            line: line.id,
            reading: i + 1,
            what: reading.what,
            limits: reading.limits,
            unit,
            ...(reading.low === undefined ? {} : { low: reading.low }),
            ...(reading.high === undefined ? {} : { high: reading.high }),
            values: same.map(({ unit: _, ...value }) => value),
            ...(spread ? { spread } : {}),
            outside: same.filter(({ outside }) => outside).length,
            ...(reading.isFigure
              ? {}
              : { answers: { yes: answers.filter(Boolean).length, no: answers.filter((each) => !each).length } }),
            missing: mine.length - same.length - answers.length,
          };
        }),
      ),
  );
  return {
    format: "stripdown-record-summary",
    version: 1,
    provenance,
    records: mine.length,
    leftOut: records.filter(({ record }) => record.content !== provenance.hash).map(({ file }) => file),
    readings,
  };
}

export function recordSummary(records: readonly ReadRecord[]): Output<RecordSummaryData> {
  return output<RecordSummaryData>({
    name: "record summary",
    title: "Spread of the readings over many units",
    data: (input, options) => summaryData(records, input, options),
    formats: {
      text: { extension: "txt", title: "Text", write: asText },
      csv: {
        extension: "csv",
        title: "A row for each reading",
        write: ({ readings, provenance }, { wording: { record: words, document } }) =>
          csv(
            words.summaryColumns,
            readings.map((each) => [
              provenance.draft.length > 0 ? document.draftMark : "",
              each.procedure,
              each.line,
              each.what,
              each.limits,
              each.unit,
              each.spread?.count ?? each.values.length,
              each.spread?.lowest,
              each.spread?.median,
              each.spread?.highest,
              each.spread?.mean,
              each.spread?.deviation,
              each.outside,
              each.answers?.yes,
              each.answers?.no,
              each.missing,
            ]),
          ),
      },
      json: {
        extension: "json",
        title: "Figures, for programs",
        write: asJson,
      },
      svg: {
        extension: "svg",
        title: "The spread of each reading, drawn",
        write: (data, options) =>
          svgFile(
            {
              title: options.wording.record.summaryTitle(data.records),
              lines: [...headLines(data.provenance, options), ...leftOut(data, options)],
            },
            plots(data, options),
            options.wording.record.noReadings,
          ),
      },
      html: { extension: "html", title: "Table and drawings on one page", write: asHtml },
    },
  });
}

const plots = ({ readings }: RecordSummaryData, { wording }: OutputOptions) =>
  readings.flatMap((reading, i) => plotOf(reading, `reading-${i + 1}`, wording) ?? []);
const leftOut = ({ leftOut: files }: RecordSummaryData, { wording }: OutputOptions): string[] =>
  files.length > 0 ? [wording.record.leftOut(files)] : [];

function asText(data: RecordSummaryData, options: OutputOptions): string {
  const { record: words, document } = options.wording,
    title = words.summaryTitle(data.records);
  const out = [
    title,
    "=".repeat(title.length),
    ...headLines(data.provenance, options),
    ...leftOut(data, options).flatMap((says) => wrap(shownOnOneLine(says), "", "  ")),
  ];
  if (data.readings.length === 0) out.push("", words.noReadings);
  for (const each of data.readings) {
    out.push(
      "",
      ...wrap(
        shownOnOneLine(document.parts([each.what, each.limits].filter(Boolean))),
        `  ${each.line}`.padEnd(9),
        "         ",
      ),
    );
    out.push(...wrap(shownOnOneLine(document.parts(factsOf(each, options))), "         - ", "           "));
  }
  return `${out.join("\n")}\n`;
}

function factsOf({ spread, unit, outside, answers, missing }: ReadingSummary, { wording }: OutputOptions): string[] {
  const { record: words } = wording,
    shown = (value: number | undefined): string => wording.figures.number(figureOf(value));
  return [
    ...(spread
      ? [
          words.spread(spread.count, shown(spread.lowest), shown(spread.highest), shown(spread.median), unit),
          words.meanAndDeviation(shown(spread.mean), shown(spread.deviation), unit),
        ]
      : []),
    ...(outside > 0 ? [words.outsideCount(outside)] : []),
    ...(answers ? [words.answers(answers.yes, answers.no)] : []),
    ...(missing > 0 ? [words.missing(missing)] : []),
  ];
}

function asHtml(data: RecordSummaryData, options: OutputOptions): string {
  const { record: words } = options.wording,
    { heads } = words,
    title = words.summaryTitle(data.records),
    shown = (value: number | undefined): string => options.wording.figures.number(figureOf(value));
  const columns: readonly Column<ReadingSummary>[] = [
    { head: heads.line, cell: (each) => each.line, is: "code" },
    { head: heads.reading, cell: (each) => each.what, isHead: true },
    { head: heads.limits, cell: (each) => each.limits },
    { head: heads.unit, cell: (each) => each.unit },
    { head: heads.count, cell: (each) => each.spread?.count ?? "", is: "n" },
    { head: heads.lowest, cell: (each) => shown(each.spread?.lowest), is: "n" },
    { head: heads.median, cell: (each) => shown(each.spread?.median), is: "n" },
    { head: heads.highest, cell: (each) => shown(each.spread?.highest), is: "n" },
    { head: heads.mean, cell: (each) => shown(each.spread?.mean), is: "n" },
    { head: heads.deviation, cell: (each) => shown(each.spread?.deviation), is: "n" },
    { head: heads.outside, cell: (each) => (each.spread ? each.outside : ""), is: "n" },
    { head: heads.answers, cell: (each) => (each.answers ? words.answers(each.answers.yes, each.answers.no) : "") },
    { head: heads.missing, cell: (each) => each.missing, is: "n" },
  ];
  return htmlPage(
    {
      title,
      style: "figure{margin:1rem 0}figcaption{font-weight:700}@page{size:landscape;margin:10mm}",
      body: html`${pageHead(title, data.provenance, options)}
<main>${leftOut(data, options).map((says) => html`<p>${says}</p>`)}${data.readings.length === 0 ? html`<p>${words.noReadings}</p>` : table(title, columns, data.readings, true)}
${plots(data, options).map(
  (
    drawing,
  ) => html`<figure><figcaption>${drawing.title}</figcaption><div class="scroll" role="group" tabindex="0" aria-label="${drawing.title}">${svg(drawing)}</div></figure>
`,
)}</main>`,
    },
    data.provenance,
    options,
  );
}
