// Torque and preload of a bolted joint after VDI 2230 and ISO 16047: preload at a share of yield, torque from preload and back, and how much
// of the yield stress a torque uses. SI throughout. It knows no sizes and no classes.

/** What the relation needs of the thread and of the bearing; lengths in m. */
export interface TighteningGeometry {
  readonly pitch: number;
  readonly pitchDiameter: number;
  readonly rootDiameter: number;
  /** DKm, mean diameter of friction under the head; 0 leaves the head out. */
  readonly headDiameter: number;
}

export interface Friction {
  readonly thread: number;
  readonly head: number;
}

/** 1 / cos 30°: the flank angle of 60 degree threads makes the thread's friction count more. */
const flank = 1 / Math.cos(Math.PI / 6);

/** Lever of the thread torque per newton of preload, d2/2 (P/(pi d2) + 1.155 muG) = 0.159 P + 0.577 d2 muG. Units: m. */
const threadLever = ({ pitch, pitchDiameter }: TighteningGeometry, muThread: number): number =>
  (pitchDiameter / 2) * (pitch / (Math.PI * pitchDiameter) + flank * muThread);

/** Equivalent stress over tension stress while the spanner turns: sqrt(1 + 3 [3/2 d2/d0 (P/(pi d2) + 1.155 muG)]²). */
function torsionFactor(geometry: TighteningGeometry, muThread: number): number {
  const d0 = (geometry.pitchDiameter + geometry.rootDiameter) / 2,
    ratio = (3 * threadLever(geometry, muThread)) / d0;
  return Math.sqrt(1 + 3 * ratio * ratio);
}

/** Section that the stress is reckoned on, A0 = pi/4 d0² with d0 = (d2 + d3)/2. Units: m². */
const stressSection = ({ pitchDiameter, rootDiameter }: TighteningGeometry): number =>
  (Math.PI / 4) * ((pitchDiameter + rootDiameter) / 2) ** 2;

/**
 * Assembly preload at which tension and torsion together reach a share of the yield stress.
 * FM = nu Rp0.2 A0 / sqrt(1 + 3 [3/2 d2/d0 (P/(pi d2) + 1.155 muG)]²). Units: Pa, share of 1, m -> N.
 * Valid for shank screws of full shaft and 60 degree threads. Source: VDI 2230-1:2015 (read through a public program).
 */
export const assemblyPreload = (
  geometry: TighteningGeometry,
  yieldStress: number,
  muThread: number,
  yieldShare = 0.9,
): number => (yieldShare * yieldStress * stressSection(geometry)) / torsionFactor(geometry, muThread);

/**
 * Tightening torque that gives a preload, MA = FM (P/(2 pi) + 0.577 d2 muG + DKm/2 muK). Units: N, m -> N·m.
 * The published form rounds the factors to 0.159 and 0.578. Source: VDI 2230-1:2015; ISO 16047 (read second-hand).
 */
export const torqueFromPreload = (geometry: TighteningGeometry, preload: number, friction: Friction): number =>
  preload * (threadLever(geometry, friction.thread) + (geometry.headDiameter / 2) * friction.head);

/**
 * The three parts of that torque: raising the load along the pitch, friction in the thread, friction under the head.
 * N·m. Units: m, N, 1 -> N·m. Source: ISO 16047, VDI 2230-1 (read second-hand).
 */
export function torqueParts(
  geometry: TighteningGeometry,
  preload: number,
  friction: Friction,
): { readonly pitch: number; readonly thread: number; readonly head: number } {
  const pitch = (preload * geometry.pitch) / (2 * Math.PI);
  return {
    pitch,
    thread: preload * threadLever(geometry, friction.thread) - pitch,
    head: ((preload * geometry.headDiameter) / 2) * friction.head,
  };
}

/**
 * The same torque without the small-angle simplification: MA = FM [d2/2 tan(phi + rho') + DKm/2 muK], tan phi = P/(pi d2),
 * tan rho' = muG / cos 30°. Units: N, m -> N·m. Within 1 % of the simple form for standard threads. Source: ISO 16047 (from memory).
 */
export function exactTorqueFromPreload(geometry: TighteningGeometry, preload: number, friction: Friction): number {
  const lead = Math.atan(geometry.pitch / (Math.PI * geometry.pitchDiameter)),
    angle = Math.atan(friction.thread * flank);
  return (
    preload * ((geometry.pitchDiameter / 2) * Math.tan(lead + angle) + (geometry.headDiameter / 2) * friction.head)
  );
}

/**
 * Preload that a torque gives: the inverse of `torqueFromPreload`. Units: N·m -> N. Source: VDI 2230-1 (read
 * second-hand).
 */
export const preloadFromTorque = (geometry: TighteningGeometry, torque: number, friction: Friction): number =>
  torque / (threadLever(geometry, friction.thread) + (geometry.headDiameter / 2) * friction.head);

/**
 * Share of the yield stress that a preload uses while tightening, tension and torsion together. Units: N, Pa -> share of 1.
 * The inverse of `assemblyPreload`. Source: VDI 2230-1:2015 (read second-hand).
 */
export const yieldUtilisation = (
  geometry: TighteningGeometry,
  preload: number,
  yieldStress: number,
  muThread: number,
): number => (preload * torsionFactor(geometry, muThread)) / (stressSection(geometry) * yieldStress);

/**
 * Least preload after tightening with scatter, FM min = FM max / alphaA. Units: N -> N.
 * Source: VDI 2230-1 (rule read through a published guide; alphaA 1.6 to 2.0 for a torque wrench from memory).
 */
export const leastPreload = (preload: number, tighteningFactor: number): number => preload / tighteningFactor;
