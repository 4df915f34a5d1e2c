// What the command line loads for the check of one file: start-up is most of its time, so that other outputs, papers and schemas wait
// until a command asks for them. Read from the bundle's own list of what stands in which chunk.

import { build } from "esbuild";
import { fileURLToPath } from "node:url";
import { beforeAll, expect, test } from "vitest";

const entries = ["language/cli/process-io.ts", "language/cli/commands/check.ts"];
let loaded: string[] = [];

beforeAll(async () => {
  const { metafile } = await build({
    entryPoints: entries,
    absWorkingDir: fileURLToPath(new URL("../..", import.meta.url)),
    outdir: "dist",
    write: false,
    metafile: true,
    bundle: true,
    splitting: true,
    format: "esm",
    platform: "node",
    external: ["sharp"],
    logLevel: "error",
  });
  const chunks = new Set<string>(),
    load = (chunk: string): void => {
      if (chunks.has(chunk)) return;
      chunks.add(chunk);
      for (const { path, kind, external } of metafile.outputs[chunk]!.imports)
        if (kind === "import-statement" && !external) load(path);
    };
  for (const [chunk, { entryPoint }] of Object.entries(metafile.outputs))
    if (entryPoint !== undefined && entries.includes(entryPoint)) load(chunk);
  loaded = [...chunks].flatMap((chunk) => Object.keys(metafile.outputs[chunk]!.inputs)).sort();
});

test("the language is among it", () => {
  expect(loaded).toContain("language/bench/perform-procedure.ts");
  expect(loaded).toContain("language/syntax/rules.ts");
});

test("of the outputs only that of findings and what may be written over, of the commands only this one", () => {
  const others = loaded.filter(
    (path) =>
      (path.startsWith("language/outputs/") &&
        !path.startsWith("language/outputs/findings/") &&
        path !== "language/outputs/made.ts") ||
      (path.startsWith("language/cli/commands/") && !path.endsWith("/check.ts")) ||
      path.startsWith("language/cli/pdf/") ||
      path.startsWith("language/assist/"),
  );
  expect(others).toEqual([]);
});

test("of the packages only the parser's", () => {
  const packages = new Set(loaded.flatMap((path) => /node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(path)?.[1] ?? []));
  expect([...packages].filter((name) => name !== "chevrotain" && !name.startsWith("@chevrotain/"))).toEqual([]);
});
