// Hostile texts through every field of every output: they print as written, and become nothing else.

import { expect, test } from "vitest";
import { bill } from "../../language/outputs/bill/bill.ts";
import { modelExport } from "../../language/outputs/export/export.ts";
import { manual } from "../../language/outputs/manual/manual.ts";
import { write } from "../../language/outputs/output.ts";
import { refitBook } from "../../language/outputs/refit-book/refit-book.ts";
import { refit } from "../../language/outputs/refit/refit.ts";
import { shown } from "../../language/outputs/text/shown.ts";
import { hostile } from "./hostile.ts";
import { compiledText, options } from "./outputs-of.ts";
import { filledRecord } from "./record/filled.ts";

/** A machine whose every string is the text. */
const machineWith = (text: string): string => {
  const s = `"${text.replace(/["\\]/g, "\\$&").replaceAll("\n", " ")}"`;
  return `
unit box ${s} {
  revision ${s}
  maker ${s} ${s}  serial ${s}  intended-use ${s}  wrong-use ${s}  mishap ${s} ${s}  waste ${s} ${s}
  base case
  positions up
  about ${s}
  no noise ${s}
  renew always gasket
  part case ${s} { mass 30 kg  about ${s}  part-no ${s}  standard ${s}  photo ${s} ${s} }
  part lid ${s} { mass 12 kg  align by ${s}  warning ${s}  part-no ${s} }
  part seal gasket ${s} { between lid and case  part-no ${s}  standard ${s} }
  fastener screws screw ${s} { count 6  size M6  torque 9 N·m while ${s}  sequence ${s}  joins lid to case  thread-locker locker  part-no ${s}  standard ${s}  caution ${s} }
  fastener plug plug ${s} { torque ${s}  into case }
  joint lead connector ${s} { joins lid to case  how ${s} }
  fluid oil oil ${s} { volume 1 L  uses oil-46  drains at plug  fills at plug  about ${s} }
  hazard live electrical danger ${s} {
    on lid  about ${s}  role fitter  wear gloves
    precaution isolate ${s} with key back ${s}
    precaution prove-dead ${s} at most 12 V dc with key
  }
}
tool key ${s} { calibration ${s}  about ${s} }
tool gloves ${s}
role fitter ${s}
consumable locker ${s} { pack 50 ml  part-no ${s}  standard ${s}  about ${s} }
consumable oil-46 ${s} { pack 1 L  part-no ${s} }
procedure open-it ${s} for box {
  aim lid off
  revision ${s}
  author ${s} ${s}  date ${s}  translated from ${s}  prepared ${s} ${s}  checked ${s} ${s}  approved ${s} ${s}  mishap ${s} ${s}  waste ${s} ${s}
  role fitter
  about ${s}
  needs ${s} then ${s}
  video ${s}
  danger ${s}
  step top ${s} {
    note ${s}
    danger ${s}
    notice ${s}
    isolate live ${s}
    prove-dead live ${s}
    photo ${s} ${s}
    video ${s} from 00:01 to 00:02
    second-check ${s}
    hold-point ${s}
    mark lid, case as m1 ${s}
    tag lead as l1 ${s}
    drain oil into key ${s}
    work case ${s}
    work ${s}
    measure size on lid ${s} at least 3 mm with key else ${s}
    inspect face on lid ${s} else ${s}
    undo lead ${s}
    undo screws into tray A ${s}
    lift lid with key ${s}
    remove seal ${s}
    refit { note ${s}  clean case ${s}  apply locker to case ${s}  fit seal facing out ${s}  reverse }
  }
  finish { test ${s}  warning ${s} }
}
`;
};

const input = (text: string) => {
  const made = compiledText(machineWith(text));
  expect(made.performances, `the machine with ${JSON.stringify(text)}`).toHaveLength(1);
  return made;
};

/** Elements, ids left out, attributes by name: what a document is made of, whatever its texts say. */
const skeleton = (html: string): string =>
  (
    html
      .replace(/(<script[^>]*>)[^]*?<\/script>/g, "$1</script>")
      // A drawing has as many lines as its words need; what it may be made of is held in papers.test.ts.
      .replace(/(<svg xmlns[^>]*>)[^]*?<\/svg>/g, "$1</svg>")
      .match(/<[^!][^>]*>/g) ?? []
  )
    .map((tag) => tag.replace(/"[^"]*"/g, '""'))
    .join("");

const page = (text: string): string =>
  write(manual, "html", input(text), { ...options, picture: () => ({ problem: text }) });

test("the manual has the same elements and attributes whatever the texts say, and says them as written", () => {
  const plain = skeleton(page("plain")).replaceAll(' class=""', "");
  for (const text of hostile) {
    const made = page(text),
      own = shown(text.replaceAll("\n", " "));
    expect(skeleton(made).replaceAll(' class=""', ""), JSON.stringify(text)).toBe(plain);
    const escaped = own.replace(
      /[&<>"']/g,
      (sign) => ({ "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" })[sign]!,
    );
    expect(made.split(escaped).length - 1, JSON.stringify(text)).toBeGreaterThan(40);
  }
}, 60_000);

test("the book of the way back has the same elements whatever the texts and the record say", () => {
  const book = (text: string): string => {
    const made = input(text),
      note = text.replaceAll("\n", " "),
      whole = filledRecord(made, options, "strip", {
        "1.2": { notAsWritten: [{ what: "other", item: note, note, done: note, agreedBy: note, wanted: note }] },
        "1.3": { done: false, notAsWritten: [{ what: "seized", note }] },
      });
    return write(refitBook({ file: note, record: { ...whole, serial: note, doneBy: note } }), "html", made, {
      ...options,
      picture: () => ({ problem: text }),
    });
  };
  const plain = skeleton(book("plain")).replaceAll(' class=""', "");
  for (const text of hostile)
    expect(skeleton(book(text)).replaceAll(' class=""', ""), JSON.stringify(text)).toBe(plain);
}, 60_000);

test("the manual asks for nothing from outside and has no script but its own, whatever the texts say", () => {
  const own = page("plain").match(/<script>[^]*?<\/script>/g);
  expect(own).toHaveLength(1);
  for (const text of hostile) {
    const whole = page(text),
      made = whole
        .replace(/<script>[^]*?<\/script>/g, "")
        .replace(/(<script [^>]*>)([^]*?)<\/script>/g, (_, _tag, data: string) => {
          expect(() => JSON.parse(data), JSON.stringify(text)).not.toThrow();
          expect(data).not.toMatch(/[<>&]/);
          return "";
        }),
      tags = made.match(/<[a-z][^>]*>/g) ?? [];
    expect(whole.match(/<script>[^]*?<\/script>/g)).toEqual(own);
    expect(tags.filter((tag) => /^<(?:script|iframe|object|embed|link|base|form)\b/.test(tag))).toEqual([]);
    expect(tags.filter((tag) => /\son\w+=/.test(tag.replace(/"[^"]*"/g, '""')))).toEqual([]);
    for (const tag of tags)
      for (const [, value = ""] of tag.matchAll(/\s(?:src|href|action|data|srcset|poster)="([^"]*)"/g))
        expect(value).toMatch(/^(?:#|data:image\/)/);
    expect(made).not.toMatch(
      /[\u202A-\u202E\u2066-\u2069\u0000-\u0008\u000B\u000C\u000E-\u001F\u0085\u2028\u2029\uFEFF]/,
    );
  }
}, 60_000);

test("no cell of a table begins as a formula", () => {
  for (const text of hostile) {
    for (const of of [write(refit, "csv", input(text), options), write(bill, "csv", input(text), options)]) {
      for (const row of cellsOf(of))
        for (const cell of row) expect(cell, JSON.stringify(text)).not.toMatch(/^\s*[=+\-@＝＋－＠\t\n|%]/);
    }
  }
}, 60_000);

test("every row of a table has as many cells as its head", () => {
  for (const text of hostile) {
    for (const of of [write(refit, "csv", input(text), options), write(bill, "csv", input(text), options)]) {
      const [head, ...rows] = cellsOf(of);
      for (const row of rows) expect(row).toHaveLength(head!.length);
    }
  }
}, 60_000);

test("text for a terminal holds no control sign and no sign that turns its direction", () => {
  for (const text of hostile) {
    for (const of of [write(refit, "text", input(text), options), write(bill, "text", input(text), options)])
      expect(of).not.toMatch(/[\u0000-\u0009\u000B-\u001F\u007F-\u009F\u202A-\u202E\u2066-\u2069\u2028\u2029\uFEFF]/);
  }
}, 60_000);

test("signs that act are shown by their number, NUL and lone surrogates too", () => {
  expect(shown("a\u0000b\u202Ec\uD800d\u2028")).toBe("a‹U+0000›b‹U+202E›c‹U+D800›d‹U+2028›");
  expect(shown("א ب é 漢 😀 \t")).toBe("א ب é 漢 😀 \t");
});

test("JSON keeps every text as it was written", () => {
  for (const text of hostile) {
    const made = JSON.parse(write(modelExport, "json", input(text), options)) as {
      units: { title: string; hazards: { precautions: { text: string }[] }[] }[];
    };
    expect(made.units[0]!.title).toBe(text.replaceAll("\n", " "));
    expect(made.units[0]!.hazards[0]!.precautions[0]!.text).toBe(text.replaceAll("\n", " "));
  }
}, 60_000);

/** Cells by RFC 4180. */
function cellsOf(csv: string): string[][] {
  const rows: string[][] = [[""]];
  let quoted = false;
  for (let i = 0; i < csv.length; i++) {
    const sign = csv[i]!,
      row = rows[rows.length - 1]!,
      last = row.length - 1;
    if (quoted) {
      if (sign === '"' && csv[i + 1] === '"') {
        row[last] += '"';
        i++;
      } else if (sign === '"') quoted = false;
      else row[last] += sign;
    } else if (sign === '"' && row[last] === "") quoted = true;
    else if (sign === ",") row.push("");
    else if (sign === "\r" && csv[i + 1] === "\n") {
      i++;
      rows.push([""]);
    } else row[last] += sign;
  }
  return rows.slice(0, -1);
}
