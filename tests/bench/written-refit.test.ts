// A written refit is judged by performing it, by the same rules read forward: each rule by its name.

import { expect, test } from "vitest";
import { linesOf } from "../../language/outputs/lines/groups.ts";
import { options } from "../outputs/outputs-of.ts";
import { check, codes, findings, stage } from "./refit/stage.ts";

const lid = `part lid "Lid"\n part card "Card" { behind lid }\n fastener screws screw "Screws" { count 4 joins lid to b }\n fastener cs screw "Card screws" { count 2 joins card to b behind lid }`;
const apart = "step { undo screws remove lid undo cs remove card }";
const together = (facts: string, steps: string, back: string): string =>
  stage(facts, steps) + `procedure q "Q" for u {\n aim all in\n needs p\n step {\n ${back}\n }\n}\n`;

test("a written refit that puts back all, in an order that the bench allows, is clean", () => {
  expect(codes(together(lid, apart, "fit card fit cs fit lid fit screws"))).toEqual([]);
});

test("not fitted while something that it is behind is in place", () => {
  expect(codes(together(lid, apart, "fit lid fit screws fit card fit cs"))).toEqual(["refit/impossible"]);
});

test("not tightened while something that it is behind is in place", () => {
  expect(codes(together(lid, apart, "fit card fit cs finger-tight fit lid tighten cs fit screws"))).toEqual([
    "refit/impossible",
  ]);
});

test("both sides of a tie are in one sub-assembly", () => {
  expect(codes(together(lid, apart, "fit cs fit card fit lid fit screws"))).toEqual(["refit/impossible"]);
});

test("what is left over is missing, where the strip took it off", () => {
  const [found] = findings(together(lid, apart, "fit card fit cs fit lid"));
  expect(found).toMatchObject({ code: "refit/missing" });
  expect(found!.says).toContain("Screws");
});

test("what is left finger-tight is missing its torque", () => {
  expect(codes(together(lid, apart, "fit card fit cs finger-tight fit lid fit screws"))).toEqual(["refit/missing"]);
  expect(codes(together(lid, apart, "fit card fit cs finger-tight tighten cs fit lid fit screws"))).toEqual([]);
});

test("what is on already is not fitted again, and what is in is not made again", () => {
  expect(codes(together(lid, "step { undo screws remove lid }", "fit card fit lid fit screws"))).toEqual([
    "refit/impossible",
  ]);
  expect(codes(together(lid, "step { undo screws remove lid }", "fit lid fit screws fit screws"))).toEqual([
    "refit/impossible",
  ]);
});

test("what is not in cannot be tightened", () => {
  expect(codes(together(lid, apart, "fit card tighten cs fit lid fit screws"))).toEqual(["refit/impossible"]);
});

test("a fastener fitted under a wrong name is one finding", () => {
  expect(codes(together(lid, apart, "fit card fit cs fit lid fit cs"))).toHaveLength(1);
});

test("a between-part is in before the first tie between its sides", () => {
  const facts = `part lid "Lid"\n part ring o-ring "Ring" { between lid and b renew always }\n fastener screws screw "Screws" { joins lid to b }`;
  expect(codes(together(facts, "step { undo screws remove lid remove ring }", "fit lid fit ring fit screws"))).toEqual(
    [],
  );
  expect(codes(together(facts, "step { undo screws remove lid remove ring }", "fit lid fit screws fit ring"))).toEqual([
    "refit/impossible",
  ]);
});

test("a mark is lined up before the first tie made after its parts meet", () => {
  const steps = "step { mark lid, b as M1 undo screws remove lid }";
  expect(codes(together(lid, steps, "fit lid align M1 fit screws"))).toEqual([]);
  expect(codes(together(lid, steps, "fit lid fit screws align M1"))).toEqual(["refit/mark-unused"]);
});

test("a mark that nobody made is not lined up", () => {
  expect(codes(together(lid, "step { undo screws remove lid }", "fit lid align M1 fit screws"))).toContain(
    "refit/mark-unmade",
  );
});

test("`order` of the unit holds for a written refit too", () => {
  const facts = `part x "X" { rests on b }\n part y "Y" { rests on b }\n order x after y`;
  expect(codes(together(facts, "step { remove x remove y }", "fit y fit x"))).toEqual([]);
  expect(codes(together(facts, "step { remove x remove y }", "fit x fit y"))).toEqual(["refit/contradiction"]);
});

test("a fill comes after every joint of its fluid", () => {
  const facts = `part pipe "Pipe"\n joint union pipe-union "Union" { joins pipe to b opens oil }\n fastener plug plug "Plug" { into b }\n fluid oil oil "Oil" { volume 1 L drains at plug fills at plug path pipe }`;
  const steps = "step { drain oil undo union remove pipe }";
  expect(codes(together(facts, steps, "fit pipe fit union fit plug fill oil"))).toEqual([]);
  expect(codes(together(facts, steps, "fit pipe fit plug fill oil fit union"))).toEqual(["refit/impossible"]);
  expect(codes(together(facts, steps, "fit pipe fit union fit plug"))).toEqual(["refit/fluid-short"]);
});

test("a spent part that must be new is not used again", () => {
  const facts = `part lid "Lid"\n part ring o-ring "Ring" { between lid and b renew always }\n fastener screws screw "Screws" { joins lid to b }`;
  expect(
    codes(together(facts, "step { undo screws remove lid remove ring }", "reuse ring fit ring fit lid fit screws")),
  ).toEqual(["fastener/one-time-reused"]);
});

test("what an earlier procedure took out does not count as left in the joint", () => {
  const facts = `part lid "Lid"\n part cup "Cup" { behind lid }\n part ring o-ring "Ring" { between lid and cup renew always }\n fastener screws screw "Screws" { count 2 joins lid to cup }\n fastener nuts nut "Nuts" { count 2 joins cup to b }`;
  const first = stage(facts, "step { undo screws remove lid RING }");
  const second = `procedure q "Q" for u { needs p step { undo nuts remove cup } }`;
  expect(codes(first.replace("RING", "remove ring") + second)).toEqual([]);
  expect(codes(first.replace("RING", "") + second)).toEqual(["removal/old-stays"]);
});

test("what must be new every time does not stay in a joint that was opened", () => {
  const facts = `part lid "Lid"\n part ring o-ring "Ring" { between lid and b renew always }\n fastener screws screw "Screws" { joins lid to b }`;
  expect(findings(stage(facts, "step { undo screws remove lid }"))).toMatchObject([
    { code: "removal/old-stays", severity: "warning" },
  ]);
  expect(codes(stage(facts, "step { undo screws remove lid remove ring }"))).toEqual([]);
  expect(
    codes(stage(facts.replace(" renew always", " renew when damaged"), "step { undo screws remove lid }")),
  ).toEqual([]);
});

test("by kind alone it is a question", () => {
  const facts = `part lid "Lid"\n part ring o-ring "Ring" { between lid and b }\n fastener screws screw "Screws" { joins lid to b }`;
  expect(findings(stage(facts, "step { undo screws remove lid remove ring }"))).toMatchObject([
    { code: "refit/seal-reused", severity: "question" },
  ]);
});

test("in a written refit as well, where it goes back in", () => {
  const facts = `part lid "Lid"\n part ring o-ring "Ring" { between lid and b }\n fastener screws screw "Screws" { joins lid to b }`,
    written = (back: string): string[] =>
      codes(together(facts, "step { undo screws remove lid remove ring } refit by q", back));
  expect(written("fit ring fit lid fit screws")).toEqual(["refit/seal-reused"]);
  expect(written("renew ring fit ring fit lid fit screws")).toEqual([]);
  expect(written('reuse ring "No set." fit ring fit lid fit screws')).toEqual([]);
});

test("a reason answers the question, and is printed; without one it stays", () => {
  const facts = `part lid "Lid"\n part ring o-ring "Ring" { between lid and b }\n fastener screws screw "Screws" { joins lid to b }`,
    said = (why: string): string[] =>
      findings(stage(facts, `step { undo screws remove lid remove ring refit { reuse ring ${why} } }`)).map(
        ({ says }) => says,
      );
  expect(said('"Moulded, no set."')).toEqual([]);
  expect(said("")).toEqual(["Ring is used again, and nothing says why"]);
  const { performances } = check(
    stage(facts, 'step { undo screws remove lid remove ring refit { reuse ring "Moulded, no set." } }'),
  );
  const lines = linesOf(performances[0]!, options).refit.flatMap((group) => group.lines);
  expect(lines).toContainEqual(
    expect.objectContaining({ says: "Use the old one again: ring.", text: "Moulded, no set." }),
  );
});

test("what keeps a fastener from coming undone, and what a hazard is on, is asked for whatever the reason", () => {
  const said = (part: string, hazard = "", before = ""): string[] =>
    findings(
      stage(
        `part lid "Lid"\n ${part}\n fastener screws screw "Screws" { joins lid to b }\n ${hazard}`,
        `step { ${before} undo screws remove lid remove it refit { reuse it "Looks good." } }`,
      ),
    )
      .filter(({ code }) => code === "refit/seal-reused")
      .map(({ says }) => says);
  expect(said('part it split-pin "Pin" { rests on b }')).toEqual([
    "Pin is used again, and it keeps what it secures from coming undone",
  ]);
  expect(said('part it tab-washer "Tab washer" { rests on b }')).toHaveLength(1);
  expect(
    said(
      'part it gasket "Gasket" { between lid and b }',
      'hazard air pressure danger "Pressure" { on it  precaution vent "Open the cock." precaution prove-zero "Read the gauge." }',
      "vent air prove-zero air",
    ),
  ).toEqual(["Gasket is used again, and Pressure is on it"]);
});

test("no stage of tightening is skipped", () => {
  const facts = `part lid "Lid"\n fastener screws screw "Screws" { count 4 stages 20 N·m, 40 N·m, 60 N·m joins lid to b }`;
  expect(
    codes(
      together(
        facts,
        "step { undo screws remove lid }",
        "fit lid fit screws finger-tight tighten screws to stage 1 tighten screws to stage 2 tighten screws to stage 3",
      ),
    ),
  ).toEqual([]);
  expect(
    codes(
      together(
        facts,
        "step { undo screws remove lid }",
        "fit lid fit screws finger-tight tighten screws to stage 1 tighten screws to stage 3",
      ),
    ),
  ).toEqual(["refit/impossible"]);
});

test("what is put on for a while and not taken off is a finding", () => {
  const facts = `${lid}\n temporary felt "Felt"`;
  expect(codes(stage(facts, "step { undo screws remove lid put felt on card take felt off }"))).toEqual([]);
  expect(codes(stage(facts, "step { undo screws remove lid put felt on card }"))).toEqual(["refit/temporary-left"]);
});

test("what is written back against a hazard or a fluid that the computed way back leaves alone is done as it is written", () => {
  const guarded = `${lid}\n hazard h electrical danger "H" { on lid precaution isolate "A." back "B." precaution prove-dead "T." at most 12 V dc with tester }`,
    proved = (back: string): string =>
      stage(guarded, `step { isolate h prove-dead h undo screws remove lid refit { ${back} } }`);
  // A proof is not taken back, so that nothing but the isolation answers.
  expect(codes(proved("reverse restore h"))).toEqual([]);
  expect(codes(proved("restore h reverse"))).toEqual(["refit/contradiction"]);
  expect(codes(proved("reverse prove-dead h"))).toEqual(["hazard/order"]);
  const oil = `${lid}\n fastener plug plug "Plug" { into b }\n fluid oil oil "Oil" { volume 1 L drains at plug fills at plug }`;
  expect(
    codes(stage(oil, "leaves drained oil step { drain oil undo screws remove lid refit { fill oil reverse } }")),
    // Done, so that it is not left drained any more.
  ).toEqual(["refit/not-left"]);
});
