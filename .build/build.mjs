// Bundles what people run into dist/: the command line, the language server and the editor's extension, each minified, since
// loading is most of what a short run costs.

import { chmodSync, existsSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { asAscii } from "./ascii.mjs";
import { project, setUp } from "./setup.mjs";

/** A file of each layer that the server is made of: with what it alone brings it becomes a part. */
const serverParts = [
  "language/syntax/index.ts",
  "language/vocabulary/index.ts",
  "language/figures/figure.ts",
  "language/model/build-model.ts",
  "language/bench/perform-procedure.ts",
  "language/checks/registry.ts",
  "language/workspace/check-project.ts",
  "language/workspace/settings-schema.ts",
  "language/outputs/lines/figures.ts",
  "language/outputs/manual/manual.ts",
  "language/outputs/wording/de/de.ts",
  "language/outputs/wording/fr/fr.ts",
  "language/outputs/wording/es/es.ts",
  "language/outputs/wording/languages.ts",
  "language/assist/complete.ts",
  "server/features/index.ts",
  "node_modules/vscode-languageserver/lib/node/main.js",
  "node_modules/vscode-jsonrpc/lib/node/main.js",
];

export async function buildAll({ only } = {}) {
  const { build } = await import("esbuild");
  const common = {
    bundle: true,
    minify: true,
    legalComments: "none",
    logLevel: "warning",
    absWorkingDir: project,
    target: "node22",
    platform: "node",
  };
  const bundles = {
    // ES modules in chunks: a command that needs no parser (calc, --version) never loads it.
    "command line": {
      ...common,
      entryPoints: { stripdown: "language/cli/start.ts" },
      outdir: "dist/cli",
      format: "esm",
      external: ["sharp"], // native, and only there where it could be installed
      splitting: true,
      outExtension: { ".js": ".mjs" },
      chunkNames: "[name]-[hash]",
    },
    // In parts that follow the layers: the engine reads a program file by file, and what it takes to read one is what it took for the one
    // before. A single file of 1.4 MB took 13 MB that the process never gave back.
    server: {
      ...common,
      entryPoints: { main: "server/main.ts", ...Object.fromEntries(serverParts.map((path, i) => [`part-${i}`, path])) },
      outdir: "dist/server",
      format: "esm",
      splitting: true,
      outExtension: { ".js": ".mjs" },
      chunkNames: "[name]-[hash]",
      banner: { js: 'import{createRequire as requireIn}from"node:module";const require=requireIn(import.meta.url);' },
    },
    "server in a worker": {
      ...common,
      entryPoints: { "server-worker": "server/worker.ts" },
      outdir: "dist",
      format: "iife",
      platform: "browser",
      target: "es2023",
    },
    client: {
      ...common,
      entryPoints: { client: "client/extension.ts" },
      outdir: "dist",
      format: "cjs",
      external: ["vscode"],
      outExtension: { ".js": ".cjs" },
    },
    "client in a browser": {
      ...common,
      entryPoints: { "client-browser": "client/browser.ts" },
      outdir: "dist",
      format: "cjs",
      platform: "browser",
      target: "es2023",
      external: ["vscode"], // the worker's host asks for .js
    },
  };
  const made = [];
  for (const [name, options] of Object.entries(bundles)) {
    if (only !== undefined && name !== only) continue;
    if (!existsSync(join(project, Object.values(options.entryPoints)[0]))) continue;
    if (options.splitting) rmSync(join(project, options.outdir), { recursive: true, force: true }); // old chunks
    const { metafile } = await build({ ...options, metafile: true });
    const used = name === "server" ? reached(metafile, "dist/server/main.mjs") : undefined;
    for (const one of Object.keys(metafile.outputs)) {
      const path = join(project, one);
      if (used?.has(one) === false) rmSync(path);
      else writeFileSync(path, asAscii(readFileSync(path, "utf8")));
    }
    if (name === "command line") chmodSync(join(project, options.outdir, "stripdown.mjs"), 0o755); // run by its name
    // The name that clients start. What stays of a program that is read makes the room for new objects grow, to 8 or 16 MB, and it keeps
    // that: it stays small until server/memory.ts says how much the texts need.
    if (name === "server")
      writeFileSync(
        join(project, "dist/server.cjs"),
        'require("node:v8").setFlagsFromString("--semi-space-growth-factor=1");\nimport("./server/main.mjs");\n',
      );
    made.push(name);
  }
  return made;
}

/** What a bundle loads when it starts: not the doors of its parts, which nobody goes through. */
function reached(metafile, from) {
  const paths = new Set([from]);
  for (const path of paths) for (const one of metafile.outputs[path].imports) if (!one.external) paths.add(one.path);
  return paths;
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  setUp();
  const made = await buildAll();
  console.log(`Built: ${made.join(", ")}`);
}
