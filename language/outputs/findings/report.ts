// Findings with their places as lines and columns: what every format below prints. Paths are as the caller shows them.

import { severities, type Finding, type Span } from "../../findings/finding.ts";
import type { Surveyed, UnitSummary, UnitUnknowns } from "../../findings/surveyed.ts";
import { linesOf, positionAt, type Lines } from "../../syntax/index.ts";

/** Lines and columns from 1; columns count UTF-16 code units. The end is the first place after. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}

export interface Reported {
  readonly code: string;
  readonly severity: Finding["severity"];
  readonly says: string;
  readonly at: Place;
  readonly because: readonly { readonly says: string; readonly at?: Place }[];
  readonly fixes: readonly {
    readonly title: string;
    readonly certain: boolean;
    readonly edits: readonly { readonly at: Place; readonly text: string }[];
  }[];
  readonly builds: readonly string[];
}

export interface Report {
  readonly findings: readonly Reported[];
  readonly allows: readonly { readonly code: string; readonly reason: string; readonly at: Place }[];
  readonly unreadable: readonly { readonly file: string; readonly says: string }[];
  readonly units: readonly UnitSummary[];
  /** Figures that nobody gave, where that was asked for. */
  readonly unknowns?: readonly UnitUnknowns[];
  readonly procedures: number;
  readonly files: number;
  /** A line of a file by its shown path, counted from 1, for excerpts. */
  readonly lineAt: (file: string, line: number) => string | undefined;
}

/** `show` makes a path as the user sees it: relative to where he stands. `besides` are texts that findings speak of and that are no procedures. */
export function reportOf(
  checked: Surveyed,
  show: (path: string) => string,
  besides: ReadonlyMap<string, string> = new Map(),
): Report {
  const files = new Map<string, { readonly text: string; readonly lines: Lines }>(),
    names = new Map<string, string>();
  const shown = (path: string): string => {
    let name = names.get(path);
    if (name === undefined) names.set(path, (name = show(path)));
    return name;
  };
  const texts = new Map([...checked.texts, ...besides].map(([path, text]) => [shown(path), text]));
  const fileOf = (name: string): { readonly text: string; readonly lines: Lines } => {
    let file = files.get(name);
    if (!file) {
      const text = texts.get(name) ?? "";
      files.set(name, (file = { text, lines: linesOf(text) }));
    }
    return file;
  };
  const place = (span: Span): Place => {
    const file = shown(span.file),
      { lines } = fileOf(file),
      start = positionAt(lines, span.start),
      end = positionAt(lines, span.end);
    return { file, line: start.line + 1, column: start.column + 1, endLine: end.line + 1, endColumn: end.column + 1 };
  };
  return {
    findings: checked.findings.map((finding) => ({
      code: finding.code,
      severity: finding.severity,
      says: finding.says,
      at: place(finding.at),
      because: finding.because.map((b) => (b.at ? { says: b.says, at: place(b.at) } : { says: b.says })),
      fixes: finding.fixes.map((fix) => ({
        title: fix.title,
        certain: fix.certain,
        edits: fix.edits.map((edit) => ({ at: place(edit), text: edit.text })),
      })),
      builds: finding.builds,
    })),
    allows: checked.allows.map((allow) => ({ code: allow.code, reason: allow.reason, at: place(allow.at) })),
    unreadable: checked.unreadable.map(({ path, says }) => ({ file: shown(path), says })),
    units: checked.units.map((unit) => ({ ...unit, file: shown(unit.file) })),
    ...(checked.unknowns ? { unknowns: checked.unknowns.map((unit) => ({ ...unit, file: shown(unit.file) })) } : {}),
    procedures: checked.procedures,
    files: checked.texts.size,
    lineAt: (file, line) => {
      if (!texts.has(file)) return undefined;
      const { text, lines } = fileOf(file),
        start = lines.starts[line - 1];
      return start === undefined
        ? undefined
        : text.slice(start, lines.starts[line] ?? lines.length).replace(/[\r\n]+$/, "");
    },
  };
}

/** What a check ends with: 0 for nothing found, 1 for findings (`strict`: questions and hints too), 2 where a file could not be read. */
export function codeOf(report: Report, strict: boolean): number {
  if (report.unreadable.length > 0) return 2;
  return report.findings.some(({ severity }) => strict || severity === "error" || severity === "warning") ? 1 : 0;
}

export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

/** How many findings of each weight, heaviest first; empty where there are none. */
export function tally(report: Report): string {
  const counts = severities.map((severity) => ({
    severity,
    count: report.findings.filter((finding) => finding.severity === severity).length,
  }));
  return counts
    .filter(({ count }) => count > 0)
    .map(({ severity, count }) => counted(count, severity))
    .join(", ");
}

/** What no result of ours is: said with every one of them. */
export const noAssessment =
  "This is no risk assessment: the maker's data, local rules and authorised persons come first.";

/** What nobody has answered for: said whatever was found. */
export function notConsidered(report: Report): string[] {
  const lines: string[] = [];
  for (const unit of report.units) {
    if (unit.notConsidered.length > 0)
      lines.push(`${unit.title}: hazards not considered: ${unit.notConsidered.join(", ")}`);
    if (unit.massesMissing > 0)
      lines.push(`${unit.title}: mass not given for ${unit.massesMissing} of ${counted(unit.parts, "part")}`);
  }
  return lines;
}
