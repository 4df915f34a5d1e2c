// One folder of the workspace as a project: its texts, its settings, and what the last check found. What did not change is neither
// read, parsed nor performed again.

import {
  checkAhead,
  checkTexts,
  defaultSettings,
  loadProject,
  newMemo,
  performTexts,
  readSettings,
  type Acted,
  type Checked,
  type CheckMemo,
  type Finding,
  type Project as Texts,
  type Settings,
  type World,
} from "../language/index.ts";
import type { Document } from "./documents.ts";
import type { Files } from "./files.ts";
import { isBelow, resolvePath } from "./uris.ts";

export interface Project {
  readonly folder: string;
  readonly settings: Settings;
  /** The open documents, or all files, with all that they use: read and parsed, nothing performed. For what asks for texts and names alone. */
  texts(all: boolean): Texts;
  /** The open documents checked, with all that they use. */
  near(): Checked;
  /** Every file of the folder. Undefined while that is not worked out for the texts as they are. */
  whole(): Checked | undefined;
  /** The whole where it is known or little has to be done for it, else the open documents. */
  best(): Checked;
  /** What the last check found, of whatever texts it was: of these or of older ones. */
  last(): Checked | undefined;
  /** The texts that `best` would check, read and parsed alone. */
  bestTexts(): Texts;
  /** The same; they are performed when the performances are asked for, and nothing is judged. */
  bestActs(): Acted;
  /** The whole, at once. */
  wholeNow(): Checked;
  /** Works out the whole bit by bit, between other work; resolves when done, overtaken or told to stop. */
  complete(stop?: () => boolean): Promise<void>;
  /** Somebody broke the work on the whole off: it is left until something changes. */
  halt(): void;
  readonly isHalted: () => boolean;
  /** A text changed. */
  touch(path: string): void;
  /** Files came or went, or changed on disk. */
  forget(paths: readonly string[]): void;
  /** Files below a folder that were asked for, whether they were there or not. */
  below(path: string): string[];
  /** Reads the folder again, whatever was told of it or not. Did anything in it change? */
  reread(): boolean;
  /** Where the texts come from, and the trees of those that a check was made from. */
  readonly world: World;
  treesOf(checked: Checked): CheckMemo["trees"];
  /** Findings of stripdown.json itself, with its text; undefined where there is none. */
  settingsFile():
    | {
        readonly path: string;
        readonly text: string;
        readonly findings: readonly Finding[];
        readonly problem: string | undefined;
      }
    | undefined;
  /** How often files were read from outside, for tests that count the work. */
  readonly reads: () => number;
  /** How many acts were performed, for the same. */
  readonly work: () => number;
}

export interface ProjectHost {
  readonly files: Files;
  document(path: string): Document | undefined;
  openPaths(): readonly string[];
  /** Lets other messages come in between. */
  breathe(): Promise<void>;
}

/** Up to so many files, the whole folder is checked with every change: what did not change costs next to nothing. */
const fewFiles = 60;
/** So many files that use a changed one are checked with it at once; more are done after what is open. */
const fewUsers = 12;
/** In characters, some 35,000 lines: what the procedures of a longer folder do is not held for files that are not open. */
const longFolder = 1_000_000;
/** In ms: so long the work on a whole folder goes on before others get their turn. */
const turn = 20;

export function newProject(folder: string, host: ProjectHost): Project {
  let nearTexts: Texts | undefined,
    allTexts: Texts | undefined,
    near: Checked | undefined,
    whole: Checked | undefined,
    lastWhole: Checked | undefined,
    acts: Acted | undefined,
    last: Checked | undefined,
    memo = newMemo(),
    listed: readonly string[] | undefined,
    settings: Settings | undefined,
    generation = 0,
    haltedAt = -1,
    readCount = 0;
  let settingsFile: ReturnType<Project["settingsFile"]>;
  const texts = new Map<string, ReturnType<World["read"]>>(),
    insides = new Map<string, boolean>(),
    changed = new Set<string>(),
    exists = new Map<string, boolean>();
  const rootReal = host.files.real(folder);

  const world: World = {
    read(path) {
      const open = host.document(path);
      if (open) return { text: open.text };
      let kept = texts.get(path);
      if (!kept) {
        readCount++;
        texts.set(path, (kept = host.files.read(path)));
      }
      return kept;
    },
    exists(path) {
      let is = exists.get(path);
      if (is === undefined) exists.set(path, (is = host.document(path) !== undefined || host.files.isFile(path)));
      return is;
    },
    inside(path) {
      let is = insides.get(path);
      if (is === undefined)
        insides.set(path, (is = isBelow(host.files.real(path), rootReal) || host.document(path) !== undefined));
      return is;
    },
    resolve: resolvePath,
  };
  const all = (): string[] => [...new Set([...(listed ??= host.files.list(folder, ".strip")), ...open()])].sort();
  const open = (): string[] =>
    host.openPaths().filter((path) => path.endsWith(".strip") || host.document(path) !== undefined);
  const load = (roots: readonly string[]): Texts => loadProject(world, roots, memo.trees);
  const check = (read: Texts): Checked =>
    checkTexts(read, world, { settings: project.settings, memo, resting: resting() });
  /** In a long folder, the files that nobody has open. */
  function resting(): ((path: string) => boolean) | undefined {
    let length = 0;
    for (const got of texts.values()) if ("text" in got) length += got.text.length;
    return length > longFolder ? (path) => host.document(path) === undefined : undefined;
  }

  /** How many files use one of the changed ones, as far as the last check of the whole knows. */
  function users(): number {
    const files = lastWhole?.project.files;
    if (!files) return Infinity;
    const reached = new Set(changed);
    for (const one of reached)
      for (const file of files.values())
        if (!reached.has(file.path) && file.uses.some((use) => use.path === one)) reached.add(file.path);
    return reached.size - changed.size;
  }

  /** Does little have to be done to check every file of the folder? */
  const isCheap = (): boolean =>
    lastWhole !== undefined && lastWhole.project.files.size <= fewFiles && users() <= fewUsers;

  const project: Project = {
    folder,
    get settings() {
      if (!settings) {
        const path = `${folder === "/" ? "" : folder}/stripdown.json`,
          got = world.read(path),
          read = "text" in got ? readSettings(got.text, path) : undefined;
        settings = read && "settings" in read ? read.settings : defaultSettings;
        settingsFile =
          "text" in got && read
            ? {
                path,
                text: got.text,
                findings: "findings" in read ? read.findings : [],
                problem: "problem" in read ? read.problem : undefined,
              }
            : undefined;
      }
      return settings;
    },
    texts(every) {
      if (whole) return whole.project;
      return every ? (allTexts ??= load(all())) : (nearTexts ??= load(open()));
    },
    near: () => (near ??= last = check((nearTexts ??= load(open())))),
    last: () => last,
    bestTexts: () => project.texts(isCheap()),
    bestActs() {
      if (whole) return whole;
      const cheap = isCheap(),
        texts = project.texts(cheap);
      if (near && !cheap) return near;
      if (acts?.project !== texts) {
        let performed: Acted | undefined;
        acts = {
          project: texts,
          get performances() {
            return (performed ??= performTexts(texts, memo)).performances;
          },
        };
      }
      return acts;
    },
    whole: () => whole,
    wholeNow() {
      changed.clear();
      return (whole = lastWhole = last = near = whole ?? check((allTexts ??= load(all()))));
    },
    best() {
      if (whole) return whole;
      return isCheap() ? project.wholeNow() : project.near();
    },
    halt() {
      haltedAt = generation;
    },
    isHalted: () => haltedAt === generation,
    async complete(stop) {
      const at = generation;
      let since = performance.now();
      /** File by file, so that nobody waits for more than one; false where it was overtaken or is to stop. */
      const each = async (paths: Iterable<string>, work: (path: string) => void): Promise<boolean> => {
        for (const path of paths) {
          if (whole) break;
          work(path);
          if (performance.now() - since < turn) continue;
          await host.breathe();
          if (at !== generation || stop?.()) return false;
          since = performance.now();
        }
        return true;
      };
      if (!allTexts && !(await each(all(), (path) => void load([path])))) return;
      const read = (allTexts ??= load(all())),
        options = { settings: project.settings, memo, resting: resting() };
      if (!(await each(read.files.keys(), (path) => checkAhead(read, path, world, options)))) return;
      if (!whole) project.wholeNow();
      await host.breathe();
    },
    touch(path) {
      generation++;
      changed.add(path);
      if (path.endsWith("/stripdown.json")) settings = undefined;
      nearTexts = allTexts = acts = undefined;
      near = whole = undefined;
    },
    forget(paths) {
      generation++;
      for (const path of paths) {
        texts.delete(path);
        changed.add(path);
        memo.trees.delete(path);
        // Whether pictures are there is not asked again of what is kept.
        if (!path.endsWith(".strip")) memo = newMemo();
        if (path.endsWith("/stripdown.json")) settings = undefined;
      }
      insides.clear();
      exists.clear();
      listed = undefined;
      nearTexts = allTexts = acts = undefined;
      near = whole = undefined;
    },
    below: (path) =>
      [...new Set([...texts.keys(), ...exists.keys(), ...insides.keys(), ...(listed ?? [])])].filter((one) =>
        isBelow(one, path),
      ),
    reread() {
      const paths = host.files.list(folder, ".strip");
      let differs = listed !== undefined && listed.join("\n") !== paths.join("\n");
      for (const [path, had] of texts) {
        readCount++;
        const now = host.files.read(path);
        if ("text" in had && "text" in now ? had.text === now.text : JSON.stringify(had) === JSON.stringify(now))
          continue;
        texts.set(path, now);
        changed.add(path);
        differs = true;
        if (path.endsWith("/stripdown.json")) settings = undefined;
      }
      for (const [path, had] of exists) {
        if ((host.document(path) !== undefined || host.files.isFile(path)) === had) continue;
        differs = true;
        // Whether pictures are there is not asked again of what is kept.
        if (!path.endsWith(".strip")) memo = newMemo();
      }
      listed = paths;
      if (!differs) return false;
      generation++;
      insides.clear();
      exists.clear();
      nearTexts = allTexts = acts = undefined;
      near = whole = undefined;
      return true;
    },
    world,
    treesOf: ({ project: { files } }) =>
      new Map(
        [...files.keys()].flatMap((path) => {
          const tree = memo.trees.get(path);
          return tree ? [[path, tree] as const] : [];
        }),
      ),
    settingsFile() {
      void project.settings;
      return settingsFile;
    },
    reads: () => readCount,
    work: () => memo.work.acts,
  };
  return project;
}
