// What somebody from the trade writes first, and what is said to it: one finding, with the word or the form that the language has.
// Collected by writing a hand chain hoist, a reducer with shims, a cylinder and a compressor head without looking anything up.

import { expect, test } from "vitest";
import { signsOfSpeech, unitsInSpeech } from "../../language/tables/signs-of-speech.ts";
import { phrases, turns, wordsFromElsewhere } from "../../language/tables/speech.ts";
import { findUnit } from "../../language/quantities/index.ts";
import { parse } from "../../language/syntax/index.ts";
import { placesOf } from "../../language/vocabulary/index.ts";
import { findings } from "../bench/refit/stage.ts";

const machine = (facts: string, acts: string, head = "aim none"): string => `unit u "Hoist" {
  base b
  part b "Base"
  part disc "Discs" { count 2  rests on b }
  part shaft "Shaft" { fits b by slide-fit }
  part ring o-ring "Ring" { fits b }
  part lid "Lid"
  fastener nuts nut "Nuts" { count 4  joins lid to b }
  fluid gear-oil oil "Gear oil" { volume 1 L  drains at drain-plug  fills at drain-plug }
  fastener drain-plug plug "Drain plug" { into b }
  ${facts}
}
procedure p "P" for u {
  ${head}
  step s "S" {
    ${acts}
  }
}
`;
const says = (text: string): string[] => findings(text).map((finding) => finding.says);
const errors = (text: string): string[] => parse(text).errors.map((error) => error.says);

test.each([
  ["unscrew nuts", "here it is called undo"],
  ["take off lid", "here it is called remove"],
  ["press off ring", "Unknown word press off: here it is called remove"],
  ["slide off ring", "Unknown word slide off: here it is called remove"],
  ["turn out nuts", "Unknown word turn out: here it is called undo"],
  ["clean off lid", "Unknown word clean off: here it is called clean"],
  ["pump out gear-oil", "here it is called drain"],
  ["scrape lid", "Unknown word scrape: here it is called clean"],
  ["replace disc", "here it is called renew (a new one; the old one put back is fit)"],
  ["discard disc", "here it is called scrap (what is new each time says renew always in its block)"],
  ["throw away disc", "here it is called scrap"],
  ["grease disc", "here it is called apply (apply GREASE to PART)"],
  ["oil ring", "here it is called apply (apply GREASE to PART)"],
  ["torque nuts", "here it is called tighten (its figure stands with the fastener, torque 9 N·m)"],
  ['repeat step "S"', "a step is repeated by its name: repeat from NAME"],
  ["repeat 3 times", "what is done again has a name: repeat from STEP"],
  ["go back", "here it is called repeat (repeat from STEP)"],
  ["for left, right { }", "here it is called repeat (repeat for left, right { … })"],
  ["select disc", "here it is called measure (measure … else choose SHIMS from 0.10, 0.20 mm)"],
  ['wait until "cold"', "what has to be so first is a hold-point"],
  ["wait 10 minutes", "minutes is no unit: here it is written min"],
  ["wait lid", "that of a hazard stands with its precaution"],
  ["undo lid nuts", "A comma is missing before nuts, or a hyphen if lid-nuts is one name"],
  ["hold lid with strap wrench", "wrench is out of place: a name is one word, as strap-wrench"],
  ["turn on side", "side is out of place: a name is one word, as on-side"],
  ["apply anti seize to nuts", "seize is out of place: a name is one word, as anti-seize"],
  ["remove lid tray A", '"into" is missing before tray'],
  ["heat lid to 80 C", "C is no unit: here it is written °C"],
  ["heat lid with torch to 80 °C", "the temperature comes first: heat X to 80 °C with TOOL"],
  ["remove lid using puller", "using is out of place: here it is called with"],
  ["remove lid carefully", "how it is done stands in quotes at the end of the line"],
  ["remove lid by hand", 'how it is done stands in quotes at the end of the line: "By hand."'],
  ["remove lid with puller and drift", "a further tool has a with of its own"],
  ["remove lid from b", "what it sits on or holds is known from its declaration: leave it out"],
  ["lift lid off", "the word alone says it: leave it out"],
  ["lift lid 2 people", "how many of them comes first"],
  ["knock out shaft", "here it is called remove"],
  ["tap shaft out", "here it is called remove (with what is said behind: remove X with TOOL)"],
  ["use puller", "a tool stands behind its action, undo X with TOOL"],
  ["undo nuts with 13 mm spanner", "a tool has a name, and is declared at the top of a file: with spanner-13"],
  ["undo 4 x nuts", "how many of them comes first, in figures: 4 of X"],
  ["undo nuts x4", "how many of them comes first, in figures: 4 of X"],
  ["undo four nuts", "how many of them comes first, in figures: 4 of X"],
  ["undo nuts in 3 passes", "how many passes is written passes 3"],
  ["undo nuts in star order", "in which order they are turned is said in their block: sequence star"],
  ["undo nuts diagonally", "in which order they are turned is said in their block: sequence star"],
  ['undo nuts into tray "A"', "a tray is told by its letter or figure alone: into tray A"],
  ["keep nuts in tray A", "here it is called undo (where they lie is said there: undo X into tray A)"],
  ['remove "Lid"', "things are called by their name, without quotes"],
  ["turn nuts 2 turns", "a screw is loosened, loosen X 2 turns, a shaft is rotated, rotate X"],
  ["loosen nuts by 2 turns", "how far is written without by: loosen X 2 turns"],
  ["loosen nuts half a turn", "how far is written in figures: 1/2 turn"],
  ["tighten nuts 20 Nm", '"to" is missing before 20'],
  ["tighten nuts hand-tight", "by hand only is written fit X finger-tight"],
  ["fit lid onto b", "here it is called to"],
  ["refit lid", "one part goes back by fit: fit X"],
  ["put lid back", "what goes back is fitted: fit X"],
  ["set lid aside", "what is moved and stays attached is slid, slide X"],
  ["refit in reverse order", "the way back is computed"],
  ["reassemble", "here it is called refit (the way back is computed; what differs stands in refit { … })"],
  ["drain gear-oil to bucket", "here it is called into"],
  ["fill 1 L gear-oil", "how much is aboard stands with the fluid: volume 1 L"],
  ["fill gear-oil to level", 'how far stands in quotes: fill X "To the mark."'],
  ["top up gear-oil", "here it is called fill"],
  ["support lid on blocks", "what holds it stands behind with"],
  ["mark lid to b", "what is marked together is parted by commas"],
  ['mark lid, b "Punch."', "a mark has a name, as M1, before its words"],
  ["tag nuts L1", "what is on the tag stands behind as"],
  ["dry lid", "here it is called clean"],
  ['measure gap on disc "Gap" max 0.2 mm', "an upper limit is written at most 0.2 mm"],
  ['measure gap on disc "Gap" min 0.2 mm', "a lower limit is written at least 2.5 mm"],
  ['measure gap on disc "Gap" <= 0.2 mm', "An upper limit is written at most 0.2 mm"],
  ['measure gap on disc "Gap" not more than 0.2 mm', "a limit is written at most 0.2 mm or at least 2.5 mm"],
  ['measure gap on disc "Gap" between 0.1 and 0.2 mm', "a range is written with two points: 0.1..0.2 mm"],
  ['measure gap on disc "Gap" 0.05 to 0.10 mm', "A range is written with two points between: 0.05..0.10"],
  ['measure gap on disc "Gap" 0.2 mm +/- 0.05', "a tolerance stands before the unit, in that unit"],
  ['measure gap on disc "Gap" at most 0.2 mm or renew disc', "what follows a bad reading begins with else"],
  ["inspect disc for cracks", 'what is good stands in quotes: inspect disc "No cracks"'],
  ["inspect ring", "as in: inspect bore on liner"],
  ['test "Runs" ok', 'what is good stands in the quotes: test "Runs freely"'],
  ["renew ring if worn", "what it is asked for comes behind it, as in if worn renew disc"],
  ["if ring worn { renew ring }", "a condition is a variant, an option or a reading taken before"],
  ["lock lid", "here it is called lock-out"],
  ["switch off lid", "here it is called isolate"],
  ["1) remove shaft", "acts are numbered in print"],
  ["* clean lid", "Nothing stands before the word that opens a line: take * out"],
  ["turn over", "over is not declared in Hoist: a position is due"],
  ['measure disc "Thickness" at least 2.5 mm', "on it is written measure on disc"],
  ["measure shaft diameter at least 2 mm", "is missing before diameter"],
  ["back off nuts 1/4 turn", "here it is called loosen"],
  ["break nuts loose", "here it is called loosen"],
  ["slack off nuts", "here it is called loosen"],
  ["jack up lid", "here it is called lift"],
  ["do up nuts", "here it is called tighten"],
  ["nip up nuts", "here it is called tighten"],
  ["snug nuts", "here it is called tighten"],
  ["re-torque nuts", "here it is called tighten"],
  ["hand-tighten nuts", "here it is called fit (fit X finger-tight)"],
  ["press out shaft", "here it is called remove"],
  ["drift out shaft", "here it is called remove"],
  ["hook out ring", "here it is called remove"],
  ["wait 5 min for cooling", "what it is for stands in quotes"],
  ["line up lid", "here it is called align"],
  ["reconnect lid", "what was undone is made again by itself"],
  ["bag nuts", "where they lie is said there: undo X into bag 2"],
  ["rig lid", "here it is called support (support X with TOOL)"],
  ["chock b", "here it is called block"],
  ["rotate shaft 180 degrees", "degrees is no unit: here it is written deg"],
  ["zero dial", "here it is called set"],
  ["shim shaft", "measure … else choose SHIMS"],
  ["de-energise b", "here it is called isolate"],
  ["de-energize b", "here it is called isolate"],
  ["tag out b", "here it is called lock-out"],
  ["dispose disc", "here it is called scrap"],
  ["photo lid.jpg", "the file stands in quotes"],
  ["caution hot", "its words stand in quotes"],
  ["unlock lid", "a precaution is taken back of itself on the way back"],
  ["back nuts off 2 turns", "here it is called loosen (loosen X 2 turns; back-out X"],
  ["lower lid onto bench", "where it is set down stands there: lift X with TOOL"],
  ["lay lid on bench", "here it is called lift"],
  ["set down lid", "here it is called lift"],
  ["index lid, b as M1", "here it is called mark"],
  ["cover b", 'work X "Cover it with a clean sheet."'],
  ["uncover b", "here it is called work"],
  ["plug b with cap", "here it is called cap"],
  ["straighten disc", "here it is called work"],
  ["roll disc with roller", "here it is called work"],
  ["bend tab of disc open", 'work X "Bend the tab back."'],
  ["push lid to b", "here it is called slide"],
  ["slide lid toward b", "how it is done stands in quotes"],
  ["slide lid back 100 mm", "how far it goes away is slide X 20 mm"],
  ["swing lid up", "how it is done stands in quotes"],
  ["press shaft down", "how it is done stands in quotes"],
  ["fit ring lip down", "how it is done stands in quotes"],
  ["support lid by strap-wrench", "who does it is written by 2 people, what holds or moves it with TOOL"],
  ["lift lid with strap-wrench, b", "a further tool has a with of its own"],
  ["undo nuts 3 turns", "what is only slackened is loosened"],
  ["undo nuts clockwise", "a left-hand one is size M16x1.5-LH"],
  ["take lid off", "a part comes off by remove lid"],
  ["tension disc", "here it is called set"],
  ["jog shaft", "here it is called test"],
  ["insulation-test disc", "here it is called measure"],
  ['measure "Gap" 2 mm else adjust disc', "any other act stands in otherwise { … }"],
  ['inspect disc "Clean" else clean disc', "any other act stands in otherwise { … }"],
  ['test "Runs" else repeat from "S"', "a step is called by a name of its own"],
  ['measure gap "Gap" on disc', "stands before the words: measure gap on bearing"],
  ["apply gear-oil to disc 2 coats", "how much and how often stands in quotes"],
  ["heat lid to 80 °C max", "what it is brought to is the figure"],
  ["fit new ring", "a new one is renew X"],
  ["do q step 1", "what two have in common becomes a procedure of its own"],
  ['test "Runs" { }', "what belongs to it stands behind it on its line"],
  ["fiddle lid", 'an act that has none is written work X "In your own words."'],
] as const)("in a step, one finding: %s", (act, said) => {
  const all = says(machine("", act));
  expect(all).toHaveLength(1);
  expect(all[0]).toContain(said);
});

test.each([
  ['nut castle-nut "Castle nut" { }', "it is a kind, and stands behind the name: fastener castle-nut nut"],
  ['bolts lid-bolts "Bolts" { }', "it is a kind, and stands behind the name: fastener lid-bolts bolt"],
  ['gasket seal-ring "Ring" { }', "it is a kind, and stands behind the name: part seal-ring gasket"],
  ['connector plug "Plug" { }', "it is a kind, and stands behind the name: joint plug connector"],
  ['part hub "Hub" { mass 2 kg  qty 2 }', "here it is called count"],
  ['part paper gasket "Gasket" { between lid & b }', "two sides of a joint by and"],
  ['part hub "Hub" { bolted to b }', "it is said of the bolts: joins PART to HOST"],
  ['part hub "Hub" { mounts to b }', "here it is called fits"],
  ['part hub "Hub" { keyed to shaft }', "here it is called fits"],
  ['part hub "Hub" { threaded into b }', "here it is called fits"],
  ['part hub "Hub" { renew in pairs }', "what goes with it by pairs or as-a-set"],
  ['part hub "Hub" { renew as set }', "what goes with it by pairs or as-a-set"],
  ['part hub "Hub" { renew on each strip }', "when is written always, when worn or every 3 strips"],
  ['fastener f "F" { socket 13  joins lid to b }', "here it is called drive"],
  ['fastener f "F" { torque 25 Nm +10%  joins lid to b }', "a tolerance stands before the unit"],
  ['fastener f "F" { torque 18 lbft  joins lid to b }', "lbft is no unit: here it is written lbf·ft"],
  ['fastener f "F" { threadlock 243  joins lid to b }', "here it is called thread-locker"],
  ['spare hub "Hub"', "here it is called part"],
  ['part hub "Hub" { mass 2 kg  guard }', "it stands behind the name, part NAME guard"],
  ['part hub "Hub" { mass 2 kg  fastened by nuts }', "it is said of the bolts: joins PART to HOST"],
  ['part hub "Hub" { screwed to b }', "here it is called fits"],
  ['part hub "Hub" { mass 2 kg  upright }', "whatever else is said begins with a word, such as mass, fits"],
  ['part hub "Hub" { fits b by key }', "the key is a part of its own"],
  ['part hub "Hub" { needs 2 slings }', "tools stand at the act, lift X with TOOL"],
  ['fastener f screws "F" { count 2  joins lid to b }', "screws is no kind of fastener: here it is called screw"],
  ['fastener f "F" { count 2 each  joins lid to b }', "how many each has is written count 2 per cap"],
  ['fastener f "F" { torque 9 N·m  crosswise  joins lid to b }', "here it is called sequence (sequence star)"],
  ['fastener f "F" { drive hook-spanner  joins lid to b }', "here it is called pin-spanner"],
  ['joint u pipe-union "U" { joins lid to b  torque 90 N·m }', "a union nut with a torque is a fastener of its own"],
  ['fluid oil oil "Oil" { volume 3 L  fill with gear-oil }', "what it is filled with is written uses OIL"],
  [
    'hazard air pressure danger "Air" { on disc\n precaution vent "Open." { wait 5 min } }',
    "precaution takes no block",
  ],
  ['hazard air pressure danger "Air" { on disc\n precaution lock-out other }', "what is done stands in quotes"],
  ['hazard air pressure danger "Air" on disc', "what is said of it stands in its block"],
  ['part hub "Hub" { mass 2 kg x3 }', "how many there are is written count 3"],
  ['part hub "Hub" { 2 kg }', "a figure stands behind its word, as in mass 2 kg"],
  ['part hub "Hub" { mass 3 kilos }', "kilos is no unit: here it is written kg"],
  ['part hub "Hub" { mass ~3 kg }', "how sure it is is told in about"],
  ['part hub "Hub" 2 off', "stands in its block: { mass 2 kg  count 2 }"],
  ['part hub, hub-2 "Hubs"', "each is declared on a line of its own"],
  ['part hub "Hub" { pieces 1-3 }', "A range is written with two points between: 1..3"],
  ['part hub.left "Hub" { }', "pieces of one thing are declared together, pieces left, right in its block"],
  ['part hub bearing 6204 "Bearing" { }', "a name begins with a letter"],
  ['part hub "Hub" { on shaft }', "here it is called fits (fits HOST, or rests on HOST for what only lies there)"],
  ['part hub "Hub" { inside b }', "here it is called fits"],
  ['part hub "Hub" { covered by lid }', "here it is called behind"],
  ['part hub "Hub" { one-time }', "here it is called renew (renew always)"],
  ['part hub "Hub" { mass: 2 kg }', "Nothing stands between a word and what belongs to it"],
  ['part hub "Hub" [ mass 2 kg ]', "What belongs to a thing stands between { and }"],
  ['warning "Hot."', 'here it is called warn (of a thing it is said in its block, warning "…"'],
  ['fluid oil oil "Oil" { capacity 3 L }', "here it is called volume (what is aboard)"],
  ['fluid water "Water" { volume 2 litres }', "litres is no unit: here it is written L"],
  ['hazard air compressed-air danger "Air" { on disc }', "here it is called pressure"],
  ['hazard electrical "Mains" { on disc }', "electrical is the kind of hazard: a name of your own comes before it"],
  [
    'hazard mains electrical danger "M" { on disc\n precaution wait 5 min }',
    "a wait belongs to what is done against it",
  ],
  ['hazard mains electrical danger "M" { on disc\n resistance 22 kohm }', "here it is called bleeder"],
  [
    'fastener cap-screws screw "S" { size M4x8 drive cross 2  joins lid to b }',
    "one is named: cross-ph 2 or cross-pz 2",
  ],
  ['fastener hub-nut nut "N" { size M12 hand left  into b }', "here it is called size (size M16x1.5-LH)"],
  ['hazard air pressure "Air" { on disc\n vent "Open." }', 'what is done against it is written precaution vent "…"'],
  ['hazard air pressure "Air" { on disc vent "Open." }', 'What is done against it is written precaution vent "…"'],
  ['fastener pin bolt "Pin" { torque 80 +- 5 N·m }', "A tolerance is written ± or +/-"],
  ['fastener pin bolt "Pin" { torque 25 N·m then 90 deg }', "more than one stage is written stages 25 N·m, 90 deg"],
  ['fastener pin bolt "Pin" { torque 25 ft lbs }', "foot-pounds are written ft-lb, inch-pounds in-lb"],
  ['fastener pin bolt "Pin" { count four }', "how many is written in figures: count 4"],
  ['fastener pin bolt "Pin" { spanner 13 }', "here it is called drive (drive hex 13)"],
  ['fastener pin bolt "Pin" { drive T30 }', "a six-lobe drive is written hexalobular 30"],
  ['fastener pin bolt "Pin" { M8x25 }', "a thread stands behind its word, as in size M8x35"],
  ['fastener pin bolt "Pin" { size 1/4-20 }', "an inch thread is written 1/4-20 UNC x 1 in"],
  ['fastener pin bolt "Pin" { pattern star }', "the order is written sequence star"],
  ['fastener pin bolt "Pin" { tighten 25 N·m }', "here it is called torque"],
  ['fastener pin bolt "Pin" { joins lid on b }', "what it hangs on stands behind to"],
  ['fluid water "Water" { drains through drain-plug }', "through is out of place: here it is called at"],
] as const)("in a unit, one error: %s", (fact, said) => {
  const all = errors(machine(fact, "undo nuts"));
  expect(all).toHaveLength(1);
  expect(all[0]).toContain(said);
});

test.each([
  ["aim lid removed", "here it is called off"],
  ["aim all off", "of all it is written all apart"],
  ["aim ring off, lid off", "all names stand before it: aim bearing, ring off"],
  ["aim change ring", "an aim says what is off at the end: aim ring off"],
  ['step 1 "Open" { }', "steps are numbered in print: leave the number out"],
  ['safety "Gloves."', "here it is called hazard (what can hurt, with its precautions)"],
  ['finish test "Runs"', "what is done at the end stands in its block"],
] as const)("in a procedure, one error: %s", (head, said) => {
  const all = errors(machine("", "undo nuts", head));
  expect(all).toHaveLength(1);
  expect(all[0]).toContain(said);
});

test("what is put into the place of a turn of speech mends its line", () => {
  const mended = (text: string): string => {
    const { errors: found } = parse(text, "step");
    expect(found, text).toHaveLength(1);
    return [...found[0]!.fix!.edits]
      .sort((a, b) => b.start - a.start)
      .reduce((whole, edit) => whole.slice(0, edit.start) + edit.text + whole.slice(edit.end), text);
  };
  for (const [text, right] of [
    ["lift lid with hoist, sling", "lift lid with hoist with sling"],
    ['measure "Gap" max 0.2 mm', 'measure "Gap" at most 0.2 mm'],
    ["undo 4 x nuts", "undo 4 of nuts"],
    ["lift lid off", "lift lid"],
    ["fit lid onto frame", "fit lid to frame"],
    ["mark lid to frame as M1", "mark lid, frame as M1"],
    ["support lid on blocks", "support lid with blocks"],
    ["remove lid with puller and drift", "remove lid with puller with drift"],
    ["repeat step open", "repeat from open"],
  ] as const) {
    expect(mended(text)).toBe(right);
    expect(parse(right, "step").errors).toEqual([]);
  }
});

test("what the tables of speech stand for is of the language, and what they take for speech is none of it there", () => {
  for (const { says: word, is } of wordsFromElsewhere) {
    expect(placesOf(word).length, word).toBeGreaterThan(0);
    const places = new Set(placesOf(word).map(({ place }) => place));
    expect(
      placesOf(is).some(({ place }) => !places.has(place)),
      `${word} for ${is}`,
    ).toBe(true);
  }
  for (const meant of Object.values(phrases)) expect(placesOf(meant).length, meant).toBeGreaterThan(0);
  for (const { in: words } of turns)
    if (words !== "act")
      for (const word of words) expect(placesOf(word).length > 0 || word === "precaution", word).toBe(true);
  for (const [spoken, unit] of Object.entries(unitsInSpeech)) {
    expect(findUnit(unit), unit).toBeDefined();
    expect(findUnit(spoken), spoken).toBeUndefined();
  }
  for (const { says: sign } of signsOfSpeech)
    expect(signsOfSpeech.find((one) => sign.startsWith(one.says))!.says, sign).toBe(sign);
});

test("another word of ours is put in with what it needs", () => {
  const [error] = parse("size M6\nspanner 10", "fastener").errors;
  expect(error!.fix!.edits.map((edit) => edit.text)).toEqual(["drive hex"]);
});

test("the trade's word for a block leaves what stands in it to be read", () => {
  expect(errors(machine("", "for left, right {\n      bend disc\n      fiddle lid\n    }"))).toHaveLength(3);
});

test("an unknown word takes the rest of its line with it, where nothing in it stands for itself", () => {
  expect(errors(machine("", "fiddle disc with cap\n    clean disc"))).toHaveLength(1);
  expect(parse("fiddle disc with cap\nclean disc", "step").items).toHaveLength(2);
  expect(parse("fiddle disc  clean disc", "step").items).toHaveLength(2);
});

test("no unit of a figure that can hurt is put in by a fix, though the message names it", () => {
  for (const [text, place] of [
    ["wait 10 minutes", "step"],
    ["heat lid to 80 C", "step"],
    ["voltage 230 VAC", "hazard"],
    ["torque 25 ft lbs", "fastener"],
  ] as const)
    expect(
      parse(text, place).errors.map((error) => error.fix),
      text,
    ).toEqual([undefined]);
});

test("a slip in a word behind another item on its line is told as at the start of one, and what stands behind it is read", () => {
  expect(errors(machine('part cap "Cap" { mass 3 kg  behnd lid }', ""))).toEqual([
    "Unknown word behnd: here it is called behind",
  ]);
  expect(errors(machine("fastener s { size M8x20  drive hex 13  torqe 22 N·m  joins lid to b }", ""))).toEqual([
    "Unknown word torqe: here it is called torque",
  ]);
  // Among acts a word that is near one may as well be a name.
  expect(errors(machine("", "remove lid cleen"))).toEqual([
    "A comma is missing before cleen, or a hyphen if lid-cleen is one name",
  ]);
});

test("what is named stands without quotes: worn gear, a tool", () => {
  const inHazard = (fact: string): string[] =>
    errors(`unit u "U" {\n  base b\n  part b "B"\n  hazard h hot caution "Hot" { on b  ${fact} }\n}\n`);
  expect(inHazard('wear "Heat-proof gloves"')).toEqual([
    "This text is out of place: a name stands without quotes here, as wear heat-proof-gloves",
  ]);
  expect(inHazard('precaution cool "Let it cool." with "Thermometer"')).toEqual([
    "This text is out of place: a name stands without quotes here, as with thermometer",
  ]);
});
