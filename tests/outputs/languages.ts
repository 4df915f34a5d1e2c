// Machines whose authors' texts are in letters of no catalogue, and every output of them as somebody reads it.

import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { manual } from "../../language/outputs/manual/manual.ts";
import type { Output, OutputInput, OutputOptions } from "../../language/outputs/output.ts";
import { recordCheck } from "../../language/outputs/record/check-output.ts";
import type { ReadingTry, WorkRecord } from "../../language/outputs/record/record.ts";
import { refitBook } from "../../language/outputs/refit-book/refit-book.ts";
import { outputs } from "../../language/outputs/registry.ts";
import { recordSummary } from "../../language/outputs/record/summary.ts";
import { facingWords, positionWords } from "../../language/tables/index.ts";
import { allWords, kinds } from "../../language/vocabulary/index.ts";
import { foreign, foreignSource, ownWords } from "../support/pseudo-language.ts";
import { compiled, type Compiled } from "./outputs-of.ts";
import { everyRemark, everyRemarkRecords } from "./record/every-remark.ts";
import { filledRecord } from "./record/filled.ts";
import { full, text as recordMachine } from "./record/machine.ts";
import { everyKind } from "./every-kind.ts";
import { everyBuild, everySentence, idle } from "./every-sentence.ts";
import { rig } from "./rig.ts";

const root = join(import.meta.dirname, "../..");

/** Words that stand in a source outside of strings and are none of its author's: what is printed for them is ours. */
const vocabulary: ReadonlySet<string> = new Set([
  ...allWords,
  ...Object.keys(positionWords),
  ...Object.keys(facingWords),
  ...Object.values(kinds).flatMap((list) => Object.keys(list)),
]);

export interface Foreign extends Compiled {
  /** Words that the author chose outside of strings. */
  readonly own: ReadonlySet<string>;
}

function foreignFiles(
  texts: Readonly<Record<string, string>>,
  roots: readonly string[],
  builds: "one build" | "every build" = "one build",
): Foreign {
  const files = Object.fromEntries(Object.entries(texts).map(([path, text]) => [path, foreignSource(text)])),
    media = Object.entries(texts).flatMap(([path, text]) =>
      [...text.matchAll(/\b(?:photo|video) "([^"]+)"/g)].map(([, name = ""]) =>
        join(dirname(path), name).replaceAll("\\", "/"),
      ),
    ),
    own = new Set([...Object.keys(files), ...media].flatMap((path) => path.split(/[/.\d-]/)));
  for (const text of Object.values(texts)) for (const word of ownWords(text, vocabulary)) own.add(word);
  // A word of position may be the name of a piece as well.
  for (const text of Object.values(texts))
    for (const [, pieces = ""] of text.matchAll(/\bpieces ([a-z][\w-]*(?:, ?[a-z][\w-]*)*)/g))
      for (const piece of pieces.split(/, ?/)) own.add(piece);
  // The reason of an allow is the author's, though it stands in a comment.
  for (const text of Object.values(texts))
    for (const [, reason = ""] of text.matchAll(/# allow [^:]+: (.+)/g))
      for (const [word] of reason.matchAll(/\p{L}+/gu)) own.add(word);
  const made = compiled(files, roots, media, builds);
  for (const { model } of made.performances)
    for (const { id } of model.things) for (const part of [id, ...id.split("-")]) own.add(part);
  return { ...made, own };
}

/** A file of the project with all that it uses. */
function foreignExample(path: string): Foreign {
  const files: Record<string, string> = {},
    queue = [path];
  for (let next = queue.shift(); next !== undefined; next = queue.shift()) {
    if (files[next] !== undefined) continue;
    const text = readFileSync(join(root, next), "utf8");
    files[next] = text;
    for (const [, used = ""] of text.matchAll(/^use "([^"]+)"/gm))
      queue.push(join(dirname(next), used).replaceAll("\\", "/"));
  }
  return foreignFiles(files, [path]);
}

export const machines: Readonly<Record<string, () => Foreign>> = {
  pump: () => foreignExample("examples/dairy-pump/pump.strip"),
  winch: () => foreignExample("examples/mooring-winch/strip.strip"),
  insulation: () => foreignExample("examples/mooring-winch/insulation.strip"),
  hoist: () => foreignExample("examples/hand-chain-hoist/hoist.strip"),
  receiver: () => foreignExample("examples/pressure-vessel-inspection/receiver.strip"),
  reducer: () => foreignExample("examples/reducer-family/reducer.strip"),
  actuator: () => foreignExample("examples/valve-actuator/actuator.strip"),
  table: () => foreignExample("examples/lift-cylinder/table.strip"),
  spindle: () => foreignExample("examples/milling-spindle/spindle.strip"),
  rig: () => foreignFiles({ "rig.strip": rig }, ["rig.strip"]),
  sentences: () => foreignFiles({ "sentences.strip": everySentence }, ["sentences.strip"]),
  idle: () => ({ ...foreignFiles({ "idle.strip": idle }, ["idle.strip"]), openFindings: 1 }),
  builds: () => foreignFiles({ "builds.strip": everyBuild }, ["builds.strip"], "every build"),
  kinds: () => foreignFiles({ "kinds.strip": everyKind }, ["kinds.strip"]),
  remarked: () => foreignFiles({ "remarked.strip": everyRemark }, ["remarked.strip"]),
  recorded: () => foreignFiles({ "job.strip": recordMachine }, ["job.strip"]),
};

/** Records in which everything is amiss once, and one that is made from another revision. */
function records(content: string): { file: string; record: WorkRecord }[] {
  const whole = { ...full(), content },
    [procedure] = whole.procedures,
    lines = procedure!.lines.map((line, i) => ({
      ...line,
      done: i % 3 !== 0,
      counts: i % 2 === 0 ? [] : (line.counts ?? []).map((each) => ({ ...each, count: each.count + 1 })),
      torques: (line.torques ?? []).flatMap((each, k) => (k > 0 ? [] : [{ ...each, value: 99.5 }])),
      readings: (line.readings ?? []).map((each) => ({
        ...each,
        tries: each.tries.flatMap((one): ReadingTry[] =>
          one.value === undefined
            ? [{ asItShouldBe: false }, { asItShouldBe: false }]
            : [
                { value: 0.5, unit: "bar" },
                { value: 1.25, unit: "mm" },
                { value: 1.5, unit: "mm" },
              ],
        ),
      })),
      signed: "",
      notAsWritten:
        i === 0
          ? (["sheared", "thread-damaged", "seized", "broken", "missing", "wrong-part", "other"] as const).map(
              (what) => ({
                what,
                note: foreign("note"),
                done: foreign("done"),
                wanted: foreign("part"),
              }),
            )
          : [],
    }));
  const amiss: WorkRecord = {
    ...whole,
    procedures: [{ ...procedure!, lines: [...lines, { line: "99.9", done: true }] }],
  };
  return [
    { file: "1", record: whole },
    { file: "2", record: amiss },
    { file: "3", record: { ...whole, content: "0".repeat(64) } },
    { file: "4", record: { ...whole, procedures: [] } },
    { file: "5", record: { ...whole, procedures: [{ ...procedure!, procedure: "job", unit: "job" }] } },
  ];
}

/** Every output that somebody reads; records only of the machine that they were made by. */
export function printed(name: string, input: OutputInput, options: OutputOptions): readonly Output<unknown>[] {
  const made =
    name === "recorded"
      ? records(manual.data(input, options).provenance.hash)
      : name === "remarked"
        ? everyRemarkRecords(input, options, foreign)
        : name === "idle"
          ? [{ file: "1", record: filledRecord(input, options) }]
          : undefined;
  if (!made) return outputs;
  // A book is made only of a record of this very content.
  const books = made.slice(0, { recorded: 2, remarked: 7 }[name] ?? 0).map(refitBook);
  return [...outputs, recordCheck(made), recordSummary(made), ...books] as readonly Output<unknown>[];
}

const signs: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"' };

/** Signs that are written by name or number in a page, as themselves. */
export const escapesGone = (page: string): string =>
  page.replace(/&(?:(amp|lt|gt|quot)|#(\d+));/g, (_, name: string | undefined, number: string) =>
    name === undefined ? String.fromCodePoint(Number(number)) : signs[name]!,
  );

/** What the page's script says, which stands in the page as data. */
const scriptSays = (page: string): string => {
  const [, data] = /<script type="application\/json" id="tablet-data">([^]*?)<\/script>/.exec(page) ?? [];
  return data === undefined ? "" : textsIn((JSON.parse(data) as { words: unknown }).words).join("\n");
};

/** What of a document for paper nobody reads: names that a program reads, drawings, which are read as such. */
const unread: ReadonlySet<string> = new Set(
  "is signal look svg file id lang l aligns base64 files date line margin".split(" "),
);

const isRun = (value: unknown): value is { readonly t: string } =>
  typeof value === "object" && value !== null && typeof (value as { t?: unknown }).t === "string";

/** Every text in data, the pieces of one text as one; what a check found is in the language of the checks, and marked so. */
export function textsIn(value: unknown): readonly string[] {
  if (typeof value === "string") return [value];
  if (Array.isArray(value)) {
    const all = value as readonly unknown[];
    return all.length > 0 && all.every(isRun)
      ? [all.map((run) => ((run as { l?: string }).l === "en-GB" ? "" : run.t)).join("")]
      : all.flatMap(textsIn);
  }
  return typeof value === "object" && value !== null
    ? Object.entries(value).flatMap(([key, each]) => (unread.has(key) ? [] : textsIn(each)))
    : [];
}

/** Every text that somebody reads: of a page the contents of its elements and the attributes that are read out. */
export function textsOf(format: string, made: string): string {
  if (format !== "html" && format !== "svg") return made;
  return escapesGone(
    made
      .replace(/<(style|script)\b[^]*?<\/\1>/g, "")
      .replace(/<meta\b[^>]*>/g, "")
      // What a check found is said in the one language of the checks, and marked so.
      .replace(/<span lang="en-GB">[^<]*<\/span>/g, "")
      .replace(/<[^>]*?\s(?:aria-label|alt|title|placeholder|label)="([^"]*)"[^>]*>/g, " $1\n")
      .replace(/<!DOCTYPE[^>]*>|<[^>]*>/g, "\n") + scriptSays(made),
  );
}

/** Each format that is for people, as its texts; the content hash is left out. */
export function everyText(
  name: string,
  input: OutputInput,
  options: OutputOptions,
): readonly { readonly of: string; readonly text: string }[] {
  return printed(name, input, options).flatMap((output) => {
    const data = output.data(input, options),
      written = Object.entries(output.formats)
        .filter(([format]) => format !== "json")
        .map(([format, { write }]) => ({
          of: `${output.name} ${format}`,
          text: textsOf(format, write(data, options)),
        })),
      paper = output.print ? [{ of: `${output.name} pdf`, text: textsIn(output.print(data, options)).join("\n") }] : [];
    return [...written, ...paper].map(({ of, text }) => ({ of, text: text.replace(/[0-9a-f]{16,}/g, "") }));
  });
}
