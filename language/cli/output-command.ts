// What every command that writes an output has in common: which procedures, in which build, in which format, to where. An output is
// loaded when its command runs.

import { dirname, relative, resolve } from "node:path";
import { performProcedure } from "../bench/perform-procedure.ts";
import type { Performance } from "../bench/trace.ts";
import { nearestWords } from "../calc/nearest.ts";
import { CannotMake, type Output, type OutputInput, type OutputOptions } from "../outputs/output.ts";
import { papers, type Paper } from "../outputs/pdf/paper.ts";
import type { PrintDocument } from "../outputs/pdf/print.ts";
import { defaultWording, wordingFor, wordings } from "../outputs/wording/languages.ts";
import type { Wording } from "../outputs/wording/wording.ts";
import { allowedOf } from "../workspace/allowed.ts";
import { CannotRun, command, type Command, type CommandOption, type Io, type ParsedArgs } from "./command.ts";
import { writeOutput } from "./files.ts";
import { inOtherWords } from "./other-words.ts";
import type { Pdf } from "./pdf/pdf.ts";
import { picturesOf } from "./pictures.ts";
import { isOn, option, runProject, target, type ProjectRun } from "./project-run.ts";

export interface OutputCommand {
  readonly name: string;
  readonly summary: string;
  readonly example: string;
  /** Names of its formats, the usual one first: help shows them without loading the output. */
  readonly formats: readonly string[];
  /** Options of this output alone, beside the common ones. */
  readonly options?: readonly CommandOption[];
  // What an output makes its data of is its own business: here it only passes through.
  /** false: its pages have a size of their own. */
  readonly paper?: false;
  readonly load: () => Promise<Output<unknown>>;
  readonly settings?: (args: ParsedArgs) => Partial<OutputOptions>;
}

export function outputCommand(of: OutputCommand): Command {
  return command({
    name: of.name,
    summary: of.summary,
    usage: `${of.name} [FILE | FOLDER | GLOB | -]…`,
    example: of.example,
    options: [
      {
        name: "procedure",
        value: "ID",
        about: "This procedure alone (several: ID,ID); else all that no other of them does",
      },
      {
        name: "task",
        value: "ID",
        about: "The steps of this task alone, performed by themselves: strip, way back and what they use",
      },
      {
        name: "build",
        value: "NAME",
        about: "The build of the unit, as its variants and options are called: late-62 with heater",
      },
      ...(of.options ?? []),
      ...(of.formats.length > 1 || of.formats.includes("json")
        ? [{ name: "as", value: of.formats.join("|"), about: `The format (${of.formats[0]} if not said)` }]
        : []),
      ...(of.formats.includes("json") ? [{ name: "json", about: "The same as --as json" }] : []),
      ...(of.formats.includes("pdf") && of.paper !== false
        ? [{ name: "paper", value: Object.keys(papers).join("|"), about: "The paper of a PDF (a4 if not said)" }]
        : []),
      ...(of.formats.includes("pdf")
        ? [{ name: "font", value: "FILE", about: "A font file of this machine, for signs that the PDF's own lack" }]
        : []),
      {
        name: "to",
        value: "FILE",
        about: "Write to this file, whole or not at all; else, or with -, to standard output",
      },
      { name: "system", value: "metric|us", about: "The units that come first; the other stand beside them" },
      {
        name: "lang",
        value: "TAG",
        about: `The language of the built-in words, by its tag: ${Object.keys(wordings).join(", ")} (${defaultWording.tag} if not said)`,
      },
      { name: "date", value: "TEXT", about: "The date to print; none if not said" },
      { name: "force", about: "Write over a file that this tool did not make" },
      { name: "quiet", about: "Do not say what was written, or what is open" },
    ],
    run: (args, io) => run(of, args, io),
  });
}

async function run(of: OutputCommand, args: ParsedArgs, io: Io): Promise<number> {
  const format = formatOf(of, args),
    paper = paperOf(args),
    system = systemOf(args),
    wording = wordingOf(args),
    more = of.settings?.(args) ?? {};
  const project = await runProject(args, io),
    { checked, show } = project;
  for (const { path, says } of checked.unreadable) io.err(`${show(path)}: ${says}\n`);
  if (checked.unreadable.length > 0) return 2;
  const open = checked.findings.filter((finding) => finding.severity !== "hint").length;
  const inOther = await inOtherWords(project, option(args, "lang"), wording.tag),
    picked = chosen(project, args);
  const input: OutputInput = {
    performances: tasksOf(inOther === undefined ? picked : picked.map(inOther.of), option(args, "task")),
    texts: new Map([...checked.project.files].map(([path, file]) => [path, file.text])),
    openFindings: open,
    allowed: allowedOf(checked),
  };
  const to = target(args),
    pictures = picturesOf(project.world);
  const options: OutputOptions = {
    wording,
    system: system ?? project.settings.system,
    ...(project.settings.baseAddress === undefined ? {} : { baseAddress: project.settings.baseAddress }),
    showPath: show,
    ...(inOther === undefined ? {} : { textsFrom: inOther.from }),
    picture: pictures.picture,
    recording: (path, from) => recordingFrom(project, to, path, from),
    ...(paper === undefined ? {} : { paper }),
    ...(option(args, "date") === undefined ? {} : { date: option(args, "date")! }),
    ...more,
  };
  const output = await of.load(),
    sheets = options.sheet === undefined ? undefined : output.sheets?.(input, options);
  if (options.sheet !== undefined && sheets !== undefined && sheets > 0 && options.sheet > sheets)
    throw new CannotRun(`--sheet ${options.sheet}: there ${sheets === 1 ? "is 1 drawing" : `are ${sheets} drawings`}`);
  const make = (): string | PrintDocument => {
    try {
      const data = output.data(input, options);
      return format === "pdf" ? output.print!(data, options) : output.formats[format]!.write(data, options);
    } catch (error) {
      throw error instanceof CannotMake ? new CannotRun(error.message) : error;
    }
  };
  // Which pictures it takes is the output's business; reading them has to wait, which an output may not.
  let document = make();
  if (await pictures.fetch()) document = make();
  if (inOther !== undefined && (format === "html" || format === "svg") && typeof document === "string")
    document = inOther.marked(document);
  let made: string | Uint8Array;
  if (typeof document === "string") made = document;
  else {
    const font = option(args, "font"),
      pdf = await printed(
        inOther === undefined ? document : inOther.markedPrint(document),
        font === undefined ? undefined : resolve(project.cwd, font),
      );
    made = pdf.bytes;
    // Told even where nothing else is: a warning that cannot be read is worse than none.
    for (const line of pdf.says) io.err(`${line}\n`);
  }
  if (to === undefined) {
    if (typeof made === "string") io.out(made);
    else if (io.outBytes) io.outBytes(made);
    else throw new CannotRun("a PDF is not for a screen of text: --to FILE.pdf says where to write it");
  } else {
    const path = resolve(project.cwd, to);
    await writeOutput(path, made, isOn(args, "force"), show(path), checked.project.files);
    if (!isOn(args, "quiet")) io.out(`Written: ${show(path)}\n`);
  }
  if (inOther !== undefined && !isOn(args, "quiet")) io.err(inOther.says);
  if (open > 0 && !isOn(args, "quiet"))
    io.err(
      `${open === 1 ? "1 finding is" : `${open} findings are`} open, so this is a draft: stripdown check tells them\n`,
    );
  return checked.findings.some(({ severity }) => severity === "error" || severity === "warning") ? 1 : 0;
}

/** Relative to where the output goes, with every sign that could mean something else in an address written by its number. */
function recordingFrom(
  { world, cwd }: ProjectRun,
  to: string | undefined,
  path: string,
  from: string,
): string | undefined {
  if (/^[a-z][a-z0-9+.-]*:/i.test(path)) return undefined;
  const target = world.resolve(from, path);
  if (!world.inside(target) || !world.exists(target)) return undefined;
  return relative(to === undefined ? cwd : dirname(resolve(cwd, to)), target)
    .split(/[\\/]/)
    .map(encodeURIComponent)
    .join("/");
}

/** The renderer is loaded here, at the first PDF of all. */
async function printed(document: PrintDocument, font: string | undefined): Promise<Pdf> {
  const { pdfOf } = await import("./pdf/pdf.ts");
  return await pdfOf(document, font);
}

/** The procedures asked for, each in one build: the plain one, or the one named. */
function chosen({ checked, roots }: ProjectRun, args: ParsedArgs): Performance[] {
  const asked = new Set(roots),
    wanted = option(args, "procedure")
      ?.split(",")
      .map((id) => id.trim());
  const mine = checked.performances.filter(({ procedure }) => asked.has(procedure.at.file)),
    ids = [...new Set(mine.map(({ procedure }) => procedure.id))];
  if (ids.length === 0) throw new CannotRun("no procedure stands in these files");
  for (const id of wanted ?? []) {
    if (ids.includes(id)) continue;
    const near = nearestWords(id, ids);
    const record = args.recordedIn?.get(id);
    throw new CannotRun(
      `${record === undefined ? "" : `${record} is about ${id}, and in these files `}no procedure is called ${id}: ${near.length > 0 ? `did you mean ${near.join(" or ")}?` : `there is ${ids.join(", ")}`}`,
    );
  }
  const done = new Set(
    // A task may be one of a procedure that is done within another.
    wanted !== undefined || option(args, "task") !== undefined
      ? []
      : mine.flatMap((performance) =>
          performance.strip.map(({ around }) => around.procedure.id).filter((id) => id !== performance.procedure.id),
        ),
  );
  const build = option(args, "build"),
    picked = new Map<string, Performance>();
  for (const performance of mine) {
    const { procedure, model } = performance,
      key = `${procedure.at.file}\n${procedure.id}`;
    if (wanted ? !wanted.includes(procedure.id) : done.has(procedure.id)) continue;
    if (build === undefined || model.build === "" ? !picked.has(key) : model.build === build)
      picked.set(key, performance);
  }
  const found = [...picked.values()];
  // A unit of one build is printed beside the one whose build was named, and not in its place.
  if (build !== undefined && found.every(({ model }) => model.build !== build)) {
    const builds = [...new Set(mine.map(({ model }) => model.build).filter((name) => name !== ""))];
    throw new CannotRun(
      `there is no build ${build}: ${builds.length === 0 ? "these units have one build each, and are printed without --build" : `it is one of ${builds.join("; ")}`}`,
    );
  }
  if (found.length === 0) throw new CannotRun("no procedure is left to write");
  return found;
}

/** The task asked for, done alone, of every procedure that has one by that name. */
function tasksOf(performances: readonly Performance[], id: string | undefined): readonly Performance[] {
  if (id === undefined) return performances;
  const found = performances.flatMap(({ model, procedure }) =>
    procedure.tasks.filter((task) => task.id === id).map((task) => performProcedure(model, procedure.id, { task })),
  );
  if (found.length > 0) return found;
  const ids = [...new Set(performances.flatMap(({ procedure }) => procedure.tasks.map((task) => task.id)))],
    near = nearestWords(id, ids);
  throw new CannotRun(
    ids.length === 0
      ? `there is no task ${id}: these procedures have none`
      : `no task is called ${id}: ${near.length > 0 ? `did you mean ${near.join(" or ")}?` : `there is ${ids.join(", ")}`}`,
  );
}

function formatOf(of: OutputCommand, args: ParsedArgs): string {
  const asked = isOn(args, "json") ? "json" : (option(args, "as") ?? byEnding(of, args) ?? of.formats[0]!);
  if (!of.formats.includes(asked)) throw new CannotRun(`--as ${asked}: it is one of ${of.formats.join(", ")}`);
  return asked;
}

/** A file called .pdf is meant to be one: nothing else is written into it without being asked for. */
const byEnding = (of: OutputCommand, args: ParsedArgs): string | undefined =>
  of.formats.includes("pdf") && target(args)?.toLowerCase().endsWith(".pdf") === true ? "pdf" : undefined;

function paperOf(args: ParsedArgs): Paper | undefined {
  const asked = option(args, "paper")?.toLowerCase();
  if (asked === undefined || asked === "a4" || asked === "letter") return asked;
  throw new CannotRun(`--paper ${asked}: it is one of ${Object.keys(papers).join(", ")}`);
}

function systemOf(args: ParsedArgs): "metric" | "us" | undefined {
  const asked = option(args, "system");
  if (asked === undefined || asked === "metric" || asked === "us") return asked;
  throw new CannotRun(`--system ${asked}: it is metric or us`);
}

function wordingOf(args: ParsedArgs): Wording {
  const asked = option(args, "lang");
  if (asked === undefined) return defaultWording;
  const found = wordingFor(asked);
  if (!found) {
    const known = Object.values(wordings).map(({ tag, language }) => `${tag} (${language})`);
    throw new CannotRun(`--lang ${asked}: there is no built-in wording in that language; there is ${known.join(", ")}`);
  }
  return found;
}

/** A whole number from 1 on, or the reason why not. */
export function wholeNumber(args: ParsedArgs, name: string): number | undefined {
  const text = option(args, name);
  if (text === undefined) return undefined;
  if (!/^[1-9]\d{0,5}$/.test(text)) throw new CannotRun(`--${name} ${text}: it is a whole number from 1 to 999999`);
  return Number(text);
}
