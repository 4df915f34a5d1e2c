// Kinds of fluid that law or practice handles apart, as data. A fluid without a kind is simply let out. The local rules for waste
// and for who may handle a fluid come before anything said here.

import type { HazardKindName } from "./hazard-kinds.ts";

export type FluidKind = {
  readonly title: string;
  readonly about: string;
  /** Must be caught with recovery equipment; `drain` of it is a finding. */
  readonly recover: boolean;
  /** The circuit is pumped out before it is filled. */
  readonly evacuate: boolean;
  /** Air must be let out after the fill. */
  readonly bleed: boolean;
  /** What it is let into, in words. */
  readonly container: string;
  /** What is printed about what becomes of it. */
  readonly waste: string;
  /** The hazard that a shop expects to see declared or dismissed with it. */
  readonly hazard: HazardKindName;
};

const usual = { recover: false, evacuate: false, bleed: false } as const;

const table = {
  // Letting refrigerant out is forbidden in most countries, e.g. Regulation (EU) 2024/573, article 8, and 40 CFR 82.154.
  refrigerant: {
    ...usual,
    title: "Refrigerant",
    about: "Of a cooling circuit.",
    recover: true,
    evacuate: true,
    container: "a recovery cylinder",
    waste: "Recovered refrigerant",
    hazard: "suffocation",
  },
  fuel: {
    ...usual,
    title: "Fuel",
    about: "Petrol, diesel or kerosene.",
    container: "a closed fuel container",
    waste: "Waste fuel",
    hazard: "fire",
  },
  oil: {
    ...usual,
    title: "Oil",
    about: "Lubricating or hydraulic oil.",
    container: "an oil container",
    waste: "Waste oil",
    hazard: "slipping",
  },
  coolant: {
    ...usual,
    title: "Coolant",
    about: "Water with antifreeze or inhibitor.",
    container: "a coolant container",
    waste: "Waste coolant",
    hazard: "hot",
  },
  "brake-fluid": {
    ...usual,
    title: "Brake fluid",
    about: "Takes up water from the air; attacks paint.",
    bleed: true,
    container: "a closed container",
    waste: "Waste brake fluid",
    hazard: "chemical",
  },
  acid: {
    ...usual,
    title: "Acid",
    about: "Battery or cleaning acid.",
    container: "an acid-proof container",
    waste: "Waste acid",
    hazard: "chemical",
  },
} satisfies Record<string, FluidKind>;

export type FluidKindName = keyof typeof table;
export const fluidKinds: Readonly<Record<FluidKindName, FluidKind>> = table;
