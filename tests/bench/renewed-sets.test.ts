// `renew by pairs`, `renew as-a-set`: whole pairs and sets on the bench, in the bill, in print.

import { expect, test } from "vitest";
import { billOf } from "../../language/bill/bill.ts";
import { billData } from "../../language/outputs/bill/data.ts";
import { linesOf } from "../../language/outputs/lines/groups.ts";
import { compiledText, options } from "../outputs/outputs-of.ts";
import { stand } from "../real-machines/stand.ts";
import { findings, stage } from "./refit/stage.ts";

const shoes = (rule: string): string => `part shoe "Shoe" { pieces left, right  rests on b  ${rule} }`,
  springs = (rule: string, count = 4): string =>
    `part springs spring "Springs" { count ${count}  rests on b  ${rule} }`;
const says = (facts: string, acts: string): string[] =>
  findings(stage(`no spring "Slack."\n${facts}`, `step s "S" { ${acts} }`, "aim none")).map(
    (finding) => `${finding.code} ${finding.says}`,
  );
const bill = (facts: string, acts: string, units = 1): string[] => {
  const input = compiledText(stage(`no spring "Slack."\n${facts}`, `step s "S" { ${acts} }`, "aim none"));
  return billOf(input.performances.slice(0, 1), { units, beadWaste: 0 }).lines.map(
    ({ grade, name, total, lot }) => `${grade} ${name} ${total.pieces} by ${lot?.of ?? 1}`,
  );
};

test("one of a set is not renewed without the others", () => {
  const alone = "refit/set-broken Shoe left is renewed without Shoe right, and they are renewed as a set";
  expect(says(shoes("renew as-a-set"), "remove shoe renew shoe.left")).toEqual([alone]);
  expect(says(shoes("renew as-a-set"), "remove shoe scrap shoe.left")[0]).toContain("refit/set-broken");
  expect(says(shoes("renew as-a-set"), "remove shoe renew shoe.left renew shoe.right")).toEqual([]);
  expect(says(shoes("renew as-a-set"), "remove shoe renew shoe")).toEqual([]);
  expect(says(shoes("renew when worn"), "remove shoe renew shoe.left")).toEqual([]);
  expect(says(springs("renew as-a-set"), "remove springs renew 2 of springs")).toEqual([
    "refit/set-broken 2 of 4 Springs are renewed, and they are renewed as a set",
  ]);
});

test("of pairs an even number, or both of two", () => {
  expect(says(shoes("renew by pairs"), "remove shoe renew shoe.left")[0]).toContain("they are renewed by pairs");
  expect(says(springs("renew by pairs"), "remove springs renew 1 of springs")).toEqual([
    "refit/set-broken 1 of 4 Springs is renewed, and they are renewed by pairs",
  ]);
  expect(says(springs("renew by pairs"), "remove springs renew 2 of springs")).toEqual([]);
  expect(says(springs("renew by pairs", 3), "remove springs renew springs")).toEqual([]);
  // Four to each of two heads: one here and one there is no pair.
  const heads = `part head "Head" { pieces 1, 2  rests on b }\n part springs spring "Springs" { count 4 per head  rests on head  renew by pairs }`;
  expect(says(heads, "remove springs renew 1 of springs.1 renew 1 of springs.2")).toHaveLength(1);
  expect(says(heads, "remove springs renew 2 of springs.1")).toEqual([]);
});

test("a reading that asks for one of them is found as well, once, at its line", () => {
  const reading = (name: string): string => `remove shoe inspect wear on shoe.left "Not worn" else renew ${name}`;
  expect(says(shoes("renew as-a-set"), reading("shoe.left"))).toHaveLength(1);
  expect(says(shoes("renew as-a-set"), reading("shoe"))).toEqual([]);
  expect(says(shoes("renew as-a-set"), `${reading("shoe.left")} if wear fails renew shoe.right`)).toEqual([]);
});

test("the bill counts whole pairs and whole sets, for each unit", () => {
  expect(bill(springs("renew by pairs"), "remove springs renew 2 of springs", 3)).toContain("certain Springs 6 by 2");
  expect(bill(springs("renew by pairs"), "remove springs renew 1 of springs", 3)).toContain("certain Springs 6 by 2");
  expect(bill(shoes("renew as-a-set"), "remove shoe renew shoe.left")).toEqual(["certain Shoe 2 by 2"]);
  expect(bill(springs("renew as-a-set"), "remove springs")).toEqual(["worn Springs 4 by 4"]);
  expect(bill(springs("renew when worn"), "remove springs")).toEqual(["worn Springs 4 by 1"]);
});

test("it prints as pairs and sets, where it is renewed and in the bill", () => {
  const input = compiledText(
    stage(
      `no spring "Slack."\n${springs("renew by pairs")}`,
      `step s "S" { remove springs renew 2 of springs }`,
      "aim none",
    ),
  );
  expect(linesOf(input.performances[0]!, options).strip[0]!.lines).toContainEqual(
    expect.objectContaining({
      says: "Renew 2 of the 4 springs: fit new.",
      details: [{ sort: "new", says: "If new: in pairs." }],
    }),
  );
  expect(billData(input, options).lines.map(({ total }) => total.text)).toContain("2 off (1 pair)");
});

test("what goes with it says nothing of when: beside a reason, or under the standing rule, both hold", () => {
  const printed = (rule: string, standing = ""): readonly string[] =>
    stand(stage(`${standing}\npart lip seal "Lip" { pieces inner, outer  rests on b  ${rule} }`, "step { remove lip }"))
      .refit;
  expect(printed("renew as-a-set", "renew always seal")).toEqual(["Fit 2 new lip outer and inner."]);
  expect(printed("renew when worn as-a-set")).toEqual([
    "Fit lip outer and inner. · New if worn. · If new: the whole set.",
  ]);
  // In the other order, and in two lines, it is the same.
  for (const other of [
    "renew as-a-set when worn",
    "renew as-a-set  renew when worn",
    "renew when worn  renew as-a-set",
  ])
    expect(printed(other), other).toEqual(printed("renew when worn as-a-set"));
  expect(says(shoes("renew when worn by pairs"), "remove shoe renew shoe.left")[0]).toContain("by pairs");
  expect(bill(springs("renew every 3 strips by pairs"), "remove springs")).toEqual(["worn Springs 4 by 2"]);
});

test("where a reading may ask for it, that is printed beside what goes with it", () => {
  const { refit } = stand(
    stage(
      `no spring "Slack."\n${springs("renew by pairs")}`,
      `step { remove springs inspect crack on springs "None" else renew springs }`,
    ),
  );
  expect(refit).toEqual(["Fit the 4 springs. · New if the reading asked for it. · If new: in pairs."]);
});

test("a seal of which only that is said is a question like any other", () => {
  const seals = (rule: string): string[] => says(`part lip seal "Lip" { rests on b  ${rule} }`, "remove lip");
  expect(seals("renew as-a-set")).toEqual(["refit/seal-reused Nothing says whether Lip goes back new or used"]);
  expect(seals("renew as-a-set  renew when worn")).toEqual([]);
  expect(seals("renew always as-a-set")).toEqual([]);
});
