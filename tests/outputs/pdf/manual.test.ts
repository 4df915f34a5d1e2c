// The manual as a PDF: tagged throughout, in reading order, the same bytes every time, and an author's text prints as typed.

import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { charactersOf } from "../../../language/cli/pdf/coverage.ts";
import { pdfOf } from "../../../language/cli/pdf/pdf.ts";
import { howToGetIt, load, packages, renderer } from "../../../language/cli/pdf/renderer.ts";
import { manualDocument } from "../../../language/outputs/manual/build.ts";
import { manualPrint } from "../../../language/outputs/pdf/manual-print.ts";
import type { PrintDocument } from "../../../language/outputs/pdf/print.ts";
import type { OutputInput, OutputOptions } from "../../../language/outputs/output.ts";
import { shownOnOneLine } from "../../../language/outputs/text/shown.ts";
import { hostile } from "../hostile.ts";
import { compiledExample, compiledText, options } from "../outputs-of.ts";
import { readPdf } from "./pdf-text.ts";
import { checkUa } from "./ua-check.ts";

const root = join(import.meta.dirname, "../../..");
const examples = {
  winch: "mooring-winch/strip.strip",
  pump: "dairy-pump/pump.strip",
  actuator: "valve-actuator/actuator.strip",
} as const;

const printOf = (input: OutputInput, more: Partial<OutputOptions> = {}) => {
  const all = { ...options, ...more };
  return manualPrint(manualDocument(input, all), all);
};
const bytesOf = async (input: OutputInput, more: Partial<OutputOptions> = {}): Promise<Buffer> =>
  (await pdfOf(printOf(input, more))).bytes;

/** On A4 each is asked for twice. */
const printed = new Map<string, Promise<Buffer>>();
const exampleOn = (file: string, paper: "a4" | "letter"): Promise<Buffer> => {
  const key = `${file} ${paper}`,
    made = printed.get(key) ?? bytesOf(compiledExample(file), { paper });
  printed.set(key, made);
  return made;
};

test.each(Object.entries(examples))("%s: no fault against PDF/UA-1, on both papers", async (_, file) => {
  for (const paper of ["a4", "letter"] as const)
    expect((await checkUa(await exampleOn(file, paper))).findings).toEqual([]);
});

test.each(Object.entries(examples))(
  "%s: every page says that it is a draft, its number and the content",
  async (_, file) => {
    const document = printOf(compiledExample(file)),
      { pages } = await readPdf(await exampleOn(file, "a4"));
    pages.forEach(({ painted }, i) => {
      // Twice beside the mark across the page: in the head and in the foot.
      expect(painted.match(/DRAFT/g)!.length, `page ${i + 1}`).toBeGreaterThanOrEqual(3);
      expect(painted).toContain(`${i + 1} / ${pages.length}`);
      expect(painted).toContain(document.foot);
    });
  },
);

test("what is read aloud stands in the order of the work: safety first, a warning before its action", async () => {
  const input = compiledExample(examples.actuator),
    document = manualDocument(input, options),
    { pages, bookmarks, title } = await readPdf(await bytesOf(input)),
    text = pages.map(({ tagged }) => tagged).join(" ");
  expect(title).toBe(`${document.title}: ${document.subtitle}`);
  const afterContents = text.slice(text.lastIndexOf("Index", text.indexOf("What this manual is for", 400)));
  let at = 0;
  const next = (words: string): void => {
    const found = afterContents.indexOf(shownOnOneLine(words), at);
    expect(found, `“${words}” after sign ${at}`).toBeGreaterThan(-1);
    at = found;
  };
  next("Safety first");
  for (const hazard of document.safety.hazards) next(`${hazard.kindTitle}: ${hazard.name}`);
  next("Tools and gear");
  const chapter = document.chapters[0]!;
  for (const group of [...chapter.strip, ...chapter.refit, ...chapter.finish]) {
    next(`${group.number} ${group.title}`);
    for (const line of group.lines) {
      if (line.is === "action") next(line.says);
      else if (line.is === "hazard") next(`${line.hazard.kindTitle}: ${line.hazard.name}`);
      else if (line.is === "message") next(line.text);
    }
  }
  next("Record");
  const groups = [...chapter.strip, ...chapter.refit].map((group) => `${group.number} ${group.title}`);
  expect(bookmarks).toEqual(expect.arrayContaining(["Safety first", "Strip", "Refit", ...groups]));
});

test("both systems of units stand beside a torque, and every action has its number", async () => {
  const input = compiledExample(examples.pump),
    text = (await readPdf(await bytesOf(input))).pages.map(({ tagged }) => tagged).join(" ");
  expect(text).toMatch(/Torque: \d+ N·m \(\d+ lbf·ft\)/);
  const chapter = manualDocument(input, options).chapters[0]!;
  for (const line of [...chapter.strip, ...chapter.refit, ...chapter.finish].flatMap((group) => group.lines))
    if (line.is === "action") expect(text).toContain(`${line.id} ${shownOnOneLine(line.says)}`.slice(0, 40));
});

test("pictures say in words what they show, and drawings all that they draw", async () => {
  const input = compiledExample(examples.actuator),
    file = readFileSync(join(root, "examples/valve-actuator/photos/spring-end.jpg")).toString("base64"),
    bytes = await bytesOf(input, { picture: () => ({ type: "image/jpeg", base64: file }) }),
    text = (await readPdf(bytes)).pages.map(({ tagged }) => tagged).join(" ");
  expect(text).toContain("[Spring end: eight housing screws and the two holes of the clamp rods]");
  expect(text).toMatch(/\(\S+ the spring housing screws, \S+ the plugs of the clamp rod holes\)/);
  const { diagrams } = manualDocument(input, options);
  for (const diagram of diagrams) expect(text).toContain(shownOnOneLine(diagram.description).slice(0, 80));
  expect((await checkUa(bytes)).findings).toEqual([]);
});

test("a damaged picture is one line that names it, no crash", async () => {
  const input = compiledExample(examples.pump),
    base64 = Buffer.from("no picture at all").toString("base64");
  await expect(bytesOf(input, { picture: () => ({ type: "image/png", base64 }) })).rejects.toThrow(
    /^the picture photos\/impeller\.jpg cannot be printed: [^\n]+$/,
  );
});

test("the file's date is the one given, and nothing of the clock", async () => {
  const input = compiledExample(examples.pump),
    dated = (await bytesOf(input, { date: "2026-03-31" })).toString("latin1"),
    undated = (await bytesOf(input)).toString("latin1"),
    odd = (await bytesOf(input, { date: "spring 2026" })).toString("latin1");
  expect(dated).toContain("D:20260331");
  for (const text of [undated, odd]) expect(text).not.toMatch(/CreationDate|ModDate|xmp:CreateDate/);
});

const box = (title: string, step: string): string => `unit box "${title}" {
  base case
  part case "Case"
  part lid "Lid"
  fastener screws screw "Lid screws" { count 4  size M6  joins lid to case }
}
procedure open-it "Open it" for box {
  aim lid off
  step a "${step}" { undo screws  remove lid }
}
`;

test("a character that no font has is printed by its number, and told with its text", async () => {
  const { bytes, says } = await pdfOf(printOf(compiledText(box("Box", "Open the 🔩 and the 電 side")))),
    { pages } = await readPdf(bytes);
  expect(says).toEqual([
    expect.stringMatching(
      /^no font of the PDF has these characters, which are printed by number: “🔩” \(U\+1F529\) in “1 Open the 🔩 and the 電 side”; “電” \(U\+96FB\) in [^\n]+Chinese, Japanese and Korean need a font of this machine: --font FILE\.ttf[^\n]+$/,
    ),
  ]);
  expect(pages.map(({ tagged }) => tagged).join(" ")).toContain("Open the [U+1F529] and the [U+96FB] side");
  expect((await checkUa(bytes)).findings).toEqual([]);
  expect((await pdfOf(printOf(compiledText(box("Box", "Open the ⌀ 8 → side"))))).says).toEqual([]);
});

test("text from right to left is told in one line", async () => {
  const { says } = await pdfOf(printOf(compiledText(box("Box", "Open שמאל side"))));
  expect(says).toEqual([
    expect.stringMatching(/^text from right to left is not set well in the PDF[^\n]+“1 Open שמאל side”[^\n]+$/),
  ]);
});

test("a font of the machine takes what ours lack; what is no font is refused in one line", async () => {
  const ttf = join(root, "node_modules/dejavu-fonts-ttf/ttf"),
    own = charactersOf(readFileSync(join(ttf, "DejaVuMathTeXGyre.ttf"))),
    { has } = await renderer(),
    sign = String.fromCodePoint([...own].find((code) => code > 0x1d400 && !has(code))!),
    document = printOf(compiledText(box("Box", `Open the ${sign} side`)));
  expect((await pdfOf(document)).says).toHaveLength(1);
  const { bytes, says } = await pdfOf(document, join(ttf, "DejaVuMathTeXGyre.ttf")),
    { pages } = await readPdf(bytes);
  expect(says).toEqual([]);
  expect(pages.map(({ tagged }) => tagged).join(" ")).toContain(`Open the ${sign} side`);
  expect((await checkUa(bytes)).findings).toEqual([]);
  for (const path of [join(root, "package.json"), join(root, "none.ttf")])
    await expect(pdfOf(document, path)).rejects.toThrow(/^--font \S+: [^\n]+$/);
});

/** What would act on a text in the renderer's own language, were it read as such. */
const markup = [
  `#import "x.typ": *`,
  "#panic()",
  `#read("/etc/passwd")`,
  "$ x^2 $ _a_ *b* `c` @ref <label> ~ \\ -- ---",
  "= Heading",
  "/ term: text",
  "+ one",
  "- two",
  "// gone",
  "/* gone */",
  "https://example.org/a",
];

test("hostile texts print as typed, and are nothing else", async () => {
  const { has } = await renderer(),
    quoted = (text: string): string => text.replace(/["\\]/g, "\\$&").replaceAll("\n", " ");
  // The reader used here loses the sign after one that has no shape; other readers give both.
  const texts = [...hostile, ...markup]
    .filter((text) => !/[\u200B-\u200F\u2060]/.test(text))
    .filter((text) => [...shownOnOneLine(text)].every((sign) => has(sign.codePointAt(0)!) || sign === " "));
  expect(texts.length).toBeGreaterThan(60);
  const machine = (notes: readonly string[]): string =>
    box("Box", "Open").replace("undo", `${notes.map((note) => `note "${quoted(note)}"`).join("\n")}\nundo`);
  const bytes = await bytesOf(compiledText(machine(texts))),
    bare = await checkUa(await bytesOf(compiledText(machine([])))),
    { findings, tags } = await checkUa(bytes),
    words = (await readPdf(bytes)).pages
      .map(({ tagged }) => tagged)
      .join(" ")
      .replace(/\s/g, "");
  expect(findings).toEqual([]);
  for (const text of texts) {
    // Of a script that runs from right to left the words come as they stand on the line: each for itself then.
    const said = shownOnOneLine(text),
      parts = /[\u0590-\u08FF]/.test(said) ? said.split(" ") : [said];
    for (const part of parts) expect(words.includes(part.replace(/\s/g, "")), JSON.stringify(text)).toBe(true);
  }
  for (const tag of ["H1", "H2", "L", "Table", "Figure", "Link", "Formula"])
    expect(tags[tag], tag).toBe(bare.tags[tag]);
});

test("in every place of the template a text is a text", async () => {
  const document = printOf(compiledExample(examples.actuator), { date: "2026-03-31" }),
    bare = (await checkUa((await pdfOf(document)).bytes)).tags;
  for (const text of markup.slice(0, 5)) {
    let places = 0;
    const put = (value: unknown, key: string): unknown => {
      if (["is", "lang", "id", "svg", "signal", "page", "widths", "aligns", "date"].includes(key)) return value;
      if (typeof value === "string" && value !== "") {
        places++;
        return text;
      }
      if (Array.isArray(value)) return value.map((each) => put(each, key));
      if (typeof value !== "object" || value === null) return value;
      return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, put(each, name)]));
    };
    const hostileDocument = put(document, "") as PrintDocument,
      bytes = (await pdfOf(hostileDocument)).bytes,
      { findings, tags } = await checkUa(bytes);
    expect(places).toBeGreaterThan(500);
    expect(findings, text).toEqual([]);
    for (const tag of ["H1", "H2", "L", "LI", "Table", "TD", "Figure"])
      expect(tags[tag], `${tag}: ${text}`).toBe(bare[tag]);
  }
});

test("a word that is wider than its place breaks, and is read as one", async () => {
  const long = `M${"0123456789".repeat(30)}Z`,
    input = compiledText(box(long, long)),
    document = printOf(input),
    words = (await readPdf((await pdfOf(document)).bytes)).pages.map(({ tagged }) => tagged).join(" ");
  expect(words.replace(/\s/g, "").split(long).length).toBeGreaterThan(3);
});

test("two runs, another time zone, language and folder give the same bytes", () => {
  const folder = mkdtempSync(join(tmpdir(), "stripdown-pdf-"));
  try {
    const run = (cwd: string, env: Readonly<Record<string, string>>): Buffer => {
      const { stdout, stderr } = spawnSync(
        process.execPath,
        [
          join(root, "language/cli/start.ts"),
          ..."manual --as pdf --quiet --date 2026-03-31".split(" "),
          "examples/valve-actuator/actuator.strip",
        ],
        { cwd, env: { ...process.env, ...env }, maxBuffer: 1 << 26 },
      );
      expect(stderr.toString()).toBe("");
      return stdout;
    };
    const first = run(root, { TZ: "UTC", LANG: "C" });
    expect(first.subarray(0, 5).toString()).toBe("%PDF-");
    expect(run(root, { TZ: "Pacific/Auckland", LANG: "de_DE.UTF-8", LC_ALL: "de_DE.UTF-8" }).equals(first)).toBe(true);
    cpSync(join(root, "examples"), join(folder, "examples"), { recursive: true });
    expect(run(folder, { TZ: "America/Lima" }).equals(first)).toBe(true);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}, 120_000);

test("where the renderer is missing, one line says how to get it, with the versions of package.json", async () => {
  const none = Object.assign(
    () => {
      throw new Error("not found");
    },
    {
      resolve: () => {
        throw new Error("not found");
      },
    },
  ) as unknown as NodeJS.Require;
  await expect(load(none)).rejects.toThrow(howToGetIt);
  expect(howToGetIt).not.toContain("\n");
  const { optionalDependencies } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as {
    optionalDependencies: Record<string, string>;
  };
  for (const each of packages)
    expect(optionalDependencies[each.slice(0, each.lastIndexOf("@"))]).toBe(each.split("@").at(-1));
});
