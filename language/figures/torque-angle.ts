// Tightening by angle: how far to turn from snug, and what a turn stretches. SI, angles in rad.

import { assumed } from "./assumptions.ts";
import {
  aidCaution,
  argument,
  isFigureError,
  missing,
  numberIn,
  result,
  siIn,
  sizeIn,
  step,
  type Figure,
} from "./figure.ts";
import { threadOf } from "./threads.ts";

/** Stiffness of one bolt cross-section in tension, as its give: delta = L / (E A). Units: m, Pa, m² -> m/N. Source: textbook (F = k x, k = E A / L). */
export const boltCompliance = (clampedLength: number, modulus: number, area: number): number =>
  clampedLength / (modulus * area);

/**
 * Angle from snug to a preload, theta = 2 pi F (deltaS + deltaP) / P. Units: N, m/N, m/N, m -> rad.
 * Valid in the elastic range, from a joint that is already closed. Source: textbook turn-of-nut relation.
 */
export const angleFromPreload = (preload: number, boltGive: number, plateGive: number, pitch: number): number =>
  (2 * Math.PI * preload * (boltGive + plateGive)) / pitch;

/**
 * Turn of the nut from snug for structural bolts with both faces flat: 1/3 turn up to 4 d, 1/2 up to 8 d, 2/3 up to 12 d.
 * @param lengthShare bolt length over diameter.
 * @returns rad; `undefined` above 12 d, where a test is asked for. Source: RCSC Table 8.2 (read second-hand).
 */
export function turnOfNut(lengthShare: number): number | undefined {
  if (!(lengthShare > 0) || lengthShare > 12) return undefined;
  return 2 * Math.PI * (lengthShare <= 4 ? 1 / 3 : lengthShare <= 8 ? 1 / 2 : 2 / 3);
}

const angleArguments = [
  argument("size", "size", "the thread"),
  argument("preload", "force", "preload wanted from snug"),
  argument("grip", "length", "clamped length"),
  argument("plate-give", "number", "how much the clamped parts give, in µm a kN", {
    optional: true,
    default: "0: rigid plates",
  }),
];

export const angleFigure: Figure = {
  name: "torque-angle",
  title: "Angle from snug to a preload",
  arguments: angleArguments,
  validity:
    "elastic range, shaft of the stress area over the whole grip; without the give of the plates real joints need more, so a maker's angle stands above this",
  source: "textbook relations k = E A / L and theta = 2 pi F (deltaS + deltaP) / P; RCSC Table 8.2 (read second-hand)",
  examples: ["M10 29.6 kN 40 mm", "M10 29.6 kN 40 mm plate-give 0.4"],
  run(inputs, assumptions) {
    const lacking = missing(angleFigure, inputs),
      size = sizeIn(inputs, "size"),
      preload = siIn(inputs, "preload"),
      grip = siIn(inputs, "grip");
    if (lacking || !size || preload === undefined || grip === undefined)
      return lacking ?? { says: "torque-angle needs a size, a preload and a grip" };
    const thread = threadOf(size);
    if (isFigureError(thread)) return thread;
    if (!(preload > 0) || !(grip > 0)) return { says: "preload and grip are above 0" };
    const give = boltCompliance(grip, assumptions["modulus-steel"], thread.stressArea),
      plates = (numberIn(inputs, "plate-give") ?? 0) * 1e-9,
      angle = angleFromPreload(preload, give, plates, thread.pitch);
    const turn = size.system === "unified" ? turnOfNut(grip / thread.diameter) : undefined;
    return {
      values: [
        result("angle from snug", angle, "deg"),
        result("stretch of the bolt", preload * give, "mm"),
        ...(turn === undefined ? [] : [result("turn of the nut, structural bolts", turn, "deg")]),
      ],
      formula: "theta = 2 pi F (deltaS + deltaP) / P, deltaS = L / (E As), deltaP the give of the plates",
      steps: [step("give of the bolt", give * 1e9, "µm/kN")],
      assumptions: [
        assumed(assumptions, "modulus-steel"),
        assumed(assumptions, "joint"),
        inputs["plate-give"] !== undefined
          ? "the plates give as stated"
          : assumptions.joint === "hard"
            ? "plates do not give"
            : "only the bolt is reckoned: what lies between gives as well, so that the angle is larger and comes from a trial",
      ],
      source: angleFigure.source,
      caution: aidCaution,
    };
  },
};
