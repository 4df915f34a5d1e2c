// What stands on which page: a picture with what is said under it, and an index that is looked up page by page.

import { expect, test } from "vitest";
import { pdfOf } from "../../../language/cli/pdf/pdf.ts";
import { manualDocument } from "../../../language/outputs/manual/build.ts";
import { manualPrint } from "../../../language/outputs/pdf/manual-print.ts";
import { par } from "../../../language/outputs/pdf/pieces.ts";
import { table } from "../../../language/outputs/pdf/table.ts";
import type { Block, Index, PrintDocument } from "../../../language/outputs/pdf/print.ts";
import { compiledExample, options } from "../outputs-of.ts";
import { readPdf } from "./pdf-text.ts";

const { front: _, ...manual } = manualPrint(
    manualDocument(compiledExample("valve-actuator/actuator.strip"), options),
    options,
  ),
  pagesOf = async (blocks: readonly Block[]) =>
    (
      await readPdf(
        (await pdfOf({ ...manual, contents: "", front: [], blocks, files: [dot] } satisfies PrintDocument)).bytes,
      )
    ).pages;

/** One grey dot, as PNG. */
const dot = {
  name: "dot.png",
  shownAs: "dot.png",
  base64: "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==",
};

const begins = (says: string): Block => ({ is: "heading", level: 1, says, page: true, listed: false });

test("a picture and what is said under it stand on one page, wherever the page ends", async () => {
  const pages = await pagesOf(
    Array.from({ length: 14 }, (__, i): Block[] => [
      begins(`Chapter ${i + 1}`),
      ...Array.from({ length: 20 + i }, (___, k) => par(`Line ${k + 1}.`)),
      { is: "picture", file: "dot.png", alt: `Seen ${i + 1}.`, caption: `Said ${i + 1}.`, points: [] },
    ]).flat(),
  );
  for (let i = 1; i <= 14; i++) {
    const seen = pages.findIndex(({ tagged }) => tagged.includes(`Seen ${i}.`));
    expect(seen, `Seen ${i}`).toBeGreaterThanOrEqual(0);
    expect(pages[seen]!.painted, `picture ${i}`).toContain(`Said ${i}.`);
  }
  expect(pages.length, "some of them go over to the next page").toBeGreaterThan(15);
});

test("a running head has one line: a chapter's long name loses its last words and says so", async () => {
  const name = "Refit: Test the insulation of the motor winding between its three leads and the frame";
  const { pages } = await readPdf(
    (await pdfOf({ ...manual, front: [], files: [], blocks: [begins("One"), begins(name), par("Words.")] })).bytes,
  );
  const head = pages.at(-1)!.painted.split("Words.")[0]!.replaceAll(/\s+/g, " ");
  expect(head).toMatch(/Refit: Test the insulation of [a-z ]+ \u2026/);
  expect(head.match(/Refit: Test the insulation/g), "as the head and as the heading").toHaveLength(2);
});

test("a short list is not parted by a page's end", async () => {
  const items = ["One of four", "Two of four", "Three of four", "Four of four"],
    pages = await pagesOf(
      Array.from({ length: 12 }, (__, i): Block[] => [
        begins(`Chapter ${i + 1}`),
        ...Array.from({ length: 34 + i }, (___, k) => par(`Line ${k + 1}.`)),
        { is: "list", items: items.map((item) => `${item}, ${i + 1}.`) },
      ]).flat(),
    );
  for (let i = 1; i <= 12; i++) {
    const on = items.map((item) => pages.findIndex(({ tagged }) => tagged.includes(`${item}, ${i}.`)));
    expect(new Set(on).size, `list ${i}`).toBe(1);
  }
  expect(pages.length).toBeGreaterThan(13);
});

test("an index over several pages runs down each page's columns, then on", async () => {
  const line = manual.blocks.find((block) => block.is === "actions")!,
    { id } = line.rows[0]!,
    names = Array.from({ length: 360 }, (__, i) => `Thing ${String(i).padStart(3, "0")}`);
  const index: Index = { is: "index", rows: names.map((name) => ({ name, lines: [{ id, line: "1.1" }] })) },
    pages = await pagesOf([line, begins("Index"), index]);
  expect(pages.length).toBeGreaterThan(3);
  expect(pages.flatMap(({ painted }) => painted.match(/Thing \d{3}/g) ?? [])).toEqual(names);
});

test("a long table leaves no row alone, neither its first at the foot of a page nor its last at the head of one", async () => {
  const lengths = Array.from({ length: 18 }, (_, i) => 14 + i),
    row = (of: number, k: number): string => `t${of}r${k}of`;
  const pages = await pagesOf(
      lengths.flatMap((length, i): Block[] => [
        begins(`Table ${i + 1}`),
        ...Array.from({ length: 26 + i }, (_, k) => par(`Line ${k + 1}.`)),
        table<number>(
          "",
          [
            { head: "No.", cell: (k) => row(i, k), isHead: true },
            { head: "What", cell: (k) => `Words of row ${k}` },
          ],
          Array.from({ length }, (_, k) => k),
          167,
        ),
      ]),
    ),
    pageOf = (says: string): number => pages.findIndex(({ tagged }) => tagged.includes(says));
  const over = lengths.filter((length, i) => pageOf(row(i, 0)) !== pageOf(row(i, length - 1)));
  expect(over.length).toBeGreaterThan(5);
  lengths.forEach((length, i) => {
    expect(pageOf(row(i, 0)), `the first two of table ${i + 1}`).toBe(pageOf(row(i, 1)));
    expect(pageOf(row(i, length - 2)), `the last two of table ${i + 1}`).toBe(pageOf(row(i, length - 1)));
  });
});
