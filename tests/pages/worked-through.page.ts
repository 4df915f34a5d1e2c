// The manual of the flagship worked through line by line on a phone and on a tablet, reloaded, saved, and its record held against the
// procedure. A file of its own: it takes longest, and runs beside the others.

import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import type { WorkRecord } from "../../language/outputs/record/record.ts";
import { opened, screens, withBrowser } from "./browser.ts";
import { planIn, worked } from "./tick-through.ts";
import { address, example, made, saved, stripdown } from "./winch.ts";

withBrowser();

test("the manual of the flagship is made", () => {
  expect([made.status, made.stderr]).toEqual([0, ""]);
});

test.each(Object.entries(screens))(
  "%s: worked through, reloaded, saved: record has nothing open",
  async (name, screen) => {
    const open = await opened(address, screen),
      { page } = open;
    const plan = await planIn(page),
      half = Math.floor(plan.lines.length / 2);
    expect(plan.lines.length).toBeGreaterThan(200);
    // On the phone each box is pressed where it lies; the tablet has the same boxes in more room.
    const bare = name === "phone" ? "by hand" : "together";
    expect(await worked(page, plan.lines.slice(0, half), bare)).toEqual([]);
    expect(await page.locator("#tablet-count").innerText()).toBe(`${half} of ${plan.lines.length} lines ticked`);
    await page.locator("[data-field=serial]").fill("MW 16/7");
    await page.locator("[data-field=doneBy]").fill("N. N.");
    await page.locator("[data-instrument] [data-part=name]").first().fill("Torque wrench");
    await page.locator("[data-instrument] [data-part=number]").first().fill("TW 1");
    await page.locator("[data-instrument] [data-part=due]").first().fill("2027-03");
    await page.locator("[data-instrument] [data-part=due]").first().blur();

    await page.reload();
    expect(await page.locator("#tablet-count").innerText()).toBe(`${half} of ${plan.lines.length} lines ticked`);
    expect(await page.locator("[data-field=serial]").inputValue()).toBe("MW 16/7");
    const broken = page.locator(".break");
    expect(await broken.innerText()).toContain("these proofs are void");
    await broken.getByRole("button", { name: "The work was not broken off" }).click();

    expect(await worked(page, plan.lines.slice(half), bare)).toEqual([]);
    const file = await saved(open, `${name}.json`),
      record = JSON.parse(readFileSync(file, "utf8")) as WorkRecord;
    expect(record).toMatchObject({
      content: plan.content,
      serial: "MW 16/7",
      instruments: [{ name: "Torque wrench", number: "TW 1", due: "2027-03" }],
    });
    const told = stripdown("record", file, example, "--quiet", "--json");
    const [remarks] = (
      JSON.parse(told.stdout) as { records: { remarks: { open: boolean; says: string; line: string }[] }[] }
    ).records;
    expect(remarks!.remarks.filter((each) => each.open)).toEqual([]);
    expect(told.status).toBe(0);

    expect(open.errors).toEqual([]);
    expect([...new Set(open.requests)].filter((url) => !url.startsWith("blob:"))).toEqual([address]);
    await open.close();
  },
);
