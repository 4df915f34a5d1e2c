// The sheets for the bench stand in the manual where they belong, with the same cells as alone; the reader decides which, and nobody gets
// less of what is about safety.

import { expect, test } from "vitest";
import { layoutSheet } from "../../language/outputs/layout-sheet/layout-sheet.ts";
import { manual } from "../../language/outputs/manual/manual.ts";
import { manualSections, readers, sectionsFor, type Reader } from "../../language/outputs/manual/sections.ts";
import { write, type Output } from "../../language/outputs/output.ts";
import type { Block, PrintDocument } from "../../language/outputs/pdf/print.ts";
import { plainOf } from "../../language/outputs/pdf/words.ts";
import { handoverSheet } from "../../language/outputs/sheet/handover.ts";
import { isolationSheet } from "../../language/outputs/sheet/isolation.ts";
import { liftingSheet } from "../../language/outputs/sheet/lifting.ts";
import { preparationSheet } from "../../language/outputs/sheet/preparation.ts";
import type { SheetData } from "../../language/outputs/sheet/sheet-data.ts";
import { wasteSheet } from "../../language/outputs/sheet/waste.ts";
import { torqueSheet } from "../../language/outputs/torque-sheet/torque-sheet.ts";
import { good } from "../cli/machines.ts";
import { folderWith, stripdown } from "../support/command-line.ts";
import { textsOf } from "./languages.ts";
import { compiledExample, options } from "./outputs-of.ts";

const winch = compiledExample("mooring-winch/strip.strip"),
  input = { ...winch, performances: winch.performances.filter(({ procedure }) => procedure.id === "winch-strip") };
const pageFor = (reader?: Reader): string =>
  write(manual, "html", input, { ...options, ...(reader ? { reader } : {}) });
const page = pageFor(),
  idsIn = (html: string): string[] => [...html.matchAll(/<section id="([^"]+)"/g)].map(([, id]) => id!),
  sectionIn = (html: string, id: string): string =>
    textsOf("html", new RegExp(`<section id="${id}"[^]*?</section>`).exec(html)?.[0] ?? "").replace(/\s+/g, "");
const document = manual.print!(manual.data(input, options), options);

/** Every text that a document prints, in its order. */
const printedIn = (blocks: readonly Block[]): string =>
  JSON.stringify(blocks, (_, value: unknown) =>
    Array.isArray(value) &&
    value.length > 0 &&
    value.every((each) => typeof each === "object" && each !== null && "t" in each)
      ? plainOf(value as { t: string }[])
      : value,
  ).replace(/\s+/g, "");
const headsOf = ({ blocks }: PrintDocument): string[] =>
  blocks
    .flatMap((block) => (block.is === "lying" ? block.blocks : [block]))
    .flatMap((block) => (block.is === "heading" && block.level === 1 ? [plainOf(block.says)] : []));

test.each([
  ["preparation", preparationSheet],
  ["isolation", isolationSheet],
  ["lifting", liftingSheet],
  ["waste", wasteSheet],
] as readonly (readonly [string, Output<SheetData>])[])(
  "%s: every cell of the sheet stands in its section, and in the PDF",
  (name, sheet) => {
    const { tables } = sheet.data(input, options).procedures[0]!,
      // What a tool is for stands in the manual's own table of tools.
      html = sectionIn(page, name) + (name === "preparation" ? sectionIn(page, "tools") : ""),
      pdf = printedIn(document.blocks);
    expect(tables.flatMap(({ rows }) => rows).length).toBeGreaterThan(3);
    for (const { rows, blank } of tables)
      for (const cell of [...rows.flat(), ...(rows.length > 0 ? blank : [])]) {
        expect(html, cell).toContain(cell.replace(/\s+/g, ""));
        expect(pdf, cell).toContain(JSON.stringify(cell).slice(1, -1).replace(/\s+/g, ""));
      }
  },
);

test("torque and layout: every row of the sheet stands in its section", () => {
  const torques = torqueSheet.data(input, options).procedures[0]!.rows,
    parts = layoutSheet.data(input, options).procedures[0]!.rows;
  expect([torques.length > 20, parts.length > 20]).toEqual([true, true]);
  for (const row of torques)
    for (const cell of [row.line, row.name, ...row.metric, ...row.us])
      expect(sectionIn(page, "torque")).toContain(cell.replace(/\s+/g, ""));
  for (const { place, name } of parts)
    expect(sectionIn(page, "layout")).toContain(`${place}${name}`.replace(/\s+/g, ""));
});

test("handover: every step, and all that is off by it in this table or one before", () => {
  const { tables } = handoverSheet.data(input, options).procedures[0]!,
    own = manual.data(input, options).chapters[0]!.sheets.tables.handover.tables,
    offIn = (rows: readonly (readonly string[])[]): string[] =>
      (rows.find(([fact]) => fact === "Off, and where it lies")?.[1] ?? "")
        .split("; ")
        .filter((each) => each !== "none")
        .flatMap((group) => {
          // What lies in one place is told together: "Lid, Screws (Into tray A)".
          const [, names = "", where = ""] = /^(.*?)( \(.*\))?$/.exec(group) ?? [];
          return names.split(", ").map((name) => name + where);
        });
  expect(own.map(({ title }) => title)).toEqual(tables.map(({ title }) => title));
  const told = new Set<string>();
  own.forEach(({ rows }, i) => {
    for (const each of offIn(rows)) told.add(each);
    for (const each of offIn(tables[i]!.rows)) expect([...told], tables[i]!.title).toContain(each);
  });
  expect(JSON.stringify(own).length).toBeLessThan(0.8 * JSON.stringify(tables).length);
});

test("preparation and isolation come before the strip, the rest behind the record; contents list them all", () => {
  const order = idsIn(page),
    at = (id: string): number => order.indexOf(id);
  for (const id of manualSections) if (id !== "fluids") expect(at(id), id).toBeGreaterThanOrEqual(0);
  expect([at("safety"), at("preparation"), at("isolation"), at("strip")]).toEqual(
    [at("safety"), at("preparation"), at("isolation"), at("strip")].sort((a, b) => a - b),
  );
  for (const id of ["lifting", "handover", "torque", "layout"]) {
    expect(at(id), id).toBeGreaterThan(at("record"));
    expect(page).toContain(`<li><a href="#${id}">`);
  }
  for (const title of ["Preparation", "Energy isolation", "Lifting", "Handover", "Torque sheet", "Layout sheet"])
    expect(headsOf(document)).toContain(title);
  expect(headsOf(document).filter((title) => title === "Lifting")).toHaveLength(1);
});

test("wide sheets lie on their side", () => {
  expect(document.blocks.filter(({ is }) => is === "lying")).toHaveLength(2);
  expect(page.match(/<section id="[\w-]+" class="lies"/g)).toHaveLength(2);
});

test.each(readers)("%s: what is about safety stands for every reader", (reader) => {
  for (const id of [
    "identification",
    "purpose",
    "who",
    "use",
    "safety",
    "tools",
    "isolation",
    "strip",
    "refit",
    "finish",
    "mishaps",
    "waste",
    "lifting",
  ] as const)
    expect(sectionsFor(reader)).toContain(id);
  const own = pageFor(reader),
    all = pageFor("technician");
  for (const kind of ["panel danger", "panel warning", "panel caution", "panel notice", "otherwise", "limits"])
    expect(own.split(`class="${kind}`).length, kind).toBe(all.split(`class="${kind}`).length);
});

test("a customer gets no papers to fill in, and no link to one", () => {
  const own = pageFor("customer");
  for (const id of ["preparation", "record", "handover", "torque", "layout"]) {
    expect(idsIn(own)).not.toContain(id);
    expect(own).not.toContain(`href="#${id}"`);
  }
  // The script keeps a record: where there is none it has nothing to do.
  expect(own).not.toContain("<script");
  expect(idsIn(pageFor("teacher"))).toEqual(idsIn(page).filter((id) => id !== "record" && id !== "handover"));
});

test("--for is asked by its name", async () => {
  const folder = folderWith({ "a.strip": good }),
    made = await stripdown(folder, ["manual", "--for", "customer", "a.strip"]);
  expect([made.status, made.err, idsIn(made.out).includes("record")]).toEqual([0, "", false]);
  expect((await stripdown(folder, ["manual", "--for", "nobody", "a.strip"])).err).toBe(
    "stripdown: --for nobody: it is one of technician, teacher, customer\n",
  );
});
