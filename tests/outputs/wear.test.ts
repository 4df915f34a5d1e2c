// What is worn is named in the language of the page: the usual names by the catalogue, the shop's own as it is written.

import { expect, test } from "vitest";
import { protectiveEquipment } from "../../language/tables/protective-equipment.ts";
import { manual } from "../../language/outputs/manual/manual.ts";
import { wordingFor } from "../../language/outputs/wording/languages.ts";
import { compiledText, options } from "./outputs-of.ts";

const input = compiledText(`
tool face-shield "Shield no. 4" { kind ppe }
unit box "Box" {
  base bed
  part bed "Bed"
  part lid "Lid"
  fastener lid-screws screw "Lid screws" { count 4  joins lid to bed }
  hazard sharp-lid sharp caution "Sharp lid" { on lid  wear cut-gloves, face-shield, chain-mail  precaution other "Slowly." }
}
procedure open "Open" for box { aim lid off  step "Lid" { undo lid-screws  other sharp-lid  remove lid } }
`);

test.each([
  ["en-GB", "gloves against cuts"],
  ["en-US", "gloves against cuts"],
  ["de", "Schnittschutzhandschuhe"],
  ["fr", "gants anticoupure"],
  ["es", "guantes anticorte"],
])("%s", (lang, gloves) => {
  const all = { ...options, wording: wordingFor(lang)! },
    data = manual.data(input, all),
    page = manual.formats["html"]!.write(data, all);
  expect(data.tools.wear.map((each) => each.toLowerCase())).toEqual([
    gloves.toLowerCase(),
    "shield no. 4",
    "chain mail",
  ]);
  expect(page).toContain(gloves);
  expect(page).not.toContain("cut gloves");
});

test("every usual name is another in every other language", () => {
  for (const lang of ["de", "fr", "es"])
    for (const [name, { title }] of Object.entries(protectiveEquipment))
      expect(wordingFor(lang)!.kinds.wear(name), `${lang} ${name}`).not.toBe(title);
});
