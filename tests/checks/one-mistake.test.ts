// One mistake, one finding, at the line: what a first author writes, and what is said of it.

import { expect, test } from "vitest";
import { checkProject } from "../../language/workspace/check-project.ts";
import { check, worldOf } from "../bench/refit/stage.ts";

const pump = `unit pump "Gear pump" {
  base stand
  part stand "Stand"
  part body "Body" { mass 6 kg }
  part cover "Cover" { mass 1 kg  rests on body }
  part driver "Drive gear" { fits body  behind cover }
  part driven "Driven gear" { fits body  behind cover }
  fastener feet screw "Foot screws" { count 4  size M8x25  class 8.8  drive hex 13  torque 24 N·m  joins body to stand }
  fastener screws screw "Cover screws" { count 6  size M6x20  class 8.8  drive hex-socket 5  torque 10 N·m  joins cover to body }
  fluid oil "Oil" { volume 0.2 L  drains at plug  fills at plug  uses gear-oil }
  fastener plug plug "Drain plug" { size M10x1  drive hex-socket 5  torque 20 N·m  into body }
  hazard sump hot "Hot oil" { on body, cover  temperature 80 °C  precaution cool wait 30 min }
}
consumable gear-oil "Gear oil" { pack 1 L }
procedure gears "Gears out" for pump {
  aim driver, driven off
  step "Cover" {
    drain oil
    undo screws
    cool sump
    remove cover
    remove driver, driven
  }
}
`;
const found = (text: string): string[] =>
  check(text)
    .findings.filter((f) => f.severity === "error" || f.severity === "warning")
    .map((f) => `${text.slice(0, f.at.start).split("\n").length}: ${f.says}`);

test("as it stands nothing is found", () => {
  expect(found(pump)).toEqual([]);
});

test.each<[string, string, string]>([
  ["undo screws", "undo the screws", "19: the is no name: leave it out"],
  ["drain oil", "drain the oil", "18: the is no name: leave it out"],
  ["remove driver, driven", "remove driver and driven", "22: Names are parted by commas here, not by and"],
  ["on body, cover", "on body and cover", "12: Names are parted by commas here, not by and"],
  ["aim driver, driven off", "aim driver and driven off", "16: Names are parted by commas here, not by and"],
  ["drive hex-socket 5  torque 10", "drive socket 5  torque 10", "9: socket is no drive: here it is called hex-socket"],
  ["sump hot ", "sump hot-surface ", "12: hot-surface is no kind of hazard: here it is called hot"],
  [
    "precaution cool wait",
    "precaution wait",
    '12: wait is out of place: a wait belongs to what is done against it: precaution discharge "Let it stand." wait 10 min',
  ],
  ["precaution cool", "precaution cool-down", "12: cool-down is no precaution: here it is called cool"],
  [
    "into body",
    "in to body",
    "11: in is out of place after N·m: whatever else is said begins with a word, such as count, size, drive, torque, joins or into",
  ],
  ["count 6 ", "count six ", "9: six is out of place: how many is written in figures: count 4"],
  ["10 N·m", "10 Nm2", "9: Nm2 is no unit: torque takes N·m, cN·m, lbf·ft, lbf·in or kgf·m"],
  [
    'step "Cover"',
    "step cover-off Cover",
    "17: Cover is out of place after cover-off: what is printed stands in quotes",
  ],
  ["    remove cover\n", "    take off cover\n", "21: Unknown word take off: here it is called remove"],
  ["undo screws", "undo 5 of screws", "21: Cover cannot come off: still held by 1 of 6 Cover screws"],
  ["    cool sump\n", "", "20: Cover must not be touched yet: Hot oil asks for cool first"],
])("%s as %s", (right, wrong, says) => {
  expect(pump).toContain(right);
  expect(found(pump.replace(right, wrong))).toEqual([says]);
});

test("a declaration that is missing is said once, whatever is due where its name stands", () => {
  expect(found(pump.replace(/ {2}part body .*\n/, "\n"))).toEqual([
    "5: body is not declared in Gear pump: a part is due",
  ]);
  const without = found(pump.replace(/ {2}part driver .*\n/, "\n"));
  expect(without).toHaveLength(1);
  expect(without[0]).toContain("driver is not declared in Gear pump");
});

test("of a name with a piece, the name is what is missing", () => {
  const pieces = pump
    .replace(/driver, driven/g, "driver.left, driver.right, driven")
    .replace(/ {2}part driver .*\n/, "\n");
  expect(found(pieces)).toEqual(["16: driver is not declared in Gear pump, but driven is"]);
});

test("a line use that is missing is said once, for all that it would have brought", () => {
  const shop = `tool mallet "Mallet"\ntool pan "Oil pan"\nconsumable gear-oil "Gear oil" { pack 1 L }\n`,
    machine = pump
      .replace(/consumable.*\n/, "")
      .replace("drain oil", "drain oil into pan")
      .replace("remove cover", "remove cover with mallet");
  const said = (texts: Readonly<Record<string, string>>): string[] =>
    checkProject(worldOf(texts), Object.keys(texts))
      .findings.filter(({ severity }) => severity === "error" || severity === "warning")
      .map(({ says }) => says);
  expect(said({ "main.strip": machine })).toEqual([
    "gear-oil is no consumable that this file or any that it uses declares",
  ]);
  expect(said({ "main.strip": `use "shop.strip"\n${machine}`, "shop.strip": shop })).toEqual([]);
  expect(said({ "main.strip": machine, "shop.strip": shop })).toEqual([
    "gear-oil is declared in shop.strip, which this file does not use",
  ]);
});

test("what a tool carries is a mass, a force or a volume", () => {
  const hoist = (capacity: string): string =>
    `${pump.replace("remove cover", "lift cover with hoist")}tool hoist "Hoist" { kind hoist  capacity ${capacity} }\n`;
  expect(found(hoist("250 kg"))).toEqual([]);
  expect(found(hoist("250 %"))).toEqual(['25: 250 % is a figure of share: "capacity" takes mass, force or volume']);
});
