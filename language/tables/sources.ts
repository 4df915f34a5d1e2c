// Where an electrical hazard comes from, as data.

export type Source = {
  readonly title: string;
  readonly about: string;
  /** The charge stays after isolation, so a wait and a discharge are asked. */
  readonly storesCharge: boolean;
  /** Turning or freeing its shaft makes it live again and ends every proof. */
  readonly liveWhenTurned: boolean;
  /** Its own terminals can never be proved dead. */
  readonly noProofAtTerminals: boolean;
};

const plain = { storesCharge: false, liveWhenTurned: false, noProofAtTerminals: false } as const;

const table = {
  mains: { ...plain, title: "Mains", about: "The supply from outside." },
  capacitor: { ...plain, title: "Capacitor", about: "A charge that stays after isolation.", storesCharge: true },
  battery: { ...plain, title: "Battery", about: "Always live at its terminals.", noProofAtTerminals: true },
  generator: {
    ...plain,
    title: "Generator",
    about: "Live when it turns, a permanent-magnet motor too.",
    liveWhenTurned: true,
  },
  induced: { ...plain, title: "Induced", about: "From conductors or fields near by." },
} satisfies Record<string, Source>;

export type SourceName = keyof typeof table;
export const sources: Readonly<Record<SourceName, Source>> = table;
