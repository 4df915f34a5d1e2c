// Saved records of the work, held against the procedures that they were made by, or many of them in one table.

import type { Output } from "../../outputs/output.ts";
import { CannotRun, command, type Command, type Io, type ParsedArgs } from "../command.ts";
import { outputCommand, type OutputCommand } from "../output-command.ts";
import { isOn, option } from "../project-run.ts";

const checkFormats = ["text", "csv", "json"],
  summaryFormats = ["text", "csv", "json", "svg", "html"];
const shared = {
  name: "record",
  summary:
    "Remarks on saved records: what is missing, outside its limits or not as written; or the spread of the readings over many",
  example: "stripdown record unit-7.json examples/dairy-pump",
  options: [
    {
      name: "summary",
      about: "Not remarks but the spread of each reading over all records, as table and as drawing (svg, html)",
    },
  ],
};

const shown = outputCommand({
  ...shared,
  formats: summaryFormats,
  load: () => {
    throw new Error("a record is read before its output is chosen");
  },
});

/** Records are the files that end in .json; the others are procedures. */
async function run(args: ParsedArgs, io: Io): Promise<number> {
  const files = args.positionals.filter((path) => path.endsWith(".json")),
    sources = args.positionals.filter((path) => !path.endsWith(".json"));
  if (files.length === 0)
    throw new CannotRun("record: which records? Name their files, which end in .json, then the procedures");
  const { readRecord } = await import("../../outputs/record/read-record.ts"),
    records: { file: string; record: import("../../outputs/record/record.ts").WorkRecord }[] = [];
  for (const file of files) {
    const read = readRecord(await io.readFile(file));
    if ("problem" in read) throw new CannotRun(`${file} is no record: ${read.problem}`);
    records.push({ file, record: read.record });
  }
  let open = 0;
  const isSummary = isOn(args, "summary");
  // What an output makes its data of is its own business: the command only passes it through.
  const load = async (): Promise<Output<unknown>> =>
    isSummary
      ? ((await import("../../outputs/record/summary.ts")).recordSummary(records) as Output<unknown>)
      : ((await import("../../outputs/record/check-output.ts")).recordCheck(records, (count) => {
          open = count;
        }) as Output<unknown>);
  const of: OutputCommand = { ...shared, formats: isSummary ? summaryFormats : checkFormats, load };
  const status = await outputCommand(of).run(
    {
      positionals: sources,
      options: withRecords(
        args,
        records.flatMap(({ record }) => record.procedures),
      ),
    },
    io,
  );
  return status === 0 && open > 0 ? 1 : status;
}

/** The records say which procedures in which build are meant, unless the user does. */
function withRecords(
  args: ParsedArgs,
  procedures: readonly { readonly procedure: string; readonly build: string }[],
): ParsedArgs["options"] {
  const options = new Map(args.options),
    ids = [...new Set(procedures.map(({ procedure }) => procedure))],
    builds = [...new Set(procedures.map(({ build }) => build))];
  if (option(args, "procedure") === undefined && ids.length > 0 && ids.every((id) => /^[\w-]+$/.test(id)))
    options.set("procedure", ids.join(","));
  if (option(args, "build") === undefined && builds.length === 1 && builds[0] !== "") options.set("build", builds[0]!);
  return options;
}

const recordCommand: Command = command({ ...shown, usage: "record RECORD.json… [FILE | FOLDER | GLOB]…", run });
export default recordCommand;
