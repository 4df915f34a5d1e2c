// A part that is a unit of its own with positions of its own: each rule on a small machine, named after the rule.

import { expect, test } from "vitest";
import { linesOf } from "../../language/outputs/lines/groups.ts";
import { compiledText, options } from "../outputs/outputs-of.ts";
import { findings, perform } from "./refit/stage.ts";

const machine = (steps: string, head = ""): string => `unit gear "Gear head" {
  positions upright, upside-down
  base case
  no pressure "Breather."
  part case "Case"
  part lid "Lid"
  part bung "Bung" { fits case  needs upside-down  behind lid }
  fastener ls screw "Lid screws" { count 4  torque 9 N·m  joins lid to case  needs upright }
}
unit drive "Drive" {
  positions on-feet, on-side
  base frame
  no pressure "Open."
  part frame "Frame"
  part head "Gear head" { is unit gear }
  part foot "Foot" { fits frame  needs on-side }
  fastener feet bolt "Foot bolts" { count 4  torque 20 N·m  joins head to frame  needs on-feet }
}
procedure open "Open" for gear {
  aim bung off
  step "Lid" { undo ls  remove lid }
  step "Bung" { turn upside-down  remove bung }
}
procedure out "Out" for drive {
  ${head}
  ${steps}
}
`;
const off = 'step "Head off" { undo feet  remove head }',
  inside = 'step "Inside" { do open on head }';
const says = (text: string): string[] => findings(text).map((finding) => `${finding.code} ${finding.says}`);

test("on the bench it is turned by itself, whatever position the unit around it is in", () => {
  expect(says(machine(`${off} ${inside} step "Foot" { turn on-side  remove foot }`))).toEqual([]);
  // It lies as it is mounted until it is turned, and so does the unit around it.
  expect(says(machine(`${off} ${inside}`).replace("turn upside-down  ", ""))).toEqual([
    "sequence/wrong-position Bung cannot come off: it needs upside-down, and the unit is upright",
  ]);
  expect(says(machine(`${off} ${inside} step "Foot" { remove foot }`))).toEqual([
    "sequence/wrong-position Foot cannot come off: it needs on-side, and the unit is on-feet",
  ]);
});

test("on its machine it is not turned by itself", () => {
  expect(says(machine(`${inside} ${off}`))).toEqual([
    "sequence/turned-in-place Gear head is turned to upside-down while it is still on the machine: take it off first",
  ]);
});

test("the way back turns it where an act needs it, and before it goes back on", () => {
  const { refit } = perform(machine(`${off} ${inside}`), "out");
  expect(refit.flatMap(({ turnInside, turn }) => [turnInside?.to, turn].filter((to) => to !== undefined))).toEqual([
    "upright",
  ]);
  const input = compiledText(machine(`${off} ${inside}`)),
    printed = linesOf(
      input.performances.find(({ procedure }) => procedure.id === "out")!,
      options,
    ),
    turns = [...printed.strip, ...printed.refit].flatMap(({ lines }) =>
      lines.flatMap((line) => (line.is === "action" && line.verb === "turn" ? [line.says] : [])),
    );
  expect(turns).toEqual(["Turn the gear head: upside down.", "Turn the gear head: upright."]);
});

test("a written way back turns it back itself before it goes on", () => {
  const written = (turn: string): string =>
    machine(`${off} ${inside} refit by build`) +
    `procedure build "Build" for drive { needs out  aim all in  step "Gear" { do close on head } step "On" { fit head  fit feet  tighten feet } }
procedure close "Close" for gear { aim all in  step { fit bung ${turn} fit lid  fit ls  tighten ls } }`;
  expect(says(written("turn upright")).filter((one) => one.includes("position"))).toEqual([]);
});
