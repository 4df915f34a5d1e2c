// Kinds of hazard, as data: which need a proof at the end of their precautions, and which precaution can be that proof. Nothing
// here ever says that a hazard is gone.

import type { PrecautionName } from "./precautions.ts";

export type HazardKind = {
  readonly title: string;
  readonly about: string;
  /**
   * What it can do to people in general, as nouns behind a colon: after the potential consequences of each type of hazard in ISO 12100:2010,
   * table B.1 (from memory, in words of our own). It ranks nothing, since the author's signal word does, and promises no completeness.
   */
  readonly harm: string;
  /** The precautions must end in a proof: one of `proofBy`, or a reading. */
  readonly needsProof: boolean;
  readonly proofBy: readonly PrecautionName[];
  /** Precautions that stand in place of a proof, for as long as they stand. */
  readonly standsWithoutProof: readonly PrecautionName[];
  /** The weight itself is the hazard: asked for by what moves or frees the thing, not by handling it. */
  readonly isWeight?: true;
  /** Nobody is near it but who moves the thing: its warning stands there, and not before what only handles it. */
  readonly isOfMoving?: true;
};

const plain = { needsProof: false, proofBy: [], standsWithoutProof: [] } as const;

const table = {
  electrical: {
    title: "Electricity",
    about: "Shock or arc from live parts or a stored charge.",
    harm: "electric shock, burns, a fall from fright, hot metal that flies off",
    needsProof: true,
    proofBy: ["prove-dead"],
    standsWithoutProof: [],
  },
  pressure: {
    title: "Pressure",
    about: "Gas or liquid under pressure.",
    harm: "a jet that goes through the skin, injured eyes, parts that fly off",
    needsProof: true,
    proofBy: ["prove-zero"],
    standsWithoutProof: [],
  },
  spring: {
    title: "Stored spring force",
    about: "A loaded spring.",
    harm: "a blow, crushed or cut fingers, parts that fly into the face",
    needsProof: true,
    proofBy: ["prove-zero"],
    standsWithoutProof: ["block", "let-down"],
  },
  heavy: {
    ...plain,
    isWeight: true,
    isOfMoving: true,
    title: "Heavy load",
    about: "Strains the one who lifts it.",
    harm: "an injured back, crushed hands or feet",
  },
  overhead: {
    ...plain,
    isWeight: true,
    title: "Load overhead",
    about: "A load that hangs over people.",
    harm: "a blow on the head, crushing under the load",
  },
  hot: { ...plain, title: "Hot surface", about: "Burns.", harm: "burns, scalds" },
  cold: { ...plain, title: "Cold surface", about: "Frost burns.", harm: "frost burns, numb fingers" },
  chemical: {
    ...plain,
    title: "Chemical",
    about: "Harms skin, eyes or lungs.",
    harm: "burns of skin and eyes, poisoning, harm to the lungs, allergy",
  },
  magnetic: {
    ...plain,
    title: "Magnetic field",
    about: "Pulls in tools; a danger to those with implants.",
    harm: "crushed fingers, tools that fly to the magnet, a disturbed pacemaker or implant",
  },
  sharp: { ...plain, title: "Sharp edge", about: "Cuts.", harm: "cuts and stabs" },
  crushing: {
    ...plain,
    title: "Crushing",
    about: "Parts that close or settle.",
    harm: "crushed or severed fingers, hands or limbs",
  },
  rotating: {
    title: "Rotating parts",
    about: "Parts that can start or go on turning.",
    harm: "hair, clothes or limbs drawn in, severed fingers",
    needsProof: true,
    proofBy: ["try-start"],
    standsWithoutProof: [],
  },
  fire: {
    ...plain,
    title: "Fire",
    about: "Something that can catch fire or explode.",
    harm: "burns, smoke in the lungs, an explosion",
  },
  radiation: {
    ...plain,
    title: "Radiation",
    about: "Ionising, laser or ultraviolet.",
    harm: "harm to eyes and skin, illness years later",
  },
  noise: {
    ...plain,
    title: "Noise",
    about: "Harms hearing.",
    harm: "lasting loss of hearing, warnings that nobody hears",
  },
  suffocation: {
    ...plain,
    title: "Suffocation",
    about: "Gas that takes the place of air.",
    harm: "loss of consciousness without warning, death by lack of air",
  },
  dust: {
    ...plain,
    title: "Dust",
    about: "Harms lungs, or can explode.",
    harm: "harm to the lungs, allergy, an explosion",
  },
  static: {
    ...plain,
    title: "Static charge",
    about: "Harms components, or sparks.",
    harm: "a shock, a spark that lights what can burn",
  },
  slipping: { ...plain, title: "Slipping", about: "Oil or water on the floor.", harm: "a fall, broken bones" },
  biological: { ...plain, title: "Biological", about: "Germs or moulds.", harm: "infection, allergy" },
  vibration: {
    ...plain,
    title: "Vibration",
    about: "Harms hands and arms.",
    harm: "numb fingers, harm to nerves and joints",
  },
} satisfies Record<string, HazardKind>;

/** Written out, since this table and the precautions name each other. */
export type HazardKindName = keyof typeof table;
export const hazardKinds: Readonly<Record<HazardKindName, HazardKind>> = table;
