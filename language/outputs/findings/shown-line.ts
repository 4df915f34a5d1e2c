// One line on what was done, for formats that have room for no more.

import { counted, type Report } from "./report.ts";

export const shownLine = (report: Report): string => `${counted(report.procedures, "procedure")} performed, ${counted(report.files, "file")} read, nothing found by these checks`;
