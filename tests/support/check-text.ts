// Checks a text in the notation of marked.ts and compares what is found with what is marked: every finding must be marked, and every
// mark found.

import { expect } from "vitest";
import type { Finding } from "../../language/findings/finding.ts";
import { linesOf, positionAt } from "../../language/syntax/index.ts";
import { checkProject, type Checked } from "../../language/workspace/check-project.ts";
import { defaultSettings, type Settings } from "../../language/world/settings.ts";
import { readSettings } from "../../language/workspace/settings-schema.ts";
import { marked, type Mark } from "./marked.ts";
import { memoryWorld } from "./memory-world.ts";
import { staged, type Staged } from "./stages.ts";

const folder = "/project/";

export interface CheckedText {
  readonly checked: Checked;
  /** Texts by name, as checked: with what the stage put around them. */
  readonly texts: ReadonlyMap<string, string>;
  /** What was found, in the form of a mark. */
  readonly found: readonly (Mark & { readonly finding: Finding })[];
  readonly marks: readonly Mark[];
}

/** Checks every file of the text as one project. A file `stripdown.json` among them gives the settings. */
export function checkText(text: string, settings: Settings = defaultSettings): CheckedText {
  const { files, marks } = marked(text),
    texts = new Map<string, string>(),
    shift = new Map<string, Staged>();
  let used = settings,
    more: readonly Finding[] = [];
  for (const [name, body] of files) {
    if (name === "stripdown.json") {
      const read = readSettings(body, folder + name);
      if ("problem" in read) throw new Error(read.problem);
      used = { ...read.settings, severity: { ...settings.severity, ...read.settings.severity } };
      more = read.findings;
      texts.set(name, body);
      continue;
    }
    const stage = name.endsWith(".strip") ? staged(body) : { text: body, lines: 0, columns: 0 };
    shift.set(name, stage);
    texts.set(name, stage.text);
  }
  const world = memoryWorld(new Map([...texts].map(([name, body]) => [folder + name, body])), [], folder);
  const roots = [...texts.keys()].filter((name) => name.endsWith(".strip")).map((name) => folder + name);
  const checked = checkProject(world, roots, { settings: used });
  const found = [...checked.findings, ...more].map((finding) => {
    const name = finding.at.file.slice(folder.length),
      lines = linesOf(texts.get(name) ?? ""),
      start = positionAt(lines, finding.at.start),
      end = positionAt(lines, finding.at.end);
    const width = (texts.get(name) ?? "").split("\n")[start.line]!.length,
      { lines: down = 0, columns: right = 0 } = shift.get(name) ?? {};
    return {
      file: name,
      line: start.line - down,
      start: start.column - right,
      end: Math.max(start.column + 1, end.line === start.line ? end.column : width) - right,
      says: finding.says,
      severity: finding.severity,
      code: finding.code,
      because: finding.because.map((b) => b.says),
      finding,
    };
  });
  return { checked, texts, found, marks };
}

const shown = (mark: Mark, like: Mark | undefined): string =>
  [
    `${mark.file}:${mark.line + 1}:${mark.start + 1}-${mark.end + 1} ${like?.severity === undefined && like !== undefined ? "" : `${mark.severity} ${mark.code}: `}${mark.says}`,
    ...((like?.because ?? mark.because).length > 0 ? mark.because.map((says) => `  because: ${says}`) : []),
  ].join("\n");

/** Every finding is marked, every mark is found; severity, code and reasons are compared where the mark names them. */
export function expectMarked(text: string, settings?: Settings): CheckedText {
  const result = checkText(text, settings),
    { marks } = result;
  const found = [...result.found].sort(byPlace),
    wanted = [...marks].sort(byPlace);
  expect(found.map((one, i) => shown(one, wanted[i]))).toEqual(wanted.map((one) => shown(one, one)));
  return result;
}

function byPlace(a: Mark, b: Mark): number {
  return a.file !== b.file ? (a.file < b.file ? -1 : 1) : a.line - b.line || a.start - b.start;
}

/** The texts after the edits of a fix. */
export function applied(
  texts: ReadonlyMap<string, string>,
  edits: readonly { readonly file: string; readonly start: number; readonly end: number; readonly text: string }[],
): Map<string, string> {
  const out = new Map(texts);
  for (const edit of [...edits].sort((a, b) => b.start - a.start)) {
    const name = edit.file.slice(folder.length),
      text = out.get(name) ?? "";
    out.set(name, text.slice(0, edit.start) + edit.text + text.slice(edit.end));
  }
  return out;
}

/** Several texts in the notation of marked.ts again. */
export const joined = (texts: ReadonlyMap<string, string>): string =>
  [...texts].map(([name, text]) => `#- ${name}\n${text}`).join("");
