// What every command on procedures begins with: which files, of which projects, under which settings; then the whole of them checked.

import { existsSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { checkProject, newMemo, type Checked, type CheckMemo } from "../workspace/check-project.ts";
import { checkProjects, type Asked } from "../workspace/check-projects.ts";
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

/** What a command was given: the files, and what bounds them. */
interface Given {
  readonly given: readonly string[];
  readonly overlay: ReadonlyMap<string, string>;
  readonly roots: readonly string[];
  readonly cwd: string;
  readonly show: (path: string) => string;
}

async function givenBy(args: ParsedArgs, io: Io): Promise<Given> {
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
  return { given, overlay, roots, cwd, show: shownFrom(cwd) };
}

/** Of one that the user named, the folder itself, or that which a file or a pattern lies in. */
function folderNamed(given: string, cwd: string): string {
  const path = folderOf(given === "-" ? "." : given, cwd);
  return existsSync(path) && statSync(path).isDirectory() ? path : nearestFolder(path);
}

/** The files by the folder with the `stripdown.json` that holds for them; undefined for those that none holds for. */
function byProject(roots: readonly string[]): ReadonlyMap<string | undefined, readonly string[]> {
  const folders = new Map<string, string | undefined>();
  return Map.groupBy(roots, (root) => {
    const folder = dirname(root);
    if (!folders.has(folder)) folders.set(folder, settingsFolder(folder));
    return folders.get(folder);
  });
}

/** Settings of a project, what is odd about them, and the world that its files come from. */
async function projectIn(
  folder: string | undefined,
  roots: readonly string[],
  { given, overlay, cwd }: Given,
): Promise<SettingsRead & { readonly world: World }> {
  const folders =
    folder === undefined
      ? given.map((one) => folderNamed(one, cwd)).filter((one) => settingsFolder(one) === undefined)
      : [folder];
  return {
    ...(await settingsIn(folder)),
    world: diskWorld(boundaries(folders, roots), overlay, emptyPatterns(given, cwd)),
  };
}

/** The one project that all files belong to, for what is made of them together: which settings hold must not hang on what was named first. */
function oneProject(projects: ReturnType<typeof byProject>, show: Given["show"]): string | undefined {
  const folders = [...projects.keys()],
    named = folders.flatMap((folder) => (folder === undefined ? [] : show(join(folder, "stripdown.json"))));
  if (folders.length < 2) return folders[0];
  throw new CannotRun(
    `these files have not one and the same settings: ${named.sort().join(", ")}${named.length === folders.length ? "" : ", and some have none"}. Name the files of one project at a time`,
  );
}

/** The whole project checked, with its models and performances, for commands that make something of them. */
export async function runProject(args: ParsedArgs, io: Io): Promise<ProjectRun> {
  const given = await givenBy(args, io),
    { roots, cwd, show } = given,
    folder = oneProject(byProject(roots), show),
    { settings, findings: ofSettings, texts, world } = await projectIn(folder, roots, given),
    memo = newMemo();
  const checked = withProgress(io, (between) => checkProject(world, roots, { settings, memo, ...between }));
  return {
    checked: { ...checked, findings: [...ofSettings, ...checked.findings] },
    trees: memo.trees,
    settings,
    texts,
    world,
    roots,
    cwd,
    show,
  };
}

export interface SurveyRun extends Pick<ProjectRun, "texts" | "show"> {
  readonly checked: Surveyed;
}

/**
 * The findings alone: any number of files, one after the other, and of several projects each under its own settings. `unknowns` tells the
 * figures that nobody gave as well.
 */
export async function runSurvey(args: ParsedArgs, io: Io, unknowns: boolean): Promise<SurveyRun> {
  const given = await givenBy(args, io),
    projects: (SettingsRead & Asked)[] = [];
  for (const [folder, roots] of byProject(given.roots))
    projects.push({ ...(await projectIn(folder, roots, given)), roots });
  const checked = withProgress(io, (between) => checkProjects(projects, { ...between, unknowns }));
  return {
    checked: { ...checked, findings: [...projects.flatMap(({ findings }) => findings), ...checked.findings] },
    texts: new Map(projects.flatMap(({ texts }) => [...texts])),
    show: given.show,
  };
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
