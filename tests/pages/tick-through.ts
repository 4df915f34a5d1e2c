// Works a manual's page through as a hand would: line by line, with every place to write filled in.

import type { ElementHandle, Page } from "playwright-core";
import type { Plan, PlanLine } from "../../language/outputs/manual/tablet/plan.ts";

export const planIn = async (page: Page): Promise<Plan> =>
  (JSON.parse((await page.locator("#tablet-data").textContent()) ?? "") as { plan: Plan }).plan;

/** A figure inside the limits. */
export const inside = ({ low, high }: { low?: number; high?: number }): number =>
  low !== undefined && high !== undefined ? (low + high) / 2 : (high ?? low ?? 1);

export const lineOf = (page: Page, id: string) => page.locator(`[id="${id}"]`);

/** Found once for all that is done on a line: each search from the top walks the whole page. */
async function handOn(page: Page, id: string): Promise<ElementHandle<Element>> {
  const found = (await page.evaluateHandle((of) => document.getElementById(of), id)).asElement();
  if (!found) throw new Error(`no line ${id} on the page`);
  return found;
}

async function only(place: ElementHandle, selector: string, nth = 0): Promise<ElementHandle<Element>> {
  const found = (await place.$$(selector))[nth];
  if (!found) throw new Error(`${selector} ${nth + 1} is not there`);
  return found as ElementHandle<Element>;
}

/** Only to be ticked. */
const isBare = ({ wait, counts, torques, readings, sign, order }: PlanLine): boolean =>
  [wait, counts, torques, readings, sign, order].every((each) => each === undefined);

/** Fills in what the line asks for; a wait is begun and let run. */
export async function fillIn(page: Page, line: PlanLine): Promise<void> {
  const { wait, counts = [], torques = [], readings = [], sign, order = [], passes = 1 } = line;
  if (isBare(line)) return;
  const place = await handOn(page, line.id);
  if (wait !== undefined) {
    await (await only(place, ".wait-clock button")).click();
    await page.clock.fastForward((wait + 2) * 1000);
  }
  for (const [i, { due }] of counts.entries()) await (await only(place, "[data-count]", i)).fill(String(due ?? 7));
  for (const [i, { given }] of torques.entries()) {
    const set = await only(place, ".set", i),
      [figure] = given;
    await (await only(set, "select")).selectOption(figure?.unit ?? { index: 0 });
    await (await only(set, "[data-part=value]")).fill(String(figure ? figure.low : 10));
    await (await only(set, "[data-part=wrench]")).fill("TW 1");
    await (await only(set, "[data-part=initials]")).fill("N. N.");
  }
  for (const [i, reading] of readings.entries()) {
    const box = await only(place, ".reading", i);
    if (!reading.isFigure) await (await only(box, "input[value=yes]")).check();
    else {
      const input = await only(box, "input");
      await input.fill(String(inside(reading)));
      await input.dispatchEvent("blur");
    }
  }
  if (sign === true) await (await only(place, "[data-signed]")).fill("N. N.");
  // One bolt by hand, the others as a screen reader presses them.
  if (order.length === 0) return;
  await (await only(place, ".bolts button")).click();
  await place.evaluate(
    (of, more) => {
      for (let n = 0; n < more; n++) of.querySelector<HTMLElement>(".bolts button")!.click();
    },
    order.length * passes - 1,
  );
}

export async function tick(page: Page, line: PlanLine): Promise<boolean> {
  const box = await only(await handOn(page, line.id), "input[type=checkbox]");
  await box.click();
  return await box.isChecked();
}

/**
 * Lines one after the other, each filled in and ticked.
 * @param bare how those that are only ticked are pressed: each by hand where it lies, or together as a screen reader presses them.
 * @returns the lines whose box is not ticked then.
 */
export async function worked(page: Page, lines: readonly PlanLine[], bare: "by hand" | "together"): Promise<string[]> {
  const open: string[] = [];
  for (let i = 0; i < lines.length;) {
    const run: string[] = [];
    while (bare === "together" && i < lines.length && isBare(lines[i]!)) run.push(lines[i++]!.id);
    if (run.length > 0) open.push(...(await page.evaluate(pressed, run)));
    const line = lines[i++];
    if (!line) break;
    await fillIn(page, line);
    if (!(await tick(page, line))) open.push(line.id);
  }
  return open;
}

const pressed = (ids: readonly string[]): string[] =>
  ids.filter((id) => {
    const box = document.getElementById(id)!.querySelector<HTMLInputElement>("input[type=checkbox]")!;
    box.click();
    return !box.checked;
  });
