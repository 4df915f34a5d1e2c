// Writes every generated file of the project, or with --check says which differ from what would be written.

import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { generators } from "./generators.ts";

const project = fileURLToPath(new URL("../..", import.meta.url));

/** Files whose text on disk differs from the generated one, with both texts. */
export async function drift(): Promise<{ path: string; text: string; had: string | undefined }[]> {
  const changed: { path: string; text: string; had: string | undefined }[] = [];
  for (const load of generators) for (const { path, text } of [await (await load())(project)].flat()) {
    const had = read(join(project, path));
    if (had !== text) changed.push({ path, text, had });
  }
  return changed;
}

function read(path: string): string | undefined {
  try { return readFileSync(path, "utf8"); } catch { return undefined; }
}

if (import.meta.main) {
  const changed = await drift(), check = process.argv.includes("--check");
  for (const { path, text } of changed) {
    console.log(`${check ? "differs" : "written"}: ${path}`);
    if (check) continue;
    mkdirSync(dirname(join(project, path)), { recursive: true });
    writeFileSync(join(project, path), text);
  }
  if (check && changed.length > 0) { console.error("Run: npm run generate"); process.exitCode = 1; }
}
