// The rules of the computed refit on small stages, each test named after its rule.

import { expect, test } from "vitest";
import { maySwap, mustFollow } from "../../../language/bench/refit/freedom.ts";
import { codes, findings, firstRefusedLine, nameOf, perform, refit, stage } from "./stage.ts";

const lidAndBox = `part lid "Lid"\n part box "Box"\n part card "Card" { behind lid }
  fastener lid-screws screw "Lid screws" { count 4 joins lid to box }
  fastener box-bolts bolt "Box bolts" { count 2 joins box to b }
  fastener card-screw screw "Card screw" { joins card to box behind lid }`;
const two = `part x "X" { rests on b }\n part y "Y" { rests on b }`;

/** Every line of the order is performed without a word, not only the printed one. */
const anyLine = (text: string): void => expect(firstRefusedLine(perform(text), 100)).toBeUndefined();

test("last off, first on; the tie after its part", () => {
  const text = stage(
    lidAndBox,
    "step { undo lid-screws remove lid undo card-screw remove card undo box-bolts remove box }",
  );
  expect(refit(text)).toEqual([
    "fitting Box",
    "fitting Box bolts",
    "fitting Card",
    "fitting Card screw",
    "fitting Lid",
    "fitting Lid screws",
  ]);
  anyLine(text);
});

test("sub-assemblies are built up on the bench", () => {
  const text = stage(
    lidAndBox,
    "step { undo box-bolts remove box } step { undo lid-screws remove lid undo card-screw remove card }",
  );
  expect(refit(text)).toEqual([
    "fitting Card",
    "fitting Card screw",
    "fitting Lid",
    "fitting Lid screws",
    "fitting Box",
    "fitting Box bolts",
  ]);
  anyLine(text);
});

test("a tie after every meeting on the way between its sides", () => {
  // The strap joins the card, which came off inside the box, to the base: both meetings come first.
  const facts = `part box "Box"\n part card "Card"\n fastener strap screw "Strap" { joins card to b }\n fastener box-bolts bolt "Box bolts" { joins box to b }\n fastener card-screw screw "Card screw" { joins card to box }`;
  const text = stage(facts, "step { undo strap undo box-bolts remove box } step { undo card-screw remove card }");
  const line = refit(text);
  expect(line.indexOf("fitting Strap")).toBeGreaterThan(line.indexOf("fitting Box"));
  expect(line.indexOf("fitting Strap")).toBeGreaterThan(line.indexOf("fitting Card"));
  anyLine(text);
});

test("a part in its place, by all meetings on its way, before what hides it", () => {
  // The pin sits in the shaft, which came out after the cover; both are in before the cover is on.
  const facts = `part cover "Cover"\n part shaft "Shaft" { fits b by slide-fit behind cover }\n part pin pin "Pin" { fits shaft behind cover }\n fastener screws screw "Screws" { joins cover to b }`;
  const text = stage(facts, "step { undo screws remove cover remove shaft remove pin }");
  expect(refit(text)).toEqual(["fitting Pin", "fitting Shaft", "fitting Cover", "fitting Screws"]);
  anyLine(text);
  // The shaft alone would go past the cover: not with the pin in it.
  anyLine(text.replace("by slide-fit behind cover", "by slide-fit"));
});

test("a tie with what was on the base then and left it since, by itself, waits for that", () => {
  // The hose hangs on two, of which neither is on the base at the end: whichever is back first, the other is waited for.
  const facts = `part m "Motor"\n part d "Drive"\n part hose hose "Hose"\n joint at-m clip "At the motor" { joins hose to m }\n joint at-d clip "At the drive" { joins hose to d }
  fastener m-bolts bolt "Motor bolts" { joins m to b }\n fastener d-bolts bolt "Drive bolts" { joins d to b }`;
  anyLine(stage(facts, "step { undo at-m, at-d remove hose undo m-bolts remove m undo d-bolts remove d }"));
});

test("a tie waits for its side even where another host of the part left first", () => {
  const facts = `part m "Motor"\n part e "Encoder"\n part loom loom "Loom"\n joint at-e connector "Encoder plug" { joins loom to e }\n joint at-m connector "Motor plug" { joins loom to m }\n joint at-b connector "Base plug" { joins loom to b }
  fastener m-bolts bolt "Motor bolts" { joins m to b }\n fastener e-screws screw "Encoder screws" { joins e to m }`;
  const text = stage(
    facts,
    "step { undo at-e, at-m, at-b remove loom undo m-bolts remove m } step { undo e-screws remove e }",
  );
  anyLine(text);
  // What it has on the base it does not wait with.
  const performance = perform(text),
    number = (name: string): number => performance.order!.ops.find((op) => nameOf(performance, op) === name)!.number;
  expect(maySwap(mustFollow(performance.order!), number("fitting Base plug"), number("fitting Motor"))).toBe(true);
});

test("what lies between is in before the first tie between its sides", () => {
  const facts = `part cover "Cover"\n part ring o-ring "Ring" { between cover and b renew always }\n fastener screws screw "Screws" { joins cover to b }`;
  const text = stage(facts, "step { undo screws remove cover remove ring }");
  expect(refit(text)).toEqual(["fitting Ring", "fitting Cover", "fitting Screws"]);
  anyLine(text);
});

test("what was only assumed undone, so that it came out, is made again after it is in", () => {
  const facts = `part cover "Cover"\n part ring o-ring "Ring" { between cover and b renew always }\n fastener screws screw "Screws" { joins cover to b }`;
  const text = stage(facts, "step { remove ring }", "aim none");
  expect(codes(text)).toEqual(["sequence/still-held"]);
  anyLine(text);
});

test("where its sides are held in passing only, what lies between is in before they meet", () => {
  const facts = `part cap "Cap"\n part ring o-ring "Ring" { between cap and b renew always }\n joint cap-fit press-fit "Cap fit" { joins cap to b }`;
  const text = stage(facts, "step { remove cap remove ring }");
  expect(refit(text)).toEqual(["fitting Ring", "fitting Cap"]);
  anyLine(text);
});

test("aside goes back, and its loose tie is tightened", () => {
  const facts = `part door "Door"\n part lock "Lock" { rests on b behind door }\n fastener catch bolt "Catch" { joins door to b }`;
  const text = stage(facts, "step { loosen catch swing door remove lock }");
  expect(refit(text)).toEqual(["fitting Lock", "putting back Door", "tightening Catch"]);
  expect(codes(stage(facts, "step { swing door remove lock }"))).toEqual(["sequence/still-held"]);
  anyLine(text);
});

test("aside and back in the strip: what was done while it was aside stays between the two", () => {
  const facts = `part door "Door"\n part lock "Lock" { rests on b behind door }\n fastener catch bolt "Catch" { joins door to b }`;
  const text = stage(facts, "step { loosen catch swing door remove lock swing door back }");
  expect(refit(text)).toEqual(["moving aside Door", "fitting Lock", "putting back Door", "tightening Catch"]);
  anyLine(text);
});

test("moved back in the strip, it is moved aside on the way back while it is as free as it was then", () => {
  const facts = `part arm "Arm"\n joint seat press-fit "Seat" { joins arm to b }\n part plate "Plate"\n fastener screws screw "Screws" { joins plate to arm }`;
  const text = stage(
    facts,
    "step { undo seat slide plate slide plate back fit seat back-out seat support arm with jack undo screws }",
  );
  const back = refit(text);
  // The seat is open again before the plate goes aside with its arm.
  expect(back.indexOf("undoing Seat")).toBeLessThan(back.indexOf("moving aside Plate"));
  anyLine(text);
});

test("undo after loosen: finger-tight, the torque with the inverse of loosen", () => {
  const text = stage(
    `part lid "Lid"\n fastener screws screw "Screws" { count 4 joins lid to b }`,
    "step { loosen screws undo screws remove lid }",
  );
  expect(refit(text)).toEqual(["fitting Lid", "fitting finger-tight Screws", "tightening Screws"]);
  anyLine(text);
});

test("a precaution is lifted at the mirrored place, after the last touch; a proof is not mirrored", () => {
  const facts = `part cap "Cap"\n fastener screws screw "Screws" { joins cap to b }\n hazard bus electrical danger "Bus" { on screws precaution isolate "Off." back "On." precaution prove-dead "Meter." }`;
  const text = stage(facts, "step { isolate bus prove-dead bus undo screws remove cap }");
  expect(refit(text)).toEqual(["fitting Cap", "fitting Screws", "taking the precaution away for Bus"]);
  anyLine(text);
});

test("touches before and after a restore stay on their own side of it", () => {
  const facts = `part cap "Cap" { rests on b }\n part lid "Lid" { rests on b }\n hazard bus electrical danger "Bus" { on cap, lid precaution isolate "Off." back "On." precaution prove-dead "Meter." }`;
  const text = stage(
    facts,
    "step { isolate bus prove-dead bus remove cap restore bus isolate bus prove-dead bus remove lid }",
  );
  expect(refit(text)).toEqual([
    "fitting Lid",
    "taking the precaution away for Bus",
    "the precaution for Bus",
    "fitting Cap",
    "taking the precaution away for Bus",
  ]);
  anyLine(text);
});

test("a precaution that stood from the start and lapsed stands again before what was touched under it", () => {
  const facts = `part cap "Cap" { rests on b }\n hazard bus electrical danger "Bus" { on cap precaution isolate "Off." back "On." precaution prove-dead "Meter." }`;
  const text = stage(facts, "step { remove cap restore bus }", "starts with isolate bus starts with prove-dead bus");
  expect(refit(text)).toEqual(["the precaution for Bus", "fitting Cap"]);
  anyLine(text);
});

test("filled when all joints of the fluid are closed, those undone before the drain too", () => {
  const facts = `part tank "Tank"\n joint hose hose "Hose" { joins tank to b opens oil }\n fluid oil oil "Oil" { volume 1 L }`;
  const text = stage(facts, "step { drain oil undo hose remove tank }");
  expect(refit(text)).toEqual(["fitting Tank", "fitting Hose", "filling Oil"]);
  anyLine(text);
  const plugged = stage(
    `part tank "Tank"\n fastener plug plug "Plug" { into tank }\n fastener bolts bolt "Bolts" { joins tank to b }\n fluid oil oil "Oil" { volume 1 L drains at plug path tank }`,
    "step { drain oil undo bolts remove tank }",
  );
  const line = refit(plugged);
  expect(line.at(-1)).toBe("filling Oil");
  expect(line).toContain("fitting Plug");
  anyLine(plugged);
});

test("a fluid without kind, `fills at` and `uses` is not filled again", () => {
  expect(
    refit(
      stage(
        `part tank "Tank" { rests on b }\n fluid rain "Rain water" { volume 1 L path tank }`,
        "step { drain rain remove tank }",
      ),
    ),
  ).toEqual(["fitting Tank"]);
});

test("a holder stays until the last of what asked for it is made", () => {
  const facts = `part motor "Motor" { hangs }\n fastener bolts bolt "Bolts" { count 4 joins motor to b }`;
  const line = refit(stage(facts, "step { support motor with jack undo bolts remove motor }"));
  expect(line).toEqual(["fitting Motor", "fitting Bolts", "letting go Motor"]);
});

test("what was kept from turning while it was undone is kept from turning while it is made", () => {
  const facts = `part rotor "Rotor" { fits b }\n part pulley "Pulley" { fits rotor }\n fastener nut nut "Nut" { joins pulley to rotor }`;
  const text = stage(facts, "step { hold rotor with strap undo nut remove pulley }", "aim none");
  expect(refit(text)).toEqual(["fitting Pulley", "holding Rotor", "fitting Nut"]);
  anyLine(text);
  // In another step it was held for something else.
  expect(refit(stage(facts, "step { hold rotor with strap } step { undo nut remove pulley }", "aim none"))).toEqual([
    "fitting Pulley",
    "fitting Nut",
    "holding Rotor",
  ]);
});

test("make then undo with nothing between that needed it cancels", () => {
  const facts = `part lid "Lid"\n fastener screws screw "Screws" { count 4 joins lid to b }`;
  const text = stage(facts, "step { undo screws remove lid fit lid fit screws undo screws remove lid }");
  expect(refit(text)).toEqual(["fitting Lid", "fitting Screws"]);
  anyLine(text);
});

test("a fit in the strip that stays inverts to undo and remove", () => {
  // The lid is put on to keep the card safe, and taken off for the card to be seen to first in the refit.
  const facts = `part lid "Lid"\n part card "Card" { rests on b behind lid }\n fastener screws screw "Screws" { count 4 joins lid to b }`;
  const text = stage(facts, "step { undo screws remove lid remove card fit lid fit screws }");
  expect(refit(text)).toEqual(["undoing Screws", "removing Lid", "fitting Card", "fitting Lid", "fitting Screws"]);
  anyLine(text);
});

test("a temporary thing that went on in the strip may come off on the way back", () => {
  const text = (back: string): string =>
    `unit u "U" {\n base b\n part b "Base"\n ${two}\n temporary plug "Plug"\n}\nprocedure p "P" for u {\n step { remove x put plug on b refit { ${back} } }\n}\n`;
  expect(codes(text("take plug off reverse"))).toEqual([]);
  expect(codes(text("reverse"))).toEqual(["refit/temporary-left"]);
  expect(codes(text("take plug off take plug off reverse"))).toEqual(["sequence/already-undone"]);
  // Two lines the wrong way round in the strip are one mistake.
  expect(codes(text("reverse").replace("put plug on b", "take plug off put plug on b"))).toEqual([
    "sequence/already-undone",
  ]);
});

test("temporary things are not mirrored", () => {
  const text = `unit u "U" {\n base b\n part b "Base"\n ${two}\n temporary felt "Felt"\n}\nprocedure p "P" for u {\n step { put felt on b remove x take felt off remove y }\n}\n`;
  expect(refit(text)).toEqual(["fitting Y", "fitting X"]);
});

// --- what the author says ----------------------------------------------------------------------------------------------------

test("words at an act of the reverse do not move it, a written reverse does", () => {
  expect(refit(stage(two, `step { remove x remove y refit { fit x "Gently." } }`))).toEqual(["fitting Y", "fitting X"]);
  expect(refit(stage(two, `step { remove x remove y refit { fit x "Gently." reverse } }`))).toEqual([
    "fitting X",
    "fitting Y",
  ]);
});

test("a claimed act is there once, with what is written", () => {
  const performance = perform(stage(two, `step { remove x remove y refit { fit x "Gently." } }`));
  const claims = performance.order!.ops.filter((op) => op.act?.text === "Gently.");
  expect(claims).toHaveLength(1);
  expect(claims[0]!.event?.kind).toBe("off");
});

test("before and after the reverse: before or after every reversed event of that step", () => {
  const text = stage(two, `step { remove x remove y refit { clean b reverse test "It turns." } }`);
  expect(refit(text)).toEqual(["cleaning Base", "fitting Y", "fitting X", `"It turns."`]);
  const performance = perform(text),
    { later, ops } = performance.order!;
  const written = (verb: string): number => ops.find((op) => op.act?.verb === verb)!.number;
  for (const op of ops)
    if (op.event) {
      expect(later[written("clean")]).toContain(op.number);
      expect(later[op.number]).toContain(written("test"));
    }
});

test("what ends the block of a step comes before what begins that of the step before it", () => {
  const text = stage(
    two,
    `step { remove x refit { clean b reverse } } step { remove y refit { reverse test "Y turns." } } step { refit { reverse test "Looked at." } }`,
  );
  expect(refit(text)).toEqual([`"Looked at."`, "fitting Y", `"Y turns."`, "cleaning Base", "fitting X"]);
});

test("a joint that was capped as it was opened is uncapped before it is made, a capped part as the strip had it", () => {
  const pipe = `part pipe hose "Pipe" {}\n joint union pipe-union "Union" { joins pipe to b opens oil }\n fluid oil oil "Oil" { volume 1 L path pipe, b }`;
  const line = ["fitting Pipe", "uncapping Union", "fitting Union"];
  expect(refit(stage(pipe, "step { cap union undo union remove pipe }"))).toEqual(line);
  expect(refit(stage(pipe, "step { loosen union cap union undo union remove pipe }"))).toEqual([
    "fitting Pipe",
    "uncapping Union",
    "fitting finger-tight Union",
    "tightening Union",
  ]);
  expect(refit(stage(pipe, "step { cap union undo union uncap union cap union remove pipe }"))).toEqual([
    "fitting Pipe",
    "uncapping Union",
    "capping Union",
    "uncapping Union",
    "fitting Union",
  ]);
  expect(refit(stage(pipe, "step { cap pipe undo union remove pipe }")).at(-1)).toBe("uncapping Pipe");
});

test("`after`, `before`, `first`, `last` at an act", () => {
  expect(refit(stage(two, "step { remove x remove y refit { fit y after x } }"))).toEqual(["fitting X", "fitting Y"]);
  expect(refit(stage(two, "step { remove x remove y refit { fit x before y } }"))).toEqual(["fitting X", "fitting Y"]);
  expect(refit(stage(two, "step { remove x remove y refit { fit x first } }"))).toEqual(["fitting X", "fitting Y"]);
  expect(refit(stage(two, "step { remove x remove y refit { fit y last } }"))).toEqual(["fitting X", "fitting Y"]);
});

test("`first` and `last` as far as the rest allows", () => {
  const text = stage(
    lidAndBox,
    "step { undo lid-screws remove lid undo card-screw remove card refit { fit lid first } }",
  );
  expect(codes(text)).toEqual([]);
  expect(refit(text)).toEqual(["fitting Card", "fitting Card screw", "fitting Lid", "fitting Lid screws"]);
});

test("`order` moves a whole step", () => {
  const text = stage(two, "step one { remove x } step two { remove y refit { order one before two } }");
  expect(refit(text)).toEqual(["fitting X", "fitting Y"]);
});

test("`order` at unit level is a fact of the machine", () => {
  expect(refit(stage(`${two}\n order x before y`, "step { remove x remove y }"))).toEqual(["fitting X", "fitting Y"]);
});

test("a statement that the bench forbids is found before performing, once, with the ring", () => {
  const found = findings(
    stage(lidAndBox, "step { undo lid-screws remove lid undo card-screw remove card refit { fit card after lid } }"),
  );
  expect(found.map((f) => f.code)).toEqual(["refit/contradiction"]);
  expect(found[0]!.because.length).toBeGreaterThan(1);
});

test("two statements against each other: one finding that shows both", () => {
  const text = stage(two, "step { remove x remove y }\n refit {\n order x before y\n order y before x\n }");
  const found = findings(text);
  expect(found.map((f) => f.code)).toEqual(["refit/contradiction"]);
  const lines = [found[0]!.at, ...found[0]!.because.flatMap((b) => (b.at ? [b.at] : []))].map(
    (at) => text.slice(0, at.start).split("\n").length,
  );
  const said = text.split("\n").flatMap((line, i) => (line.includes("order") ? [i + 1] : []));
  for (const line of said) expect(lines).toContain(line);
});

test("a ring through an assumed event is silent", () => {
  // The screws were taken as undone: that they come after the lid is nothing that the author did.
  const text = stage(lidAndBox, "step { remove lid undo card-screw remove card refit { fit lid-screws before lid } }");
  expect(codes(text)).toEqual(["sequence/still-held"]);
  expect(perform(text).order!.problems).toEqual([]);
});

test("`instead`: the step's own reverse is dropped, what is written stands for it", () => {
  const text = stage(two, `step { remove x remove y refit { instead { fit x clean b fit y } } }`);
  expect(refit(text)).toEqual(["fitting X", "cleaning Base", "fitting Y"]);
  expect(codes(stage(two, `step { remove x remove y refit { instead { fit y } } }`))).toEqual(["refit/missing"]);
});

test("what `leaves` names is not put back", () => {
  expect(refit(stage(two, "step { remove x remove y }", "leaves off x"))).toEqual(["fitting Y"]);
  const facts = `part lid "Lid"\n fastener screws screw "Screws" { count 4 joins lid to b }`;
  const performance = perform(
    stage(facts, "step { undo screws remove lid }", `leaves out 1 of screws "With the cable."`),
  );
  expect(performance.order!.ops.find((op) => op.event?.kind === "out")!.count).toBe(3);
});

test("the pieces of one tie in two acts: together they are all of it", () => {
  const facts = `part lid "Lid"\n fastener screws screw "Screws" { count 4 joins lid to b }`;
  const text = stage(facts, "step { undo 3 of screws undo rest of screws remove lid }");
  const counts = perform(text)
    .order!.ops.filter((op) => op.event?.kind === "out")
    .map((op) => op.count);
  expect(counts.reduce((a, b) => a + b)).toBe(4);
  expect(codes(text)).toEqual([]);
});

test("one undo fitted in two written parts", () => {
  const facts = `part lid "Lid"\n fastener screws screw "Screws" { count 4 joins lid to b }`;
  const text = stage(
    facts,
    "step { undo screws remove lid refit { reverse fit 2 of screws clean b fit 2 of screws } }",
  );
  expect(codes(text)).toEqual([]);
  expect(refit(text)).toEqual([
    "fitting Lid",
    "fitting Screws",
    "cleaning Base",
    expect.stringMatching(/^fit(ting)? Screws$/),
  ]);
});

test("missing stands where the strip took it off", () => {
  const both = (back: string): string =>
    `${stage(lidAndBox, "step { undo lid-screws\n remove lid }")}procedure q "Q" for u { aim all in needs p step { ${back} } }\nprocedure r "R" for u { do p refit by q }\n`;
  expect(codes(both("fit lid fit lid-screws"))).toEqual([]);
  const text = both("fit lid"),
    found = findings(text);
  expect(found.map((f) => f.code)).toEqual(["refit/missing"]);
  expect(text.split("\n")[text.slice(0, found[0]!.at.start).split("\n").length - 1]).toMatch(/undo lid-screws/);
});

test("a tie that the strip undid after a trial assembly comes after the meeting for it, not after one that was undone before", () => {
  const lid = `part lid "Lid"\n fastener ls screw "Lid screws" { count 4 joins lid to b }`;
  for (const again of ["fit ls undo 2 of ls undo rest of ls", "fit 3 of ls undo 2 of ls undo rest of ls"]) {
    const text = stage(lid, `step "S" { undo ls remove lid fit lid ${again} remove lid }`, "aim lid off");
    expect(codes(text), again).toEqual([]);
    const line = refit(text);
    expect(line.at(0)).toBe("fitting Lid");
    expect(line.at(-1)).toBe("fitting Lid screws");
    expect(firstRefusedLine(perform(text), 200), again).toBeUndefined();
  }
});
