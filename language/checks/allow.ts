// `# allow CODE: reason` on the line before silences one finding there. It needs its reason, is printed where it applies, and is
// itself reported when it silences nothing.

import type { Finding } from "../findings/finding.ts";
import type { Allow } from "../findings/surveyed.ts";
import { kept } from "../model/kept.ts";
import type { SourceFile } from "../names/project.ts";
import type { Check } from "./check.ts";
import { mayMissALine } from "./line-missing.ts";
import { linesOf, positionAt, type Lines } from "../syntax/index.ts";

const known = kept<SourceFile, Lines>();

export function linesOfFile(file: SourceFile): Lines {
  return known(file, () => linesOf(file.text));
}

const form = /^#\s*allow\s+([a-z][a-z-]*\/[a-z][a-z-]*)\s*(?::\s*(.*))?$/;

const allowed = kept<SourceFile, readonly Allow[]>();

export const allowsOf = (file: SourceFile): readonly Allow[] => allowed(file, () => read(file));

function read(file: SourceFile): Allow[] {
  const allows: Allow[] = [],
    { comments, tokens } = file.tree.scan;
  for (const comment of comments) {
    const match = form.exec(file.text.slice(comment.start, comment.end).trim());
    if (!match) continue;
    // At the end of a line it speaks of that line, alone of the next line that says something.
    const line = comment.ownLine ? (tokens[comment.before]?.line ?? comment.line + 1) : comment.line;
    allows.push({
      code: match[1]!,
      reason: (match[2] ?? "").trim(),
      at: { file: file.path, start: comment.start, end: comment.end },
      line,
    });
  }
  return allows;
}

/** Does the author allow this code at this line? */
export type IsAllowed = (finding: Pick<Finding, "code" | "at">) => boolean;

export function allowedIn(files: ReadonlyMap<string, SourceFile>): IsAllowed {
  return ({ code, at }) => {
    const file = files.get(at.file),
      allows = file ? allowsOf(file) : [];
    if (!allows.some((allow) => allow.code === code)) return false;
    const { line } = positionAt(linesOfFile(file!), at.start);
    return allows.some((allow) => allow.code === code && allow.line === line);
  };
}

export interface Allowed {
  readonly findings: Finding[];
  /** Those that applied, for the summary and the manual. */
  readonly used: readonly Allow[];
}

/** What the run knows of the codes and the files. */
export interface AllowContext {
  /** The check of a code; undefined where there is none. */
  check(code: string): Check | undefined;
  severity(check: Check): Finding["severity"] | "off";
  /** Everything that could be found in this file was looked for: only then can an allow be said to silence nothing. */
  complete(file: SourceFile): boolean;
}

/** Takes away what is allowed, one finding for each allow, and reports those that allow nothing. */
export function applyAllows(
  findings: readonly Finding[],
  files: ReadonlyMap<string, SourceFile>,
  context: AllowContext,
): Allowed {
  const kept: Finding[] = [],
    used = new Set<Allow>(),
    byFile = new Map<string, readonly Allow[]>();
  for (const file of files.values()) {
    const allows = allowsOf(file);
    if (allows.length > 0) byFile.set(file.path, allows);
  }
  if (byFile.size === 0) return { findings: [...findings], used: [] };
  for (const finding of findings) {
    const file = files.get(finding.at.file),
      line = file ? positionAt(linesOfFile(file), finding.at.start).line : -1;
    const allow = byFile
      .get(finding.at.file)
      ?.find((a) => a.line === line && a.code === finding.code && a.reason !== "" && !used.has(a));
    if (allow) used.add(allow);
    else kept.push(finding);
  }
  // The line that it spoke of may be the one that is missing.
  const isLost = kept.some((one) => one.code === "names/unknown" || mayMissALine(one)),
    found = [...kept];
  // Where another code speaks of its own line, it is that line which is meant.
  const isMet = (file: SourceFile, { line }: Allow): boolean =>
    found.some(({ at }) => at.file === file.path && positionAt(linesOfFile(file), at.start).line === line);
  for (const [path, allows] of byFile)
    for (const allow of allows) {
      const say = (code: string, says: string): void => {
        const check = context.check(code)!,
          severity = context.severity(check);
        if (severity !== "off") kept.push({ code, severity, says, at: allow.at, because: [], fixes: [], builds: [] });
      };
      if (!context.check(allow.code)) say("allow/unknown", `${allow.code} is no check, so this allows nothing`);
      else if (allow.reason === "") say("allow/no-reason", `allow ${allow.code} needs its reason behind a colon`);
      else if (!used.has(allow) && (!isLost || isMet(files.get(path)!, allow)) && context.complete(files.get(path)!))
        say("allow/unused", `${allow.code} is not found here, so this allows nothing`);
    }
  return { findings: kept, used: [...used] };
}
