// Kinds of precaution, as data: printed verbs, their order among each other, which are proofs. The list is closed. The order is
// that of the five steps of EN 50110-1 (isolate, secure, prove, earth and short, screen what stays live near by), with what stops
// the machine and lets stored energy go before the proof; for other energies the same order is common practice (ISO 14118).

export type Precaution = {
  readonly title: string;
  readonly about: string;
  /** Printed verb of the action. */
  readonly verb: string;
  /** Place in the order: a lower one before a higher one of the same hazard. Undefined: satisfies and breaks no rule of order. */
  readonly rank: number | undefined;
  /** It proves that the energy is gone at that moment; it is no state that lasts by itself. */
  readonly isProof: boolean;
  /** Only these may stand after the proof. */
  readonly afterProof: boolean;
  /** It parts the machine from its source: waits are counted from it. */
  readonly isolates: boolean;
  /**
   * What a proof is made with, as it is asked for where nobody has named an instrument; undefined: it needs none (its own controls
   * tell). Not every force has a gauge, and what hangs slack is felt: what else there may be is said with it.
   */
  readonly provedWith: string | undefined;
  /** Printed at the mirrored place when the author gives no `back` words; undefined: nothing has to be taken back. */
  readonly back: string | undefined;
};

const usual = { rank: undefined, isProof: false, afterProof: false, isolates: false, provedWith: undefined } as const;

const table = {
  "shut-down": {
    ...usual,
    title: "Shut down",
    about: "Stop it by its own controls.",
    verb: "Shut down",
    rank: 1,
    back: undefined,
  },
  isolate: {
    ...usual,
    title: "Isolate",
    about: "Part it from its source.",
    verb: "Isolate",
    rank: 2,
    isolates: true,
    back: "Put the isolating device back as the procedure says",
  },
  "lock-out": {
    ...usual,
    title: "Lock out",
    about: "Lock the isolator and tag it.",
    verb: "Lock out",
    rank: 3,
    isolates: true,
    back: "Take off your own lock and tag",
  },
  discharge: {
    ...usual,
    title: "Discharge",
    about: "Let a stored charge go.",
    verb: "Discharge",
    rank: 4,
    back: undefined,
  },
  vent: { ...usual, title: "Vent", about: "Let pressure out.", verb: "Vent", rank: 4, back: "Close the vent" },
  "let-down": {
    ...usual,
    title: "Let down",
    about: "Let a spring or a load down.",
    verb: "Let down",
    rank: 4,
    back: "Load it again as the procedure says",
  },
  block: { ...usual, title: "Block", about: "Stop it from moving.", verb: "Block", back: "Take the block out" },
  prop: { ...usual, title: "Prop", about: "Hold it up.", verb: "Prop", back: "Take the prop out" },
  cool: { ...usual, title: "Let cool", about: "Wait until it has cooled.", verb: "Let cool", back: undefined },
  ventilate: {
    ...usual,
    title: "Ventilate",
    about: "Bring in fresh air.",
    verb: "Ventilate",
    back: "Stop the ventilation",
  },
  "prove-dead": {
    ...usual,
    title: "Prove dead",
    about: "Test for voltage with a tester tried before and after.",
    verb: "Prove dead",
    rank: 5,
    isProof: true,
    provedWith: "a voltage tester of the shop",
    back: undefined,
  },
  "prove-zero": {
    ...usual,
    title: "Prove zero",
    about: "Read that no pressure or force is left.",
    verb: "Prove zero",
    rank: 5,
    isProof: true,
    provedWith:
      "a gauge or another instrument of the shop; where it is proved by other means, allow this and give them as the reason",
    back: undefined,
  },
  "try-start": {
    ...usual,
    title: "Try to start",
    about: "Press start: nothing may move.",
    verb: "Try to start",
    rank: 5,
    isProof: true,
    back: undefined,
  },
  earth: {
    ...usual,
    title: "Earth",
    about: "Earth and short the conductors.",
    verb: "Earth",
    rank: 6,
    afterProof: true,
    back: "Take the earth off",
  },
  screen: {
    ...usual,
    title: "Screen",
    about: "Cover what stays live near by.",
    verb: "Screen off",
    rank: 6,
    afterProof: true,
    back: "Take the screen away",
  },
  barrier: {
    ...usual,
    title: "Barrier",
    about: "Keep others away.",
    verb: "Put up the barrier for",
    rank: 6,
    afterProof: true,
    back: "Take the barrier away",
  },
  other: {
    ...usual,
    title: "Other precaution",
    about: "As its words say; it satisfies no rule of order or proof.",
    verb: "Take the precaution for",
    back: undefined,
  },
} satisfies Record<string, Precaution>;

export type PrecautionName = keyof typeof table;
export const precautions: Readonly<Record<PrecautionName, Precaution>> = table;
