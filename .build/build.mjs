// Bundles what people run into dist/: the command line, the language server and the editor's extension, each minified, since
// loading is most of what a short run costs.

import { chmodSync, existsSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { asAscii } from "./ascii.mjs";
import { project, setUp } from "./setup.mjs";

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
    server: {
      ...common,
      entryPoints: { server: "server/main.ts" },
      outdir: "dist",
      format: "cjs",
      outExtension: { ".js": ".cjs" },
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
    for (const path of Object.keys(metafile.outputs).map((one) => join(project, one)))
      writeFileSync(path, asAscii(readFileSync(path, "utf8")));
    if (options.splitting) chmodSync(join(project, options.outdir, "stripdown.mjs"), 0o755); // run by its name
    made.push(name);
  }
  return made;
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  setUp();
  const made = await buildAll();
  console.log(`Built: ${made.join(", ")}`);
}
