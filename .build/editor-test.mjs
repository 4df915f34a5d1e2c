// Runs the editor tests inside a real VS Code, on the package as it is shipped, in a copy of the examples; then in other editors' clients.
//   EDITOR_HOST=browser  the server in .editor/ (editor-install.mjs) with a headless Chromium
//   EDITOR_HOST=desktop  the VS Code of @vscode/test-electron, downloaded once
// Without EDITOR_HOST: browser where .editor/ is there, else desktop.

import { execFileSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import { makePackage } from "./editor-package.mjs";
import { root, serverHome, testModule, testResult, unpacked } from "./editor-paths.mjs";

const { build } = await import("esbuild");
const { path: vsix } = await makePackage();
rmSync(unpacked, { recursive: true, force: true });
mkdirSync(`${root}/out/vsix`, { recursive: true });
unzip(vsix, `${root}/out/vsix`);
cpSync(`${root}/out/vsix/extension`, unpacked, { recursive: true });
await build({ entryPoints: [`${root}/tests/editor/index.ts`], outfile: testModule, bundle: true, platform: "node", format: "cjs", target: "node22", external: ["vscode"], logLevel: "warning" });

const workspace = `${root}/out/editor-workspace`;
rmSync(workspace, { recursive: true, force: true });
for (const folder of ["mooring-winch", "workshop"]) cpSync(`${root}/examples/${folder}`, `${workspace}/${folder}`, { recursive: true });

rmSync(testResult, { force: true });
process.env.EDITOR_TEST_RESULT = testResult;
const host = process.env.EDITOR_HOST ?? (existsSync(serverHome) ? "browser" : "desktop"), started = performance.now();
const { run } = await import(`./editor-${host}.mjs`);
const code = await run({ workspace }).catch((error) => { console.error(error.message ?? error); return 1; });

const { vscode = "?", results = [] } = existsSync(testResult) ? JSON.parse(readFileSync(testResult, "utf8")) : {};
if (results.length === 0) results.push({ name: "the extension host reports", error: `no result (${host}, exit ${code})` });
const { neovimTest } = await import("./editor-neovim.mjs");
results.push(...await neovimTest());
for (const { name, error } of results) console.log(error ? `not ok  ${name}\n${error}` : `ok      ${name}`);
const failed = results.filter((one) => one.error).length;
console.log(`VS Code ${vscode}, ${host}, ${((performance.now() - started) / 1000).toFixed(1)} s`);
console.log(`${results.length - failed} passed, ${failed} failed`);
process.exit(code !== 0 || failed > 0 ? 1 : 0);

/** A .vsix is a zip; Python or unzip are not asked for: the entries are few and deflated. */
function unzip(file, folder) {
  try { execFileSync("unzip", ["-q", "-o", file, "-d", folder], { stdio: "ignore" }); return; } catch { /* not installed */ }
  execFileSync("python3", ["-m", "zipfile", "-e", file, folder]);
}
