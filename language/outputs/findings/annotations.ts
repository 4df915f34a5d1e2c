// Findings as annotation lines that build services read from a log: `::error file=…,line=…::text`.

import { plainReasons } from "./reasons.ts";
import { noAssessment, notConsidered, type Report } from "./report.ts";

const levels = { error: "error", warning: "warning", question: "notice", hint: "notice" } as const;

export function findingsAsAnnotations(report: Report): string {
  const lines = report.unreadable.map(
    ({ file, says }) => `::error file=${property(file)}::${data(`cannot be read: ${says}`)}`,
  );
  for (const finding of report.findings) {
    const { code, severity, says, at } = finding;
    const place = `file=${property(at.file)},line=${at.line},col=${at.column},endLine=${at.endLine},endColumn=${at.endColumn},title=${property(code)}`;
    lines.push(`::${levels[severity]} ${place}::${data([says, ...plainReasons(finding, report)].join("\n"))}`);
  }
  for (const says of [...notConsidered(report), noAssessment])
    lines.push(`::notice title=not considered::${data(says)}`);
  return `${lines.join("\n")}\n`;
}

const data = (text: string): string => text.replaceAll("%", "%25").replaceAll("\r", "%0D").replaceAll("\n", "%0A");
const property = (text: string): string => data(text).replaceAll(":", "%3A").replaceAll(",", "%2C");
