// Where the editor's rig, the package and the editor tests lie.

import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("..", import.meta.url)).replace(/[\\/]$/, "");
export const editorHome = `${root}/.editor`;
export const serverHome = `${editorHome}/node_modules/code-server/lib/vscode`;
/** What goes into the package, laid out as it will be installed. */
export const staged = `${root}/out/extension`;
/** The package unpacked again: what the tests run. */
export const unpacked = `${root}/out/unpacked`;
export const testModule = `${root}/out/editor-test.cjs`;
export const testResult = `${root}/out/editor-test.json`;
export const vsix = (version) => `${root}/dist/stripdown-${version}.vsix`;
