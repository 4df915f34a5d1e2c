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
  /** Of the thread that asks for it, without V8's own beside it, nor the renderer's. */
  readonly thread: number;
  readonly megabytes: number;
  readonly pages: number;
}

function best(run: () => Measured): Measured {
  return Array.from({ length: rounds }, run).reduce((a, b) => (b.seconds < a.seconds ? b : a));
}

/** How many chapters of the plain document make about so many pages, and not fewer. */
function chaptersFor(pages: number): number {
  let chapters = Math.max(1, Math.round(pages / 2));
  for (let tries = 0; tries < 5; tries++) {
    const { pages: made } = inProcess("plain", 1, String(chapters));
    if (made >= pages && made <= pages + 2) break;
    chapters = Math.max(1, Math.round((chapters * pages) / made) + (made < pages ? 1 : 0));
  }
  return chapters;
}

/** By the clock, which is what somebody waits for and what an idle machine is needed for; by the processor, which other work disturbs less. */
function ratio(name: string, ours: Measured, plain: Measured): void {
  const by = (of: "seconds" | "processor"): string => (ours[of] / ours.pages / (plain[of] / plain.pages)).toFixed(2);
  console.log(
    `${name.padEnd(44)} ${by("seconds")} times the plain document's time by the page (target: 1.3 at most), ${by("processor")} times its processor time`,
  );
}

function inProcess(what: string, times: number, of = flagship): Measured {
  const run = spawnSync(process.execPath, [one, what, of, String(times)], { encoding: "utf8" });
  if (run.status !== 0) throw new Error(run.stderr);
  return JSON.parse(run.stdout) as Measured;
}

function commandLine(format: string): Measured {
  const start = process.hrtime.bigint(),
    to = join(folder, `manual.${format}`);
  const args = ["dist/cli/stripdown.mjs", "manual", flagship, "--as", format, "--to", to, "--force", "--quiet"],
    run = spawnSync(process.execPath, args, { encoding: "utf8", cwd: project });
  if (run.status === null || run.status > 1) throw new Error(run.stderr);
  return { seconds: Number(process.hrtime.bigint() - start) / 1e9, processor: 0, thread: 0, megabytes: 0, pages: 0 };
}

const tell = (name: string, { seconds, processor, thread, megabytes, pages }: Measured): void =>
  console.log(
    `${name.padEnd(44)} ${(seconds * 1000).toFixed(0).padStart(6)} ms${processor > 0 ? `  ${(processor * 1000).toFixed(0).padStart(6)} ms of processor, ${(thread * 1000).toFixed(0).padStart(5)} of its thread` : ""}${megabytes > 0 ? `  ${megabytes.toFixed(0).padStart(4)} MB` : ""}${pages > 0 ? `  ${pages} pages` : ""}`,
  );

try {
  const build = spawnSync(process.execPath, [join(project, ".build", "build.mjs")], { encoding: "utf8", cwd: project });
  if (build.status !== 0) throw new Error(build.stderr);
  for (const format of ["html", "pdf"])
    tell(
      `${format}, whole command, cold`,
      best(() => commandLine(format)),
    );
  const measured = (format: string, times: number, of?: string): Measured => {
    const found = best(() => inProcess(format, times, of));
    tell(`${format}, in a process, ${times === 1 ? "first" : `warm (${times}th)`}`, found);
    return found;
  };
  measured("html", 1);
  measured("html", 5);
  const first = measured("pdf", 1),
    warm = measured("pdf", 5),
    chapters = String(chaptersFor(first.pages));
  ratio("pdf, first", first, measured("plain", 1, chapters));
  ratio("pdf, warm", warm, measured("plain", 5, chapters));
  const workers = availableParallelism(),
    share = Math.ceil(many / workers),
    start = process.hrtime.bigint();
  const peaks = await Promise.all(
    Array.from(
      { length: workers },
      () =>
        new Promise<number>((done, fail) => {
          const process_ = spawn(process.execPath, [one, "pdf", flagship, String(share)], {
            stdio: ["ignore", "pipe", "inherit"],
          });
          let said = "";
          process_.stdout.on("data", (part: Buffer) => (said += part.toString()));
          process_.on("close", (status) => {
            if (status === 0) done((JSON.parse(said) as Measured).megabytes);
            else fail(new Error(`a process ended with ${status}`));
          });
        }),
    ),
  );
  const seconds = Number(process.hrtime.bigint() - start) / 1e9;
  console.log(
    `${share * workers} PDF manuals on ${workers} cores: ${seconds.toFixed(1)} s, ${((share * workers) / seconds).toFixed(1)} a second, ${Math.max(...peaks).toFixed(0)} MB at the peak of a process`,
  );
} finally {
  rmSync(folder, { recursive: true, force: true });
}
