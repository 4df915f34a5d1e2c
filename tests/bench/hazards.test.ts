// Hazards on the bench: each rule on a small stage, named after the rule. Precautions are facts about what was done; nothing here ever
// says what is left.

import { expect, test } from "vitest";
import { check, codes, findings, firstRefusedLine, perform, refit, stage } from "./refit/stage.ts";

const says = (text: string): string[] => findings(text).map((f) => f.says);
const start = `part guard guard "Guard"\n fastener gs screw "Guard screws" { count 4 joins guard to b }
 hazard start rotating danger "Fan can start" { on guard, gs  precaution isolate "Open it." back "Close it."  precaution lock-out "Lock it." back "Lock off."  precaution try-start "Press start." }`;
const off = "undo gs remove guard";

test("touching what a hazard is on asks for every precaution of it, standing", () => {
  expect(codes(stage(start, `step { isolate start lock-out start ${off} }`))).toEqual(["hazard/not-yet"]);
  expect(codes(stage(start, `step { isolate start lock-out start try-start start ${off} }`))).toEqual([]);
});

test("loosen touches too", () => {
  expect(codes(stage(start, `step { loosen gs isolate start lock-out start try-start start ${off} }`))).toEqual([
    "hazard/not-yet",
  ]);
});

const hotPlate = `part plate "Plate" { fits b }\n part lid "Lid" { mass 30 kg  fits b }
 hazard hot-plate hot warning "Hot plate" { on plate, lid  precaution cool "Let it stand." wait 30 min }`;

test.each([
  'measure wear on plate "Thickness" at least 3 mm',
  'set plate "Gap" 1..2 mm',
  "clean plate with rag",
  'mark plate as m "One mark."',
  'work plate "Tap it round."',
  "apply grease to plate",
  "heat plate to 80 °C",
  "rotate plate 1 turn",
  "put sheet on plate take sheet",
  "cap plate",
  "support lid with hoist release lid",
  "hold plate with strap",
])("handling touches: %s", (act) => {
  const libraries =
      'consumable grease "Grease"\ntool rag "Rag"\ntool hoist "Hoist"\ntool strap "Strap"\ntemporary sheet "Sheet"\n',
    on = (text: string): string[] =>
      codes(`${libraries}${stage(hotPlate, text)}`).filter((code) => code.startsWith("hazard/"));
  expect(on(`step { ${act} }`)).toEqual(["hazard/not-yet"]);
  expect(on(`step { cool hot-plate ${act} }`)).toEqual([]);
});

test("heating asks that the hazard is declared or dismissed, in the strip and in a refit block", () => {
  const facts = `part hub "Hub" { fits b }`;
  const asks = (more: string, steps: string): string[] => codes(stage(`${facts}\n${more}`, steps, "aim none"));
  expect(asks("", "step { heat hub to 80 °C remove hub }")).toEqual(["hazard/undeclared"]);
  expect(asks("", "step { remove hub refit { heat hub to 80 °C fit hub } }")).toEqual(["hazard/undeclared"]);
  expect(asks('no hot "Hand warm only."', "step { heat hub to 40 °C remove hub }")).toEqual([]);
  expect(
    asks(
      'hazard hub-hot hot warning "Hot hub" { precaution cool "Gloves, tongs." }',
      "step { heat hub to 80 °C remove hub }",
    ),
  ).toEqual([]);
});

const hotFiller = `part case "Case"\n fastener cs screw "Case screws" { count 4 joins case to b }
 fastener drain-plug plug "Drain plug" { into b }\n fastener filler plug "Filler" { into case }\n fastener vent plug "Vent" { into case }
 fluid oil oil "Oil" { volume 1 L drains at drain-plug fills at filler bleeds at vent }
 hazard hot-top hot warning "Hot top" { on filler, vent  precaution cool "Let it stand." back "Sign off." }`;

test("filling touches what the fluid is filled at, in a written refit", () => {
  const together = (acts: string, before = ""): string[] =>
    codes(
      `${stage(hotFiller, `step { ${before} drain oil undo cs remove case }`, "refit by back")}procedure back "Back" for u { aim all in needs p step { ${acts} } }`,
    );
  const back = "fit case fit cs fit drain-plug fill oil";
  expect(together(back)).toEqual(["hazard/not-yet"]);
  expect(together(`${back} restore hot-top`, "cool hot-top")).toEqual([]);
});

test("the computed way back fills before the precautions of the filler are taken away", () => {
  const text = stage(hotFiller, "step { drain oil cool hot-top undo cs remove case }");
  expect(codes(text)).toEqual([]);
  const line = refit(text);
  expect(line.findIndex((l) => l.startsWith("filling"))).toBeGreaterThan(-1);
  expect(line.findIndex((l) => l.startsWith("filling"))).toBeLessThan(
    line.indexOf("taking the precaution away for Hot top"),
  );
  expect(codes(stage(hotFiller, "step { drain oil undo cs remove case }"))).toEqual(["hazard/not-yet"]);
});

test("the computed way back fills after precautions that lapsed since are taken again", () => {
  for (const acts of [
    "cool hot-top undo filler drain oil restore hot-top undo cs remove case",
    // What it is filled at was opened under them, and the rest drained without.
    "cool hot-top undo filler restore hot-top drain oil cool hot-top",
  ]) {
    const text = stage(hotFiller, `step { ${acts} }`);
    expect(codes(text), acts).toEqual([]);
    expect(firstRefusedLine(perform(text), 300), acts).toBeUndefined();
    const line = refit(text);
    expect(line.indexOf("filling Oil"), acts).toBeGreaterThan(line.indexOf("the precaution for Hot top"));
  }
});

test("a precaution that is taken again while it stands is taken back once, after the last touch", () => {
  const facts = `part cap "Cap" { pieces 1..3 rests on b }
 hazard grit dust caution "Grit" { on cap  precaution other "Goggles on." back "Goggles off." }`;
  const text = stage(facts, "repeat for 1..3 { step { other grit remove cap } }");
  expect(codes(text)).toEqual([]);
  const line = refit(text);
  expect(line.filter((one) => one.includes("Grit"))).toHaveLength(1);
  expect(line.at(-1)).toContain("Grit");
  expect(firstRefusedLine(perform(text), 200)).toBeUndefined();
  // After a powered test between, it is another time.
  const twice = stage(facts, "step { other grit remove cap.1 restore grit other grit remove cap.2 }");
  expect(codes(twice)).toEqual([]);
});

test("looking and running are no touch", () => {
  for (const act of ['inspect look on plate "No cracks"', 'test run on plate "Runs freely"'])
    expect(
      codes(stage(hotPlate, `step { ${act} }`)).filter((code) => code.startsWith("hazard/")),
      act,
    ).toEqual([]);
});

test("what guards against a weight is not asked for by handling, only by what moves or frees it", () => {
  const facts = `part lid "Lid" { mass 30 kg hangs }\n fastener ls screw "Lid screws" { count 4 joins lid to b }
 hazard load heavy warning "Lid" { on lid, ls  mass 30 kg  precaution barrier "Nobody under it." }`;
  expect(
    codes(stage(facts, 'step { mark lid as m "One mark." support lid barrier load undo ls remove lid }')),
  ).not.toContain("hazard/not-yet");
  expect(codes(stage(facts, "step { support lid undo ls remove lid }"))).toContain("hazard/not-yet");
});

test("what guards against a weight is asked for where the weight rides along", () => {
  const facts = `part block "Pillow block" { mass 20 kg }\n part drum "Drum" { mass 300 kg rests on block }
 part wire cable "Wire" { fits drum }\n fastener bs bolt "Block bolts" { count 4 joins block to b }
 hazard load overhead danger "Load on the crane" { on drum  precaution barrier "Close the walkway." back "Open it." }
 hazard live electrical danger "Wire" { on wire  precaution isolate "Off." precaution prove-dead "Test." }`;
  const steps = (barrier: string) => stage(facts, `step { ${barrier} support block undo bs lift block with crane }`),
    crane = '\ntool crane "Crane" { kind hoist capacity 500 kg }\n';
  expect(says(steps("") + crane)).toEqual(["Drum must not be touched yet: Load on the crane asks for barrier first"]);
  expect(codes(steps("barrier load") + crane)).toEqual([]);
  // On the way back the rope is up until the load is down.
  expect(refit(steps("barrier load") + crane).at(-1)).toContain("taking the precaution away");
});

test("what is handled on the way back is handled while the precautions stand", () => {
  const facts = `part guard guard "Guard"\n fastener gs screw "Guard screws" { count 4 joins guard to b }\n part fan "Fan" { fits b }
 hazard start rotating danger "Fan can start" { on gs, fan  precaution isolate "Open it." back "Close it."  precaution try-start "Press start." }`;
  const text = stage(
    facts,
    'step { isolate start try-start start undo gs remove guard refit { reverse work fan "Turn the blade up." } }',
  );
  expect(codes(text)).toEqual([]);
  const line = refit(text);
  expect(line.findIndex((l) => l.startsWith("working on "))).toBeGreaterThan(line.indexOf("fitting Guard Screws"));
  expect(line.findIndex((l) => l.startsWith("working on "))).toBeLessThan(
    line.indexOf("taking the precaution away for Fan can start"),
  );
});

test("in the author's order", () => {
  expect(codes(stage(start, `step { lock-out start isolate start try-start start ${off} }`))).toEqual(["hazard/order"]);
});

test("said once: then they are assumed to stand", () => {
  expect(codes(stage(start, `step { ${off} }`))).toEqual(["hazard/not-yet"]);
});

test("an item that a precaution is behind needs only those before it, and the proof asks that it is away", () => {
  const facts = `part cover "Cover"\n fastener cs screw "Cover screws" { joins cover to b }\n part board "Board" { fits b behind cover }
 hazard mains electrical danger "Mains" { on cover, board source mains voltage 230 V ac  precaution isolate "Open it." back "Close it."  precaution prove-dead behind cover "All poles." with tester }`;
  expect(codes(stage(facts, "step { isolate mains undo cs remove cover prove-dead mains remove board }"))).toEqual([]);
  expect(codes(stage(facts, "step { isolate mains undo cs prove-dead mains remove cover remove board }"))).toEqual([
    "hazard/proof-out-of-reach",
  ]);
  expect(codes(stage(facts, "step { undo cs remove cover isolate mains prove-dead mains remove board }"))).toEqual([
    "hazard/not-yet",
  ]);
});

test("an item that a precaution is behind asks for those before it though the hazard is not on the item itself", () => {
  const facts = `part cover "Cover"\n fastener cs screw "Cover screws" { joins cover to b }\n part board "Board" { fits b behind cover }
 hazard mains electrical danger "Mains" { on board source mains voltage 230 V ac  precaution isolate "Open it." back "Close it."  precaution prove-dead behind cover "All poles." with tester }`;
  const acts = "prove-dead mains remove board";
  expect(codes(stage(facts, `step { isolate mains undo cs remove cover ${acts} }`))).toEqual([]);
  expect(codes(stage(facts, `step { undo cs remove cover isolate mains ${acts} }`))).toEqual(["hazard/not-yet"]);
});

test("a precaution behind plugs asks that all of them are out", () => {
  const facts = `part housing "Housing"\n fastener plugs plug "Plugs" { count 2 into housing }\n fastener hs screw "Housing screws" { count 8 joins housing to b }
 hazard push spring danger "Spring" { on hs, housing pushes housing force 5 kN  precaution block behind plugs "Rods in." back "Rods out." }`;
  expect(codes(stage(facts, "step { undo plugs block push undo hs remove housing }"))).toEqual([]);
  expect(codes(stage(facts, "step { undo 1 of plugs block push undo hs remove housing }"))).toEqual([
    "hazard/proof-out-of-reach",
  ]);
  // And the refit takes the rods out before the plugs go in.
  const line = refit(stage(facts, "step { undo plugs block push undo hs remove housing }"));
  expect(line.indexOf("taking the precaution away for Spring")).toBeLessThan(line.indexOf("fitting Plugs"));
});

test("electrical, pressure, spring and rotating hazards end in a proof", () => {
  for (const [kind, precaution] of [
    ["electrical", "isolate"],
    ["pressure", "isolate"],
    ["rotating", "isolate"],
    ["spring", "ventilate"],
  ]) {
    const facts = `part x "X" { fits b }\n hazard h ${kind} danger "H" { on x  precaution ${precaution} "Do it." back "Undo it." }`;
    expect(codes(stage(facts, `step { ${precaution} h remove x }`)), kind).toEqual(["hazard/no-proof"]);
  }
});

test("for a spring a block that stands will do", () => {
  expect(
    codes(
      stage(
        `part x "X" { fits b }\n hazard h spring danger "H" { on x  precaution block "Block it." back "Unblock it." }`,
        "step { block h remove x }",
      ),
    ),
  ).toEqual([]);
});

test("a battery has no proof at its own terminals: isolated, that is a hint", () => {
  const of = (source: string, precaution: string): (string | undefined)[] =>
    check(
      stage(
        `part x "X" { fits b }\n hazard h electrical danger "H" { on x source ${source} voltage 48 V dc precaution ${precaution} "Do it." back "Undo it." }`,
        `step { ${precaution} h remove x }`,
      ),
    ).findings.flatMap(({ code, severity }) => (code === "hazard/no-proof" ? [severity] : []));
  expect(of("battery", "isolate")).toEqual(["hint"]);
  expect(of("battery", "ventilate")).toEqual(["error"]);
  expect(of("mains", "isolate")).toEqual(["error"]);
});

test("a hazard without any precaution is a finding", () => {
  expect(codes(stage(`part x "X" { fits b }\n hazard h hot warning "H" { on x }`, "step { remove x }"))).toEqual([
    "hazard/no-precaution",
  ]);
});

test("isolate before lock-out, the proof after all of these", () => {
  const of = (list: string): string => `part x "X" { fits b }\n hazard h rotating danger "H" { on x ${list} }`;
  expect(
    codes(
      stage(
        of(`precaution lock-out "L" back "l"  precaution isolate "I" back "i"  precaution try-start "T"`),
        "step { lock-out h isolate h try-start h remove x }",
      ),
    ),
  ).toContain("hazard/order");
  expect(
    codes(
      stage(
        of(`precaution isolate "I" back "i"  precaution try-start "T"  precaution lock-out "L" back "l"`),
        "step { isolate h try-start h lock-out h remove x }",
      ),
    ),
  ).toContain("hazard/order");
});

test("`other` satisfies no rule of order or proof", () => {
  expect(
    codes(
      stage(
        `part x "X" { fits b }\n hazard h rotating danger "H" { on x  precaution other "Mind it." }`,
        "step { other h remove x }",
      ),
    ),
  ).toEqual(["hazard/no-proof"]);
});

test("a wait is at least the computed one", () => {
  const of = (wait: string): string =>
    `part x "X" { fits b }\n hazard h electrical danger "H" { on x source capacitor voltage 400 V dc capacitance 1000 uF bleeder 100 kohm  precaution discharge "Wait." wait ${wait}  precaution prove-dead "Measure." with tester }`;
  expect(codes(stage(of("1 min"), "step { discharge h prove-dead h remove x }"))).toEqual(["hazard/wait-too-short"]);
  expect(codes(stage(of("30 min"), "step { discharge h prove-dead h remove x }"))).toEqual([]);
});

test("a proof ends with restore, and all its precautions lapse", () => {
  expect(codes(stage(start, `step { isolate start lock-out start try-start start restore start ${off} }`))).toEqual([
    "hazard/lapsed",
  ]);
});

test("what the way back has taken away is not restored once more, and not printed as taken away twice", () => {
  const text = stage(
      start,
      `step { isolate start lock-out start try-start start ${off} } finish { restore start test "Runs" }`,
    ),
    found = check(text).findings.filter(({ code }) => code === "hazard/lapsed");
  expect(found.map(({ severity, says }) => [severity, says])).toEqual([
    [
      "hint",
      "Nothing stands against Fan can start any more: the way back has taken it away, so there is nothing to restore",
    ],
  ]);
  const again = "isolate start lock-out start try-start start restore start";
  expect(check(text.replace("restore start", again)).findings.filter(({ code }) => code === "hazard/lapsed")).toEqual(
    [],
  );
});

test("a proof ends when a generator is turned", () => {
  const facts = `part rotor "Rotor" { fits b }\n part lead cable "Lead"\n fastener ls screw "Lead screws" { joins lead to b }
 hazard feed electrical danger "Feeds its leads" { on ls, rotor source generator voltage 300 V ac  precaution block "Brake on." back "Brake off."  precaution prove-dead "Measure." with tester }`;
  expect(codes(stage(facts, "step { block feed prove-dead feed undo ls remove lead remove rotor }"))).toEqual([]);
  expect(
    codes(stage(facts, "step { block feed prove-dead feed rotate rotor undo ls remove lead remove rotor }")),
  ).toEqual(["hazard/lapsed"]);
});

test("under power a guard is held, not only in its place", () => {
  const open = "isolate start lock-out start try-start start undo gs remove guard";
  const strip = (more: string): string => stage(start, `step { ${open} fit guard ${more} }`, "aim none");
  expect(says(strip("restore start fit gs"))).toEqual(["Fan can start is restored while Guard is held by nothing"]);
  expect(says(strip("restore start"))).toEqual(["Fan can start is restored while Guard is held by nothing"]);
  expect(codes(strip("fit gs restore start"))).toEqual([]);
});

test("on the way back every guard is on and held before there is power", () => {
  // The screws of this guard are nothing that the hazard is on.
  const facts = start.replace("on guard, gs", "on guard"),
    steps = `step one { isolate start lock-out start try-start start } step two { undo gs remove guard }`;
  const line = refit(stage(facts, steps));
  expect(line.indexOf("fitting Guard screws")).toBeLessThan(
    line.findIndex((act) => act.startsWith("taking the precaution away")),
  );
  expect(
    codes(
      stage(facts, steps.replace("remove guard }", "remove guard refit { fit guard restore start fit gs reverse } }")),
    ),
  ).toEqual(["refit/contradiction"]);
});

test("with a guard left off what stands against power is not taken back", () => {
  const facts = `${start}\n part fan "Fan" { fits b }\n hazard live electrical danger "Mains" { on fan  precaution isolate "Open it." back "Close it." precaution prove-dead "Test." }`,
    steps = "step { isolate start, live lock-out start try-start start prove-dead live undo gs remove guard }";
  const taken = (head: string): string[] =>
    refit(stage(facts, steps, head)).filter((act) => act.startsWith("taking the precaution away"));
  expect(taken("")).toHaveLength(3);
  for (const left of ["off guard", "out guard", "out gs", "off gs"]) expect(taken(`leaves ${left}`), left).toEqual([]);
  // By some of its screws it is held; what is on those very screws is left open all the same.
  expect(taken("leaves out 2 of gs")).toEqual(["taking the precaution away for Mains"]);
});

test("under power every part of kind guard is on", () => {
  expect(codes(stage(start, `step { isolate start lock-out start try-start start ${off} restore start }`))).toContain(
    "hazard/guard-off",
  );
});

test("a hazard that pushes a part is on that part's last ties", () => {
  const facts = `part cap "Cap"\n fastener one screw "One" { joins cap to b }\n fastener two screw "Two" { joins cap to b }\n hazard push spring danger "Push" { pushes cap force 1 kN  precaution block "Block it." back "Unblock it." }`;
  expect(codes(stage(facts, "step { undo one block push undo two remove cap }"))).toEqual([]);
  expect(codes(stage(facts, "step { undo one undo two remove cap }"))).toEqual(["hazard/not-yet"]);
});

test("a part with a supply, a battery, a capacitor asks for its hazard itself", () => {
  for (const part of [
    `part x "X" { fits b supply 400 V ac }`,
    `part x capacitor "X" { fits b }`,
    `part x battery "X" { fits b }`,
  ]) {
    expect(
      check(stage(part, "step { remove x }")).findings.map(({ code }) => code),
      part,
    ).toContain("hazard/undeclared");
  }
});

test("every hazard kind is declared or dismissed; the rest are listed as not considered", () => {
  const [unit] = check(stage(`${start}\n no hot "Cold."`, "step { }", "aim none")).units;
  expect(unit!.notConsidered).not.toContain("rotating");
  expect(unit!.notConsidered).not.toContain("hot");
  expect(unit!.notConsidered).toContain("electrical");
});

test("the same precaution forgotten for several hazards is one finding, with all of them", () => {
  const facts = `part x "X" { fits b }\n part y "Y" { fits b }\n hazard h rotating danger "Shaft" { on x  precaution isolate "I" back "i"  precaution try-start "T" }\n hazard k rotating danger "Fan" { on y  precaution isolate "I" back "i"  precaution try-start "T" }`;
  const found = findings(stage(facts, "step { isolate h, k remove x remove y }"));
  expect(found.map(({ code }) => code)).toEqual(["hazard/not-yet"]);
  expect(found[0]!.because.map(({ says: text }) => text).join()).toContain("Fan");
});

test("what a declaration lacks is said there, and not again at the act that asks for it", () => {
  expect(
    codes(
      stage(
        `part x "X" { fits b }\n hazard h rotating danger "H" { on x  precaution isolate "I" back "i" }`,
        "step { isolate h try-start h remove x }",
      ),
    ),
  ).toEqual(["hazard/no-proof"]);
});

test("in the refit each precaution is lifted after the last touch", () => {
  const performance = perform(stage(start, `step { isolate start lock-out start try-start start ${off} }`)),
    verbs = performance.refit.map(({ op }) => op.verb);
  expect(verbs.indexOf("lift")).toBeGreaterThan(verbs.lastIndexOf("fit"));
});

test("no finding says safe, OK, passed, complies, dead or discharged of a state", () => {
  const all = [
    `step { ${off} }`,
    `step { lock-out start isolate start try-start start ${off} }`,
    `step { isolate start lock-out start try-start start restore start ${off} }`,
  ].flatMap((steps) => says(stage(start, steps)));
  expect(all.length).toBeGreaterThan(2);
  for (const text of all) expect(text).not.toMatch(/\b(?:safe|ok|passed|complies|is dead|discharged)\b/i);
});

test("power is not given back where the proof between was never made", () => {
  expect(codes(stage(start, "step { isolate start lock-out start restore start }"))).toEqual(["hazard/order"]);
  expect(codes(stage(start, "step { isolate start lock-out start try-start start restore start }"))).toEqual([]);
  // Touched without it: said there.
  expect(codes(stage(start, `step { isolate start lock-out start ${off} fit guard fit gs restore start }`))).toEqual([
    "hazard/not-yet",
  ]);
});

test("what `finish` puts up, opens or takes off it puts right itself, since no way back comes after it", () => {
  const finish = (acts: string): string => stage(start, `step { note "Nothing." } finish { ${acts} }`);
  expect(says(finish("isolate start lock-out start try-start start"))).toEqual([
    "Isolate and lock-out for Fan can start still stand at the end: restore start takes them back",
  ]);
  expect(codes(finish("isolate start lock-out start try-start start restore start"))).toEqual([]);
  const opened = "isolate start lock-out start try-start start undo gs remove guard";
  expect(says(finish(`${opened} fit guard restore start`))).toEqual([
    "Fan can start is restored while Guard is held by nothing",
  ]);
  expect(says(finish(`${opened} fit guard fit gs restore start`))).toEqual([]);
});
