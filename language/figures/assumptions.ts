// The assumptions that figures rest on where nobody said better: one place, overridable in the settings, printed wherever they are used.
// It decides nothing about a machine: a figure that rests on one of these says so.

export interface AssumptionEntry {
  readonly name: keyof Assumptions;
  readonly about: string;
  readonly source: string;
  /** Limits of a sensible setting; both included. Words have `words` instead. */
  readonly from?: number;
  readonly to?: number;
  readonly words?: readonly string[];
}

/** Each can be set by its name in the settings. Shares are parts of 1. */
export interface Assumptions {
  readonly "friction-thread": number;
  readonly "friction-head": number;
  readonly "yield-share": number;
  readonly surface: "dry" | "oiled";
  readonly joint: "hard" | "soft";
  readonly "nut-factor": number;
  readonly "proof-share": number;
  readonly "tightening-factor": number;
  readonly "least-torque-share": number;
  readonly "modulus-steel": number;
  readonly "bead-waste": number;
}

/** Coefficients of friction that a bolted joint can have, both ends included. Source: VDI 2230-1 Table A5, classes A to E (read second-hand), 0.04 to 0.3 and over. */
export const leastFriction = 0.04;
export const mostFriction = 0.4;
export const isFriction = (value: number): boolean => value >= leastFriction && value <= mostFriction;

/** What follows from the state of the thread, where nobody set the figure itself. */
export type SurfaceFigures = Pick<Assumptions, "friction-thread" | "friction-head" | "nut-factor">;

/**
 * Friction and nut factor by surface. Source: oiled, VDI 2230-1 friction class B (read second-hand) and Shigley, Table 8-15, lubricated; dry,
 * Shigley: K = 0.20 whenever both coefficients of friction are 0.15. The oiled set gives the lower torque, and so stands unless somebody says dry.
 */
export const surfaceFigures: Readonly<Record<Assumptions["surface"], SurfaceFigures>> = {
  oiled: { "friction-thread": 0.12, "friction-head": 0.12, "nut-factor": 0.18 },
  dry: { "friction-thread": 0.15, "friction-head": 0.15, "nut-factor": 0.2 },
};

export const isSurface = (word: unknown): word is Assumptions["surface"] => word === "dry" || word === "oiled";

/** The same assumptions on another surface: what follows from the surface follows from the new one. */
export const onSurface = (assumptions: Assumptions, surface: Assumptions["surface"]): Assumptions => ({
  ...assumptions,
  surface,
  ...surfaceFigures[surface],
});

export const defaultAssumptions: Assumptions = {
  ...surfaceFigures.oiled,
  "yield-share": 0.9,
  surface: "oiled",
  joint: "hard",
  "proof-share": 0.75,
  "tightening-factor": 1.6,
  "least-torque-share": 0.2,
  "modulus-steel": 205e9,
  "bead-waste": 0.1,
};

export const assumptionEntries: readonly AssumptionEntry[] = [
  {
    name: "friction-thread",
    from: leastFriction,
    to: mostFriction,
    about: "coefficient of friction in the thread",
    source: "by the surface: oiled 0.12, VDI 2230-1 friction class B (read second-hand); dry 0.15, Shigley",
  },
  {
    name: "friction-head",
    from: leastFriction,
    to: mostFriction,
    about: "coefficient of friction under the head or nut",
    source: "by the surface: oiled 0.12, VDI 2230-1 friction class B (read second-hand); dry 0.15, Shigley",
  },
  {
    name: "yield-share",
    from: 0.3,
    to: 1,
    about: "share of the yield stress that tightening may use, tension and torsion together",
    source: "VDI 2230-1: 0.9",
  },
  {
    name: "surface",
    words: ["dry", "oiled"],
    about: "state of thread and head as fitted; friction and nut factor follow from it unless they are set",
    source: "Shigley's Mechanical Engineering Design, Table 8-15 and text; VDI 2230-1, friction class B",
  },
  {
    name: "joint",
    words: ["hard", "soft"],
    about: "metal on metal (hard) or with a gasket or seal between (soft); in a soft joint no torque is called low",
    source: "common practice",
  },
  {
    name: "nut-factor",
    from: 0.08,
    to: 0.4,
    about: "K in T = K F d",
    source: "by the surface: Shigley's Mechanical Engineering Design, oiled 0.18 (Table 8-15), dry 0.20",
  },
  {
    name: "proof-share",
    from: 0.3,
    to: 1,
    about: "share of the proof load in torque by nut factor",
    source: "published inch torque tables: 0.75 of proof, for joints to be undone",
  },
  {
    name: "tightening-factor",
    from: 1,
    to: 4,
    about: "largest over smallest preload at one torque (torque wrench, friction estimated)",
    source: "VDI 2230-1 Table A8, from memory: 1.6 to 2.0 for a torque wrench",
  },
  {
    name: "least-torque-share",
    from: 0.05,
    to: 0.9,
    about: "share of the torque at the yield share under which a torque is flagged as low",
    source: "common practice",
  },
  {
    name: "modulus-steel",
    from: 180e9,
    to: 220e9,
    about: "modulus of elasticity of a steel bolt, Pa",
    source: "textbook: 205 GPa",
  },
  {
    name: "bead-waste",
    from: 0,
    to: 1,
    about: "sealant that stays in the nozzle and the pack",
    source: "published sealant calculators: 0.05 to 0.10",
  },
];

/** A setting that was not taken, and why, in a clause. */
export interface AssumptionProblem {
  readonly name: string;
  readonly says: string;
}

/**
 * The defaults with the settings over them; a surface brings its friction and nut factor unless they are set as well. A name that is unknown, a value of the wrong kind or one outside its limits is reported and
 * the default stands.
 */
export function assumptionsFrom(settings: Readonly<Record<string, number | string>>): {
  readonly assumptions: Assumptions;
  readonly problems: readonly AssumptionProblem[];
} {
  const { surface } = settings,
    base = isSurface(surface) ? onSurface(defaultAssumptions, surface) : defaultAssumptions,
    taken: Record<string, number | string> = { ...base },
    problems: AssumptionProblem[] = [];
  for (const [name, value] of Object.entries(settings)) {
    const entry = assumptionEntries.find((each) => each.name === name);
    if (!entry)
      problems.push({
        name,
        says: `${name} is no assumption of the figures: they are ${assumptionEntries.map((each) => each.name).join(", ")}`,
      });
    else if (entry.words) {
      if (typeof value === "string" && entry.words.includes(value)) taken[name] = value;
      else problems.push({ name, says: `${name} is ${entry.words.join(" or ")}, not ${value}` });
    } else if (typeof value === "number" && value >= entry.from! && value <= entry.to!) taken[name] = value;
    else problems.push({ name, says: `${name} is a number from ${entry.from} to ${entry.to}, not ${value}` });
  }
  return { assumptions: taken as unknown as Assumptions, problems };
}

/** How an assumption is printed under a result that rests on it. */
export function assumed(assumptions: Assumptions, name: keyof Assumptions): string {
  const entry = assumptionEntries.find((each) => each.name === name)!;
  return `${name} ${assumptions[name]} (${entry.about}${surfaceWord(assumptions, name)})`;
}

/** Whether a figure follows from the surface, or was set in its stead. */
function surfaceWord(assumptions: Assumptions, name: keyof Assumptions): string {
  const bySurface: Partial<Assumptions> = surfaceFigures[assumptions.surface];
  if (bySurface[name] === undefined) return "";
  return bySurface[name] === assumptions[name] ? `, surface ${assumptions.surface}` : ", as set";
}
