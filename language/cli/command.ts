// The shape of a command and of the world that it speaks to. Commands decide nothing about arguments, colour or files themselves,
// and never touch the process: what they return is the exit status.

/** One option of a command. With `value` it takes one (`--units 12`), without it is a switch. */
export interface CommandOption {
  /** Without the dashes. */
  readonly name: string;
  /** What the value is, as help shows it: `N`, `FILE`. */
  readonly value?: string;
  readonly about: string;
}

/** The arguments as given, options by name; a switch that was given is `true`. */
export interface ParsedArgs {
  readonly positionals: readonly string[];
  readonly options: ReadonlyMap<string, string | true>;
  /** The file of the record that asks for a procedure, by its id, where no option does. */
  readonly recordedIn?: ReadonlyMap<string, string>;
}

/** What a command may do to the world around it. */
export interface Io {
  /** Writes to standard output, as given: line ends are the caller's. */
  out(text: string): void;
  /** Writes bytes to standard output; undefined where a person looks at it, who could not read them. */
  readonly outBytes?: ((bytes: Uint8Array) => void) | undefined;
  /** Writes to standard error. */
  err(text: string): void;
  readStdin(): Promise<string>;
  /** The text of a file named by the user. Throws CannotRun where it cannot be read. */
  readFile(path: string): Promise<string>;
  /** Standard output is a terminal and nobody forbade colour. */
  readonly colour: boolean;
  /** Standard error is a terminal and long work may show how far it is. Undefined counts as no. */
  readonly progress?: boolean;
  /** Where relative paths start; the process's folder where it is not given. */
  readonly cwd?: string;
}

/** A command of the tool. */
export interface Command {
  readonly name: string;
  /** One line for the list of commands. */
  readonly summary: string;
  /** The arguments, as `check [FILE | FOLDER | GLOB]…`, without the tool's name. */
  readonly usage: string;
  /** A whole line to try. */
  readonly example: string;
  readonly options: readonly CommandOption[];
  /** What else help tells, a sentence or two each. */
  readonly notes?: readonly string[];
  /** The exit status: 0 clean, 1 findings, 2 could not run. */
  run(args: ParsedArgs, io: Io): Promise<number>;
}

/** The user asked for what cannot be done. Its message is a sentence for the user; the command line prints it and ends with status 2. */
export class CannotRun extends Error {}

/** Identity, for the types: `export default command({ … })`. */
export function command(of: Command): Command {
  return of;
}
