// Which texts beside a hazard give an assurance. The words: IEC/IEEE 82079-1 and ANSI Z535.6 ask for what to do and what follows, never
// for a promise; EN 50110-1 for a proof on the day. The examples are our own.

import { expect, test } from "vitest";
import { clearingWord, promiseIn } from "../../language/checks/clearing-words.ts";
import { checkText } from "../support/check-text.ts";

const promises: readonly (readonly [text: string, word: string])[] = [
  ["Open the isolator: the box is now safe.", "safe"],
  ["Now made safe.", "safe"],
  ["Tester shows OK", "OK"],
  ["Test passed, go on.", "passed"],
  ["All clear.", "All clear"],
  ["The gear complies.", "complies"],
  ["Certified sling.", "Certified"],
  ["The bus is dead.", "is dead"],
  ["Capacitors discharged.", "discharged"],
  ["Wait 5 min until discharged", "until discharged"],
  ["Check the lamp: the bus is dead", "is dead"],
  ["No danger here", "No danger"],
  ["The leads are de-energised", "are de-energised"],
  ["It is\n    safe to touch", "safe"],
];
const asking = [
  "Prove that the bus is dead at its terminals.",
  "Prove the bus dead.",
  "Turn it to top dead centre.",
  "It is dead centre on the mark.",
  "Do not go on unless it is proved dead.",
  "Never safe to touch.",
  "Stand at a safe distance.",
  "Unsafe floor.",
  "Set it down safely.",
  "The lead is passed through the gland.",
  "Safe working load 250 kg.",
  "Check that it is dead, all phases.",
  "Test all three phases to earth.",
  "Let the capacitors discharge for 5 min.",
];

test.each(promises)("%s", (text, word) => expect(clearingWord(text)).toBe(word));
test.each(asking)("nothing in: %s", (text) => expect(clearingWord(text)).toBeUndefined());

const machine = (dismissal: string, step: string): string => `
unit box "Box" {
  base foot
  part foot "Foot"
  no pressure "${dismissal}"
  hazard mains electrical danger "Mains" { on foot  source mains  precaution isolate "Open it."  precaution prove-dead "Test all phases." }
}
procedure look "Look" for box {
  aim none
  step "Still" {
    isolate mains
    prove-dead mains
    ${step}
  }
}
`;
const clears = (text: string): string[] =>
  checkText(text)
    .found.filter((one) => one.code === "wording/clears")
    .map((one) => one.says);

test("a dismissal, a note and a test beside a precaution, a signal word anywhere: each is one finding", () => {
  expect(clears(machine("Open to air.", 'note "Lay it out."'))).toEqual([]);
  expect(clears(machine("Certified by the yard.", 'note "Lay it out."'))).toHaveLength(1);
  expect(clears(machine("Open to air.", 'note "All is safe now."'))).toHaveLength(1);
  expect(clears(machine("Open to air.", 'test "The box is dead"'))).toHaveLength(1);
  expect(clears(machine("Open to air.", 'caution "Hot, else OK."'))).toHaveLength(1);
});

test.each([
  ["Run it under no load: the machine is now safe", "is now safe"],
  ["The terminals are safe to touch.", "are safe"],
  ["It is dead, take the leads off.", "is dead"],
  ["No risk here.", "No risk"],
  ["The shaft stands: safe to reach in", "safe to reach"],
  ["All clear, go on.", "All clear"],
])("promised wherever it stands: %s", (text, words) => expect(promiseIn(text)).toBe(words));

test.each([
  "The hook is safe for 500 kg.",
  "It is safe up to 8 bar, by its plate.",
  "Is it safe? Ask the electrician whether it is safe.",
  "Never think that it is safe.",
  "Safe working load 250 kg, safety valve, fail-safe brake.",
  "The gasket is OK, the bearing has passed its test, the sling is certified.",
  "The piston is dead centre; the bolt stands at top dead centre.",
  "Keep the way clear.",
])("no promise: %s", (text) => expect(promiseIn(text)).toBeUndefined());

test("what promises that a danger is gone is found where no hazard is near; what may mean something else is not", () => {
  const alone = (text: string): string => `
unit box "Box" {
  base foot
  part foot "Foot"
}
procedure look "Look" for box {
  aim none
  step "Look" {
    test "${text}"
  }
}
`;
  expect(clears(alone("Run it: the machine is now safe"))).toEqual([
    '"is now safe" clears a danger: say what to do, or what to read off',
  ]);
  expect(clears(alone("Run it: the reading is OK, test passed"))).toEqual([]);
});
