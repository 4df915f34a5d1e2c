// Kinds of hazard, as data: which need a proof at the end of their precautions, and which precaution can be that proof. Nothing
// here ever says that a hazard is gone.

import type { PrecautionName } from "./precautions.ts";

export type HazardKind = {
  readonly title: string;
  readonly about: string;
  /** The precautions must end in a proof: one of `proofBy`, or a reading. */
  readonly needsProof: boolean;
  readonly proofBy: readonly PrecautionName[];
  /** Precautions that stand in place of a proof, for as long as they stand. */
  readonly standsWithoutProof: readonly PrecautionName[];
  /** The weight itself is the hazard: asked for by what moves or frees the thing, not by handling it. */
  readonly isWeight?: true;
};

const plain = { needsProof: false, proofBy: [], standsWithoutProof: [] } as const;

const table = {
  electrical: {
    title: "Electricity",
    about: "Shock or arc from live parts or a stored charge.",
    needsProof: true,
    proofBy: ["prove-dead"],
    standsWithoutProof: [],
  },
  pressure: {
    title: "Pressure",
    about: "Gas or liquid under pressure.",
    needsProof: true,
    proofBy: ["prove-zero"],
    standsWithoutProof: [],
  },
  spring: {
    title: "Stored spring force",
    about: "A loaded spring.",
    needsProof: true,
    proofBy: ["prove-zero"],
    standsWithoutProof: ["block", "let-down"],
  },
  heavy: { ...plain, isWeight: true, title: "Heavy load", about: "Strains the one who lifts it." },
  overhead: { ...plain, isWeight: true, title: "Load overhead", about: "A load that hangs over people." },
  hot: { ...plain, title: "Hot surface", about: "Burns." },
  cold: { ...plain, title: "Cold surface", about: "Frost burns." },
  chemical: { ...plain, title: "Chemical", about: "Harms skin, eyes or lungs." },
  magnetic: { ...plain, title: "Magnetic field", about: "Pulls in tools; a danger to those with implants." },
  sharp: { ...plain, title: "Sharp edge", about: "Cuts." },
  crushing: { ...plain, title: "Crushing", about: "Parts that close or settle." },
  rotating: {
    title: "Rotating parts",
    about: "Parts that can start or go on turning.",
    needsProof: true,
    proofBy: ["try-start"],
    standsWithoutProof: [],
  },
  fire: { ...plain, title: "Fire", about: "Something that can catch fire or explode." },
  radiation: { ...plain, title: "Radiation", about: "Ionising, laser or ultraviolet." },
  noise: { ...plain, title: "Noise", about: "Harms hearing." },
  suffocation: { ...plain, title: "Suffocation", about: "Gas that takes the place of air." },
  dust: { ...plain, title: "Dust", about: "Harms lungs, or can explode." },
  static: { ...plain, title: "Static charge", about: "Harms components, or sparks." },
  slipping: { ...plain, title: "Slipping", about: "Oil or water on the floor." },
  biological: { ...plain, title: "Biological", about: "Germs or moulds." },
  vibration: { ...plain, title: "Vibration", about: "Harms hands and arms." },
} satisfies Record<string, HazardKind>;

/** Written out, since this table and the precautions name each other. */
export type HazardKindName = keyof typeof table;
export const hazardKinds: Readonly<Record<HazardKindName, HazardKind>> = table;
