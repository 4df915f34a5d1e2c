// The clock of a wait. It counts only while the page is open and never by the time of day, so that it can lengthen a wait and not shorten
// one. When it is through it asks for the proof: no wait stands for one.

import { entryOf, withLine } from "../../language/outputs/manual/tablet/entries.ts";
import { leftText } from "../../language/outputs/manual/tablet/judge.ts";
import type { PlanLine } from "../../language/outputs/manual/tablet/plan.ts";
import { filled } from "../../language/outputs/manual/tablet/words.ts";
import { button, made, say } from "./dom.ts";
import type { Sheet } from "./sheet.ts";

export function wireWait(sheet: Sheet, { id, wait = 0 }: PlanLine, line: HTMLElement): () => void {
  const { words } = sheet,
    shows = made("p", { class: "clock" }),
    note = made("p", { class: "hint" }, words.waitNote);
  let running: ReturnType<typeof setInterval> | undefined,
    at = 0,
    ran = 0;
  const begin = button("", () => {
    if (running !== undefined) return;
    ran = entryOf(sheet.entries, id).waited ?? 0;
    at = performance.now();
    running = setInterval(tick, 1000);
    show();
  });
  const again = button(words.againWait, () => {
    stop();
    sheet.entries = withLine(sheet.entries, id, { waited: 0 });
    ran = 0;
    at = performance.now();
    running = setInterval(tick, 1000);
    show();
  });
  const place = made("div", { class: "wait-clock" }, shows, begin, again, note);
  line.querySelector(".under")?.append(place);

  const now = (): number =>
    running === undefined ? (entryOf(sheet.entries, id).waited ?? 0) : ran + (performance.now() - at) / 1000;

  function stop(): void {
    clearInterval(running);
    running = undefined;
  }

  function tick(): void {
    const waited = Math.min(wait, now());
    if (waited >= wait) {
      stop();
      sheet.entries = withLine(sheet.entries, id, { waited: wait });
      say(words.waitOver);
      return;
    }
    // Kept every five seconds: what is lost when the page goes is waited again.
    if (waited - (entryOf(sheet.entries, id).waited ?? 0) >= 5)
      sheet.entries = withLine(sheet.entries, id, { waited: Math.floor(waited) });
    else show();
  }

  function show(): void {
    // Entries that were taken away, or came from a file, begin anew.
    const kept = entryOf(sheet.entries, id).waited ?? 0;
    if (running !== undefined && kept === 0 && now() > 6) stop();
    const waited = now(),
      isOver = waited >= wait;
    shows.textContent = isOver
      ? words.waitOver
      : running === undefined
        ? ""
        : filled(words.left, leftText(wait - waited));
    begin.textContent = filled(words.startWait, leftText(wait - waited));
    begin.hidden = isOver || running !== undefined;
    again.hidden = waited === 0;
    note.hidden = isOver;
  }
  return show;
}
