// Figures on single motions, on fitting parts and on ways of joining: the published tables as questions.

import { argument, numberIn, plain, result, step, textIn, type Figure } from "./figure.ts";
import { ASSEMBLY_INSERTION } from "./action-times.ts";
import { JOIN_CLASSES } from "./disassembly-scores.ts";
import { kindIn } from "../tables/index.ts";
import { hazardFigure, highest, highestIn, shown } from "./hazard-figure.ts";
import { MOVE, REACH, TMU_SECONDS, TURN, TURN_DEGREES, motionTime, moveWithWeight } from "./motion-times.ts";
import { assemblyTime } from "./work-time.ts";

const POUND = 0.45359237;
const INCH = 0.0254;

/** Time of one motion of the hand. */
export const motion: Figure = hazardFigure({
  name: "motion-time",
  title: "Time of a motion of the hand",
  topic: "times",
  arguments: [
    argument("motion", "word", "code of the table: R reach, M move, T turn", {
      words: [...REACH, ...MOVE, ...TURN].map((one) => one.code),
    }),
    argument("over", "length", "distance of a reach or a move", { optional: true, default: "due for R and M" }),
    argument("through", "angle", "angle of a turn", { optional: true, default: "due for T" }),
    argument("weight", "mass", "weight moved in one hand", { optional: true, default: "up to 2.5 lb" }),
  ],
  validity: "skilled bench work without allowances; the next longer row of the table; up to 30 in, 180° and 47.5 lb",
  source:
    "MTM-1 tables (read): reach and move from a university page, turn from the data card 2019; weight allowance from a textbook, in part from memory",
  examples: ["R-B 10 in", "M-C 20 in weight 12 lb", "T-S 180 deg"],
  answer(inputs) {
    const code = textIn(inputs, "motion")!;
    const turn = TURN.find((one) => one.code === code);
    if (turn !== undefined) {
      const angle = highestIn(inputs, "through");
      if (angle === undefined) return { says: `motion-time: ${code} needs through, the angle of the turn` };
      const row = TURN_DEGREES.findIndex((one) => (angle * 180) / Math.PI <= one + 1e-9);
      if (row < 0) return { says: "motion-time: turns are tabled up to 180°", nearest: ["180 deg"] };
      return timeOf(turn.tmu[row]!, [`${turn.about}, row of ${TURN_DEGREES[row]}°: ${turn.tmu[row]} TMU`]);
    }
    const column = [...REACH, ...MOVE].find((one) => one.code === code)!;
    const over = highestIn(inputs, "over");
    if (over === undefined) return { says: `motion-time: ${code} needs over, the distance` };
    const tmu = motionTime(column, over / INCH);
    if (tmu === undefined) return { says: "motion-time: distances are tabled up to 30 in", nearest: ["30 in"] };
    const steps = [`${column.about} over ${shown(over / INCH)} in: ${tmu} TMU`];
    const weight = highestIn(inputs, "weight");
    if (weight === undefined || !MOVE.includes(column)) return timeOf(tmu, steps);
    const heavy = moveWithWeight(tmu, weight / POUND);
    if (heavy === undefined)
      return { says: "motion-time: weights are tabled up to 47.5 lb in one hand", nearest: ["47.5 lb"] };
    return timeOf(heavy.tmu, [
      ...steps,
      `with ${shown(weight / POUND)} lb: ${shown(heavy.tmu)} TMU${heavy.standing === "memory" ? " (allowance from memory, not seen in a source)" : ""}`,
    ]);
  },
});

function timeOf(tmu: number, steps: readonly string[]) {
  return {
    values: [result("time", tmu * TMU_SECONDS, "s"), plain("time units", tmu, "TMU")],
    formula: "row of the table x 0.036 s",
    steps: [...steps.map((text) => step(text)), step(`${shown(tmu)} TMU x 0.036 s = ${shown(tmu * TMU_SECONDS)} s`)],
  };
}

/** Time to fit a number of like parts. */
export const fitTime: Figure = hazardFigure({
  name: "fit-time",
  title: "Time to fit parts",
  topic: "times",
  arguments: [
    argument("items", "number", "number of like parts", { whole: true }),
    argument("handling", "time", "time to get one into the hand, 1.13 to 2.73 s for easy parts"),
    argument("insertion", "time", "time to place or fasten one, 1.5 to 9 s"),
  ],
  validity: "bench assembly by hand; the rows stand under action-time assembly-handling and assembly-insertion",
  source: ASSEMBLY_INSERTION.source,
  examples: ["8 1.8 s 8 s"],
  answer(inputs) {
    const line = {
      count: numberIn(inputs, "items")!,
      handlingSeconds: highest(inputs, "handling"),
      insertionSeconds: highest(inputs, "insertion"),
    };
    if (line.count < 0) return { says: "fit-time: items must not be negative" };
    const seconds = assemblyTime(line);
    return {
      values: [result("time", seconds, "s")],
      formula: "t = n (handling + insertion)",
      steps: [
        step(
          `${shown(line.count)} x (${shown(line.handlingSeconds)} s + ${shown(line.insertionSeconds)} s) = ${shown(seconds)} s`,
        ),
      ],
    };
  },
});

/** Class of a way of joining by EN 45554. */
export const joinClassFigure: Figure = hazardFigure({
  name: "join-class",
  title: "Class of a fastener or joint for taking apart",
  topic: "scores",
  arguments: [argument("kind", "word", "kind of fastener or joint", { words: Object.keys(JOIN_CLASSES) })],
  validity: "the classes are the standard's, which kind belongs to which is our own reading",
  source: "EN 45554:2020 through a public tool (read)",
  examples: ["screw", "cable-tie", "weld"],
  answer(inputs) {
    const kind = textIn(inputs, "kind")!,
      found = kindIn(JOIN_CLASSES, kind)!;
    const words = {
      A: "reusable",
      B: "comes off, not for use again",
      C: "neither comes off whole nor is for use again",
    } as const;
    return {
      values: [plain("class", found)],
      formula: "A reusable, B removable and not reusable, C neither",
      steps: [step(`${kind}: ${words[found]}`)],
    };
  },
});
