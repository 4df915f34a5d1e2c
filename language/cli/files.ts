// The disk: the only place that reads texts and writes files. Texts come in decoded, outputs go out whole or not at all.

import {
  accessSync,
  chmodSync,
  constants,
  existsSync,
  globSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
  type Dirent,
} from "node:fs";
import { basename, dirname, isAbsolute, join, relative, resolve, sep } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { hashOf, madeList, madeText, mayReplace, notOurs, readMade, type Made } from "../outputs/made.ts";
import type { World } from "../world/world.ts";
import { CannotRun } from "./command.ts";

/** Larger files are no procedures: they are refused before they are read. */
export const largestFile = 20 * 1024 * 1024;

export const slashes = (path: string): string => (sep === "/" ? path : path.split(sep).join("/"));

/** The text of a file, or why it is none. A byte order mark is taken off; UTF-16 is read by its mark. */
export function readText(path: string): ReturnType<World["read"]> {
  let bytes: Buffer;
  try {
    const stat = statSync(path);
    if (stat.isDirectory()) return { problem: "unreadable", says: "it is a folder" };
    if (!stat.isFile()) return { problem: "unreadable", says: "it is no plain file" };
    if (stat.size > largestFile)
      return {
        problem: "unreadable",
        says: `it is too large (${Math.ceil(stat.size / 1048576)} MB, at most ${largestFile / 1048576} MB are read)`,
      };
    bytes = readFileSync(path);
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (code === "ENOENT" || code === "ENOTDIR") return { problem: "missing" };
    return {
      problem: "unreadable",
      says:
        code === "EACCES" || code === "EPERM"
          ? "no permission to read it"
          : code === "ELOOP"
            ? "its link leads in a circle"
            : "it cannot be opened",
    };
  }
  return decode(bytes);
}

const utf8 = new TextDecoder("utf-8", { fatal: true });

export function decode(bytes: Uint8Array): ReturnType<World["read"]> {
  const encoding =
    bytes[0] === 0xff && bytes[1] === 0xfe ? "utf-16le" : bytes[0] === 0xfe && bytes[1] === 0xff ? "utf-16be" : "utf-8";
  if (encoding === "utf-8" && bytes.includes(0))
    return { problem: "unreadable", says: "it is no text file (it holds a byte of value 0)" };
  try {
    return { text: (encoding === "utf-8" ? utf8 : new TextDecoder(encoding, { fatal: true })).decode(bytes) };
  } catch {
    return { problem: "unreadable", says: "it is no UTF-8 text: save it as UTF-8" };
  }
}

/** The nearest folder with a `stripdown.json`, this one or one above; undefined where there is none. */
export function settingsFolder(from: string): string | undefined {
  for (let folder = resolve(from); ; folder = dirname(folder)) {
    if (existsSync(join(folder, "stripdown.json"))) return folder;
    if (dirname(folder) === folder) return undefined;
  }
}

/** A world on disk, bounded by these folders: nothing outside is read, whatever a link says. `patterns`: arguments that name no file. */
export function diskWorld(
  folders: readonly string[],
  overlay: ReadonlyMap<string, string> = new Map(),
  patterns: ReadonlySet<string> = new Set(),
): World {
  const roots = folders.map((folder) => slashes(real(folder)));
  const inside = (path: string): boolean => {
    const at = slashes(real(path));
    return roots.some((root) => at === root || at.startsWith(root.endsWith("/") ? root : `${root}/`));
  };
  return {
    read(path) {
      const text = overlay.get(path);
      if (text !== undefined) return { text };
      if (patterns.has(path)) return noMatch;
      if (!inside(path) && isLink(path)) return linkOut;
      return readText(path);
    },
    exists: (path) => {
      try {
        return statSync(path).isFile();
      } catch {
        return false;
      }
    },
    inside,
    resolve: (fromFile, written) =>
      slashes(isAbsolute(written) ? resolve(written) : resolve(dirname(fromFile), written)),
  };
}

/** What is said of a file that a link brings in from elsewhere. */
export const linkOut = {
  problem: "unreadable",
  says: "its link leads out of the project: name the file itself, or copy it here",
} as const;

/** The file is reached by a link that leads out of its project: what was never meant to be shown is not read. */
export function leadsOut(path: string): boolean {
  const at = slashes(real(path)),
    root = slashes(real(settingsFolder(dirname(path)) ?? dirname(path)));
  return isLink(path) && !at.startsWith(root.endsWith("/") ? root : `${root}/`);
}

function isLink(path: string): boolean {
  try {
    return slashes(real(path)) !== slashes(join(real(dirname(path)), basename(path)));
  } catch {
    return false;
  }
}

/** Links resolved as far as the path exists. */
export function real(path: string): string {
  try {
    return realpathSync.native(path);
  } catch {
    /* falls through: a part of it does not exist */
  }
  const parent = dirname(path);
  return parent === path ? path : join(real(parent), basename(path));
}

/** An argument written for several files at once: one of that very name is read as it is, and only arguments are patterns. */
const isPattern = (given: string, cwd: string): boolean => /[*?[{]/.test(given) && !existsSync(resolve(cwd, given));

/** The folder that an argument speaks of, as far as it is no pattern. */
export const folderOf = (given: string, cwd: string): string =>
  resolve(cwd, isPattern(given, cwd) ? given.replace(/[*?[{].*$/, "") : given);

/** Of what `findFiles` found, the patterns that no file matches: they are told as such, each at its own name. */
export const emptyPatterns = (given: readonly string[], cwd: string): ReadonlySet<string> =>
  new Set(given.filter((one) => isPattern(one, cwd)).map((one) => slashes(resolve(cwd, one))));
export const noMatch = { problem: "unreadable", says: "no file matches this pattern" } as const;

/** Files, folders (every `.strip` below them) and globs, as absolute paths, sorted, each once. Names that match nothing end the run. */
export function findFiles(given: readonly string[], cwd: string, ending = ".strip"): string[] {
  const found = new Set<string>();
  for (const one of given) {
    const path = resolve(cwd, one);
    if (existsSync(path)) {
      if (!statSync(path).isDirectory()) {
        found.add(slashes(path));
        continue;
      }
      const inside = below(path, ending, shownFrom(cwd));
      if (inside.length === 0) throw new CannotRun(`${one}: there is no ${ending} file in this folder`);
      for (const file of inside) found.add(slashes(file));
      continue;
    }
    const matched = isPattern(one, cwd)
      ? globSync(one, { cwd, exclude: (name) => skipped.has(basename(name)) }).filter((m) => m.endsWith(ending))
      : [];
    if (matched.length === 0) {
      found.add(slashes(path));
      continue;
    }
    for (const match of matched) found.add(slashes(resolve(cwd, match)));
  }
  return [...found].sort();
}

const skipped = new Set(["node_modules", ".git"]);

function below(folder: string, ending: string, shown: (folder: string) => string): string[] {
  const found: string[] = [],
    seen = new Set<string>(),
    queue = [folder];
  for (const here of queue) {
    const at = real(here);
    if (seen.has(at)) continue; // a link in a circle
    seen.add(at);
    for (const entry of entriesOf(here, shown)) {
      const path = join(here, entry.name);
      if (skipped.has(entry.name)) continue;
      if (entry.isDirectory() || (entry.isSymbolicLink() && isFolder(path))) queue.push(path);
      else if (entry.name.endsWith(ending)) found.push(path);
    }
  }
  return found.sort();
}
/** What cannot be looked into ends the run: a procedure in it would be left out without a word. */
function entriesOf(folder: string, shown: (folder: string) => string): Dirent[] {
  try {
    return readdirSync(folder, { withFileTypes: true });
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    throw new CannotRun(
      `${shown(folder)}: ${code === "EACCES" || code === "EPERM" ? "no permission to look into this folder" : "this folder cannot be read"}`,
    );
  }
}
function isFolder(path: string): boolean {
  try {
    return statSync(path).isDirectory();
  } catch {
    return false;
  }
}

/** A path as the user sees it: relative where that does not lead upwards out of everything. */
export function shownFrom(cwd: string): (path: string) => string {
  return (path) => {
    const short = slashes(relative(cwd, path));
    return short === "" ? "." : short.startsWith("../../../") ? slashes(path) : short;
  };
}

// --- writing -----------------------------------------------------------------------------------------------------------------

function readList(folder: string): Made {
  try {
    return readMade(readFileSync(join(folder, madeList), "utf8"));
  } catch {
    return {};
  }
}

/** Longer than any other run holds the list: what is older was left by one that was broken off. In ms. */
const heldTooLong = 5000;

/** Does `work` while no other run writes to this folder's list: of papers that are made side by side each has to stand in it. */
async function holdingList(folder: string, shown: string, work: () => void): Promise<void> {
  const held = join(folder, `${madeList}.lock`);
  while (!writing(shown, () => takes(held))) await pause(10);
  try {
    writing(shown, work);
  } finally {
    rmSync(held, { force: true });
  }
}
function takes(held: string): boolean {
  try {
    writeFileSync(held, "", { flag: "wx" });
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "EEXIST") throw error;
  }
  const since = statSync(held, { throwIfNoEntry: false })?.mtimeMs;
  if (since !== undefined && Date.now() - since > heldTooLong) rmSync(held, { force: true });
  return false;
}

/**
 * Writes an output whole or not at all: beside it first, then renamed. A file that this tool did not make, or that was changed
 * since, is not written over unless `force`; one of the `sources`, by their paths, never.
 */
export async function writeOutput(
  path: string,
  content: string | Uint8Array,
  force: boolean,
  shown: string,
  sources: ReadonlyMap<string, unknown> = new Map(),
): Promise<void> {
  if (sources.has(slashes(path)) || sources.has(slashes(real(path))))
    throw new CannotRun(`${shown} is what this is made from, and is not written over: give another name`);
  const folder = dirname(path),
    name = basename(path),
    there = existsSync(path) ? statSync(path) : undefined;
  if (there && !there.isFile() && !there.isDirectory())
    throw new CannotRun(`${shown} is no plain file: leave --to out, and send standard output there`);
  if (there && !force) {
    let old: Buffer = Buffer.alloc(0);
    writing(shown, () => {
      old = readFileSync(path);
    });
    if (!(await mayReplace(readList(folder), name, old, content)))
      throw new CannotRun(`${shown} ${notOurs}: give another name, or --force to write over it`);
  }
  const hash = await hashOf(content);
  writing(shown, () => mkdirSync(folder, { recursive: true }));
  await holdingList(folder, shown, () => {
    replaceFile(path, content);
    replaceFile(join(folder, madeList), madeText(readList(folder), { [name]: hash }));
  });
}

/** Writes an author's file anew where it stands; a link stays a link. */
export function rewrite(path: string, text: string, shown: string): void {
  writing(shown, () => replaceFile(real(path), text));
}

/** Writes a file that is the author's from then on; one that is there already stays, unless `force`. */
export function writeNew(path: string, text: string, force: boolean, shown: string): void {
  if (existsSync(path) && !force)
    throw new CannotRun(`${shown} is there already: give another name, or --force to write over it`);
  writing(shown, () => {
    mkdirSync(dirname(path), { recursive: true });
    replaceFile(path, text);
  });
}

/** Turns what the disk refuses into words. */
function writing<Result>(shown: string, write: () => Result): Result {
  try {
    return write();
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? "";
    throw new CannotRun(`${shown} cannot be written: ${refusals[code] ?? "the disk refused it"}`);
  }
}
const refusals: Readonly<Record<string, string>> = {
  EACCES: "no permission",
  EPERM: "no permission",
  EROFS: "no permission",
  ENOSPC: "the disk is full",
  ENOTDIR: "a file stands where a folder is needed",
  EEXIST: "a file stands where a folder is needed",
  EISDIR: "a folder of this name stands there: give the name of a file",
};

/**
 * Writes beside and renames, so that a reader never sees half a file and a failure leaves the old one. Who may read and write the old
 * one may so the new one; where nobody may write it, it stays.
 */
function replaceFile(path: string, content: string | Uint8Array): void {
  const beside = join(dirname(path), `.${basename(path)}.${process.pid}.new`),
    mode = existsSync(path) ? statSync(path).mode : undefined;
  if (mode !== undefined) accessSync(path, constants.W_OK);
  try {
    writeFileSync(beside, content, { flush: true, ...(mode === undefined ? {} : { mode }) });
    if (mode !== undefined) chmodSync(beside, mode);
    renameSync(beside, path);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  }
}
