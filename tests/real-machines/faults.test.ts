// What is wrong in the use of a construct of real machines is found once, at its line, in words of the trade.

import { expect, test } from "vitest";
import { buildsIn, codes, order, stage, stand } from "./stand.ts";

const lid = `part lid "Lid"\n part cover "Cover"\n fastener ls screw "Lid screws" { count 4 joins lid to b }\n fastener cs screw "Cover screws" { count 2 joins cover to b }`;
const openLid = `step "Lid" { undo ls remove lid }`;
const found = (text: string): readonly string[] => stand(text).findings;

test("a task that leaves out a step that its own rest on", () => {
  const facts = `part lid "Lid"\n part card "Card" { fits b behind lid }\n fastener ls screw "Lid screws" { count 4 joins lid to b }`;
  const of = (does: string): readonly string[] =>
    found(
      stage(
        facts,
        `step a "Lid" { undo ls remove lid } step c "Card" { remove card }`,
        `task card-only "Card only" does ${does}`,
      ),
    );
  expect(of("c")).toEqual(["sequence/task: Card only cannot be done alone: Lid is in front of it"]);
  expect(of("a, c")).toEqual([]);
});

test("a task that forgets the precautions", () => {
  const facts = `${lid}\n hazard start rotating danger "Start" { on cs precaution isolate "Off." precaution lock-out "Lock." precaution try-start "Try." }`;
  const steps = `step off "Off" { isolate start lock-out start try-start start } step c "Cover" { undo cs remove cover }`;
  expect(codes(stage(facts, steps, `task cover-only "Cover only" does c`))).toEqual(["sequence/task"]);
  expect(codes(stage(facts, steps, `task cover-only "Cover only" does off, c`))).toEqual([]);
});

test("what is left until a procedure is not put right by it", () => {
  const text = (step: string): string =>
    `${stage(lid, openLid, `leaves finger-tight ls until q`)}procedure q "Q" for u { step "T" { ${step} } }\n`;
  expect(codes(text("tighten ls"))).toEqual([]);
  expect(stand(text("undo cs remove cover"), "q").findings).toEqual([
    "refit/missing: Lid screws are left finger-tight at the end",
  ]);
});

test("a part that is left off takes what held it along, and none of its precautions is taken back", () => {
  const facts = `${lid}\n hazard line pressure danger "Line" { on ls precaution isolate "Close." back "Open slowly." precaution prove-zero "Gauge." at most 0.1 bar }`;
  const steps = `step "Lid" { isolate line prove-zero line with gauge undo ls remove lid }`;
  const shop = 'tool gauge "Gauge"\n',
    left = stand(shop + stage(facts, steps, "leaves off lid")),
    whole = stand(shop + stage(facts, steps));
  expect(left.findings).toEqual([]);
  expect(left.refit.join("\n")).not.toContain("Open slowly");
  expect(left.refit).toEqual([
    "Left at the end: the lid off.",
    "Not taken back here, work is left open: isolate, line.",
  ]);
  expect(whole.refit.join("\n")).toContain("Open slowly");
});

test("some of a group left out are counted once, over several acts", () => {
  const s = stand(stage(lid, `step "Lid" { undo 1 of ls undo rest of ls remove lid }`, "leaves out 1 of ls"));
  expect(s.findings).toEqual([]);
  expect(s.refit.filter((line) => line.includes("lid screws"))).toEqual([
    "Fit and tighten 3 of the 4 lid screws. · Torque not given.",
    "Left at the end: 1 of the 4 lid screws out.",
  ]);
});

test("a part that is not there at the start hides nothing and holds nothing", () => {
  const facts = `part lid "Lid"\n part card "Card" { fits b behind lid }\n fastener ls screw "Lid screws" { count 4 joins lid to b }`;
  expect(codes(stage(facts, `step { remove card }`))).toEqual(["sequence/blocked"]);
  expect(codes(stage(facts, `step { remove card }`, "starts without lid"))).toEqual([]);
});

test("no stage is skipped, and the last is reached", () => {
  const facts = `part lid "Lid"\n fastener ls bolt "Lid bolts" { count 4 stages 10 N·m, 20 N·m, 90 deg joins lid to b }`;
  const of = (refit: string): readonly string[] =>
    found(stage(facts, `step "Lid" { undo ls remove lid refit { ${refit} } }`));
  expect(of("fit ls finger-tight tighten ls to stage 1 tighten ls to stage 2 tighten ls to stage 3")).toEqual([]);
  expect(of("tighten ls to stage 1 tighten ls to stage 3")).toEqual([
    "refit/impossible: Lid bolts cannot be tightened: stage 2 comes before stage 3",
  ]);
  expect(of("tighten ls to stage 1 tighten ls to stage 2")).toEqual([
    "refit/missing: Lid bolts are left at stage 2 of 3 at the end",
  ]);
});

test("each stage prints its own torque alone", () => {
  const facts = `part lid "Lid"\n fastener ls bolt "Lid bolts" { count 4 stages 10 N·m, 90 deg back-out 1/4 turn joins lid to b }`;
  const s = stand(
    stage(
      facts,
      `step "Lid" { undo ls remove lid refit { fit ls finger-tight tighten ls to stage 1 tighten ls to stage 2 } }`,
    ),
  );
  expect(s.refit.slice(1)).toEqual([
    "Fit the 4 lid bolts finger-tight. · The torque comes later.",
    "Tighten the 4 lid bolts to stage 1. · Torque: 10 N·m (89 lbf·in).",
    "Tighten the 4 lid bolts to stage 2. · Torque: 90 deg, then back out 1/4 turn.",
  ]);
});

test("a fastener put in where its part is off", () => {
  expect(found(stage(lid, `step "Lid" { undo ls remove lid fit ls }`))).toEqual([
    "refit/impossible: Lid screws cannot go on: Lid is not on yet",
  ]);
});

test("a trial assembly is no part of the refit", () => {
  const s = stand(
    stage(
      lid,
      `step "Lid" { undo ls remove lid fit lid fit 2 of ls finger-tight measure gap "Gap" at most 0.2 mm undo ls remove lid }`,
    ),
  );
  expect(s.findings).toEqual([]);
  expect(s.refit).toEqual(["Fit the lid.", "Fit and tighten the 4 lid screws. · Torque not given."]);
});

test("what was scrapped is not used again", () => {
  const text = stage(
    lid,
    `step a { undo ls remove lid inspect wear on lid "Not worn" if wear fails { scrap lid } refit { reuse lid } }`,
  );
  expect(found(text)).toEqual(["fastener/one-time-reused: Lid was scrapped before"]);
});

test("a reading that fails in a build renews for certain there", () => {
  const text = stage(
    lid,
    `step a { undo ls remove lid inspect bore on lid "No scores" else renew lid if bore fails note "New lid." }`,
  );
  expect(buildsIn(text)).toEqual(["plain", "bore failing"]);
  expect(stand(text).bill.map((l) => [l.name, l.grade])).toEqual([["Lid", "worn"]]);
  expect(stand(text, "p", "bore failing").bill.map((l) => [l.name, l.grade])).toEqual([["Lid", "certain"]]);
});

test("shims to choose from are in the stores list, with the unit that stands last", () => {
  const s = stand(
    stage(
      `${lid}\n part shims shim "Shims" { count 2 between lid and b }`,
      `step a { undo ls remove lid remove shims measure gap "Gap" 0.1..0.2 mm else choose shims from 0.10, 0.20, 0.30 mm }`,
    ),
  );
  expect(s.bill.map((l) => [l.name, l.perUnit.pieces, l.reasons])).toEqual([["Shims", 2, ["chosen"]]]);
  expect(s.strip.find((line) => line.startsWith("Measure"))).toContain(
    "choose the shims from 0.10 mm, 0.20 mm and 0.30 mm",
  );
  expect(s.refit.find((line) => line.includes("shims"))).toContain("Of the size that the reading asked for.");
});

test("a step to repeat from that is none", () => {
  expect(
    stand(
      stage(lid, `step a { undo ls remove lid measure gap "Gap" at most 0.2 mm else repeat from zz }`),
    ).checked.findings.map((f) => f.code),
  ).toContain("names/unknown");
});

test("what has to be caught is not blown out or pumped out while it is aboard", () => {
  const facts = `part pipe "Pipe"\n joint pu pipe-union "Union" { joins pipe to b opens gas }\n fluid gas refrigerant "Refrigerant" { amount 600 g }`;
  const of = (acts: string): readonly string[] => found(stage(facts, `step { ${acts} undo pu remove pipe }`));
  expect(of("recover gas purge gas")).toEqual([]);
  expect(of("purge gas recover gas")).toEqual([
    "hazard/not-recovered: Refrigerant is to be recovered before it is purged",
  ]);
  expect(of("evacuate gas recover gas")).toEqual([
    "hazard/not-recovered: Refrigerant is to be recovered before it is evacuated",
  ]);
});

test("a circuit is pumped out between its last joint and its fill, a brake bled after it, said or not", () => {
  const gas = `part pipe "Pipe"\n joint pu pipe-union "Union" { joins pipe to b opens gas }\n fluid gas refrigerant "Refrigerant" { amount 600 g }`;
  for (const refit of ["", "refit { evacuate gas }"]) {
    expect(stand(stage(gas, `step { recover gas undo pu remove pipe ${refit} }`)).refit.slice(1)).toEqual([
      "Make and tighten the union.",
      "Evacuate the circuit of the refrigerant.",
      "Fill the refrigerant (600 g).",
    ]);
  }
  const brake = `part hose "Hose"\n joint hu pipe-union "Union" { joins hose to b opens bf }\n fluid bf brake-fluid "Brake fluid" { volume 1 L }`;
  expect(stand(stage(brake, `step { recover bf undo hu remove hose }`)).refit.slice(-2)).toEqual([
    "Fill the brake fluid (1 L).",
    "Bleed the brake fluid.",
  ]);
});

test("a torque table without the thread", () => {
  const text = `torque-table dry "Dry" { size M6 9 N·m }\n${stage(`part lid "Lid"\n fastener ls "Lid screws" { size M8 torque standard dry joins lid to b }`, openLid)}`;
  expect(found(text)).toEqual(["fastener/torque-not-in-table: Lid screws: the table Dry has no torque for M8"]);
});

test("loosened twice is tightened once", () => {
  expect(order(stage(lid, `step { loosen ls back-out ls undo ls remove lid }`))).toEqual([
    "fitting Lid",
    "fitting finger-tight Lid screws",
    "tightening Lid screws",
  ]);
});

test("the order of a part takes what holds it along", () => {
  const text = stage(`${lid}\n order lid before cover`, `step { undo ls remove lid } step { undo cs remove cover }`);
  expect(order(text)).toEqual(["fitting Lid", "fitting Lid screws", "fitting Cover", "fitting Cover screws"]);
});

test("a written refit begins where its strip ended, said or not", () => {
  const text = (need: string): string =>
    `${stage(lid, openLid, "refit by back")}procedure back "Back" for u { aim all in ${need} step "On" { fit lid fit ls } }\n`;
  expect(codes(text(""))).toEqual([]);
  expect(codes(text("needs p"))).toEqual([]);
});

test("another base: the rest of the unit moves", () => {
  const s = stand(stage(lid, `step { undo ls remove lid }`, "refit { base lid }"));
  expect(s.findings).toEqual([]);
  expect(s.refit[0]).toBe("Fit the base to the lid.");
});

test("steps inside instead have their own titles", () => {
  const s = stand(
    stage(
      lid,
      `step "Lid" { undo ls remove lid refit { instead { step "Set the lid" { fit lid } step "Close it" { fit ls } } } }`,
    ),
  );
  expect(s.lines.refit.map((group) => group.title).join("; ")).toMatch(/Set the lid.*Close it/);
});

test("variants are passed to units inside; a shared name is one choice", () => {
  const inner = `unit g "Gearbox" {\n variants short, long\n base case\n part case "Case"\n if long part ext "Extension" { fits case }\n}\n`;
  const text =
    inner +
    stage(
      ` variants short, long\n part box "Box" { is unit g }\n fastener gs "Box screws" { joins box to b }`,
      `step { undo gs remove box }`,
    );
  expect(buildsIn(text)).toEqual(["short", "long"]);
  const has = (build: string): boolean =>
    stand(text, "p", build).performance.model.parts.some((part) => part.declared === "ext");
  expect([has("short"), has("long")]).toEqual([false, true]);
});

test("things of several alike units are told apart by their part, of one unit they are not", () => {
  const inner = `unit g "Gearbox" {\n base case\n part case "Case"\n part lid "Gear lid"\n fastener gl "Gear screws" { count 2 joins lid to case }\n}\nprocedure open "Open" for g { step { undo gl remove lid } }\n`;
  const of = (pieces: string, on: string): readonly string[] =>
    stand(
      inner +
        stage(
          `part box "Box" { is unit g ${pieces} }\n fastener gs "Box screws" { ${pieces} joins box to b }`,
          `do open on ${on}`,
        ),
    ).strip;
  expect(of("", "box")).toEqual(["Undo the 2 gear screws.", "Remove the gear lid."]);
  expect(of("pieces left, right", "box.left")).toEqual([
    "Undo the 2 gear screws (Box left).",
    "Remove the gear lid (Box left).",
  ]);
});

test("a procedure of the same unit may be done on a part of it", () => {
  const facts = `part box "Box"\n fastener bs "Box screws" { joins box to b }\n part card "Card"\n fastener cs "Card screw" { joins card to box }`;
  const inner = `procedure inner "Inner" for u { aim card off starts on bench step "Card" { undo cs remove card } }\n`;
  expect(codes(stage(facts, "step { undo bs remove box } do inner on box", "aim card off") + inner)).toEqual([]);
  expect(codes(stage(facts, "do inner on box", "aim card off") + inner)).toEqual(["sequence/blocked"]);
});

test("pieces that have their own place say so in both halves", () => {
  const s = stand(stage(`part cap "Cap" { pieces 1..2 own-place fits b }`, "step { remove cap }"));
  expect([...s.strip, ...s.refit]).toEqual([
    "Remove cap 1 and 2. · Keep each with its place: it goes back there.",
    "Fit cap 2 and 1. · Back in its own place.",
  ]);
});

test("a bolt that may be used some times more counts them", () => {
  const s = stand(
    stage(
      `part lid "Lid"\n fastener ls bolt "Lid bolts" { count 4 torque 9 N·m reuse 3 times joins lid to b }`,
      openLid,
    ),
  );
  expect(s.refit[1]).toBe(
    "Fit and tighten the 4 lid bolts. · Torque: 9 N·m (80 lbf·in). · May be used again 3 times: count it, then new.",
  );
});

test("a message on a kind prints once before a line that handles several of it", () => {
  const facts = ` warn caution "Sharp edge." on shim\n part s1 shim "Shim 1" { fits b } part s2 shim "Shim 2" { fits b }`;
  expect(stand(stage(facts, "step { remove s1, s2 }")).refit).toEqual([
    "caution: Sharp edge.",
    "Fit the shim 2 and the shim 1.",
  ]);
});

test("a refit that takes out what the strip put in says how many", () => {
  const s = stand(stage(lid, `step "Lid" { undo ls remove lid fit lid fit 2 of ls finger-tight }`));
  expect(s.refit[0]).toBe("Undo 2 of the 4 lid screws.");
});

test("a procedure for another unit, with a part of it and without", () => {
  const inner = `unit g "Gearbox" {\n base case\n part case "Case"\n part lid "Gear lid" { rests on case }\n}\nprocedure open "Open" for g { step { remove lid } }\n`;
  const of = (act: string): readonly string[] =>
    stand(
      inner + stage(`part box "Box" { is unit g rests on b }\n part motor "Motor" { rests on b }`, `step { ${act} }`),
    ).findings;
  expect(of("do open on box")).toEqual([]);
  expect(of("do open on motor")).toEqual([
    "sequence/other-unit: Open is for g, and is done here on u: name the part that is one",
  ]);
  expect(of("do open")).toEqual([
    "sequence/other-unit: Open is for g, and is done here on u: name the part that is one",
  ]);
});

test("start, end and what follows are printed where they are due", () => {
  const s = stand(
    `${stage(lid, openLid, `needs "Line shut down" then "Line may go back." starts without 1 of ls leaves finger-tight cs "Greased." until q`)}procedure q "Set it" for u { step { tighten cs } }\n`,
  );
  expect(s.strip[0]).toBe("At the start: without 1 of the 4 lid screws.");
  expect(s.refit.at(-1)).toBe("Left at the end: the cover screws finger-tight, until: Set it. Greased.");
  expect(s.finish).toEqual(["Afterwards: Line may go back."]);
});

test("a repeat in a branch is printed, with what it hangs on", () => {
  const text = stage(
    lid,
    `step a "Lid" { undo ls remove lid measure gap "Gap" at most 0.2 mm otherwise { repeat from a } }`,
  );
  expect(stand(text, "p", "gap failing").strip.at(-1)).toBe("(If gap is not as it should be) Repeat from step 1, Lid.");
});

test("a new piece with a name of its own is printed as new", () => {
  const s = stand(stage(`part cap "Cap" { pieces left, right fits b renew always }`, "step { remove cap.left }"));
  expect(s.refit).toEqual(["Fit new cap left."]);
});

test("words on one piece stand before that piece alone", () => {
  const s = stand(
    stage(
      `part cap "Cap" { pieces 1..2 fits b piece 2 { caution "This one is heavier." } }`,
      "step { remove cap.1 remove cap.2 }",
    ),
  );
  expect(s.strip).toEqual(["Remove cap 1.", "caution: This one is heavier.", "Remove cap 2."]);
});

test("two procedures that leave something until each other come to an end", () => {
  const text = `${stage(lid, openLid, "leaves finger-tight ls until q")}procedure q "Q" for u { leaves finger-tight cs until p step { undo cs remove cover tighten ls } }\n`;
  expect(stand(text).performance.procedure.id).toBe("p");
  expect(stand(text, "q").findings).toEqual(["refit/missing: Cover screws are left finger-tight at the end"]);
});

test("marks on what is screwed, tags on what is a part, and one alignment of several pieces are printed where they go back", () => {
  const s = stand(
    stage(
      `part hose hose "Hose" { mass 1 kg } part pipe hose "Pipe" { mass 1 kg }
       part race bearing "Race" { pieces 1, 2 fits b align by "Arrow up." }
       joint h pipe-union "Hose end" { joins hose to b } joint p pipe-union "Pipe end" { joins pipe to b }
       fastener nut nut "Nut" { torque 9 N·m into b }`,
      `step { tag hose, pipe as H1, H2  mark nut, b as M "One line."  undo h, p  remove hose, pipe  undo nut  remove race }`,
    ),
  );
  expect(s.refit).toEqual([
    "Fit race 2 and 1. · Alignment: Arrow up.",
    "Fit and tighten the nut. · Torque: 9 N·m (80 lbf·in). · Line up the mark M: One line.",
    "Fit the pipe and the hose. · By the tags: H2 (the pipe). · By the tags: H1 (the hose).",
    "Make and tighten the pipe end and the hose end.",
  ]);
});

test("a tool and people that a sentence has no place for stand under it, in both halves", () => {
  const facts = `positions flat, upright part hose hose "Hose" { mass 1 kg } joint h pipe-union "End" { joins hose to b } fluid oil oil "Oil" { volume 1 L uses hlp }`;
  const s = stand(
    `${stage(facts, `step { turn upright with rig by 2 people  cap hose with plugs  undo h with rig  slide hose with rig  refit { tighten h with rig  reverse } } finish { fill oil with rig  inspect hose "Dry" with rig }`)}tool rig "Rig" tool plugs "Plugs" consumable hlp "HLP"\n`,
  );
  expect(s.strip).toEqual([
    "Turn the unit: upright. · With: rig. · People: 2.",
    "Cap the hose. · With: plugs.",
    "Undo the end with the rig.",
    "Slide the hose aside. Leave attached. · With: rig.",
  ]);
  expect(s.refit.join("\n")).toContain("Make and tighten the end. · With: rig.");
  expect(s.finish).toEqual(["Fill the oil (1 L). · With: HLP. · With: rig.", "Inspect the hose: Dry. · With: rig."]);
});
