// Findings for a program: versioned, with a published schema (see schema.ts).

import { noAssessment, type Report } from "./report.ts";
import type { CheckJson } from "./schema.ts";

export function checkJson(report: Report): CheckJson {
  return {
    version: 1,
    findings: report.findings.map(({ code, severity, says, at, because, fixes, builds }) => ({
      code,
      severity,
      says,
      file: at.file,
      range: range(at),
      because: because.map((b) => (b.at ? { says: b.says, file: b.at.file, range: range(b.at) } : { says: b.says })),
      fixes: fixes.map((fix) => ({
        title: fix.title,
        certain: fix.certain,
        edits: fix.edits.map((edit) => ({ file: edit.at.file, range: range(edit.at), text: edit.text })),
      })),
      builds: [...builds],
    })),
    allows: report.allows.map(({ code, reason, at }) => ({ code, reason, file: at.file, range: range(at) })),
    unreadable: report.unreadable.map(({ file, says }) => ({ file, says })),
    summary: {
      procedures: report.procedures,
      files: report.files,
      units: report.units.map(({ unit, title, file, builds, notConsidered, parts, massesMissing }) => ({
        unit,
        title,
        file,
        builds,
        hazardsNotConsidered: [...notConsidered],
        parts,
        massesNotGiven: massesMissing,
      })),
      note: noAssessment,
    },
    ...(report.unknowns
      ? {
          unknowns: report.unknowns.map(({ unit, title, file, figures }) => ({
            unit,
            title,
            file,
            figures: figures.map(({ figure, of, wouldCheck }) => ({ figure, of: [...of], wouldCheck })),
          })),
        }
      : {}),
  };
}

const range = (at: {
  line: number;
  column: number;
  endLine: number;
  endColumn: number;
}): CheckJson["findings"][number]["range"] => ({
  start: { line: at.line, column: at.column },
  end: { line: at.endLine, column: at.endColumn },
});

export const findingsAsJson = (report: Report): string => `${JSON.stringify(checkJson(report), null, 2)}\n`;
