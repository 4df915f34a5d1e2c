// Works a manual's page through as a hand would: line by line, with every place to write filled in.

import type { Page } from "playwright-core";
import type { Plan, PlanLine } from "../../language/outputs/manual/tablet/plan.ts";

export const planIn = async (page: Page): Promise<Plan> =>
  (JSON.parse((await page.locator("#tablet-data").textContent()) ?? "") as { plan: Plan }).plan;

/** A figure inside the limits. */
export const inside = ({ low, high }: { low?: number; high?: number }): number =>
  low !== undefined && high !== undefined ? (low + high) / 2 : (high ?? low ?? 1);

export const lineOf = (page: Page, id: string) => page.locator(`[id="${id}"]`);

/** Fills in what the line asks for; a wait is begun and let run. */
export async function fillIn(page: Page, line: PlanLine): Promise<void> {
  const place = lineOf(page, line.id);
  if (line.wait !== undefined) {
    await place.locator(".wait-clock button").first().click();
    await page.clock.fastForward((line.wait + 2) * 1000);
  }
  for (const [i, { due }] of (line.counts ?? []).entries())
    await place
      .locator("[data-count]")
      .nth(i)
      .fill(String(due ?? 7));
  for (const [i, { given }] of (line.torques ?? []).entries()) {
    const set = place.locator(".set").nth(i),
      [figure] = given;
    await set.locator("select").selectOption(figure?.unit ?? { index: 0 });
    await set.locator("[data-part=value]").fill(String(figure ? figure.low : 10));
    await set.locator("[data-part=wrench]").fill("TW 1");
    await set.locator("[data-part=initials]").fill("N. N.");
  }
  for (const [i, reading] of (line.readings ?? []).entries()) {
    const box = place.locator(".reading").nth(i);
    if (!reading.isFigure) await box.getByLabel("Yes").check();
    else {
      await box.locator("input").fill(String(inside(reading)));
      await box.locator("input").blur();
    }
  }
  if (line.sign) await place.locator("[data-signed]").fill("N. N.");
  for (let n = 0; n < (line.order?.length ?? 0) * (line.passes ?? 1); n++)
    await place.locator(".bolts button").first().click();
}

export async function tick(page: Page, line: PlanLine): Promise<boolean> {
  const box = lineOf(page, line.id).locator("input[type=checkbox]");
  await box.click();
  return await box.isChecked();
}
