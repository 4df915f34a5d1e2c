// From paths to a project: every file that is reached by `use`, read once, parsed once, with what it declares. Asks the world for
// texts and decides nothing about them.

import { parse, type Item, type Token, type Tree } from "../syntax/index.ts";
import type { World } from "../world/world.ts";
import type { Declaration, Project, SourceFile } from "./project.ts";
import { Word } from "../syntax/tokens.ts";
import { textOf } from "./strings.ts";

/** Trees kept from one load to the next: a file whose text did not change is never parsed again. */
export type TreeCache = Map<string, { readonly text: string; readonly file: Parsed }>;

type Parsed = Pick<SourceFile, "path" | "text" | "tree" | "declarations" | "branches"> & {
  readonly wanted: readonly { readonly path: string; readonly start: number; readonly end: number }[];
};
type Use = SourceFile["uses"][number];

export function loadProject(
  world: World,
  roots: readonly string[],
  cache: Pick<TreeCache, "get" | "set"> = new Map(),
): Project {
  const files = new Map<string, SourceFile>(),
    unreadable: { path: string; says: string }[] = [];
  const parsed = new Map<string, Parsed>(),
    broken = new Map<string, { problem: "missing" | "unreadable"; says: string }>();

  const read = (path: string): Parsed | undefined => {
    const had = parsed.get(path);
    if (had || broken.has(path)) return had;
    const got = world.read(path);
    if (!("text" in got)) {
      broken.set(
        path,
        got.problem === "missing"
          ? { problem: "missing", says: "there is no such file" }
          : { problem: "unreadable", says: got.says },
      );
      return undefined;
    }
    const kept = cache.get(path);
    const file = kept && kept.text === got.text ? kept.file : parseFile(path, got.text, kept?.file.tree);
    if (kept?.file !== file) cache.set(path, { text: got.text, file });
    parsed.set(path, file);
    return file;
  };

  // Breadth first, so that depth of `use` costs no stack.
  const sorted = [...new Set(roots)].sort(),
    queue = [...sorted];
  for (let i = 0; i < queue.length; i++) {
    const file = read(queue[i]!);
    if (!file) continue;
    for (const { path } of file.wanted) {
      const target = world.resolve(file.path, path);
      if (!parsed.has(target) && !broken.has(target) && world.inside(target)) queue.push(target);
    }
  }
  for (const root of sorted) {
    const problem = broken.get(root);
    if (problem) unreadable.push({ path: root, says: problem.says });
  }

  const targetsOf = (file: Parsed): string[] => file.wanted.map(({ path }) => world.resolve(file.path, path));
  const rings = ringsOf(parsed, targetsOf);
  for (const path of [...parsed.keys()].sort()) {
    const file = parsed.get(path)!;
    const uses = file.wanted.map(({ path: written, start, end }): Use => {
      const target = world.resolve(path, written),
        at = { file: path, start, end };
      if (!world.inside(target))
        return { path: target, at, problem: "outside", says: "it lies outside the project", ring: [] };
      const bad = broken.get(target);
      if (bad) return { path: target, at, problem: bad.problem, says: bad.says, ring: [] };
      const ring = rings.get(path);
      return ring?.includes(target)
        ? { path: target, at, problem: "cycle", says: "", ring }
        : { path: target, at, problem: undefined, says: "", ring: [] };
    });
    files.set(path, {
      path,
      text: file.text,
      tree: file.tree,
      declarations: file.declarations,
      branches: file.branches,
      uses,
    });
  }
  return { files, roots: sorted, unreadable, seen: seenFrom(files) };
}

const branching = new Set(["variants", "option", "if", "unless", "optional", "either", "otherwise"]);
/** Most texts hold none of these words at all, and then their tokens need not be looked through. */
const mayBranch = new RegExp(`\\b(?:${[...branching].join("|")})\\b`);

/** `earlier`: the tree of the text that the file held before. */
function parseFile(path: string, text: string, earlier: Tree | undefined): Parsed {
  const tree = parse(text, "file", earlier),
    { tokens } = tree.scan,
    declarations: Declaration[] = [],
    wanted: { path: string; start: number; end: number }[] = [];
  for (const item of tree.items) {
    if (!item.entry) continue;
    if (item.entry.word === "use") {
      const token = tokens[item.first + 1];
      if (token && item.arguments.length > 0)
        wanted.push({ path: textOf(token), start: token.startOffset, end: token.endOffset! + 1 });
      continue;
    }
    const declaration = declarationOf(path, item, tokens);
    if (declaration) declarations.push(declaration);
  }
  return {
    path,
    text,
    tree,
    declarations,
    wanted,
    branches: mayBranch.test(text) && tokens.some((token) => token.tokenType === Word && branching.has(token.text)),
  };
}

function declarationOf(path: string, item: Item, tokens: readonly Token[]): Declaration | undefined {
  const word = item.entry!.word as Declaration["word"],
    first = item.arguments[0];
  if (first === undefined || item.entry!.place !== "file") return undefined;
  const token = tokens[first.first]!,
    title = item.arguments.find((a) => a.slot === "string"),
    id = word === "warn" ? "" : token.text;
  return {
    word,
    id,
    name: title && word !== "warn" ? textOf(tokens[title.first]!) : id,
    file: path,
    item,
    at: { file: path, start: token.startOffset, end: token.endOffset! + 1 },
  };
}

/** Files that use each other in a ring: each with the ring that it is part of, from itself on. */
function ringsOf(
  parsed: ReadonlyMap<string, Parsed>,
  targets: (file: Parsed) => readonly string[],
): Map<string, string[]> {
  const rings = new Map<string, string[]>(),
    state = new Map<string, "open" | "done">();
  for (const start of [...parsed.keys()].sort()) {
    if (state.has(start)) continue;
    const path: { file: string; next: string[] }[] = [{ file: start, next: [...targets(parsed.get(start)!)] }];
    state.set(start, "open");
    while (path.length > 0) {
      const top = path[path.length - 1]!,
        to = top.next.shift();
      if (to === undefined) {
        state.set(top.file, "done");
        path.pop();
        continue;
      }
      if (!parsed.has(to) || state.get(to) === "done") continue;
      if (state.get(to) === "open") {
        const ring = path.slice(path.findIndex((p) => p.file === to)).map((p) => p.file);
        ring.forEach((file, i) => {
          if (!rings.has(file)) rings.set(file, [...ring.slice(i), ...ring.slice(0, i)]);
        });
        continue;
      }
      state.set(to, "open");
      path.push({ file: to, next: [...targets(parsed.get(to)!)] });
    }
  }
  return rings;
}

/** What a file sees: its own declarations, then those of the files that it uses, nearest first. */
function seenFrom(files: ReadonlyMap<string, SourceFile>): Project["seen"] {
  const known = new Map<string, ReadonlyMap<string, readonly Declaration[]>>();
  return (path) => {
    const had = known.get(path);
    if (had) return had;
    const reached = new Set<string>([path]),
      all = new Map<string, Declaration[]>();
    for (const one of reached) {
      const file = files.get(one);
      if (!file) continue;
      for (const declaration of file.declarations) {
        const list = all.get(declaration.id);
        if (list) list.push(declaration);
        else all.set(declaration.id, [declaration]);
      }
      for (const use of file.uses) if (files.has(use.path)) reached.add(use.path);
    }
    known.set(path, all);
    return all;
  };
}
