// Saved records of the work, held against the procedures that they were made by, or many of them in one table.

import type { Output } from "../../outputs/output.ts";
import { CannotRun, command, type Command, type Io, type ParsedArgs } from "../command.ts";
import { outputCommand, type OutputCommand } from "../output-command.ts";
import { isOn } from "../project-run.ts";
import { asRecorded, readRecords } from "../record-files.ts";

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
  const records = await readRecords(files, io);
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
  const status = await outputCommand(of).run({ ...asRecorded(args, records), positionals: sources }, io);
  return status === 0 && open > 0 ? 1 : status;
}

const recordCommand: Command = command({ ...shown, usage: "record RECORD.json… [FILE | FOLDER | GLOB]…", run });
export default recordCommand;
