// Every figure there is, one line each, sorted by name. It holds no figure of its own.

import { fall, gas, magnetDistance, magnetPullFigure, spring } from "./energy-figures.ts";
import { eyebolt, eyeboltUs, shackle } from "./eyebolt-figures.ts";
import type { Figure } from "./figure.ts";
import { cooling, noise, touch } from "./heat-and-noise-figures.ts";
import { gloves, insulationTest, isolation, polarisation, voltageClassFigure, winding } from "./insulation-figures.ts";
import { lift, liftFilter, pushPull, team } from "./lift-figures.ts";
import { liftDurationFigure, liftGrip, liftJobs, liftRate, liftReach } from "./lift-work-figures.ts";
import { legFactorFigure, pickPoints, sling, slingLimit } from "./sling-figures.ts";
import { actionTime, depth, operationTime, repairIndex } from "./time-figures.ts";
import { bleederFigure, capacitorEnergyFigure, voltageLeft, wait } from "./wait-figures.ts";
import { fitTime, joinClassFigure, motion } from "./work-figures.ts";

/** All figures, by name. */
export const figures: readonly Figure[] = [
  actionTime,
  bleederFigure,
  capacitorEnergyFigure,
  cooling,
  depth,
  repairIndex,
  eyebolt,
  eyeboltUs,
  fall,
  fitTime,
  gas,
  gloves,
  insulationTest,
  isolation,
  joinClassFigure,
  legFactorFigure,
  lift,
  liftDurationFigure,
  liftFilter,
  liftGrip,
  liftJobs,
  liftRate,
  liftReach,
  magnetDistance,
  magnetPullFigure,
  motion,
  noise,
  operationTime,
  pickPoints,
  polarisation,
  pushPull,
  shackle,
  sling,
  slingLimit,
  spring,
  team,
  touch,
  voltageClassFigure,
  voltageLeft,
  wait,
  winding,
];

/** The figure of this name, or the names that are nearest to it. */
export function findFigure(name: string): Figure | undefined {
  return figures.find((figure) => figure.name === name);
}
