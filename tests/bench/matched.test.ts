// `matched with`: parts of one set though each is declared by itself. Kept together, back to each other, renewed as a set.
// That a race, a cone and their rollers, a valve and its seat, or a pair of gears are kept and renewed together is common practice.

import { expect, test } from "vitest";
import { matchedSets } from "../../language/bench/matched.ts";
import { billOf } from "../../language/bill/bill.ts";
import { billData } from "../../language/outputs/bill/data.ts";
import { compiledText, options } from "../outputs/outputs-of.ts";
import { stand } from "../real-machines/stand.ts";
import { check, findings, stage } from "./refit/stage.ts";

const says = (facts: string, acts: string): string[] =>
  findings(stage(facts, `step s "S" { ${acts} }`, "aim none")).map((finding) => `${finding.code} ${finding.says}`);
const sets = (facts: string): string[] => {
  const { model } = check(stage(facts, "", "aim none")).performances[0]!;
  return [...new Set(matchedSets(model).values())].map((set) => set.map(({ id }) => id).join(" "));
};

const bearing = (rule = ""): string =>
  `part race "Race" { fits b by slide-fit }\npart cone "Cone" { rests on race  matched with race  ${rule} }`;
const valves = `part seat "Seat" { pieces 1, 2  fits b }\npart valve "Valve" { pieces 1, 2  fits seat  matched with seat }`;

test("said once, on whichever part, it holds for all; pieces of the same name pair up", () => {
  expect(sets(bearing())).toEqual(["race cone"]);
  expect(sets(valves)).toEqual(["seat.1 valve.1", "seat.2 valve.2"]);
  expect(
    sets(
      `part race "R" { fits b  matched with cage }\npart cage "K" { rests on race }\npart cone "C" { rests on race  matched with cage }`,
    ),
  ).toEqual(["race cage cone"]);
  expect(sets(`part race "R" { fits b }\npart cone "C" { rests on race }`)).toEqual([]);
});

test("renewed as a set, all that is matched is the set, and where nobody says so it is not", () => {
  const alone = "refit/set-broken Cone is renewed without Race, and they are renewed as a set";
  expect(says(bearing("renew as-a-set"), "remove cone, race renew cone")).toEqual([alone]);
  expect(says(bearing("renew as-a-set"), "remove cone, race renew cone, race")).toEqual([]);
  expect(says(bearing("renew as-a-set"), "remove cone, race renew race")[0]).toContain("Race is renewed without Cone");
  expect(says(bearing(), "remove cone, race renew cone")).toEqual([]);
  // Of numbered sets each is one: number 1 is new, number 2 stays.
  const numbered = valves.replace("matched", "renew as-a-set  matched");
  expect(says(numbered, "remove valve, seat renew valve.1, seat.1")).toEqual([]);
  expect(says(numbered, "remove valve, seat renew valve.1")).toEqual([
    "refit/set-broken Valve 1 is renewed without Seat 1, and they are renewed as a set",
  ]);
});

test("the bill counts each of the set, as many as go to one", () => {
  const text = stage(bearing("renew as-a-set"), `step s "S" { remove cone, race renew cone }`, "aim none");
  const lines = billOf(compiledText(text).performances.slice(0, 1), { units: 2, beadWaste: 0 }).lines;
  expect(lines.map(({ name, total, lot, grade }) => `${grade} ${name} ${total.pieces} by ${lot?.of}`).sort()).toEqual([
    "certain Cone 2 by 1",
    "certain Race 2 by 1",
  ]);
});

test("fitted to a part of another set it is found; to its own, to one of no set, or new, it is not", () => {
  const back = (fit: string): string[] =>
    says(`${valves}\npart plain "Plain" { fits b }`, `remove valve refit { ${fit} }`);
  expect(back("fit valve.1 to seat.2")).toEqual([
    "refit/mismatched Valve 1 goes to Seat 2, and is matched with Seat 1",
  ]);
  expect(back("fit valve.1 to seat.1")).toEqual([]);
  expect(back("")).toEqual([]);
  expect(says(valves, "remove valve renew valve.1 refit { fit valve.1 to seat.2 }")).toEqual([]);
});

test("several alike on either side that nothing tells apart are a hint; one set of several rollers is none", () => {
  const hints = (facts: string): string[] =>
    check(stage(facts, "", "aim none"))
      .findings.filter(({ code }) => code === "refit/matched-alike")
      .map((finding) => finding.says);
  expect(
    hints(`part seat "Seats" { count 4  fits b }\npart valve "Valves" { count 4  fits seat  matched with seat }`),
  ).toEqual([
    "Seats and Valves are matched, 4 alike of each: tell them apart with pieces 1..4, so that each goes back to its own",
  ]);
  expect(
    hints(`part race "Race" { fits b }\npart rollers "Rollers" { count 9  fits race  matched with race }`),
  ).toEqual([]);
  expect(hints(valves)).toEqual([]);
});

test("it is printed where a part of the set comes off and where it goes back, and not where it is new", () => {
  const printed = (facts: string, acts: string): string => {
    const { strip, refit } = stand(stage(facts, `step s "S" { ${acts} }`, "aim none"));
    return `${strip.join(" ")} ${refit.join(" ")}`;
  };
  const kept = printed(valves, "remove valve.1");
  expect(kept).toContain("Keep together: seat 1 and valve 1.");
  expect(kept).toContain("Together again: seat 1 and valve 1.");
  expect(printed(bearing("renew always"), "remove cone")).not.toContain("Keep together");
});

test("a set of several lines is one set in the bill: counted at the first line, and the others say whose it is", () => {
  const texts = (facts: string, acts: string, units = 1): string[] =>
    billData(compiledText(stage(facts, `step s "S" { ${acts} }`, "aim none")), { ...options, units }).lines.map(
      ({ name, total }) => `${name} ${total.text}`,
    );
  expect(texts(bearing("renew as-a-set"), "remove cone, race renew cone, race", 3)).toEqual([
    "Race 3 off (3 sets with Cone)",
    "Cone 3 off (in the set with Race)",
  ]);
  const numbered = valves.replace("matched", "renew as-a-set  matched");
  expect(texts(numbered, "remove valve, seat renew valve, seat")).toEqual([
    "Seat 2 off (2 sets with Valve)",
    "Valve 2 off (in the set with Seat)",
  ]);
  // What is one set by itself says so.
  expect(texts('part ring "Ring" { count 4  rests on b  renew as-a-set }', "remove ring renew ring")).toEqual([
    "Ring 4 off (1 set)",
  ]);
});

test("one of several pieces goes back to the piece of its own name", () => {
  const facts = `part house "House" { pieces left, right }
    fastener hs bolt "House bolts" { pieces left, right  joins house to b }
    part cone bearing "Cone" { pieces left, right  fits house by press-fit }
    part cap "Cap" { pieces left, right  fits b }`,
    apart = (refit: string): string => `undo hs remove house remove cone refit { ${refit} reverse }`;
  expect(says(facts, apart("fit cone.left to house.right"))).toEqual([
    "refit/mismatched Cone left goes to House right, and belongs on House left",
  ]);
  expect(says(facts, apart("fit cone.left to house.left"))).toEqual([]);
  // A new one has no place yet, and to what it has no name in common with it goes by another rule.
  expect(says(facts, apart("renew cone.left  fit cone.left to house.right"))).toEqual([]);
});
