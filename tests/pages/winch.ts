// The manual of the flagship as it lies on a tablet, and the command line that reads its records.

import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { expect } from "vitest";
import { folder, type Opened } from "./browser.ts";

const root = join(import.meta.dirname, "../.."),
  manual = join(folder, "winch.html"),
  // Built before these tests are run.
  bundle = join(root, "dist/cli/stripdown.mjs"),
  program = existsSync(bundle) ? bundle : join(root, "language/cli/process-io.ts");

export const example = "examples/mooring-winch";

export const stripdown = (...args: readonly string[]) =>
  spawnSync(process.execPath, [program, ...args], {
    cwd: root,
    encoding: "utf8",
    maxBuffer: 1e8,
  });
export const made = stripdown("manual", example, "--quiet", "--to", manual);
export const address = new URL(`file://${manual}`).href;

export async function saved({ page }: Opened, name: string): Promise<string> {
  const waiting = page.waitForEvent("download");
  await page.locator("#tablet-save").click();
  const download = await waiting,
    path = join(folder, name);
  expect(download.suggestedFilename()).toMatch(/^record-[\p{L}\p{N}-]+\.json$/u);
  await download.saveAs(path);
  return path;
}
