// Formats files: indentation and spacing, with every comment kept. A file whose braces do not pair is left as it is.

import { format, parse } from "../../syntax/index.ts";
import { command } from "../command.ts";
import { emptyPatterns, findFiles, leadsOut, linkOut, noMatch, readText, rewrite, shownFrom } from "../files.ts";
import { isOn } from "../project-run.ts";

export default command({
  name: "format",
  summary: "Format files: indentation and spacing; comments and meaning stay",
  usage: "format [FILE | FOLDER | GLOB | -]…",
  example: "stripdown format --check examples",
  options: [
    { name: "check", about: "Change nothing; exit 1 where something would change" },
    { name: "quiet", about: "Do not list files" },
  ],
  async run(args, io) {
    const cwd = io.cwd ?? process.cwd(),
      given = args.positionals.length > 0 ? args.positionals : ["."],
      checkOnly = isOn(args, "check");
    if (given.length === 1 && given[0] === "-") {
      const text = await io.readStdin(),
        next = format(text),
        left = whyLeft(text);
      if (left !== undefined) io.err(`standard input: left as it is, ${left}\n`);
      if (!checkOnly) io.out(next);
      return checkOnly && next !== text ? 1 : 0;
    }
    const show = shownFrom(cwd),
      patterns = emptyPatterns(given, cwd);
    let changed = 0,
      unreadable = 0;
    for (const file of findFiles(given, cwd)) {
      const read = patterns.has(file) ? noMatch : leadsOut(file) ? linkOut : readText(file);
      if (!("text" in read)) {
        io.err(`${show(file)}: ${read.problem === "missing" ? "there is no such file" : read.says}\n`);
        unreadable++;
        continue;
      }
      const next = format(read.text);
      if (next === read.text) {
        const left = whyLeft(read.text);
        if (left !== undefined) io.err(`${show(file)}: left as it is, ${left}\n`);
        continue;
      }
      changed++;
      if (!checkOnly) rewrite(file, next, show(file));
      if (!isOn(args, "quiet")) io.out(`${checkOnly ? "would change" : "formatted"}: ${show(file)}\n`);
    }
    return unreadable > 0 ? 2 : checkOnly && changed > 0 ? 1 : 0;
  },
});

/** Why a text cannot be laid out anew; undefined where it can. */
function whyLeft(text: string): string | undefined {
  const codes = parse(text).errors.map((error) => error.code);
  if (codes.some((code) => code.includes("brace"))) return "its braces do not pair";
  return codes.includes("syntax/too-large") ? "it is too large" : undefined;
}
