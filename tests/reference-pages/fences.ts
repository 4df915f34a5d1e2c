// The examples of the pages: what stands in a fence marked `strip` is checked as a reader would check it. A fence that begins with
// `# stage` shows a few lines only; they are set inside a small machine, in its unit, its step or its procedure: the first that reads them with the fewest errors.

import { globSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { linesOf, parse, positionAt } from "../../language/syntax/index.ts";
import { checkProject } from "../../language/workspace/check-project.ts";
import { marked, type Mark } from "../support/marked.ts";
import { memoryWorld } from "../support/memory-world.ts";

export const project = fileURLToPath(new URL("../..", import.meta.url));
export const read = (path: string): string => readFileSync(join(project, path), "utf8");

/** Every page of the project that holds text for readers. */
export const pages: readonly string[] = [
  "README.md",
  "DEVELOPERS.md",
  ...globSync("language/reference/*.md", { cwd: project }),
]
  .map((page) => page.replaceAll("\\", "/"))
  .sort();

export interface Fence {
  readonly page: string;
  /** Of its first line in the page, from 1. */
  readonly line: number;
  readonly text: string;
}

/** The fences of a page with this mark, in order. */
export function fencesOf(page: string, mark: string): Fence[] {
  const lines = read(page).split("\n"),
    found: Fence[] = [];
  let from = -1,
    language = "";
  lines.forEach((line, i) => {
    const fence = /^```(.*)$/.exec(line);
    if (!fence) return;
    if (from < 0) {
      from = i + 1;
      language = fence[1]!;
      return;
    }
    if (language === mark) found.push({ page, line: from + 1, text: `${lines.slice(from, i).join("\n")}\n` });
    from = -1;
  });
  return found;
}

/** The machine that lines marked `# stage` are set in, as language.md shows it, with a place in its unit, its procedure and its step. */
export function stageWith(unit: string, procedure: string, step: string): string {
  const [machine] = fencesOf("language/reference/language.md", "strip").filter(({ text }) =>
    text.includes('unit stage "Stage"'),
  );
  const text = machine!.text,
    end = text.lastIndexOf("}\n");
  return `${text.slice(0, end)}${unit}}\nprocedure try "Try it" for stage {\n  aim none\n${procedure}  step "Here" {\n${step}  }\n}\n`;
}

/** A fence as a whole file. */
export function whole({ text }: Fence): string {
  const [first, ...rest] = text.split("\n");
  if (first !== "# stage") return text;
  const body = rest.join("\n"),
    places = [stageWith(body, "", ""), stageWith("", "", body), stageWith("", body, "")];
  const errors = places.map((one) => parse([...marked(one).files.values()][0]!).errors.length);
  return places[errors.indexOf(Math.min(...errors))]!;
}

const folder = "/examples/dairy-pump/";

/** What is found in a fence and what its marks say, each as `line severity code: words`. Lines count in the whole file. */
export function judged(text: string): {
  readonly found: string[];
  readonly wanted: string[];
  readonly summary: string;
} {
  const { files, marks } = marked(text),
    all = new Map<string, string>();
  for (const path of ["examples/workshop/workshop.strip", "examples/dairy-pump/photos/impeller.jpg"])
    all.set(`/${path}`, path.endsWith(".strip") ? read(path) : "");
  for (const [name, body] of files) all.set(folder + name, body);
  const roots = [...files.keys()].map((name) => folder + name);
  const { findings } = checkProject(memoryWorld(all, [], "/examples/"), roots);
  const own = findings.filter((f) => f.at.file.startsWith(folder));
  const lineOf = (f: (typeof own)[number]): number => positionAt(linesOf(all.get(f.at.file)!), f.at.start).line;
  const wanted = marks.map(shownMark).sort();
  // A hint about the machine around, which no example speaks of, is none about the example.
  const found = own
    .filter((f) => f.severity !== "hint" || marks.some((m) => m.line === lineOf(f) && m.says === f.says))
    .map((f) => `${lineOf(f) + 1} ${f.severity} ${f.code}: ${f.says}`)
    .sort();
  return { found, wanted, summary: own.map((f) => `${lineOf(f) + 1} ${f.severity} ${f.code}: ${f.says}`).join("\n") };
}

const shownMark = (mark: Mark): string => `${mark.line + 1} ${mark.severity} ${mark.code}: ${mark.says}`;
