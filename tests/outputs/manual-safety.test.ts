// What must reach whoever works by the manual: the dangers that consumables bring, and the findings that an author set aside.
// Safety messages of substances in instructions: IEC/IEEE 82079-1; that what was set aside is printed: common practice.

import { expect, test } from "vitest";
import { manual } from "../../language/outputs/manual/manual.ts";
import { write } from "../../language/outputs/output.ts";
import { wordings } from "../../language/outputs/wording/languages.ts";
import { hazardKinds } from "../../language/tables/index.ts";
import { compiledText, options } from "./outputs-of.ts";

const machine = (allow: string): string => `
hazard skin chemical caution "Solvent on the skin" { wear gloves  precaution other "Open a window."  about "Dries the skin." }
hazard skin-too { like skin }
hazard unused-harm chemical danger "Acid" { wear goggles }
consumable cleaner "Cold cleaner" { pack 1 L  hazard skin }
consumable wash "Wash" { pack 1 L  hazard skin }
consumable acid "Acid" { pack 1 L  hazard unused-harm }
tool spanner-13 "Spanner" { kind spanner }
unit box "Box" {
  base foot
  part foot "Foot" { mass 3 kg }
  part lid "Lid" { mass 1 kg }
  ${allow}
  fastener lid-screws screw "Lid screws" { count 2  size M8x12  class 8.8  drive hex 13  torque 1 N·m  joins lid to foot }
  no electrical "None."
}
procedure strip "Strip" for box {
  aim lid off
  step "Open" { undo lid-screws  remove lid  refit { apply cleaner to lid  apply wash to foot  reverse } }
}
`;

test("the dangers of the consumables in use stand in the safety section, each once with all that bring it", () => {
  const { safety } = manual.data(compiledText(machine("")), options);
  expect(safety.stores.map(({ from, hazard }) => [from, hazard.signal, hazard.name, hazard.wear.length])).toEqual([
    [["Cold cleaner", "Wash"], "caution", "Solvent on the skin", 1],
  ]);
  expect(safety.stores[0]!.hazard.precautions.map(({ text }) => text)).toEqual(["Open a window."]);
  const html = write(manual, "html", compiledText(machine("")), options);
  expect(html).toContain("Hazards of the consumables");
  expect(html).toContain("Solvent on the skin");
  expect(html).not.toContain("Acid");
});

test("an allowed finding is printed with what, where and why; without one there is no such table", () => {
  const plain = compiledText(machine(""));
  expect(plain.findings.map(({ code }) => code)).toContain("fastener/torque-too-low");
  expect(manual.data(plain, options).safety.allowed).toEqual([]);
  const allowed = compiledText(machine("# allow fastener/torque-too-low: soft <b>aluminium</b>")),
    { safety } = manual.data(allowed, options);
  expect(allowed.findings.map(({ code }) => code)).not.toContain("fastener/torque-too-low");
  expect(safety.allowed).toHaveLength(1);
  expect(safety.allowed[0]!.what).toContain("fastener/torque-too-low");
  expect(safety.allowed[0]!.where).toMatch(/machine\.strip:14$/);
  const html = write(manual, "html", allowed, options);
  expect(html).toContain("Findings that the author has set aside");
  expect(html).toContain("soft &lt;b&gt;aluminium&lt;/b&gt;");
});

// ANSI Z535.6 and ISO/IEC 82079-1 (from memory) ask a safety message for the hazard, its consequence and how to avoid it; ISO 12100:2010,
// table B.1 (from memory) gives each type of hazard its potential consequences. NOTICE is for damage to things alone (ANSI Z535.4).
test.each(Object.keys(wordings))(
  "%s: a hazard of any kind says what it can do to people, behind what its author says; a notice does not",
  (tag) => {
    const wording = wordings[tag]!,
      kinds = Object.keys(hazardKinds),
      machineOf = (
        signal: string,
      ): string => `unit box "Box" { base foot  part foot "Foot"  part lid "Lid" { rests on foot }
${kinds.map((kind, i) => `  hazard h${i} ${kind} ${signal} "Hazard ${i}" { on lid  about "Of its own." }`).join("\n")}
}
procedure look "Look" for box { step "Look" { remove lid } }`;
    const told = (signal: string) => {
      const input = compiledText(machineOf(signal)),
        page = write(manual, "html", input, { ...options, wording });
      return { page, hazards: manual.data(input, { ...options, wording }).safety.hazards };
    };
    const { page, hazards } = told("warning"),
      escaped = (text: string): string => text.replaceAll("'", "&#39;");
    expect(hazards).toHaveLength(kinds.length);
    expect(new Set(hazards.map(({ harm }) => harm)).size).toBe(kinds.length);
    for (const { kind, harm } of hazards) {
      const says = escaped(wording.document.harm(harm));
      // In the chapter on safety and before the line that touches it.
      expect(page.split(says).length - 1, kind).toBeGreaterThanOrEqual(2);
      expect(page, kind).toContain(`<p>Of its own.</p><p>${says}</p>`);
    }
    expect(
      told("notice")
        .hazards.map(({ harm }) => harm)
        .join(""),
    ).toBe("");
  },
);

test("of several units each dismissed kind stands with the unit of which it is said: another may have it", () => {
  const unit = (id: string, hazard: string): string => `
unit ${id} "Unit ${id.toUpperCase()}" { base foot  part foot "Foot"  part lid "Lid"
  fastener f screw "F" { joins lid to foot }  ${hazard} }
procedure strip-${id} "Strip ${id}" for ${id} { aim lid off  step "Open" { undo f  remove lid } }`;
  const still = unit("a", `no pressure "Open to air."`),
    under = unit("b", `hazard air pressure danger "Air" { on lid  precaution vent "Open the cock." }`);
  const said = (text: string) => manual.data(compiledText(text), options).safety.dismissed;
  expect(said(still + under)).toEqual([{ kind: "Pressure", unit: "Unit A", why: "Open to air." }]);
  expect(said(still)).toEqual([{ kind: "Pressure", unit: "", why: "Open to air." }]);
  const html = write(manual, "html", compiledText(still + under), options);
  expect(html).toMatch(/<th scope="row">Pressure<\/th><td><bdi>Unit A<\/bdi><\/td>/);
});
