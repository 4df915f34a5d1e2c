// A command whose first word says which of several outputs is meant: `draw strip FILE`. Everything else is as with any output.

import { nearestWords } from "../calc/nearest.ts";
import { CannotRun, command, type Command, type CommandOption, type Io, type ParsedArgs } from "./command.ts";
import { outputCommand, type OutputCommand } from "./output-command.ts";

interface Kind extends Pick<OutputCommand, "formats" | "load"> {
  /** For one that needs more than the procedures: options of its own, and what it makes of them. */
  readonly fed?: {
    readonly options: readonly string[];
    readonly by: (
      args: ParsedArgs,
      io: Io,
    ) => Promise<{ readonly args: ParsedArgs; readonly load: OutputCommand["load"] }>;
  };
}

export interface KindsCommand {
  readonly name: string;
  readonly summary: string;
  readonly example: string;
  /** By their words, in the order in which help lists them. All have the same options beside their formats. */
  readonly kinds: Readonly<Record<string, Kind>>;
  readonly options?: readonly CommandOption[];
  readonly settings?: NonNullable<OutputCommand["settings"]>;
}

export function kindsCommand(of: KindsCommand): Command {
  const { kinds, ...rest } = of,
    words = Object.keys(kinds),
    commands = new Map(Object.entries(kinds).map(([word, kind]) => [word, outputCommand({ ...rest, ...kind })]));
  const first = commands.get(words[0]!)!;
  return command({
    name: of.name,
    summary: of.summary,
    usage: `${of.name} ${words.join("|")} [FILE | FOLDER | GLOB | -]…`,
    example: of.example,
    options: first.options,
    run: async (args, io) => {
      const [word, ...positionals] = args.positionals,
        chosen = word === undefined ? undefined : commands.get(word);
      if (!chosen) {
        const near = word === undefined ? [] : nearestWords(word, words);
        throw new CannotRun(
          word === undefined
            ? `${of.name} what? It is one of ${words.join(", ")}`
            : `${of.name} ${word}: ${near.length > 0 ? `did you mean ${near.join(" or ")}?` : `it is one of ${words.join(", ")}, then the files`}`,
        );
      }
      const own = Object.values(kinds).flatMap(({ fed }) => fed?.options ?? []),
        kind = kinds[word!]!,
        strange = own.find((name) => args.options.has(name) && kind.fed?.options.includes(name) !== true);
      if (strange !== undefined)
        throw new CannotRun(
          `${of.name} ${word} takes no --${strange}: it is for ${words.filter((each) => kinds[each]!.fed?.options.includes(strange)).join(", ")}`,
        );
      const asked: ParsedArgs = { ...args, positionals };
      if (!kind.fed) return chosen.run(asked, io);
      const { args: meant, load } = await kind.fed.by(asked, io);
      return outputCommand({ ...rest, ...kind, load }).run(meant, io);
    },
  });
}
