// Brings the project's own packages, Node 24 among them on Linux, into a fresh clone. Plain JavaScript, since it has to run on the
// Node that the machine happens to have (20 or newer); installs nothing where nothing changed.

import { spawn, spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { delimiter, join } from "node:path";
import { fileURLToPath } from "node:url";

export const project = fileURLToPath(new URL("..", import.meta.url));
const bin = join(project, "node_modules", ".bin"),
  stamp = join(project, "node_modules", ".installed-from");
const windows = process.platform === "win32";

/** Installs what the lock file says, unless that was done already. Ends the process where it cannot. */
export function setUp() {
  const wanted = createHash("sha256")
    .update(readFileSync(join(project, "package-lock.json")))
    .digest("hex");
  if (!existsSync(stamp) || readFileSync(stamp, "utf8") !== wanted) {
    console.error("Setting up: npm ci (once, about half a minute)");
    const { status } = spawnSync("npm", ["ci", "--no-audit", "--no-fund", "--loglevel=error"], {
      cwd: project,
      stdio: ["ignore", "inherit", "inherit"],
      shell: windows,
    });
    if (status !== 0) {
      console.error("The packages could not be installed: is there a way to the npm registry?");
      process.exit(2);
    }
    writeFileSync(stamp, wanted);
  }
  const found = spawnSync(node(), ["-p", "process.versions.node"], { encoding: "utf8" }).stdout.trim();
  if (Number(found.split(".")[0]) >= 22) return;
  console.error(
    `Node 22 or newer is needed, this is ${found || "none"}. On Linux for x64 it comes with the packages; elsewhere install it.`,
  );
  process.exit(2);
}

/** The Node that came with the packages, else the one that runs this. */
export function node() {
  const own = join(bin, "node");
  return !windows && existsSync(own) ? own : process.execPath;
}

const withBin = (env) => ({ ...process.env, PATH: `${bin}${delimiter}${process.env.PATH ?? ""}`, ...env });

/** Runs a program of the project with that Node; its exit status. `options` go to spawnSync. */
export function run(args, options = {}) {
  const { status, signal, error } = spawnSync(node(), args, {
    cwd: project,
    stdio: "inherit",
    ...options,
    env: withBin(options.env),
  });
  if (error) throw error;
  return status ?? (signal ? 1 : 0);
}

/** The same beside what else runs; what it says is said when it has ended, so that two never speak into each other. */
export function runBeside(args) {
  const child = spawn(node(), args, { cwd: project, stdio: ["ignore", "pipe", "pipe"], env: withBin() }),
    said = [];
  for (const stream of [child.stdout, child.stderr]) stream.on("data", (part) => said.push(part));
  return new Promise((done, fail) => {
    child.on("error", fail);
    child.on("close", (status) => {
      process.stderr.write(Buffer.concat(said));
      done(status ?? 1);
    });
  });
}

if (process.argv[1] && fileURLToPath(import.meta.url) === process.argv[1]) setUp();
