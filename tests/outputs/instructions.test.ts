// What instructions for use must hold, item by item, with the part of the manual that meets it. The list follows public accounts of
// Directive 2006/42/EC, Annex I 1.7.4, ISO 20607, IEC/IEEE 82079-1, ANSI Z535.6 and ISO 12100 6.4.5; the standards themselves were not read.

import { expect, test } from "vitest";
import { manual } from "../../language/outputs/manual/manual.ts";
import { write } from "../../language/outputs/output.ts";
import { refit } from "../../language/outputs/refit/refit.ts";
import { compiledText, options } from "./outputs-of.ts";

const page = write(
  manual,
  "html",
  compiledText(`
role fitter "Machine fitter"
tool hoist "Chain hoist" { capacity 250 kg }
tool lock-set "Lock and tag"
tool tester "Voltage tester"
consumable grease "Ring grease" { pack 50 ml }
unit pump "Pump P 3" {
  revision B  maker "Invented Pumps" "Quay 4, Porthaven"  serial "0417 to 0980"  mass 60 kg
  intended-use "Moves clean water."  wrong-use "Moving solvents."
  mishap "Water is spilled" "Bind it."  waste "Old gaskets" "Mixed waste."
  about "An impeller pushes water from the inlet to the outlet."
  base foot  renew always gasket
  part foot "Foot"  part cover "Cover" { mass 30 kg }  part seal gasket "Cover gasket" { between cover and foot  part-no "G 1" }
  fastener bolts bolt "Cover bolts" { count 8  size M10  class 8.8  drive hex 16  torque 45 N·m  passes 2  sequence star  pattern circle 180 mm  joins cover to foot }
  fastener plug plug "Drain plug" { size G1/4  torque 20 N·m  into foot }
  fluid bath oil "Bearing oil" { volume 2 L  drains at plug  fills at plug  path foot, cover }
  hazard mains electrical danger "Motor feed" { on cover, bolts  voltage 400 V ac  wear gloves  role fitter
    precaution isolate "Open the switch." back "Close the switch."
    precaution lock-out "Own lock." with lock-set back "Own lock off."
    precaution prove-dead "All poles." with tester at most 12 V ac }
}
tool gloves "Insulating gloves"
procedure strip "Open the pump" for pump {
  revision C  author "Quay workshop" "Quay 5, Porthaven"  date "2026-11-20"  original
  prepared "N. N." "2026-11-20"  checked "M. M." "2026-11-21"  approved "O. O." "2026-11-22" of C
  aim cover off  crew 2  role fitter
  step off "Make it still" { isolate mains  lock-out mains  prove-dead mains }
  step open "Open it" { drain bath into pan  support cover with hoist  undo bolts into tray A  lift cover with hoist by 2 people  remove seal
    photo "cover.png" "Cover off" { point foot 40 % 30 % }
    measure gap on foot "Gap" at most 0.4 mm else scrap foot
    refit { apply grease to seal  reverse } }
  finish { test "No leak at 6 bar." }
}
tool pan "Drip pan"`),
  { ...options, picture: () => ({ type: "image/png", base64: "AAAA", width: 400, height: 300 }) },
);
const section = (id: string): string =>
  new RegExp(`<section id="${id}"[^]*?</section>`)
    .exec(page)?.[0]
    .replace(/<[^>]*>/g, " ")
    .replace(/\s+/g, " ") ?? "";
const order = (...texts: readonly string[]): boolean => {
  const places = texts.map((text) => page.lastIndexOf(text));
  return places.every((place, i) => place >= 0 && (i === 0 || place > places[i - 1]!));
};

const items: readonly (readonly [item: string, element: string, holds: () => boolean])[] = [
  [
    "maker and address",
    "identification",
    () => section("identification").includes("Maker of the unit Invented Pumps, Quay 4, Porthaven"),
  ],
  [
    "author and address",
    "identification",
    () => section("identification").includes("Author Quay workshop, Quay 5, Porthaven"),
  ],
  ["designation, serial range", "identification", () => /Pump P 3.*0417 to 0980/.test(section("identification"))],
  [
    "document id, revision, date",
    "identification",
    () => /Revision of the procedure C.*Date 2026-11-20.*[0-9a-f]{64}/.test(section("identification")),
  ],
  [
    "language, original or translated",
    "identification",
    () => section("identification").includes("English; original instructions"),
  ],
  [
    "prepared, checked, approved",
    "identification",
    () =>
      /Prepared by N\. N\., 2026-11-20 Checked by M\. M\., 2026-11-21 Approved by O\. O\., 2026-11-22/.test(
        section("identification"),
      ),
  ],
  ["who may do it, number of people", "who", () => /At least 2 people.*Machine fitter/i.test(section("who"))],
  ["intended use", "purpose", () => section("purpose").includes("Moves clean water.")],
  ["foreseeable wrong use", "purpose", () => section("purpose").includes("Moving solvents.")],
  [
    "safety first: before tools and steps",
    "safety",
    () => order('<section id="safety"', '<section id="tools"', '<section id="strip"'),
  ],
  ["residual risks, equipment to wear", "safety", () => /Motor feed.*Wear: insulating gloves/i.test(section("safety"))],
  [
    "signal words explained once",
    "safety",
    () =>
      section("safety").includes("Signal words") &&
      section("safety").includes("DANGER") &&
      page.split("<caption>Signal words").length - 1 === 1,
  ],
  [
    "warning before the act, with how to avoid it, in both halves",
    "strip, refit",
    () =>
      /DANGER.*Motor feed.*Wear: insulating gloves.*1\.1 Isolate/i.test(section("strip")) &&
      /DANGER [^.]*Motor feed .*Before you go on, make sure that these precautions are still in place: isolate, lock out and prove dead\. R1\.3 Lower the cover/.test(
        section("refit"),
      ),
  ],
  [
    "isolation and proof before the first step",
    "strip",
    () => /1\.1 Isolate.*1\.2 Lock out.*1\.3 Prove dead.*2\.3/.test(section("strip")),
  ],
  ["masses, lifting", "lifting", () => /Cover 30 kg.* Chain hoist 250 kg/.test(section("lifting"))],
  [
    "tools, torque wrenches, consumables, spares",
    "tools, bill",
    () => /16 mm spanner/.test(section("tools")) && /Cover gasket.*G 1/.test(section("bill")),
  ],
  ["steps: one act each, numbered", "strip", () => section("strip").includes("2.3 Undo the 8 cover bolts.")],
  [
    "drawings with words for who cannot see them",
    "works, diagram, refit",
    () => (page.match(/<svg[^>]*role="img"[^>]*aria-label/g) ?? []).length >= 4,
  ],
  ["limits and what follows", "strip", () => /Limits: at most 0\.4 mm.*If not: scrap the foot/i.test(section("strip"))],
  [
    "tightening: torque in both systems, passes, order",
    "refit",
    () => /45 N·m \(33 lbf·ft\).*2 passes/.test(section("refit")),
  ],
  ["final tests and return to service", "finish", () => section("finish").includes("No leak at 6 bar.")],
  ["when it goes wrong", "mishaps", () => /Water is spilled Bind it\./.test(section("mishaps"))],
  ["waste, fluids and seals", "waste", () => /Bearing oil .*Old gaskets Mixed waste\./.test(section("waste"))],
  ["contents", "nav", () => /<nav[^>]*>[^]*href="#safety"[^]*href="#index"/.test(page)],
  ["glossary of words and units", "glossary", () => section("glossary").includes("newton metre")],
  ["index", "index", () => /Cover bolts 2\.3 , R\d+\.\d+/.test(section("index"))],
  [
    "same name for the same thing everywhere",
    "all",
    () => !/cover plate|lid\b/i.test(section("strip") + section("refit")),
  ],
  [
    "our cautions line",
    "header, safety",
    () => page.split("The maker&#39;s data, local rules and codes").length - 1 >= 2,
  ],
  [
    "record, with second person and instruments",
    "record",
    () => /Checked by a second person.*Calibration due/.test(section("record")),
  ],
];

test.each(items)("%s: met by %s", (_, __, holds) => {
  expect(holds()).toBe(true);
});

test("what an author leaves out is said to be missing, never passed over", () => {
  const bare = write(
    manual,
    "html",
    compiledText(`unit u "Unit" { base a  part a "A"  part b "B"  fastener f screw "F" { joins b to a } }
procedure p "P" for u { aim b off  step "S" { undo f  remove b } }`),
    options,
  );
  for (const said of [
    "The author does not say what the machine is for.",
    "The author names nothing that may go wrong.",
    "not approved: this is a draft",
    "the author does not say whether original or translated",
  ])
    expect(bare).toContain(said);
});

test("a procedure that begins where the strip of another ended says that only its strip is done before", () => {
  const text = `unit box "Box" { base foot  part foot "Foot"  part lid "Lid"  part cup "Cup" { behind lid }
    fastener screws screw "Screws" { joins lid to foot }  fastener nuts nut "Nuts" { joins cup to foot } }
  procedure open "Open the box" for box { aim lid off  step { undo screws  remove lid } }
  procedure cup-out "Take the cup out" for box { NEEDS  aim cup off  step { undo nuts  remove cup } }`;
  const made = (needs: string): string => write(manual, "html", compiledText(text.replace("NEEDS", needs)), options);
  const alone = "its strip alone: its own refit comes after that of this procedure";
  expect(made("needs open")).toContain(alone);
  expect(made('needs "The box is on the bench" starts without lid')).not.toContain(alone);
});

test("a mark is called the same where it is made and where it is lined up", () => {
  const input = compiledText(`
unit u "U" { base a  part a "A"  part b "B"  fastener f screw "F" { torque 9 N·m  joins b to a } }
procedure p "P" for u { aim b off  step "S" { mark a, b as cover-mark "One line."  undo f  remove b  refit { reverse  align cover-mark } } }`),
    said = write(refit, "text", input, options);
  expect(said).toContain("(mark cover-mark)");
  expect(said).toContain("Line up the marks cover-mark.");
});
