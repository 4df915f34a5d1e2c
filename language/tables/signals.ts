// Signal words and their meaning by ANSI Z535.6 and ISO 3864-2, as data.

export type Signal = {
  readonly title: string;
  readonly about: string;
  /** 1 is the gravest. */
  readonly rank: number;
  /** Is it about people? A notice is about the machine only. */
  readonly people: boolean;
};

const table = {
  danger: { title: "Danger", about: "If not avoided, will result in death or serious injury.", rank: 1, people: true },
  warning: {
    title: "Warning",
    about: "If not avoided, could result in death or serious injury.",
    rank: 2,
    people: true,
  },
  caution: {
    title: "Caution",
    about: "If not avoided, could result in minor or moderate injury.",
    rank: 3,
    people: true,
  },
  notice: { title: "Notice", about: "Damage to the machine or to other things only.", rank: 4, people: false },
} satisfies Record<string, Signal>;

export type SignalName = keyof typeof table;
export const signals: Readonly<Record<SignalName, Signal>> = table;

/** The gravest first. */
export const signalNames = (Object.keys(table) as SignalName[]).sort((a, b) => table[a].rank - table[b].rank);

/** 1 is the gravest; what bears no signal word is taken to be as grave as that. */
export const signalRank = (name: SignalName | undefined): number => signals[name ?? "danger"].rank;
