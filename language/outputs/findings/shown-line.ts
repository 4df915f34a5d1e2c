// One line on what was done, for formats that have room for no more. It tells what was found, never that nothing is there.

import { counted, tally, type Report } from "./report.ts";

export function shownLine(report: Report): string {
  const found = tally(report),
    unread = report.unreadable.length,
    done = `${counted(report.procedures, "procedure")} performed, ${counted(report.files, "file")} read${unread > 0 ? `, ${unread} that could not be read` : ""}`;
  // Of what was not read nothing is told at all.
  return found === "" && report.files === 0 && unread > 0
    ? done
    : `${done}: ${found === "" ? "nothing found by these checks" : found}`;
}
