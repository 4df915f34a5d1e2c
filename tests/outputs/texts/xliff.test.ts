// Texts of authors as XLIFF 2.1 and back: by the structure of the standard, with every text as it was, whatever stands in it.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { validateXML } from "xmllint-wasm";
import { authorTexts, idOf, type AuthorText } from "../../../language/outputs/texts/author-texts.ts";
import { readXliff } from "../../../language/outputs/texts/read-xliff.ts";
import { amissWith, readTranslations, translationOf } from "../../../language/outputs/texts/translations.ts";
import { xliffText, type Xliff } from "../../../language/outputs/texts/xliff.ts";
import { parse } from "../../../language/syntax/index.ts";
import { hostile } from "../hostile.ts";

const schema = readFileSync(join(import.meta.dirname, "xliff-core.xsd"), "utf8");

async function faults(text: string): Promise<readonly string[]> {
  const { valid, errors } = await validateXML({
    xml: [{ fileName: "texts.xlf", contents: text }],
    schema: [{ fileName: "xliff-core.xsd", contents: schema }],
  });
  return valid ? [] : errors.map(({ message }) => message);
}

const textOf = (text: string, target?: string): AuthorText & { target: string | undefined } => ({
  id: idOf("note", text),
  word: "note",
  text,
  line: 1,
  target,
});
const document = (texts: Xliff["files"][number]["texts"]): string =>
  xliffText({ from: "en", to: "de-AT", files: [{ original: `a "b" & <c>.strip`, texts }] });
/** As XML hands line ends back (XML 1.0, 2.11). */
const lines = (text: string): string => text.replace(/\r\n?/g, "\n");

test("hostile texts, as source and as target, come back as they went", async () => {
  const made = document(hostile.map((text) => textOf(text, `${text}x`))),
    read = readXliff(made);
  if ("problem" in read) throw new Error(read.problem);
  expect(await faults(made)).toEqual([]);
  expect([read.from, read.to, read.files[0]!.original]).toEqual(["en", "de-AT", `a "b" & <c>.strip`]);
  expect(read.files[0]!.units.map(({ source }) => source)).toEqual(hostile.map(lines));
  expect(read.files[0]!.units.map(({ target }) => target)).toEqual(hostile.map((text) => lines(`${text}x`)));
});

test("blanks and line ends inside a text stay, and a text without a translation has no target", async () => {
  const made = document([textOf("  two  blanks\n\tand a tab "), textOf("done", "fertig")]),
    read = readXliff(made);
  expect(await faults(made)).toEqual([]);
  expect(read).toMatchObject({
    files: [
      {
        units: [
          { source: "  two  blanks\n\tand a tab ", target: "" },
          { source: "done", target: "fertig" },
        ],
      },
    ],
  });
});

test("the schema finds a fault of each kind", async () => {
  const good = document([textOf("one", "eins"), textOf("two")]);
  for (const [from, to] of [
    ['version="2.1"', 'version="1.2"'],
    [' srcLang="en"', ""],
    [/ id="note-[^"]+"/, ""],
    ["<source>one</source>", ""],
    [/(<source>one<\/source>)(\s*)(<target>eins<\/target>)/, "$3$2$1"],
    ['state="initial"', 'state="new"'],
    ['canResegment="no"', 'canResegment="never"'],
    [
      /note-[0-9a-f]+(?=" canResegment="no" xml:space="preserve">\s*<notes><note category="place">note, line 1<\/note><\/notes>\s*<segment state="initial")/,
      idOf("note", "one"),
    ],
  ] as const) {
    const bad = good.replace(from, to);
    expect(bad, String(from)).not.toBe(good);
    expect(await faults(bad), String(from)).not.toEqual([]);
  }
});

const head = '<xliff xmlns="urn:oasis:names:tc:xliff:document:2.0" version="2.1" srcLang="en" trgLang="de">',
  unit = (inner: string): string => `${head}<file id="f1" original="a"><unit id="u1">${inner}</unit></file></xliff>`;

test("what a translator's tool may do to it is read: groups, segments, marks, other namespaces", () => {
  const segmented = unit(
    `<segment><source>One. </source><target>Eins. </target></segment><ignorable><source> </source></ignorable><segment><source>Two.</source><target><mrk id="m1" type="term">Zwei</mrk>.</target></segment>`,
  );
  expect(readXliff(segmented)).toMatchObject({
    files: [{ units: [{ source: "One.  Two.", target: "Eins.  Zwei." }] }],
  });
  const half = unit(
    `<segment><source>One.</source><target>Eins.</target></segment><segment><source>Two.</source></segment>`,
  );
  expect(readXliff(half)).toMatchObject({ files: [{ units: [{ target: "" }] }] });
  const grouped = `${head}<file id="f1" original="a"><group id="g"><unit id="u1" xmlns:m="urn:x"><m:info><m:source>no</m:source></m:info><segment><source>A</source><target>B</target></segment></unit></group></file></xliff>`;
  expect(readXliff(grouped)).toMatchObject({ files: [{ units: [{ id: "u1", source: "A", target: "B" }] }] });
});

test.each([
  ["", "no XML"],
  ["not xml", "no XML"],
  [head, "no XML"],
  ["<html/>", "no XLIFF 2 document"],
  [
    '<xliff version="1.2" xmlns="urn:oasis:names:tc:xliff:document:1.2"><file original="a"/></xliff>',
    "no XLIFF 2 document",
  ],
  [head.replace('"2.1"', '"3.0"') + "</xliff>", "version"],
  [head.replace(' trgLang="de"', "") + "</xliff>", "trgLang"],
  ['<!DOCTYPE x [<!ENTITY a "b">]>' + unit("<segment><source>&a;</source></segment>"), "document type"],
  [unit('<segment><source>A</source><target>B<ph id="1"/></target></segment>'), "the code ph"],
  [unit("<segment><source>A</source><target>&undefined;</target></segment>"), "no XML"],
])("what is none is refused in words: %s", (text, says) => {
  const read = readXliff(text);
  expect("problem" in read ? read.problem : "").toContain(says);
});

test("an id stays while the text does, wherever its line moves, and changes with the text", () => {
  const of = (source: string): readonly AuthorText[] => authorTexts({ tree: parse(source) }),
    one = `unit u "Unit" { part a "Cover" { photo "a.jpg" "The cover"  part-no "Number"  standard "ISO 1" } }\n`,
    moved = `# A line before it.\n\n${one.replace('part a "Cover"', 'part b "Lid"\n  part a "Cover"')}`;
  expect(of(one).map(({ word, text }) => [word, text])).toEqual([
    ["unit", "Unit"],
    ["part", "Cover"],
    ["photo", "The cover"],
  ]);
  for (const { id, text } of of(one)) expect(of(moved).find((each) => each.text === text)?.id).toBe(id);
  expect(of(one.replace("Cover", "Covers"))[1]!.id).not.toBe(of(one)[1]!.id);
});

test("a translation of what stood there before is never used", () => {
  const text = { id: idOf("danger", "560 V for 5 min."), text: "560 V for 5 min." },
    translate = translationOf({
      format: "stripdown-texts",
      version: 1,
      from: "en",
      lang: "de",
      texts: [{ id: text.id, source: "560 V for 5 min.", text: "560 V, 5 min lang." }],
    });
  expect(translate(text)).toBe("560 V, 5 min lang.");
  expect(translate({ ...text, text: "560 V for 10 min." })).toBeUndefined();
  expect(translate({ id: idOf("danger", "560 V for 10 min."), text: "560 V for 10 min." })).toBeUndefined();
});

test.each([
  ["Wait 5 min.", "5 min warten.", undefined],
  ["At least 24.95 mm.", "Mindestens 24,95 mm.", undefined],
  ["Wait 5 min.", "Warten.", "without 5"],
  ["560 V dc", "650 V DC", "without 560; with 650"],
  ["Take it off.", "Nehmen Sie 2 ab.", "with 2"],
  ["Take it off.", "  ", "empty"],
])("%s as %s: figures must be those of the source", (source, text, says) => {
  const amiss = amissWith(source, text);
  if (says === undefined) expect(amiss).toBeUndefined();
  else expect(amiss).toContain(says);
});

test.each([
  "",
  "{}",
  "[]",
  '{"format":"stripdown-texts","version":2}',
  '{"format":"stripdown-texts","version":1,"from":"en","lang":"../x","texts":[]}',
  '{"format":"stripdown-texts","version":1,"from":"en","lang":"de","texts":[{"id":1}]}',
])("a file that holds no translations is refused in words: %s", (text) => {
  expect(readTranslations(text)).toHaveProperty("problem");
});
