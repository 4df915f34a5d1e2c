// A made-up machine and records of it in which everything is amiss that is not in the other records of the language tests.

import { manual } from "../../../language/outputs/manual/manual.ts";
import type { OutputInput, OutputOptions } from "../../../language/outputs/output.ts";
import { askedOf } from "../../../language/outputs/record/asked.ts";
import type { ReadRecord } from "../../../language/outputs/record/check-output.ts";
import { madeOf } from "../../../language/outputs/record/check-output.ts";
import type { LineRecord, WorkRecord } from "../../../language/outputs/record/record.ts";
import { allActions } from "../../../language/outputs/sheet/actions.ts";
import { filledRecord } from "./filled.ts";

export const everyRemark = `
tool u-meter "Meter"
temporary u-sheet "Sheet"
temporary u-board "Board"
unit u-a "Unit" {
  base u-frame
  part u-frame "Frame" { mass 9 kg }
  part u-lid "Lid" { mass 1 kg }
  part u-arm "Arm" { mass 1 kg }
  part u-pipe "Pipe" { mass 1 kg }
  part u-shim shim "Shims" { count 2  behind u-lid }
  part u-liner "Liner" { mass 1 kg  behind u-lid  rests on u-frame }
  fastener u-bolts bolt "Bolts" { count 4  size M8  torque 20..24 N·m  joins u-lid to u-frame }
  fastener u-screw screw "Screw" { torque "x"  joins u-arm to u-frame }
  joint u-hose hose "Hose end" { joins u-pipe to u-frame }
}
procedure u-first "First" for u-a {
  aim u-lid, u-arm off
  step "One" {
    put u-sheet on u-frame
    put u-board on u-frame
    undo u-hose
    cap u-hose
    mark u-lid, u-frame as u-m "x"
    undo u-screw  remove u-arm
    undo u-bolts  remove u-lid
    measure u-gap on u-frame "x" at most 0.2 mm with u-meter else choose u-shim from standard, 0.10, 0.20 mm
    measure u-play on u-frame "x" at most 0.2 mm with u-meter
    inspect u-face on u-frame "x" else "x"
    refit { take u-sheet off  reverse }
  }
  step "Two" { measure "x" at most 0.3 mm  refit { } }
}
`;

/** In each record one kind of thing is amiss on every line that it can be on. */
export function everyRemarkRecords(
  input: OutputInput,
  options: OutputOptions,
  foreign: (text: string) => string,
): readonly ReadRecord[] {
  const lines = allActions(madeOf(input, options)[0]!.lines),
    { model } = madeOf(input, options)[0]!.lines.context,
    content = manual.data(input, options).provenance.hash;
  const record = (
    file: string,
    change: (line: LineRecord, readings: number) => Partial<LineRecord>,
    more: Partial<WorkRecord> = {},
  ): ReadRecord => {
    const whole = filledRecord(input, options, "all"),
      [procedure] = whole.procedures;
    return {
      file,
      record: {
        ...whole,
        content,
        version: 2,
        procedures: [
          {
            ...procedure!,
            lines: procedure!.lines.map((line) => {
              const of = lines.find(({ id }) => id === line.line);
              return { ...line, ...change(line, of ? askedOf(of, model).readings.length : 0) };
            }),
          },
        ],
        ...more,
      },
    };
  };
  const meter = foreign("meter"),
    readWith = (line: LineRecord): Partial<LineRecord> => ({
      readings: (line.readings ?? []).map((each) => ({
        ...each,
        tries: each.tries.map((one) => ({ ...one, instrument: meter })),
      })),
    });
  return [
    record("1", (line, readings) => ({
      done: false,
      counts: [{ item: foreign("nothing"), count: 1 }],
      torques: [],
      readings: [{ reading: readings + 1, tries: [{ value: 1 }] }],
      notAsWritten: [
        { what: "seized", done: foreign("done"), agreedBy: foreign("somebody") },
        { what: "seized" },
        { what: "broken", done: foreign("done") },
      ],
    })),
    record("2", (line) => ({
      torques: (line.torques ?? []).map((each) => ({ ...each, unit: "bar", wrench: foreign("wrench") })),
      readings: (line.readings ?? []).map((each) => ({ ...each, tries: [{ value: 1 }, { value: 1, unit: "bar" }] })),
    })),
    record("3", (line) => ({
      torques: [...(line.torques ?? []), { item: "u-screw", value: 5, unit: "N·m" }],
      readings: (line.readings ?? []).map((each) => ({
        ...each,
        tries: [{ value: 5, unit: "mm" }],
        chosen: "0.10 mm",
      })),
    })),
    record("4", (line) => ({
      readings: (line.readings ?? []).map((each) => ({
        ...each,
        tries: each.tries.map((one) => (one.value === undefined ? { asItShouldBe: false } : { value: 5, unit: "mm" })),
      })),
    })),
    record("5", readWith, {
      begun: "2027-03-31",
      instruments: [
        { name: meter, due: "2027-01" },
        { name: foreign("other"), due: "2027-01" },
      ],
    }),
    record("6", readWith, { instruments: [{ name: meter, due: "2027-01" }] }),
    record("7", readWith, { version: 1, begun: "2027-03-31", instruments: [{ name: meter, due: foreign("soon") }] }),
    record("8", () => ({}), {
      procedures: [{ procedure: "u-first", unit: "u-a", build: foreign("other"), lines: [] }],
    }),
  ];
}
