// How a finding names the precautions that are missing: those of the open kind by what the author wrote there.

import { expect, test } from "vitest";
import { checkText } from "../support/check-text.ts";

const box = (precautions: string, step: string): string => `
unit box "Box" {
  base foot
  part foot "Foot"
  part lid "Lid" { rests on foot }
  hazard pinch crushing warning "Hands between parts" { on lid  ${precautions} }
}
procedure open "Open" for box {
  aim lid off
  step "Open" { ${step}  remove lid }
}
`;
const says = (text: string): string | undefined =>
  checkText(text).found.find(({ code }) => code === "hazard/not-yet" || code === "hazard/order")?.says;

test("one of the open kind is named by its words, the others by their kinds", () => {
  expect(says(box('precaution other "Keep your hands out of the joint."', ""))).toContain(
    'Hands between parts asks for "Keep your hands out of the joint" first',
  );
  expect(says(box('precaution barrier "Rope it off."  precaution other "Call the slinger."', ""))).toContain(
    'asks for barrier and "Call the slinger" first',
  );
});

test("long words are cut at a blank", () => {
  const long = "Agree with the second person who says when the lid is lowered and who answers him before it moves.";
  expect(says(box(`precaution other "${long}"`, ""))).toContain(
    'asks for "Agree with the second person who says when the lid is…" first',
  );
});

test("as what comes before another one too", () => {
  expect(
    says(box('precaution other "Call the slinger."  precaution barrier "Rope it off."', "barrier pinch other pinch")),
  ).toContain('"Call the slinger" of Hands between parts comes before this');
});
