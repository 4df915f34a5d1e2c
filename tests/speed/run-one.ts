// One measurement of the benchmark: `run-one WHAT FOLDER`. Prints one line of JSON: peak memory, processor time (of all threads, and of
// the one that works) and what was done.

import "../../language/cli/collector.ts";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { diskWorld, slashes } from "../../language/cli/files.ts";
import { parse } from "../../language/syntax/index.ts";
import { scan } from "../../language/syntax/scanner.ts";
import { checkMany } from "../../language/workspace/check-many.ts";
import { yamlShape } from "./make-procedures.ts";

const [what, folder] = process.argv.slice(2) as [string, string];
const files = readdirSync(folder)
  .sort()
  .map((name) => slashes(join(folder, name)));
let says = "";

switch (what) {
  case "lex": {
    let tokens = 0;
    for (const file of files) tokens += scan(readFileSync(file, "utf8")).tokens.length;
    says = `${tokens} tokens`;
    break;
  }
  case "parse": {
    let items = 0;
    for (const file of files) items += parse(readFileSync(file, "utf8")).items.length;
    says = `${items} items at the top`;
    break;
  }
  case "check": {
    const { findings, procedures } = checkMany(diskWorld([folder]), files);
    says = `${procedures} procedures performed, ${findings.length} findings`;
    break;
  }
  case "yaml":
  case "js-yaml": {
    const { default: Ajv } = await import("ajv/dist/2020.js"),
      valid = new Ajv.default().compile(yamlShape);
    const read: (text: string) => unknown =
      what === "yaml" ? (await import("yaml")).parse : (await import("js-yaml")).load;
    let bad = 0;
    for (const file of files) if (!valid(read(readFileSync(file, "utf8")))) bad++;
    says = `${bad} of another shape`;
    break;
  }
  default:
    throw new Error(`no measurement is called ${what}`);
}
const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage(),
  { user, system } = process.threadCpuUsage();
console.log(
  JSON.stringify({
    megabytes: maxRSS / 1024,
    processor: (userCPUTime + systemCPUTime) / 1e6,
    ownThread: (user + system) / 1e6,
    says,
  }),
);
