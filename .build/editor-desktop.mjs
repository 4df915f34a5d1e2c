// The tests in a desktop VS Code. VSCODE_PATH names an installed program, VSCODE_VERSION a version to download once.

import { testModule, unpacked } from "./editor-paths.mjs";

export async function run({ workspace }) {
  const { runTests } = await import("@vscode/test-electron");
  try {
    return await runTests({
      version: process.env.VSCODE_VERSION ?? "stable",
      ...(process.env.VSCODE_PATH ? { vscodeExecutablePath: process.env.VSCODE_PATH } : {}),
      extensionDevelopmentPath: unpacked,
      extensionTestsPath: testModule,
      launchArgs: [workspace, "--disable-extensions", "--disable-workspace-trust"],
      extensionTestsEnv: { EDITOR_TEST_RESULT: process.env.EDITOR_TEST_RESULT },
    });
  } catch (error) {
    console.error(`No VS Code could be started: ${error.message ?? error}`);
    return 1;
  }
}
