// The tests in VS Code's own server with a headless Chromium as its window. Resolves to the exit status that the extension host gave.

import { spawn } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { serverHome, testModule, unpacked } from "./editor-paths.mjs";

const limit = 480_000;
const verbose = process.env.VERBOSE !== undefined;

/** `workspace` is a path of this machine, or the address of a folder whose file system one of the `extensions` brings. */
export async function run({ workspace, extensions = [], tests = testModule }) {
  return await inPage(
    {
      folder: workspace,
      extensions,
      payload: (remote) => [
        ["extensionDevelopmentPath", remote(unpacked)],
        ["extensionTestsPath", remote(tests)],
        ["skipWelcome", "true"],
      ],
    },
    async (page, exit) => {
      const hand = rigOn(page);
      try {
        return await exit;
      } finally {
        clearInterval(hand);
      }
    },
  );
}

/** Does for the tests what only a person at the window can: reads the status bar and what is shown above it, and presses or turns what they ask for there. */
function rigOn(page) {
  const file = process.env.EDITOR_RIG;
  if (!file) return undefined;
  return setInterval(() => void look(page, file).catch(() => undefined), 150);
}

async function look(page, file) {
  const text = await page.evaluate(() => document.querySelector(".part.statusbar")?.textContent ?? "");
  // One of them is the client's own, which lies hidden behind the sign in the status bar.
  const buttons = page.locator(".notification-list-item", { hasText: "Performing the procedures" }),
    count = await buttons.count();
  if (count > 0 || /Performing the procedures/.test(text))
    writeFileSync(file, JSON.stringify({ progress: text, buttons: count }));
  if (count > 1 && text.includes("rig:cancel"))
    await buttons.first().getByRole("button", { name: "Cancel" }).click({ timeout: 1000 });
  if (!text.includes("rig:wheel")) return;
  for (const view of await page.locator("iframe.webview.ready").all()) {
    const box = await view.boundingBox();
    if (!box || box.width < 50) continue;
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.wheel(0, 1200);
  }
}

/** Opens the workbench on a folder; `exit` resolves when the tests end, if there are any. With `trust` a folder has to be trusted by a person. */
export async function inPage(
  { folder, extensions = [], payload, settings = {}, size = { width: 1400, height: 900 }, trust = false },
  work,
) {
  const { chromium } = await import("playwright-core");
  const data = mkdtempSync(join(tmpdir(), "editor-"));
  mkdirSync(join(data, "data", "Machine"), { recursive: true });
  writeFileSync(
    join(data, "data", "Machine", "settings.json"),
    JSON.stringify({
      "chat.disableAIFeatures": true,
      "workbench.startupEditor": "none",
      "files.autoSave": "off",
      "workbench.secondarySideBar.defaultVisibility": "hidden",
      ...settings,
    }),
  );
  // Installed as they are; one that is under development can only be one.
  for (const path of extensions) cpSync(path, join(data, "extensions", basename(path)), { recursive: true });
  const server = startServer(data, trust);
  let browser;
  try {
    const port = await server.port,
      authority = `127.0.0.1:${port}`,
      remote = (path) => `vscode-remote://${authority}${path}`;
    browser = await chromium.launch({
      executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
      args: ["--no-sandbox"],
    });
    const page = await browser.newPage({ viewport: size });
    if (verbose) page.on("console", (message) => console.error(message.text()));
    const query = { folder, ...(payload ? { payload: JSON.stringify(payload(remote)) } : {}) };
    const exit = new Promise((resolve, reject) => {
      // The workbench looks for a function of this name on the window, and calls it when the test host ends.
      void page
        .exposeFunction("codeAutomationExit", resolve)
        .then(() => page.goto(`http://${authority}/?${new URLSearchParams(query)}`))
        .catch(reject);
    });
    const late = new Promise((_, reject) => {
      setTimeout(() => reject(new Error(`no answer from the extension host in ${limit / 1000} s`)), limit).unref();
    });
    return await Promise.race([work(page, exit), late]);
  } finally {
    await browser?.close();
    await server.stop();
    rmSync(data, { recursive: true, force: true, maxRetries: 5 });
  }
}

/** Not the front that code-server adds: VS Code's own server under it, since only that takes --enable-smoke-test-driver. */
function startServer(data, trust) {
  const child = spawn(
    process.execPath,
    [
      `${serverHome}/out/server-main.js`,
      "--host",
      "127.0.0.1",
      "--port",
      "0",
      "--without-connection-token",
      "--accept-server-license-terms",
      "--server-data-dir",
      data,
      "--telemetry-level",
      "off",
      ...(trust ? [] : ["--disable-workspace-trust"]),
      "--enable-smoke-test-driver", // without it a built VS Code ignores the payload of the address
    ],
    { stdio: ["ignore", "pipe", verbose ? "inherit" : "ignore"] },
  );
  const ended = new Promise((resolve) => child.once("exit", resolve));
  const port = new Promise((resolve, reject) => {
    let text = "";
    void ended.then((code) => reject(new Error(`the server ended with ${code}:\n${text}`)));
    child.stdout.setEncoding("utf8").on("data", (chunk) => {
      text += chunk;
      if (verbose) process.stderr.write(chunk);
      const match = /Extension host agent listening on (\d+)/.exec(text);
      if (match) resolve(match[1]);
    });
  });
  port.catch(() => undefined);
  return {
    port,
    stop: () => {
      child.kill();
      return ended;
    },
  };
}
