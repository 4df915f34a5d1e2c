// A headless Chromium for the tests of pages, and pages that lie on the disk as they would on a tablet.

import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { chromium, type Browser, type BrowserContextOptions, type Page } from "playwright-core";
import { afterAll, beforeAll } from "vitest";

let browser: Browser;
export const folder = mkdtempSync(join(tmpdir(), "stripdown-page-"));

/** To be called once in a test file. */
export function withBrowser(): void {
  beforeAll(async () => {
    browser = await chromium.launch({
      executablePath: process.env["CHROMIUM"] ?? "/usr/bin/chromium",
      args: ["--no-sandbox", "--disable-gpu"],
    });
  });
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  });
}

export interface Opened {
  readonly page: Page;
  /** Every address asked for, the page's own first. */
  readonly requests: string[];
  /** Errors of the page and of its console. */
  readonly errors: string[];
  close(): Promise<void>;
}

export const written = (name: string, text: string): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return pathToFileURL(path).href;
};

export async function opened(address: string, options: BrowserContextOptions = {}): Promise<Opened> {
  const context = await browser.newContext({ acceptDownloads: true, ...options }),
    page = await context.newPage(),
    requests: string[] = [],
    errors: string[] = [];
  page.on("request", (request) => requests.push(request.url()));
  page.on("pageerror", (error) => errors.push(error.message));
  page.on("console", (message) => {
    if (message.type() === "error") errors.push(message.text());
  });
  page.on("dialog", (dialog) => void dialog.accept());
  await page.clock.install();
  await page.goto(address);
  return { page, requests, errors, close: () => context.close() };
}

export const screens: Readonly<Record<string, BrowserContextOptions>> = {
  phone: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
  tablet: { viewport: { width: 820, height: 1180 }, hasTouch: true, isMobile: true },
};
