// The demonstration: sets up, builds, checks the flagship example and writes its manual, refit and bill to out/demo/.

import { mkdirSync } from "node:fs";
import { join, relative } from "node:path";
import { project, run, setUp } from "./setup.mjs";

const example = join("examples", "mooring-winch"),
  out = join("out", "demo");
setUp();
if (run([join(".build", "build.mjs")]) !== 0) process.exit(2);
mkdirSync(join(project, out), { recursive: true });
const stripdown = (...args) => {
  console.log(`\n$ stripdown ${args.join(" ")}`);
  return run([join("dist", "cli", "stripdown.mjs"), ...args]);
};

let worst = stripdown("check", example);
for (const args of [
  ["manual", example, "--to", join(out, "manual.html")],
  ["refit", example, "--to", join(out, "refit.txt")],
  ["bill", example, "--to", join(out, "bill.csv"), "--as", "csv"],
])
  worst = Math.max(worst, stripdown(...args, "--force"));
const where = relative(process.cwd(), join(project, out)) || ".";
console.log(
  worst === 2
    ? "\nSomething could not be written."
    : `\nWritten: the manual, the refit and the bill in ${where}; open manual.html in a browser.`,
);
process.exitCode = worst;
