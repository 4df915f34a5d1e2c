// The manual on a phone and on a tablet, in a real browser: what is refused, what is said at once, what is kept and what is in the record.

import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import type { WorkRecord } from "../../language/outputs/record/record.ts";
import { folder, opened, screens, withBrowser } from "./browser.ts";
import { fillIn, inside, lineOf, planIn, tick } from "./tick-through.ts";
import { address, example, saved, stripdown } from "./winch.ts";

withBrowser();

test("a reading outside its limits says so at once with what follows, is refused here, and by record", async () => {
  const open = await opened(address, screens["tablet"]),
    { page } = open,
    plan = await planIn(page);
  const line =
    plan.lines.find(
      ({ takes, readings, needs, hold }) =>
        !takes && !needs && !hold && readings?.some(({ high, low }) => (high ?? low) !== undefined),
    ) ??
    plan.lines.find(({ takes, readings }) => !takes && readings?.some(({ high, low }) => (high ?? low) !== undefined))!;
  const number = line.readings!.findIndex(({ high, low }) => (high ?? low) !== undefined),
    reading = line.readings![number]!,
    place = lineOf(page, line.id),
    box = place.locator(".reading").nth(number);
  const outside = reading.high === undefined ? reading.low! - 1000 : reading.high + 1000;
  await box.locator("input").pressSequentially(String(outside));
  expect(await box.locator(".outside").innerText()).toMatch(/^Outside its limits \(Limits: .+\)\s+\S/);
  await box.locator("input").blur();
  expect(await page.locator("#tablet-says").innerText()).toContain("Outside its limits");
  expect(await tick(page, line)).toBe(false);
  expect(await place.locator(".told-now").innerText()).toContain("The reading is outside its limits.");

  const file = await saved(open, "outside.json"),
    told = stripdown("record", file, example, "--quiet", "--json");
  expect(told.status).toBe(1);
  const { records } = JSON.parse(told.stdout) as {
    records: { remarks: { is: string; line: string; open: boolean }[] }[];
  };
  expect(records[0]!.remarks).toContainEqual(
    expect.objectContaining({ is: "reading-outside", line: line.line, open: true }),
  );

  // A second try stands beside the first: neither is lost.
  await box.locator("input").fill(String(inside(reading)));
  await box.locator("input").blur();
  expect(await box.locator(".outside").innerText()).toBe("");
  expect(await box.locator(".tries").innerText()).toContain(String(outside));
  await open.close();
});

test("an act is refused before the precautions that it needs, and a proof before its reading; by keyboard too", async () => {
  const open = await opened(address, screens["phone"]),
    { page } = open,
    plan = await planIn(page);
  const act = plan.lines.find(({ needs, takes, hold }) => needs && !takes && hold)!,
    place = lineOf(page, act.id);
  expect(await tick(page, act)).toBe(false);
  const links = await place.locator(".told-now a").evaluateAll((all) => all.map((each) => each.getAttribute("href")));
  for (const id of act.needs!) expect(links).toContain(`#${id}`);
  await place.locator("input[type=checkbox]").focus();
  await page.keyboard.press("Space");
  expect(await place.locator("input[type=checkbox]").isChecked()).toBe(false);
  expect(await place.locator("input[type=checkbox]").getAttribute("aria-describedby")).toBe(`${act.id}-told`);

  const wait = plan.lines.find((line) => line.takes && line.wait !== undefined)!;
  await lineOf(page, wait.id).locator(".wait-clock button").first().click();
  await page.clock.fastForward((wait.wait! - 5) * 1000);
  expect(await tick(page, wait)).toBe(false);
  expect(await lineOf(page, wait.id).locator(".told-now").innerText()).toContain("The wait of this line has not run.");
  await page.clock.fastForward(10_000);
  expect(await lineOf(page, wait.id).locator(".clock").innerText()).toBe(
    "The time is up. That alone shows nothing: measure or prove before you go on.",
  );
  await open.close();
});

test("the clock of a wait never runs while the page is shut, whatever the time of day", async () => {
  const open = await opened(address, screens["tablet"]),
    { page } = open,
    plan = await planIn(page),
    wait = plan.lines.find((line) => line.takes && line.wait !== undefined)!,
    clock = (): Promise<string> => lineOf(page, wait.id).locator(".wait-clock").innerText();
  await lineOf(page, wait.id).locator(".wait-clock button").first().click();
  for (let i = 0; i < 4; i++) await page.clock.fastForward(30_000);
  await page.clock.setSystemTime(new Date(Date.now() + 86_400_000));
  await page.reload();
  const shown = /Start the clock: (\d+):(\d+)/.exec(await clock())!,
    left = Number(shown[1]) * 60 + Number(shown[2]);
  expect(left).toBeLessThanOrEqual(wait.wait!);
  expect(left).toBeGreaterThanOrEqual(wait.wait! - 121);
  await open.close();
});

test("after a break the proofs are unticked and what needs them is refused again", async () => {
  const open = await opened(address, screens["tablet"]),
    { page } = open,
    plan = await planIn(page);
  const upTo = plan.lines.findIndex(({ takes }) => takes === "proof");
  for (const line of plan.lines.slice(0, upTo + 1)) {
    await fillIn(page, line);
    expect(await tick(page, line), line.id).toBe(true);
  }
  await page.reload();
  await page.getByRole("button", { name: "Untick these proofs" }).click();
  expect(await lineOf(page, plan.lines[upTo]!.id).locator("input[type=checkbox]").isChecked()).toBe(false);
  expect(await page.locator(".break").count()).toBe(0);
  await open.close();
});

test("what is not as written is written down with who agreed, and is in the record", async () => {
  const open = await opened(address, screens["phone"]),
    { page } = open,
    plan = await planIn(page),
    line = plan.lines.find(({ counts }) => counts)!,
    place = lineOf(page, line.id);
  await place.getByRole("button", { name: "Not as written" }).click();
  await place.getByLabel("What", { exact: true }).selectOption("sheared");
  const [thing] = line.things!,
    which = place.getByLabel("Which thing");
  expect(await which.locator("option").count()).toBe(plan.steps[line.step]!.length + 1);
  expect(await which.inputValue()).toBe(line.things!.length === 1 ? thing : "");
  await which.selectOption(thing!);
  await place.getByLabel("What was done").fill("drilled out");
  await place.getByLabel("Who agreed").fill("N. N.");
  await place.getByLabel("Part to order").fill("M8x20");
  await place.getByLabel("How many").fill("2");
  await place.getByRole("button", { name: "Write it down" }).click();
  expect(await place.locator(".entries").innerText()).toContain("Sheared");
  const record = JSON.parse(readFileSync(await saved(open, "trouble.json"), "utf8")) as WorkRecord;
  expect(record.procedures.flatMap(({ lines }) => lines).find((each) => each.notAsWritten)!.notAsWritten).toEqual([
    { what: "sheared", item: thing, done: "drilled out", agreedBy: "N. N.", wanted: "M8x20", wantedCount: 2 },
  ]);

  // Removed and loaded again.
  await page.locator("#tablet-clear").click();
  expect(await place.locator(".entries li").count()).toBe(0);
  await page.locator("#tablet-file").setInputFiles(join(folder, "trouble.json"));
  await page.locator("#tablet-says", { hasText: "The record is loaded." }).waitFor();
  expect(await place.locator(".entries").innerText()).toContain("drilled out");
  const other = join(folder, "other.json");
  writeFileSync(other, JSON.stringify({ ...record, content: "f".repeat(64) }));
  await page.locator("#tablet-file").setInputFiles(other);
  await page.locator("#tablet-says", { hasText: "another revision" }).waitFor();
  expect(await place.locator(".entries").innerText()).toContain("drilled out");
  await open.close();
});

test("a calibration that is overdue on the day of the reading says so at the reading, and in the record", async () => {
  const open = await opened(address, screens["tablet"]),
    { page } = open,
    plan = await planIn(page),
    line = plan.lines.find(({ readings }) => readings?.[0]?.isFigure === true)!,
    box = lineOf(page, line.id).locator(".reading").first(),
    row = page.locator("[data-instrument]").first();
  expect(await box.locator("select").isVisible()).toBe(false);
  await row.locator("[data-part=name]").fill("Gauge");
  await row.locator("[data-part=due]").fill("next May");
  await row.locator("[data-part=due]").blur();
  expect(await page.locator("#tablet-says").innerText()).toContain("This is no date");
  await row.locator("[data-part=due]").fill("2027-05");
  await row.locator("[data-part=due]").blur();
  await page.locator("[data-on]").fill("2027-06-01");
  await page.locator("[data-on]").blur();
  expect(await row.locator("[data-part=told]").innerText()).toContain("its calibration was due 2027-05");
  await box.locator("select").selectOption("Gauge");
  await box.locator("input").fill(String(inside(line.readings![0]!)));
  await box.locator("input").blur();
  expect(await box.innerText()).toContain(
    "Gauge: its calibration was due 2027-05, and this is entered for 2027-06-01.",
  );
  const file = await saved(open, "overdue.json"),
    told = stripdown("record", file, example, "--quiet", "--json");
  const { records } = JSON.parse(told.stdout) as { records: { remarks: { is: string; line: string }[] }[] };
  expect(records[0]!.remarks).toContainEqual(
    expect.objectContaining({ is: "calibration-overdue", line: line.line, open: true }),
  );
  await open.close();
});

test("what is touched is 44 px high or more, and nothing is wider than the screen", async () => {
  for (const screen of Object.values(screens)) {
    const open = await opened(address, screen);
    const small = await open.page.evaluate(() =>
      [
        ...document.querySelectorAll<HTMLElement>(
          "input[type=checkbox], input[type=text], select, button, fieldset label, nav a",
        ),
      ]
        .filter((each) => each.offsetParent !== null)
        .map((each) => ({
          what: each.outerHTML.slice(0, 80),
          high: (each.closest("nav li") ?? each).getBoundingClientRect().height,
        }))
        .filter(({ high }) => high < 44),
    );
    expect(small).toEqual([]);
    expect(await open.page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    // Sentences beside empty columns for a pen are not left one word a line: the table is moved sideways.
    const sentences = await open.page.evaluate(() =>
      [...document.querySelectorAll("td.prose")].map((each) => each.getBoundingClientRect().width),
    );
    expect(sentences.length).toBeGreaterThan(20);
    expect(Math.min(...sentences)).toBeGreaterThanOrEqual(200);
    await open.close();
  }
});

test("without a script the page is complete: boxes tick, and nothing of the script shows", async () => {
  const open = await opened(address, { ...screens["tablet"], javaScriptEnabled: false }),
    { page } = open;
  expect(await page.locator("#tablet").isVisible()).toBe(false);
  await page.locator(".act input[type=checkbox]").first().check();
  expect(await page.locator(".act").count()).toBeGreaterThan(200);
  expect(await page.locator("#tablet-load").isVisible()).toBe(false);
  await open.close();
});
