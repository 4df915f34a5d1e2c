// Hostile texts through every place of every output: each prints as it is written, behind it the mark of its place, and becomes nothing
// else. The places come from the vocabulary and from the published shape of a record, the outputs from the folders of outputs: what is new
// and goes through here unseen is told.

import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import type { Output } from "../../language/outputs/output.ts";
import { readRecord } from "../../language/outputs/record/read-record.ts";
import { outputs } from "../../language/outputs/registry.ts";
import { shown } from "../../language/outputs/text/shown.ts";
import { fieldOfMark, fields, filledWith, type Filled } from "./every-output.ts";
import { languageFields, recordFields, written, type Field } from "./every-text.ts";
import { hostile } from "./hostile.ts";
import { escapesGone } from "./languages.ts";

/** Places that no output prints, and why. */
const unprinted: Readonly<Record<Field, string>> = {
  "file torque-table": "the torque itself is printed",
  "file fastener": "what is like it has a name of its own",
  "part photo": "the picture is printed",
  "unit variants 2": "another build",
  "procedure task": "printed where the task is done alone",
  "procedure date": "the caller gives a date here",
  "record lines[].torques[].initials": "kept in the record",
  "record lines[].signed": "kept in the record",
  "record instruments[].note": "kept in the record",
};

const formatsOf = ({ outputs: all, input, options }: Filled): { of: string; format: string; made: string }[] =>
  all.flatMap((output) => {
    // Every format is written from the same data, as whoever asks for several has it.
    const data = output.data(input, options);
    return Object.entries(output.formats).map(([format, writer]) => ({
      of: `${output.name} ${format}`,
      format,
      made: writer.write(data, options),
    }));
  });

const plain = filledWith(() => "plain"),
  plainly = new Map(formatsOf(plain).map((each) => [each.of, each.made]));

const ofPlain = new Map<string, unknown>();
/** What every hostile text is held against is asked of the plain page once. */
function plainOnce<Answer>(question: string, ask: () => Answer): Answer {
  if (!ofPlain.has(question)) ofPlain.set(question, ask());
  return ofPlain.get(question) as Answer;
}

/** How often each place is printed. */
const printedIn = (made: string): ReadonlyMap<Field, number> => {
  const found = new Map<Field, number>();
  for (const [mark] of made.matchAll(/qz[a-j]{3}zq/g)) {
    const field = fieldOfMark(mark);
    found.set(field, (found.get(field) ?? 0) + 1);
  }
  return found;
};

test("every place for a text is filled: each string of the language, each free text of a record", () => {
  expect(written().errors).toEqual([]);
  const filled = new Set(written().edits.map(({ field }) => field));
  expect(languageFields.filter((field) => !filled.has(field))).toEqual([]);
  expect(languageFields.length).toBeGreaterThan(320);
  const record = JSON.stringify(plain.record);
  expect(recordFields.filter((field) => !printedIn(record).has(field))).toEqual([]);
  expect(recordFields.length).toBeGreaterThan(25);
});

test("every place is printed in some output, or it is known why not", () => {
  const printed = new Set(
    [...plainly].flatMap(([of, made]) => (of.endsWith(" json") ? [] : [...printedIn(made).keys()])),
  );
  expect(fields.filter((field) => !printed.has(field))).toEqual(Object.keys(unprinted));
});

test("every output there is goes through here", async () => {
  const folder = join(import.meta.dirname, "../../language/outputs"),
    names = new Set(plain.outputs.map(({ name }) => name));
  for (const path of readdirSync(folder, { recursive: true, encoding: "utf8" })) {
    if (!path.endsWith(".ts") || path.startsWith("wording")) continue;
    const source = readFileSync(join(folder, path), "utf8");
    if (!/\boutput<|Output\(|tableSheet\(/.test(source)) continue;
    const module = (await import(join(folder, path))) as Readonly<Record<string, unknown>>;
    for (const each of Object.values(module))
      if (typeof each === "object" && each !== null && "formats" in each && "data" in each)
        expect(names.has((each as Output<unknown>).name), path).toBe(true);
    // Those that are made of a record; what makes the outputs above is itself none.
    for (const [, name = ""] of source.matchAll(/export function (\w+)\([^()]*(?:\([^()]*\)[^()]*)*\): Output</g))
      expect(["recordCheck", "recordSummary", "refitBook", "output"], path).toContain(name);
  }
  expect(plain.outputs).toHaveLength(outputs.length + 3);
});

/** Labels and the strip diagram have as many sheets as their words need, each with its title. */
const flows = (of: string): boolean => /^(?:labels|draw strip) /.test(of);
const withoutDiagram = (page: string): string => page.replace(/<section id="diagram"[^]*?<\/section>/, "");

/** Elements and their attributes, without what these say: what a document is made of, whatever its texts say. */
const skeleton = (html: string): string =>
  (
    withoutDiagram(html)
      .replace(/(<script[^>]*>)[^]*?<\/script>/g, "$1</script>")
      // A drawing has as many lines as its words need: of what it may be made is held below.
      .replace(/(<svg xmlns[^>]*>)[^]*?<\/svg>/g, "$1</svg>")
      .match(/<[^!][^>]*>/g) ?? []
  )
    .map((tag) => tag.replace(/"[^"]*"/g, '""'))
    .join("")
    .replaceAll(' class=""', "");

const drawn = new Set("svg title desc g path rect circle line polygon text image tspan".split(" "));
const acting = /[\u202A-\u202E\u2066-\u2069\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F-\u009F\u2028\u2029\uFEFF]/; // oxlint-disable-line no-control-regex

/** Styles without what their strings say. */
const stylesOf = (page: string): readonly string[] =>
  (page.match(/<style>[^]*?<\/style>/g) ?? []).map((style) => style.replace(/"(?:\\.|[^"\\<])*"/g, '""'));

const addresses = /^(?:#|data:image\/|[\w%.~!*'()-]+(?:#t=[\d,.]+)?$)/,
  attributes = /\son\w*=|\sstyle=|'|<(?:iframe|object|embed|link|base|form)\b/;

/**
 * What a page has become beside what it is.
 * @param of the output and format that both pages are of.
 * @param isFlowing it has as many lines and pages as its words need.
 */
function amissInMarkup(of: string, made: string, other: string, isFlowing: boolean): string[] {
  const amiss: string[] = [];
  const same = (what: string, ask: (page: string) => unknown): void => {
    if (JSON.stringify(ask(made)) !== plainOnce(`${what} of ${of}`, () => JSON.stringify(ask(other))))
      amiss.push(`another ${what}`);
  };
  same("skeleton", (page) => (isFlowing ? [...new Set(skeleton(page).match(/<[^>]*>/g))].sort() : skeleton(page)));
  same("script", (page) => page.match(/<script>[^]*?<\/script>/g));
  same("style", stylesOf);
  const page = made
    .replace(/<(script|style)>[^]*?<\/\1>/g, "")
    .replace(/(<script [^>]*>)([^]*?)<\/script>/g, (_, tag: string, data: string) => {
      JSON.parse(data);
      if (/[<>&]/.test(data)) amiss.push("data with a sign of markup");
      return tag;
    });
  for (const [, drawing = ""] of page.matchAll(/<svg xmlns[^>]*>([^]*?)<\/svg>/g))
    for (const [tag, element = ""] of drawing.matchAll(/<\/?([^\s>/]+)[^>]*>/g))
      if (!drawn.has(element)) amiss.push(tag);
  for (const tag of page.match(/<[a-z][^>]*>/g) ?? []) {
    if (attributes.test(tag.replace(/"[^"]*"/g, '""'))) amiss.push(tag);
    for (const [, value = ""] of tag.matchAll(/\s(?:src|href|xlink:href|action|data|srcset|poster)="([^"]*)"/g))
      if (!addresses.test(escapesGone(value))) amiss.push(tag);
  }
  return amiss;
}

const formula = /^\s*[=+\-@＝＋－＠\t\n|%]/;
function amissInTable(made: string): string[] {
  const [head, ...rows] = cellsOf(made);
  return rows.flatMap((row) => [
    ...(row.length === head!.length ? [] : [`${row.length} cells: ${row.join("|")}`]),
    ...row.filter((cell) => formula.test(cell)),
  ]);
}

/** As somebody reads it, without the blanks and the tags that long texts are broken with, and whatever begins a sentence. */
const read = (format: string, made: string): string =>
  tight(
    format === "html" || format === "svg" ? pageText(made) : format === "csv" ? cellsOf(made).flat().join(" ") : made,
  );

const tight = (text: string): string => text.replace(/\s/g, "").toLowerCase();

/** A label that goes on has its head again. Data is read as texts too. */
const pageText = (made: string): string =>
  escapesGone(attributesSaid(made.replace(/<p class="head">[^]*?<\/p>|<(script|style)>[^]*?<\/\1>/g, ""))) +
  [...made.matchAll(/<script [^>]*>([^]*?)<\/script>/g)]
    .flatMap(([, data = ""]) => textsIn(JSON.parse(data)))
    .map(shown)
    .join(" ");

/** The texts of elements, and those of attributes behind them. */
const attributesSaid = (page: string): string =>
  page.replace(/<script [^>]*>[^]*?<\/script>|<[^!][^>]*>/g, "") +
  (page.match(/<[^!][^>]*>/g) ?? [])
    .flatMap((tag) => [...tag.matchAll(/\s(?!href)[\w-]+="([^"]*)"/g)].map(([, value]) => value))
    .join(" ");

function textsIn(value: unknown): string[] {
  if (typeof value === "string") return [value];
  return typeof value === "object" && value !== null
    ? Object.entries(value).flatMap(([key, each]) => [key, ...textsIn(each)])
    : [];
}

test.each(hostile.map((text, i) => [i + 1, text] as const))(
  "hostile text %i prints as it is written in every place of every output, and is nothing else",
  (_, text) => {
    const filled = filledWith(() => text);
    for (const { of, format, made } of formatsOf(filled)) {
      const other = plainly.get(of)!,
        line = text.replaceAll("\n", " "),
        own = tight(format === "json" ? JSON.stringify(line).slice(1, -1) : shown(line)),
        page = read(format, made),
        amiss = [];
      // Nothing of it is lost: every mark has the text before it, and stands as often as behind any other text.
      for (const { 0: mark, index } of page.matchAll(/qz[a-j]{3}zq/g)) {
        const before = page.slice(Math.max(0, index - own.length), index);
        if (before !== own) amiss.push(`${fieldOfMark(mark)}: ${before}`);
      }
      const bare = withoutDiagram(made),
        places = printedIn(bare === made ? page : read(format, bare)),
        plainPlaces = plainOnce(`places of ${of}`, () => printedIn(read(format, withoutDiagram(other))));
      if (flows(of)) expect([...places.keys()].sort(), of).toEqual([...plainPlaces.keys()].sort());
      else expect(places, of).toEqual(plainPlaces);
      if (format !== "json" && acting.test(made)) amiss.push("a sign that acts");
      if (format === "html" || format === "svg") amiss.push(...amissInMarkup(of, made, other, flows(of)));
      if (format === "csv") amiss.push(...amissInTable(made));
      if (format === "text" && made.includes("\t")) amiss.push("a tab");
      expect(amiss, of).toEqual([]);
    }
  },
);

test("a file that is no record says so without a sign that acts", () => {
  for (const text of hostile) {
    const read = readRecord(JSON.stringify({ format: "stripdown-record", version: 2, [text]: 1 }));
    expect("problem" in read && shown(read.problem)).toBe("problem" in read && read.problem);
  }
});

test("signs that act are shown by their number, NUL and lone surrogates too", () => {
  expect(shown("a\u0000b\u202Ec\uD800d\u2028")).toBe("a‹U+0000›b‹U+202E›c‹U+D800›d‹U+2028›");
  expect(shown("א ב é 漢 😀 \t")).toBe("א ב é 漢 😀 \t");
});

/** Cells by RFC 4180. */
function cellsOf(csv: string): string[][] {
  const rows: string[][] = [[""]];
  let quoted = false;
  for (let i = 0; i < csv.length; i++) {
    const sign = csv[i]!,
      row = rows[rows.length - 1]!,
      last = row.length - 1;
    if (quoted) {
      if (sign === '"' && csv[i + 1] === '"') {
        row[last] += '"';
        i++;
      } else if (sign === '"') quoted = false;
      else row[last] += sign;
    } else if (sign === '"' && row[last] === "") quoted = true;
    else if (sign === ",") row.push("");
    else if (sign === "\r" && csv[i + 1] === "\n") {
      i++;
      rows.push([""]);
    } else row[last] += sign;
  }
  return rows.slice(0, -1);
}
