// The check itself: it finds nothing in a manual, and each fault that is put into one.

import { PDFArray, PDFBool, PDFDict, PDFDocument, PDFName, PDFRawStream, PDFRef } from "@cantoo/pdf-lib";
import { beforeAll, expect, test } from "vitest";
import { pdfOf } from "../../../language/cli/pdf/pdf.ts";
import { manual } from "../../../language/outputs/manual/manual.ts";
import { compiledExample, options } from "../outputs-of.ts";
import { checkUa } from "./ua-check.ts";
import { at, dictAt, nameAt, streamText } from "./ua-objects.ts";

let whole: Buffer;
beforeAll(async () => {
  const input = compiledExample("dairy-pump/pump.strip");
  whole = (await pdfOf(manual.print!(manual.data(input, options), options))).bytes;
});

const name = (text: string): PDFName => PDFName.of(text);

/** Every dictionary of this type or tag. */
const tagged = (document: PDFDocument, tag: string): PDFDict[] =>
  document.context
    .enumerateIndirectObjects()
    .flatMap(([, object]) =>
      object instanceof PDFDict && (nameAt(object, "S") === tag || nameAt(object, "Type") === tag) ? [object] : [],
    );

const metadata = (document: PDFDocument, change: (xmp: string) => string): void => {
  const stream = at(document.catalog, "Metadata") as PDFRawStream,
    dict = stream.dict,
    text = change(Buffer.from(streamText(stream), "latin1").toString("utf8"));
  dict.delete(name("Filter"));
  document.context.assign(
    document.catalog.get(name("Metadata")) as PDFRef,
    PDFRawStream.of(dict, new Uint8Array(Buffer.from(text))),
  );
};

const code = (document: PDFDocument, page: number, change: (code: string) => string): void => {
  const { node } = document.getPage(page),
    stream = at(node, "Contents") as PDFRawStream,
    text = change(streamText(stream));
  node.set(name("Contents"), document.context.register(document.context.stream(Buffer.from(text, "latin1"))));
};

const lastLevel = (document: PDFDocument): void => {
  for (const heading of tagged(document, "H2")) heading.set(name("S"), name("H4"));
};

const faults: readonly (readonly [id: string, what: string, put: (document: PDFDocument) => void])[] = [
  ["01-000", "not said to be tagged", (d) => dictAt(d.catalog, "MarkInfo")!.set(name("Marked"), PDFBool.False)],
  [
    "01-003",
    "an artifact in a tag",
    (d) => code(d, 1, (c) => c.replace(/(\/\S+\s*<<[^>]*MCID[^>]*>>\s*BDC)/, "$1 /Artifact BMC EMC")),
  ],
  [
    "01-004",
    "a tag in an artifact",
    (d) => code(d, 1, (c) => c.replace(/(\/\S+\s*<<[^>]*MCID[^>]*>>\s*BDC)/, "/Artifact BMC $1 EMC EMC $1")),
  ],
  ["01-005", "content under a number that no tag has", (d) => code(d, 1, (c) => c.replace(/MCID \d+/, "MCID 9999"))],
  ["01-005", "something painted outside all tags", (d) => code(d, 1, (c) => `${c}\n0 0 10 10 re\nf\n`)],
  ["01-005", "no tree of tags", (d) => d.catalog.delete(name("StructTreeRoot"))],
  ["01-007", "suspects", (d) => dictAt(d.catalog, "MarkInfo")!.set(name("Suspects"), PDFBool.True)],
  ["02-001", "an unknown tag", (d) => tagged(d, "P")[0]!.set(name("S"), name("Absatz"))],
  ["06-001", "no metadata", (d) => d.catalog.delete(name("Metadata"))],
  ["06-002", "no PDF/UA mark", (d) => metadata(d, (xmp) => xmp.replaceAll("pdfuaid:part", "pdfuaid:rest"))],
  ["06-003", "no title", (d) => metadata(d, (xmp) => xmp.replaceAll("dc:title", "dc:other"))],
  ["07-001", "the title is not shown", (d) => d.catalog.delete(name("ViewerPreferences"))],
  ["09-004", "a cell outside its row", (d) => tagged(d, "TR")[0]!.set(name("S"), name("Table"))],
  ["09-005", "a paragraph straight in a list", (d) => tagged(d, "LI")[0]!.set(name("S"), name("P"))],
  ["09-006", "a paragraph straight in the contents", (d) => tagged(d, "TOCI")[0]!.set(name("S"), name("P"))],
  ["11-001", "no language", (d) => d.catalog.delete(name("Lang"))],
  ["13-004", "a picture without words", (d) => tagged(d, "Figure")[0]!.delete(name("Alt"))],
  ["14-003", "a heading level left out", lastLevel],
  ["14-007", "a heading without a level", (d) => tagged(d, "H2")[0]!.set(name("S"), name("H"))],
  ["15-003", "a head cell without scope", (d) => tagged(d, "TH")[0]!.delete(name("A"))],
  ["17-002", "a formula without words", (d) => tagged(d, "Span")[0]!.set(name("S"), name("Formula"))],
  ["28-002", "a note in no tag of its own", (d) => firstLink(d).set(name("Subtype"), name("Text"))],
  ["28-008", "no order of tabs", (d) => d.getPages().forEach(({ node }) => node.delete(name("Tabs")))],
  ["28-011", "a link in no Link tag", (d) => tagged(d, "Link").forEach((tag) => tag.set(name("S"), name("Span")))],
  ["28-012", "a link without words", (d) => firstLink(d).delete(name("Contents"))],
  ["31-006", "a font without its map", (d) => ofKind(d, "CIDFontType2")[0]!.delete(name("CIDToGIDMap"))],
  ["31-009", "a font left out", (d) => tagged(d, "FontDescriptor").forEach((font) => font.delete(name("FontFile2")))],
  ["31-027", "signs without Unicode", (d) => ofKind(d, "Type0")[0]!.delete(name("ToUnicode"))],
];

const ofKind = (document: PDFDocument, kind: string): PDFDict[] =>
  tagged(document, "Font").filter((font) => nameAt(font, "Subtype") === kind);

function firstLink(document: PDFDocument): PDFDict {
  for (const { node } of document.getPages()) {
    const all = at(node, "Annots");
    if (all instanceof PDFArray && all.size() > 0) return all.lookup(0) as PDFDict;
  }
  throw new Error("there is no link");
}

test("a manual has none of the faults, also when it is saved again", async () => {
  expect((await checkUa(whole)).findings).toEqual([]);
  const again = await PDFDocument.load(whole, { updateMetadata: false });
  expect((await checkUa(await again.save({ useObjectStreams: false }))).findings).toEqual([]);
});

test.each(faults)("%s is found: %s", async (id, _, put) => {
  const document = await PDFDocument.load(whole, { updateMetadata: false });
  put(document);
  const { findings } = await checkUa(await document.save({ useObjectStreams: false, addDefaultPage: false }));
  expect(findings.map((finding) => finding.slice(0, 6))).toContain(id);
});

test("numbers of pages and tags are those of the file", async () => {
  const { tags } = await checkUa(whole);
  expect(tags["Table"]).toBeGreaterThan(5);
  expect(tags["TH"]).toBeGreaterThan(10);
  expect(tags["H1"]).toBeGreaterThan(10);
});
