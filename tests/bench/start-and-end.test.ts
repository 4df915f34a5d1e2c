// Procedures that rest on others: what one leaves, what the next begins with and must put right. Each rule on the smallest text that
// meets it, beside one that differs in that alone.

import { expect, test } from "vitest";
import { findings, firstRefusedLine, perform, refit, stage } from "./refit/stage.ts";

const says = (text: string): string[] =>
  findings(text).map((f) => `${f.code}: ${f.says} @ ${text.slice(f.at.start, f.at.end)}`);
const more = (id: string, head: string, acts: string, finish = ""): string =>
  `procedure ${id} "${id.toUpperCase()}" for u { ${head}\n step "S${id}" { ${acts} } finish { ${finish} } }\n`;

const lid = `part lid "Lid"\n fastener screws screw "Screws" { count 4 joins lid to b }`,
  card = `${lid}\n part card "Card" { behind lid }\n fastener cs screw "Card screws" { count 2 joins card to b behind lid }`,
  cup = `part cup "Cup" { rests on b }`,
  oil = `fastener plug plug "Plug" { into b }\n fluid oil oil "Oil" { volume 1 L drains at plug fills at plug }`,
  lidOff = "step { undo screws remove lid }",
  idle = 'inspect edge on b "No burrs"';

test("a needed procedure's end is this one's start, through several: parts, marks and all", () => {
  const chain = (back: string): string[] =>
    says(
      stage(card, "step { mark lid, b as M1 undo screws remove lid }") +
        more("q", "needs p", "undo cs remove card") +
        more("r", "aim all in needs q", back),
    );
  expect(chain("fit card fit cs fit lid align M1 fit screws")).toEqual([]);
  expect(chain("fit card fit cs fit lid fit screws")).toEqual([
    "refit/mark-unused: M1 is not lined up before this @ fit screws",
  ]);
  expect(chain("fit card fit cs")).toEqual([
    "refit/missing: Lid came off here and is not back on at the end @ undo screws",
  ]);
  expect(chain("fit lid align M1 fit screws")).toEqual([
    "refit/missing: Card came off here and is not back on at the end @ undo cs",
  ]);
});

test("what several procedures before this one took off are parts of their own: each goes back by itself", () => {
  const facts = `part x "X" { rests on b }\n part y "Y" { rests on b }\n part rider "Rider" { rests on x }`;
  const back = (acts: string): string[] =>
    says(
      stage(facts, "step { remove x }", "aim x off") +
        more("q", "aim y off needs p leaves off y until r", "remove y") +
        more("r", "aim all in", acts),
    );
  expect(back("fit x fit y")).toEqual([]);
  expect(back("fit y")).toEqual(["refit/missing: X is not back on at the end @ r"]);
  expect(back("fit x")).toEqual(["refit/missing: Y is not back on at the end @ r"]);
});

test("what a needed procedure lacks is told there alone", () => {
  const text =
    stage(card, "step { remove lid }") +
    more("q", "needs p", "undo cs remove card") +
    more("r", "aim all in needs q", "fit card fit cs fit lid fit screws");
  expect(says(text)).toEqual(["sequence/still-held: Lid cannot come off: still held by 4 of 4 Screws @ remove lid"]);
});

test("two needed procedures of which one needs the other, in either order, and a ring of needs", () => {
  for (const needs of ["p, q", "q, p"])
    expect(
      says(
        stage(card, lidOff) +
          more("q", "needs p", "undo cs remove card") +
          more("r", `aim all in needs ${needs}`, "fit card fit cs fit lid fit screws"),
      ),
    ).toEqual([]);
  expect(says(stage(lid, lidOff, "needs q") + more("q", "needs p", idle))).toEqual([
    "names/call-cycle: p needs q needs p: none of them can ever be begun @ q",
  ]);
});

const until = (facts: string, strip: string, leaves: string, head: string, acts: string, finish = ""): string[] =>
  says(stage(facts, `step { ${strip} }`, `leaves ${leaves} until q`) + more("q", head, acts, finish));

test("`leaves off X until P`: P puts it back", () => {
  for (const head of ["aim none", "aim all in"])
    expect(until(cup, "remove cup", "off cup", head, idle), head).toEqual([
      "refit/missing: Cup is not back on at the end @ q",
    ]);
  expect(until(cup, "remove cup", "off cup", "aim all in", "fit cup")).toEqual([]);
  expect(until(cup, "remove cup", "off cup", "aim none", idle, "fit cup")).toEqual([]);
  // Its ties are part of the same finding.
  expect(until(lid, "undo screws remove lid", "off lid", "aim all in", idle)).toEqual([
    "refit/missing: Lid is not back on at the end @ q",
  ]);
  expect(until(lid, "undo screws remove lid", "off lid", "aim all in", "fit lid fit screws")).toEqual([]);
});

test("`leaves drained F until P`: P fills it", () => {
  for (const head of ["aim none", "aim all in"]) {
    expect(until(oil, "drain oil", "drained oil", head, idle), head).toEqual([
      "refit/fluid-short: Oil is let out and not filled again @ q",
    ]);
    expect(until(oil, "drain oil", "drained oil", head, "fill oil"), head).toEqual([]);
  }
});

test("`leaves out` and `leaves finger-tight … until P`: P fits and tightens, in its steps or when it finishes", () => {
  const out = (head: string, acts: string, finish = ""): string[] =>
      until(lid, "undo screws remove lid", 'out 1 of screws "With the cable."', head, acts, finish),
    slack = (head: string, acts: string, finish = ""): string[] =>
      until(lid, "undo screws remove lid", "finger-tight screws", head, acts, finish);
  const missing = ["refit/missing: Screws: 1 of 4 are not back in at the end @ q"],
    loose = ["refit/missing: Screws are left finger-tight at the end @ q"];
  for (const head of ["aim none", "aim all in"]) {
    expect(out(head, idle), head).toEqual(missing);
    expect(slack(head, idle), head).toEqual(loose);
    expect(slack(head, "tighten screws"), head).toEqual([]);
  }
  expect(slack("aim none", idle, "tighten screws")).toEqual([]);
  expect(out("aim all in", "fit 1 of screws")).toEqual([]);
  expect(out("aim none", idle, "fit 1 of screws")).toEqual([]);
  // What its strip puts in, its own way back takes out again.
  expect(out("aim none", "fit 1 of screws")).toEqual(missing);
});

test("what is said to be left so, and is not, is found: at the line that puts it right, else at what says it", () => {
  const left = (facts: string, leaves: string, steps: string, finish = ""): string[] =>
    says(stage(facts, `${steps} finish { ${finish} }`, `leaves ${leaves}`));
  const filled = "refit/not-left: Oil is filled here, and said to be left drained @ fill oil";
  expect(left(oil, "drained oil", "step { drain oil }")).toEqual([]);
  expect(left(oil, "drained oil", "step { drain oil refit { fill oil } }")).toEqual([filled]);
  expect(left(oil, "drained oil", "step { drain oil }", "fill oil")).toEqual([filled]);
  expect(left(oil, "drained oil", `step { ${idle} }`)).toEqual([
    "refit/not-left: Oil is said to be left drained, and nothing drains it @ leaves drained oil",
  ]);
  expect(left(lid, "off lid", lidOff)).toEqual([]);
  // A part that is left out is off, a fastener that is left off is out.
  expect(left(lid, "out lid", lidOff)).toEqual([]);
  expect(left(lid, "off screws", lidOff)).toEqual([]);
  expect(left(lid, "out lid", lidOff, "fit lid fit screws")).toEqual([
    "refit/not-left: Lid goes back on here, and is said to be left off @ fit lid",
  ]);
  expect(left(lid, "off screws", lidOff, "fit screws")).toEqual([
    "refit/not-left: Screws go back in here, and 4 of 4 are said to be left out @ fit screws",
  ]);
  expect(left(lid, "finger-tight lid", lidOff)).toEqual([
    "refit/not-left: Lid is said to be left finger-tight, and never loosened @ leaves finger-tight lid",
  ]);
  expect(left(lid, "off lid", "step { undo screws remove lid refit { fit lid } }")).toEqual([
    "refit/not-left: Lid goes back on here, and is said to be left off @ fit lid",
  ]);
  expect(left(lid, "off lid", `step { ${idle} }`)).toEqual([
    "refit/not-left: Lid is said to be left off, and nothing takes it off @ leaves off lid",
  ]);
  expect(left(lid, "out 2 of screws", lidOff)).toEqual([]);
  expect(left(lid, "out 2 of screws", lidOff, "fit screws")).toEqual([
    "refit/not-left: Screws go back in here, and 2 of 4 are said to be left out @ fit screws",
  ]);
  expect(left(lid, "out 2 of screws", "step { undo 1 of screws }")).toEqual([
    "refit/not-left: 2 of 4 Screws are said to be left out, and not so many are undone @ leaves out 2 of screws",
  ]);
  expect(left(lid, "finger-tight screws", lidOff)).toEqual([]);
  for (const [block, finish] of [
    ["refit { tighten screws }", ""],
    ["", "tighten screws"],
  ] as const)
    expect(left(lid, "finger-tight screws", `step { undo screws remove lid ${block} }`, finish), block).toEqual([
      "refit/not-left: Screws are tightened here, and said to be left finger-tight @ tighten screws",
    ]);
});

test("what a strip says is left is found in the way back that it names, once", () => {
  const by = (back: string): string[] =>
    says(
      stage(`${lid}\n${oil}`, `step { undo screws remove lid drain oil }`, "leaves drained oil refit by q") +
        more("q", "aim all in", back),
    );
  expect(by("fit lid fit screws fit plug")).toEqual([]);
  expect(by("fit lid fit screws fit plug fill oil")).toEqual([
    "refit/not-left: Oil is filled here, and said to be left drained @ fill oil",
  ]);
});

test("what was refused is not said again as never left so", () => {
  expect(says(stage(lid, "step { remove lid }", "leaves off lid, out 4 of screws"))).toHaveLength(1);
});

test("a procedure that calls P itself is not begun with by P", () => {
  expect(
    says(
      stage(lid, `${lidOff} finish { do q }`, "leaves finger-tight screws until q") +
        more("q", "aim none", "tighten screws"),
    ),
  ).toEqual([]);
  expect(
    says(stage(cup, "step { remove cup } step { do q }", "leaves off cup until q") + more("q", "aim none", idle)),
  ).toEqual([]);
});

test("a way back that is named with `refit by` ends as the strip promised, and the promise is written once", () => {
  const by = (facts: string, leaves: string, back: string): string[] =>
    says(stage(facts, lidOff, `${leaves} refit by q`) + more("q", "aim all in", back));
  expect(by(lid, "", "fit lid fit screws")).toEqual([]);
  expect(by(lid, "", "fit lid")).toEqual(["refit/missing: Screws: 4 of 4 are not back in at the end @ undo screws"]);
  expect(by(lid, "leaves off lid", idle)).toEqual([]);
  expect(by(lid, 'leaves out 1 of screws "Later."', "fit lid fit 3 of screws")).toEqual([]);
  const turns = `positions flat, up\n${lid}`;
  expect(by(turns, "leaves turned up", "fit lid fit screws turn up")).toEqual([]);
  expect(by(turns, "", "fit lid fit screws turn up")).toEqual(["refit/position: The unit ends up and not flat @ p"]);
  // Another that needs it puts all in.
  expect(says(stage(lid, lidOff, "leaves off lid") + more("q", "aim all in needs p", idle))).toEqual([
    "refit/missing: Lid came off here and is not back on at the end @ undo screws",
  ]);
});

test("a way back that needs what nobody did is one finding", () => {
  const text = (done: string): string =>
    stage(`${lid}\n${cup}`, `${lidOff} ${done}`, "refit by q") +
    more("q", "aim all in needs r", "fit lid fit screws fit cup") +
    more("r", "aim none", "remove cup");
  expect(says(text("step { do r }"))).toEqual([]);
  expect(says(text(""))).toEqual(["sequence/needs: Q needs R done before it @ q"]);
  // Of two that it is the way back of, it begins where the first ends.
  expect(
    says(
      stage(lid, lidOff, "refit by q") +
        more("r", "refit by q", "undo screws remove lid") +
        more("q", "aim all in", "fit lid fit screws"),
    ),
  ).toEqual([]);
});

test("`leaves turned` of a needed procedure is where this one ends", () => {
  const turned = (back: string): string[] =>
    says(
      stage(`positions flat, up\n${lid}`, lidOff, "leaves turned up") +
        more("q", "aim all in needs p", `fit lid fit screws ${back}`),
    );
  expect(turned("turn up")).toEqual([]);
  expect(turned("")).toEqual(["refit/position: The unit ends flat and not up @ q"]);
});

test("a written way back is turned with nothing loose in it, by whichever name it is called", () => {
  const turns = `positions flat, up\n${lid}`,
    back = "fit lid turn up turn flat fit screws",
    found = "sequence/loose-when-turned: Lid is held by nothing any more, and the unit is turned to up @ turn up";
  expect(says(stage(turns, lidOff, "refit by q") + more("q", "aim all in", back))).toEqual([found]);
  expect(says(stage(turns, lidOff) + more("q", "aim all in needs p", back))).toEqual([found]);
});

test("what is fitted later in the same way back is not on yet; what never is, is missing", () => {
  const back = (acts: string): string[] =>
    says(stage(lid, lidOff) + more("q", "aim all in needs p", `fit screws ${acts}`) + more("r", "aim none", "fit lid"));
  for (const later of ["fit lid", "repeat for 1 { fit lid }", "do r", "press lid onto b"])
    expect(back(later), later).toEqual(["refit/impossible: Screws cannot go on: Lid is not on yet @ fit screws"]);
  expect(back("")).toEqual(["refit/missing: Lid came off here and is never fitted @ remove lid"]);
});

test("`starts without` counts among what is out, and a way back may say it again", () => {
  const strip = stage(lid, "step { undo 3 of screws remove lid }", "starts without 1 of screws");
  expect(says(strip)).toEqual([]);
  expect(says(strip + more("q", "aim all in starts without 1 of screws needs p", "fit lid fit 3 of screws"))).toEqual(
    [],
  );
  expect(says(strip + more("q", "aim all in needs p", "fit lid fit screws"))).toEqual([]);
});

test("the end is where `finish` ends: what it puts right is not missing, what it spoils is told once, at its line", () => {
  const ways = (back: string, finish: string): readonly string[][] => [
    // Computed, written and named, and written by itself.
    says(`${stage(lid, `${lidOff.slice(0, -1)} refit { ${back} } } finish { ${finish} }`)}`),
    says(stage(lid, lidOff, "refit by q") + more("q", "aim all in", back, finish)),
    says(stage(lid, lidOff) + more("q", "aim all in needs p", back, finish)),
  ];
  const fingerTight = "fit lid fit screws finger-tight";
  for (const found of ways(fingerTight, "tighten screws")) expect(found).toEqual([]);
  for (const found of ways(fingerTight, idle))
    expect(found.map((one) => one.replace(/ @.*/, ""))).toEqual([
      "refit/missing: Screws are left finger-tight at the end",
    ]);
  for (const found of ways("fit lid fit screws", "undo screws remove lid"))
    expect(found).toEqual(["refit/missing: Lid came off here and is not back on at the end @ remove lid"]);
  const stud = `${lid}\n temporary stand "Stand"`,
    put = (finish: string): string[] =>
      says(
        stage(stud, lidOff) +
          `procedure q "Q" for u { aim all in needs p step { put stand on lid fit lid fit screws } finish { ${finish} } }`,
      );
  expect(put("take stand off")).toEqual([]);
  expect(put(idle)).toEqual(["refit/temporary-left: Stand is put on here and never taken off @ put stand on lid"]);
});

test("what came off a part that is left off goes back on that, and what ties either to the rest stays out", () => {
  const box = `part box "Box"\n fastener bs screw "Box screws" { count 2 joins box to b }\n part card "Card"\n fastener cs screw "Card screws" { count 2 joins card to box }
    part strap "Strap"\n fastener ss screw "Strap screws" { count 2 joins strap to card }\n fastener hook screw "Hook" { joins strap to b }`;
  const line = (acts: string): string[] => {
    const text = stage(box, `step { ${acts} }`, "leaves off box");
    expect(says(text), acts).toEqual([]);
    expect(firstRefusedLine(perform(text), 50), acts).toBeUndefined();
    return refit(text);
  };
  // The card is screwed back on the box, on the bench; the strap goes back on the base, and nothing ties it to the card.
  expect(line("undo ss undo hook remove strap undo cs remove card undo bs remove box")).toEqual([
    "fitting Card",
    "fitting Card screws",
    "fitting Strap",
    "fitting Hook",
  ]);
  // The card rode along with the box: nothing ties the strap, which stays, to it.
  const rode = box.replace(
    "joins strap to b",
    'joins strap to b }\n fastener hook-2 screw "Hook 2" { joins strap to b',
  );
  const text = stage(rode, "step { undo ss undo bs remove box }", "leaves off box");
  expect(says(text)).toEqual([]);
  expect(refit(text)).toEqual([]);
});

test("of what came off together and was parted then the one is left off, and the other goes back", () => {
  const facts = `${lid}\n part ring "Ring" { fits lid }`;
  for (const [acts, back] of [
    ["undo screws remove ring, lid together remove ring", ["fitting Lid", "fitting Screws"]],
    ["undo screws remove lid remove ring", ["fitting Lid", "fitting Screws"]],
  ] as const) {
    const text = stage(facts, `step { ${acts} }`, "leaves off ring");
    expect(says(text), acts).toEqual([]);
    expect(refit(text), acts).toEqual(back);
  }
  // Still in one sub-assembly with what is left off, it is missing: nobody said so of it.
  expect(says(stage(facts, "step { undo screws remove ring, lid together }", "leaves off ring"))).toEqual([
    "refit/missing: Lid came off here and is not back on at the end @ undo screws",
  ]);
});

// --- what a procedure that is done by another one leaves ------------------------------------------------------------------------

const inner = more("q", "aim lid off leaves off lid", "undo screws remove lid"),
  wayBackOf = (text: string): string[] => {
    expect(says(text), text).toEqual([]);
    expect(firstRefusedLine(perform(text), 50), text).toBeUndefined();
    return refit(text);
  };

test("what a called procedure leaves its caller leaves, and does not say again", () => {
  expect(wayBackOf(stage(card, "step { do q } step { undo cs remove card }") + inner)).toEqual([
    "fitting Card",
    "fitting Card screws",
  ]);
  // Said again it is the same.
  expect(wayBackOf(stage(card, "step { do q } step { undo cs remove card }", "leaves off lid") + inner)).toHaveLength(
    2,
  );
  // Through another call, and what else may be left.
  const through = more("r", "aim none", "do q");
  expect(wayBackOf(stage(card, "step { do r }") + through + inner)).toEqual([]);
  const drained = more("q", "aim none leaves drained oil", "drain oil"),
    loose = more("q", "aim none leaves finger-tight screws", "loosen screws"),
    out = more("q", "aim lid off leaves out 1 of screws", "undo screws remove lid");
  expect(wayBackOf(stage(oil, "step { do q }") + drained)).toEqual(["fitting Plug"]);
  expect(wayBackOf(stage(lid, "step { do q }") + loose)).toEqual([]);
  const { order } = perform(stage(lid, "step { do q }") + out);
  expect(order!.line.map((n) => order!.ops[n]!.count)).toEqual([1, 3]);
});

test("where the caller puts it back, in its strip, in a refit block or in finish, it is not left", () => {
  const doQ = "step { do q }";
  expect(wayBackOf(stage(lid, `${doQ} refit { fit lid fit screws }`) + inner)).toEqual([
    "fitting Lid",
    "fitting Screws",
  ]);
  // The lid is put back by hand: its screws go in behind it.
  expect(wayBackOf(stage(lid, `${doQ} refit { fit lid }`) + inner)).toEqual(["fitting Lid", "fitting Screws"]);
  const { leaves } = perform(stage(lid, `${doQ} step { fit lid fit screws }`) + inner);
  expect(leaves).toEqual([]);
  expect(says(stage(lid, `${doQ} finish { fit lid fit screws }`) + inner)).toEqual([]);
});

test("a written way back of the caller leaves it as well, and one that puts it back may", () => {
  const caller = stage(card, "step { do q } step { undo cs remove card }", "refit by back") + inner;
  expect(says(caller + more("back", "aim all in", "fit card fit cs"))).toEqual([]);
  expect(says(caller + more("back", "aim all in", "fit card fit cs fit lid fit screws"))).toEqual([]);
});

test("of a unit inside it is left inside", () => {
  const text = `unit gear "Gear" { base c part c "C" part lid "Lid" fastener screws screw "Screws" { count 4 joins lid to c } }
unit u "U" { base b part b "B" part box "Box" { pieces left, right is unit gear rests on b } }
procedure q "Q" for gear { aim lid off leaves off lid step s { undo screws remove lid } }
procedure p "P" for u { aim none step t { do q on box.left undo box.right.screws remove box.right.lid } }
`;
  expect(wayBackOf(text)).toEqual(["fitting Lid (Box right)", "fitting Screws (Box right)"]);
  expect(perform(text).leaves.map(({ things }) => things.length)).toEqual([1]);
});
