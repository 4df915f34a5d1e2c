// The texts of authors out to a translator and back: an XLIFF document, and files beside the sources that `--lang` reads.

import { resolve } from "node:path";
import { CannotRun, command, type Io, type ParsedArgs } from "../command.ts";
import { writeOutput } from "../files.ts";
import { translationsBeside } from "../other-words.ts";
import { isOn, option, runProject, target, type ProjectRun } from "../project-run.ts";

export default command({
  name: "text",
  summary: "The authors' texts out to a translator (export, as XLIFF 2.1) and back (import): --lang then prints them",
  usage: "text export|import [FILE.xlf] [FILE | FOLDER | GLOB]…",
  example: "stripdown text export examples/dairy-pump --lang de --to pump.de.xlf",
  options: [
    { name: "lang", value: "TAG", about: "With export: the language to translate into, by its tag: de, fr-CA" },
    { name: "from", value: "TAG", about: "With export: the language that the authors wrote in (en if not said)" },
    { name: "to", value: "FILE", about: "With export: write to this file; else, or with -, to standard output" },
    { name: "force", about: "Write over a file that this tool did not make" },
    { name: "quiet", about: "Do not say what was written, or what is missing" },
  ],
  async run(args, io) {
    const [what, ...positionals] = args.positionals,
      rest: ParsedArgs = { ...args, positionals };
    if (what === "export") return exported(rest, io);
    if (what === "import") return imported(rest, io);
    throw new CannotRun(
      what === undefined ? "text what? It is export or import" : `text ${what}: it is export or import, then the files`,
    );
  },
});

async function tagIn(args: ParsedArgs, name: string): Promise<string | undefined> {
  const { isTag } = await import("../../outputs/texts/translations.ts"),
    tag = option(args, name);
  if (tag !== undefined && !isTag(tag)) throw new CannotRun(`--${name} ${tag}: a language tag is due, as de or fr-CA`);
  return tag;
}

/** The project, or undefined where some of it cannot be read: that is told. */
async function projectOf(args: ParsedArgs, io: Io): Promise<ProjectRun | undefined> {
  const project = await runProject(args, io),
    { unreadable } = project.checked;
  for (const { path, says } of unreadable) io.err(`${project.show(path)}: ${says}\n`);
  return unreadable.length > 0 ? undefined : project;
}

async function exported(args: ParsedArgs, io: Io): Promise<number> {
  const to = await tagIn(args, "lang"),
    from = (await tagIn(args, "from")) ?? "en";
  if (to === undefined) throw new CannotRun("text export: into which language? Say --lang de, by its tag");
  if (to.toLowerCase() === from.toLowerCase())
    throw new CannotRun(`text export: from ${from} into ${to} there is nothing to do`);
  const project = await projectOf(args, io);
  if (!project) return 2;
  const { authorTexts } = await import("../../outputs/texts/author-texts.ts"),
    { translationOf } = await import("../../outputs/texts/translations.ts"),
    { xliffText } = await import("../../outputs/texts/xliff.ts");
  const files = [];
  for (const [path, file] of [...project.checked.project.files].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const had = await translationsBeside(path, to, project.show),
      known = had ? translationOf(had) : () => undefined;
    files.push({
      original: project.show(path),
      texts: authorTexts(file).map((text) => ({ ...text, target: known(text) })),
    });
  }
  const text = xliffText({ from, to, files: files.filter(({ texts }) => texts.length > 0) }),
    file = target(args);
  if (file === undefined) io.out(text);
  else {
    const path = resolve(project.cwd, file);
    await writeOutput(path, text, isOn(args, "force"), project.show(path), project.checked.project.files);
    const count = files.reduce((sum, { texts }) => sum + texts.length, 0),
      open = files.reduce((sum, { texts }) => sum + texts.filter((each) => each.target === undefined).length, 0);
    if (!isOn(args, "quiet")) io.out(`Written: ${project.show(path)}: ${count} texts, ${open} of them to translate\n`);
  }
  return 0;
}

async function imported(args: ParsedArgs, io: Io): Promise<number> {
  const isXliff = (path: string): boolean => /\.(?:xlf|xliff)$/i.test(path),
    documents = args.positionals.filter(isXliff);
  if (documents.length === 0)
    throw new CannotRun("text import: which translation? Name its file, which ends in .xlf, then the procedures");
  const { readXliff } = await import("../../outputs/texts/read-xliff.ts"),
    read: { name: string; of: import("../../outputs/texts/read-xliff.ts").ReadXliff }[] = [];
  for (const name of documents) {
    const of = readXliff(await io.readFile(name));
    if ("problem" in of) throw new CannotRun(`${name} is no translation: ${of.problem}`);
    read.push({ name, of });
  }
  const project = await projectOf({ ...args, positionals: args.positionals.filter((path) => !isXliff(path)) }, io);
  if (!project) return 2;
  const { authorTexts } = await import("../../outputs/texts/author-texts.ts"),
    { amissWith, translationsPath, translationsText } = await import("../../outputs/texts/translations.ts");
  const sources = new Map(
    [...project.checked.project.files].map(([path, file]) => [project.show(path), { path, file }]),
  );
  let refused = 0;
  const refuse = (file: string, line: number | undefined, text: string, why: string): void => {
    refused++;
    io.err(`${file}${line === undefined ? "" : `:${line}`}: ${JSON.stringify(text)} is not taken: ${why}\n`);
  };
  for (const { name, of } of read)
    for (const { original, units } of of.files) {
      const source = sources.get(original);
      if (!source) {
        refuse(name, undefined, original, "no such file is among the procedures");
        continue;
      }
      const now = new Map(authorTexts(source.file).map((text) => [text.id, text])),
        had = await translationsBeside(source.path, of.to, project.show),
        texts = new Map((had?.texts ?? []).map((each) => [each.id, each]));
      let taken = 0;
      for (const unit of units) {
        const text = now.get(unit.id);
        if (unit.target === "") continue;
        if (!text || text.text.replace(/\r\n?/g, "\n") !== unit.source) {
          refuse(original, text?.line, unit.source, "the text has changed since it was exported");
          continue;
        }
        const amiss = amissWith(text.text, unit.target);
        if (amiss !== undefined) {
          refuse(original, text.line, unit.target, amiss);
          continue;
        }
        texts.set(unit.id, { id: unit.id, source: text.text, text: unit.target });
        taken++;
      }
      const path = translationsPath(source.path, of.to),
        missing = [...now.keys()].filter((id) => !texts.has(id)).length;
      await writeOutput(
        path,
        translationsText({
          format: "stripdown-texts",
          version: 1,
          from: of.from,
          lang: of.to,
          texts: [...texts.values()].sort((a, b) => (a.id < b.id ? -1 : 1)),
        }),
        isOn(args, "force"),
        project.show(path),
      );
      if (!isOn(args, "quiet"))
        io.out(
          `Written: ${project.show(path)}: ${taken} texts taken${missing > 0 ? `, ${missing} without a translation, which print as written` : ""}\n`,
        );
    }
  return refused > 0 ? 1 : 0;
}
