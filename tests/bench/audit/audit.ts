// Which rules of the bench can be taken out without a test that fails: `node tests/bench/audit/audit.ts [parts of paths]`.
// All mutants stand in one bundle; each is tried on the tests alone in which it makes a difference at all, the quickest first.

import { build, type Plugin } from "esbuild";
import { globSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import { pathToFileURL } from "node:url";
import { withSwitches, type Mutant } from "./mutants.ts";
import type * as Switch from "./switch.ts";
import type { Test } from "./vitest-shim.ts";

const root = join(import.meta.dirname, "../../.."),
  here = import.meta.dirname,
  out = join(root, "node_modules/.rule-audit"),
  only = process.argv.slice(2);
process.chdir(root);

const suites = globSync([
  "tests/bench/**/*.test.ts",
  "tests/checks/**/*.test.ts",
  "tests/real-machines/cases.test.ts",
]).sort();
const mutants: Mutant[] = [];
const marked: Plugin = {
  name: "switches",
  setup({ onLoad, onResolve }) {
    onResolve({ filter: /^vitest$/ }, () => ({ path: join(here, "vitest-shim.ts") }));
    onLoad({ filter: /language\/bench\/.*\.ts$/ }, ({ path }) => ({
      loader: "ts",
      contents: `import { $held, $kept } from ${JSON.stringify(join(here, "switch.ts"))};${withSwitches(relative(root, path), readFileSync(path, "utf8"), mutants)}`,
    }));
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
    contents: `import { tests } from "vitest"; export { tests }; export * from "./tests/bench/audit/switch.ts";
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
const { tests, observed, mutated } = (await import(`${pathToFileURL(bundle).href}?${Date.now()}`)) as typeof Switch & {
  tests: Test[];
};

interface Known {
  readonly test: Test;
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

const survivors: (Mutant & { readonly seen: number })[] = [],
  count = new Map<string, { all: number; killed: number }>();
for (const [number, mutant] of mutants.entries()) {
  if (only.length > 0 && !only.some((part) => mutant.file.includes(part))) continue;
  const sum = count.get(mutant.file) ?? { all: 0, killed: 0 };
  count.set(mutant.file, sum);
  sum.all++;
  const asking = known.filter(({ seen }) => seen.has(number));
  let killer: string | undefined;
  for (const { test, asked } of asking) {
    try {
      await mutated(number, asked * 20 + 100_000, test.run);
    } catch {
      killer = test.name;
      break;
    }
  }
  if (killer !== undefined) sum.killed++;
  else {
    const { file, line, what, source } = mutant;
    survivors.push({ ...mutant, seen: asking.length });
    console.log(
      `${file}:${line} ${what} (${asking.length} tests see it): ${source.replace(/\s+/g, " ").slice(0, 160)}`,
    );
  }
}
for (const [file, { all, killed }] of [...count].sort()) console.log(`${file}: ${killed} of ${all}`);
const sums = [...count.values()];
console.log(
  `all: ${sums.reduce((sum, { killed }) => sum + killed, 0)} of ${sums.reduce((sum, { all }) => sum + all, 0)}, ${survivors.filter(({ seen }) => seen === 0).length} seen by no test`,
);
writeFileSync(join(out, "survivors.json"), JSON.stringify(survivors, undefined, 1));
