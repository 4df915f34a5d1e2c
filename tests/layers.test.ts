// Which folder may import which: the one table of it. A line that points the wrong way is named.

import { execFileSync } from "node:child_process";
import { globSync, readFileSync } from "node:fs";
import { posix } from "node:path";
import { expect, test } from "vitest";

/** From the bill down: what checks and outputs stand on. */
const below = ["bill", "bench", "model", "names", "syntax", "vocabulary", "figures", "calc", "quantities", "tables"];
/** What each layer of `language/` may import, besides itself and the ground. */
const language: Readonly<Record<string, readonly string[]>> = {
  quantities: [],
  tables: [],
  figures: ["quantities", "tables"],
  calc: ["figures", "quantities"],
  vocabulary: ["quantities", "tables"],
  syntax: ["vocabulary", "quantities", "tables"],
  names: ["syntax", "vocabulary", "quantities", "tables"],
  model: ["names", "syntax", "vocabulary", "quantities", "tables"],
  bench: ["model", "names", "syntax", "figures", "quantities", "tables"],
  bill: ["bench", "model", "figures", "quantities", "tables"],
  checks: below,
  outputs: below,
  workspace: ["checks", "outputs", ...below],
  // What an editor asks beside the findings: completion, the bench at a place.
  assist: ["workspace", "checks", "outputs", ...below],
};
/** The outermost ones may import all but these. */
const outermost: Readonly<Record<string, readonly string[]>> = {
  "index.ts": ["cli", "generate"],
  cli: ["generate"],
  generate: [],
};
/** The ground: what a finding looks like, and what the outside gives the compiler. All may know it, and it knows no other folder. */
const ground = ["findings", "world"];
/** Top folders: whom each may import. `language/` is entered by its door alone, save by its own command line, generators and the tests. */
const top: Readonly<Record<string, readonly string[]>> = {
  language: [],
  shared: [],
  server: ["shared", "language/index.ts"],
  client: ["shared"],
  // The script of the manual's page: the page's own rules and the record's, no more of the compiler.
  "client/tablet": ["language/outputs/manual/tablet", "language/outputs/record"],
};

interface Import {
  readonly file: string;
  readonly line: number;
  readonly text: string;
  readonly target: string;
  readonly typeOnly: boolean;
}

const importLine =
  /^\s*(?:import|export)\s+(type\s+)?(?:[^"';]*?\sfrom\s+)?["']([^"']+)["']|\bimport\(\s*["']([^"']+)["']\s*\)/;

function importsOf(file: string): Import[] {
  // An import that is broken over lines counts at the line of its `from`.
  let open = false,
    openType = false;
  return readFileSync(file, "utf8")
    .split("\n")
    .flatMap((text, i): Import[] => {
      const match = importLine.exec(text) ?? (open ? /^[^"']*\sfrom\s+["']([^"']+)["']/.exec(text) : null),
        typeOnly = (match?.[1] !== undefined && text.includes("type ")) || (open && openType);
      if (/^\s*(?:import|export)\s+(?:type\s+)?\{[^}]*$/.test(text)) {
        open = true;
        openType = /^\s*(?:import|export)\s+type\b/.test(text);
      }
      if (!match) return [];
      const target = match[2] ?? match[3] ?? match[1]!;
      const found = {
        file,
        line: i + 1,
        text: text.trim(),
        target: target.startsWith(".") ? posix.join(posix.dirname(file), target) : target,
        typeOnly,
      };
      open = false;
      return [found];
    });
}

const files = globSync("{language,server,client,shared}/**/*.ts")
  .map((file) => file.replaceAll("\\", "/"))
  .sort();
const imports = files.flatMap(importsOf);
const at = ({ file, line, text }: Import): string => `${file}:${line} ${text}`;
const layerOf = (path: string): string => path.split("/")[1]!;

test("the reader of import lines sees them", () => {
  expect(imports.length).toBeGreaterThan(300);
  expect(
    imports.some(
      ({ file, target }) => file === "language/workspace/check-project.ts" && target === "language/checks/run.ts",
    ),
  ).toBe(true);
});

test("inside language/, imports point one way", () => {
  const wrong = imports.filter(({ file, target }) => {
    if (!file.startsWith("language/") || !target.startsWith("language/")) return false;
    const from = layerOf(file),
      to = layerOf(target);
    if (from === to || ground.includes(to)) return false;
    if (from in outermost) return outermost[from]!.includes(to);
    return !(language[from] ?? []).includes(to);
  });
  expect(wrong.map(at)).toEqual([]);
});

/** Files that call each other, because what they do holds itself: a file of each such group, and what. */
const recursive: Readonly<Record<string, string>> = {
  "language/bench/again.ts": "what `repeat from` does again is walked as any other entries, and may hold one itself",
  "language/bench/bench.ts": "what is reported may belong to a slip, and a slip is reported",
  "language/bench/remove.ts": "what is undone lets parts go, and a part that goes undoes what lets go in passing",
  "language/bench/tasks.ts": "a task is performed as a procedure of its own, beside the procedure that has it",
};

test("files import each other in a circle only where what they do holds itself", () => {
  const targets = new Map(files.map((file) => [file, new Set<string>()]));
  for (const { file, target } of imports) if (targets.has(target)) targets.get(file)!.add(target);
  const reached = (from: string): ReadonlySet<string> => {
    const found = new Set(targets.get(from));
    for (const file of found) for (const next of targets.get(file)!) found.add(next);
    return found;
  };
  const reach = new Map(files.map((file) => [file, reached(file)])),
    inCircle = files.filter((file) => reach.get(file)!.has(file)),
    groups = new Set(
      inCircle.map((file) =>
        inCircle.filter((one) => reach.get(file)!.has(one) && reach.get(one)!.has(file)).join(" "),
      ),
    );
  const named = [...groups].map((group) => group.split(" ").find((file) => file in recursive) ?? group);
  expect(named.sort()).toEqual(Object.keys(recursive));
});

test("the table holds the folders of language/, and no other", () => {
  const folders = new Set(files.filter((file) => file.startsWith("language/")).map(layerOf));
  expect([...folders].sort()).toEqual([...Object.keys(language), ...ground, ...Object.keys(outermost)].sort());
});

test("client -> shared <- server -> language", () => {
  const wrong = imports.filter(({ file, target }) => {
    const from = file.startsWith("client/tablet/") ? "client/tablet" : file.split("/")[0]!,
      to = target.split("/")[0]!;
    if (!(to in top) || target.startsWith(`${from}/`)) return false;
    return !top[from]!.some((allowed) => target === allowed || target.startsWith(`${allowed}/`));
  });
  expect(wrong.map(at)).toEqual([]);
});

test("the compiler runs in a browser worker: nothing of Node, of an editor or of LSP in it", () => {
  const wrong = imports.filter(
    ({ file, target }) =>
      file.startsWith("language/") && !/^language\/(?:cli|generate)\//.test(file) && /^(?:node:|vscode)/.test(target),
  );
  expect(wrong.map(at)).toEqual([]);
  const words = files
    .filter((file) => file.startsWith("language/") && !/^language\/(?:cli|generate)\//.test(file))
    .flatMap((file) =>
      readFileSync(file, "utf8")
        .split("\n")
        .flatMap((text, i) =>
          /\bprocess\.|\b__dirname\b|\brequire\(|\bDate\.now\(|\bnew Date\(|\bMath\.random\(/.test(text)
            ? [`${file}:${i + 1} ${text.trim()}`]
            : [],
        ),
    );
  expect(words).toEqual([]);
});

test("checks and outputs do not see each other", () => {
  const values = imports.filter(
    ({ file, target, text }) =>
      !/^import type\b/.test(text) &&
      ((file.startsWith("language/checks/") && target.startsWith("language/outputs/")) ||
        (file.startsWith("language/outputs/") && target.startsWith("language/checks/"))),
  );
  expect(values.map(at)).toEqual([]);
});

test("imports name the file with its ending, and no file is over 500 lines", () => {
  expect(
    imports
      .filter(({ target }) => /^(?:language|server|client|shared)\//.test(target) && !/\.(?:ts|json)$/.test(target))
      .map(at),
  ).toEqual([]);
  expect(files.filter((file) => readFileSync(file, "utf8").split("\n").length > 501)).toEqual([]);
});

test("the top folder holds what a newcomer is told of, and nothing else", () => {
  const told =
    "README.md DEVELOPERS.md LICENSE package.json package-lock.json tsconfig.json vitest.config.ts language server client syntaxes tests examples shared";
  const kept = execFileSync("git", ["ls-files"], { encoding: "utf8" }).split("\n").filter(Boolean);
  const top = new Set(kept.map((file) => file.split("/")[0]!).filter((name) => !name.startsWith(".")));
  expect([...top].sort()).toEqual(told.split(" ").sort());
});
