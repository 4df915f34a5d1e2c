// The authors' texts of a project in another language, where files beside the sources hold them. Command line and editor print by it.

import type { Performance } from "../bench/trace.ts";
import { CannotMake } from "../outputs/output.ts";
import type { PrintDocument } from "../outputs/pdf/print.ts";
import type { AuthorText } from "../outputs/texts/author-texts.ts";
import type { Translations } from "../outputs/texts/translations.ts";
import { checkProject, newMemo, type CheckMemo, type Checked } from "./check-project.ts";
import type { Settings } from "../world/settings.ts";
import type { World } from "../world/world.ts";

/** What the texts are put into, and how files beside the sources are read. */
export interface ForOtherWords {
  readonly checked: Pick<Checked, "performances">;
  /** The trees of the files that it was read from. */
  readonly trees: CheckMemo["trees"];
  readonly world: World;
  /** The files that were asked for. */
  readonly roots: readonly string[];
  readonly settings: Settings;
  /** How a path is shown. */
  readonly show: (path: string) => string;
  readonly read: World["read"];
}

export interface OtherWords {
  /** The tag of the language that the authors wrote in. */
  readonly from: string;
  /** The same performance in the other language. */
  readonly of: (performance: Performance) => Performance;
  /** A page with the language of each text that has no translation. */
  readonly marked: (page: string) => string;
  /** The same of a document for paper. */
  readonly markedPrint: (document: PrintDocument) => PrintDocument;
  /** What is to be told of texts without a translation, in whole lines; "" where there is none. */
  readonly says: string;
}

/** The texts beside a source in a language; undefined where there are none. Throws CannotMake for a file that cannot be read. */
export async function translationsBeside(
  { read: readText, show }: Pick<ForOtherWords, "read" | "show">,
  source: string,
  lang: string,
): Promise<Translations | undefined> {
  const { readTranslations, translationsPath } = await import("../outputs/texts/translations.ts"),
    path = translationsPath(source, lang),
    text = readText(path);
  if (!("text" in text)) {
    if (text.problem === "missing") return undefined;
    throw new CannotMake(`${show(path)}: ${text.says}`);
  }
  const read = readTranslations(text.text);
  if ("problem" in read) throw new CannotMake(`${show(path)} holds no translations: ${read.problem}`);
  if (read.lang.toLowerCase() !== lang.toLowerCase())
    throw new CannotMake(`${show(path)}: its texts are in ${read.lang}, its name says ${lang}`);
  return read;
}

/** Undefined where no language is asked for, or no file beside the sources holds it. `asked` comes before the catalogue's own tag. */
export async function inOtherWords(
  project: ForOtherWords,
  asked: string | undefined,
  tag: string,
): Promise<OtherWords | undefined> {
  if (asked === undefined) return undefined;
  const { checked, trees, world, roots, settings, show } = project,
    { isTag, translationOf } = await import("../outputs/texts/translations.ts"),
    found = new Map<string, Translations>();
  for (const path of trees.keys())
    for (const lang of new Set([asked, tag])) {
      const of = found.has(path) || !isTag(lang) ? undefined : await translationsBeside(project, path, lang);
      if (of) found.set(path, of);
    }
  if (found.size === 0) return undefined;
  const { translated } = await import("../outputs/texts/translated.ts"),
    { withLang } = await import("../outputs/texts/lang-marks.ts"),
    { withLangRuns } = await import("../outputs/texts/lang-runs.ts");
  const other = translated(trees, (path) => {
    const of = found.get(path);
    return of && translationOf(of);
  });
  const again = checkProject(world, roots, { settings, memo: { ...newMemo(), trees: other.trees } }),
    others = new Map(again.performances.map((performance) => [keyOf(performance), performance])),
    pairs = new Map(checked.performances.map((performance) => [performance, others.get(keyOf(performance))]));
  // Words are no facts: the bench does the same with other ones. Anything else would print a way back that nobody checked.
  for (const [one, same] of pairs)
    if (!same || shapeOf(one) !== shapeOf(same)) throw new Error("a translation changed what the bench does");
  const [{ from }] = [...found.values()] as [Translations],
    missing = [...other.missing],
    texts = new Set(missing.flatMap(([, all]) => all.map(({ text }) => text)));
  return {
    from,
    of: (performance) => pairs.get(performance)!,
    marked: (page) => withLang(page, texts, from),
    markedPrint: (document) => withLangRuns(document, texts, from),
    says: missing.map(([path, all]) => untranslatedLine(show(path), all, asked)).join(""),
  };
}

const keyOf = ({ procedure, model }: Performance): string =>
  [procedure.at.file, procedure.id, model.unit, model.build].join("\n");

const shapeOf = ({ procedure, model, strip, refit, written, finish, events }: Performance): string =>
  [
    procedure.id,
    model.unit,
    model.build,
    ...[strip, refit, written, finish, events].map((list) => list.length),
    ...strip.map(({ act, refused }) => `${act.verb}${refused ? "!" : ""}`),
    ...refit.map(({ op }) => `${op.verb} ${op.things.join(" ")}`),
  ].join("\n");

function untranslatedLine(file: string, texts: readonly AuthorText[], lang: string): string {
  const some = texts.slice(0, 3).map(({ line, text }) => `line ${line} ${JSON.stringify(short(text))}`);
  return `${file}: ${texts.length === 1 ? "1 text is" : `${texts.length} texts are`} not translated into ${lang} and printed as written: ${some.join(", ")}${texts.length > some.length ? " …" : ""}\n`;
}

const short = (text: string): string =>
  (text.length > 40 ? `${text.slice(0, 39).trimEnd()}…` : text).replace(/\s+/g, " ");
