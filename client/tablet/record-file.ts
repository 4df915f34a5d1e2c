// The record as a file: written to the downloads, read from a file that somebody chooses. A record of another revision is not loaded.

import { entriesOf, noEntries, recordFields, recordOf } from "../../language/outputs/manual/tablet/entries.ts";
import { filled } from "../../language/outputs/manual/tablet/words.ts";
import { readRecord } from "../../language/outputs/record/read-record.ts";
import { made, say } from "./dom.ts";
import type { Sheet } from "./sheet.ts";

export function saveRecord(sheet: Sheet): void {
  const record = recordOf(sheet.entries, sheet.plan),
    serial = (record.serial ?? "").replace(/[^\p{L}\p{N}-]+/gu, "-").replace(/^-+|-+$/g, "");
  const name = `record-${serial === "" ? sheet.plan.content.slice(0, 8) : serial}.json`,
    url = URL.createObjectURL(new Blob([`${JSON.stringify(record, undefined, 2)}\n`], { type: "application/json" }));
  const link = made("a", { href: url, download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
  say(filled(sheet.words.saved, name));
}

const hasEntries = ({ entries }: Sheet): boolean => JSON.stringify(entries) !== JSON.stringify(noEntries);

export async function loadRecord(sheet: Sheet, file: File): Promise<void> {
  const { words } = sheet,
    read = readRecord(await file.text());
  if ("problem" in read) {
    const { is, place } = read.why;
    say(filled(words.loadBad, filled(words.loadWhy[is], place)));
    return;
  }
  if (read.record.content !== sheet.plan.content) {
    say(words.loadOther);
    return;
  }
  if (hasEntries(sheet) && !confirm(words.loadSure)) return;
  const { entries, unknown } = entriesOf(read.record, sheet.plan);
  sheet.entries = entries;
  say([words.loaded, unknown.length > 0 ? filled(words.loadUnknown, unknown.join(", ")) : ""].join(" ").trim());
}

export function beginAnother(sheet: Sheet): void {
  if (hasEntries(sheet) && !confirm(sheet.words.clearSure)) return;
  sheet.entries = noEntries;
}

/** Serial number, dates, names: what stands once in the record. */
export function wireFields(sheet: Sheet): () => void {
  const inputs = recordFields.flatMap((name) => {
    const input = document.querySelector<HTMLInputElement>(`[data-field="${name}"]`);
    input?.addEventListener("change", () => {
      sheet.entries = { ...sheet.entries, fields: { ...sheet.entries.fields, [name]: input.value } };
    });
    return input ? [{ name, input }] : [];
  });
  return () => {
    for (const { name, input } of inputs)
      if (document.activeElement !== input) input.value = sheet.entries.fields[name] ?? "";
  };
}
