// A line that misses precautions names each of them with its hazard, and no allow and no setting for a milder reason takes that away.
// The order of isolating, securing and proving: EN 50110-1 and ISO 14118; that a danger leads: common practice.

import { expect, test } from "vitest";
import { defaultSettings } from "../../language/world/settings.ts";
import { checkText } from "../support/check-text.ts";

const machine = (act: string, hazards: string): string => `
unit box "Box" {
  base foot
  part foot "Foot"
  part cover "Cover"
  part lid "Lid" { behind cover }
  fastener cover-screws screw "Cover screws" { count 2  joins cover to foot }
  fastener lid-screws screw "Lid screws" { count 4  joins lid to foot  behind cover }
  ${hazards}
}
procedure strip "Strip" for box {
  aim none
  step "Open" {
    ${act}
  }
}
`;
const hot = `hazard hot hot caution "Hot lid" { on lid-screws  precaution cool "Wait." }`,
  mains = `hazard mains electrical danger "Mains" { on lid-screws  source mains  precaution isolate "Open it."  precaution prove-dead "Test all." }`,
  air = `hazard air pressure warning "Air" { on lid-screws  precaution isolate "Close it."  precaution vent "Vent it."  precaution prove-zero "Gauge." }`;

const errors = (text: string, severity: Record<string, "off"> = {}): string[] =>
  checkText(text, { ...defaultSettings, severity })
    .found.filter((one) => one.severity === "error")
    .map((one) => `${one.code}: ${one.says}`);

test("every missing precaution stands in the line, the gravest hazard first", () => {
  const open = `undo cover-screws\n    remove cover\n    loosen lid-screws`;
  expect(errors(machine(open, `${hot}\n  ${air}\n  ${mains}`))).toEqual([
    "hazard/not-yet: Lid screws must not be touched yet: Mains asks for isolate and prove-dead; Air asks for isolate, vent and prove-zero; Hot lid asks for cool first",
  ]);
});

test("a missing precaution leads a refusal that has other reasons too", () => {
  const found = "hazard/not-yet: Lid screws must not be touched yet: Mains asks for isolate and prove-dead first";
  expect(errors(machine("loosen lid-screws", mains))).toEqual([found]);
  expect(errors(machine("loosen lid-screws", mains), { "sequence/blocked": "off", "hazard/not-yet": "off" })).toEqual([
    found,
  ]);
  expect(errors(machine("# allow sequence/blocked: seen from below\n    loosen lid-screws", mains))).toContain(found);
});

test("without a hazard the first reason stays what it was", () => {
  expect(errors(machine("loosen lid-screws", 'no electrical "None."'))).toEqual([
    "sequence/blocked: Lid screws cannot be loosened: Cover is in front of them",
  ]);
});
