// How the pages lie: nothing beside the screen, no number in two lines, what is not as written after what is asked, a draft's mark and a
// handover whole on paper.

import { expect, test } from "vitest";
import { manual } from "../../language/outputs/manual/manual.ts";
import { write } from "../../language/outputs/output.ts";
import { handoverSheet } from "../../language/outputs/sheet/handover.ts";
import type { SheetData } from "../../language/outputs/sheet/sheet-data.ts";
import { outputs } from "../../language/outputs/registry.ts";
import { recordSummary } from "../../language/outputs/record/summary.ts";
import { wordings } from "../../language/outputs/wording/languages.ts";
import { compiledExample, options } from "../outputs/outputs-of.ts";
import { filledRecord } from "../outputs/record/filled.ts";
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

/** A page's room for the text, CSS px: A4 within the margins that its style gives. */
const across = (width: number, margin: number): number => Math.floor(((width - 2 * margin) / 25.4) * 96);

test.each(Object.entries(wordings))(
  "%s: no table is wider than the paper that it is printed on",
  async (tag, wording) => {
    const chosen = { ...options, wording, units: 12 },
      records = [1, 2, 3].map((unit) => ({ file: `${unit}.json`, record: filledRecord(actuator, chosen) }));
    const papers = [
      ...outputs
        .filter(({ name, formats }) => (name === "manual" || name.startsWith("sheet ")) && formats["html"])
        .map((output) => [output.name, write(output, "html", winch, chosen)] as const),
      ["summary", write(recordSummary(records), "html", actuator, chosen)] as const,
    ];
    expect(papers.length).toBeGreaterThan(9);
    for (const [name, html] of papers) {
      const { page, close } = await opened(written(`paper-${tag}-${name.replace(" ", "-")}.html`, html));
      await page.emulateMedia({ media: "print" });
      // What lies on its side within a page that stands has the wider room.
      const liesAll = html.includes("@page{size:landscape");
      for (const lies of [false, true]) {
        await page.setViewportSize({ width: lies ? across(297, liesAll ? 10 : 14) : across(210, 14), height: 1000 });
        const wide = await page.evaluate(
          ([isAll, isLying]) =>
            [...document.querySelectorAll<HTMLElement>("main .scroll, main table")]
              .filter((each) => (isAll || each.closest(".lies") !== null) === isLying)
              .filter(
                (each) =>
                  each.scrollWidth > each.clientWidth + 2 || each.getBoundingClientRect().right > innerWidth + 1,
              )
              .map((each) => (each.textContent ?? "").slice(0, 60)),
          [liesAll, lies] as const,
        );
        expect(wide, name).toEqual([]);
      }
      await close();
    }
  },
);
