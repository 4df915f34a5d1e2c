// What is said of lifting gear and cannot be held against its load is told, since nothing is checked then: an angle of sling legs by
// another convention than ours, a capacity that is no load. A capacity in force is (standard gravity 9.80665 m/s², CGPM 1901).

import { expect, test } from "vitest";
import { defaultSettings } from "../../language/world/settings.ts";
import { checkText } from "../support/check-text.ts";

const lifted = (said: string): string => `
tool sling "Sling" { kind sling  ${said} }
unit press "Press" {
  base body
  part body "Body" { mass 60 kg }
  part head "Head" { mass 31 kg  rests on body }
}
procedure off "Head off" for press {
  aim head off
  step {
    lift head with sling
  }
}
`;
const found = (said: string): string[] =>
  checkText(lifted(said))
    .found.filter(({ code }) => code?.startsWith("lift/"))
    .map(({ severity, code, says }) => `${severity} ${code}: ${says}`);

test("an angle that no leg has to the horizontal", () => {
  const legs = (angle: string): string[] => found(`capacity 300 kg  legs 2  angle ${angle}`);
  for (const angle of ["120 deg", "170 deg", "0 deg"])
    expect(legs(angle)).toEqual([
      `error lift/capacity: Head: the legs of Sling cannot stand at ${angle} to the horizontal, so that their pull is not checked: write how far each leg is above it`,
    ]);
  expect(legs("60 deg")).toEqual([]);
  expect(legs("90 deg")).toEqual([]);
});

test("a capacity in force is held against the weight, and one of neither is told", () => {
  // 31 kg weigh 304.0 N.
  expect(found("capacity 303 N")).toEqual(["error lift/capacity: Head weighs 31.0 kg, over the 303 N of Sling"]);
  expect(found("capacity 305 N")).toEqual([]);
  expect(found("capacity 20 L")).toEqual([
    "error lift/capacity: Head: 20 L of Sling is no load that a lifting gear carries, so that its load is not checked: write a mass",
  ]);
  // A figure of another sort is told where it stands, and as gravely; where that is not asked for the lift still is.
  expect(checkText(lifted("capacity 250 %")).found.map(({ severity, code }) => `${severity} ${code}`)).toEqual([
    "error figure/wrong-dimension",
  ]);
  const { found: alone } = checkText(lifted("capacity 250 %"), {
    ...defaultSettings,
    severity: { "figure/wrong-dimension": "off" },
  });
  expect(alone.map(({ code }) => code)).toEqual(["lift/capacity"]);
});
