// Which rules of the bench can be taken out without a test that fails: `node tests/bench/audit/audit.ts [parts of paths]`. With `rules`
// instead of paths: each rule of `rules.ts` is taken out in its place, and the test that is named after it has to fail. All mutants stand in one bundle; each is tried on the tests alone in which it makes a difference at all, the quickest first.

import { build, type Plugin } from "esbuild";
import { globSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import { pathToFileURL } from "node:url";
import { withSwitches, type Mutant } from "./mutants.ts";
import { rulePath, rules } from "../rules.ts";
import type * as Switch from "./switch.ts";
import type * as Shim from "./vitest-shim.ts";

const root = join(import.meta.dirname, "../../.."),
  here = import.meta.dirname,
  out = join(root, "node_modules/.rule-audit"),
  only = process.argv.slice(2);
process.chdir(root);

const listed = Object.values(rules).flat(),
  suites = [
    ...new Set([
      ...globSync(["tests/bench/**/*.test.ts", "tests/checks/**/*.test.ts", "tests/real-machines/cases.test.ts"]),
      ...listed.map(([, tests]) => `tests/${tests}.test.ts`),
    ]),
  ].sort(),
  places = new Set(listed.map(([place]) => rulePath(place)));
const mutants: Mutant[] = [];
const marked: Plugin = {
  name: "switches",
  setup({ onLoad, onResolve }) {
    onResolve({ filter: /^vitest$/ }, () => ({ path: join(here, "vitest-shim.ts") }));
    onLoad({ filter: /language\/.*\.ts$/ }, ({ path }) => {
      const file = relative(root, path).replaceAll("\\", "/");
      if (!file.startsWith("language/bench/") && !places.has(file)) return undefined;
      const switches = JSON.stringify(join(here, "switch.ts"));
      return {
        loader: "ts",
        contents: `import { $held, $kept } from ${switches};${withSwitches(file, readFileSync(path, "utf8"), mutants)}`,
      };
    });
    // A test finds its texts beside itself, wherever the bundle lies.
    onLoad({ filter: /tests\/.*\.ts$/ }, ({ path }) => ({
      loader: "ts",
      contents: readFileSync(path, "utf8")
        .replaceAll("import.meta.dirname", JSON.stringify(join(path, "..")))
        .replaceAll("import.meta.url", JSON.stringify(pathToFileURL(path).href))
        .replaceAll("import.meta.main", "false"),
    }));
  },
};
mkdirSync(out, { recursive: true });
const bundle = join(out, "bundle.mjs");
await build({
  stdin: {
    resolveDir: root,
    loader: "ts",
    contents: `import { tests, Unmet } from "vitest"; export { tests, Unmet }; export * from "./tests/bench/audit/switch.ts";
      ${suites.map((suite) => `import ${JSON.stringify(`./${suite}`)};`).join("\n")}`,
  },
  bundle: true,
  format: "esm",
  platform: "node",
  packages: "external",
  outfile: bundle,
  plugins: [marked],
  logLevel: "error",
});
const { tests, Unmet, observed, mutated } = (await import(pathToFileURL(bundle).href)) as typeof Switch & typeof Shim;

interface Known {
  readonly test: Shim.Test;
  readonly time: number;
  readonly asked: number;
  readonly seen: ReadonlySet<number>;
}
const known: Known[] = [];
for (let round = 0; round < 2; round++) {
  known.length = 0;
  for (const test of tests) {
    const from = performance.now();
    let failed: unknown;
    const { seen, asked } = await observed(async () => {
      try {
        await test.run();
      } catch (error) {
        failed = error;
      }
    });
    if (failed) {
      console.log(`left out, it fails as it is: ${test.name}: ${failed instanceof Error ? failed.message : ""}`);
      continue;
    }
    known.push({ test, seen, asked, time: performance.now() - from });
  }
}
known.sort((a, b) => a.time - b.time);
const total = known.reduce((sum, { time }) => sum + time, 0);
console.log(`${mutants.length} mutants, ${known.length} tests in ${Math.round(total)} ms`);

/** One of these tests fails with the mutant on; with `unmet` because it expects something else, not because the program broke. */
async function isMissed(number: number, asking: readonly Known[], unmet = false): Promise<boolean> {
  for (const one of asking)
    try {
      await mutated(number, one.asked * 20 + 100_000, one.test.run);
    } catch (error) {
      if (!unmet || error instanceof Unmet) return true;
    }
  return false;
}

/** Each rule of the list taken out in its place; those that the named test does not miss. */
async function auditRules(): Promise<void> {
  let unheld = 0;
  for (const [place, , name] of listed) {
    const inside = place.split("#")[1],
      // One of `test.each` has a number behind its name.
      named = known.filter(({ test }) => test.name.replace(/ #\d+$/, "") === name);
    let killed = 0;
    for (const [number, mutant] of mutants.entries()) {
      if (mutant.file !== rulePath(place) || (inside !== undefined && mutant.inside !== inside)) continue;
      const asking = named.filter(({ seen }) => seen.has(number));
      if (await isMissed(number, asking, true)) killed++;
    }
    if (killed > 0) continue;
    unheld++;
    console.log(`${place}: nothing can be taken out that "${name}" misses`);
  }
  console.log(`${listed.length - unheld} of ${listed.length} rules are missed by the test that is named after them`);
  if (unheld > 0) process.exitCode = 1;
}

async function auditFiles(): Promise<void> {
  const survivors: (Mutant & { readonly seen: number })[] = [],
    count = new Map<string, { all: number; killed: number }>();
  for (const [number, mutant] of mutants.entries()) {
    const { file, line, what, source } = mutant;
    if (only.length > 0 ? !only.some((part) => file.includes(part)) : !file.startsWith("language/bench/")) continue;
    const sum = count.get(file) ?? { all: 0, killed: 0 };
    count.set(file, sum);
    sum.all++;
    const asking = known.filter(({ seen }) => seen.has(number));
    if (await isMissed(number, asking)) sum.killed++;
    else {
      survivors.push({ ...mutant, seen: asking.length });
      const shown = source.replace(/\s+/g, " ").slice(0, 160);
      console.log(`${file}:${line} ${what} (${asking.length} tests see it): ${shown}`);
    }
  }
  for (const [file, { all, killed }] of [...count].sort()) console.log(`${file}: ${killed} of ${all}`);
  const sums = [...count.values()],
    unseen = survivors.filter(({ seen }) => seen === 0).length;
  console.log(
    `all: ${sums.reduce((sum, { killed }) => sum + killed, 0)} of ${sums.reduce((sum, { all }) => sum + all, 0)}, ${unseen} seen by no test`,
  );
  writeFileSync(join(out, "survivors.json"), JSON.stringify(survivors, undefined, 1));
}

await (only[0] === "rules" ? auditRules() : auditFiles());
