// What a procedure that is done leaves is told at the end where it is so at the end, and nowhere else.

import { expect, test } from "vitest";
import { check } from "./refit/stage.ts";

const told = (own: string): { left: string[]; back: string[]; codes: string[] } => {
  const { performances, findings } = check(`unit box "Box" {
  base foot
  part foot "Foot"
  part lid "Lid"
  part card "Card" { rests on foot  behind lid }
  fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
}
procedure open "Open" for box {
  aim lid off
  leaves off lid
  leaves out 2 of lid-screws
  step { undo lid-screws  remove lid }
}
procedure close "Close" for box {
  needs open
  aim all in
  step { fit lid  fit lid-screws }
}
procedure own "Own" for box {
  ${own}
}
`);
  const one = performances.find(({ procedure }) => procedure.id === "own")!,
    names = (things: readonly number[]): string => things.map((thing) => one.model.things[thing]!.id).join();
  return {
    left: one.leaves.map(({ leave, things }) => `${leave.is} ${names(things)}`),
    back: one.refit.map(({ op }) => `${op.verb} ${names(op.things)}`),
    codes: findings.filter(({ severity }) => severity === "error").map(({ code }) => code),
  };
};

test("what is left off, and was put back and taken off once more, does not go back", () => {
  const asLeft = { left: ["off lid", "out lid-screws"], back: ["fit card"], codes: [] };
  expect(told("aim card off  step { do open  remove card }")).toEqual(asLeft);
  expect(told("aim card off  step { do open  do close  do open  remove card }")).toEqual(asLeft);
  expect(
    told(
      'aim card off  leaves off lid  step { undo lid-screws  remove lid  inspect face on foot "No rust"  fit lid  fit lid-screws  undo lid-screws  remove lid  remove card }',
    ),
  ).toEqual({ left: ["off lid"], back: ["fit card"], codes: [] });
});

test("what the final tests, or the strip, put back is not told as left", () => {
  expect(told("aim card off  step { do open  remove card }  finish { fit lid  fit lid-screws }").left).toEqual([]);
  // Two of four are out: all are not left out, and two are.
  expect(told("aim card off  step { do open  remove card  refit { fit card  fit lid } }").left).toEqual([
    "out lid-screws",
  ]);
});

test("a way back that is a procedure of its own tells nothing as left that it puts back", () => {
  const { performances, findings } = check(`unit box "Box" {
  base foot
  part foot "Foot"
  part lid "Lid"
  part card "Card" { rests on foot  behind lid }
  fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
}
procedure open "Open" for box {
  aim lid off
  leaves off lid
  leaves out lid-screws
  step { undo lid-screws  remove lid }
}
procedure out "Out" for box {
  aim card off
  refit by back
  step { do open  remove card }
}
procedure back "Back" for box {
  needs out
  aim all in
  step { fit card  fit lid  fit lid-screws }
}
`);
  expect(findings.filter(({ severity }) => severity === "error")).toEqual([]);
  const left = (id: string): number => performances.find(({ procedure }) => procedure.id === id)!.leaves.length;
  expect([left("open"), left("out"), left("back")]).toEqual([2, 0, 0]);
});
