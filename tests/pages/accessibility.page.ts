// Every page against axe-core: light, dark and as printed. The rules are those of the library (WCAG 2.0 to 2.2, levels A and AA, and its
// own of good practice); no violation is let through.

import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import type { AxeResults } from "axe-core";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
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
  for (const colorScheme of ["light", "dark"] as const) {
    const open = await opened(`file://${file}`, { ...screens["tablet"], colorScheme });
    // The dark scheme changes colours and nothing else.
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
