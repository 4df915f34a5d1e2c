// A step that nobody wrote is one mistake, however many acts lack what it would have done to parts that belong together; acts that lack
// something of other parts, what one step could not have done together, or what a line does at the wrong place, are mistakes of their own.

import { expect, test } from "vitest";
import { findings, stage } from "../bench/refit/stage.ts";

const facts = `part guard "Guard"\n part hood "Hood"\n part core "Core" { behind guard }\n part shaft "Shaft" { behind hood }\n part pin "Pin" { behind core }
 fastener gs screw "Guard screws" { joins guard to b }\n fastener hs screw "Hood screws" { joins hood to b }
 fastener cs screw "Core screws" { joins core to b  behind guard }\n fastener ss screw "Shaft screws" { joins shaft to b  behind hood }
 fastener ps screw "Pin screws" { joins pin to b  behind core }
 hazard air pressure danger "Air" { on ss  precaution vent "Open."  precaution prove-zero "Gauge." }`;
const guards = "undo gs  remove guard  undo hs  remove hood  vent air",
  work = "undo cs\n remove core\n undo ss\n remove shaft\n undo ps\n remove pin";
const said = (acts: string): { lines: string[]; because: string[] } => {
  const text = stage(facts, `step { ${acts} }`, "aim core, shaft, pin off"),
    found = findings(text).filter(({ severity }) => severity === "error");
  return {
    lines: found.map(({ code, at }) => `${code}: ${text.slice(at.start, at.end)}`),
    because: found.flatMap(({ because }) => because.map(({ says }) => says)),
  };
};
const proved = `${guards}  prove-zero air`;

test("with the step nothing is found; without it what it would have done to parts that belong together is one finding", () => {
  expect(said(`${proved}\n ${work}`).lines).toEqual([]);
  const { lines, because } = said(
    `undo gs  remove guard  undo cs\n remove core\n undo ss\n remove shaft\n undo ps\n remove pin`,
  );
  expect(lines).toEqual(["hazard/not-yet: undo ss"]);
  // Nothing of it is left out, and the precautions are in front.
  expect(because.join()).toContain("Hood is in front of");
});

test("what is about parts that have nothing to do with each other is said at each of its lines", () => {
  expect(said(work).lines).toEqual(["sequence/blocked: undo cs", "hazard/not-yet: undo ss"]);
  // A hazard that was forgotten, and screws of another part: two lines that the author forgot.
  expect(
    said("undo gs  remove guard  undo hs  remove hood\n remove core\n undo ss\n remove shaft\n undo ps\n remove pin")
      .lines,
  ).toEqual(["sequence/still-held: remove core", "hazard/not-yet: undo ss"]);
});

test("what one step could not have done at that place is a mistake of its own", () => {
  // The core is taken off between: nobody could have undone the pin's screws before the guard's line.
  const { lines } = said(
    `undo hs  remove hood  vent air  prove-zero air\n undo cs\n remove core\n undo ss\n remove shaft\n remove pin`,
  );
  expect(lines).toEqual(["sequence/blocked: undo cs", "sequence/still-held: remove pin"]);
});

test("a hazard that is half made still is a mistake of its own, and so is a line that stands too late", () => {
  expect(said(`undo gs  remove guard  undo hs  remove hood  vent air\n ${work}`).lines).toEqual([
    "hazard/not-yet: undo ss",
  ]);
  expect(said(`vent air\n ${work}`).lines).toEqual(["sequence/blocked: undo cs", "hazard/not-yet: undo ss"]);
  expect(
    said(
      `vent air  prove-zero air\n undo cs\n remove core\n undo ss\n remove shaft\n undo ps\n remove pin  undo hs\n remove hood`,
    ).lines,
  ).toHaveLength(2);
});

test("an allow of the first takes none of the others away", () => {
  const { lines } = said(
    `undo cs\n remove core\n# allow hazard/not-yet: by the works rule\n undo ss\n remove shaft\n undo ps\n remove pin`,
  );
  expect(lines).toContain("sequence/blocked: undo cs");
});
