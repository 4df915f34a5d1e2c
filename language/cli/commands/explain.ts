// Explains a check: what it finds, why it matters, a failing example and the same mended.

import type { Check } from "../../checks/check.ts";
import { checks } from "../../checks/registry.ts";
import { nearestWords } from "../../calc/nearest.ts";
import { CannotRun, command, type Io } from "../command.ts";
import { isOn } from "../project-run.ts";
import { exampleText, wrapped } from "../../outputs/findings/explain-text.ts";
import { visible } from "../../outputs/findings/text.ts";

export default command({
  name: "explain",
  summary: "Explain a check by its code: what it finds, why it matters, an example and how it is mended",
  usage: "explain CODE | explain --list",
  example: "stripdown explain sequence/still-held",
  options: [
    { name: "list", about: "Every check with its title" },
    { name: "json", about: "As JSON" },
  ],
  async run(args, io) {
    const all = [...checks].sort((a, b) => (a.code < b.code ? -1 : 1)),
      code = args.positionals[0];
    if (isOn(args, "list")) return list(all, io, isOn(args, "json"));
    if (code === undefined) throw new CannotRun("explain needs the code of a check: explain --list shows them all");
    const check = all.find((one) => one.code === code);
    if (!check) {
      const near = nearestWords(
        code,
        all.map((one) => one.code),
      );
      throw new CannotRun(
        `there is no check ${code}${near.length > 0 ? `: did you mean ${near.join(" or ")}?` : ": explain --list shows them all"}`,
      );
    }
    io.out(isOn(args, "json") ? `${JSON.stringify(plain(check), null, 2)}\n` : page(check));
    return 0;
  },
});

const plain = ({ code, title, severity, why, source, fails, mended }: Check): object => ({
  code,
  title,
  severity,
  why,
  source,
  fails: exampleText(fails),
  mended: exampleText(mended),
});

function list(all: readonly Check[], io: Io, json: boolean): number {
  io.out(
    json
      ? `${JSON.stringify(all.map(plain), null, 2)}\n`
      : `${all.map((c) => `${c.code.padEnd(32)} ${c.severity.padEnd(9)} ${c.title}`).join("\n")}\n`,
  );
  return 0;
}

function page(check: Check): string {
  const indent = (text: string): string =>
    exampleText(text)
      .split("\n")
      .map((line) => (line === "" ? "" : `    ${visible(line)}`))
      .join("\n");
  return [
    `${check.code}  (${check.severity})`,
    check.title,
    "",
    wrapped(check.why, 88),
    ...(check.source ? ["", wrapped(`Source: ${check.source}`, 88)] : []),
    "",
    "Found here:",
    "",
    indent(check.fails),
    "",
    "Mended:",
    "",
    indent(check.mended),
    "",
  ].join("\n");
}
