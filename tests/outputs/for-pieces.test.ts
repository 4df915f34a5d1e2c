// A line that stands for some of the pieces of `repeat for` says for which, in plain words of the paper's language; with which piece is
// at hand the condition is decided, so that nothing of it is left open for the hand at the bench.

import { expect, test } from "vitest";
import { linesOf } from "../../language/outputs/lines/groups.ts";
import { wordings } from "../../language/outputs/wording/languages.ts";
import { compiled, options } from "./outputs-of.ts";

const machine = (line: string): string => `
unit stand "Stand" {
  base rail
  option heater "Heater"
  part rail "Rail" { }
  part cap "Cap" { pieces left, middle, right }
  fastener bolts bolt "Bolts" { pieces left, middle, right  joins cap to rail }
}
procedure off "Caps off" for stand {
  aim cap off
  repeat for left, middle, right { step "Side" { undo bolts  remove cap  ${line} { note "Pin." } } }
}
`;
/** What stands before the note, piece by piece, with the heater or without; undefined where the line is not printed. */
function before(line: string, tag = "en-GB", heater = false): (string | undefined)[] {
  const { performances } = compiled({ "machine.strip": machine(line) }, undefined, [], "every build"),
    performance = performances.find(({ model }) => model.chosen.has("heater") === heater)!;
  return linesOf(performance, { ...options, wording: wordings[tag]! }).strip.map(({ lines }) =>
    lines.find((each) => each.is === "note")?.given.join(", "),
  );
}

test("a line for one piece says which, in every language", () => {
  for (const [tag, only, not] of [
    ["en-GB", "For left only", "Not for left"],
    ["en-US", "For left only", "Not for left"],
    ["de", "Nur für: left", "Nicht für: left"],
    ["fr", "Seulement pour\u00a0: left", "Sauf pour\u00a0: left"],
    ["es", "Solo para: left", "Excepto para: left"],
  ] as const) {
    expect(before("if left", tag), tag).toEqual([only, undefined, undefined]);
    expect(before("unless left", tag), tag).toEqual([undefined, not, not]);
  }
});

test("of several pieces each is named", () => {
  expect(before("if left or middle")).toEqual(["For left or middle only", "For left or middle only", undefined]);
  expect(before("unless left or middle")).toEqual([undefined, undefined, "Not for left or middle"]);
});

test("beside an option, what the piece decides is no condition any more", () => {
  const of = (line: string, heater: boolean): (string | undefined)[] => before(line, "en-GB", heater);
  expect(of("if left and heater", true)).toEqual(["For left only, if heater", undefined, undefined]);
  // On the left it is done in every build; elsewhere the heater decides.
  expect(of("if left or heater", true)).toEqual(["", "If heater", "If heater"]);
  expect(of("if left or heater", false)).toEqual(["", undefined, undefined]);
  const neither = "Not for left, unless heater";
  expect(of("unless left or heater", false)).toEqual([undefined, neither, neither]);
  expect(of("unless left and heater", false)).toEqual(["Unless heater", "", ""]);
});
