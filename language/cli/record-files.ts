// Record files that the user names, and what they say about which procedures are meant.

import type { ReadRecord } from "../outputs/record/check-output.ts";
import { CannotRun, type Io, type ParsedArgs } from "./command.ts";
import { option } from "./project-run.ts";

/** @throws CannotRun for a file that is no record. */
export async function readRecords(files: readonly string[], io: Io): Promise<ReadRecord[]> {
  const { readRecord } = await import("../outputs/record/read-record.ts"),
    records: ReadRecord[] = [];
  for (const file of files) {
    const read = readRecord(await io.readFile(file));
    if ("problem" in read) throw new CannotRun(`${file} is no record: ${read.problem}`);
    records.push({ file, record: read.record });
  }
  return records;
}

/** The records say which procedures in which build are meant, unless the user does. */
export function asRecorded(args: ParsedArgs, records: readonly ReadRecord[]): ParsedArgs {
  const procedures = records.flatMap(({ record }) => record.procedures),
    options = new Map(args.options),
    recordedIn = new Map<string, string>(),
    ids = [...new Set(procedures.map(({ procedure }) => procedure))],
    builds = [...new Set(procedures.map(({ build }) => build))];
  if (option(args, "procedure") === undefined && ids.length > 0 && ids.every((id) => /^[\w-]+$/.test(id))) {
    options.set("procedure", ids.join(","));
    for (const { file, record } of records)
      for (const { procedure } of record.procedures) if (!recordedIn.has(procedure)) recordedIn.set(procedure, file);
  }
  if (option(args, "build") === undefined && builds.length === 1 && builds[0] !== "") options.set("build", builds[0]!);
  return { ...args, options, recordedIn };
}
