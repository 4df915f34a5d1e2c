// A machine in which every string that the language takes is written, and a record in which every free text of a record is: each with a
// text of the caller's. What is to be written comes from the vocabulary and from the published shape of a record, so that a word or a
// field that is new and not written here is told.

import { readFileSync } from "node:fs";
import { eachItem, parse, type Item } from "../../language/syntax/index.ts";
import { Str } from "../../language/syntax/tokens.ts";
import { macros, vocabulary, type Entry } from "../../language/vocabulary/index.ts";
import { linesOf } from "../../language/outputs/lines/groups.ts";
import type { OutputInput, OutputOptions } from "../../language/outputs/output.ts";
import { askedOf } from "../../language/outputs/record/asked.ts";
import type { LineRecord, WorkRecord } from "../../language/outputs/record/record.ts";
import { allActions } from "../../language/outputs/sheet/actions.ts";
import { filledRecord } from "./record/filled.ts";

/** A place for a text: `step note`, `unit maker 2` (the second string behind the word), `record lines[].signed`. */
export type Field = string;
export type TextOf = (field: Field) => string;

const fieldOf = ({ place, word }: Pick<Entry, "place" | "word">, nth: number): Field =>
  `${place} ${word}${nth === 1 ? "" : ` ${nth}`}`;

/** How many strings a word takes at the most, by the notation of its shape (macros.ts); of a group that comes any number of times, one. */
export function stringsIn(shape: string): number {
  const tokens = shape.match(/'[^']*'|<[^>]*>|[()[\]|]|[^\s()[\]|<>]+/g) ?? [];
  let at = 0;
  const alternatives = (): number => {
    let most = 0,
      here = 0;
    for (; at < tokens.length; at++) {
      const token = tokens[at]!;
      if (token === ")" || token === "]") break;
      if (token === "(" || token === "[") {
        at++;
        here += alternatives();
      } else if (token === "|") {
        most = Math.max(most, here);
        here = 0;
      } else if (token === "<string>") here++;
      else {
        const inner = macros[token.slice(1, -1)];
        if (token.startsWith("<") && inner !== undefined) here += stringsIn(inner);
      }
    }
    return Math.max(most, here);
  };
  return alternatives();
}

/** Names of files that a program reads. */
const isPath = (word: string): boolean => word === "use";

/** Every place of the language for a text. */
export const languageFields: readonly Field[] = vocabulary.flatMap((entry) =>
  isPath(entry.word) ? [] : Array.from({ length: stringsIn(entry.shape) }, (_, i) => fieldOf(entry, i + 1)),
);

/** Acts on a thing: of which kind it is, where it is none of the parts. */
const acts: Readonly<Record<string, string>> = {
  undo: "undo 3 of screws into tray A",
  loosen: "loosen side-screws 2 turns",
  "back-out": "back-out set-screw 1 turn",
  turn: "turn to down",
  drain: "drain oil",
  recover: "recover oil",
  fill: "fill oil",
  bleed: "bleed oil",
  purge: "purge oil",
  evacuate: "evacuate oil",
  apply: "apply grease to lid",
  heat: "heat lid to 80 °C",
  tighten: "tighten screws",
  renew: "renew seal",
  scrap: "scrap seal",
  fit: "fit lid",
  align: "align lid, case",
  remove: "remove cover",
  work: `work lid "x" "x"`,
  measure: `measure on lid "x" 1..2 mm with gauge else "x"`,
  inspect: `inspect face on lid "x" else "x"`,
  test: `test "x" at least 3 bar with gauge else "x"`,
  set: `set lid "x" 1 mm with gauge else "x"`,
  mark: `mark lid, case as M "x"`,
  tag: `tag lead as L "x"`,
  put: `put sheet on lid "x"`,
  take: `take sheet off "x"`,
  wait: `wait 5 min "x"`,
  reuse: `reuse seal "x"`,
  video: `video "x" from 00:01 to 00:02`,
  do: `do "x"`,
  step: `step "x" { work "x" }`,
  optional: `optional "x" { work lid "x" }`,
  photo: `photo "x" "x" { point lid 20 % 30 % }`,
};

/** One line for each word that takes a text in this kind of block. */
const linesIn = (place: string): string =>
  vocabulary
    .filter((entry) => entry.place === place && stringsIn(entry.shape) > 0)
    .map(({ word, shape }) => {
      const act = acts[word];
      if (act === undefined)
        return shape.includes("<items>") ? `${word} lid "x"` : `${word}${' "x"'.repeat(stringsIn(shape))}`;
      return act.includes('"') ? act : `${act} "x"`;
    })
    .join("\n    ");

const precautions =
  "shut-down isolate lock-out discharge vent let-down block prop cool ventilate prove-dead prove-zero try-start earth screen barrier other";
/** Acts of precautions are done on a hazard. */
const onHazard = (lines: string): string =>
  lines.replace(new RegExp(`^(\\s*)(${precautions.split(" ").join("|")}|restore) lid`, "gm"), "$1$2 live");

const messages = `danger "x"  warning "x"  caution "x"  notice "x"`;
const supply = `part-no "x"  standard "x"  about "x"`;

const source = (): string => `
tool key "x" { calibration "x"  about "x" }
tool gauge "x"
tool wrench "x" { kind torque-wrench  range 5..25 N·m  calibration "x"  about "x" }
tool gloves "x"
role fitter "x"
consumable grease "x" { pack 50 ml  hazard solvent  ${supply} }
consumable oil-46 "x" { pack 1 L  part-no "x" }
torque-table dry "x" { size M6 9 N·m }
fastener m6 screw "x" { size M6 }
hazard solvent chemical caution "x" { temperature 40 °C }
temporary sheet "x"
warn warning "x" on gasket

unit box "x" {
  revision C  base case  positions up, down  about "x"  no noise "x"  torque standard "x"  variants late "x", early "x"
  option heater "x"  maker "x" "x"  serial "x"  intended-use "x"  wrong-use "x"  mishap "x" "x"  waste "x" "x"
  renew always gasket
  part case "x" { mass 30 kg  ${supply}  photo "x" "x" { point case 50 % 50 % } }
  part lid "x" { mass 12 kg  align by "x"  ${supply}  ${messages} }
  part seal gasket "x" { between lid and case  ${supply} }
  part cover "x" { mass 1 kg }
  fastener screws screw "x" { count 6  size M6  class 8.8  torque "x" for 2 while "x"  torque 9 N·m for rest  sequence "x"  pattern circle 90 mm  joins lid to case  thread-locker grease  ${supply}  ${messages} }
  fastener side-screws screw "x" { count 4  like m6  torque 20 N·m  sequence star  pattern circle 80 mm  back-out 90 deg until "x"  joins cover to case }
  fastener plain-screws screw "x" { count 2  size M5  joins cover to case }
  if late { part fan "x" { mass 1 kg } }
  fastener set-screw screw "x" { torque "x"  into case }
  fastener plug plug "x" { torque "x"  into case }
  temporary clamp "x"
  joint lead connector "x" { joins lid to case  how "x"  about "x"  ${messages} }
  fluid oil oil "x" { volume 1 L  uses oil-46  drains at plug  fills at plug  path case, lid  about "x"  ${messages} }
  hazard live electrical danger "x" {
    on lid  about "x"  role fitter  wear gloves
    precaution isolate "x" with key back "x"
    precaution prove-dead "x" at most 12 V dc with key
  }
  warn notice "x" on cover
}
procedure open-it "x" for box {
  aim lid off  revision 4  role fitter
  task lid-only "x" does top
  author "x" "x"  date "x"  translated from "x"  prepared "x" "x"  checked "x" "x"  approved "x" "x"  mishap "x" "x"  waste "x" "x"
  about "x"  needs "x" then "x"  video "x"  leaves off cover "x"  note "x"  ${messages}
  photo "x" "x" { point lid 20 % 30 % }
  optional "x" { step "x" { work lid "x" } }
  do "x"
  step top "x" {
    ${onHazard(linesIn("step"))}
    put clamp on case "x"
    if late { work cover "x" }
    if heater { work cover "x" }
    measure gap on lid "x" 1..2 mm with gauge else choose seal from 0.10, 0.20 mm
    undo rest of screws
    undo lead
    lift lid with key
    remove seal into bag B
  }
  step back "x" {
    work cover "x"
    refit {
    ${onHazard(linesIn("refit"))}
    reverse
    }
  }
  finish {
    ${onHazard(linesIn("finish"))}
  }
}
`;

/** The machine with the texts asked for. */
export function machineOf(textOf: TextOf): string {
  const { text, edits } = written();
  let out = "",
    last = 0;
  for (const { field, start, end } of edits) {
    out += text.slice(last, start) + `"${textOf(field).replace(/["\\]/g, "\\$&").replaceAll("\n", " ")}"`;
    last = end;
  }
  return out + text.slice(last);
}

interface Written {
  readonly text: string;
  readonly edits: readonly { readonly field: Field; readonly start: number; readonly end: number }[];
  /** Words in their places that take fewer strings than are written. */
  readonly errors: readonly string[];
}

let made: Written | undefined;
export function written(): Written {
  if (made) return made;
  const text = source(),
    tree = parse(text),
    edits: { field: Field; start: number; end: number }[] = [];
  const heads: { item: Item; from: number; to: number }[] = [];
  eachItem(tree.items, (item) => {
    heads.push({ item, from: item.first, to: item.block ? item.block.first - 1 : item.last });
  });
  for (const { item, from, to } of heads) {
    let nth = 0;
    for (let at = from + 1; at <= to; at++) {
      const token = tree.scan.tokens[at]!;
      if (token.tokenType !== Str || !item.entry) continue;
      nth++;
      edits.push({
        field: fieldOf(item.entry, nth),
        start: token.startOffset,
        end: token.startOffset + token.image.length,
      });
    }
  }
  return (made = {
    text,
    edits: edits.sort((a, b) => a.start - b.start),
    errors: tree.errors.map(({ says, line }) => `${line + 1}: ${says}`),
  });
}

// --- a record -------------------------------------------------------------------------------------------------------------------------

interface Shape {
  readonly type?: string;
  readonly oneOf?: readonly Shape[];
  readonly properties?: Readonly<Record<string, Shape>>;
  readonly items?: Shape;
  readonly pattern?: string;
  readonly enum?: readonly unknown[];
  readonly const?: unknown;
}

/** Every place of a record, of any version, for a text that is not one of a few. */
export const recordFields: readonly Field[] = (() => {
  const found = new Set<Field>();
  const walk = (shape: Shape, path: string): void => {
    for (const one of shape.oneOf ?? []) walk(one, path);
    for (const [name, inner] of Object.entries(shape.properties ?? {}))
      walk(inner, path === "" ? name : `${path}.${name}`);
    if (shape.items) walk(shape.items, `${path}[]`);
    if (shape.type === "string" && shape.pattern === undefined && shape.enum === undefined && shape.const === undefined)
      found.add(`record ${path.replace("procedures[].", "")}`);
  };
  walk(
    JSON.parse(readFileSync(new URL("../../language/schemas/record.schema.json", import.meta.url), "utf8")) as Shape,
    "",
  );
  // Of version 1 alone, where it is no date.
  found.delete("record instruments[].due");
  return [...found];
})();

/** Both a record that the work is told by and one that names nothing that there is. */
export function recordOf(input: OutputInput, options: OutputOptions, textOf: TextOf): WorkRecord {
  const t = (field: string): string => textOf(`record ${field}`),
    whole = filledRecord(input, options, "strip"),
    [procedure] = whole.procedures,
    made = linesOf(input.performances[0]!, options);
  const asked = new Map(allActions(made).map((line) => [line.id, askedOf(line, made.context.model)] as const));
  /** Every other line asks for what it is given, so that both what is judged and what is not asked for are told. */
  const free = (line: string, i: number): LineRecord => {
    const real = i % 2 === 0 ? asked.get(line) : undefined,
      note = t("lines[].readings[].tries[].note"),
      instrument = t("lines[].readings[].tries[].instrument");
    return {
      line,
      done: i % 2 === 0,
      counts: [{ item: real?.counts[0]?.item ?? t("lines[].counts[].item"), count: 1 }],
      torques: [
        {
          item: real?.torques[0]?.item ?? t("lines[].torques[].item"),
          value: 1.5,
          unit: t("lines[].torques[].unit"),
          wrench: t("lines[].torques[].wrench"),
          initials: t("lines[].torques[].initials"),
          on: "2027-03-31",
        },
      ],
      readings: [
        {
          reading: 1,
          chosen: t("lines[].readings[].chosen"),
          tries: [
            { value: 1.5, unit: "mm", note, instrument },
            {
              value: 1.5,
              unit: i % 3 === 0 ? "mm" : t("lines[].readings[].tries[].unit"),
              note,
              instrument,
              on: "2027-03-31",
            },
          ],
        },
      ],
      signed: t("lines[].signed"),
      notAsWritten: [
        {
          what: "other",
          item: t("lines[].notAsWritten[].item"),
          note: t("lines[].notAsWritten[].note"),
          done: t("lines[].notAsWritten[].done"),
          agreedBy: t("lines[].notAsWritten[].agreedBy"),
          wanted: t("lines[].notAsWritten[].wanted"),
          wantedCount: 2,
        },
        { what: "sheared", note: t("lines[].notAsWritten[].note"), wanted: t("lines[].notAsWritten[].wanted") },
      ],
    };
  };
  const lines = [...allActions(made).map(({ id }, i) => free(id, i)), free(t("lines[].line"), 0)];
  return {
    ...whole,
    version: 2,
    serial: t("serial"),
    begun: t("begun"),
    ended: t("ended"),
    doneBy: t("doneBy"),
    checkedBy: t("checkedBy"),
    instruments: [
      {
        name: t("instruments[].name"),
        number: t("instruments[].number"),
        due: "2026-01",
        note: t("instruments[].note"),
      },
    ],
    procedures: [
      { ...procedure!, lines },
      { procedure: t("procedure"), unit: t("unit"), build: t("build"), lines: [free(t("lines[].line"), 0)] },
    ],
  };
}
