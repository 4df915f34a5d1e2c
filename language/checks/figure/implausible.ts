// A figure that no machine can have: none of something, a range that falls. Speaks only where the figure cannot be meant.

import { isFriction, leastFriction, mostFriction } from "../../figures/assumptions.ts";
import { bySpelling } from "../../model/kept.ts";
import { isProblem, parseThreadSize, si, type Dimension } from "../../quantities/index.ts";
import type { SourceFile } from "../../names/project.ts";
import { check, type Say } from "../check.ts";
import { countsIn, figuresIn, spanOf, threadsIn } from "../figures-said.ts";
import { itemsWith } from "../items-of.ts";

/** The largest that any shop meets, in SI: 1 MN·m, 1000 t, 1000 m³. */
const largest: Partial<Readonly<Record<Dimension, number>>> = { torque: 1e6, mass: 1e6, volume: 1e3 };
/** What exists only above nothing. Others, such as a length, may be 0 as a limit. */
const positive: ReadonlySet<string> = new Set<Dimension>(["torque", "mass", "volume", "capacitance"]);
/** Words in front of a figure that exists only above nothing, though others of its kind may be 0: a wait is worked out from it, or is it. */
const positiveWords: ReadonlySet<string> = new Set(["voltage", "bleeder", "wait", "circle"]);
/** No group of fasteners has more pieces than this. */
const mostPieces = 100_000;

export default check({
  code: "figure/implausible",
  title: "A figure that cannot be meant",
  severity: "warning",
  why: "A part of 0 kg, a torque of 0 or a range that falls is a slip of the pen, and whatever is worked out from it is wrong too.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { mass 0 kg }
    #                       ^^^^ 0 kg cannot be meant: write the figure, or leave the line out where it is not known
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { mass 0.4 kg }
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
  `,
  file(file, say) {
    const { tokens } = file.tree.scan;
    for (const { item, argument, made, due, dimension, text, at } of figuresIn(file)) {
      if (dimension === undefined || (due.length > 0 && !due.includes(dimension))) continue;
      if (isProblem(made)) {
        say({ at, says: made.problem });
        continue;
      }
      if (due.length !== 1) continue;
      const { low, high } = si(made),
        most = largest[dimension],
        lead = tokens[argument.first - 1]!.text,
        above = positive.has(dimension) || positiveWords.has(lead);
      if (above && high <= 0)
        say({ at, says: `${text} cannot be meant: write the figure, or leave the line out where it is not known` });
      else if (above && low < 0) say({ at, says: `${text} goes below nothing` });
      else if (most !== undefined && high > most)
        say({ at, says: `${text} is more than any shop meets: look at the unit` });
      else if (dimension === "temperature" && low < 0) say({ at, says: `${text} is colder than anything can be` });
      else if (item.entry!.word === "point" && (low < 0 || high > 1))
        say({ at, says: `${text} lies outside the picture: across and down go from 0 to 100 %` });
    }
    counts(file, say);
    frictions(file, say);
    threads(file, say);
  },
});

/** Coefficients of friction that no bolted joint has: whatever is reckoned with one is wrong, and none is reckoned. */
function frictions(file: SourceFile, say: Say): void {
  const { tokens } = file.tree.scan;
  for (const item of itemsWith(file, "friction")) {
    if (item.broken) continue;
    for (const argument of item.arguments) {
      const token = tokens[argument.first]!;
      if (isFriction(Number(token.text))) continue;
      say({
        at: { file: file.path, start: token.startOffset, end: token.endOffset! + 1 },
        says: `a coefficient of friction of ${token.text} cannot be meant: from ${leastFriction} to ${mostFriction} is reckoned with`,
      });
    }
  }
}

/** Why a spelling is no size of a thread. */
const threadProblem = bySpelling((text) => {
  const size = parseThreadSize(text);
  return isProblem(size) ? size.problem : undefined;
});

/** Sizes that look like a thread and are none: the fastener would have no size at all, and nobody would be told. */
function threads(file: SourceFile, say: Say): void {
  for (const { argument } of threadsIn(file)) {
    const at = spanOf(file, argument),
      problem = threadProblem(file.text.slice(at.start, at.end));
    if (problem === undefined) continue;
    const isTold = file.tree.errors.some((error) => error.start < at.end && error.end > at.start);
    if (!isTold) say({ at, says: problem });
  }
}

/** Counts: none, parts of one, or thousands. */
function counts(file: SourceFile, say: Say): void {
  const { tokens } = file.tree.scan;
  for (const { item, argument } of countsIn(file)) {
    const token = tokens[argument.first]!,
      value = Number(token.text);
    if (Number.isInteger(value) && value >= 1 && value <= mostPieces) continue;
    const why =
      value > mostPieces ? "more than any machine has" : Number.isInteger(value) ? "count from 1" : "count whole ones";
    say({
      at: { file: file.path, start: token.startOffset, end: token.endOffset! + 1 },
      says: `"${item.entry!.word}" cannot take ${token.text}: ${why}`,
    });
  }
}
