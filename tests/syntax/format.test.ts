// The formatter: only blanks change, twice is once, and the tree is the same.

import { expect, test } from "vitest";
import { eachItem, format, formatEdits, parse } from "../../language/syntax/index.ts";
import { coreExample, everyWord, examples, withOneTokenGone } from "./texts.ts";

/** The tree as words, arguments and blocks, without places in the text. */
function treeOf(text: string): unknown[] {
  const {
      items,
      scan: { tokens, comments },
    } = parse(text),
    all: unknown[] = [];
  eachItem(items, (item) =>
    all.push([item.first, item.last, item.entry?.word, item.arguments, item.block?.place, item.block?.items.length]),
  );
  return [
    all,
    tokens.map((token) => token.image),
    comments.map((one) => [text.slice(one.start, one.end).trimEnd(), one.before, one.ownLine]),
  ];
}

test("formatting changes neither tree nor comments, and twice is once", () => {
  for (const { path, text } of [
    { path: "every-word", text: everyWord },
    { path: "core", text: coreExample },
    ...examples,
  ]) {
    const once = format(text);
    expect(format(once), path).toBe(once);
    expect(treeOf(once), path).toEqual(treeOf(text));
    expect(
      parse(once).errors.map((error) => error.says),
      path,
    ).toEqual(parse(text).errors.map((error) => error.says));
  }
});

test("the examples stand as the formatter sets them", () => {
  const machines = examples.filter(({ path }) => !path.includes("mistakes"));
  expect(machines.length).toBeGreaterThan(8);
  expect(machines.filter(({ text }) => format(text) !== text).map(({ path }) => path)).toEqual([]);
});

test("a damaged text is formatted the same way, or left alone", () => {
  let i = 0;
  for (const text of [...withOneTokenGone(coreExample), ...withOneTokenGone(everyWord)]) {
    if (i++ % 5 !== 0) continue;
    const once = format(text);
    expect(treeOf(once)[1]).toEqual(treeOf(text)[1]);
    expect(format(once)).toBe(once);
  }
});

test("lines that were begun as a list keep one blank behind the dash, however often they are formatted", () => {
  const once = format('step "A" {\n- undo x\n-  remove y\n-undo z\n• work a\n}\n');
  expect(once).toBe('step "A" {\n    - undo x\n    - remove y\n    -undo z\n    • work a\n}\n');
  expect(format(once)).toBe(once);
});

test("indentation, blanks and empty lines", () => {
  expect(
    format(
      'unit a "A"{\n\n\n   mass   3   kg revision 2\n# x   \n      part b{mass 3kg  }   # y\nbase b,\nc\n }\n\n\n',
    ),
  ).toBe('unit a "A" {\n\n  mass 3 kg  revision 2\n  # x\n  part b { mass 3kg }  # y\n  base b,\n    c\n}\n');
});

test("what stands in columns stays in columns, two blanks behind the longest", () => {
  const columns = `unit a {
  mass 3 kg          # weighed
  positions flat     # as it arrives
  part cover  cover-name "Cover"    { mass 3 kg }
  part b      key "Key"             { mass 1 kg }

  part ring  "A stray blank behind an empty line closes up"
  no hot    "Cold."
  no sharp  "Rounded."
}
`;
  expect(format(columns)).toBe(`unit a {
  mass 3 kg       # weighed
  positions flat  # as it arrives
  part cover  cover-name "Cover"  { mass 3 kg }
  part b      key "Key"           { mass 1 kg }

  part ring "A stray blank behind an empty line closes up"
  no hot    "Cold."
  no sharp  "Rounded."
}
`);
  // A longer name moves the column for all, which is how an author sees that they belong together.
  expect(format('no hot    "a"\nno freezing    "b"\nno sharp  "c"\n')).toBe(
    'no hot       "a"\nno freezing  "b"\nno sharp     "c"\n',
  );
  expect(format('no hot   "a"\nno sharp  "b"\n')).toBe('no hot "a"\nno sharp "b"\n');
});

test("whatever blanks an author leaves, formatting twice is once", () => {
  let seed = 11;
  const random = (below: number): number => (seed = (seed * 48271) % 2147483647) % below;
  for (const { path, text } of examples)
    for (let round = 0; round < 3; round++) {
      const spread = text.replaceAll(/(?<=\S) (?=[\w"{#])/g, () => " ".repeat(1 + Math.max(0, random(6) - 2))),
        once = format(spread);
      expect(format(once), path).toBe(once);
    }
});

test("after a one-item condition the line ends, since what follows is for all builds; but not before the next condition", () => {
  const each = "unit a {\n  part b { if late mass 9 kg  if early mass 8 kg }\n}\n";
  expect(format(each)).toBe(each);
  expect(format("unit a {\n  fastener b {\n    if late torque 9 N·m size M8\n    count 2\n  }\n}\n")).toBe(
    "unit a {\n  fastener b {\n    if late torque 9 N·m\n    size M8\n    count 2\n  }\n}\n",
  );
  const closed = "unit a {\n  fastener b { if late torque 9 N·m }  # early: none\n}\n";
  expect(format(closed)).toBe(closed);
});

test("a text whose braces do not pair is left alone", () => {
  for (const text of ["unit a {\n part b {\n}\n", "unit a { }\n }\n", 'unit a {  about """x\n}'])
    expect(format(text)).toBe(text);
});

test("BOM and line ends stay as they are", () => {
  const formatted = format(coreExample);
  expect(format(`\ufeff${coreExample}`)).toBe(`\ufeff${formatted}`);
  expect(format(coreExample.replaceAll("\n", "\r\n"))).toBe(formatted.replaceAll("\n", "\r\n"));
});

test("edits touch what differs and nothing else; a range takes those that touch it", () => {
  const text = "unit a {\n  mass  3 kg\n  part b\n    part c\n}\n",
    edits = formatEdits(parse(text));
  expect(edits).toEqual([
    { start: 15, end: 17, text: " " },
    { start: 30, end: 35, text: "\n  " },
  ]);
  expect(formatEdits(parse(text), { start: 22, end: 40 })).toEqual([edits[1]]);
  // A range that ends with its line leaves the next one alone; a place without a width takes what it touches.
  expect(formatEdits(parse(text), { start: 20, end: 30 })).toEqual([]);
  expect(formatEdits(parse(text), { start: 30, end: 30 })).toEqual([edits[1]]);
  expect(formatEdits(parse("unit a {}"), { start: 0, end: 9 })).toEqual(formatEdits(parse("unit a {}")));
  expect(formatEdits(parse(format(text)))).toEqual([]);
});
