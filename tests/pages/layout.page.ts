// How the pages lie: nothing beside the screen, no number in two lines, what is not as written after what is asked, a draft's mark and a
// handover whole on paper.

import { expect, test } from "vitest";
import { manual } from "../../language/outputs/manual/manual.ts";
import { write } from "../../language/outputs/output.ts";
import { handoverSheet } from "../../language/outputs/sheet/handover.ts";
import type { SheetData } from "../../language/outputs/sheet/sheet-data.ts";
import { wordings } from "../../language/outputs/wording/languages.ts";
import { compiledExample, options } from "../outputs/outputs-of.ts";
import { readPdf } from "../outputs/pdf/pdf-text.ts";
import { opened, screens, withBrowser, written } from "./browser.ts";

withBrowser();
const winch = compiledExample("mooring-winch/strip.strip"),
  actuator = compiledExample("valve-actuator/actuator.strip");

test.each(Object.keys(wordings).flatMap((tag) => Object.keys(screens).map((screen) => [tag, screen] as const)))(
  "%s on a %s: numbers stand on one line, nothing lies beside the screen or shows beside the bar",
  async (tag, screen) => {
    const address = written(
        `layout-${tag}.html`,
        write(manual, "html", winch, { ...options, wording: wordings[tag]! }),
      ),
      { page, errors, close } = await opened(address, screens[screen]);
    const seen = await page.evaluate(() => {
      const all = (of: string): HTMLElement[] => [...document.querySelectorAll<HTMLElement>(of)],
        bar = document.querySelector(".bar")!.getBoundingClientRect();
      return {
        beside: document.documentElement.scrollWidth - document.documentElement.clientWidth,
        numbers: all(".row .no").length,
        broken: all(".row .no")
          .filter((number) => {
            const range = document.createRange();
            range.selectNodeContents(number);
            return range.getClientRects().length > 1;
          })
          .map((number) => number.textContent),
        over: all(".row").filter((row) => {
          const number = row.querySelector(".no")!.getBoundingClientRect(),
            label = row.querySelector("label")!.getBoundingClientRect();
          return number.right > label.left;
        }).length,
        bar: [bar.left, bar.right, bar.height, document.documentElement.clientWidth],
        early: all(".act").filter((line) => {
          const button = line.querySelector(".open-trouble")?.getBoundingClientRect(),
            asked = [...line.querySelectorAll(".under input")].at(-1)?.getBoundingClientRect();
          return button && asked && asked.height > 0 && button.top < asked.top && button.left < asked.right;
        }).length,
      };
    });
    expect(seen.numbers).toBeGreaterThan(200);
    expect(seen.broken).toEqual([]);
    expect(seen.over).toBe(0);
    expect(seen.beside).toBeLessThanOrEqual(0);
    const [left, right, height, width] = seen.bar;
    expect([left, right]).toEqual([0, width]);
    expect(height, "what the bar takes of a phone").toBeLessThanOrEqual(100);
    if (screen === "phone") expect(seen.early).toBe(0);
    expect(errors).toEqual([]);
    await close();
  },
);

test.each(Object.entries(wordings))(
  "%s: the mark of a draft is whole on paper, aslant or not",
  async (tag, wording) => {
    const { page, close } = await opened(
      written(`mark-${tag}.html`, write(handoverSheet, "html", actuator, { ...options, wording })),
    );
    await page.emulateMedia({ media: "print" });
    const [box, room] = await page.evaluate(() => {
      const mark = document.querySelector<SVGSVGElement>(".draft-mark")!,
        { x, width } = mark.querySelector("text")!.getBBox();
      return [[x, x + width], mark.viewBox.baseVal.width] as const;
    });
    expect(box[0]).toBeGreaterThanOrEqual(0);
    expect(box[1]).toBeLessThanOrEqual(room);
    await close();
  },
);

test("what one hands over after a step stands on one printed page, to its last line", async () => {
  const data = handoverSheet.data(actuator, options) as SheetData,
    { handover } = options.wording.benchSheets;
  for (const [name, html] of [
    ["sheet", write(handoverSheet, "html", actuator, options)],
    ["manual", write(manual, "html", actuator, options)],
  ] as const) {
    const { page, close } = await opened(written(`handover-${name}.html`, html)),
      { pages } = await readPdf(await page.pdf({ preferCSSPageSize: true }));
    const titles = data.procedures.flatMap(({ tables }) => tables.map(({ title }) => title));
    expect(titles.length).toBeGreaterThan(4);
    const texts = pages.map(({ painted }) => painted.replaceAll(/\s+/g, " "));
    for (const title of titles)
      expect(
        texts.some((text) => text.includes(title) && text.slice(text.indexOf(title)).includes(handover.to)),
        `${name}: ${title}`,
      ).toBe(true);
    await close();
  }
});
