// Hostile texts in every place of every output for paper: each comes out as it is written, and the file has the same tags, no link that
// leads out of it, no other file and nothing that runs.

import { PDFArray, PDFDict, type PDFObject } from "@cantoo/pdf-lib";
import { expect, test } from "vitest";
import { pdfOf } from "../../../language/cli/pdf/pdf.ts";
import { renderer } from "../../../language/cli/pdf/renderer.ts";
import { shownOnOneLine } from "../../../language/outputs/text/shown.ts";
import { fieldOfMark, fields, filledWith, type Filled } from "../every-output.ts";
import type { Field } from "../every-text.ts";
import { hostile } from "../hostile.ts";
import { objectsOf } from "./ua-objects.ts";
import { readPdf } from "./pdf-text.ts";
import { checkUa } from "./ua-check.ts";

/** Texts that would be markup to the renderer. */
const typst = [
  '#import "@preview/a:0.1.0"',
  '#include "/etc/passwd"',
  '#read("/etc/passwd")',
  '#image("/etc/passwd")',
  "*bold* _italic_ `raw` $x^2$",
  "@reference <label>",
  "= Heading",
  "/ term: text",
  "+ one",
  "- two",
  "// gone",
  "/* gone */",
  "https://example.org/a",
  "\\u{0041} \\ x ~ y --- z ...",
  "[c] #[d] #{1+1}",
];

const { has } = await renderer(),
  /**
   * The reader used here loses the sign after one that has no shape, and words of a script from right to left come in another order. A
   * word of 400 signs goes over pages and labels, whose heads come between: manual.test.ts has one in every place of its own.
   */
  read = [...hostile, ...typst].filter((text) => !/[\u200B-\u200F\u2060\u0590-\u08FF]/.test(text) && text.length < 200),
  each = read.filter((text) => [...shownOnOneLine(text)].every((sign) => has(sign.codePointAt(0)!) || sign === " "));

/** One round gives every place another text; after as many rounds as there are texts each has had all of them. */
const rounds = process.env["STRIPDOWN_EVERY_TEXT"] === undefined ? 2 : each.length,
  textOf =
    (round: number) =>
    (field: Field): string =>
      each[(fields.indexOf(field) * 7 + round) % each.length]!;

interface Said {
  readonly words: string;
  readonly tags: Readonly<Record<string, number>>;
  readonly acts: readonly string[];
}

async function papersOf({ outputs, input, options }: Filled): Promise<ReadonlyMap<string, Said>> {
  const made = new Map<string, Said>();
  for (const output of outputs) {
    if (!output.print) continue;
    const { bytes } = await pdfOf(output.print(output.data(input, options), options)),
      { findings, tags } = await checkUa(bytes);
    expect(findings, output.name).toEqual([]);
    const { pages } = await readPdf(bytes);
    made.set(output.name, {
      words: tight(pages.map(({ tagged }) => tagged).join(" ")),
      tags,
      acts: await actsOf(bytes),
    });
  }
  return made;
}

const tight = (text: string): string => text.replace(/\s/g, "").toLowerCase();

/** Links that lead out, files and scripts: what a file does beside being read. */
async function actsOf(bytes: Uint8Array): Promise<string[]> {
  const { dicts } = await objectsOf(bytes),
    found = new Set<string>();
  const walk = (object: PDFObject): void => {
    if (object instanceof PDFArray) for (const one of object.asArray()) walk(one);
    if (!(object instanceof PDFDict)) return;
    for (const [key, value] of object.entries()) {
      if (acting.has(key.decodeText())) found.add(key.decodeText());
      walk(value);
    }
  };
  for (const dict of dicts) walk(dict);
  return [...found].sort();
}
const acting = new Set(
  "URI JS JavaScript Launch EmbeddedFile EmbeddedFiles OpenAction AA GoToR SubmitForm RichMedia".split(" "),
);

const plain = await papersOf(filledWith(() => "plain"));

test("every paper there is has places of authors in it", () => {
  expect(plain.size).toBeGreaterThan(11);
  for (const [name, { words, acts }] of plain) {
    expect(words.match(/qz[a-j]{3}zq/g)?.length ?? 0, name).toBeGreaterThan(2);
    expect(acts, name).toEqual([]);
  }
});

test.each(Array.from({ length: rounds }, (_, round) => round))("round %i", { timeout: 600_000 }, async (round) => {
  const text = textOf(round),
    papers = await papersOf(filledWith(text));
  for (const [name, { words, tags, acts }] of papers) {
    const bare = plain.get(name)!,
      amiss: string[] = [];
    for (const { 0: mark, index } of words.matchAll(/qz[a-j]{3}zq/g)) {
      const field = fieldOfMark(mark),
        own = tight(shownOnOneLine(text(field))),
        before = words.slice(Math.max(0, index - own.length), index);
      if (before !== own) amiss.push(`${field}: ${before} instead of ${own}`);
    }
    expect(amiss, name).toEqual([]);
    expect(acts, name).toEqual(bare.acts);
    // How often a title stands over a diagram goes by the sheets that its words need.
    const marks = (of: string): readonly string[] => (of.match(/qz[a-j]{3}zq/g) ?? []).sort(),
      places = (of: string): readonly string[] => [...new Set(marks(of))];
    if (name === "manual") expect(places(words), name).toEqual(places(bare.words));
    else expect(marks(words), name).toEqual(marks(bare.words));
    for (const tag of ["H1", "H2", "H3", "Table", "TR", "TH", "Figure", "Formula", "Code", "Link", "L"])
      if (!name.startsWith("labels") && !(name === "manual" && /^H|Figure|Formula/.test(tag)))
        expect(tags[tag] ?? 0, `${name} ${tag}`).toBe(bare.tags[tag] ?? 0);
  }
});
