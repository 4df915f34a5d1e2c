// One mistake, one finding: on its line, in words of the trade, with a fix where one is at hand.

import { expect, test } from "vitest";
import { eachItem, parse, type SyntaxError } from "../../language/syntax/index.ts";

const line = (error: SyntaxError): string => `${error.line + 1}: ${error.says}`;

/** What, in which kind of block, the text, its one finding, and the text once its fix is applied. */
const cases: readonly (readonly [what: string, place: string, text: string, finding: string, mended?: string])[] = [
  ["a half-typed condition", "unit", "if late\npart a\n", "1: if needs an item on its line, or a block { }"],
  [
    "a half-typed line",
    "step",
    "undo\nremove lid\n",
    `1: undo needs how many, "rest" or a name, as in: undo 5 of flange-bolts passes 3 into tray A`,
  ],
  [
    "a misspelt word",
    "step",
    "remov lid\nturn to up\n",
    "1: Unknown word remov: here it is called remove",
    "remove lid\nturn to up\n",
  ],
  ["a word of the trade", "step", "unscrew plug\n", "1: Unknown word unscrew: here it is called undo", "undo plug\n"],
  [
    "a word that is like none",
    "step",
    "xylophone lid\nturn to up\n",
    '1: Unknown word xylophone: every line begins with a word of the language; an act that has none is written work X "In your own words."',
  ],
  [
    "a misplaced word",
    "part",
    "mass 3 kg\ndrive hex 9\ncount 2",
    "2: drive cannot stand in a part: it stands in a fastener",
  ],
  [
    "two words of speech for one of ours",
    "step",
    "take off lid\nturn to up\n",
    "1: Unknown word take off: here it is called remove",
    "remove lid\nturn to up\n",
  ],
  [
    "a word of another place that is meant otherwise here",
    "refit",
    "torque lid-bolts\nclean lid\n",
    "1: torque cannot stand in a refit block: here it is called tighten (its figure stands with the fastener, torque 9 N·m)",
    "tighten lid-bolts\nclean lid\n",
  ],
  [
    "a figure of a fastener at a joint",
    "joint",
    "torque 9 N·m",
    "1: torque cannot stand in a joint: a union nut with a torque is a fastener of its own, fastener NAME nut { torque 90 N·m  joins A to B }",
  ],
  [
    "the trade's word after a figure",
    "part",
    "mass 3 kg  under lid",
    "1: Unknown word under: here it is called behind",
    "mass 3 kg  behind lid",
  ],
  [
    "a range with a hyphen",
    "fastener",
    "torque 22-26 N·m  count 2",
    "1: A range is written with two points between: 22..26",
    "torque 22..26 N·m  count 2",
  ],
  [
    "a range in words",
    "fastener",
    "torque 22 to 26 N·m  count 2",
    "1: A range is written with two points between: 22..26",
    "torque 22..26 N·m  count 2",
  ],
  [
    "a class with a comma",
    "fastener",
    "class 8,8  count 2",
    "1: A decimal point is due here, not a comma",
    "class 8.8  count 2",
  ],
  [
    "a size in small letters",
    "fastener",
    "size m8x60  count 2",
    "1: m8x60 is out of place: a size such as M8x35 is due",
    "size M8x60  count 2",
  ],
  [
    "a verb in the place of a name",
    "step",
    "lift up lid\nturn to up\n",
    "1: up is no name: leave it out",
    "lift lid\nturn to up\n",
  ],
  [
    "new before a name",
    "step",
    "fit new ring\nturn to up\n",
    "1: new is no name: a new one is renew X, or renew always in its block",
    "fit ring\nturn to up\n",
  ],
  [
    "then between two actions",
    "step",
    "remove lid then undo screws\n",
    "1: The next action simply follows: leave then out",
    "remove lid undo screws\n",
  ],
  [
    "in a tray",
    "step",
    "undo screws in tray A\n",
    "1: in is out of place: here it is called into",
    "undo screws into tray A\n",
  ],
  ["a tray without its letter", "step", "undo screws into tray\n", "1: undo needs a name or a figure after tray"],
  [
    "an unknown kind with its printed name behind it",
    "unit",
    'part feed pipe "Feed pipe"\n',
    "1: pipe is no kind of part: known are gasket, o-ring, seal, bearing, bush, key or others, or none at all",
    'part feed "Feed pipe"\n',
  ],
  [
    "a precaution that is none",
    "hazard",
    'precaution sing "Sing."\n',
    "1: sing is no precaution: known are shut-down, isolate, lock-out, discharge, vent, let-down, block, prop, cool, ventilate, prove-dead, prove-zero, try-start, earth, screen, barrier or other",
  ],
  [
    "a comment of another notation",
    "step",
    "remove lid // to the left\n",
    "1: A comment begins with #, not with //",
    "remove lid # to the left\n",
  ],
  [
    "single quotes",
    "step",
    "note 'Keep it clean.'\n",
    '1: Texts stand in double quotes: "…"',
    'note "Keep it clean."\n',
  ],
  [
    "a text over two lines",
    "step",
    'note "Keep it\n  clean."\nremove lid\n',
    '1: This text has no closing quote in its line: write it in one line, or over several between """ and """',
    'note "Keep it clean."\nremove lid\n',
  ],
  [
    "a brace too many in the middle of a block",
    "procedure",
    "step {\n  remove lid\n}\n  remove ring\n  clean lid\n}\n",
    '4: No line opens the block that begins here: a line is missing, as step "Take the brake off" {, or the } before it is one too many',
    "step {\n  remove lid\n\n  remove ring\n  clean lid\n}\n",
  ],
  [
    "a comma between two properties",
    "part",
    "mass 12 kg, rests on frame",
    "1: A comma parts names only: what follows simply follows, without one",
    "mass 12 kg rests on frame",
  ],
  [
    "the kind behind the printed name",
    "unit",
    'part ring "Ring" o-ring { mass 3 g }',
    "1: o-ring stands before the printed name: it is the kind of part",
    'part ring o-ring "Ring" { mass 3 g }',
  ],
  [
    "a precaution in two words, without its hazard",
    "step",
    "prove dead\nremove lid\n",
    "1: Unknown word prove dead: here it is called prove-dead",
  ],
  [
    "a precaution in two words",
    "step",
    "lock out start\nremove lid\n",
    "1: Unknown word lock out: here it is called lock-out",
    "lock-out start\nremove lid\n",
  ],
  [
    "a comma decimal",
    "part",
    "mass 3,5 kg count 2",
    "1: A decimal point is due here, not a comma",
    "mass 3.5 kg count 2",
  ],
  [
    "a comma that may mean thousands",
    "tool",
    "range 1,200 N·m",
    "1: A comma cannot stand in a figure: write 1200, or 1.200 with a decimal point",
  ],
  [
    "comma decimals in a list",
    "step",
    'inspect a "A" else choose b from 0,10, 0,20 mm\nwait 2 s',
    "1: A decimal point is due here, not a comma",
  ],
  [
    "an unknown unit",
    "fastener",
    "torque 9 Nmm  count 2",
    "1: Nmm is no unit: torque takes N·m, cN·m, lbf·ft, lbf·in or kgf·m",
  ],
  ["a unit in the wrong case", "part", "mass 9 KG", "1: KG is no unit: mass takes g, kg, lb or oz", "mass 9 kg"],
  [
    "a mass without its unit",
    "part",
    "mass 11 count 2\ncount 4",
    "1: 11 has no unit: mass takes g, kg, lb or oz",
    "mass 11 kg count 2\ncount 4",
  ],
  [
    "a torque without its unit",
    "fastener",
    "torque 9",
    "1: 9 has no unit: torque takes N·m, cN·m, lbf·ft, lbf·in or kgf·m",
  ],
  [
    "a wait without its unit",
    "step",
    'wait 5 "Let it drip."',
    "1: 5 has no unit: wait (time) takes s, min, h, day, month or year",
  ],
  [
    "a reading without its unit",
    "step",
    'measure "Shaft" at least 24.95 with micrometer',
    "1: 24.95 has no unit: write what it is measured in, such as mm, bar or V",
  ],
  [
    "a kind of the trade",
    "unit",
    'fastener a capscrew "A" { count 2 }',
    "1: capscrew is no kind of fastener: here it is called screw (it is turned by its head into a thread; with a nut behind it, write bolt)",
    'fastener a screw "A" { count 2 }',
  ],
  [
    "a misspelt kind",
    "unit",
    'part a oring "A"',
    "1: oring is no kind of part: here it is called o-ring",
    'part a o-ring "A"',
  ],
  [
    "a printed name without quotes",
    "unit",
    "part a Lid",
    "1: Lid is no kind of part: known are gasket, o-ring, seal, bearing, bush, key or others, and a printed name stands in quotes",
    'part a "Lid"',
  ],
  ["a missing small word", "fastener", "joins a b\ncount 2", `1: "to" is missing before b`, "joins a to b\ncount 2"],
  [
    "a missing comma",
    "fastener",
    "joins a b to c\ncount 2",
    "1: A comma is missing before b, or a hyphen if a-b is one name",
    "joins a, b to c\ncount 2",
  ],
  ["a name that hides a word", "unit", 'part rest "R"', "1: rest cannot be a name, since it is a word of the language"],
  [
    "an open text",
    "unit",
    'part a "Frame { mass 3 kg }\npart b',
    "1: This text has no closing quote",
    'part a "Frame" { mass 3 kg }\npart b',
  ],
  [
    "curly quotes",
    "unit",
    "part a “Frame” { mass 3 kg }",
    '1: Texts stand in straight quotes: "…"',
    'part a "Frame" { mass 3 kg }',
  ],
  ["a sign of another language", "unit", "part a { mass 3 kg; }", `1: ";" has no meaning here`, "part a { mass 3 kg }"],
  [
    "a missing }",
    "file",
    "unit a {\n  part b {\n    mass 3 kg\n  part c { mass 1 kg }\n}\n",
    "3: The block opened in line 2 ends here: } is missing",
    "unit a {\n  part b {\n    mass 3 kg\n  }\n  part c { mass 1 kg }\n}\n",
  ],
  [
    "a missing } in a line",
    "file",
    "unit a {\n  part b { mass 3 kg\n  part c { mass 1 kg }\n}\n",
    "2: The block opened in line 2 ends here: } is missing",
    "unit a {\n  part b { mass 3 kg }\n  part c { mass 1 kg }\n}\n",
  ],
  [
    "a missing last }",
    "file",
    "unit a {\n  part b { mass 3 kg }\n",
    "2: A block is not closed: } is missing",
    "unit a {\n  part b { mass 3 kg }\n}\n",
  ],
  [
    "a stray }",
    "file",
    'unit a {\n  part b { mass 3 kg }\n  }\n  part c\n}\nuse "x"\n',
    "3: This } closes nothing",
    'unit a {\n  part b { mass 3 kg }\n  \n  part c\n}\nuse "x"\n',
  ],
  [
    "a missing {",
    "file",
    'procedure a for b {\n  step c "C"\n    turn to up\n  }\n  step d { }\n}\n',
    "2: A { is missing here",
    'procedure a for b {\n  step c "C" {\n    turn to up\n  }\n  step d { }\n}\n',
  ],
  [
    "a } too many in a line",
    "file",
    'unit a {\n  part b "B" { mass 3 kg } }\n  part c\n}\n',
    "2: This } closes nothing",
  ],
  ["a { too many", "file", 'unit a {\n  part b "B" { { mass 3 kg }\n  part c\n}\n', "2: This { opens nothing"],
  [
    "a missing { in a line",
    "file",
    'unit a {\n  part b "B" mass 3 kg }\n  part c\n}\n',
    "2: A { is missing here",
    'unit a {\n  part b "B" { mass 3 kg }\n  part c\n}\n',
  ],
  [
    "a merge conflict",
    "unit",
    "<<<<<<< ours\npart a\n=======\npart b\n>>>>>>> theirs\n",
    "1: A merge conflict was left here: keep the lines that are right and delete the marker lines",
  ],
];

for (const [what, place, text, finding, mended] of cases) {
  test(`one finding, on its line: ${what}`, () => {
    const { errors } = parse(text, place),
      error = errors[0]!;
    expect(errors.map(line)).toEqual([finding]);
    if (mended === undefined) return;
    expect(applied(text, error)).toBe(mended);
    expect(parse(mended, place).errors).toEqual([]);
  });
}

function applied(text: string, error: SyntaxError): string {
  return [...error.fix!.edits]
    .sort((a, b) => b.start - a.start)
    .reduce((whole, edit) => whole.slice(0, edit.start) + edit.text + whole.slice(edit.end), text);
}

test("no fix chooses a unit of torque, force, pressure, voltage, time or temperature", () => {
  for (const [text, place] of [
    ["torque 9", "fastener"],
    ["torque 9 nm", "fastener"],
    ["force 9", "hazard"],
    ["pressure 9", "hazard"],
    ["voltage 9", "hazard"],
    ["wait 5", "step"],
    ["temperature 80", "hazard"],
    ["stages 27, 68 N·m", "fastener"],
    ["tighten a to 9", "step"],
    ["supply 400 v", "part"],
  ] as const) {
    const { errors } = parse(text, place);
    expect([errors.length, errors[0]?.fix], text).toEqual([1, undefined]);
  }
});

test("the further lines of a wrapped item with an error are no further mistakes", () => {
  const text = 'hazard a electrical {\n  lock-out "Lock it."\n    with lock\n    back "Unlock it."\n  voltage 9\n}\n';
  expect(parse(text, "unit").errors.map((error) => error.line + 1)).toEqual([2, 5]);
});

test("a word whose meaning is plain does not mute its block", () => {
  const { items, errors } = parse("unt pump {\n  part a { mass 11 }\n}\n"),
    words: (string | undefined)[] = [];
  eachItem(items, (item) => words.push(item.entry?.word));
  expect(words).toEqual(["unit", "part", "mass"]);
  expect(errors.map(line)).toEqual([
    "1: Unknown word unt: here it is called unit",
    "2: 11 has no unit: mass takes g, kg, lb or oz",
  ]);
});

test("an unknown word that is like none is one finding, whatever stands in its block", () => {
  expect(parse('xylophone a {\n  foo bar\n  mass 3\n}\nuse "x"\n').errors.map(line)).toEqual([
    "1: Unknown word xylophone: every line begins with a word of the language, such as use, unit, tool, consumable or procedure",
  ]);
});

test("no message speaks of tokens, parsers or codes", () => {
  for (const [, place, text] of cases)
    for (const { says } of parse(text, place).errors) {
      expect(says).not.toMatch(/token|pars|syntax|NUM\b|Word|Str\b|invalid|undefined|expected/);
      expect(says).not.toMatch(/\.$/);
    }
});
