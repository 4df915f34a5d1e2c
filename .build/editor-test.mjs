// Runs the editor tests inside a real VS Code, on the package as it is shipped, in a copy of the examples; then in other editors' clients.
//   EDITOR_HOST=browser  the server in .editor/ (editor-install.mjs) with a headless Chromium
//   EDITOR_HOST=desktop  the VS Code of @vscode/test-electron, downloaded once
// Without EDITOR_HOST: browser where .editor/ is there, else desktop.
//   EDITOR_TEST_ONLY     only the tests whose name this matches, and no other editors

import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { inflateRawSync } from "node:zlib";
import { makePackage } from "./editor-package.mjs";
import { root, serverHome, testModule, testResult, unpacked } from "./editor-paths.mjs";

const { build } = await import("esbuild");
const { path: vsix } = await makePackage();
rmSync(unpacked, { recursive: true, force: true });
unpack(vsix, "extension/", unpacked);
await build({
  entryPoints: [`${root}/tests/editor/index.ts`],
  outfile: testModule,
  bundle: true,
  platform: "node",
  format: "cjs",
  target: "node22",
  external: ["vscode"],
  logLevel: "warning",
});

const workspace = `${root}/out/editor-workspace`;
rmSync(workspace, { recursive: true, force: true });
for (const folder of ["mooring-winch", "workshop"])
  cpSync(`${root}/examples/${folder}`, `${workspace}/${folder}`, { recursive: true });

rmSync(testResult, { force: true });
process.env.EDITOR_TEST_RESULT = testResult;
const host = process.env.EDITOR_HOST ?? (existsSync(serverHome) ? "browser" : "desktop"),
  started = performance.now();
if (host === "browser") {
  process.env.EDITOR_RIG = `${root}/out/editor-rig.json`;
  rmSync(process.env.EDITOR_RIG, { force: true });
}
const { run } = await import(`./editor-${host}.mjs`);
const code = await run({ workspace }).catch((error) => {
  console.error(error.message ?? error);
  return 1;
});

const { vscode = "?", results = [] } = existsSync(testResult) ? JSON.parse(readFileSync(testResult, "utf8")) : {};
const others = process.env.EDITOR_TEST_ONLY === undefined;
if (others && results.length === 0)
  results.push({ name: "the extension host reports", error: `no result (${host}, exit ${code})` });
if (others) {
  const { neovimTest } = await import("./editor-neovim.mjs");
  results.push(...(await neovimTest()));
}
if (host === "browser" && (others || /no disk/.test(process.env.EDITOR_TEST_ONLY)))
  results.push(...(await virtualTest()));
if (host === "browser" && (others || /nobody trusts/.test(process.env.EDITOR_TEST_ONLY)))
  results.push(...(await untrustedTest()));
if (host === "browser" && (others || /in a browser/.test(process.env.EDITOR_TEST_ONLY))) {
  const { webTest } = await import("./editor-web.mjs");
  results.push(...(await webTest()));
}
if (results.length === 0) results.push({ name: process.env.EDITOR_TEST_ONLY, error: "no test is called so" });
for (const { name, error } of results) console.log(error ? `not ok  ${name}\n${error}` : `ok      ${name}`);
const failed = results.filter((one) => one.error).length;
console.log(`VS Code ${vscode}, ${host}, ${((performance.now() - started) / 1000).toFixed(1)} s`);
console.log(`${results.length - failed} passed, ${failed} failed`);
process.exit(code !== 0 || failed > 0 ? 1 : 0);

/** The tests in a folder that is no disk; results like those of the others. */
async function virtualTest() {
  const disk = `${root}/out/memory-disk`,
    module = `${root}/out/editor-virtual-test.cjs`,
    common = {
      bundle: true,
      platform: "node",
      format: "cjs",
      target: "node22",
      external: ["vscode"],
      logLevel: "warning",
    };
  await build({
    ...common,
    entryPoints: [`${root}/tests/editor/memory-disk.ts`],
    outfile: `${disk}/extension.cjs`,
  });
  writeFileSync(
    `${disk}/package.json`,
    JSON.stringify({
      name: "memory-disk",
      publisher: "stripdown",
      version: "0.0.1",
      engines: { vscode: "^1.91.0" },
      main: "./extension.cjs",
      activationEvents: ["onFileSystem:memory-disk"],
    }),
  );
  await build({ ...common, entryPoints: [`${root}/tests/editor/virtual.ts`], outfile: module });
  rmSync(testResult, { force: true });
  let why = "no result";
  await run({ workspace: "memory-disk:/shop", extensions: [disk], tests: module }).catch((error) => {
    why = String(error.message ?? error);
  });
  return existsSync(testResult)
    ? JSON.parse(readFileSync(testResult, "utf8")).results
    : [{ name: "a folder that is no disk", error: why }];
}

/**
 * The tests in a folder that nobody trusts. A test host counts as trusted whatever the folder is, so that ours is installed as people have
 * it, with another extension beside it that looks at what it does.
 */
async function untrustedTest() {
  const looker = `${root}/out/untrusted-looker`,
    place = mkdtempSync(join(tmpdir(), "untrusted-")),
    name = "a folder that nobody trusts";
  await build({
    entryPoints: [`${root}/tests/editor/untrusted.ts`],
    outfile: `${looker}/extension.cjs`,
    bundle: true,
    platform: "node",
    format: "cjs",
    target: "node22",
    external: ["vscode"],
    logLevel: "warning",
  });
  writeFileSync(
    `${looker}/package.json`,
    JSON.stringify({
      name: "untrusted-looker",
      publisher: "stripdown",
      version: "0.0.1",
      engines: { vscode: "^1.91.0" },
      main: "./extension.cjs",
      activationEvents: ["onStartupFinished"],
      capabilities: { untrustedWorkspaces: { supported: true } },
    }),
  );
  cpSync(`${root}/tests/editor/untrusted`, place, { recursive: true });
  rmSync(testResult, { force: true });
  const { inPage } = await import("./editor-browser.mjs"),
    ended = async () => {
      while (!existsSync(testResult)) await new Promise((resolve) => setTimeout(resolve, 100));
    };
  let why = "no result";
  await inPage({ folder: join(place, "shop"), extensions: [unpacked, looker], trust: true }, ended).catch((error) => {
    why = String(error.message ?? error);
  });
  rmSync(place, { recursive: true, force: true });
  return existsSync(testResult) ? JSON.parse(readFileSync(testResult, "utf8")).results : [{ name, error: why }];
}

/** A .vsix is a zip: its directory stands at the end, and each entry is stored or deflated. */
function unpack(file, below, folder) {
  const bytes = readFileSync(file),
    end = bytes.lastIndexOf(Buffer.from("PK\u0005\u0006", "latin1")),
    count = bytes.readUInt16LE(end + 10);
  for (let i = 0, at = bytes.readUInt32LE(end + 16); i < count; i++) {
    const method = bytes.readUInt16LE(at + 10),
      size = bytes.readUInt32LE(at + 20),
      nameLength = bytes.readUInt16LE(at + 28),
      start = bytes.readUInt32LE(at + 42);
    const name = bytes.toString("utf8", at + 46, at + 46 + nameLength),
      from = start + 30 + bytes.readUInt16LE(start + 26) + bytes.readUInt16LE(start + 28),
      data = bytes.subarray(from, from + size);
    if (name.startsWith(below) && !name.endsWith("/")) {
      const target = `${folder}/${name.slice(below.length)}`;
      mkdirSync(target.slice(0, target.lastIndexOf("/")), { recursive: true });
      writeFileSync(target, method === 0 ? data : inflateRawSync(data));
    }
    at += 46 + nameLength + bytes.readUInt16LE(at + 30) + bytes.readUInt16LE(at + 32);
  }
}
