// Every figure there is, one line each, sorted by name. It holds no figure of its own.

import { beadFigure, threadLockerFigure } from "./bead.ts";
import { boltLoadFigure, classFigure } from "./bolt-loads.ts";
import { spannerFigure, threadFromSpannerFigure } from "./drives.ts";
import { fall, gas, magnetDistance, magnetPullFigure, spring } from "./energy-figures.ts";
import { engagementFigure, lockingNutFigure } from "./engagement.ts";
import { eyebolt, eyeboltUs, shackle } from "./eyebolt-figures.ts";
import type { Figure } from "./figure.ts";
import { bearingFigure } from "./head-geometry.ts";
import { cooling, noise, touch } from "./heat-and-noise-figures.ts";
import { gloves, insulationTest, isolation, polarisation, voltageClassFigure, winding } from "./insulation-figures.ts";
import { lift, liftFilter, pushPull, team } from "./lift-figures.ts";
import { liftDurationFigure, liftGrip, liftJobs, liftRate, liftReach } from "./lift-work-figures.ts";
import { oRingFigure, squeezeFigure } from "./o-rings.ts";
import { safetySignFigure } from "./safety-sign.ts";
import { legFactorFigure, pickPoints, sling, slingLimit } from "./sling-figures.ts";
import { hardwareFigure } from "./small-hardware.ts";
import { threadFigure } from "./threads.ts";
import { tighteningFigure } from "./tightening-order.ts";
import { nutFactorFigure, preloadFigure, torqueFigure } from "./tightening.ts";
import { actionTime, depth, operationTime, repairIndex } from "./time-figures.ts";
import { angleFigure } from "./torque-angle.ts";
import { adapterFigure, dragFigure, wrenchFigure } from "./torque-wrench.ts";
import { convertFigure } from "./unit-conversion.ts";
import { bleederFigure, capacitorEnergyFigure, voltageLeft, wait } from "./wait-figures.ts";
import { fitTime, joinClassFigure, motion } from "./work-figures.ts";

/** All figures, by name. */
export const figures: readonly Figure[] = [
  actionTime,
  adapterFigure,
  angleFigure,
  beadFigure,
  bearingFigure,
  bleederFigure,
  boltLoadFigure,
  capacitorEnergyFigure,
  classFigure,
  convertFigure,
  cooling,
  depth,
  dragFigure,
  engagementFigure,
  eyebolt,
  eyeboltUs,
  fall,
  fitTime,
  gas,
  gloves,
  hardwareFigure,
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
  lockingNutFigure,
  magnetDistance,
  magnetPullFigure,
  motion,
  noise,
  nutFactorFigure,
  operationTime,
  oRingFigure,
  pickPoints,
  polarisation,
  preloadFigure,
  pushPull,
  repairIndex,
  safetySignFigure,
  shackle,
  sling,
  slingLimit,
  spannerFigure,
  spring,
  squeezeFigure,
  team,
  threadFigure,
  threadFromSpannerFigure,
  threadLockerFigure,
  tighteningFigure,
  torqueFigure,
  touch,
  voltageClassFigure,
  voltageLeft,
  wait,
  winding,
  wrenchFigure,
];

export interface FigureTopic {
  readonly title: string;
  readonly figures: readonly Figure[];
}

/** The figures as a workshop looks for them; each stands in one topic. */
export const figureTopics: readonly FigureTopic[] = [
  {
    title: "Threads and bolts",
    figures: [
      threadFigure,
      classFigure,
      boltLoadFigure,
      torqueFigure,
      preloadFigure,
      nutFactorFigure,
      angleFigure,
      engagementFigure,
      bearingFigure,
      lockingNutFigure,
      dragFigure,
    ],
  },
  {
    title: "Tools and orders",
    figures: [spannerFigure, threadFromSpannerFigure, wrenchFigure, adapterFigure, tighteningFigure],
  },
  {
    title: "Seals, sealants and small parts",
    figures: [oRingFigure, squeezeFigure, beadFigure, threadLockerFigure, hardwareFigure],
  },
  {
    title: "Electricity",
    figures: [
      wait,
      voltageLeft,
      capacitorEnergyFigure,
      bleederFigure,
      voltageClassFigure,
      insulationTest,
      isolation,
      winding,
      polarisation,
      gloves,
    ],
  },
  {
    title: "Lifting by hand",
    figures: [lift, team, liftFilter, liftReach, liftGrip, liftRate, liftDurationFigure, liftJobs, pushPull],
  },
  {
    title: "Lifting gear",
    figures: [sling, slingLimit, legFactorFigure, pickPoints, eyebolt, eyeboltUs, shackle],
  },
  {
    title: "Other dangers",
    figures: [spring, gas, fall, magnetPullFigure, magnetDistance, touch, cooling, noise, safetySignFigure],
  },
  {
    title: "Times and scores",
    figures: [actionTime, operationTime, motion, fitTime, depth, joinClassFigure, repairIndex],
  },
  { title: "Units", figures: [convertFigure] },
];

/** The figure of this name, or the names that are nearest to it. */
export function findFigure(name: string): Figure | undefined {
  return figures.find((figure) => figure.name === name);
}
