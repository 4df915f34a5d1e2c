// Figures of one line that do not go with each other. What one of them is by itself, figure/implausible says.

import { isProblem, si } from "../../quantities/index.ts";
import type { SourceFile } from "../../names/project.ts";
import type { Item } from "../../syntax/index.ts";
import { check, type Draft, type Say } from "../check.ts";
import { figuresIn, type FigureSaid } from "../figures-said.ts";
import { itemsWith } from "../items-of.ts";

export default check({
  code: "figure/at-odds",
  title: "Figures of one line that do not go together",
  severity: "warning",
  why: "No reading is at least 5 mm and at most 3 mm, and bolts that are tightened to 60 % last of all stay so. One of the two figures is a slip, and the manual prints both.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
    }
    procedure look "Look" for box {
      aim none
      step "Look" {
        measure gap on foot "Gap" at least 5 mm at most 3 mm
    #                                      ^^^^^^^^^^^^^^^^^ at least 5 mm and at most 3 mm: no reading is both
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
    }
    procedure look "Look" for box {
      aim none
      step "Look" {
        measure gap on foot "Gap" at least 3 mm at most 5 mm
      }
    }
  `,
  file(file, say) {
    limits(file, say);
    for (const item of itemsWith(file, "passes")) if (!item.broken) passes(file, item, say);
    for (const word of ["video", "pieces"] as const)
      for (const item of itemsWith(file, word)) if (!item.broken) backwards(file, item, word, say);
  },
});

/** Both ends of a limit, crossed. */
function limits(file: SourceFile, say: Say): void {
  const { tokens } = file.tree.scan,
    figures = figuresIn(file);
  const isEnd = ({ argument: { first } }: FigureSaid, word: string): boolean =>
    tokens[first - 1]?.text === word && tokens[first - 2]?.text === "at";
  for (const least of figures) {
    if (!isEnd(least, "least")) continue;
    const most = figures.find((one) => one.item === least.item && isEnd(one, "most"));
    if (!most || least.dimension !== most.dimension || isProblem(least.made) || isProblem(most.made)) continue;
    if (si(least.made).low <= si(most.made).high) continue;
    const [start, stop] = [least.at, most.at].sort((a, b) => a.start - b.start);
    say({
      at: { file: file.path, start: start!.start, end: stop!.end },
      says: `at least ${least.text} and at most ${most.text}: no reading is both`,
    });
  }
}

/** Shares of the torque, pass by pass. Two of one share are no slip: a last round at the full torque goes on until none turns. */
function passes(file: SourceFile, item: Item, say: Say): void {
  const { tokens } = file.tree.scan,
    shares: { readonly share: number; readonly text: string; readonly at: Draft["at"] }[] = [];
  for (let i = item.first + 1; i < item.last; i++) {
    const sign = tokens[i + 1]!;
    if (sign.text !== "%") continue;
    const at = { file: file.path, start: tokens[i]!.startOffset, end: sign.endOffset! + 1 };
    shares.push({ share: Number(tokens[i]!.text), text: file.text.slice(at.start, at.end), at });
  }
  const fallen = shares.findIndex(({ share }, i) => i > 0 && share < shares[i - 1]!.share),
    last = shares.at(-1);
  if (fallen > 0) {
    const { text, at } = shares[fallen]!;
    say({
      at,
      says: `${text} comes after ${shares[fallen - 1]!.text}: no pass goes lower than the one before it`,
    });
  } else if (last && last.share < 100)
    say({ at: last.at, says: `the last pass ends at ${last.text} of the torque: it goes to 100 %` });
}

/** Part of a recording, or numbered pieces, from the later one to the earlier. */
function backwards(file: SourceFile, item: Item, word: "video" | "pieces", say: Say): void {
  const { tokens } = file.tree.scan,
    between = word === "video" ? "to" : "..";
  for (let i = item.first + 2; i < item.last; i++) {
    const from = tokens[i - 1]!,
      to = tokens[i + 1]!;
    if (tokens[i]!.text !== between || !(placeIn(from.text) > placeIn(to.text))) continue;
    const at = { file: file.path, start: from.startOffset, end: to.endOffset! + 1 };
    say({
      at,
      says: `${file.text.slice(at.start, at.end)} runs backwards: the ${word === "video" ? "earlier time" : "smaller number"} comes first`,
    });
    return;
  }
}

/** Seconds of `1:02:03`, the number of a piece; what is neither is compared with nothing. */
const placeIn = (text: string): number => text.split(":").reduce((sum, part) => sum * 60 + Number(part), 0);
