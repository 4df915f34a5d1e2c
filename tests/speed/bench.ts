// The benchmark: 1,000 invented procedures checked with every check on, in one process, against YAML of the same content checked for
// shape only. Run by `npm run bench`; it prints ratios of one run and promises nothing. Each measurement is a process of its own.

import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { asYaml } from "./as-yaml.ts";
import { makeProcedure } from "./make-procedures.ts";

const here = fileURLToPath(new URL(".", import.meta.url)),
  project = join(here, "..", "..");
const count = Number(process.argv[2] ?? 1000),
  rounds = Number(process.argv[3] ?? 3);
const folder = mkdtempSync(join(tmpdir(), "stripdown-bench-")),
  tenth = join(folder, "tenth");

/**
 * `processor`: seconds of all threads of the process, which other work on the machine disturbs less than the clock; `ownThread`: of the
 * one that works, without those that compile and collect beside it. On an idle machine with two cores that is the clock, nearly.
 */
interface Measured {
  readonly seconds: number;
  readonly processor: number;
  readonly ownThread: number;
  readonly megabytes: number;
  readonly says: string;
}

function measure(args: readonly string[]): Measured {
  const start = process.hrtime.bigint(),
    run = spawnSync(process.execPath, args, { encoding: "utf8", maxBuffer: 1 << 28 });
  const seconds = Number(process.hrtime.bigint() - start) / 1e9;
  if (run.status !== 0) throw new Error(`${args.join(" ")}\n${run.stderr}`);
  return { seconds, ...(JSON.parse(run.stdout.trim().split("\n").at(-1)!) as Omit<Measured, "seconds">) };
}

try {
  const { mkdirSync } = await import("node:fs");
  for (const name of ["strip", "yaml"]) {
    mkdirSync(join(folder, name), { recursive: true });
    mkdirSync(join(tenth, name), { recursive: true });
  }
  let lines = 0,
    tenthLines = 0;
  for (let i = 0; i < count; i++) {
    const made = makeProcedure(i),
      name = String(i).padStart(5, "0");
    writeFileSync(join(folder, "strip", `${name}.strip`), made.strip);
    writeFileSync(join(folder, "yaml", `${name}.yaml`), asYaml(made.content));
    lines += made.strip.split("\n").length;
    if (i % 10 === 0) {
      writeFileSync(join(tenth, "strip", `${name}.strip`), made.strip);
      tenthLines += made.strip.split("\n").length;
    }
  }
  const build = spawnSync(process.execPath, [join(project, ".build", "build.mjs")], { encoding: "utf8", cwd: project });
  if (build.status !== 0) throw new Error(build.stderr);
  const runner = join(project, "dist", "bench-run.mjs");
  const { build: bundle } = await import("esbuild");
  await bundle({
    entryPoints: [join(here, "run-one.ts")],
    bundle: true,
    platform: "node",
    format: "esm",
    outfile: runner,
    external: ["yaml", "js-yaml", "ajv"],
    banner: { js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);" },
    minify: true,
    logLevel: "error",
  });
  const row = (name: string, m: Measured, of: number): void =>
    console.log(
      `${name.padEnd(44)} ${m.seconds.toFixed(2).padStart(7)} s (${m.processor.toFixed(2)} s of processor, ${m.ownThread.toFixed(2)} s of its own thread) ${Math.round(
        of / m.seconds,
      )
        .toLocaleString("en")
        .padStart(10)} lines/s ${Math.round(m.megabytes).toString().padStart(5)} MB   ${m.says}`,
    );
  console.log(
    `${count} procedures, ${lines.toLocaleString("en")} lines of .strip; whole processes, best of ${rounds}\n`,
  );
  const kinds = [
    ["lex", "lex", join(folder, "strip"), lines],
    ["parse", "parse", join(folder, "strip"), lines],
    ["whole check, every check on", "check", join(folder, "strip"), lines],
    ["YAML shape only: yaml + ajv", "yaml", join(folder, "yaml"), lines],
    ["YAML shape only: js-yaml + ajv", "js-yaml", join(folder, "yaml"), lines],
    ["whole check of a tenth", "check", join(tenth, "strip"), tenthLines],
  ] as const;
  // Round by round, so that other work on the machine meets all alike; of each the best, since the least time is the least disturbed.
  const least: Measured[] = [];
  for (let round = 0; round < rounds; round++)
    kinds.forEach(([, what, where], i) => {
      const now = measure([runner, what, where]),
        had = least[i];
      least[i] = had
        ? {
            ...now,
            seconds: Math.min(had.seconds, now.seconds),
            processor: Math.min(had.processor, now.processor),
            ownThread: Math.min(had.ownThread, now.ownThread),
            megabytes: Math.max(had.megabytes, now.megabytes),
          }
        : now;
    });
  kinds.forEach(([name, , , of], i) => row(name, least[i]!, of));
  const [, , check, yaml, jsYaml, small] = least as [Measured, Measured, Measured, Measured, Measured, Measured];
  const ratio = (to: Measured, digits: number): string =>
    [
      (check.seconds / to.seconds).toFixed(digits),
      `of processor time ${(check.processor / to.processor).toFixed(digits)}`,
      `of its own thread ${(check.ownThread / to.ownThread).toFixed(digits)}`,
    ].join(", ");
  console.log(`\nwhole check / yaml + ajv: ${ratio(yaml, 2)} (goal: at most 0.25)`);
  console.log(`whole check / js-yaml + ajv: ${ratio(jsYaml, 2)} (goal: at most 1)`);
  console.log(`ten times the files / a tenth: ${ratio(small, 1)} (goal: at most 11)`);
  console.log(`peak memory: ${Math.round(check.megabytes)} MB (goal: under 400)`);
  for (const [name, file, goal] of [
    ["strip, refit and end of one large unit, warm", "large-unit.ts", 50],
    ["all figures of the flagship example, warm", "figures.ts", 2],
  ] as const) {
    const run = spawnSync(process.execPath, [join(here, file)], { encoding: "utf8" });
    if (run.status !== 0) throw new Error(run.stderr);
    const { milliseconds, says } = JSON.parse(run.stdout) as { milliseconds: number; says: string };
    console.log(`${name}: ${milliseconds.toFixed(1)} ms (goal: under ${goal})   ${says}`);
  }
  const bare = best(() => time([process.execPath, "-e", "0"])),
    file = join(folder, "strip", "00000.strip"),
    cold = best(() => time([process.execPath, join(project, "dist", "cli", "stripdown.mjs"), "check", file]));
  console.log(
    `cold check of one file: ${Math.round(cold)} ms, bare node -e 0: ${Math.round(bare)} ms, over it ${Math.round(cold - bare)} ms (goal: at most 250)`,
  );
} finally {
  rmSync(folder, { recursive: true, force: true });
}

function time([command, ...args]: readonly string[]): number {
  const start = process.hrtime.bigint();
  spawnSync(command!, args);
  return Number(process.hrtime.bigint() - start) / 1e6;
}
function best(of: () => number): number {
  return Math.min(...Array.from({ length: 7 }, of));
}
