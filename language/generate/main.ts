// Writes every generated file of the project, or with --check says which differ from what would be written.

import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { generators } from "./generators.ts";

const project = fileURLToPath(new URL("../..", import.meta.url));

/** Files whose text on disk differs from the generated one, with both texts. With `write` each is written before the next is made, since one may rest on another. */
export async function drift(write = false): Promise<{ path: string; text: string; had: string | undefined }[]> {
  const changed: { path: string; text: string; had: string | undefined }[] = [];
  for (const load of generators)
    for (const { path, text } of [await (await load())(project)].flat()) {
      const target = join(project, path),
        had = read(target);
      if (had === text) continue;
      changed.push({ path, text, had });
      if (!write) continue;
      mkdirSync(dirname(target), { recursive: true });
      writeFileSync(target, text);
    }
  return changed;
}

function read(path: string): string | undefined {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return undefined;
  }
}

if (import.meta.main) {
  const check = process.argv.includes("--check"),
    changed = await drift(!check);
  for (const { path } of changed) console.log(`${check ? "differs" : "written"}: ${path}`);
  if (check && changed.length > 0) {
    console.error("Run: npm run generate");
    process.exitCode = 1;
  }
}
