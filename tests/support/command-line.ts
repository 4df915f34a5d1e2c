// Runs the command line inside the test, with its own folder, input and output: what a user would see, without starting a process.

import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { onTestFinished } from "vitest";
import { CannotRun, type Io } from "../../language/cli/command.ts";
import { readText } from "../../language/cli/files.ts";
import { main } from "../../language/cli/main.ts";

export interface Ran {
  readonly status: number;
  readonly out: string;
  readonly err: string;
}

/** A folder of its own for one test, with these files; gone when the test ends. */
export function folderWith(files: Readonly<Record<string, string | Uint8Array>>): string {
  const folder = mkdtempSync(join(tmpdir(), "stripdown-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  for (const [name, content] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), content);
  }
  return folder;
}

/** `stripdown ARGV` in a folder. */
export async function stripdown(
  cwd: string,
  argv: readonly string[],
  input = "",
  more: Partial<Io> = {},
): Promise<Ran> {
  let out = "",
    err = "";
  const io: Io = {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    colour: false,
    cwd,
    readStdin: async () => input,
    readFile: async (path) => {
      const read = readText(join(cwd, path));
      if (!("text" in read)) throw new CannotRun(`${path} cannot be read`);
      return read.text;
    },
    ...more,
  };
  const status = await main(argv, io);
  return { status, out, err };
}
