// Findings for a person at a terminal: the line, what is wrong, why, what to do; then what was not considered. Never a clearance.

import { reasonLines } from "./reasons.ts";
import { noAssessment, notConsidered, type Place, type Report, type Reported } from "./report.ts";
import { shownLine } from "./shown-line.ts";

export interface TextOptions {
  readonly colour: boolean;
  /** Only findings, no summary. */
  readonly quiet: boolean;
}

const colours = { error: "31", warning: "33", question: "36", hint: "2" } as const;

export function findingsAsText(report: Report, options: TextOptions): string {
  const paint = (code: string, text: string): string => (options.colour ? `\u001b[${code}m${text}\u001b[0m` : text);
  const out: string[] = [];
  for (const { file, says } of report.unreadable)
    out.push(`${visible(file)}: ${paint("31", "error")} cannot be read: ${says}`, "");
  for (const finding of report.findings) out.push(...one(finding, report, paint), "");
  if (!options.quiet) out.push(...summary(report));
  out.push(...unknown(report).map(visible));
  return out.length === 0 ? "" : `${out.join("\n").trimEnd()}\n`;
}

function one(finding: Reported, report: Report, paint: (code: string, text: string) => string): string[] {
  const builds = finding.builds.length > 0 ? ` (${finding.builds.join(", ")})` : "";
  const head = `${shown(finding.at)}: ${paint(colours[finding.severity], finding.severity)} ${visible(finding.says)}${builds}  ${paint("2", finding.code)}`;
  const out = [head, ...excerpt(finding.at, report, paint)];
  for (const { says, at, shows } of reasonLines(finding, report)) {
    const place = at ? paint("2", `${shows === undefined ? " " : ""} ${shown(at)}`) : "";
    out.push(`    ${visible(says)}${place}${shows === undefined ? "" : `  ${visible(shows)}`}`);
  }
  for (const fix of finding.fixes) out.push(`    to do: ${visible(fix.title)}`);
  return out;
}

const shown = (at: Place): string => `${visible(at.file)}:${at.line}:${at.column}`;

/** Of a longer line only what stands around the place is shown. */
const widestExcerpt = 160;

/** The source line with the place marked under it; tabs stay tabs so that the marks stand right. */
function excerpt(at: Place, report: Report, paint: (code: string, text: string) => string): string[] {
  const whole = report.lineAt(at.file, at.line);
  if (whole === undefined) return [];
  const from = Math.max(0, Math.min(at.column - 1 - widestExcerpt / 2, whole.length - widestExcerpt)),
    line = whole.slice(from, from + widestExcerpt);
  const start = at.column - 1 - from,
    end = Math.min(at.endLine === at.line ? at.endColumn - 1 - from : line.length, line.length),
    number = String(at.line);
  const before = visible(line.slice(0, start)).replace(/[^\t]/g, " "),
    marks = "^".repeat(Math.max(1, visible(line.slice(start, end)).length)),
    cut = from > 0 ? "…" : "";
  return [
    `  ${number} | ${cut}${visible(line)}${from + line.length < whole.length ? "…" : ""}`,
    `  ${" ".repeat(number.length)} | ${cut && " "}${before}${paint("1", marks)}`,
  ];
}

/** An author's text on a terminal: signs that steer the terminal, or turn its direction, are shown and not obeyed. */
export function visible(text: string): string {
  return text.replace(
    /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
}

function summary(report: Report): string[] {
  const out = [shownLine(report)];
  for (const allow of report.allows)
    out.push(`allowed: ${allow.code} at ${visible(allow.at.file)}:${allow.at.line}: ${visible(allow.reason)}`);
  out.push(...notConsidered(report).map(visible));
  out.push(noAssessment);
  return out;
}

/** What lacks a figure, and what that would let the tool check, a line each. */
const unknown = ({ unknowns = [] }: Report): string[] =>
  unknowns.flatMap(({ title, figures }) =>
    figures.map(
      ({ figure, of, wouldCheck }) =>
        `${title}: ${figure} not given for ${of.length}: ${[...new Set(of)].join(", ")}. It would let the tool check ${wouldCheck}`,
    ),
  );
