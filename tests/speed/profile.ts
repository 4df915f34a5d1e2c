// Where the time of the whole check goes: `node tests/speed/profile.ts [PROCEDURES]`. Checks so many made procedures under the profiler
// and prints, a function a line, its own time and the time with all that it calls, both in milliseconds, longest first.

import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { makeProcedure } from "./make-procedures.ts";

interface Node {
  readonly id: number;
  readonly callFrame: { readonly functionName: string; readonly lineNumber: number };
  readonly children?: readonly number[];
}
interface Profile {
  readonly nodes: readonly Node[];
  readonly samples: readonly number[];
  readonly timeDeltas: readonly number[];
}

const count = Number(process.argv[2] ?? 1000),
  shown = 60,
  here = fileURLToPath(new URL(".", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "stripdown-profile-")),
  runner = join(here, "..", "..", "dist", "bench-run.mjs");
try {
  mkdirSync(join(folder, "strip"));
  for (let i = 0; i < count; i++)
    writeFileSync(join(folder, "strip", `${String(i).padStart(5, "0")}.strip`), makeProcedure(i).strip);
  await build({
    entryPoints: [join(here, "run-one.ts")],
    bundle: true,
    platform: "node",
    format: "esm",
    outfile: runner,
    external: ["yaml", "js-yaml", "ajv"],
    logLevel: "error",
  });
  const run = spawnSync(
    process.execPath,
    [
      "--cpu-prof",
      "--cpu-prof-interval",
      "500",
      "--cpu-prof-dir",
      join(folder, "profile"),
      runner,
      "check",
      join(folder, "strip"),
    ],
    { encoding: "utf8" },
  );
  if (run.status !== 0) throw new Error(run.stderr);
  print(JSON.parse(readFileSync(join(folder, "profile", readdirSync(join(folder, "profile"))[0]!), "utf8")) as Profile);
} finally {
  rmSync(folder, { recursive: true, force: true });
}

function print({ nodes, samples, timeDeltas }: Profile): void {
  const byId = new Map(nodes.map((node) => [node.id, node])),
    above = new Map<number, number>();
  for (const node of nodes) for (const child of node.children ?? []) above.set(child, node.id);
  const nameOf = (id: number): string => {
    const { functionName, lineNumber } = byId.get(id)!.callFrame;
    return `${functionName || "(no name)"}:${lineNumber + 1}`;
  };
  const own = new Map<string, number>(),
    all = new Map<string, number>(),
    add = (to: Map<string, number>, name: string, by: number): void => {
      to.set(name, (to.get(name) ?? 0) + by);
    };
  samples.forEach((sample, i) => {
    const time = timeDeltas[i]! / 1000,
      names = new Set<string>();
    add(own, nameOf(sample), time);
    for (let id: number | undefined = sample; id !== undefined; id = above.get(id)) names.add(nameOf(id));
    for (const name of names) add(all, name, time);
  });
  const rows = (of: Map<string, number>): string[] =>
    [...of]
      .sort((a, b) => b[1] - a[1])
      .slice(0, shown)
      .map(([name, time]) => `${time.toFixed(0).padStart(6)} ${name}`);
  const left = rows(own),
    right = rows(all);
  console.log(`${"own".padStart(6)} ${" ".repeat(40)}${"with all below".padStart(14)}`);
  left.forEach((row, i) => console.log(`${row.padEnd(48)}${right[i] ?? ""}`));
}
