// Every page against axe-core: light, dark and as printed. The rules are those of the library (WCAG 2.0 to 2.2, levels A and AA, and its
// own of good practice); no violation is let through.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { AxeResults } from "axe-core";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { write } from "../../language/outputs/output.ts";
import { recordSummary } from "../../language/outputs/record/summary.ts";
import { outputs } from "../../language/outputs/registry.ts";
import { refitBook } from "../../language/outputs/refit-book/refit-book.ts";
import { compiledExample, options } from "../outputs/outputs-of.ts";
import { filledRecord } from "../outputs/record/filled.ts";
import { folder, opened, screens, withBrowser, written } from "./browser.ts";
import { fillIn, planIn, tick } from "./tick-through.ts";
import { address, made, stripdown } from "./winch.ts";

withBrowser();
const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** The flagship has every kind of row; these are tried where most of a page depends on the machine. */
const others = ["dairy-pump", "valve-actuator"];

interface Asked {
  /** These rules alone, where nothing that the others look at has changed. */
  readonly rules?: readonly string[];
  /** This part of the page alone. */
  readonly within?: string;
}

async function violations(page: Page, { rules, within }: Asked = {}): Promise<string[]> {
  if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(axe);
  const { violations: found } = await page.evaluate(
    ([only, place]) =>
      (window as unknown as { axe: { run(of: unknown, options: object): Promise<AxeResults> } }).axe.run(
        place ?? document,
        {
          ...(only ? { runOnly: { type: "rule", values: only } } : {}),
          resultTypes: ["violations"],
        },
      ),
    [rules, within] as const,
  );
  return found.map(
    ({ id, help, nodes }) =>
      `${id}: ${help}: ${nodes
        .slice(0, 3)
        .map(({ html }) => html.slice(0, 160))
        .join(" | ")}`,
  );
}

/** Light and as printed; the dark scheme changes colours and nothing else. One page is all three, as where somebody turns the light down. */
async function withoutViolation(at: string): Promise<void> {
  const open = await opened(at, { ...screens["tablet"], colorScheme: "light" }),
    { page } = open;
  expect(await violations(page), "light").toEqual([]);
  await page.emulateMedia({ media: "print" });
  expect(await violations(page), "print").toEqual([]);
  await page.emulateMedia({ media: "screen", colorScheme: "dark" });
  expect(await page.evaluate(() => matchMedia("screen and (prefers-color-scheme: dark)").matches)).toBe(true);
  expect(await violations(page, { rules: ["color-contrast"] }), "dark").toEqual([]);
  expect(open.errors).toEqual([]);
  await open.close();
}

test("what is made of records: no violation in light, dark and print", async () => {
  const input = compiledExample("valve-actuator/actuator.strip"),
    strip = filledRecord(input, options, "strip", {
      "1.1": { done: false, notAsWritten: [{ what: "seized", note: "Two of eight", wanted: "Screw", wantedCount: 2 }] },
    }),
    records = [1, 2, 3].map((unit) => ({ file: `${unit}.json`, record: filledRecord(input, options) }));
  for (const [name, page] of [
    ["refit-book", write(refitBook({ file: "7.json", record: strip }), "html", input, options)],
    ["record-summary", write(recordSummary(records), "html", input, options)],
  ] as const) {
    await withoutViolation(written(`${name}.html`, page));
  }
});

test("manual of mooring-winch: no violation in light, dark and print", async () => {
  expect([made.status, made.stderr]).toEqual([0, ""]);
  await withoutViolation(address);
});

test.each(others)("manual of %s: no violation in light, dark and print", async (example) => {
  const file = join(folder, `${example}.html`),
    { status, stderr } = stripdown("manual", `examples/${example}`, "--quiet", "--to", file);
  expect([status, stderr]).toEqual([0, ""]);
  await withoutViolation(pathToFileURL(file).href);
});

const papers = outputs.filter(({ name, formats }) => name !== "manual" && "html" in formats),
  winch = compiledExample("mooring-winch/strip.strip");

test("there are sheets, labels and drawings among the pages", () => {
  expect(papers.length).toBeGreaterThanOrEqual(13);
});

test.each(papers.map((output) => [output.name, output] as const))(
  "%s of mooring-winch: no violation in light, dark and print",
  async (name, output) => {
    await withoutViolation(written(`${name.replaceAll(" ", "-")}.html`, write(output, "html", winch, options)));
  },
);

test("a page that is worked on has no violation either: messages, clock, entries, the question after a break", async () => {
  for (const colorScheme of ["dark"] as const) {
    const open = await opened(address, { ...screens["phone"], colorScheme }),
      { page } = open,
      plan = await planIn(page);
    for (const line of plan.lines.slice(0, 12)) {
      await fillIn(page, line);
      await tick(page, line);
    }
    await tick(
      page,
      plan.lines.find(({ needs, takes, hold }) => needs && !takes && hold)!,
    );
    await page.getByRole("button", { name: "Not as written" }).first().click();
    const box = page.locator(".reading input[type=text]").last();
    await box.fill("9999");
    await box.blur();
    expect(await violations(page), colorScheme).toEqual([]);
    await page.reload();
    expect(await page.locator(".break").count()).toBe(1);
    // What was entered is there again and was looked at above; the question is new.
    expect(await violations(page, { within: ".break" }), `${colorScheme} after a break`).toEqual([]);
    await open.close();
  }
});
