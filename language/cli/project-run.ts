// What every command on procedures begins with: which files, which project, which settings; then the whole project checked.

import { existsSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { checkMany } from "../workspace/check-many.ts";
import { checkProject, newMemo, type Checked, type CheckMemo } from "../workspace/check-project.ts";
import type { Finding } from "../findings/finding.ts";
import type { Surveyed } from "../findings/surveyed.ts";
import { defaultSettings, type Settings } from "../world/settings.ts";
import type { World } from "../world/world.ts";
import { CannotRun, type Io, type ParsedArgs } from "./command.ts";
import {
  diskWorld,
  emptyPatterns,
  findFiles,
  folderOf,
  readText,
  settingsFolder,
  shownFrom,
  slashes,
} from "./files.ts";

export interface ProjectRun {
  readonly checked: Checked;
  /** The trees of the files that were read. */
  readonly trees: CheckMemo["trees"];
  readonly settings: Settings;
  /** Texts beside the project's that findings speak of: its settings. */
  readonly texts: ReadonlyMap<string, string>;
  readonly world: World;
  /** Files asked for, absolute. */
  readonly roots: readonly string[];
  readonly cwd: string;
  readonly show: (path: string) => string;
}

/** The name under which standard input is read. */
const standardInput = "standard-input.strip";

/** Where the files are and what bounds them, before anything is checked. */
interface Prepared extends Omit<ProjectRun, "checked" | "trees"> {
  readonly ofSettings: readonly Finding[];
}

async function prepare(args: ParsedArgs, io: Io): Promise<Prepared> {
  const cwd = io.cwd ?? process.cwd(),
    given = args.positionals.length > 0 ? args.positionals : ["."],
    overlay = new Map<string, string>();
  if (given.includes("-")) overlay.set(slashes(join(cwd, standardInput)), await io.readStdin());
  const roots = [
    ...new Set([
      ...findFiles(
        given.filter((g) => g !== "-"),
        cwd,
      ),
      ...overlay.keys(),
    ]),
  ].sort();
  const show = shownFrom(cwd),
    project = projectOf(roots, show),
    folders = project === undefined ? given.map((one) => folderNamed(one, cwd)) : [project];
  const { settings, findings: ofSettings, texts } = await settingsIn(project),
    world = diskWorld(boundaries(folders, roots), overlay, emptyPatterns(given, cwd));
  return { ofSettings, texts, settings, world, roots, cwd, show };
}

/** Of one that the user named, the folder itself, or that which a file or a pattern lies in. */
function folderNamed(given: string, cwd: string): string {
  const path = folderOf(given === "-" ? "." : given, cwd);
  return existsSync(path) && statSync(path).isDirectory() ? path : nearestFolder(path);
}

/** The folder with the `stripdown.json` that holds for all of these files; undefined where none does. */
function projectOf(roots: readonly string[], show: (path: string) => string): string | undefined {
  const of = new Map(
      [...new Set(roots.map((root) => dirname(root)))].map((folder) => [folder, settingsFolder(folder)]),
    ),
    [first, ...others] = [...new Set(of.values())];
  if (others.length === 0) return first;
  // Which of them holds must not hang on what was named first, and one of none could be milder than the project's own.
  const named = [first, ...others].flatMap((folder) =>
    folder === undefined ? [] : show(join(folder, "stripdown.json")),
  );
  throw new CannotRun(
    `these files have not one and the same settings: ${named.sort().join(", ")}${named.length > others.length ? "" : ", and some have none"}. Name the files of one project at a time`,
  );
}

/** The whole project checked, with its models and performances, for commands that make something of them. */
export async function runProject(args: ParsedArgs, io: Io): Promise<ProjectRun> {
  const { ofSettings, ...prepared } = await prepare(args, io),
    { settings, world, roots } = prepared,
    memo = newMemo();
  const checked = withProgress(io, (between) => checkProject(world, roots, { settings, memo, ...between }));
  return { ...prepared, trees: memo.trees, checked: { ...checked, findings: [...ofSettings, ...checked.findings] } };
}

export interface SurveyRun extends Omit<ProjectRun, "checked" | "trees"> {
  readonly checked: Surveyed;
}

/** The findings alone: any number of files, one after the other. `unknowns` tells the figures that nobody gave as well. */
export async function runSurvey(args: ParsedArgs, io: Io, unknowns: boolean): Promise<SurveyRun> {
  const { ofSettings, ...prepared } = await prepare(args, io),
    { settings, world, roots } = prepared;
  const checked = withProgress(io, (between) => checkMany(world, roots, { settings, ...between, unknowns }));
  return { ...prepared, checked: { ...checked, findings: [...ofSettings, ...checked.findings] } };
}

function withProgress<T>(io: Io, run: (options: { between?: (done: number, of: number) => void }) => T): T {
  if (!io.progress) return run({});
  let shown = false;
  const result = run({
    between: progress((text) => {
      shown = true;
      io.err(text);
    }),
  });
  if (shown) io.err("\r\u001b[K");
  return result;
}

function nearestFolder(path: string): string {
  let folder = dirname(path);
  while (!existsSync(folder) && dirname(folder) !== folder) folder = dirname(folder);
  return folder;
}

/** The project's folders. A file given alone, with no `stripdown.json` above it, may use its neighbours: the folder above its own. */
function boundaries(folders: readonly string[], roots: readonly string[]): string[] {
  const all = new Set(folders);
  for (const folder of folders)
    if (!existsSync(join(folder, "stripdown.json")) && roots.some((root) => dirname(root) === slashes(folder)))
      all.add(dirname(folder));
  return [...all];
}

const noSettings: SettingsRead = { settings: defaultSettings, findings: [], texts: new Map() };

/** Settings with what is odd about them, and the text that those findings speak of. */
interface SettingsRead {
  readonly settings: Settings;
  readonly findings: readonly Finding[];
  readonly texts: ReadonlyMap<string, string>;
}

/** Those of the `stripdown.json` of a folder, else the defaults. */
async function settingsIn(folder: string | undefined): Promise<SettingsRead> {
  if (folder === undefined) return noSettings;
  const path = slashes(join(folder, "stripdown.json")),
    text = readText(path);
  if (!("text" in text)) {
    if (text.problem === "unreadable") throw new CannotRun(`${path}: ${text.says}`);
    return noSettings;
  }
  // Loaded only where there are settings: a single file mostly has none, and start-up time is felt.
  const { readSettings } = await import("../workspace/settings-schema.ts"),
    read = readSettings(text.text, path);
  if ("problem" in read) throw new CannotRun(`${path}: ${read.problem}`);
  return { ...read, texts: new Map([[path, text.text]]) };
}

/** The settings that hold in a folder: those of the nearest `stripdown.json` in it or above, else the defaults. */
export const settingsHolding = async (folder: string): Promise<Settings> =>
  (await settingsIn(settingsFolder(folder))).settings;

/** Shown for long work only, and only to a person. */
function progress(show: (text: string) => void): (done: number, of: number) => void {
  const start = Date.now();
  let last = start;
  return (done, of) => {
    const now = Date.now();
    if (now - start < 500 || now - last < 100) return;
    last = now;
    show(`\r${done} of ${of} files`);
  };
}

export function option(args: ParsedArgs, name: string): string | undefined {
  const value = args.options.get(name);
  return typeof value === "string" ? value : undefined;
}
export const isOn = (args: ParsedArgs, name: string): boolean => args.options.get(name) !== undefined;

/** The file that `--to` names; `-`, as everywhere on a command line, is standard output, which is also where it goes if not said. */
export function target(args: ParsedArgs): string | undefined {
  const to = option(args, "to");
  return to === "-" ? undefined : to;
}
