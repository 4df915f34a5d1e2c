// Runs texts of a project through the compiler and hands back what the outputs are made from.

import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import type { Performance } from "../../language/bench/trace.ts";
import type { Finding } from "../../language/findings/finding.ts";
import type { OutputInput, OutputOptions } from "../../language/outputs/output.ts";
import { defaultWording } from "../../language/outputs/wording/languages.ts";
import { allowedOf } from "../../language/workspace/allowed.ts";
import { checkProject } from "../../language/workspace/check-project.ts";
import { defaultSettings } from "../../language/world/settings.ts";
import { memoryWorld } from "../support/memory-world.ts";

const root = join(import.meta.dirname, "../..");

export interface Compiled extends OutputInput {
  readonly findings: readonly Finding[];
}

/** Files by path below `/project/`. */
export function compiled(
  files: Readonly<Record<string, string>>,
  roots: readonly string[] = Object.keys(files),
  pictures: readonly string[] = [],
  builds: "one build" | "every build" = "one build",
): Compiled {
  const world = memoryWorld(
    new Map(
      [...Object.entries(files), ...pictures.map((path): [string, string] => [path, ""])].map(([name, text]) => [
        `/project/${name}`,
        text,
      ]),
    ),
    [],
    "/project/",
  );
  const checked = checkProject(
    world,
    roots.map((name) => `/project/${name}`),
    { settings: defaultSettings },
  );
  const performances: Performance[] = [],
    seen = new Set<string>();
  for (const performance of checked.performances) {
    const { procedure, model } = performance,
      key = `${procedure.at.file} ${procedure.id} ${builds === "every build" ? model.build : ""}`;
    if (!seen.has(key)) {
      seen.add(key);
      performances.push(performance);
    }
  }
  return {
    performances,
    texts: new Map([...checked.project.files].map(([path, file]) => [path, file.text])),
    findings: checked.findings,
    openFindings: checked.findings.filter(({ severity }) => severity !== "hint").length,
    allowed: allowedOf(checked),
  };
}

/** One file that holds everything. */
export const compiledText = (text: string): Compiled => compiled({ "machine.strip": text });

/** Files of `examples/`, by their paths in it. */
export function compiledExample(...paths: readonly string[]): Compiled {
  const files: Record<string, string> = {},
    queue = [...paths];
  for (let path = queue.shift(); path !== undefined; path = queue.shift()) {
    if (files[path] !== undefined) continue;
    const text = readFileSync(join(root, "examples", path), "utf8");
    files[path] = text;
    for (const [, used = ""] of text.matchAll(/^use "([^"]+)"/gm))
      queue.push(join(dirname(path), used).replaceAll("\\", "/"));
  }
  const media = Object.entries(files).flatMap(([path, text]) =>
    [...text.matchAll(/\b(?:photo|video) "([^"]+)"/g)].map(([, name = ""]) =>
      join(dirname(path), name).replaceAll("\\", "/"),
    ),
  );
  return compiled(files, paths, media);
}

export const options: OutputOptions = {
  wording: defaultWording,
  system: "metric",
  showPath: (path) => path.replace(/^\/project\//, ""),
};
