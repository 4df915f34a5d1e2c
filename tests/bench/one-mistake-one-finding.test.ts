// One mistake, one finding: what a refused act lacked is assumed, and what rests on that alone is not said. Each rule by its name.

import { expect, test } from "vitest";
import { check, codes, findings, stage } from "./refit/stage.ts";

const says = (text: string): string[] => findings(text).map((f) => f.says);
const lid = `part lid "Lid"\n part card "Card" { behind lid }\n fastener screws screw "Screws" { count 4 joins lid to b }\n fastener cs screw "Card screws" { count 2 joins card to b behind lid }`;

test("a refused action is taken as done", () => {
  expect(codes(stage(lid, "step { remove lid undo cs remove card }", "aim all apart"))).toEqual([
    "sequence/still-held",
  ]);
});

test("a real act that does what was assumed is silent", () => {
  expect(codes(stage(lid, "step { remove lid undo screws undo cs remove card }"))).toEqual(["sequence/still-held"]);
  expect(codes(stage(lid, "step { undo cs undo screws remove lid remove card }"))).toEqual(["sequence/blocked"]);
});

test("of a hider it is assumed that it is out of the way: its own removal is not refused again", () => {
  expect(codes(stage(lid, "step { undo cs remove card remove lid }"))).toEqual(["sequence/blocked"]);
});

test("what hung on an assumed part is unknown too", () => {
  const facts = `part cover "Cover" { }\n part piston "Piston" { fits cover by slide-fit behind b }\n part disc "Disc" { fits b behind cover }\n fastener s screw "S" { joins cover to b }`;
  expect(codes(stage(facts, "step { undo s support cover remove disc remove piston }"))).toEqual(["sequence/blocked"]);
});

test("where what is clamped is held in passing only, the part that hangs is assumed away", () => {
  const facts = `part gear "Gear"\n part ring o-ring "Ring" { between gear and b renew always }\n part pin pin "Pin" { fits b behind gear }\n joint dowels dowel "Dowels" { joins gear to b }`;
  expect(codes(stage(facts, "step { remove ring remove pin }", "aim all apart"))).toEqual(["sequence/still-held"]);
});

test("if the base hides it, its host is assumed off", () => {
  const facts = `part box "Box"\n part ring seal "Seal" { fits box behind b renew always }\n part pin pin "Pin" { fits b behind box }\n fastener s screw "S" { joins box to b }`;
  expect(codes(stage(facts, "step { undo s remove ring remove pin }"))).toEqual(["sequence/blocked"]);
});

test("of a slide it is assumed that its tie is loose", () => {
  const facts = `part arm "Arm"\n part stud "Stud" { fits b behind arm }\n fastener nut nut "Nut" { joins arm to b }`;
  expect(codes(stage(facts, "step { slide arm remove stud }"))).toEqual(["sequence/still-held"]);
});

test("of a position it is assumed that it is any", () => {
  const facts = `positions flat, upside\n part x "X" { needs upside }\n part y "Y" { needs upside }\n fastener xs screw "Xs" { joins x to b }\n fastener ys screw "Ys" { joins y to b }`;
  expect(codes(stage(facts, "step { undo xs remove x undo ys remove y }"))).toEqual(["sequence/wrong-position"]);
});

test("what lay loose when the unit was turned is not missed at the end as well", () => {
  const facts = `positions flat, upside\n part cup "Cup" { rests on b }`;
  expect(
    codes(stage(facts, "step { turn to upside turn to flat turn to upside turn to flat }", "aim all apart")),
  ).toEqual(["sequence/loose-when-turned"]);
});

test("one refused act, one finding with all its reasons", () => {
  const facts = `positions flat, upside\n part lid "Lid" { needs upside behind cap }\n part cap "Cap" { fits b by slide-fit }\n fastener screws screw "Screws" { joins lid to b }`;
  const found = findings(stage(facts, "step { remove lid }"));
  expect(found).toHaveLength(1);
  expect(found[0]!.because.length).toBeGreaterThanOrEqual(3);
});

test("one source line over several pieces, one finding", () => {
  const facts = `part cap "Cap" { pieces 1..5 }\n fastener bolts bolt "Bolts" { pieces 1..5 count 2 per cap joins cap to b }`;
  expect(says(stage(facts, "step { repeat for 1..5 { remove cap } }"))).toEqual([
    "Cap 1 cannot come off: still held by 2 of 2 Bolts 1 (the same for Cap 2 to Cap 5)",
  ]);
});

test("the same line performed through several procedures, once", () => {
  const text =
    stage(lid, "step { remove lid }", "aim none") +
    `procedure q "Q" for u {\n do p\n step { undo cs remove card }\n}\n`;
  expect(codes(text)).toEqual(["sequence/still-held"]);
});

test("the same lack in procedures that share acts, once, with the other place among its reasons", () => {
  const facts = `${lid}\n part fan "Fan" { fits b by slide-fit behind lid }`;
  const text =
    stage(facts, "step { undo screws }", "aim none") +
    `procedure q "Q" for u {\n do p\n step { undo cs remove card }\n}\nprocedure r "R" for u {\n do p\n step { remove fan }\n}\n`;
  const found = findings(text).filter(({ code }) => code === "sequence/blocked");
  expect(found).toHaveLength(1);
  expect(found[0]!.because.some(({ says: text }) => text.startsWith("Fan cannot come off"))).toBe(true);
});

test("the same lack in procedures that share nothing is a finding each", () => {
  const text =
    stage(lid, "step { remove lid }", "aim lid off") +
    `procedure q "Q" for u {\n aim lid off\n step { remove lid }\n}\n`;
  expect(codes(text)).toEqual(["sequence/still-held", "sequence/still-held"]);
});

test("the same thing missed by several procedures, once", () => {
  const text =
    stage(lid, "step { undo screws remove lid }", "aim card off") +
    `procedure q "Q" for u {\n aim card off\n do p\n}\n`;
  expect(codes(text).filter((code) => code === "removal/missing")).toHaveLength(1);
});

test("the aim of a called procedure is judged at its end, and what it misses is then assumed", () => {
  const text =
    stage(`${lid}\n part deep "Deep" { fits b behind card }`, "step { undo screws remove lid }", "aim card off") +
    `procedure q "Q" for u {\n do p\n step { remove deep }\n}\n`;
  expect(codes(text)).toEqual(["removal/missing"]);
});

test("a needed procedure that was not done is one finding, then assumed done", () => {
  const text =
    stage(lid, "step { undo screws remove lid }", "aim none") +
    `procedure q "Q" for u {\n needs p\n step { undo cs remove card }\n}\nprocedure whole "Whole" for u {\n do q\n}\n`;
  expect(codes(text)).toEqual(["sequence/needs"]);
});

test("a needed procedure of which a part was missed before is that same mistake", () => {
  const facts = `part tank "Tank"\n part cap "Cap" { fits tank by slide-fit }\n fastener bolts bolt "Bolts" { joins tank to b }\n fastener plug plug "Plug" { into tank }\n fluid oil oil "Oil" { volume 1 L drains at plug fills at plug path tank }`;
  const text =
    stage(facts, "step { drain oil }", "aim none") +
    `procedure q "Q" for u {\n needs p\n step { remove cap }\n}\nprocedure whole "Whole" for u {\n step { undo bolts remove tank }\n do q\n}\n`;
  expect(codes(text)).toEqual(["sequence/fluid-aboard"]);
});

test("a wrong name leaves two traces, and is one finding with both", () => {
  const facts = `${lid}\n part fan "Fan" { fits b by slide-fit }\n part arm "Arm"\n fastener as screw "Arm screws" { count 2 joins arm to b }`;
  const found = findings(stage(facts, "step { undo as remove lid } step { undo as remove arm }"));
  expect(found.map(({ code }) => code)).toEqual(["sequence/still-held"]);
  expect(found[0]!.because.map(({ says: text }) => text).join()).toContain("Arm screws are undone already");
});

test("the wrong name may be one that was undone before", () => {
  const facts = `${lid}\n part arm "Arm"\n fastener as screw "Arm screws" { count 2 joins arm to b }`;
  const found = findings(stage(facts, "step { undo as remove arm } step { undo as remove lid }"));
  expect(found.map(({ code }) => code)).toEqual(["sequence/already-undone"]);
  expect(found[0]!.because.map(({ says: text }) => text).join()).toContain("still held by 4 of 4 Screws");
});

test("a thing undone twice, with nothing missing, is a finding of its own, and so is one that is missing alone", () => {
  expect(codes(stage(lid, "step { undo screws undo screws remove lid }"))).toEqual(["sequence/already-undone"]);
  expect(codes(stage(lid, "step { remove lid }"))).toEqual(["sequence/still-held"]);
});

test("what the way back finds amiss with a thing refused on the way apart is an echo", () => {
  expect(codes(stage(lid, "step { remove lid refit { instead { fit screws fit lid } } }"))).toEqual([
    "sequence/still-held",
  ]);
  expect(codes(stage(lid, "step { undo screws remove lid refit { instead { fit screws fit lid } } }"))).toEqual([
    "refit/contradiction",
  ]);
});

test("a contradiction of order statements is told even where something else was assumed", () => {
  const facts = `${lid}\n part x "X" { rests on b }\n part y "Y" { rests on b }`;
  expect(
    codes(stage(facts, "step { remove lid } step { remove x remove y refit { order x before y order y before x } }")),
  ).toEqual(["sequence/still-held", "refit/contradiction"]);
});

test("an unknown name is one finding, however often it is used, and silences what rests on it", () => {
  const found = check(stage(lid, "step { undo scrws remove lid } step { undo scrws }")).findings.filter(
    ({ severity }) => severity === "error",
  );
  expect(found.map(({ code }) => code)).toEqual(["names/unknown"]);
});

test("a count over what there is, in both halves", () => {
  expect(says(stage(lid, "step { undo 5 of screws remove lid }"))).toEqual([
    "5 of Screws are asked for, and only 4 of 4 are in",
  ]);
  expect(says(stage(lid, "step { undo screws remove lid refit { fit 5 of screws } }"))).toEqual([
    "5 of Screws are asked for, and only 4 of 4 are out",
  ]);
});

test("a count in a refit block takes that many, the rest goes back by the reverse", () => {
  expect(codes(stage(lid, "step { undo screws remove lid refit { fit 2 of screws } }"))).toEqual([]);
  expect(
    codes(stage(lid, "step { undo screws remove lid refit { fit 1 of screws fit 2 of screws fit 1 of screws } }")),
  ).toEqual([]);
});

test("a tie that cannot be undone, and behind it the one that still holds: the wrong name was written", () => {
  const facts = `positions flat, upside\n ${lid}\n part arm "Arm" { needs upside }\n fastener as screw "Arm screws" { count 2 needs upside joins arm to b }`;
  const found = findings(stage(facts, "step { undo as remove lid }"));
  expect(found.map(({ code }) => code)).toEqual(["sequence/wrong-position"]);
  expect(found[0]!.because.map(({ says: text }) => text).join()).toContain("still held by 4 of 4 Screws");
  // A line between them: two lines, two mistakes.
  expect(codes(stage(facts, `step { undo as note "Look." remove lid }`))).toEqual([
    "sequence/wrong-position",
    "sequence/still-held",
  ]);
});

test("a wrong name in a written refit: what it names is made twice, what it should have named is not in", () => {
  const facts = `${lid}\n part arm "Arm"\n fastener arm-screws screw "Arm screws" { count 2 joins arm to b }`;
  const strip = (refit: string): string =>
    stage(facts, "step { undo screws remove lid undo arm-screws remove arm }", "aim lid off") +
    `procedure q "Q" for u {\n aim all in\n needs p\n step { fit lid ${refit} } step { tighten screws } step { fit arm fit arm-screws } }\n`;
  expect(codes(strip("fit screws finger-tight"))).toEqual([]);
  expect(codes(strip("fit arm-screws finger-tight"))).toEqual(["refit/impossible"]);
});

test("a line that undid several too early is one mistake, in whatever lines they are undone again", () => {
  const facts = `${lid}\n part cap "Cap" { pieces left, right }\n fastener bolts bolt "Bolts" { pieces left, right count 2 per cap joins cap to b }`;
  const found = findings(
    stage(facts, "step { undo bolts remove lid } step { repeat for left, right { undo bolts remove cap } }"),
  );
  expect(found.map(({ code }) => code)).toEqual(["sequence/still-held"]);
  expect(found[0]!.because.map(({ says: text }) => text).join()).toContain("Bolts right are undone already");
});

test("what a step lacks the first time is not said again where it is done once more", () => {
  const facts = `part fan "Fan" { rests on b }\n hazard start rotating danger "Fan can start" {\n on fan\n precaution lock-out "Lock it." back "Lock off."\n precaution try-start "Press start: nothing may turn."\n }`;
  const text = (precautions: string): string =>
    stage(
      facts,
      `step look { ${precautions} measure gap "Gap" 1..2 mm else repeat from look inspect dust on fan "Clean" otherwise { clean fan } set fan "Gap" 1..2 mm }`,
      "aim none",
    );
  expect(codes(text("lock-out start try-start start"))).toEqual([]);
  expect(codes(text("lock-out start"))).toEqual(["hazard/not-yet"]);
});

test("what sits on a part that was assumed out of the way is no load of the next one", () => {
  const facts = `part motor "Motor" { mass 20 kg fits hub by slide-fit }\n part rotor "Rotor" { mass 20 kg fits motor by slide-fit }\n part hub "Hub" { mass 10 kg rests on b }\n part ring "Ring" { rests on b behind motor }\n no heavy "Lifted by gear."`;
  expect(codes(stage(facts, "step { remove ring remove hub }", "aim none"))).toEqual(["sequence/blocked"]);
});

test("a count that is too many in one build and too few in the other is one mistake", () => {
  const facts = `variants small, large\n part lid "Lid"\n fastener screws screw "Screws" { if small { count 4 } if large { count 6 } joins lid to b }`;
  const found = findings(stage(facts, "step { undo 5 of screws remove lid }"));
  expect(found.map(({ code }) => code)).toEqual(["sequence/over-count"]);
  expect(found[0]!.because.map(({ says: text }) => text).join()).toContain("still held by 1 of 6 Screws");
});

test("what sits in a part that was assumed out of the way is not said to be behind what stays", () => {
  const facts = `part case "Case" { fits b by slide-fit }\n part ring "Ring" { rests on b behind case }\n fastener grub set-screw "Grub" { torque none into case behind b }`;
  expect(codes(stage(facts, "step { remove ring undo grub }", "aim ring off"))).toEqual(["sequence/blocked"]);
});

test("that nothing speaks of a tool waits for the line that is missing", () => {
  const all = (text: string): string[] =>
    check(`tool sling "Sling"\n${text}`)
      .findings.map(({ code }) => code)
      .filter((code) => /^(?:sequence|names)\//.test(code));
  const facts = `part case "Case" { rests on b }\n part shaft "Shaft" { rests on b behind case }`;
  expect(all(stage(facts, "step { lift case with sling remove shaft }"))).toEqual([]);
  expect(all(stage(facts, "step { remove shaft }"))).toEqual(["sequence/blocked"]);
  expect(all(stage(facts, "step { remove case remove shaft }"))).toEqual(["names/unused"]);
  // A hazard that nothing is done against: its precaution may be what named the tool.
  const bare = `${facts}\n hazard load heavy warning "Load" { on case }`;
  expect(all(stage(bare, "step { remove case remove shaft }"))).toEqual([]);
});

const drained = `part case "Case"\n part ring "Ring" { rests on b behind case }\n fastener bolts bolt "Bolts" { count 4 joins case to b }\n fastener plug plug "Drain plug" { into case }\n fluid oil oil "Oil" { volume 1 L drains at plug fills at plug }`;

test("what a step took off and `instead` leaves out is one mistake, with all of it", () => {
  const text = stage(
    drained,
    'step { drain oil undo bolts remove case remove ring refit { instead { note "As it was." } } }',
  );
  const found = findings(text);
  expect(found.map(({ code }) => code)).toEqual(["refit/missing"]);
  expect(found[0]!.says).toBe(
    "Case came off here and is not back on at the end; left out with it: Ring, Drain plug and Oil",
  );
  expect(found[0]!.because.map(({ says: reason }) => reason)).toContain("Oil is let out and not filled again");
});

test("a line of the way back that waits for what nothing brings is the same mistake as that", () => {
  const facts = `part hose "Hose" { rests on b }\n joint union pipe-union "Union" { joins hose to b opens oil }\n fastener plug plug "Plug" { into b }\n fluid oil oil "Oil" { volume 1 L drains at plug fills at plug }`;
  const text = (refit: string): string => stage(facts, `step { drain oil } step { undo union remove hose ${refit} }`);
  expect(codes(text(""))).toEqual([]);
  expect(codes(text('refit { instead { note "As it was." } }'))).toEqual(["refit/missing"]);
});

test("what two steps leave out is two mistakes", () => {
  const out = 'refit { instead { note "As it was." } }';
  const text = stage(
    `${lid}\n part fan "Fan" { rests on b }`,
    `step { undo screws remove lid ${out} } step { remove fan ${out} }`,
  );
  expect(codes(text)).toEqual(["refit/missing", "refit/missing"]);
});

test("a task that leaves out what the whole leaves out is the same mistake", () => {
  const text = stage(
    drained,
    'step first "First" { drain oil undo bolts remove case remove ring refit { instead { note "As it was." } } }',
    'task short "Short" does first',
  );
  expect(codes(text)).toEqual(["refit/missing"]);
});

test("seals of which nothing is said are one question: a standing rule of the unit would answer it", () => {
  const facts = `part cap "Cap" { rests on b }\n part ring o-ring "Ring" { between cap and b }\n part felt seal "Felt" { fits b behind cap }`;
  const text = stage(facts, "step { remove cap\n remove ring\n remove felt }");
  const [only, ...more] = findings(text);
  expect(more).toEqual([]);
  expect(only!.code).toBe("refit/seal-reused");
  expect(only!.says).toBe("Nothing says whether Ring goes back new or used (the same for Felt)");
  expect(only!.because.map(({ says: reason }) => reason)).toEqual([
    "nothing says whether Ring goes back new or used",
    "a standing rule of U would answer for each kind: renew always o-ring",
    "Nothing says whether Felt goes back new or used",
  ]);
  // What the author allows at one of them is not allowed at the other.
  const allowed = text.replace("\n remove ring", "\n # allow refit/seal-reused: new a week ago\n remove ring");
  expect(findings(allowed).map(({ says: one }) => one)).toEqual(["Nothing says whether Felt goes back new or used"]);
  const later = text.replace("\n remove felt", "\n # allow refit/seal-reused: new a week ago\n remove felt");
  expect(findings(later).map(({ says: one }) => one)).toEqual(["Nothing says whether Ring goes back new or used"]);
});

test("a name declared twice and another that nothing has are one slip, at the second of the two", () => {
  const twice = `part lid "Lid"\n part lid "Card" { behind lid }\n fastener screws screw "Screws" { count 4 joins lid to b }`;
  const found = findings(stage(twice, "step { undo screws remove lid remove card }"));
  expect(found.map(({ code }) => code)).toEqual(["names/duplicate"]);
  expect(found[0]!.because.map(({ says: reason }) => reason).join()).toContain("card is not declared in U");
  // Two names that nothing has: nobody can tell which of them it is.
  expect(codes(stage(twice, "step { undo screws remove lid remove card remove cap }"))).toEqual([
    "names/duplicate",
    "names/unknown",
    "names/unknown",
  ]);
});

const start = `part guard guard "Guard" { rests on b }\n hazard start rotating danger "Fan can start" { on guard precaution lock-out "Lock it." back "Lock off." precaution try-start "Press start." }`;

test("precautions that a misspelt procedure would have taken are reasons of that name, and never left out", () => {
  const text = (call: string): string =>
    stage(start, `${call} step { remove guard }`) +
    `procedure still "Make still" for u {\n aim none\n step { lock-out start try-start start }\n}\n`;
  expect(codes(text("do still"))).toEqual([]);
  const found = findings(text("do stil"));
  expect(found.map(({ code }) => code)).toEqual(["names/unknown"]);
  expect(found[0]!.because.map(({ says: reason }) => reason)).toEqual([
    "Guard must not be touched yet: Fan can start asks for lock-out and try-start first",
  ]);
  expect(codes(text("needs stil"))).toEqual(["names/unknown"]);
  // Where the name is allowed, the hazard stands for itself.
  const allowed = text("# allow names/unknown: stands in another book\n do stil\n");
  expect(codes(allowed)).toContain("hazard/not-yet");
});

test("a precaution of a misspelt hazard is that slip; of another hazard it is another mistake", () => {
  const acts = (first: string): string => stage(start, `step { ${first} lock-out start try-start start remove guard }`);
  expect(codes(acts(""))).toEqual([]);
  const found = findings(stage(start, "step { lock-out strat try-start start remove guard }"));
  expect(found.map(({ code }) => code)).toEqual(["names/unknown"]);
  expect(found[0]!.because.map(({ says: reason }) => reason)).toEqual(["Lock-out of Fan can start comes before this"]);
  expect(codes(stage(start, "step { lock-out mains remove guard }"))).toEqual(["names/unknown", "hazard/not-yet"]);
});

const twoHazards = `${lid}
 hazard push spring warning "Push" { on screws precaution block precaution let-down }
 hazard heat hot warning "Heat" { on cs temperature 80 °C precaution cool }`;

test("a whole step that makes safe, forgotten, is one finding with every hazard of it", () => {
  const found = findings(stage(twoHazards, "step { undo screws remove lid undo cs remove card }"));
  expect(found.map(({ says }) => says)).toEqual([
    "Screws must not be touched yet: Push asks for block and let-down; Heat asks for cool first",
  ]);
});

test("a hazard that is half made safe is a finding of its own beside one that is forgotten", () => {
  const text = stage(twoHazards, "step { block push undo screws remove lid undo cs remove card }");
  expect(codes(text)).toEqual(["hazard/not-yet", "hazard/not-yet"]);
});

test("a call that is forgotten is one finding, with all that the called procedure does", () => {
  const text = (call: string): string =>
    stage(twoHazards, "step { block push let-down push cool heat undo screws remove lid }", "aim lid off") +
    `procedure q "Q" for u {\n aim card off\n ${call}\n step { undo cs remove card }\n}\n`;
  expect(codes(text("do p"))).toEqual([]);
  const found = findings(text(""));
  expect(found.map(({ says }) => says)).toEqual(["Card screws must not be touched yet: Heat asks for cool first"]);
  expect(found[0]!.because.map(({ says: text }) => text).join()).toContain("Lid is in front of them");
});

test("a way back that lacks the procedure which took it apart is one finding", () => {
  const text = (needs: string): string =>
    stage(lid, "step { undo screws remove lid undo cs remove card }", "aim all apart") +
    `procedure q "Q" for u {\n aim all in\n ${needs}\n step { fit card fit cs }\n step { fit lid fit screws }\n}\n`;
  expect(codes(text("needs p"))).toEqual([]);
  expect(says(text(""))).toEqual([
    "Card cannot go on: Card is on already, since nothing was taken off before: a line needs says which procedure does that",
  ]);
});

test("what is fitted by its name twice in one block, or backed out twice, is said at the second line", () => {
  for (const block of ["fit lid fit lid fit screws", "fit lid fit screws fit lid"])
    expect(codes(stage(lid, `step { undo screws remove lid refit { ${block} } }`)), block).toEqual([
      "refit/impossible",
    ]);
  expect(says(stage(lid, "step { back-out screws back-out screws remove lid }"))).toEqual([
    "Screws are backed out already",
  ]);
});

test("a mark across parts that are apart already is told", () => {
  expect(codes(stage(lid, "step { mark lid, b as line undo screws remove lid }"))).toEqual([]);
  expect(says(stage(lid, "step { undo screws remove lid mark lid, b as line }"))).toEqual([
    "Lid is off already, and parts are marked while they are together",
  ]);
});

test("a precaution taken of the wrong hazard is one finding with the hazard that misses it", () => {
  const found = findings(
    stage(twoHazards, "step { block push let-down push cool push undo screws remove lid undo cs remove card }"),
  );
  expect(found.map(({ says: text }) => text)).toEqual([
    "Card screws must not be touched yet: Heat asks for cool first",
  ]);
  expect(found[0]!.because.map(({ says: text }) => text).join()).toContain("Push declares no cool");
});

test("precautions in a step whose first line could not be read are that mistake, and so is what a misspelt support lets fall", () => {
  const text = stage(
    twoHazards,
    `step safe "Safe" { block push let-down push cool heat }\n step { undo screws remove lid undo cs remove card }`,
  );
  expect(codes(text)).toEqual([]);
  expect(codes(text.replace('safe "Safe"', "safe Safe"))).toEqual(["syntax/unexpected"]);
  const heavy = stage(
    `part lid "Lid" { mass 80 kg }\n fastener screws screw "Screws" { count 4 joins lid to b }`,
    "step {\n support lid with hoist\n undo screws\n lift lid with hoist\n }",
    "crew 2",
  );
  expect(codes(heavy)).toEqual([]);
  expect(codes(heavy.replace("support", "suport"))).toEqual(["syntax/word-unknown"]);
});
