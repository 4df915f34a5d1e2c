// Slips in figures that were read, printed and held against nothing: each is one finding at its place, and what is meant is none.

import { test } from "vitest";
import { expectMarked } from "../support/check-text.ts";

const flange = (lines: string): string => `
unit pump "Pump" {
  base casing
  part casing "Casing"
  part cover "Cover"
  fastener bolts bolt "Cover bolts" {
    count 4  size M12x40  torque 60 N·m  joins cover to casing
${lines}
  }
}
`;
const look = (lines: string): string => `
unit box "Box" {
  base foot
  part foot "Foot"
}
procedure look "Look" for box {
  aim none
  video "whole.mp4"
  step "Look" {
${lines}
  }
}
#- whole.mp4
`;

test("passes rise, and the last one is the whole torque", () => {
  expectMarked(
    flange(`    passes 60 %, 30 %, 100 %
#                ^^^^ warning figure/at-odds: 30 % comes after 60 %: no pass goes lower than the one before it`),
  );
  expectMarked(
    flange(`    passes 30 %, 60 %
#                ^^^^ warning figure/at-odds: the last pass ends at 60 % of the torque: it goes to 100 %`),
  );
  expectMarked(flange("    passes 30 %, 60 %, 100 %"));
  // A round of full torque bolt by bolt after the crosswise ones: the guides behind passShares (language/figures/tightening-order.ts).
  expectMarked(flange("    passes 30 %, 60 %, 100 %, 100 %"));
  expectMarked(flange("    passes 3"));
});

test("a circle of holes has a diameter, and a listed order takes each bolt once", () => {
  expectMarked(
    flange(`    pattern circle 0 mm
#                  ^^^^ warning figure/implausible: 0 mm cannot be meant: write the figure, or leave the line out where it is not known`),
  );
  expectMarked(flange("    pattern at 0 x 0 mm, 40 x 0 mm, 0 x 40 mm, 40 x 40 mm"));
  expectMarked(
    flange(`    sequence listed 1, 3, 2
#   ^^^^^^^^^^^^^^^^^^^^^^^ warning fastener/sequence-listed: Cover bolts, 4 off: in this list 4 is left out. Name each of 1 to 4 once, then what is gone over again`),
  );
  expectMarked(
    flange(`    sequence listed 1, 3, 2, 9
#   ^^^^^^^^^^^^^^^^^^^^^^^^^^ warning fastener/sequence-listed: Cover bolts, 4 off: in this list 9 is not among 1 to 4. Name each of 1 to 4 once, then what is gone over again`),
  );
  expectMarked(flange("    sequence listed 1, 3, 2, 4"));
});

test("limits do not cross, a part of a recording runs forwards, a wait waits", () => {
  expectMarked(
    look(`    test "Speed" at most 900 rpm at least 950 rpm
#                        ^^^^^^^^^^^^^^^^^^^^^^^^ warning figure/at-odds: at least 950 rpm and at most 900 rpm: no reading is both`),
  );
  expectMarked(look(`    test "Speed" at least 900 rpm at most 950 rpm`));
  expectMarked(
    look(`    video from 12:40 to 12:04
#              ^^^^^^^^^^^^^^ warning figure/at-odds: 12:40 to 12:04 runs backwards: the earlier time comes first`),
  );
  expectMarked(look(`    video from 9:50 to 1:12:04`));
  expectMarked(
    look(`    wait 0 min
#        ^^^^^ warning figure/implausible: 0 min cannot be meant: write the figure, or leave the line out where it is not known`),
  );
});

test("pieces are numbered upwards, and nothing is colder than anything can be", () => {
  expectMarked(`
unit bank "Bank" {
  base foot
  no hot "Tried on paper alone."
  part foot "Foot"
  part cap "Cap" { pieces 5..1  rests on foot }
#                         ^^^^ warning figure/at-odds: 5..1 runs backwards: the smaller number comes first
}
procedure look "Look" for bank {
  aim none
  step {
    heat foot to -400 °C
#                ^^^^^^^ warning figure/implausible: -400 °C is colder than anything can be
  }
}
`);
});

test("the point of a picture lies in it", () => {
  expectMarked(`
unit box "Box" {
  base foot
  part foot "Foot"
}
procedure look "Look" for box {
  aim none
  step {
    photo "foot.png" "The foot" { point foot 140 % 20 % }
#                                            ^^^^^ warning figure/implausible: 140 % lies outside the picture: across and down go from 0 to 100 %
  }
}
#- foot.png
`);
});
