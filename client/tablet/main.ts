// The script of the manual's page. With it the page keeps ticks, counts and readings; without it the page is complete for a pen. It asks
// nothing of any network.

import { entryOf, type Entries } from "../../language/outputs/manual/tablet/entries.ts";
import { asksAbout, proofsTaken, withoutProofs } from "../../language/outputs/manual/tablet/judge.ts";
import { filled } from "../../language/outputs/manual/tablet/words.ts";
import { wireBolts } from "./bolts.ts";
import { button, linkTo, made, say } from "./dom.ts";
import { wireCount, wireSignature, wireTorque } from "./figures.ts";
import { wireInstruments } from "./instruments.ts";
import { wireNotAsWritten } from "./not-as-written.ts";
import { wireReading } from "./readings.ts";
import { beginAnother, loadRecord, saveRecord, wireFields } from "./record-file.ts";
import { Sheet, type TabletData } from "./sheet.ts";
import { wireTick } from "./ticks.ts";
import { wireWait } from "./wait.ts";

const data = document.getElementById("tablet-data")?.textContent;
if (data) start(new Sheet(JSON.parse(data) as TabletData));

function start(sheet: Sheet): void {
  const always: (() => void)[] = [wireFields(sheet), wireInstruments(sheet)],
    lines: ShownLine[] = [];
  for (const plan of sheet.plan.lines) {
    const line = document.getElementById(plan.id);
    if (!line) continue;
    const shows: (() => void)[] = [];
    for (const count of plan.counts ?? []) shows.push(wireCount(sheet, plan, count, line));
    for (const { item } of plan.torques ?? []) shows.push(wireTorque(sheet, plan, item, line));
    (plan.readings ?? []).forEach((reading, i) => shows.push(wireReading(sheet, plan, reading, i + 1, line)));
    if (plan.sign) shows.push(wireSignature(sheet, plan, line));
    if (plan.wait !== undefined) shows.push(wireWait(sheet, plan, line));
    if (plan.order !== undefined) shows.push(wireBolts(sheet, plan, line));
    shows.push(wireNotAsWritten(sheet, plan, line), wireTick(sheet, plan, line));
    lines.push({ asks: asksAbout(plan), shows });
  }
  always.push(wireBar(sheet));
  let before: Entries | undefined;
  const show = (): void => {
    const last = before,
      now = sheet.entries;
    before = now;
    // The day and the instruments are told at any reading; else a change is seen at its own line and at those that wait for it.
    const isAll = last === undefined || last.on !== now.on || last.instruments !== now.instruments;
    for (const { asks, shows } of lines)
      if (isAll || asks.some((id) => last.lines[id] !== now.lines[id])) for (const each of shows) each();
    for (const each of always) each();
  };
  sheet.onChange(show);
  show();
  askAboutBreak(sheet);
}

interface ShownLine {
  /** The lines by whose entries it looks as it does. */
  readonly asks: readonly string[];
  readonly shows: readonly (() => void)[];
}

function wireBar(sheet: Sheet): () => void {
  const bar = document.getElementById("tablet")!,
    part = <T extends HTMLElement>(name: string): T => document.getElementById(`tablet-${name}`) as T,
    progress = part<HTMLProgressElement>("progress"),
    count = part("count"),
    file = part<HTMLInputElement>("file");
  for (const hidden of document.querySelectorAll<HTMLElement>("[data-script]")) hidden.hidden = false;
  bar.hidden = false;
  const open = (): string | undefined =>
    sheet.plan.lines.find(({ id }) => entryOf(sheet.entries, id).done !== true)?.id;
  part("next").addEventListener("click", () => {
    const line = document.getElementById(open() ?? "");
    line?.scrollIntoView({ block: "center" });
    line?.querySelector<HTMLInputElement>("input[type=checkbox]")?.focus({ preventScroll: true });
  });
  part("save").addEventListener("click", () => {
    saveRecord(sheet);
  });
  part("load").addEventListener("click", () => {
    file.click();
  });
  file.addEventListener("change", () => {
    const [chosen] = file.files ?? [];
    file.value = "";
    if (chosen) void loadRecord(sheet, chosen);
  });
  part("clear").addEventListener("click", () => {
    beginAnother(sheet);
  });
  return () => {
    const all = sheet.plan.lines.length,
      done = sheet.plan.lines.filter(({ id }) => entryOf(sheet.entries, id).done === true).length;
    progress.max = all;
    progress.value = done;
    count.textContent = filled(sheet.words.progress, done, all);
    if (!sheet.kept) say(sheet.words.notKept);
  };
}

/** Entries that were there before: whether the work was broken off nobody but the reader knows. */
function askAboutBreak(sheet: Sheet): void {
  const proofs = proofsTaken(sheet.plan, sheet.entries);
  if (proofs.length === 0) return;
  const { words } = sheet;
  const panel = made(
    "section",
    { class: "break", "aria-labelledby": "tablet-break" },
    made("h2", { id: "tablet-break" }, words.breakTitle),
    made("p", {}, words.breakSays),
    made("ul", {}, ...proofs.map(linkTo)),
    button(words.breakAgain, () => {
      sheet.entries = withoutProofs(sheet.plan, sheet.entries);
      panel.remove();
    }),
    button(words.breakNone, () => {
      panel.remove();
    }),
  );
  document.querySelector("main")?.before(panel);
}
