// The benchmark of the papers: the flagship's manual as HTML and PDF, cold and warm, with the peak of memory, and many manuals on all
// cores. Run by `npm run bench:pdf`. Each measurement is a process of its own; the least of the rounds is told.

import { spawn, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const project = fileURLToPath(new URL("../..", import.meta.url)),
  one = join(project, "tests/speed/pdf-one.ts"),
  flagship = join(project, "examples/mooring-winch/strip.strip"),
  folder = mkdtempSync(join(tmpdir(), "stripdown-pdf-bench-"));
const rounds = Number(process.argv[2] ?? 3),
  many = Number(process.argv[3] ?? 200);

interface Measured {
  readonly seconds: number;
  /** Of all threads: other work on the machine disturbs it less than the clock. */
  readonly processor: number;
  readonly megabytes: number;
  readonly pages: number;
}

function best(run: () => Measured): Measured {
  return Array.from({ length: rounds }, run).reduce((a, b) => (b.seconds < a.seconds ? b : a));
}

function inProcess(what: string, times: number): Measured {
  const run = spawnSync(process.execPath, [one, what, flagship, String(times)], { encoding: "utf8" });
  if (run.status !== 0) throw new Error(run.stderr);
  return JSON.parse(run.stdout) as Measured;
}

function commandLine(format: string): Measured {
  const start = process.hrtime.bigint(),
    to = join(folder, `manual.${format}`);
  const args = ["dist/cli/stripdown.mjs", "manual", flagship, "--as", format, "--to", to, "--force", "--quiet"],
    run = spawnSync(process.execPath, args, { encoding: "utf8", cwd: project });
  if (run.status === null || run.status > 1) throw new Error(run.stderr);
  return { seconds: Number(process.hrtime.bigint() - start) / 1e9, processor: 0, megabytes: 0, pages: 0 };
}

const tell = (name: string, { seconds, processor, megabytes, pages }: Measured): void =>
  console.log(
    `${name.padEnd(44)} ${(seconds * 1000).toFixed(0).padStart(6)} ms${processor > 0 ? `  ${(processor * 1000).toFixed(0).padStart(6)} ms of processor` : ""}${megabytes > 0 ? `  ${megabytes.toFixed(0).padStart(4)} MB` : ""}${pages > 0 ? `  ${pages} pages` : ""}`,
  );

try {
  const build = spawnSync(process.execPath, [join(project, ".build", "build.mjs")], { encoding: "utf8", cwd: project });
  if (build.status !== 0) throw new Error(build.stderr);
  for (const format of ["html", "pdf"])
    tell(
      `${format}, whole command, cold`,
      best(() => commandLine(format)),
    );
  for (const format of ["html", "pdf"]) {
    tell(
      `${format}, in a process, first`,
      best(() => inProcess(format, 1)),
    );
    tell(
      `${format}, in a process, warm (5th)`,
      best(() => inProcess(format, 5)),
    );
  }
  const workers = availableParallelism(),
    share = Math.ceil(many / workers),
    start = process.hrtime.bigint();
  await Promise.all(
    Array.from(
      { length: workers },
      () =>
        new Promise<void>((done, fail) => {
          spawn(process.execPath, [one, "pdf", flagship, String(share)], { stdio: "ignore" }).on("exit", (status) =>
            status === 0 ? done() : fail(new Error(`a process ended with ${status}`)),
          );
        }),
    ),
  );
  const seconds = Number(process.hrtime.bigint() - start) / 1e9;
  console.log(
    `${share * workers} PDF manuals on ${workers} cores: ${seconds.toFixed(1)} s, ${((share * workers) / seconds).toFixed(1)} a second`,
  );
} finally {
  rmSync(folder, { recursive: true, force: true });
}
