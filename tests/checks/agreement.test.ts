// Grammar of findings: every check's failing example once more with names that speak of several. No verb and no pronoun stays behind.

import { expect, test } from "vitest";
import { inAgreement } from "../../language/checks/agreement.ts";
import { checks } from "../../language/checks/registry.ts";
import { looksPlural } from "../../language/tables/plural-names.ts";
import { defaultSettings } from "../../language/world/settings.ts";
import { checkText } from "../support/check-text.ts";
import { unmarked } from "../support/marked.ts";

/** Names of parts and fasteners made plural. */
const made = (text: string): string =>
  text.replace(
    /\b(part|fastener) ([\w-]+)( [\w-]+)? "([^"]*)"/g,
    (_, word: string, id: string, kind = "", name: string) =>
      `${word} ${id}${kind} "${looksPlural(name) ? name : `${name}${/(?:s|x|ch|sh)$/.test(name) ? "es" : "s"}`}"`,
  );
const wrong =
  /(?<!\bof [\p{L} -]*)\b(?!Mains|This|Motor|Nothing|Goods)\p{Lu}[\p{L}-]*(?: [\p{Ll}-]+)*?[^sui\P{L}]s (?:is|was|has|comes|goes|stays|lies|belongs|rests|hangs|keeps|needs|weighs|runs|joins|falls|holds)\b/u;
/** Hazards, tools and procedures are one each, whatever their names. */
const ofOthers = /\b(?:Capacitors of the drive|The range of|Mains)\b/;

test.each(checks.map((check) => [check.code, check] as const))("%s", (code, check) => {
  const text = made(unmarked(check.fails));
  const { found } = checkText(text, {
    ...defaultSettings,
    severity: check.severity === "off" ? { [code]: "warning" } : {},
  });
  for (const { says, because } of found)
    for (const one of [says, ...because]) if (!ofOthers.test(one)) expect(one).not.toMatch(wrong);
});

test("verbs and pronouns follow the name; what is counted, or another's, stays", () => {
  const names = ["Lid screws", "Cards"];
  for (const [text, subject, right] of [
    ["Lid screws is undone already", true, "Lid screws are undone already"],
    ["Lid screws was scrapped before", true, "Lid screws were scrapped before"],
    [
      "Cards is held by nothing after this, and stays where it is",
      true,
      "Cards are held by nothing after this, and stay where they are",
    ],
    ["Cards cannot come off: Lid is in front of it", true, "Cards cannot come off: Lid is in front of them"],
    ["Lid cannot come off: Lid screws is in front of it", false, "Lid cannot come off: Lid screws are in front of it"],
    [
      "Lid screws cannot be undone: it needs flat, and the unit is on-side",
      true,
      "Lid screws cannot be undone: they need flat, and the unit is on-side",
    ],
    ["Lid belongs behind Cards, which is on already", false, "Lid belongs behind Cards, which are on already"],
    ["1 of 4 Lid screws is in front of it", false, "1 of 4 Lid screws is in front of it"],
    [
      "Lid screws cannot be undone: nothing else holds Motor, and it hangs",
      true,
      "Lid screws cannot be undone: nothing else holds Motor, and it hangs",
    ],
    [
      "Cards joins nothing: say what it holds together, or what it sits in",
      true,
      "Cards join nothing: say what they hold together, or what they sit in",
    ],
  ] as const)
    expect(inAgreement(text, names, subject)).toBe(right);
});

test("names are several by their look", () => {
  for (const name of ["Casing nuts", "Nuts of the casing", "Boxes", "Screws, long", "Keys"])
    expect(looksPlural(name), name).toBe(true);
  for (const name of ["Bus", "Drive bus", "Chassis", "Axis", "Lens", "Gas", "Glass", "Radius", "Press", "Motor"])
    expect(looksPlural(name), name).toBe(false);
});

test("of several to a piece the piece speaks of several, of one to a piece it does not", () => {
  const says = (count: string): string[] =>
    checkText(
      `
      unit u "U" {
        base b
        part b "Base"
        part cap "Cap" { pieces left, right  rests on b }
        fastener screws screw "Cap screws" { pieces left, right  ${count}  joins cap to b }
      }
      procedure p "P" for u { aim cap off  step "S" { undo screws.left  undo screws.left  undo screws.right  remove cap } }
    `,
      defaultSettings,
    ).found.map((one) => one.says);
  expect(says("count 4").join()).toContain("Cap screws left are undone already");
  expect(says("").join()).toContain("Cap screws left is undone already");
});
