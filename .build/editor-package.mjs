// Makes the .vsix: the bundles, the manifest without what only building needs, grammar, icons, texts. No source map, nothing to download.

import { execFileSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { buildAll } from "./build.mjs";
import { root, staged, vsix } from "./editor-paths.mjs";

const largest = 2 * 1024 * 1024;

/** What of the project goes into the package, from where to where. */
const files = {
  "dist/client.cjs": "",
  "dist/client-browser.js": "",
  "dist/server.cjs": "",
  "dist/server": "",
  "dist/server-worker.js": "",
  syntaxes: "",
  "language/schemas/settings.schema.json": "",
  "client/webview": "",
  "client/walkthrough": "",
  "client/l10n": "",
  "client/package.nls.json": "package.nls.json",
  "client/snippets.json": "",
  "client/icon.png": "",
  "client/file-icon.svg": "",
  "client/bench-icon.svg": "",
  "client/README.md": "README.md",
  "client/CHANGELOG.md": "CHANGELOG.md",
  LICENSE: "LICENSE",
};

/** Returns the path of the package. */
export async function makePackage() {
  await buildAll();
  rmSync(staged, { recursive: true, force: true });
  for (const [from, to] of Object.entries(files)) {
    if (!existsSync(`${root}/${from}`)) throw new Error(`${from} is missing`);
    const target = `${staged}/${to || from}`;
    mkdirSync(target.slice(0, target.lastIndexOf("/")), { recursive: true });
    cpSync(`${root}/${from}`, target, { recursive: true });
  }
  const {
    scripts,
    dependencies,
    devDependencies,
    optionalDependencies,
    allowScripts,
    bin,
    private: isPrivate,
    engines,
    ...manifest
  } = JSON.parse(readFileSync(`${root}/package.json`, "utf8"));
  void [scripts, dependencies, devDependencies, optionalDependencies, allowScripts, bin, isPrivate];
  writeFileSync(
    `${staged}/package.json`,
    `${JSON.stringify({ ...manifest, engines: { vscode: engines.vscode } }, null, 2)}\n`,
  );
  // What is staged is what goes in: everything, so that the packer has nothing to guess.
  writeFileSync(`${staged}/.vscodeignore`, ".vscodeignore\n");
  const target = vsix(manifest.version);
  execFileSync(
    process.execPath,
    [
      `${root}/node_modules/@vscode/vsce/vsce`,
      "package",
      "--no-dependencies",
      "--allow-missing-repository",
      "--skip-license",
      "--out",
      target,
    ],
    { cwd: staged, stdio: ["ignore", "pipe", "inherit"] },
  );
  const size = statSync(target).size;
  if (size > largest) throw new Error(`The package has ${size} bytes; at most ${largest} are meant`);
  const maps = readdirSync(staged, { recursive: true }).filter((name) => String(name).endsWith(".map"));
  if (maps.length > 0) throw new Error(`Source maps in the package: ${maps.join(", ")}`);
  return { path: target, size };
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const { path, size } = await makePackage();
  console.log(`${path.slice(root.length + 1)}: ${(size / 1024).toFixed(0)} kB`);
}
