// `# allow CODE: reason` on the line before silences one finding there. It needs its reason, is printed where it applies, and is
// itself reported when it silences nothing.

import type { Finding, Span } from "../findings/finding.ts";
import type { SourceFile } from "../names/project.ts";
import { linesOf, positionAt, type Lines } from "../syntax/index.ts";

export interface Allow {
  readonly code: string;
  readonly reason: string;
  readonly at: Span;
  /** The line that it speaks of, from 0. */
  readonly line: number;
}

const known = new WeakMap<SourceFile, Lines>();

export function linesOfFile(file: SourceFile): Lines {
  let lines = known.get(file);
  if (!lines) known.set(file, (lines = linesOf(file.text)));
  return lines;
}

const form = /^#\s*allow\s+([a-z][a-z-]*\/[a-z][a-z-]*)\s*(?::\s*(.*))?$/;

export function allowsOf(file: SourceFile): Allow[] {
  const allows: Allow[] = [], { comments, tokens } = file.tree.scan;
  for (const comment of comments) {
    const match = form.exec(file.text.slice(comment.start, comment.end).trim());
    if (!match) continue;
    // At the end of a line it speaks of that line, alone of the next line that says something.
    const line = comment.ownLine ? (tokens[comment.before]?.line ?? comment.line + 1) : comment.line;
    allows.push({ code: match[1]!, reason: (match[2] ?? "").trim(), at: { file: file.path, start: comment.start, end: comment.end }, line });
  }
  return allows;
}

export interface Allowed {
  readonly findings: Finding[];
  /** Those that applied, for the summary and the manual. */
  readonly used: readonly Allow[];
}

export function applyAllows(findings: readonly Finding[], files: ReadonlyMap<string, SourceFile>, isCode: (code: string) => boolean): Allowed {
  const kept: Finding[] = [], used = new Set<Allow>(), byFile = new Map<string, Allow[]>();
  for (const file of files.values()) { const allows = allowsOf(file); if (allows.length > 0) byFile.set(file.path, allows); }
  if (byFile.size === 0) return { findings: [...findings], used: [] };
  for (const finding of findings) {
    const file = files.get(finding.at.file), line = file ? positionAt(linesOfFile(file), finding.at.start).line : -1;
    const allow = byFile.get(finding.at.file)?.find((a) => a.line === line && a.code === finding.code && a.reason !== "");
    if (allow) used.add(allow); else kept.push(finding);
  }
  for (const allows of byFile.values()) for (const allow of allows) {
    const say = (code: string, severity: Finding["severity"], says: string): void => { kept.push({ code, severity, says, at: allow.at, because: [], fixes: [], builds: [] }); };
    if (!isCode(allow.code)) say("allow/unknown", "warning", `${allow.code} is no check, so this allows nothing`);
    else if (allow.reason === "") say("allow/no-reason", "warning", `allow ${allow.code} needs its reason behind a colon`);
    else if (!used.has(allow)) say("allow/unused", "hint", `${allow.code} is not found here, so this allows nothing`);
  }
  return { findings: kept, used: [...used] };
}
