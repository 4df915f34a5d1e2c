// One line on what was done, for formats that have room for no more. It tells what was found, never that nothing is there.

import { counted, tally, type Report } from "./report.ts";

export function shownLine(report: Report): string {
  const found = tally(report),
    done = `${counted(report.procedures, "procedure")} performed, ${counted(report.files, "file")} read`;
  return `${done}: ${found === "" ? "nothing found by these checks" : found}`;
}
