// The output "record": what is to be said about saved records, as text, CSV and JSON.

import { provenanceOf, type Provenance } from "../draft.ts";
import { linesOf } from "../lines/groups.ts";
import { output, type Output, type OutputInput, type OutputOptions } from "../output.ts";
import { headLines } from "../page.ts";
import { csv } from "../text/csv.ts";
import { asJson } from "../text/json.ts";
import { shownOnOneLine } from "../text/shown.ts";
import { wrap } from "../text/wrap.ts";
import { checkedRecord, type Made, type Remark } from "./check.ts";
import type { WorkRecord } from "./record.ts";
import { wantedOf, wantedText, type Wanted } from "./wanted.ts";

/** A record with the file that it was read from, as shown to the user. */
export interface ReadRecord {
  readonly file: string;
  readonly record: WorkRecord;
}

export interface RecordCheckData {
  readonly format: "stripdown-record-check";
  readonly version: 1;
  readonly provenance: Provenance;
  readonly records: readonly {
    readonly file: string;
    readonly serial: string;
    readonly remarks: readonly Remark[];
    /** Parts that the entries "not as written" ask to be ordered. */
    readonly wanted: readonly Wanted[];
  }[];
}

export const madeOf = (input: OutputInput, options: OutputOptions): readonly Made[] =>
  input.performances.map((performance) => ({
    id: performance.procedure.id,
    unit: performance.model.unit,
    build: performance.model.build,
    lines: linesOf(performance, options),
  }));

/** @param told hears how many remarks are open over all records. */
export function recordCheck(
  records: readonly ReadRecord[],
  told: (open: number) => void = () => {},
): Output<RecordCheckData> {
  return output<RecordCheckData>({
    name: "record",
    title: "Remarks on records",
    data: (input, options) => {
      const made = madeOf(input, options),
        provenance = provenanceOf(input);
      const checked = records.map(({ file, record }) => ({
        file,
        serial: record.serial ?? "",
        remarks: checkedRecord(record, made, provenance.hash, options.wording),
        wanted: wantedOf(
          record,
          (own) =>
            made.find((each) => each.id === own.procedure && each.unit === own.unit && each.build === own.build)?.lines
              .context.model,
        ),
      }));
      told(checked.reduce((sum, { remarks }) => sum + remarks.filter(({ open }) => open).length, 0));
      return { format: "stripdown-record-check", version: 1, provenance, records: checked };
    },
    formats: {
      text: { extension: "txt", title: "Text", write: asText },
      csv: {
        extension: "csv",
        title: "A row for each remark and for each part to order",
        write: ({ records: all, provenance }, { wording: { record: words, document } }) =>
          csv(
            words.checkColumns,
            all.flatMap(({ file, serial, remarks, wanted }) => {
              const head = [provenance.draft.length > 0 ? document.draftMark : "", file, serial];
              return [
                ...remarks.map((remark) => [
                  ...head,
                  remark.procedure,
                  remark.line,
                  remark.open ? words.open : words.told,
                  remark.says,
                  remark.consequences.join(" "),
                  remark.thing?.name ?? "",
                  "",
                  "",
                  "",
                ]),
                ...wanted.map(({ part, count, procedure, line, thing }) => [
                  ...head,
                  procedure,
                  line,
                  words.wantedTitle,
                  "",
                  "",
                  thing?.name ?? "",
                  part,
                  count ?? "",
                  [thing?.size, thing?.partNo, thing?.standard].filter(Boolean).join(", "),
                ]),
              ];
            }),
          ),
      },
      json: {
        extension: "json",
        title: "Remarks, for programs",
        write: asJson,
      },
    },
  });
}

function asText({ records, provenance }: RecordCheckData, options: OutputOptions): string {
  const { record: words, document } = options.wording,
    out = [words.checkTitle, "=".repeat(words.checkTitle.length), ...headLines(provenance, options)];
  for (const { file, serial, remarks, wanted } of records) {
    const open = remarks.filter((each) => each.open),
      told = remarks.filter((each) => !each.open),
      many = new Set(remarks.map(({ procedure }) => procedure).filter(Boolean)).size > 1;
    out.push("", ...wrap(shownOnOneLine(words.recordOf(file, serial)), "", "  "));
    if (remarks.length === 0) out.push(...wrap(words.noRemark, "  ", "  "));
    for (const [title, list] of [
      [words.openTitle, open],
      [words.toldTitle, told],
    ] as const) {
      if (list.length > 0) out.push(`  ${title}`);
      for (const { procedure, line, says, consequences } of list) {
        out.push(
          ...wrap(
            shownOnOneLine(many && procedure ? document.titled(procedure, says) : says),
            `    ${shownOnOneLine(line)}`.padEnd(11),
            "           ",
          ),
        );
        for (const consequence of consequences)
          out.push(...wrap(shownOnOneLine(consequence), "           - ", "             "));
      }
    }
    if (wanted.length > 0) out.push(`  ${words.wantedTitle}`);
    for (const each of wanted)
      out.push(
        ...wrap(
          shownOnOneLine(wantedText(each, options.wording)),
          `    ${shownOnOneLine(each.line)}`.padEnd(11),
          "           ",
        ),
      );
  }
  return `${out.join("\n")}\n`;
}
