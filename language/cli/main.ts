// The command line: which command, which arguments; commands are loaded when they are asked for. A fault of ours never shows more
// than one line.

import type { Command, CommandOption, Io, ParsedArgs } from "./command.ts";
import { CannotRun } from "./command.ts";
import { nearestWords } from "../calc/nearest.ts";
import { version } from "./version.ts";

const commands: Readonly<Record<string, () => Promise<{ default: Command }>>> = {
  check: () => import("./commands/check.ts"),
  refit: () => import("./commands/refit.ts"),
  bill: () => import("./commands/bill.ts"),
  manual: () => import("./commands/manual.ts"),
  draw: () => import("./commands/draw.ts"),
  labels: () => import("./commands/labels.ts"),
  sheet: () => import("./commands/sheet.ts"),
  record: () => import("./commands/record.ts"),
  text: () => import("./commands/text.ts"),
  export: () => import("./commands/export.ts"),
  calc: () => import("./commands/calc.ts"),
  explain: () => import("./commands/explain.ts"),
  format: () => import("./commands/format.ts"),
  new: () => import("./commands/new.ts"),
};

export const commandNames: readonly string[] = Object.keys(commands);

/** One of `commandNames`. */
export async function loadCommand(name: string): Promise<Command> {
  return (await commands[name]!()).default;
}

/** Runs the tool; the exit status: 0 clean, 1 findings, 2 could not run. */
export async function main(argv: readonly string[], io: Io): Promise<number> {
  try {
    return await dispatch(argv, io);
  } catch (error) {
    if (error instanceof CannotRun) {
      // It may quote a file that anybody wrote. Loaded when it is needed: most runs are not refused.
      const { shown } = await import("../outputs/text/shown.ts");
      io.err(`stripdown: ${shown(error.message)}\n`);
      return 2;
    }
    const fault = error instanceof Error ? error.message.split("\n")[0] : String(error);
    io.err(
      `stripdown: this is a fault of the tool, not of your file (${fault}). Please report it with the file that shows it.\n`,
    );
    if (process.env["STRIPDOWN_TRACE"] && error instanceof Error) io.err(`${error.stack}\n`);
    return 2;
  }
}

async function dispatch(argv: readonly string[], io: Io): Promise<number> {
  const [name, ...rest] = argv;
  if (name === "--version" || name === "-V") {
    io.out(`stripdown ${version}\n`);
    return 0;
  }
  if (name === undefined || name === "--help" || name === "-h" || (name === "help" && rest.length === 0)) {
    io.out(await overview());
    return name === undefined ? 2 : 0;
  }
  if (name === "help") return dispatch([rest[0]!, "--help"], io);
  const load = Object.hasOwn(commands, name) ? commands[name] : undefined;
  if (!load) {
    const near = nearestWords(name, Object.keys(commands));
    throw new CannotRun(
      `there is no command ${name}${near.length > 0 ? `: did you mean ${near.join(" or ")}?` : ": stripdown --help lists them"}`,
    );
  }
  const { default: command } = await load();
  if (rest.includes("--help") || rest.includes("-h")) {
    io.out(help(command));
    return 0;
  }
  return command.run(parseArguments(command, rest), io);
}

/** `--name value`, `--name=value`, `--name`; everything behind `--` is an argument. */
function parseArguments(command: Command, argv: readonly string[]): ParsedArgs {
  const positionals: string[] = [],
    options = new Map<string, string | true>(),
    known = new Map<string, CommandOption>(command.options.map((o) => [o.name, o]));
  for (let i = 0; i < argv.length; i++) {
    const arg = argv[i]!;
    if (arg === "--") {
      positionals.push(...argv.slice(i + 1));
      break;
    }
    if (!arg.startsWith("--") || arg === "-") {
      positionals.push(arg);
      continue;
    }
    const equals = arg.indexOf("="),
      name = arg.slice(2, equals < 0 ? undefined : equals),
      option = known.get(name);
    if (!option) {
      const near = nearestWords(name, [...known.keys()]);
      throw new CannotRun(
        `${command.name} has no option --${name}${near.length > 0 ? `: did you mean --${near[0]}?` : `: ${command.name} --help lists them`}`,
      );
    }
    if (option.value === undefined) {
      if (equals >= 0) throw new CannotRun(`--${name} takes no value`);
      options.set(name, true);
    } else {
      const value = equals >= 0 ? arg.slice(equals + 1) : argv[++i];
      if (value === undefined) throw new CannotRun(`--${name} needs its value: ${option.value}`);
      options.set(name, value);
    }
  }
  return { positionals, options };
}

function help(command: Command): string {
  const rows = [...command.options, { name: "help", about: "This text" }].map(
    (o) => [`--${o.name}${"value" in o && o.value !== undefined ? ` ${o.value}` : ""}`, o.about] as const,
  );
  const width = Math.min(30, Math.max(...rows.map(([left]) => left.length)) + 2);
  const row = ([left, right]: readonly [string, string]): string =>
    `  ${left.length >= width ? `${left}\n  ${" ".repeat(width)}` : left.padEnd(width)}${right}`;
  return [
    command.summary,
    "",
    `  stripdown ${command.usage}`,
    "",
    ...rows.map(row),
    "",
    ...(command.notes ?? []).flatMap((note) => broken(note)),
    ...(command.notes ? [""] : []),
    `Example: ${command.example}`,
    "",
  ].join("\n");
}

/** A sentence in lines of at most 100 signs, the further ones set in. */
function broken(text: string): string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= 100) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(lines.length === 0 ? word : `  ${word}`);
  }
  return lines;
}

async function overview(): Promise<string> {
  const loaded = await Promise.all(Object.values(commands).map((load) => load())),
    width = Math.max(...loaded.map(({ default: c }) => c.name.length)) + 2;
  return [
    "stripdown: machine strip-down and refit procedures, proved on a model of the bench",
    "",
    ...loaded.map(({ default: c }) => `  ${c.name.padEnd(width)}${c.summary}`),
    "",
    "stripdown COMMAND --help tells more. Exit status: 0 clean, 1 findings, 2 could not run.",
    "",
  ].join("\n");
}
