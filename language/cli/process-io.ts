// Standard input and output of the process as the commands see them; importing it runs the command.

import "./collector.ts";
import { writeSync } from "node:fs";
import { main } from "./main.ts";
import { CannotRun, type Io } from "./command.ts";
import { decode, largestFile, readText } from "./files.ts";

/** Written at once and whole: a pipe that closes early (`| head`) ends the program quietly. */
function write(fd: number, text: string | Uint8Array): void {
  const bytes = Buffer.from(text);
  for (let at = 0; at < bytes.length;) {
    try {
      at += writeSync(fd, bytes, at);
    } catch (error) {
      const code = (error as NodeJS.ErrnoException).code;
      if (code === "EAGAIN") continue;
      if (code === "EPIPE") process.exit(0);
      throw error;
    }
  }
}

// NO_COLOR counts where it is set and not empty (no-color.org).
const colourWanted = !process.env["NO_COLOR"] && process.env["TERM"] !== "dumb";

const io: Io = {
  out: (text) => write(1, text),
  outBytes: process.stdout.isTTY === true ? undefined : (bytes) => write(1, bytes),
  err: (text) => write(2, text),
  async readStdin() {
    const chunks: Buffer[] = [];
    let size = 0;
    for await (const chunk of process.stdin) {
      chunks.push(chunk as Buffer);
      size += (chunk as Buffer).length;
      if (size > largestFile)
        throw new CannotRun(`standard input: it is too large (at most ${largestFile / 1048576} MB are read)`);
    }
    const read = decode(Buffer.concat(chunks));
    if (!("text" in read))
      throw new CannotRun(`standard input: ${read.problem === "missing" ? "there is none" : read.says}`);
    return read.text;
  },
  readFile: async (path) => {
    const read = readText(path);
    if (!("text" in read))
      throw new CannotRun(`${path}: ${read.problem === "missing" ? "there is no such file" : read.says}`);
    return read.text;
  },
  colour: process.stdout.isTTY === true && colourWanted,
  progress: process.stderr.isTTY === true && colourWanted,
  cwd: process.cwd(),
};

process.exitCode = await main(process.argv.slice(2), io);
