// Every output of a machine in which every place for a text holds a text of the caller's, each with a mark behind it that tells which
// place it is. So it can be asked of every place in every output whether it is printed, and as it was written.

import type { Output, OutputInput, OutputOptions } from "../../language/outputs/output.ts";
import { performProcedure } from "../../language/bench/perform-procedure.ts";
import { buildModel } from "../../language/model/build-model.ts";
import { buildsOf } from "../../language/model/builds.ts";
import { loadProject } from "../../language/names/load.ts";
import { memoryWorld } from "../support/memory-world.ts";
import { recordCheck } from "../../language/outputs/record/check-output.ts";
import type { WorkRecord } from "../../language/outputs/record/record.ts";
import { recordSummary } from "../../language/outputs/record/summary.ts";
import { readRecord } from "../../language/outputs/record/read-record.ts";
import { refitBook } from "../../language/outputs/refit-book/refit-book.ts";
import { outputs } from "../../language/outputs/registry.ts";
import { languageFields, machineOf, recordFields, recordOf, type Field, type TextOf } from "./every-text.ts";
import { options as plainOptions } from "./outputs-of.ts";

/** What the caller of an output gives beside the files. */
const givenFields = ["given date", "given file", "given why-no-picture"] as const;

export const fields: readonly Field[] = [...languageFields, "hazard precaution 2", ...recordFields, ...givenFields];

const numbers = new Map(fields.map((field, i) => [field, i]));
/** Letters that stand nowhere else, so that it is found whatever stands around it. */
export const markOf = (field: Field): string => {
  const number = numbers.get(field);
  if (number === undefined) throw new Error(`no place is called ${field}`);
  return `qz${[...String(number).padStart(3, "0")].map((digit) => "abcdefghij"[Number(digit)]).join("")}zq`;
};
export const fieldOfMark = (mark: string): Field =>
  fields[Number([...mark.slice(2, 5)].map((letter) => "abcdefghij".indexOf(letter)).join(""))]!;

export interface Filled {
  readonly input: OutputInput;
  readonly options: OutputOptions;
  readonly outputs: readonly Output<unknown>[];
  readonly record: WorkRecord;
  /** What stands in this place, without its mark. */
  readonly text: TextOf;
}

/** One grey dot, as PNG. */
const dot = {
  type: "image/png",
  base64: "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==",
  width: 10,
  height: 10,
} as const;

export function filledWith(text: TextOf): Filled {
  const marked: TextOf = (field) => `${text(field).replaceAll("\n", " ")} ${markOf(field)}`,
    input = fullest(machineOf(marked)),
    options: OutputOptions = {
      ...plainOptions,
      units: 2,
      date: marked("given date"),
      // Of parts it is there, of everything else it is not.
      picture: (path) => (path.includes(markOf("part photo")) ? dot : { problem: marked("given why-no-picture") }),
      recording: (path) => encodeURIComponent(path),
    };
  const file = marked("given file"),
    record = asRead(recordOf(input, options, marked)),
    records = [{ file, record }];
  return {
    input,
    options,
    text,
    record,
    outputs: [
      ...outputs,
      recordCheck(records),
      recordSummary(records),
      refitBook(records[0]!),
    ] as readonly Output<unknown>[],
  };
}

/** As it comes back from a file. */
function asRead(record: WorkRecord): WorkRecord {
  const read = readRecord(JSON.stringify(record));
  if ("problem" in read) throw new Error(read.problem);
  return read.record;
}

/** In the build in which most is there and done; performed in that one alone, since there are many. */
function fullest(text: string): OutputInput {
  const file = "/project/machine.strip",
    project = loadProject(memoryWorld(new Map([[file, text]]), [], "/project/"), [file], new Map()),
    build = buildsOf(project, file, "box").toSorted((a, b) => b.chosen.size - a.chosen.size)[0]!,
    model = buildModel(project, file, "box", build)!;
  return {
    performances: [performProcedure(model, "open-it")],
    texts: new Map([...project.files].map(([path, each]) => [path, each.text])),
    openFindings: 1,
    allowed: [],
  };
}
