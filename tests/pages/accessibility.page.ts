// Every page against axe-core: light, dark and as printed. The rules are those of the library (WCAG 2.0 to 2.2, levels A and AA, and its
// own of good practice); no violation is let through.

import { spawnSync } from "node:child_process";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import type { AxeResults } from "axe-core";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { write } from "../../language/outputs/output.ts";
import { recordSummary } from "../../language/outputs/record/summary.ts";
import { refitBook } from "../../language/outputs/refit-book/refit-book.ts";
import { compiledExample, options } from "../outputs/outputs-of.ts";
import { filledRecord } from "../outputs/record/filled.ts";
import { folder, opened, screens, withBrowser } from "./browser.ts";
import { fillIn, planIn, tick } from "./tick-through.ts";

withBrowser();
const root = join(import.meta.dirname, "../.."),
  // As users have it, where it is built: it starts in a third of the time.
  bundle = join(root, "dist/cli/stripdown.mjs"),
  axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

const pages = ["mooring-winch", "dairy-pump", "valve-actuator"].flatMap((example) =>
  [
    ["manual"],
    ["sheet", "torque"],
    ["sheet", "layout"],
    ["sheet", "preparation"],
    ["sheet", "isolation"],
    ["sheet", "lifting"],
    ["sheet", "handover"],
    ["sheet", "waiting"],
    ["sheet", "waste"],
    ["sheet", "batch"],
    ["labels"],
    ["draw", "strip"],
    ["draw", "pattern"],
    ["draw", "path"],
  ]
    // The flagship has every kind of row; the other two are tried where most of a page depends on the machine.
    .filter(([command]) => example === "mooring-winch" || command === "manual")
    .map((command) => [`${command.join(" ")} of ${example}`, command, example] as const),
);

/** `rules`: these alone, where nothing that the others look at has changed. */
async function violations(page: Page, rules?: readonly string[]): Promise<string[]> {
  await page.evaluate(axe);
  const { violations: found } = await page.evaluate(
    (only) =>
      (window as unknown as { axe: { run(options: object): Promise<AxeResults> } }).axe.run(
        only
          ? { runOnly: { type: "rule", values: only }, resultTypes: ["violations"] }
          : { resultTypes: ["violations"] },
      ),
    rules,
  );
  return found.map(
    ({ id, help, nodes }) =>
      `${id}: ${help}: ${nodes
        .slice(0, 3)
        .map(({ html }) => html.slice(0, 160))
        .join(" | ")}`,
  );
}

/** Light and as printed; the dark scheme changes colours and nothing else. */
async function withoutViolation(file: string): Promise<void> {
  for (const colorScheme of ["light", "dark"] as const) {
    const open = await opened(`file://${file}`, { ...screens["tablet"], colorScheme });
    expect(await violations(open.page, colorScheme === "dark" ? ["color-contrast"] : undefined), colorScheme).toEqual(
      [],
    );
    if (colorScheme === "light") {
      await open.page.emulateMedia({ media: "print" });
      expect(await violations(open.page), "print").toEqual([]);
    }
    expect(open.errors).toEqual([]);
    await open.close();
  }
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
    const file = join(folder, `${name}.html`);
    writeFileSync(file, page);
    await withoutViolation(file);
  }
});

test.each(pages)("%s: no violation in light, dark and print", async (name, command, example) => {
  const file = join(folder, `${name.replaceAll(" ", "-")}.html`),
    { status, stderr } = spawnSync(
      process.execPath,
      [
        existsSync(bundle) ? bundle : join(root, "language/cli/process-io.ts"),
        ...command,
        `examples/${example}`,
        ...(command[0] === "manual" ? [] : ["--as", "html"]),
        "--quiet",
        "--to",
        file,
      ],
      { cwd: root, encoding: "utf8" },
    );
  expect([status, stderr]).toEqual([0, ""]);
  await withoutViolation(file);
});

test("a page that is worked on has no violation either: messages, clock, entries, the question after a break", async () => {
  const file = `file://${join(folder, "manual-of-mooring-winch.html")}`;
  for (const colorScheme of ["dark"] as const) {
    const open = await opened(file, { ...screens["phone"], colorScheme }),
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
    expect(await violations(page), `${colorScheme} after a break`).toEqual([]);
    await open.close();
  }
});
