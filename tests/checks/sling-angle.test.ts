// The angle of sling legs is that to the horizontal. Written by another convention it is told: the pull at the legs is not checked then.

import { expect, test } from "vitest";
import { checkText } from "../support/check-text.ts";

const lifted = (angle: string): string => `
tool sling "Sling" { kind sling  capacity 300 kg  legs 2  angle ${angle} }
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
const said = (angle: string): string[] =>
  checkText(lifted(angle))
    .found.filter(({ code }) => code?.startsWith("lift/"))
    .map(({ severity, code, says }) => `${severity} ${code}: ${says}`);

test("an angle that no leg has to the horizontal", () => {
  for (const angle of ["120 deg", "170 deg", "0 deg"])
    expect(said(angle)).toEqual([
      `error lift/capacity: Head: the legs of Sling cannot stand at ${angle} to the horizontal, so that their pull is not checked: write how far each leg is above it`,
    ]);
  expect(said("60 deg")).toEqual([]);
  expect(said("90 deg")).toEqual([]);
});
