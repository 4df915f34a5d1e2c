// The texts that are mutated: every example machine and every published procedure, each with the files that are checked with it.

import { globSync, readFileSync } from "node:fs";
import { basename, dirname, posix } from "node:path";
import { fileURLToPath } from "node:url";
import type { World } from "../../language/world/world.ts";

export const root = fileURLToPath(new URL("../../", import.meta.url));

/** One project: its own files, by path from the top of the repository. What they use is read too, and not mutated. */
export interface Scene {
  readonly name: string;
  readonly files: readonly string[];
}

const found = (pattern: string): string[] =>
  globSync(pattern, { cwd: root })
    .map((path) => path.replaceAll("\\", "/"))
    .sort();

/** A folder of `examples/` is one machine; of `tests/procedures/` a procedure and its printed refit are one. */
export function scenes(): Scene[] {
  const folders = Map.groupBy(
    found("examples/*/*.strip").filter((path) => !/^examples\/(?:mistakes|workshop)\//.test(path)),
    (path) => dirname(path),
  );
  const published = Map.groupBy(
    found("tests/procedures/*.strip"),
    (path) => `tests/procedures/${basename(path, ".strip").replace(/-refit$/, "")}`,
  );
  return [...folders, ...published].map(([name, files]) => ({ name, files }));
}

export const textOf = (path: string): string => readFileSync(posix.join(root, path), "utf8");

/** The repository as a world, with these texts in the place of its own. Pictures and recordings are there. */
export function worldWith(texts: ReadonlyMap<string, string>): World {
  const read = new Map<string, string | undefined>(texts);
  return {
    read(path) {
      if (!read.has(path)) {
        try {
          read.set(path, textOf(path));
        } catch {
          read.set(path, undefined);
        }
      }
      const text = read.get(path);
      return text === undefined ? { problem: "missing" } : { text };
    },
    exists: () => true,
    inside: () => true,
    resolve: (from, relative) => posix.join(posix.dirname(from), relative),
  };
}
