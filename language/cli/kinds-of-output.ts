// A command whose first word says which of several outputs is meant: `draw strip FILE`. Everything else is as with any output.

import { nearestWords } from "../calc/nearest.ts";
import { CannotRun, command, type Command, type CommandOption } from "./command.ts";
import { outputCommand, type OutputCommand } from "./output-command.ts";

export interface KindsCommand {
  readonly name: string;
  readonly summary: string;
  readonly example: string;
  /** By their words, in the order in which help lists them. All have the same options beside their formats. */
  readonly kinds: Readonly<Record<string, Pick<OutputCommand, "formats" | "load">>>;
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
    run: (args, io) => {
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
      return chosen.run({ ...args, positionals }, io);
    },
  });
}
